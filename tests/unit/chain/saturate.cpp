// What must be derived and what must not, a row for each group of rules. The theorems are those of Euclid I
// (numbers beside the rows) and of any school book; the twin leaves out or turns round what the theorem
// needs.
#include "prover/chain/saturate.hpp"

#include <set>

#include "tests/unit/chain/chained.hpp"

using namespace prover;
using told::Chained;

namespace {

struct Row {
  const char* what;
  std::vector<std::string> rules;  // all that may be used, beside additions
  const char *givens, *twin, *claim;
};

void check(const Row& row) {
  INFO(row.what);
  {
    INFO(row.givens);
    CHECK(Chained(row.givens, row.claim, row.rules).derives(row.claim));
  }
  INFO(row.twin);
  CHECK_FALSE(Chained(row.twin, row.claim, row.rules).derives(row.claim));
  CHECK_FALSE(Chained(row.twin, row.claim).derives(row.claim));  // nor with everything that is known
}

}  // namespace

TEST_CASE("points and lines") {
  check({"vertically opposite angles (Euclid I.15)",
         {"vertical-angles"},
         "KL and MN cross at P; triangle: KPM",
         "line: K, P, L in this order; MP = MN; triangle: KPM; triangle: KPN",
         "angle KPM = angle LPN"});
  check({"angles on a straight line (I.13)",
         {"angles-on-a-straight-line"},
         "line: K, P, L in this order; angle KPM = 40",
         "ray: L on ray PK; line: L, K, N in this order; angle NKM = 40; MP = PK",
         "angle MPL = 140"});
  check({"angles round a point",
         {"angles-at-a-point"},
         "angle KPL = 100; angle LPM = 120; inside: P lies inside triangle KLM; triangle: KLM",
         "angle KPL = 100; angle LPM = 120; triangle: KLM",
         "angle KPM = 140"});
  check({"neighbouring angles",
         {},
         "angle KPL = 30; angle LPM = 40; inside: L lies inside angle KPM",
         "angle KPL = 30; angle LPM = 40",
         "angle KPM = 70"});
  check({"neighbouring segments",
         {},
         "line: K, L, M in this order; KL = 3; LM = 4",
         "collinear: K, L, M; KL = 3; LM = 4",
         "KM = 7"});
}

TEST_CASE("parallels") {
  check({"alternate angles (Euclid I.29)",
         {"alternate-interior-angles"},
         "parallel: KL, MN; sides: L and N on opposite sides of KM",
         "parallel: KL, MN; sides: L and N on the same side of KM",
         "angle LKM = angle NMK"});
  check({"co-interior angles (I.29)",
         {"co-interior-angles"},
         "parallel: KL, MN; sides: L and N on the same side of KM; angle LKM = 70",
         "sides: L and N on the same side of KM; angle LKM = 70",
         "angle NMK = 110"});
  check({"alternate angles equal (I.27)",
         {"alternate-interior-angles-converse"},
         "angle LKM = angle NMK; sides: L and N on opposite sides of KM",
         "angle LKM = angle NMK; sides: L and N on the same side of KM",
         "parallel: KL, MN"});
  check({"parallel to a third (I.30)",
         {"parallel-transitive"},
         "parallel: KL, MN; parallel: MN, PQ; triangle: KPQ",
         "parallel: KL, MN; perpendicular: MN, PQ; triangle: KPQ",
         "parallel: KL, PQ"});
}

TEST_CASE("triangles") {
  check({"angle sum (Euclid I.32)",
         {"triangle-angle-sum"},
         "triangle: KLM; angle KLM = 50; angle LMK = 60",
         "triangle: KLM; triangle: KLN; angle KLM = 50; angle LNK = 60",
         "angle MKL = 70"});
  check({"exterior angle (I.32)",
         {"exterior-angle-of-triangle"},
         "triangle: KLM; line: L, M, P in this order; angle KLM = 50; angle LKM = 60",
         "triangle: KLM; line: L, P, M in this order; angle KLM = 50; angle LKM = 60; KP = PM",
         "angle KMP = 110"});
  check({"base angles (I.5)",
         {"isosceles-base-angles"},
         "triangle: KLM; KL = KM",
         "triangle: KLM; KL = LM",
         "angle KLM = angle KML"});
  check({"equal angles, equal sides (I.6)",
         {"isosceles-base-angles-converse"},
         "triangle: KLM; angle KLM = angle KML",
         "triangle: KLM; angle KLM = angle LKM",
         "KL = KM"});
  check({"equilateral",
         {"equilateral-angles"},
         "polygon: KLM equilateral",
         "triangle: KLM; KL = KM",
         "angle KLM = 60"});
  check({"midline",
         {"midsegment"},
         "triangle: KLM; midpoint: P is the midpoint of KL; midpoint: Q is the midpoint of KM",
         "triangle: KLM; midpoint: P is the midpoint of KL; line: K, Q, M in this order",
         "parallel: PQ, LM"});
}

