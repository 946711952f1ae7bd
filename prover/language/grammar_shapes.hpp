// Triangles, quadrilaterals, polygons and circles, by name; and names for angles.
#pragma once
#include "prover/language/grammar_lines.hpp"

namespace prover::grammar {

struct adjective
    : part<Part::adjective,
           words<"isosceles|equilateral|right-angled|right|acute-angled|acute|obtuse-angled|obtuse|scalene|"
                 "regular|convex|simple|cyclic">> {};
struct many_gon : seq<digits, one<'-'>, words<"gon">> {};
struct n_gon : words<"n-gon"> {};
struct noun : part<Part::noun, opt<words<"a">>,
                   sor<sign<"△">, sign<"∆">, sign<"Δ">, sign<"▲">, many_gon,
                       words<"triangle|triangles|quadrilateral|polygon|parallelogram|rectangle|rhombus|"
                             "square|kite|trapezium|trapezoid|"
                             "pentagon|hexagon|heptagon|octagon|nonagon|decagon|hendecagon|dodecagon">>> {};

struct right_at
    : part<Part::right_at, sor<words<"at">, words<"with? a right angle at">, words<"has a right angle at">>,
           opt<words<"corner|vertex">>, letters> {};
struct hypotenuse : part<Part::hypotenuse, opt<words<"with">>, words<"a hypotenuse">, plain_line> {};
struct apex : part<Part::apex, opt<words<"with">>, words<"a apex|vertex">, opt<words<"at">>, point> {};
struct base : part<Part::base, words<"with a base">, plain_line> {};
struct shape_detail : sor<hypotenuse, apex, base, right_at> {};
struct shape_words : plus<sor<adjective, noun>> {};
struct inscribed : seq<opt<words<"is">>, words<"inscribed in">, part<Part::on_circle, circle>> {};
struct sides_do_not_cross : part<Part::adjective, words<"is a polygon whose sides do not cross">> {};
struct shape_verb
    : sor<sides_do_not_cross, seq<words<"is a">, shape_words, star<shape_detail>, opt<inscribed>>, inscribed,
          shape_detail> {};

// "isosceles triangle KLM", "regular pentagon KLMNP", "polygon: ABCDE convex, in this order"
struct shape_name : seq<words<"a">, star<adjective>, noun, opt<colon>, letters> {};
struct shape_adjectives_after : star<sor<adjective, noun>> {};
struct shape_clause
    : part<Part::shape, sor<seq<shape_name, shape_adjectives_after, opt<in_this_order>, star<shape_detail>,
                                opt<shape_verb>, opt<in_this_order>>,
                            seq<adjective, colon, opt<noun>, letters>, seq<letters, shape_verb>>> {};
struct shape_in_prefix : part<Part::shape, shape_name, star<shape_detail>> {};

struct similar_sign : sor<sign<"~">, sign<"∼">, sign<"|||">, sign<"∽">> {};
struct congruent_sign : sor<sign<"≅">, sign<"≡">> {};
struct big_letters : seq<at<point_token, blanks, point_token, blanks, point_token>, letters> {};
struct matched_shape : seq<opt<sor<triangle_sign, words<"a quadrilateral">>>, big_letters> {};
struct matched_shapes : sor<says<Predicate::congruent, "", matched_shape,
                                 sor<congruent_sign, words<"is congruent to|with">>, matched_shape>,
                            says<Predicate::similar, "", matched_shape,
                                 sor<similar_sign, words<"is similar to">>, matched_shape>,
                            says<Predicate::congruent, "", opt<words<"both">>, matched_shape, words<"and">,
                                 matched_shape, words<"is congruent">>,
                            says<Predicate::similar, "", opt<words<"both">>, matched_shape, words<"and">,
                                 matched_shape, words<"is similar">>> {};

// "A, X, B in this order on a line" and the rows after a label.
struct line_row_clause
    : sor<says<Predicate::line_order, "", words<"line">, opt<colon>, list<point, conjunction>,
               part<Part::in_order, words<"in this order">>>,
          seq<at<words<"line">, opt<colon>, big_letters>,
              part<Part::line_order_row, words<"line">, opt<colon>, letters, opt<in_this_order>>>,
          part<Part::line_order_row, big_letters, words<"is a straight? line">>> {};

struct circle_points : seq<opt<words<"through">>, point_row> {};
struct labelled_circle
    : part<Part::circle_clause, words<"circle">, opt<colon>,
           sor<seq<words<"centre|center">, part<Part::centre, point>, opt<comma>>, at<words<"through">>>,
           part<Part::through, circle_points>, opt<in_this_order>> {};
struct said_circle
    : part<Part::circle_clause, circle, opt<words<"that|which">>,
           opt<words<"passes|pass through">, part<Part::through, point_row>>, opt<in_this_order>> {};
struct labelled_concyclic : part<Part::circle_clause, words<"concyclic">, opt<colon>,
                                 part<Part::through, point_row>, opt<in_this_order>> {};

// Names for angles.
struct sentence_stop : sor<eof, one<'.', ';', ',', '('>, words<"and">> {};
struct call : sor<part<Part::call, words<"call|denote|name">, angle, opt<words<"by|as">>, letter>,
                  part<Part::call, words<"let">, letter, sor<sign<"=">, words<"denote|be|is">>, angle,
                       at<sentence_stop>>,
                  part<Part::call, words<"let">, angle, sor<sign<"=">, words<"be|is called? a?">>, letter,
                       at<sentence_stop>>,
                  part<Part::call, angle, words<"is called|denoted|named">, opt<words<"by">>, letter>> {};
struct numbered_angle : part<Part::numbered_angle, part<Part::name, plus<pegtl::alnum>>, blanks, sign<"=">,
                             opt<angle_sign>, letters> {};
struct numbered_angles
    : part<Part::numbered_angles, words<"a? angles at">, point, colon, list<numbered_angle, conjunction>> {};

}  // namespace prover::grammar
