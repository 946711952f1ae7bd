#include <catch2/catch.hpp>

#include "tests/unit/check/board.hpp"

using namespace board;

namespace {

// One step of a shape whose conclusion is asked for as it stands: is the step accepted?
struct ShapeBoard {
  Board b;
  std::vector<std::pair<int, int>> cited;

  explicit ShapeBoard(const std::string& letters) : b(letters) {}
  ShapeBoard& says(Predicate predicate, const std::string& letters) {
    b.given(b.phrase(predicate, letters));
    return *this;
  }
  // A given whose equation is a premise.
  ShapeBoard& knows(Predicate predicate, const std::string& letters, const Form& form) {
    cited.emplace_back(b.say_given(b.given(b.phrase(predicate, letters)), {form}), 0);
    return *this;
  }
  ShapeBoard& knows(const Sum& sum) {
    cited.emplace_back(b.say_given(b.given(b.relation(sum, {})), {b.form(sum)}), 0);
    return *this;
  }
  std::string gives(Builtin shape, const std::string& places, const Sum& sum) {
    return gives(shape, places, b.form(sum));
  }
  std::string gives(Builtin shape, const std::string& places, const Form& form) {
    Board c = b;
    const int step = c.say(c.builtin(shape), places, cited, {form});
    // Claimed in words that do not matter here: a contradiction is refused after the step was accepted.
    c.proof.contradiction = true;
    c.proof.goal = {form};
    c.proof.conclusion = {{{{step, 0, 1}}}};
    const CheckReport report = c.report();
    return report.step == step ? report.objection
           : report.step == -1 ? ""
                               : "an earlier step: " + report.objection;
  }
};

}  // namespace

TEST_CASE("neighbouring angles add up in their order") {
  ShapeBoard one("VABCD");
  one.says(Predicate::inside_angle, "BAVC").says(Predicate::inside_angle, "CAVD");
  const auto shape = Builtin::angle_addition;
  CHECK(one.gives(shape, "VABCD", {{1, "AVB"}, {1, "BVC"}, {1, "CVD"}, {-1, "AVD"}}).empty());
  CHECK(one.gives(shape, "VABC", {{1, "AVB"}, {1, "BVC"}, {-1, "AVC"}}).empty());
  CHECK(one.gives(shape, "VBCD", {{1, "BVC"}, {1, "CVD"}, {-1, "BVD"}}).empty());
  CHECK_FALSE(one.gives(shape, "VACBD", {{1, "AVC"}, {1, "BVC"}, {1, "BVD"}, {-1, "AVD"}}).empty());
  CHECK_FALSE(one.gives(shape, "VABC", {{1, "AVB"}, {1, "BVC"}, {-1, "AVD"}}).empty());
  CHECK_FALSE(one.gives(shape, "VAB", Sum{}).empty());
  CHECK_FALSE(ShapeBoard("VABC").gives(shape, "VABC", {{1, "AVB"}, {1, "BVC"}, {-1, "AVC"}}).empty());
}

TEST_CASE("neighbouring segments add up in their order") {
  ShapeBoard one("ABCD");
  one.says(Predicate::line_order, "ABCD");
  CHECK(one.gives(Builtin::segment_addition, "ABCD", {{1, "AB"}, {1, "BC"}, {1, "CD"}, {-1, "AD"}}).empty());
  CHECK(one.gives(Builtin::segment_addition, "DBA", {{1, "DB"}, {1, "BA"}, {-1, "AD"}}).empty());
  CHECK_FALSE(one.gives(Builtin::segment_addition, "ACB", {{1, "AC"}, {1, "BC"}, {-1, "AB"}}).empty());
  CHECK_FALSE(ShapeBoard("ABC")
                  .says(Predicate::collinear, "ABC")
                  .gives(Builtin::segment_addition, "ABC", {{1, "AB"}, {1, "BC"}, {-1, "AC"}})
                  .empty());
}