TEST_CASE("congruence and similarity") {
  const std::string two = "triangle: KLM; triangle: PQR; ";
  auto row = [&](const char* what, const char* rule, const std::string& parts, const std::string& wrong,
                 const char* claim) {
    const std::string givens = two + parts, twin = two + wrong;
    check({what, {rule}, givens.c_str(), twin.c_str(), claim});
  };
  const char* congruent = "triangle KLM is congruent to triangle PQR";
  const char* similar = "triangles KLM and PQR are similar";
  row("three sides (Euclid I.8)", "congruent-sss", "KL = PQ; LM = QR; MK = RP", "KL = PQ; LM = QR",
      congruent);
  row("two sides and the angle between (I.4)", "congruent-sas", "KL = PQ; KM = PR; angle LKM = angle QPR",
      "KL = PQ; KM = PR; angle KLM = angle PQR", congruent);  // the twin: two sides and an angle beside
  row("a side and its angles (I.26)", "congruent-asa",
      "KL = PQ; angle LKM = angle QPR; angle KLM = angle PQR", "KM = RP; angle LKM = angle QPR", congruent);
  row("hypotenuse and a side", "congruent-rhs", "angle KLM = 90; angle PQR = 90; KM = PR; KL = PQ",
      "angle KLM = 80; angle PQR = 80; KM = PR", congruent);
  row("parts of congruent triangles", "congruent-parts", "triangle KLM is congruent to triangle PQR",
      "triangle KLM is congruent to triangle QPR", "angle KLM = angle PQR");
  row("two angles (VI.4)", "similar-aa", "angle KLM = angle PQR; angle LKM = angle QPR",
      "angle KLM = angle PQR; angle LKM = angle PRQ", similar);
  row("parts of similar triangles", "similar-parts", "triangles KLM and PQR are similar; angle KLM = 40",
      "triangles KLM and QPR are similar; angle KLM = 40", "angle PQR = 40");
}

TEST_CASE("quadrilaterals") {
  check({"opposite angles of a parallelogram (Euclid I.34)",
         {"parallelogram-opposite-angles"},
         "polygon: KLMN parallelogram",
         "convex: K, L, M, N; parallel: KL, NM",
         "angle KLM = angle MNK"});
  check({"opposite sides of a parallelogram (I.34)",
         {"parallelogram-opposite-sides"},
         "polygon: KLMN parallelogram",
         "polygon: KLMN trapezium with KL ∥ NM",
         "KL = MN"});
  check({"angle sum of a quadrilateral",
         {"quadrilateral-angle-sum"},
         "convex: K, L, M, N; angle KLM = 80; angle LMN = 90; angle MNK = 100",
         "convex: K, L, M, N; angle KLM = 80; angle LMN = 90",
         "angle NKL = 90"});
  check({"angles of a rectangle",
         {"rectangle-angles"},
         "polygon: KLMN rectangle",
         "polygon: KLMN rhombus",
         "angle KLM = 90"});
  check({"side angles of a kite",
         {"kite-angles"},
         "KLMN is a kite with KL = KN; convex: K, L, M, N",
         "convex: K, L, M, N; KL = KN",
         "angle KLM = angle KNM"});
  check({"regular pentagon",
         {"regular-polygon-angles"},
         "polygon: KLMNP regular, in this order",
         "convex: K, L, M, N, P; KL = LM = MN = NP = PK",
         "angle KLM = 108"});
}

