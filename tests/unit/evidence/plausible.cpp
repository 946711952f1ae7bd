// The step at which a plausible argument to a false claim goes wrong, and the twins of these claims, which are proved.
#include "prover/evidence/plausible.hpp"

#include "tests/problems/asked.hpp"

using namespace prover;

namespace {

struct Slip {
  const char *mistake, *wrong, *missing, *claim;  // `missing` makes the claim true
};

const AnswerStep& wrong_step(const AnswerPlausible& argument) {
  REQUIRE(argument.wrong_step >= 1);
  REQUIRE(argument.wrong_step <= static_cast<int>(argument.steps.size()));
  return argument.steps[static_cast<std::size_t>(argument.wrong_step) - 1];
}

}  // namespace

TEST_CASE("a false claim comes with the mistake behind it; with what is missing it is proved", "[plausible]") {
  for (const Slip& slip :
       {Slip{"two-sides-and-an-angle",
             "triangle: KLM\ntriangle: PQR\nKL = PQ\nKM = PR\nangle KLM = angle PQR\n", "angle LKM = angle QPR\n",
             "angle KML = angle PRQ"},
        Slip{"median-bisects-angle", "triangle: KLM\nmidpoint: P of LM\n", "KL = KM\n", "angle LKP = angle PKM"},
        Slip{"angle-at-centre-any-position", "circle: centre O through K, L, M\ntriangle: OKL\n",
             "sides: O and M on the same side of KL\n", "angle KOL = 2 angle KML"},
        Slip{"different-arcs", "concyclic: K, L, M, N\nsides: K and L on opposite sides of MN\nsides: M and N on opposite sides of KL\n",
             "KM ⊥ ML\n", "angle KML = angle KNL"},
        Slip{"exterior-angle-one-opposite", "triangle: KLM\nline: L, M, P in this order\nangle LKM = 50\n", "", "angle KMP = 50"},
        Slip{"parallelogram-diagonals-equal", "KLMN is a parallelogram\n", "angle KLM = 90\n", "KM = LN"},
        Slip{"parallel-and-equal-sides-crossed", "convex: K, L, M, N\nparallel: KL, NM\nequal lengths: KN = LM\n", "KL = NM\n",
             "angle NKL = angle LMN"}}) {
    INFO(slip.wrong << slip.claim);
    const Answer answer = asked::ask(std::string(slip.wrong) + "prove: " + slip.claim + "\n");
    CHECK(answer.verdict == Verdict::false_claim);
    CHECK(answer.proofs.empty());
    REQUIRE(answer.plausible);
    CHECK(answer.plausible->mistake == slip.mistake);
    CHECK(wrong_step(*answer.plausible).rule == slip.mistake);
    CHECK_FALSE(answer.plausible->missing.empty());
    if (*slip.missing == 0) continue;
    const Answer twin = asked::ask(std::string(slip.wrong) + slip.missing + "prove: " + slip.claim + "\n");
    CHECK(twin.verdict == Verdict::proved);
    CHECK_FALSE(twin.plausible);
  }
}

TEST_CASE("a class makes no mistake with a rule that it has not been taught", "[plausible]") {
  const std::string slip = "triangle: KLM\ntriangle: PQR\nKL = PQ\nKM = PR\nangle KLM = angle PQR\nprove: angle KML = angle PRQ\n";
  CHECK(asked::ask(slip).plausible);
  const Answer answer = asked::ask("taught: not congruent-sas, congruent-aas, similar-aa\n" + slip);
  CHECK(answer.verdict == Verdict::false_claim);
  if (answer.plausible) CHECK(answer.plausible->instead != "congruent-sas");
}

TEST_CASE("nothing plausible is said of a claim that no known mistake reaches", "[plausible]") {
  const Answer answer = asked::ask("triangle: KLM\nprove: angle KLM = 73\n");
  CHECK(answer.verdict == Verdict::false_claim);
  CHECK_FALSE(answer.plausible);
}
