// What is said of points: where they lie, what they are the middle, foot or centre of.
#pragma once
#include "prover/language/grammar_quantities.hpp"

namespace prover::grammar {

// "is on", "lies on", "is a point on", "on"
struct lies : sor<words<"is|lies|lie a? point|points">, words<"is|lies|lie">> {};
struct on : sor<words<"is|lies|lie a any? point|points on">, words<"is|lies|lie on">,
                words<"is any? point on">, words<"on">> {};
struct produced_word : words<"produced|extended|prolonged"> {};

struct on_ray : says<Predicate::on_ray, "012", on, words<"a ray">, two_points> {};
struct on_produced_line
    : part<Part::on_produced, on,
           sor<seq<plain_line, opt<comma>, produced_word>,
               seq<words<"a extension|continuation of">, plain_line, opt<words<"beyond">, point>>>> {};
struct through_two_line : part<Part::line, through_two> {};
struct on_line : says<Predicate::on_line, "012", on,
                      sor<seq<words<"a straight? line|lines">, at<two_points>, plain_line>, through_two_line,
                          named_lettered_line, lettered_line>> {};
struct on_segment : says<Predicate::on_segment, "012", on, plain_line> {};
struct circumference : words<"a circumference of"> {};
struct on_circle : part<Part::on_circle, on, opt<circumference>, circle, opt<in_this_order>> {};
struct between : says<Predicate::on_segment, "012", sor<words<"is|lies|lie between">, words<"between">>,
                      point, words<"and">, point> {};
struct midpoint : says<Predicate::midpoint, "012", opt<words<"is">>, words<"a midpoint|mid-point|middle of">,
                       plain_line> {};
struct midpoint_short : says<Predicate::midpoint, "012", words<"of">, plain_line> {};
struct midpoints : part<Part::midpoints, words<"is a midpoints|mid-points of">, list<plain_line, conjunction>,
                        opt<comma>, opt<words<"respectively">>> {};
struct foot : says<Predicate::foot, "0123", words<"is a foot of a perpendicular|altitude|height">,
                   words<"from">, point, words<"to|on|onto">, plain_line> {};

struct polygon_noun
    : sor<triangle_sign,
          words<"a? polygon|quadrilateral|square|rectangle|parallelogram|rhombus|pentagon|hexagon">> {};
struct within : sor<words<"is|lies|lie a? point? inside|in|within">, words<"is|lies|lie inside|in|within">,
                    words<"inside">> {};
struct beyond : sor<words<"is|lies|lie a? point? outside">, words<"is|lies|lie outside">, words<"outside">> {
};
struct a_polygon : sor<seq<polygon_noun, letters>,
                       seq<at<point_token, blanks, point_token, blanks, point_token>, letters>> {};
struct inside : sor<says<Predicate::inside_polygon, "", within, opt<words<"a interior of">>, a_polygon>,
                    says<Predicate::inside_angle, "", within, opt<words<"a interior of">>, angle>,
                    part<Part::inside, within, circle>> {};
struct outside
    : sor<says<Predicate::outside_polygon, "", beyond, a_polygon>, part<Part::outside, beyond, circle>> {};

struct triangle_or_letters : seq<opt<triangle_sign>, letters> {};
struct is_centre : part<Part::is_centre, words<"is a centre|center of">, circle, opt<in_this_order>> {};
struct incentre : part<Part::incentre, words<"is a incentre|incenter of">, triangle_or_letters> {};
struct circumcentre
    : part<Part::circumcentre, words<"is a circumcentre|circumcenter of">, triangle_or_letters> {};
struct orthocentre : part<Part::orthocentre, words<"is a orthocentre|orthocenter of">, triangle_or_letters> {
};

// "X is where lines AB and CD meet" leaves open on which side of X they go on; segments cross inside both.
struct is_where : seq<words<"is">, sor<words<"where">, words<"a point where">, words<"a point at which">>> {};
struct inner_lines : words<"a segments|chords|diagonals"> {};
struct where_cross
    : sor<says<Predicate::cross, "01234", is_where, at<inner_lines>, line, words<"and">, line,
               words<"meet|intersect|cross">>,
          says<Predicate::cross, "01234", is_where, not_at<words<"a? straight? lines">>, line, words<"and">, line,
               words<"cross">>> {};
struct where_meet : says<Predicate::meet, "01234", is_where, line, words<"and">, line,
                         words<"meet|intersect|cross">> {};
struct intersection : says<Predicate::meet, "01234", words<"is">,
                           sor<words<"a intersection of">, words<"a point of intersection of">,
                               words<"a intersection point of">>,
                           line, words<"and|with">, line> {};

// Said of several points together.
struct on_a_line
    : part<Part::on_a_line,
           sor<words<"is all? collinear">, words<"lie|are all? on a? same|one|single? straight? line">>,
           opt<in_this_order>> {};
struct concyclic : part<Part::on_circle, words<"is all? concyclic">, opt<in_this_order>> {};
struct same_side : part<Part::same_side, opt<words<"is|lie">>, words<"on a? same side of">, line> {};
struct opposite_sides
    : part<Part::opposite_sides, opt<words<"is|lie">>, words<"on opposite|different sides of">, line> {};

struct point_verb : sor<on_a_line, concyclic, same_side, opposite_sides, midpoints, midpoint, foot, is_centre,
                        incentre, circumcentre, orthocentre, where_cross, where_meet, intersection, between, on_ray,
                        on_produced_line, on_circle, on_line, on_segment, inside, outside> {};
struct subject : part<Part::subject, list<point, conjunction>> {};
struct again : seq<opt<comma>, words<"and">> {};
struct points_clause
    : part<Part::points_clause, subject, list<seq<opt<words<"both|all">>, point_verb>, again>> {};

}  // namespace prover::grammar
