// How points, lines, angles and circles are called. An angle is three letters with the corner in the middle,
// or its corner alone; signs and hats are accepted as they are written in the schools of several countries.
#pragma once
#include "prover/language/grammar_words.hpp"

namespace prover::grammar {

namespace utf8 = pegtl::utf8;

// K, K1, K₁, K′ – not the K of "Keep".
struct subscript : utf8::range<0x2080, 0x2089> {};
struct prime : sor<one<'\''>, utf8::one<0x2032>> {};
struct point_name : seq<pegtl::upper, star<sor<pegtl::digit, subscript>>, star<prime>> {};
struct point_token : part<Part::point, named<"a point", point_name, not_at<pegtl::lower>>> {};
struct point : seq<opt<words<"a? point|points|corner|vertex">>, point_token, blanks> {};

// A row of letters: "KLM" or "K L M". How many there ought to be, the reader says.
struct glued_letters : seq<point_token, plus<point_token>> {};
struct spaced_letters : list<point_token, some_blanks> {};
struct letters : seq<part<Part::letters, sor<glued_letters, spaced_letters>>, blanks> {};

// A row of points: "K, L and M"; also "KLM".
struct point_row : sor<list<point, conjunction>, letters> {};

// Small letters are unknown numbers, lines, or names for angles.
struct greek : utf8::range<0x3B1, 0x3C9> {};
struct letter_token
    : part<Part::letter, named<"a small letter", sor<pegtl::lower, greek>, star<sor<pegtl::digit, subscript>>,
                               not_at<pegtl::alpha>, not_at<one<'\''>>>> {};
struct letter : seq<letter_token, blanks> {};

struct two_points : seq<sor<seq<point_token, point_token, not_at<point_token>>,
                            seq<point_token, some_blanks, point_token,
                                not_at<some_blanks, point_token, not_at<pegtl::lower>>>>,
                        blanks> {};
struct line_noun
    : words<
          "a straight? line|lines|side|sides|ray|rays|chord|chords|diagonal|diagonals|base|arm|arms|"
          "transversal|rail|leg|legs? segment|segments?"> {};
struct through_two : seq<words<"a straight? line through">, point, words<"and">, point> {};
struct plain_line : seq<part<Part::line, sor<through_two, seq<line_noun, two_points>>>, blanks> {};
struct lettered_line : part<Part::lettered_line, letter> {};
struct named_lettered_line : part<Part::lettered_line, words<"a? straight? line|lines">, letter> {};
struct line : sor<plain_line, named_lettered_line, lettered_line> {};
struct segment : plain_line {};

struct triangle_sign : sor<sign<"△">, sign<"∆">, sign<"Δ">, sign<"▲">, words<"a triangle|triangles">> {};
// "<KLM" is an angle only where a quantity begins: after a number it compares.
struct clear_angle_sign
    : sor<sign<"m∠">, sign<"∠">, sign<"∡">, sign<"m<">, words<"a angle|angles|ang|corner">> {};
struct angle_sign : sor<clear_angle_sign, sign<"<">> {};

// KL̂M: a hat on the corner, as a combining accent or as one of the letters that exist with a hat.
struct hat : utf8::one<0x302> {};
struct hatted_letter
    : utf8::one<0xC2, 0xCA, 0xCE, 0xD4, 0xDB, 0x108, 0x11C, 0x124, 0x134, 0x15C, 0x174, 0x176, 0x1E90> {};
struct hatted_token : part<Part::point, sor<seq<point_name, hat>, hatted_letter>> {};
struct hatted_angle
    : seq<part<Part::angle,
               part<Part::letters, sor<seq<point_token, hatted_token, point_token>, hatted_token>>>,
          blanks> {};

struct of_triangle : seq<words<"of|in">, triangle_sign, letters> {};
struct angle_at : part<Part::angle, words<"a interior|internal? angle at">, opt<words<"corner|vertex|point">>,
                       letters, opt<of_triangle>> {};
struct exterior_angle : part<Part::exterior, words<"a exterior|external angle">, opt<of_triangle>,
                             opt<words<"at">>, letters, opt<of_triangle>> {};
struct angle_between
    : part<Part::angle_between, words<"a? angle between">, plain_line, words<"and">, plain_line> {};
struct reflex_word : part<Part::reflex, words<"a reflex">> {};
struct plain_angle
    : part<Part::angle, opt<reflex_word>, opt<words<"acute|obtuse">>, angle_sign, letters, opt<of_triangle>> {
};
struct clear_angle : part<Part::angle, opt<reflex_word>, opt<words<"acute|obtuse">>, clear_angle_sign,
                          letters, opt<of_triangle>> {};
struct reflex_hatted : part<Part::angle, reflex_word, hatted_angle> {};
struct angle : sor<exterior_angle, angle_between, angle_at, plain_angle, hatted_angle, reflex_hatted> {};

// A list after one "angles": "angles KLM, MNP and PQR".
struct listed_angle : part<Part::angle, letters> {};
struct angle_list : seq<opt<words<"both? a">>, words<"angles">, list<listed_angle, conjunction>> {};
struct angles_of : part<Part::angles_of, words<"all? a interior? angles of">, opt<words<"a">>,
                        sor<triangle_sign, words<"quadrilateral|polygon">>, letters> {};

// "circle O", "the circle with centre O", "a circle through K, L, M", "circle KLM", "the circle".
struct centre : part<Part::centre, opt<comma>, opt<words<"with|of">>, words<"a centre|center">, point> {};
struct through : part<Part::through, opt<words<"and|that|which">>, words<"through|passing|passes|pass">,
                      opt<words<"through">>, point_row> {};
struct bracketed_centre : part<Part::centre, sign<"(">, words<"centre|center">, point, sign<")">> {};
struct circumcircle_of : part<Part::through, words<"a circumcircle of">, opt<triangle_sign>,
                              opt<words<"quadrilateral">>, letters> {};
struct circle_letters : part<Part::circle, words<"a circle">, letters> {};
struct circle
    : sor<part<Part::circle, circumcircle_of>,
          part<Part::circle, words<"a circle">,
               sor<seq<sor<centre, bracketed_centre>, opt<opt<comma>, through>>, seq<through, opt<centre>>>>,
          circle_letters, part<Part::circle, words<"a same? circle">>> {};

}  // namespace prover::grammar
