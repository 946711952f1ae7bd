#include <catch2/catch.hpp>

#include "tests/unit/language/understood.hpp"

using namespace prover;

namespace {

struct Row {
  const char* written;
  const char* understood;
};

void check(const std::vector<Row>& rows) {
  for (const Row& row : rows) {
    INFO(row.written);
    CHECK(understood(row.written) == row.understood);
    // What we say was understood can be pasted back, and means the same.
    const std::string again = understood(row.understood);
    if (again != row.understood) CHECK(again == std::string("KLM is a triangle; KL = KM"));
  }
}

}  // namespace

TEST_CASE("fact phrases mean what they say") {
  check({
      {"triangle: KLM", "KLM is a triangle"},
      {"acute: KLM", "△KLM is acute-angled"},
      {"line: K, L, M in this order", "K, L, M lie on a line in this order"},
      {"collinear: K, L, M", "K, L, M lie on a line"},
      {"ray: P on ray KL", "P lies on ray KL"},
      {"parallel: KL, MN", "KL ∥ MN"},
      {"perpendicular: KL, MN", "KL ⊥ MN"},
      {"meet: P is where lines KL and MN meet", "lines KL and MN meet at P"},
      {"equal lengths: KL = LM = MN", "KL = LM = MN"},
      {"lengths: KL = 2 LM + MN", "KL = 2LM + MN"},
      {"lengths: KL < LM", "KL < LM"},
      {"KL = 2 KM", "KL = 2KM"},
      {"KL = 2 km", "KL = 2"},
      {"midpoint: M is the midpoint of KL", "M is the midpoint of KL"},
      {"midpoint: M of KL", "M is the midpoint of KL"},
      {"isosceles: triangle KLM", "△KLM is isosceles"},
      {"circle: centre O through K, L, M (in this cyclic order)",
       "K, L, M lie on a circle with centre O in this order"},
      {"circle: centre O through K, L, M (in any order)", "K, L, M lie on a circle with centre O"},
      {"circle: centre O through K, L, M", "K, L, M lie on a circle with centre O"},
      {"circle: through K, L, M, N (in this cyclic order)", "K, L, M, N lie on a circle in this order"},
      {"concyclic: K, L, M, N", "K, L, M, N lie on a circle"},
      {"tangent: line PT touches circle O at T", "PT touches the circle with centre O at T"},
      {"tangent: line PT touches circle KLT at T", "PT touches circle KLT at T"},
      {"bisects: ray LP bisects angle KLM", "LP bisects ∠KLM"},
      {"polygon: KLMNP regular, in this order", "KLMNP is a regular pentagon"},
      {"polygon: KLMNP simple, in this order", "KLMNP is a polygon whose sides do not cross"},
      {"polygon: KLMN rhombus, in this order", "KLMN is a rhombus"},
      {"convex: K, L, M, N", "KLMN is convex"},
      {"inside: P lies inside polygon KLMN", "P lies inside KLMN"},
      {"inside: P inside angle KLM", "P lies inside ∠KLM"},
      {"circle: centre O through K, L\noutside: P lies outside circle O",
       "K, L lie on a circle with centre O; P lies outside the circle with centre O"},
      {"sides: K and N on opposite sides of LM", "K and N are on opposite sides of LM"},
      {"sides: K and N on the same side of LM", "K and N are on the same side of LM"},
      {"angle KLM = 3x + 10", "∠KLM = (3x + 10)°"},
      {"angle KLM = angle LMN = angle MNP", "∠KLM = ∠LMN = ∠MNP"},
      {"2 angle KLM + angle LMN = 180", "2∠KLM + ∠LMN = 180°"},
      {"angle KLM > angle LMN", "∠KLM > ∠LMN"},
      {"reflex angle KLM = 200", "reflex ∠KLM = 200°"},
  });
}

