// What is said of lines: parallel, perpendicular, meeting, bisecting, touching, produced.
#pragma once
#include "prover/language/grammar_points.hpp"

namespace prover::grammar {

struct parallel_sign
    : sor<sign<"∥">, sign<"//">, sign<"||">, sign<"‖">, words<"is parallel to|with">, words<"parallel to">> {
};
struct perpendicular_sign
    : sor<sign<"⊥">, sign<"⟂">, words<"is perpendicular|normal|orthogonal to">,
          words<"is at right angles to">, words<"perpendicular to">, words<"meets|cuts at right angles">> {};
struct at_point : seq<words<"at">, opt<words<"a? point">>, point> {};

struct parallel_to : part<Part::parallel_to, plus<parallel_sign, line>> {};
struct perpendicular_to : part<Part::perpendicular_to, perpendicular_sign, line, opt<at_point>> {};

struct angle_bisector_words : words<"a internal|interior|angle? bisector of"> {};
struct bisector
    : part<Part::bisector,
           sor<seq<words<"bisects|bisect">, at<angle>>, seq<words<"is">, angle_bisector_words, at<angle>>,
               words<"is a internal|angle? bisector at">>,
           sor<angle, part<Part::angle, letters>>> {};
struct perpendicular_bisector
    : says<Predicate::perpendicular_bisector, "0123", words<"is a perpendicular bisector of">, plain_line> {};
struct bisects_segment : part<Part::bisects_segment, words<"bisects|bisect">, plain_line, opt<at_point>> {};
struct bisect_each_other : part<Part::bisect_each_other, words<"bisect each other|another">, opt<at_point>> {
};

struct of_shape : seq<words<"of|in">, opt<words<"a">>, opt<triangle_sign>, letters> {};
struct median : part<Part::median, words<"is a median|medians">, opt<of_shape>> {};
struct altitude
    : sor<part<Part::altitude, words<"is a perpendicular|altitude|height">, opt<words<"from">, point>,
               words<"to|on|onto">, plain_line>,
          part<Part::altitude, words<"is a perpendicular? altitude|height|altitudes">, opt<of_shape>>> {};
struct diameter : part<Part::diameter, words<"is a diameter|diameters of">, circle> {};
struct chord : part<Part::chord, words<"is a chord|chords">, opt<words<"of">, circle>> {};
struct radius : part<Part::radius, words<"is a radius|radii of">, circle> {};
struct touches : part<Part::tangent, words<"touches|touch">, circle, opt<at_point>> {};
struct tangent : part<Part::tangent, words<"is a tangent">, opt<words<"to">, circle>, opt<at_point>,
                      opt<words<"to">, circle>> {};
struct produced
    : part<Part::produced, words<"is">, produced_word,
           sor<seq<words<"beyond">, point, words<"to">>, words<"to">>, opt<words<"a point">>, point> {};
struct cuts : words<"meets|meet|cuts|cut|crosses|cross|intersects|intersect"> {};
struct meets_once : seq<line, at_point> {};
struct meets : part<Part::meets, cuts, opt<words<"both">>, list<meets_once, conjunction>> {};
struct meets_circle : part<Part::meets_circle, cuts, circle, opt<words<"again">>, words<"at">, point,
                           opt<words<"again">>, opt<words<"and">, point>> {};
struct contains : part<Part::contains, words<"passes|goes through">, point> {};
struct drawn_only
    : part<Part::drawn_only, words<"is">, sor<words<"drawn|joined">, words<"a segment">, words<"a line">>,
           not_at<words<"segment">>> {};

struct line_verb
    : sor<perpendicular_bisector, bisector, bisects_segment, perpendicular_to, parallel_to, median, altitude,
          diameter, chord, radius, touches, tangent, produced, meets_circle, meets, contains, drawn_only> {};
struct line_clause : part<Part::line_clause, line, list<line_verb, again>> {};

// Said of several lines together.
struct are_parallel
    : part<Part::are_parallel, words<"is all? parallel">, opt<words<"to each|one another|other">>> {};
struct are_perpendicular
    : part<Part::are_perpendicular,
           sor<words<"is perpendicular">, words<"is|meet at right angles">, words<"form right angles">>,
           opt<words<"to each|one another|other">>, opt<at_point>> {};
struct cross_at : part<Part::cross_at, words<"cross">, at_point> {};
struct meet_at : part<Part::meet_at, words<"meet|intersect">, at_point> {};
struct produced_to_meet
    : part<Part::produced_to_meet, words<"is">, produced_word, words<"to meet">, at_point> {};
struct are_cut : part<Part::meet_at, words<"is cut|crossed|intersected by a transversal?">, line, words<"at">,
                      list<point, conjunction>, opt<words<"respectively">>> {};
struct tangents
    : part<Part::tangents, sor<words<"is tangents|tangent">, words<"touch">>, opt<opt<words<"to">>, circle>,
           opt<part<Part::from, words<"from">, point>>, opt<words<"to">, circle>,
           opt<words<"at">, list<point, conjunction>, opt<words<"respectively">>>> {};
struct lines_verb : sor<are_parallel, are_perpendicular, cross_at, meet_at, produced_to_meet, are_cut,
                        bisect_each_other, median, altitude, diameter, chord, radius, tangents> {};
struct inner_noun : part<Part::noun, opt<words<"a">>, words<"diagonals|chords|segments">> {};
struct line_row
    : seq<opt<sor<inner_noun, words<"both">, words<"a? lines|sides|rays">>>, line, plus<conjunction, line>> {
};
struct lines_clause : part<Part::lines_clause, line_row, list<lines_verb, again>> {};

// Lines that have no name of their own but what they do.
struct to_meet
    : sor<words<"meets|cuts|crosses|intersects|meeting|cutting">, seq<opt<comma>, words<"to meet">>> {};
struct bisector_meets
    : part<Part::bisector_meets, angle_bisector_words, angle, to_meet, plain_line, at_point> {};
struct tangent_meets : part<Part::tangent_meets, words<"a tangent">, opt<words<"to">, circle>, at_point,
                            opt<words<"to">, circle>, to_meet, plain_line, opt<produced_word>, at_point> {};
struct through_direction : sor<part<Part::parallel_to, parallel_sign, line>,
                               part<Part::perpendicular_to, perpendicular_sign, line>> {};
struct line_through
    : part<Part::line_through, words<"a straight? line|parallel|perpendicular through|from">, point,
           sor<through_direction, seq<words<"to">, plain_line>>, to_meet, plain_line, at_point> {};
struct produced_meets : part<Part::produced_meets, plain_line, produced_word, to_meet, plain_line,
                             opt<produced_word>, at_point> {};
struct diagonals_meet
    : part<Part::diagonals_meet, words<"a diagonals of">,
           opt<words<"a quadrilateral|parallelogram|rectangle|rhombus|square|kite|trapezium|trapezoid">>,
           letters, words<"meet|cross|intersect">, at_point> {};
struct perpendicular_bisector_meets
    : part<Part::perpendicular_bisector_meets, words<"a perpendicular bisector of">, plain_line,
           words<"meets|cuts|crosses|intersects">, list<seq<plain_line, at_point>, conjunction>> {};
struct tangents_from
    : part<Part::tangents_from, words<"a two? tangents from">, point, opt<words<"to">, circle>,
           sor<seq<words<"touch|meet">, opt<words<"it">>, opt<circle>, words<"at">>, words<"touch|meet at">>,
           point, words<"and">, point> {};
struct angle_bisected : part<Part::angle_bisected, angle, words<"is bisected by">, plain_line> {};

}  // namespace prover::grammar