TEST_CASE("all derivations of a fact are kept, not only the first") {
  const Chained told("triangle: KLM; line: L, M, P in this order; angle KLM = 50; angle LKM = 60",
                     "angle KMP = 110");
  CHECK(told.fired("exterior-angle-of-triangle") >= 1);
  CHECK(told.fired("triangle-angle-sum") >= 1);
  CHECK(told.fired("angles-on-a-straight-line") >= 1);
}

TEST_CASE("instances come after what they rest on") {
  Chained told(
      "parallel: KL, MN; sides: L and N on opposite sides of KM; KL = KM; triangle: KLM; angle NMK = 50",
      "angle KLM = 65");
  CHECK(told.derives("angle KLM = 65"));
  LinearSystem so_far;
  for (const Instance& instance : told.result.instances) {
    for (const Form& premise : instance.premises) CHECK(so_far.entails(premise));
    for (const Form& conclusion : instance.conclusions) so_far.add(conclusion);
  }
}

TEST_CASE("the work says why it stopped") {
  const char* rails =
      "parallel: KL, MN; sides: L and N on opposite sides of KM; triangle: KLM; triangle: KMN";
  CHECK(Chained(rails).result.stop == StopReason::saturated);

  Budget small;
  small.max_instances = 3;
  CHECK(Chained(rails, "", {}, small).result.stop == StopReason::instance_limit);

  std::stop_source source;
  source.request_stop();
  Budget stopped;
  stopped.stop = source.get_token();
  CHECK(Chained(rails, "", {}, stopped).result.stop == StopReason::interrupted);

  Budget late;
  late.deadline = Budget::Clock::now() - std::chrono::seconds(1);
  CHECK(Chained(rails, "", {}, late).result.stop == StopReason::time_limit);
}

TEST_CASE("it stops at the goal when that is asked") {
  told::Told told("triangle: KLM; KL = KM; angle KLM = 50", "angle LKM = 80");
  ChainOptions options;
  options.allowed.assign(standard_catalogue().rules.size(), true);
  options.stop_at_goal = true;
  const Saturation result = saturate(told.statement, told.figure, standard_catalogue(), told.unknowns,
                                     {told.form("angle LKM = 80")}, options, Budget{});
  CHECK(result.stop == StopReason::goal_reached);
  CHECK(result.closure.entails(told.form("angle LKM = 80")));
}

TEST_CASE("givens that exclude each other are contradictory, and their tame twins are not") {
  struct Twins {
    const char *wild, *tame;
  };
  for (const Twins& twins : {Twins{"triangle: KLM; angle KLM = 50; angle LMK = 60; angle MKL = 80",
                                   "triangle: KLM; angle KLM = 50; angle LMK = 60; angle MKL = 70"},
                             Twins{"triangle: KLM; angle KLM = 100; angle LMK = 90",
                                   "triangle: KLM; angle KLM = 80; angle LMK = 90"},
                             Twins{"line: K, L, M in this order; KL = 5; KM = 4",
                                   "line: K, L, M in this order; KL = 4; KM = 5"}}) {
    INFO(twins.wild);
    CHECK(Chained(twins.wild).result.contradictory);
    INFO(twins.tame);
    CHECK_FALSE(Chained(twins.tame).result.contradictory);
  }
}

TEST_CASE("a value that no angle can have names its equation") {
  Chained told("triangle: KLM; angle KLM = 100; angle LMK = 90");
  REQUIRE(!told.result.impossible.empty());
  CHECK(told.result.impossible[0] == told.form("angle LKM + 10 = 0"));
}

TEST_CASE("three names of two points are not a line") {
  // N, T, O are shown to be in line. That N, T, N are says nothing, and nothing may follow from it.
  const Chained chained("NT ⊥ PT; OT ⊥ PT; N and O are on opposite sides of PT", "",
                        {"adjacent-supplementary-converse", "line-through-two-points-both"});
  std::size_t lines = 0;
  for (const Instance& instance : chained.result.instances)
    for (const Form& form : instance.conclusions)
      for (const auto& [u, c] : form.terms) {
        const Unknown& unknown = chained.unknowns[u];
        if (unknown.kind != UnknownKind::fact || unknown.fact != FactKind::collinear) continue;
        ++lines;
        CHECK(std::set<PointId>(unknown.points.begin(), unknown.points.end()).size() == 3);
      }
  CHECK(lines > 0);
}
