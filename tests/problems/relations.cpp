// Claims to prove, one for each kind of conclusion, with twins that do not follow. Theorems: Euclid I,
// numbers beside them, or of any school book (common practice).
#include "tests/problems/asked.hpp"

using namespace prover;
using asked::ask;

namespace {

struct Row {
  const char *givens, *claim, *twin;  // twin: givens from which the claim must not be proved
};

const Row rows[] = {
    // I.15 and I.13
    {"line: K, P, L in this order\nline: M, P, N in this order\ntriangle: KPM", "angle KPM = angle LPN",
     "line: K, P, L in this order\nMP = PN\ntriangle: KPM"},
    {"line: K, P, L in this order\ntriangle: KPM", "angle KPM + angle MPL = 180", "MP = PL\ntriangle: KPM"},
    // I.27, I.28, I.29, I.30
    {"angle LKM = angle NMK\nsides: L and N on opposite sides of KM", "KL ∥ MN",
     "angle LKM = angle NMK\nsides: L and N on the same side of KM"},
    {"angle LKM = 70\nangle NMK = 110\nsides: L and N on the same side of KM", "KL ∥ MN",
     "angle LKM = 70\nangle NMK = 100\nsides: L and N on the same side of KM"},
    {"parallel: KL, MN\nsides: L and N on the same side of KM", "angle LKM + angle NMK = 180",
     "parallel: KL, MN\nsides: L and N on opposite sides of KM"},
    {"parallel: KL, MN\nparallel: MN, PQ\ntriangle: KPQ", "KL ∥ PQ",
     "parallel: KL, MN\nperpendicular: MN, PQ\ntriangle: KPQ"},
    {"perpendicular: KL, LM\nperpendicular: NM, ML\nsides: K and N on the same side of LM", "KL ∥ NM",
     "perpendicular: KL, LM\nsides: K and N on the same side of LM\nNM = ML"},
    // I.32, I.5, I.6
    {"convex: K, L, M, N", "angle KLM + angle LMN + angle MNK + angle NKL = 360",
     "KL = LM\ntriangle: KLM\ntriangle: KNM"},
    {"triangle: KLM\nline: L, M, P in this order", "angle KMP = angle KLM + angle LKM",
     "triangle: KLM\nline: L, P, M in this order\nKP = PM"},
    {"triangle: KLM\nKL = KM", "angle KLM = angle KML", "triangle: KLM\nKL = LM"},
    {"triangle: KLM\nangle KLM = angle KML", "KL = KM", "triangle: KLM\nangle KLM = angle LKM"},
    {"triangle: KLM\nangle KLM = 50\nangle LKM = 80", "KLM is isosceles",
     "triangle: KLM\nangle KLM = 50\nangle LKM = 70"},
    // I.4, I.8, I.26
    {"triangle: KLM\ntriangle: KNM\nKL = KN\nangle LKM = angle NKM",
     "triangle KLM is congruent to triangle KNM",
     "triangle: KLM\ntriangle: KNM\nKL = KN\nangle KML = angle KMN"},
    {"triangle: KLM\ntriangle: KNM\nKL = KN\nLM = NM", "△KLM ≅ △KNM",
     "triangle: KLM\ntriangle: KNM\nKL = KN"},
    {"KL and MN cross at P\nKP = PL\nMP = PN\ntriangle: KPM", "KM = LN",
     "KL and MN cross at P\nKP = PL\ntriangle: KPM"},
    // VI.4
    {"triangle: KLM\nline: K, P, L in this order\nline: K, Q, M in this order\nPQ ∥ LM",
     "triangles KPQ and KLM are similar",
     "triangle: KLM\nline: K, P, L in this order\nline: K, Q, M in this order\nPQ = QM"},
    // I.33, I.34 and the family of the parallelogram
    {"KLMN is a parallelogram", "KL = MN", "KLMN is a trapezium with KL ∥ NM"},
    {"convex: K, L, M, N\nKL ∥ MN\nKL = MN", "KLMN is a parallelogram",
     "convex: K, L, M, N\nKL ∥ MN\nKN = LM"},
    {"KLMN is a parallelogram\nKM and LN cross at P", "KP = PM",
     "KLMN is a kite with KL = KN\nKM and LN cross at P"},
    {"KLMN is a rhombus\nKM and LN cross at P", "KM ⊥ LN", "KLMN is a parallelogram\nKM and LN cross at P"},
    {"KLMN is a rectangle", "KM = LN", "KLMN is a parallelogram"},
    {"KLMN is a kite with KL = KN", "angle KLM = angle KNM", "convex: K, L, M, N\nKL = KN"},
    {"triangle: KLM\nP is the midpoint of KL\nQ is the midpoint of KM", "PQ ∥ LM",
     "triangle: KLM\nP is the midpoint of KL\nline: K, Q, M in this order"},
    {"triangle: KLM\nP is the midpoint of KL\nQ is the midpoint of KM", "LM = 2 PQ",
     "triangle: KLM\nP is the midpoint of KL\nPQ ∥ KM\nline: L, M, Q in this order"},
    // bisectors
    {"triangle: KLM\nKL = KM\nline: L, M, Q in this order\nline: L, K, G in this order\nbisects: ray KH "
     "bisects angle GKM",
     "KH ∥ LM",
     "triangle: KLM\nline: L, M, Q in this order\nline: L, K, G in this order\nbisects: ray KH bisects angle "
     "GKM"},
};

}  // namespace

TEST_CASE("what follows is proved, and from the twin's givens it is not") {
  for (const Row& row : rows) {
    const std::string claim = std::string("\nprove: ") + row.claim + "\n";
    {
      INFO(row.givens << claim);
      CHECK(ask(row.givens + claim).verdict == Verdict::proved);
    }
    INFO(row.twin << claim);
    CHECK(ask(row.twin + claim).verdict != Verdict::proved);
  }
}

TEST_CASE("a false claim is never proved, and a figure breaks it") {
  for (const char* text :
       {"triangle: KLM\nKL = KM\nprove: angle KLM = angle LKM\n", "triangle: KLM\nprove: KL = KM\n",
        "KLMN is a parallelogram\nprove: KL ⊥ LM\n", "triangle: KLM\nprove: angle KLM + angle LMK = 90\n"}) {
    INFO(text);
    const Answer answer = ask(text);
    CHECK(answer.verdict == Verdict::false_claim);
    CHECK_FALSE(answer.figures.empty());
  }
}

TEST_CASE("several claims are proved together or not at all") {
  const std::string givens = "triangle: KLM\nKL = KM\n";
  CHECK(ask(givens + "prove: angle KLM = angle KML; angle KLM + angle LMK + angle MKL = 180\n").verdict ==
        Verdict::proved);
  CHECK(ask(givens + "prove: angle KLM = angle KML; KL = LM\n").verdict == Verdict::false_claim);
}
