// The table in prover/statement/meaning.hpp, row by row.
#include "prover/statement/meaning.hpp"

#include "prover/algebra/linear_system.hpp"
#include "tests/unit/statement/told.hpp"

using namespace prover;
using told::Told;
using Words = std::vector<std::string>;

namespace {
Words positions(Told& told, const std::string& sentence) {
  Words all;
  for (const Position& p : told.meaning(sentence).positions)
    all.push_back(describe(canonical(p), told.statement.names));
  return all;
}
}  // namespace

TEST_CASE("a relation means one equation for each equals sign") {
  Told told("triangle: KLM; triangle: LMN");
  CHECK(told.means("KL = LM = MN") == Words{"KL = LM", "LM = MN"});
  CHECK(told.means("angle KLM + angle LMN = 180") == Words{"∠KLM + ∠LMN = 180°"});
  CHECK(positions(told, "KL = LM = MN").empty());
}

TEST_CASE("an inequality gives no equation and says so") {
  Told told("triangle: KLM");
  const Meaning less = told.meaning("KL < LM");
  CHECK(less.forms.empty());
  CHECK(less.unsupported);
  CHECK_FALSE(told.meaning("KL = LM").unsupported);
}

TEST_CASE("what angles of 0° and 180° would be is degenerate") {
  Told told("line: K, L, M in this order; triangle: KLN");
  CHECK(told.meaning("angle KLM = 40").degenerate);
  CHECK(told.meaning("angle LKM = 40").degenerate);
  CHECK_FALSE(told.meaning("angle KLN = 40").degenerate);
  CHECK(told.meaning("KL ∥ LM").degenerate);
}

TEST_CASE("reflex is the rest of the whole turn") {
  Told told("triangle: KLM");
  CHECK(told.means("reflex angle KLM = 220") == Words{"∠KLM = 140°"});
}

TEST_CASE("triangles, orders and sides mean positions only") {
  Told told("line: K, L, M in this order; line: L, M, N in this order; triangle: KLP; triangle: KLQ");
  CHECK(positions(told, "triangle: KLP") == Words{"K, L and P are not on one line"});
  CHECK(told.means("triangle: KLP").empty());
  CHECK(positions(told, "line: K, L, M, N in this order").size() == 4);
  CHECK(told.means("line: K, L, M, N in this order").empty());
  CHECK(positions(told, "sides: P and Q on opposite sides of KL") ==
        Words{"P and Q are on opposite sides of KL"});
  CHECK(positions(told, "sides: P and Q on the same side of KL") ==
        Words{"P and Q are on the same side of KL"});
  CHECK(positions(told, "inside: Q lies inside angle LKP") ==
        Words{"L and Q are on the same side of KP", "P and Q are on the same side of KL"});
  CHECK(positions(told, "inside: Q lies inside triangle KLP").size() == 3);
}

TEST_CASE("collinear is a fact only where the figure has not joined the points") {
  Told told("collinear: K, L, M; triangle: KNP");
  CHECK(told.means("collinear: K, L, M").empty());
  CHECK(told.means("collinear: K, L, N") == Words{"K, L and N lie on one line"});
}

TEST_CASE("parallel and perpendicular lines without a common point are facts") {
  Told told("parallel: KL, MN; PQ = KL");
  CHECK(told.means("parallel: KL, MN") == Words{"KL ∥ MN"});
  CHECK(positions(told, "parallel: KL, MN").size() == 2);
  CHECK(told.means("perpendicular: PQ, KL") == Words{"KL ⊥ PQ"});
}

TEST_CASE("perpendicular lines that meet at a named point mean each right angle there") {
  Told corner("perpendicular: KL, LM");
  CHECK(corner.means("perpendicular: KL, LM") == Words{"∠KLM = 90°"});
  CHECK(corner.meaning("perpendicular: KL, LM").one_is_enough);
  Told cross("P is where segments KL and MN cross");
  CHECK(cross.means("perpendicular: KL, MN").size() == 4);
}

TEST_CASE("midpoint, foot and perpendicular bisector") {
  Told told("triangle: KLM; line: L, P, M in this order; KP = PM");
  CHECK(told.means("midpoint: P is the midpoint of LM") == Words{"LP = MP"});
  CHECK(positions(told, "midpoint: P is the midpoint of LM") == Words{"P is between L and M"});
  CHECK(told.means("perpendicular: KP, LM") == Words{"∠KPL = 90°", "∠KPM = 90°"});
}

TEST_CASE("named kinds of triangles") {
  Told told("triangle: KLM");
  CHECK(told.means("polygon: KLM equilateral") == Words{"KL = LM", "LM = KM"});
  CHECK(told.means("triangle KLM is right-angled at L") == Words{"∠KLM = 90°"});
}

TEST_CASE("a bisector halves its angle and lies inside it") {
  Told told("triangle: KLM; triangle: KLP");
  CHECK(told.means("bisects: ray KP bisects angle LKM") == Words{"∠LKP = ∠MKP"});
  CHECK(positions(told, "bisects: ray KP bisects angle LKM").size() == 2);
}