TEST_CASE("angles on one side of a straight line make 180 degrees") {
  const auto shape = Builtin::angles_on_a_straight_line;
  ShapeBoard one("VABCD");
  one.says(Predicate::line_order, "AVD")
      .says(Predicate::triangle, "AVC")
      .says(Predicate::inside_angle, "BAVC");
  CHECK(one.gives(shape, "VACD", {{1, "AVC"}, {1, "CVD"}, {-180, ""}}).empty());
  CHECK(one.gives(shape, "VABCD", {{1, "AVB"}, {1, "BVC"}, {1, "CVD"}, {-180, ""}}).empty());
  CHECK(one.gives(shape, "VDCBA", {{1, "AVB"}, {1, "BVC"}, {1, "CVD"}, {-180, ""}}).empty());
  CHECK_FALSE(one.gives(shape, "VACD", {{1, "AVC"}, {1, "CVD"}, {-181, ""}}).empty());
  CHECK_FALSE(one.gives(shape, "VACBD", {{1, "AVC"}, {1, "BVC"}, {1, "BVD"}, {-180, ""}}).empty());
  CHECK_FALSE(one.gives(shape, "VABC", {{1, "AVB"}, {1, "BVC"}, {-180, ""}}).empty());
}

TEST_CASE("angles once round a point make 360 degrees") {
  const auto shape = Builtin::angles_at_a_point;
  ShapeBoard three("VABC");  // V inside a triangle
  three.says(Predicate::inside_polygon, "VABC");
  CHECK(three.gives(shape, "VABC", {{1, "AVB"}, {1, "BVC"}, {1, "CVA"}, {-360, ""}}).empty());
  CHECK_FALSE(three.gives(shape, "VABC", {{1, "AVB"}, {1, "BVC"}, {1, "CVA"}, {-180, ""}}).empty());
  CHECK_FALSE(ShapeBoard("VABC")
                  .says(Predicate::inside_angle, "BAVC")
                  .gives(shape, "VABC", {{1, "AVB"}, {1, "BVC"}, {1, "CVA"}, {-360, ""}})
                  .empty());

  ShapeBoard crossing("VABCD");
  crossing.says(Predicate::cross, "VACBD");
  const Sum round{{1, "AVB"}, {1, "BVC"}, {1, "CVD"}, {1, "DVA"}, {-360, ""}};
  CHECK(crossing.gives(shape, "VABCD", round).empty());
  CHECK_FALSE(crossing.gives(shape, "VACBD", {{1, "BVC"}, {1, "DVA"}, {0, ""}}).empty());

  ShapeBoard half("VABC");  // a straight angle and its other side
  half.says(Predicate::line_order, "AVB").says(Predicate::triangle, "AVC");
  CHECK(half.gives(shape, "VABC", {{1, "BVC"}, {1, "CVA"}, {-180, ""}}).empty());

  ShapeBoard pentagon("VABCDE");  // five rays: each further one is told beside the one before
  pentagon.says(Predicate::regular_polygon, "ABCDE").says(Predicate::inside_polygon, "VABCDE");
  const Sum five{{1, "AVB"}, {1, "BVC"}, {1, "CVD"}, {1, "DVE"}, {1, "EVA"}, {-360, ""}};
  CHECK_FALSE(
      pentagon.gives(shape, "VABCDE", five).empty());  // might go round more than once, as far as told
  pentagon.says(Predicate::inside_angle, "BAVC").says(Predicate::inside_angle, "DCVE");
  CHECK(pentagon.gives(shape, "VABCDE", five).empty());
  CHECK_FALSE(
      pentagon
          .gives(shape, "VACEBD", {{1, "AVC"}, {1, "CVE"}, {1, "EVB"}, {1, "BVD"}, {1, "DVA"}, {-360, ""}})
          .empty());
}