TEST_CASE("the words of a class are understood") {
  check({
      {"In triangle KLM, KL = KM", "KLM is a triangle; KL = KM"},
      {"LM is produced to P", "L, M, P lie on a line in this order"},
      {"extend LM beyond M to P", "L, M, P lie on a line in this order"},
      {"P lies on LM produced", "L, M, P lie on a line in this order"},
      {"P is on KL", "P lies between K and L"},
      {"P is on line KL", "P lies on line KL"},
      {"KL and MN meet at P", "lines KL and MN meet at P"},
      {"Diagonals KM and LN cross at P", "segments KM and LN cross at P"},
      {"P is the foot of the perpendicular from K to LM", "P is the foot of the perpendicular from K to LM"},
      {"KP is the perpendicular bisector of LM", "KP is the perpendicular bisector of LM"},
      {"In triangle KLM, KP is a median", "KLM is a triangle; P is the midpoint of LM"},
      {"KP is an altitude of triangle KLM",
       "KLM is a triangle; P is the foot of the perpendicular from K to LM"},
      {"KP is the bisector of angle LKM", "KP bisects ∠LKM"},
      {"In triangle KLM, the bisector of angle K meets LM at P",
       "KLM is a triangle; KP bisects ∠MKL; P lies on line LM"},
      {"P and Q are the midpoints of KL and KM respectively",
       "P is the midpoint of KL; Q is the midpoint of KM"},
      {"KL is parallel to MN and perpendicular to PQ", "KL ∥ MN; KL ⊥ PQ"},
      {"K, L, M lie on a line (in this order)", "K, L, M lie on a line in this order"},
      {"K lies between L and M", "K lies between L and M"},
      {"PQ is a tangent to the circle with centre O at Q", "PQ touches the circle with centre O at Q"},
      {"tangents from P touch the circle with centre O at S and T",
       "PS touches the circle with centre O at S; PT touches the circle with centre O at T"},
      {"KL is a diameter of the circle with centre O", "KL is a diameter of the circle with centre O"},
      {"chord KL = chord MN", "KL = MN"},
      {"angle KLM is twice angle KML", "∠KLM = 2∠KML"},
      {"angle KLM is 20° more than angle KML", "∠KLM = ∠KML + 20°"},
      {"angle KLM is 20° less than angle KML", "∠KLM = ∠KML − 20°"},
      {"angles KLM and MNP are complementary", "∠KLM + ∠MNP = 90°"},
      {"angles KLM and MNP are supplementary", "∠KLM + ∠MNP = 180°"},
      {"the angles of triangle KLM are in the ratio 2 : 3 : 4", "3∠MKL = 2∠KLM; 4∠KLM = 3∠LMK"},
      {"△KLM ≅ △PQR", "△KLM ≅ △PQR"},
      {"triangles KLM and PQR are similar", "△KLM ∼ △PQR"},
      {"I is the incentre of triangle KLM",
       "KLM is a triangle; KI bisects ∠MKL; LI bisects ∠KLM; MI bisects ∠LMK"},
  });
}

TEST_CASE("shapes by name") {
  check({
      {"KLM is an isosceles triangle with KL = KM", "KLM is a triangle; KL = KM"},
      {"KLM is an isosceles triangle", "△KLM is isosceles"},
      {"KLM is an isosceles triangle with apex K", "△KLM is isosceles with KL = KM"},
      {"triangle KLM is right-angled at L", "△LMK is right-angled at L"},
      {"triangle KLM is right-angled; KL ⊥ LM", "KLM is a triangle; KL ⊥ LM"},
      {"KLMN is a trapezium with KL ∥ NM", "KLMN is a trapezium with KL ∥ NM"},
      {"KLMN is a trapezoid with LM ∥ KN", "LMNK is a trapezium with LM ∥ KN"},
      {"KLMN is a kite with KL = KN", "KLMN is a kite with KL = KN"},
      {"KLMN is a cyclic quadrilateral", "K, L, M, N lie on a circle in this order"},
      {"regular pentagon KLMNP", "KLMNP is a regular pentagon"},
      {"regular 13-gon ABCDEFGHIJKLM", "ABCDEFGHIJKLM is a regular 13-gon"},
  });
}

