// What is drawn in addition: "join KL", "draw through K the line parallel to LM", "drop the perpendicular from K to LM",
// "produce LM to meet the circle again". A teacher seldom names the new points; where a name may be missing here, the
// reader finds a fresh one. Drawings that only place named points are the ordinary clauses after "mark" or "complete".
#pragma once
#include "prover/language/grammar_shapes.hpp"

namespace prover::grammar {

struct draws : words<"draw|construct|erect"> {};
struct marks_point : words<"mark|take|place|choose off?"> {};

// A letter that is not the beginning of "KL".
struct lone_point
    : seq<opt<words<"a? point|points|corner|vertex">>, point_token, not_at<point_token>, blanks> {};
struct lone_points : list<lone_point, conjunction> {};

// Where a drawn line ends: "meeting KM at P", "to meet the circle again", "meeting AB at P and CD at Q" is two of them.
struct circle_again
    : seq<sor<seq<circle, not_at<point_token>>, part<Part::circle, words<"a circumcircle|circumference">>>,
          opt<words<"again">>> {};
struct at_points : seq<words<"at|in">, opt<words<"a? point|points">>, lone_points,
                       opt<opt<comma>, words<"respectively">>, opt<words<"again">>> {};
struct meeting_words
    : seq<opt<comma>, sor<words<"meeting|cutting|crossing|intersecting">, words<"which|that meets|meet|cuts|cut">,
                          words<"meets|cuts">, words<"and? to meet|cut|cross">>> {};
struct meeting : part<Part::meeting, meeting_words, sor<circle_again, line>, opt<at_points>> {};
struct meeting_together : part<Part::meeting_together, meeting_words, opt<at_point>> {};

// Which of two places: "on the side of FG where D lies", "on the other side from M", "outside triangle KLM".
struct near_side
    : part<Part::near_side, opt<comma>,
           sor<seq<words<"on a same? side of">, plain_line, sor<words<"where|as|like">, words<"on which">>, point,
                   opt<words<"is|lies|stands">>>,
               seq<words<"on a same? side as|of">, point>, seq<words<"towards">, point>>> {};
struct far_side
    : part<Part::far_side, opt<comma>,
           sor<seq<words<"on a other|opposite|far side of">, plain_line, words<"from|to|than|as">, point>,
               seq<words<"on a other|opposite|far side from|to|than|of">, point>, seq<words<"away from">, point>>> {};
struct of_the_triangle : seq<words<"of">, triangle_sign, opt<letters>> {};
struct outer_side
    : part<Part::outer_side, opt<comma>,
           sor<seq<words<"outside">, triangle_sign, opt<letters>>,
               seq<words<"on a outer|outside side">, opt<of_the_triangle>>, seq<words<"on? a outside">, opt<of_the_triangle>>,
               words<"outwards|outward">>> {};
struct inner_side
    : part<Part::inner_side, opt<comma>,
           sor<seq<words<"on a inner side">, opt<of_the_triangle>>, seq<words<"inside">, triangle_sign, opt<letters>>,
               words<"inwards|inward">>> {};
struct some_side : sor<near_side, far_side, outer_side, inner_side> {};
struct line_details : star<sor<meeting, some_side>> {};

// Joining.
struct the_centre : part<Part::the_centre, words<"a centre|center">, opt<words<"of">, circle>> {};
struct joined_point : sor<the_centre, lone_point> {};
struct to_points : words<"to|with"> {};
struct join_to
    : part<Part::join_to, words<"join|connect">, part<Part::from, list<joined_point, conjunction>>, to_points,
           part<Part::subject, list<joined_point, seq<conjunction, opt<to_points>>>>,
           not_at<to_points, point_token, not_at<point_token>>> {};
struct segment_from : part<Part::line, words<"a line|segment from">, point, words<"to">, point> {};
struct drawn_segment : sor<segment_from, seq<opt<words<"a radius|radii">>, plain_line>> {};
struct join_pairs
    : part<Part::join, words<"join|connect">,
           list<sor<plain_line, part<Part::line, point, words<"to|and|with">, point>>, conjunction>> {};
struct drawn_segments : part<Part::join, draws, list<drawn_segment, conjunction>> {};
// A line through three points is not drawn but found; what it says is left to the rooms that judge it.
struct through_three : says<Predicate::collinear, "", draws, words<"a straight? line through">, point, conjunction,
                            point, plus<conjunction, point>> {};

// Lines with a direction.
struct passes : seq<words<"through|from|at">, point> {};
struct a_line : sor<part<Part::ray, words<"a ray|half-line">>, plain_line, words<"a straight? line">> {};
struct direction
    : sor<part<Part::parallel_to, sor<parallel_sign, words<"a parallel to|with">>, line>,
          part<Part::perpendicular_to, sor<perpendicular_sign, words<"a perpendicular|normal to|on">>, line>> {};
struct parallel_through
    : seq<words<"a parallel">, passes, part<Part::parallel_to, words<"to|with">, line>> {};
struct drawn_line
    : part<Part::drawn_line,
           sor<seq<passes, opt<comma>, draws, opt<a_line>, direction>,
               seq<draws, passes, opt<comma>, opt<a_line>, direction>,
               seq<draws, parallel_through>,
               seq<draws, opt<a_line>, direction, passes>,
               seq<draws, opt<a_line>, passes, opt<words<"and">>, direction>,
               seq<draws, plain_line, direction>>,
           line_details> {};
struct drawn_ray
    : part<Part::drawn_ray,
           sor<seq<draws, words<"a ray|line|half-line from">, point, words<"through">, point>,
               seq<draws, words<"from">, point, words<"a ray|line|half-line through">, point>,
               seq<draws, words<"a ray">, two_points>, seq<draws, plain_line, at<meeting>>>,
           line_details> {};
struct drawn_angle
    : part<Part::drawn_angle,
           sor<seq<draws, words<"from|through|at">, point, words<"a ray|line">>,
               seq<words<"from|through|at">, point, opt<comma>, draws, words<"a ray|line">>,
               seq<draws, words<"a ray|line from|through|at">, point>>,
           words<"making|forming with">, plain_line, words<"a angle">, sor<words<"equal to">, words<"of">>,
           expression, line_details> {};

// Perpendiculars with a foot; named lines of triangles; bisectors; midpoints.
struct foot_at : seq<opt<comma>, sor<words<"meeting|cutting it|them? at|in">, words<"with|and foot|feet">, words<"at">>,
                     part<Part::at_feet, lone_points>> {};
struct onto : words<"to|on|onto|upon"> {};
struct drawn_foot
    : part<Part::drawn_foot, sor<draws, words<"drop">>, words<"a perpendicular|perpendiculars|altitude|height">,
           sor<seq<part<Part::subject, plain_line>, opt<words<"from">, point>, onto, plain_line>,
               seq<words<"from">, point, onto, list<plain_line, conjunction>>,
               seq<onto, plain_line, words<"from">, point>>,
           opt<foot_at>> {};
struct drawn_cevian
    : part<Part::drawn_cevian, draws, sor<part<Part::median, words<"a median">>, part<Part::altitude, words<"a altitude|height">>>,
           sor<seq<part<Part::subject, plain_line>, opt<words<"from">, point>>, seq<words<"from|through">, point>>,
           opt<onto, plain_line>, opt<of_shape>, opt<foot_at>> {};
struct drawn_bisector
    : part<Part::drawn_bisector,
           sor<seq<draws, words<"a internal|interior? angle? bisector">, opt<plain_line>, words<"of|at">>,
               seq<words<"bisect">>, seq<draws, plain_line, words<"bisecting">>>,
           sor<angle, part<Part::angle, letters>>, opt<words<"by">, plain_line>, line_details> {};
struct drawn_midpoint
    : part<Part::drawn_midpoint, sor<marks_point, draws>, words<"a midpoint|mid-point|midpoints|middle">,
           opt<lone_points>, words<"of">, list<plain_line, conjunction>,
           opt<opt<comma>, words<"respectively">>> {};
struct drawn_centre
    : part<Part::drawn_centre, sor<marks_point, draws>,
           sor<part<Part::incentre, words<"a incentre|incenter of|in">, triangle_or_letters>,
               part<Part::circumcentre, words<"a circumcentre|circumcenter of|in">, triangle_or_letters>,
               part<Part::orthocentre, words<"a orthocentre|orthocenter of|in">, triangle_or_letters>>> {};
struct drawn_perpendicular_bisector
    : part<Part::drawn_perpendicular_bisector, draws, words<"a perpendicular bisector of">, plain_line, line_details> {};

// Circles.
struct of_circle : seq<words<"of|to|in">, circle> {};
struct drawn_diameter
    : part<Part::drawn_diameter, draws, words<"a diameter">, opt<of_circle>,
           sor<seq<words<"through|from">, point>, plain_line>, opt<of_circle>, star<meeting>> {};
struct drawn_tangent
    : part<Part::drawn_tangent,
           sor<seq<draws, words<"a tangent|tangents">, opt<of_circle>, words<"at">, lone_points, opt<of_circle>>,
               seq<draws, words<"through|at">, point, words<"a tangent">, opt<of_circle>>,
               seq<words<"through|at">, point, draws, words<"a tangent">, opt<of_circle>>,
               seq<draws, words<"a tangent">, part<Part::subject, plain_line>, opt<of_circle>, opt<words<"at">, point>,
                   opt<of_circle>>>,
           sor<plus<meeting>, meeting_together, line_details>> {};
struct drawn_tangents_from
    : part<Part::drawn_tangents_from, draws, words<"a two? tangents from">, point, opt<of_circle>,
           opt<opt<comma>, words<"touching|meeting it? at">, point, words<"and">, point>> {};

// Producing.
struct own_length : part<Part::own_length, words<"by its own length">> {};
struct produces : words<"produce|extend|prolong"> {};
struct to_named : seq<words<"to">, opt<words<"a? point|points">>, part<Part::at_feet, lone_points>> {};
struct drawn_produced
    : part<Part::drawn_produced, produces, opt<words<"both">>, list<plain_line, conjunction>,
           opt<part<Part::from, words<"beyond">, point>>,
           sor<seq<own_length, opt<to_named>>, meeting, meeting_together, to_named, at<sentence_stop>>> {};

// Figures put on a side.
struct build
    : part<Part::build, sor<words<"build">, draws>,
           sor<part<Part::equilateral, words<"a equilateral triangle">>, part<Part::square, words<"a square">>>,
           opt<letters>, opt<words<"on|over|upon a? side?">, plain_line>, star<some_side>> {};
struct mirror : part<Part::mirror, words<"mirror|reflect">, point, words<"in|at|across|over">, plain_line,
                     opt<words<"to">, point>> {};

// An ordinary clause that places named points: "mark P on KL", "complete the parallelogram KLMX".
struct placed_points : seq<sor<marks_point, words<"complete">>, sor<shape_clause, points_clause>> {};

// Understood, but not enough: for a diagnostic of its own.
struct line_kind : words<"a straight? tangent|diameter|line|ray|perpendicular|parallel|chord|radius|altitude|median|bisector"> {
};
struct drawn_vaguely
    : seq<part<Part::drawn_vaguely,
               sor<seq<draws, line_kind, opt<of_circle>, opt<passes>>, seq<draws, passes, line_kind>,
                   seq<passes, draws, line_kind>, seq<words<"join|connect">, point>>>,
          at<sentence_stop>> {};

struct drawing_verb : words<"draw|construct|erect|join|connect|drop|produce|extend|prolong|bisect|mark|take|place|"
                            "choose|build|mirror|reflect|complete"> {};
struct drawing_opens : sor<drawing_verb, seq<words<"through|from|at">, point, opt<comma>, draws>> {};
struct drawing
    : seq<at<drawing_opens>,
          sor<join_to, join_pairs, drawn_angle, drawn_foot, drawn_cevian, drawn_line, drawn_perpendicular_bisector,
              drawn_bisector, drawn_midpoint, drawn_centre, drawn_diameter, drawn_tangents_from, drawn_tangent,
              through_three, drawn_ray, build, mirror, drawn_produced, drawn_segments,
              seq<draws, sor<line_through, bisector_meets>>, part<Part::line_clause, draws, line, bisector>,
              placed_points, drawn_vaguely>> {};

}  // namespace prover::grammar
