// Problems with a value, one for each form of phrase and kind of rule, in laths and knots. Each has a twin in
// which a given is dropped or moved: it must give another value or none, never the same one.
#include "tests/problems/asked.hpp"

using namespace prover;
using asked::ask;

namespace {

struct Row {
  const char *givens, *find, *value;
  const char* twin;        // givens of the twin
  const char* twin_value;  // "" when it must not be proved
};

// Values are worked by hand from school theorems (common practice: angle sums, parallels, base angles).
const Row rows[] = {
    // triangles
    {"triangle: KLM\nangle KLM = 50\nangle LMK = 60", "angle LKM", "70", "triangle: KLM\nangle KLM = 50", ""},
    {"triangle: KLM\nKL = KM\nangle LKM = 40", "angle KLM", "70", "triangle: KLM\nKL = LM\nangle LKM = 40",
     "100"},
    {"In triangle KLM, KL = KM\n∠KLM = 65°", "angle LKM", "50", "triangle: KLM\nangle KLM = 65", ""},
    {"polygon: KLM equilateral", "angle KLM", "60", "triangle: KLM\nKL = KM", ""},
    {"triangle KLM is right-angled at L\nangle LKM = 25", "angle KML", "65", "triangle: KLM\nangle LKM = 25",
     ""},
    {"triangle: KLM\nline: L, M, P in this order\nangle KLM = 50\nangle LKM = 60", "angle KMP", "110",
     "triangle: KLM\nline: L, P, M in this order\nangle KLM = 50\nangle LKM = 60\nKP = PL", "70"},
    {"triangle: KLM\nLM is produced to P\nangle KMP = 120\nangle LKM = 70", "angle KLM", "50",
     "triangle: KLM\nLM is produced to P\nangle LKM = 70", ""},
    {"the angles of triangle KLM are in the ratio 2 : 3 : 4", "angle KLM", "60",
     "triangle: KLM\nangle KLM = 2 angle KML", ""},
    {"triangle: KLM\nangle KLM is twice angle KML\nangle LKM = 60", "angle KML", "40",
     "triangle: KLM\nangle KLM is 20° more than angle KML\nangle LKM = 60", "50"},
    // unknown numbers
    {"triangle: KLM\nangle KLM = 2x\nangle LMK = 3x\nangle MKL = 4x", "x", "20",
     "triangle: KLM\nangle KLM = 2x\nangle LMK = 3x", ""},
    {"line: L, M, P in this order\ntriangle: KLM\nangle KLM = 3x + 10\nangle LKM = 2x\nangle KMP = 110", "x",
     "20", "line: L, M, P in this order\ntriangle: KLM\nangle KLM = 3x + 10\nangle LKM = 2y\nangle KMP = 110",
     ""},
    {"triangle: KLM\nKL = KM\nangle KLM = 3x\nangle LKM = x", "x", "180/7",
     "triangle: KLM\nKL = KM\nangle KLM = 3x", ""},
    // points and lines
    {"KL and MN cross at P\nangle KPM = 35", "angle LPN", "35", "KL and MN cross at P\nangle KPN = 145",
     "35"},
    {"line: K, P, L in this order\nangle KPM = 125", "angle MPL", "55",
     "line: K, P, L in this order\nangle MKP = 25\nMP = PL", ""},
    {"line: K, P, L in this order\nangle KPM = 40\nangle MPN = 60\nsides: M and N on the same side of KL\n"
     "inside: M lies inside angle KPN",
     "angle NPL", "80",
     "line: K, P, L in this order\nangle KPM = 40\nsides: M and N on the same side of KL\n"
     "inside: M lies inside angle KPN",
     ""},
    {"triangle: KLM\ninside: P lies inside triangle KLM\nangle KPL = 100\nangle LPM = 120", "angle MPK",
     "140", "triangle: KLM\ninside: P lies inside triangle KLM\nangle KPL = 100", ""},
    {"angle KPM = 80\nbisects: ray PL bisects angle KPM", "angle LPM", "40",
     "angle KPM = 80\ninside: L lies inside angle KPM", ""},
    {"line: K, P, L in this order\nperpendicular: MP, KL\ninside: N lies inside angle MPL\nangle MPN = 20",
     "angle NPL", "70", "line: K, P, L in this order\ninside: N lies inside angle MPL\nangle MPN = 20", ""},
    {"reflex angle KPM = 220", "angle KPM", "140", "triangle: KPM", ""},
    {"triangle: KLM\ntriangle: MNP\nangles KLM and MNP are complementary\nangle KLM = 30", "angle MNP", "60",
     "triangle: KLM\ntriangle: MNP\nangles KLM and MNP are supplementary\nangle KLM = 30", "150"},
    // parallels
    {"parallel: KL, MN\nsides: L and N on opposite sides of KM\nangle LKM = 48", "angle KMN", "48",
     "parallel: KL, MN\nsides: L and N on the same side of KM\nangle LKM = 48", "132"},
    {"KL ∥ MN\nsides: L and N on the same side of KM\nangle LKM = 110", "angle KMN", "70",
     "sides: L and N on the same side of KM\nangle LKM = 110", ""},
    {"parallel: KL, MN\nline: K, M, P in this order\nsides: L and N on the same side of KM\nangle NMP = 65",
     "angle LKM", "65",
     "line: K, M, P in this order\nsides: L and N on the same side of KM\nangle NMP = 65\nKL = MN", ""},
    {"parallel: KL, PQ\nsides: L and P on opposite sides of KQ\nKL = KQ\nangle PQK = 52\ntriangle: KLQ",
     "angle KLQ", "64",
     "parallel: KL, PQ\nsides: L and P on opposite sides of KQ\nangle PQK = 52\ntriangle: KLQ", ""},
    // congruence
    {"triangle: KLM\ntriangle: KNM\nKL = KN\nLM = NM\nangle KLM = 70", "angle KNM", "70",
     "triangle: KLM\ntriangle: KNM\nKL = KN\nangle KLM = 70", ""},
    {"triangle: KLM\ntriangle: PQR\nKL = PQ\nKM = PR\nangle LKM = angle QPR\nangle KLM = 55", "angle PQR",
     "55", "triangle: KLM\ntriangle: PQR\nKL = PQ\nangle LKM = angle QPR\nangle KLM = 55", ""},
    {"triangle KLM is congruent to triangle PQR\nangle KLM = 70\nangle LMK = 60", "angle QPR", "50",
     "triangle KLM is congruent to triangle QPR\nangle KLM = 70\nangle LMK = 60", "70"},
    {"triangles KLM and PQR are similar\nangle KLM = 70\nangle LMK = 60", "angle QPR", "50",
     "triangles KLM and RQP are similar\nangle KLM = 70\nangle LMK = 60", "60"},
    // quadrilaterals and polygons
    {"KLMN is a parallelogram\nangle KLM = 110", "angle LMN", "70",
     "KLMN is a trapezium with KL ∥ NM\nangle KLM = 110", "70"},
    {"KLMN is a parallelogram\nangle KLM = 110", "angle MNK", "110",
     "KLMN is a trapezium with KL ∥ NM\nangle KLM = 110", ""},
    {"KLMN is a rectangle\nangle LKM = 35", "angle KML", "55", "KLMN is a parallelogram\nangle LKM = 35", ""},
    {"KLMN is a rhombus\nangle KLM = 110", "angle LKM", "35", "KLMN is a parallelogram\nangle KLM = 110", ""},
    {"KLMN is a square", "angle LKM", "45", "KLMN is a rectangle", ""},
    {"KLMN is a kite with KL = KN\nangle KLM = 100\nangle LKN = 70", "angle LMN", "90",
     "KLMN is a kite with KL = KN\nangle KLM = 100", ""},
    {"convex: K, L, M, N\nangle KLM = 80\nangle LMN = 90\nangle MNK = 100", "angle NKL", "90",
     "convex: K, L, M, N\nangle KLM = 80\nangle LMN = 90", ""},
    {"polygon: KLMNP regular, in this order", "angle KLM", "108", "polygon: KLMNPQ regular, in this order",
     "120"},
    {"polygon: KLMNPQR regular, in this order", "angle KLM", "900/7", "convex: K, L, M, N, P, Q, R", ""},
    // lengths
    {"line: K, L, M in this order\nKL = 3\nLM = 4", "KM", "7", "collinear: K, L, M\nKL = 3", ""},
    {"M is the midpoint of KL\nKL = 9", "KM", "9/2", "line: K, M, L in this order\nKL = 9", ""},
    {"triangle: KLM\nP is the midpoint of KL\nQ is the midpoint of KM\nangle KLM = 50", "angle KPQ", "50",
     "triangle: KLM\nP is the midpoint of KL\nline: K, Q, M in this order\nangle KLM = 50", ""},
};

}  // namespace