TEST_CASE("kinds of quadrilateral are facts, convex but for the kite") {
  Told told("convex: K, L, M, N");
  struct Row {
    const char *sentence, *fact;
    std::size_t positions;
  };
  for (const Row& row : {Row{"polygon: KLMN parallelogram", "KLMN is a parallelogram", 4},
                         Row{"polygon: KLMN rectangle", "KLMN is a rectangle", 4},
                         Row{"polygon: KLMN rhombus", "KLMN is a rhombus", 4},
                         Row{"polygon: KLMN square", "KLMN is a square", 4},
                         Row{"polygon: KLMN regular, in this order", "KLMN is a square", 4}}) {
    INFO(row.sentence);
    CHECK(told.means(row.sentence) == Words{row.fact});
    CHECK(positions(told, row.sentence).size() == row.positions);
  }
  CHECK(positions(told, "convex: K, L, M, N").size() == 4);
}

TEST_CASE("a regular polygon is equilateral with three corners and a fact of its own from five on") {
  Told three("triangle: KLM");
  CHECK(three.means("polygon: KLM regular, in this order") == Words{"KL = LM", "LM = KM"});
  Told five("polygon: KLMNP regular, in this order");
  CHECK(five.means("polygon: KLMNP regular, in this order") == Words{"KLMNP is a regular polygon"});
  CHECK(positions(five, "polygon: KLMNP regular, in this order").size() == 10);
}

TEST_CASE("congruent and similar are facts about two triangles") {
  Told told("triangle: KLM; triangle: PQR");
  CHECK(told.means("triangle KLM is congruent to triangle PQR") == Words{"△KLM ≅ △PQR"});
  CHECK(told.means("triangles KLM and PQR are similar") == Words{"△KLM ~ △PQR"});
  CHECK(positions(told, "triangles KLM and PQR are similar").size() == 2);
}

TEST_CASE("points on a circle are tied to its centre, whether or not radii are drawn, and not to one another by length") {
  Told told("circle: centre O through K, L, M; OK = OL");
  CHECK(told.means("circle: centre O through K, L, M") ==
        Words{"K and L lie on one circle with centre O", "K and M lie on one circle with centre O"});
  CHECK(told.meaning("circle: centre O through K, K").degenerate);
  LinearSystem known;
  for (const Form& form : told.meaning("circle: centre O through K, L").forms) known.add(form);
  for (const Form& form : told.meaning("circle: centre O through L, M").forms) known.add(form);
  CHECK(known.entails(told.form("circle: centre O through K, M")));
  CHECK_FALSE(known.entails(told.form("OK = OL")));
}

TEST_CASE("circles round two centres are two, though they share points") {
  Told told("circle: centre O through K, L; circle: centre P through L, M; triangle: KLM");
  LinearSystem known;
  for (const char* said : {"circle: centre O through K, L", "circle: centre P through L, M"})
    for (const Form& form : told.meaning(said).forms) known.add(form);
  CHECK_FALSE(known.entails(told.form("circle: centre O through K, M")));
  CHECK_FALSE(known.entails(told.form("circle: centre P through K, M")));
}

TEST_CASE("only a given says of four points round a centre that they are concyclic") {
  Told told("circle: centre O through K, L, M, N");
  const Phrase phrase = told.phrase("circle: centre O through K, L, M, N");
  const auto has = [&](const std::vector<Form>& forms) {
    const Form concyclic = told.form("concyclic: K, L, M, N");
    return std::find(forms.begin(), forms.end(), concyclic) != forms.end();
  };
  CHECK(has(given_forms(phrase, told.figure, told.unknowns)));
  CHECK_FALSE(has(meaning_of(phrase, told.figure, told.unknowns).forms));
}

TEST_CASE("a tangent is a fact about its line, whichever point names it, the contact point and the circle") {
  Told told("line: K, T, M in this order; tangent: line KT touches circle O at T; circle: centre O through T, L; triangle: KLM");
  CHECK(told.form("tangent: line KT touches circle O at T") == told.form("tangent: line MT touches circle O at T"));
  CHECK_FALSE(told.form("tangent: line KT touches circle O at T") == told.form("tangent: line TK touches circle O at K"));
  CHECK(told.form("tangent: line KT touches circle TLO at T") == told.form("tangent: line MT touches circle OLT at T"));
  CHECK_FALSE(told.form("tangent: line KT touches circle TLO at T") == told.form("tangent: line KT touches circle O at T"));
}

TEST_CASE("a circle that is named by three points and touched at a fourth is the circle of all four") {
  Told told("tangent: line PT touches circle KLM at T; triangle: KLM");
  CHECK(told.means("tangent: line PT touches circle KLM at T").size() == 4);
  const auto all = told.meaning("tangent: line PT touches circle KLM at T").forms;
  CHECK(std::find(all.begin(), all.end(), told.form("concyclic: K, L, M, T")) != all.end());
  CHECK(told.says("sides: K and L on the same side of PT"));
}