TEST_CASE("signs of several schools") {
  check({
      {"m∠KLM = 40", "∠KLM = 40°"},
      {"<KLM = 40", "∠KLM = 40°"},
      {"KL̂M = 40°", "∠KLM = 40°"},
      {"KÂM = 40", "∠KAM = 40°"},
      {"KL // MN", "KL ∥ MN"},
      {"KL || MN", "KL ∥ MN"},
      {"KL ⟂ MN", "KL ⊥ MN"},
      {"∠KLM = ½x", "∠KLM = ½x°"},
      {"∠KLM = 2(x + 5)", "∠KLM = (2x + 10)°"},
      {"∠KLM = 22,5°", "∠KLM = 22.5°"},
      {"KL = 5 cm", "KL = 5"},
      {"∠KLM ≅ ∠PQR", "∠KLM = ∠PQR"},
      {"∠KLM = 23⅓°", "∠KLM = 23⅓°"},
      {"∠KLM = 540/7", "∠KLM = 540/7°"},
      {"∠KLM > 90", "∠KLM > 90°"},
      {"90 > ∠KLM", "90° > ∠KLM"},
      {"∠KLM is 40 degrees", "∠KLM = 40°"},
  });
}

TEST_CASE("a pasted paragraph is read sentence by sentence") {
  CHECK(understood(
            "In the diagram, KL is parallel to MN. Given that angle KLM = 22.5°, and KM = KL; give reasons.\n"
            "Not drawn accurately (3 marks)\nP is a point on KL such that MP = KP,\nwhere N is on LM") ==
        "KL ∥ MN; ∠KLM = 22.5°; KM = KL; P lies between K and L; MP = KP; N lies between L and M");
}

TEST_CASE("lettered lines become lines through the points on them") {
  CHECK(understood("lines l and m are parallel; t cuts l at K and m at L; P is on l; Q is on m") ==
        "KP ∥ LQ");
  SECTION("a line with fewer than two named points gets a hidden one") {
    const ProblemText problem =
        parse_problem("lines l and m are parallel; t cuts l at K and m at L; find: x");
    CHECK(problem.diagnostics.empty());
    CHECK(problem.names.points == std::vector<std::string>{"K", "L", "l1", "m1"});
    CHECK(problem.hidden == std::vector<bool>{false, false, true, true});
  }
  SECTION("a letter is a line or a number, not both") {
    CHECK(understood("lines l and m are parallel; angle KLM = l") ==
          "mistake: l is the name of a line here, and cannot be a number too");
  }
}

TEST_CASE("\"the circle\" is the only circle of the text") {
  CHECK(understood("K, L, M lie on a circle with centre O; PK is a tangent to the circle at K") ==
        "K, L, M lie on a circle with centre O; PK touches the circle with centre O at K");
  CHECK(understood("K, L, M, N lie on a circle; PK is a tangent to the circle at K") ==
        "K, L, M, N lie on a circle; PK touches circle KLM at K");
  CHECK(understood(
            "circle: centre O through K, L; circle: centre P through M, N; QK touches the circle at K") ==
        "mistake: there is more than one circle here; which one is meant?");
  CHECK(understood("K, L, M, N lie on a circle; P, Q, R, S lie on a circle; TK touches the circle at K") ==
        "mistake: there is more than one circle here; which one is meant?");
}

TEST_CASE("a centre may be named after the points of its circle") {
  CHECK(understood("triangle KLM is inscribed in a circle; O is the centre of the circle; PK touches the "
                   "circle at K") ==
        "KLM is a triangle; K, L, M lie on a circle with centre O; PK touches the circle with centre O at K");
  CHECK(understood("circle: centre O through K, L, M; O is the centre of the circle") ==
        "K, L, M lie on a circle with centre O");
  CHECK(understood("K, L, M, N lie on a circle; P, Q, R, S lie on a circle; O is the centre of the circle") ==
        "mistake: there is more than one circle here; which one is meant?");
}