TEST_CASE("interior angles of a polygon") {
  const auto shape = Builtin::polygon_interior_sum;
  ShapeBoard convex("ABCDE");
  convex.says(Predicate::convex, "ABCDE");
  CHECK(convex.gives(shape, "ABCDE", {{1, "EAB"}, {1, "ABC"}, {1, "BCD"}, {1, "CDE"}, {1, "DEA"}, {-540, ""}})
            .empty());
  CHECK(convex
            .gives(Builtin::quadrilateral_angle_sum, "ABCD",
                   {{1, "DAB"}, {1, "ABC"}, {1, "BCD"}, {1, "CDA"}, {-360, ""}})
            .empty());
  CHECK_FALSE(convex
                  .gives(Builtin::quadrilateral_angle_sum, "ABDC",
                         {{1, "CAB"}, {1, "ABD"}, {1, "BDC"}, {1, "DCA"}, {-360, ""}})
                  .empty());
  CHECK_FALSE(
      convex.gives(shape, "ABCDE", {{1, "EAB"}, {1, "ABC"}, {1, "BCD"}, {1, "CDE"}, {1, "DEA"}, {-720, ""}})
          .empty());
  CHECK_FALSE(ShapeBoard("ABCD")
                  .says(Predicate::simple_polygon, "ABCD")
                  .gives(shape, "ABCD", {{1, "DAB"}, {1, "ABC"}, {1, "BCD"}, {1, "CDA"}, {-360, ""}})
                  .empty());
}

TEST_CASE("a dart has one reflex corner, and the positions say which") {
  ShapeBoard dart("ABCD");  // D inside triangle ABC
  dart.says(Predicate::inside_polygon, "DABC");
  const auto shape = Builtin::quadrilateral_angle_sum;
  // DAB + ABC + BCD + (360 − CDA) = 360
  CHECK(dart.gives(shape, "ABCD", {{1, "DAB"}, {1, "ABC"}, {1, "BCD"}, {-1, "CDA"}}).empty());
  CHECK_FALSE(
      dart.gives(shape, "ABCD", {{1, "DAB"}, {1, "ABC"}, {1, "BCD"}, {1, "CDA"}, {-360, ""}}).empty());
  CHECK_FALSE(dart.gives(shape, "ABCD", {{1, "DAB"}, {-1, "ABC"}, {1, "BCD"}, {1, "CDA"}}).empty());
}

TEST_CASE("exterior angles of a convex polygon, sides produced one way round") {
  ShapeBoard one("ABCDPQRS");
  one.says(Predicate::convex, "ABCD").says(Predicate::line_order, "DAP").says(Predicate::line_order, "ABQ");
  one.says(Predicate::line_order, "BCR").says(Predicate::line_order, "CDS");
  const Sum round{{1, "PAB"}, {1, "QBC"}, {1, "RCD"}, {1, "SDA"}, {-360, ""}};
  CHECK(one.gives(Builtin::polygon_exterior_sum, "ABCDPQRS", round).empty());
  CHECK_FALSE(one.gives(Builtin::polygon_exterior_sum, "ABCDQPRS", round).empty());
  CHECK_FALSE(one.gives(Builtin::polygon_exterior_sum, "ABCDPQR", round).empty());
  CHECK_FALSE(one.gives(Builtin::polygon_exterior_sum, "DCBAPQRS", round).empty());
}

TEST_CASE("regular polygons") {
  ShapeBoard one("ABCDE");
  one.knows(Predicate::regular_polygon, "ABCDE", one.b.fact(FactKind::regular_polygon, "ABCDE"));
  CHECK(one.gives(Builtin::regular_polygon_angles, "ABCDE", {{1, "ABC"}, {-108, ""}}).empty());
  CHECK(one.gives(Builtin::regular_polygon_angles, "CBAED", {{1, "ABC"}, {-108, ""}}).empty());
  CHECK(one.gives(Builtin::regular_polygon_sides, "ABCDE", {{1, "BC"}, {-1, "DE"}}).empty());
  CHECK_FALSE(one.gives(Builtin::regular_polygon_angles, "ABCDE", {{1, "ABC"}, {-120, ""}}).empty());
  CHECK_FALSE(one.gives(Builtin::regular_polygon_angles, "ACEBD", {{1, "ACE"}, {-108, ""}}).empty());
  CHECK_FALSE(one.gives(Builtin::regular_polygon_sides, "ABCDE", {{1, "AC"}, {-1, "DE"}}).empty());
  CHECK(one.gives(Builtin::regular_polygon_equal_angles, "ABCDE", {{1, "ABC"}, {-1, "CDE"}}).empty());
  CHECK_FALSE(one.gives(Builtin::regular_polygon_equal_angles, "ABCDE", {{1, "ABC"}, {-1, "ACD"}}).empty());
  CHECK_FALSE(ShapeBoard("ABCDE")
                  .says(Predicate::convex, "ABCDE")
                  .gives(Builtin::regular_polygon_angles, "ABCDE", {{1, "ABC"}, {-108, ""}})
                  .empty());
}

