// Each predicate with a figure that meets it and a wrong twin that does not.
#include <catch2/catch.hpp>
#include <cmath>

#include "prover/sketch/constraint.hpp"
#include "prover/sketch/random.hpp"
#include "tests/unit/sketch/said.hpp"

using namespace prover;
using namespace prover::sketching;

namespace {

struct Twins {
  const char* what;
  Phrase phrase;
  Sketch good, wrong;
};

Sketch with_circle(Sketch sketch, char centre, char on) {
  sketch.on_circle[point(centre).index()] = point(on);
  return sketch;
}

const double half_root_3 = std::sqrt(3) / 2;

std::vector<Twins> all_twins() {
  using P = Predicate;
  const Sketch square = figure({{0, 0}, {2, 0}, {2, 2}, {0, 2}});
  const Sketch bow_tie = figure({{0, 0}, {2, 2}, {2, 0}, {0, 2}});
  const Sketch slanted = figure({{0, 0}, {3, 0}, {4, 1}, {1, 1}});
  const Sketch even = figure({{0, 0}, {1, 0}, {0.5, half_root_3}});
  const Sketch flat = figure({{0, 0}, {1, 0}, {2, 0}});
  return {
      {"triangle", say(P::triangle, "ABC"), even, flat},
      {"acute", say(P::acute, "ABC"), even, figure({{0, 0}, {1, 0}, {-1, 1}})},
      {"line order", say(P::line_order, "ABC"), flat, figure({{0, 0}, {2, 0}, {1, 0}})},
      {"collinear", say(P::collinear, "ABC"), figure({{0, 0}, {2, 0}, {1, 0}}), even},
      {"on ray", say(P::on_ray, "CAB"), flat, figure({{0, 0}, {1, 0}, {-1, 0}})},
      {"on segment", say(P::on_segment, "BAC"), flat, figure({{0, 0}, {3, 0}, {2, 0}})},
      {"on line", say(P::on_line, "CAB"), figure({{0, 0}, {1, 0}, {-1, 0}}), even},
      {"parallel", say(P::parallel, "ABCD"), square, figure({{0, 0}, {2, 0}, {2, 2}, {0, 1}})},
      {"parallel, not one line", say(P::parallel, "ABCD"), square, figure({{0, 0}, {1, 0}, {2, 0}, {3, 0}})},
      {"perpendicular", say(P::perpendicular, "ABBC"), square, slanted},
      {"meet", say(P::meet, "EABCD"), figure({{0, 0}, {1, 0}, {2, 1}, {2, 2}, {2, 0}}),
       figure({{0, 0}, {1, 0}, {2, 1}, {2, 2}, {2, 0.1}})},
      {"cross", say(P::cross, "EACBD"), figure({{0, 0}, {2, 0}, {2, 2}, {0, 2}, {1, 1}}),
       figure({{0, 0}, {2, 0}, {0.5, 0.5}, {0, 2}, {1, 1}})},
      {"midpoint", say(P::midpoint, "BAC"), flat, figure({{0, 0}, {1.01, 0}, {2, 0}})},
      {"foot", say(P::foot, "CDAB"), figure({{0, 0}, {4, 0}, {1, 0}, {1, 2}}),
       figure({{0, 0}, {4, 0}, {1, 0}, {1.2, 2}})},
      {"perpendicular bisector", say(P::perpendicular_bisector, "CDAB"), figure({{0, 0}, {2, 0}, {1, 1}, {1, 3}}),
       figure({{0, 0}, {2, 0}, {1, 1}, {1.2, 3}})},
      {"isosceles", say(P::isosceles, "ABC"), figure({{0, 0}, {2, 0}, {1, 3}}), figure({{0, 0}, {2, 0}, {0.5, 3}})},
      {"isosceles at", say(P::isosceles_at, "CAB"), figure({{0, 0}, {2, 0}, {1, 3}}),
       figure({{0, 0}, {2, 0}, {2, 2}})},
      {"equilateral", say(P::equilateral, "ABC"), even, figure({{0, 0}, {2, 0}, {1, 3}})},
      {"right-angled", say(P::right_angled, "BAC"), square, even},
      {"circle", say(P::circle, "DABC"), figure({{1, 0}, {0, 1}, {-1, 0}, {0, 0}}),
       figure({{1, 0}, {0, 1}, {-1, 0.1}, {0, 0}})},
      {"circle in order", say(P::circle_cyclic, "EABCD"), figure({{1, 0}, {0, 1}, {-1, 0}, {0, -1}, {0, 0}}),
       figure({{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {0, 0}})},
      {"concyclic", say(P::concyclic, "ABCD"), bow_tie, slanted},
      {"concyclic in order", say(P::concyclic_cyclic, "ABCD"), square, bow_tie},
      {"diameter", say(P::diameter, "ACB"), flat, even},
      {"tangent", say(P::tangent, "ABC"), with_circle(figure({{0, 0}, {2, 0}, {2, 1}, {3, 1}}), 'C', 'D'),
       with_circle(figure({{0, 0}, {2, 0}, {2, 1}, {3.5, 1}}), 'C', 'D')},
      {"tangent to a circumcircle", say(P::tangent_circumcircle, "DAABC"), figure({{0, -1}, {1, 0}, {0, 1}, {5, -1}}),
       figure({{0, -1}, {1, 0}, {0, 1}, {5, -0.9}})},
      {"bisects", say(P::bisects, "DABC"), figure({{1, 0}, {0, 0}, {0, 1}, {2, 2}}),
       figure({{1, 0}, {0, 0}, {0, 1}, {-2, -2}})},
      {"bisects a straight angle", say(P::bisects, "DABC"), figure({{1, 0}, {0, 0}, {-1, 0}, {0, 2}}),
       figure({{1, 0}, {0, 0}, {-1, 0}, {0.1, 2}})},
      {"regular", say(P::regular_polygon, "ABCD"), square, slanted},
      {"regular, in order", say(P::regular_polygon, "ABCD"), square, bow_tie},
      {"convex", say(P::convex, "ABCD"), slanted, bow_tie},
      {"convex, no dent", say(P::convex, "ABCD"), slanted, figure({{0, 0}, {4, 0}, {1, 1}, {0, 4}})},
      {"simple", say(P::simple_polygon, "ABCD"), figure({{0, 0}, {4, 0}, {1, 1}, {0, 4}}), bow_tie},
      {"parallelogram", say(P::parallelogram, "ABCD"), slanted, bow_tie},
      {"rectangle", say(P::rectangle, "ABCD"), figure({{0, 0}, {3, 0}, {3, 1}, {0, 1}}), slanted},
      {"rhombus", say(P::rhombus, "ABCD"), figure({{0, 0}, {2, 1}, {4, 0}, {2, -1}}), slanted},
      {"square", say(P::square, "ABCD"), square, figure({{0, 0}, {2, 1}, {4, 0}, {2, -1}})},
      {"kite", say(P::kite, "ABCD"), figure({{0, 0}, {1, 1}, {4, 0}, {1, -1}}), slanted},
      {"trapezium", say(P::trapezium, "ABCD"), figure({{0, 0}, {4, 0}, {3, 1}, {1, 1}}),
       figure({{0, 0}, {4, 0}, {1, 1}, {3, 1}})},
      {"inside a triangle", say(P::inside_polygon, "DABC"), figure({{0, 0}, {4, 0}, {0, 4}, {1, 1}}),
       figure({{0, 0}, {4, 0}, {0, 4}, {3, 3}})},
      {"inside a polygon, in its dent", say(P::inside_polygon, "EABCD"),
       figure({{0, 0}, {4, 0}, {1, 1}, {0, 4}, {0.5, 0.5}}),
       figure({{0, 0}, {4, 0}, {1, 1}, {0, 4}, {1.5, 1.5}})},
      {"inside an angle", say(P::inside_angle, "DABC"), figure({{1, 0}, {0, 0}, {0, 1}, {5, 5}}),
       figure({{1, 0}, {0, 0}, {0, 1}, {-1, 5}})},
      {"inside a circle", say(P::inside_circle, "CA"), with_circle(figure({{0, 0}, {2, 0}, {0, 1}}), 'A', 'B'),
       with_circle(figure({{0, 0}, {2, 0}, {0, 3}}), 'A', 'B')},
      {"inside a circle nobody knows", say(P::inside_circle, "CA"),
       with_circle(figure({{0, 0}, {2, 0}, {0, 1}}), 'A', 'B'),
       figure({{0, 0}, {2, 0}, {0, 1}})},
      {"outside a polygon", say(P::outside_polygon, "DABC"), figure({{0, 0}, {4, 0}, {0, 4}, {3, 3}}),
       figure({{0, 0}, {4, 0}, {0, 4}, {1, 1}})},
      {"outside a circle", say(P::outside_circle, "CA"), with_circle(figure({{0, 0}, {2, 0}, {0, 3}}), 'A', 'B'),
       with_circle(figure({{0, 0}, {2, 0}, {0, 1}}), 'A', 'B')},
      {"same side", say(P::same_side, "CDAB"), square, figure({{0, 0}, {2, 0}, {2, 2}, {0, -2}})},
      {"opposite sides", say(P::opposite_sides, "CDAB"), figure({{0, 0}, {2, 0}, {2, 2}, {0, -2}}), square},
      {"congruent", say(P::congruent, "ABCDEF"), figure({{0, 0}, {3, 0}, {0, 4}, {5, 5}, {5, 8}, {9, 5}}),
       figure({{0, 0}, {3, 0}, {0, 4}, {5, 5}, {9, 5}, {5, 8}})},
      {"similar", say(P::similar, "ABCDEF"), figure({{0, 0}, {3, 0}, {0, 4}, {5, 5}, {5, 11}, {13, 5}}),
       figure({{0, 0}, {3, 0}, {0, 4}, {5, 5}, {13, 5}, {5, 11}})},
      {"an angle", equal({angle("ABC")}, {constant(90)}), square, slanted},
      {"a reflex angle", equal({reflex("ABC")}, {constant(270)}), square, slanted},
      {"a sum of angles", equal({angle("BAC"), angle("ABC")}, {constant(120)}), even, square},
      {"a larger angle", relate({angle("ABC")}, Comparison::greater, {angle("BAD")}), slanted, square},
      {"equal lengths", equal({length("AB")}, {length("BC")}), square, slanted},
      {"a sum of lengths", equal({length("AC")}, {length("AB"), length("BC")}), flat, even},
      {"a length", equal({length("AB")}, {constant(2)}), square, slanted},
      {"a shorter length", relate({length("AB")}, Comparison::less, {length("AC")}), square, even},
  };
}

}  // namespace

TEST_CASE("a predicate holds in a figure that meets it and not in its wrong twin") {
  for (const Twins& twins : all_twins()) {
    INFO(twins.what);
    CHECK(holds(twins.phrase, twins.good));
    CHECK_FALSE(holds(twins.phrase, twins.wrong));
  }
}

TEST_CASE("what a figure does not have makes a phrase false and a quantity no number") {
  const Sketch two = figure({{0, 0}, {1, 0}});
  CHECK_FALSE(holds(say(Predicate::triangle, "ABC"), two));
  CHECK_FALSE(holds(equal({length("AB")}, {number("x")}), two));
  CHECK_FALSE(holds(equal({angle("ABC")}, {constant(40)}), two));
  CHECK(std::isnan(measure(sum({angle("ABC")}), two)));
  CHECK(std::isnan(measure(sum({number("x")}), two)));
}

TEST_CASE("quantities are measured in degrees and in lengths") {
  Sketch right = figure({{3, 0}, {0, 0}, {0, 4}});
  right.numbers["x"] = 7;
  CHECK(measure(sum({angle("ABC")}), right) == Approx(90));
  CHECK(measure(sum({reflex("ABC")}), right) == Approx(270));
  CHECK(measure(Angle{point('A'), point('B'), point('C'), false, true}, right) == Approx(90));
  CHECK(measure(sum({length("AC", 2), constant(1)}), right) == Approx(11));
  CHECK(measure(sum({number("x", Rational(1, 2))}), right) == Approx(3.5));
}

TEST_CASE("sides of a line and order on a line") {
  const Sketch sketch = figure({{0, 0}, {2, 0}, {1, 1}, {1, 0}, {1, -1}});
  CHECK(orientation(sketch, point('A'), point('B'), point('C')) == 1);
  CHECK(orientation(sketch, point('A'), point('B'), point('E')) == -1);
  CHECK(orientation(sketch, point('A'), point('B'), point('D')) == 0);
  CHECK(between(sketch, point('A'), point('D'), point('B')));
  CHECK_FALSE(between(sketch, point('A'), point('B'), point('D')));
  CHECK_FALSE(between(sketch, point('A'), point('C'), point('B')));
}

TEST_CASE("the derivatives are those of the values") {
  Random random(3);
  for (const Twins& twins : all_twins()) {
    INFO(twins.what);
    Layout layout;
    layout.points = twins.good.points.size();
    layout.on_circle = twins.good.on_circle;
    std::vector<double> x;
    for (std::size_t i = 0; i < 2 * layout.points; ++i) x.push_back(random.between(-1, 1));
    Gradient gradient(layout.variables());
    for (const Clause& clause : clauses_of(twins.phrase, layout))
      for (const Branch& branch : clause.branches)
        for (const Constraint& constraint : branch) {
          evaluate(constraint, layout, x.data(), &gradient);
          for (std::size_t i = 0; i < x.size(); ++i) {
            const double step = 1e-6, middle = x[i];
            x[i] = middle + step;
            const double above = evaluate(constraint, layout, x.data());
            x[i] = middle - step;
            const double below = evaluate(constraint, layout, x.data());
            x[i] = middle;
            CHECK(gradient[static_cast<int>(i)] == Approx((above - below) / (2 * step)).margin(1e-6));
          }
        }
  }
}