TEST_CASE("a problem has its value, and its twin another or none") {
  for (const Row& row : rows) {
    const std::string find = std::string("\nfind: ") + row.find + "\n";
    {
      INFO(row.givens << find);
      const Answer answer = ask(row.givens + find);
      CHECK(answer.verdict == Verdict::proved);
      CHECK(answer.value == row.value);
    }
    INFO(row.twin << find);
    const Answer twin = ask(row.twin + find);
    if (*row.twin_value) {
      CHECK(twin.value == row.twin_value);
    } else {
      CHECK(twin.verdict != Verdict::proved);
      CHECK(twin.value.empty());
    }
  }
}

TEST_CASE("an angle is found in terms of another") {
  const std::string givens = "triangle: KLM\nKL = KM\nline: L, M, P in this order\n";
  CHECK(ask(givens + "find: angle KMP in terms of angle LKM\n").value == "90° + ½∠LKM");
  CHECK(ask("triangle: KLM\nline: L, M, P in this order\nfind: angle KMP in terms of angle LKM\n").verdict !=
        Verdict::proved);
}

TEST_CASE("several goals are answered together") {
  const Answer both =
      ask("triangle: KLM\nKL = KM\nangle LKM = 40\nfind: angle KLM\nprove: angle KLM = angle KML\n");
  CHECK(both.verdict == Verdict::proved);
  CHECK(both.value == "70");
  CHECK(both.proofs.size() == 2);
  CHECK(ask("triangle: KLM\nKL = KM\nangle LKM = 40\nfind: angle KLM\nprove: KL = LM\n").verdict !=
        Verdict::proved);
}