TEST_CASE("similar triangles by sides in one ratio") {
  ShapeBoard sas("ABCDEF");
  sas.says(Predicate::triangle, "ABC");
  sas.knows({{1, "AB"}, {-2, "DE"}}).knows({{1, "AC"}, {-2, "DF"}}).knows({{1, "BAC"}, {-1, "EDF"}});
  const Form similar = sas.b.fact(FactKind::similar, "ABCDEF");
  CHECK(sas.gives(Builtin::similar_sas, "ABCDEF", similar).empty());
  CHECK(sas.gives(Builtin::similar_sas, "BACEDF", similar).empty());
  CHECK_FALSE(sas.gives(Builtin::similar_sas, "ACBDEF", similar).empty());
  CHECK_FALSE(sas.gives(Builtin::similar_sss, "ABCDEF", similar).empty());
  CHECK_FALSE(sas.gives(Builtin::similar_sas, "ABCDEF", sas.b.fact(FactKind::congruent, "ABCDEF")).empty());

  ShapeBoard sss("ABCDEF");
  sss.says(Predicate::triangle, "DEF").knows({{1, "AB"}, {-2, "DE"}}).knows({{1, "AC"}, {-2, "DF"}});
  sss.knows({{Rational(1, 2), "BC"}, {-1, "EF"}});
  CHECK(sss.gives(Builtin::similar_sss, "ABCDEF", sss.b.fact(FactKind::similar, "ABCDEF")).empty());

  ShapeBoard other("ABCDEF");
  other.says(Predicate::triangle, "DEF").knows({{1, "AB"}, {-2, "DE"}}).knows({{1, "AC"}, {-2, "DF"}});
  other.knows({{1, "BC"}, {-3, "EF"}});
  CHECK_FALSE(other.gives(Builtin::similar_sss, "ABCDEF", other.b.fact(FactKind::similar, "ABCDEF")).empty());

  ShapeBoard parts("ABCDEF");
  parts.knows(Predicate::similar, "ABCDEF", parts.b.fact(FactKind::similar, "ABCDEF"));
  CHECK_FALSE(parts.gives(Builtin::similar_parts_sides, "ABCDEF", {{1, "AC"}, {-2, "DF"}}).empty());
  parts.knows({{1, "AB"}, {-2, "DE"}});
  CHECK(parts.gives(Builtin::similar_parts_sides, "ABCDEF", {{1, "AC"}, {-2, "DF"}}).empty());
  CHECK_FALSE(parts.gives(Builtin::similar_parts_sides, "ABCDEF", {{1, "AC"}, {-3, "DF"}}).empty());
  CHECK_FALSE(parts.gives(Builtin::similar_parts_sides, "ACBDEF", {{1, "AC"}, {-2, "DF"}}).empty());
}

TEST_CASE("joining two points says only that") {
  ShapeBoard one("ABC");
  CHECK(one.gives(Builtin::join, "AB", one.b.fact(FactKind::joined, "AB")).empty());
  CHECK_FALSE(one.gives(Builtin::join, "AB", one.b.fact(FactKind::joined, "AC")).empty());
  CHECK_FALSE(one.gives(Builtin::join, "AA", one.b.fact(FactKind::joined, "AB")).empty());
  CHECK_FALSE(one.gives(Builtin::join, "AB", {{1, "AB"}, {-1, "BC"}}).empty());
}
