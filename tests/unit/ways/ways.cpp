#include "prover/ways/ways.hpp"

#include "tests/unit/ways/found.hpp"

using namespace proved;

namespace {

// Two laths, LR through L parallel to KM and MS through M parallel to KL; each proves the angle sum on its own.
const std::string two_parallels =
    "triangle: KLM\nparallel: LR, KM\nparallel: MS, KL\n"
    "sides: R and M on opposite sides of KL\nsides: R and K on the same side of LM\n"
    "sides: S and L on opposite sides of KM\nsides: S and K on the same side of LM\n"
    "taught: alternate-interior-angles, corresponding-angles, co-interior-angles, angle facts\n";
const std::string sum = "prove: angle KLM + angle LKM + angle KML = 180\n";

const std::string rail =
    "triangle: KLM\nline: P, K, Q in this order\nparallel: PQ, LM\nsides: P and M on opposite sides of KL\n"
    "sides: Q and L on opposite sides of KM\nsides: P and L on the same side of KM\n"
    "sides: Q and M on the same side of KL\n";

}  // namespace

TEST_CASE("the other of two symmetric parallels is no other idea") {
  const Found mirrored(two_parallels + sum);
  CHECK(mirrored.found.ways.size() == 1);
  CHECK(mirrored.found.stop == StopReason::saturated);
  // One more knot on one of them, and they are not symmetric any more.
  const Found apart(two_parallels + "line: M, S, T in this order\n" + sum);
  CHECK(apart.found.ways.size() == 2);
}

TEST_CASE("alternate and corresponding angles at the same parallels are variants of one idea, each listed once") {
  const Found found(rail + "line: L, K, R in this order\nline: M, K, S in this order\ntaught: parallel lines, angle facts\n" + sum);
  REQUIRE(found.found.ways.size() == 1);
  std::set<std::string> alone;
  for (const WayProof& proof : found.found.ways[0].proofs) {
    CHECK(trusted(proof.checked));
    if (proof.in_full) CHECK(alone.insert(proof.checked.reading.title).second);
  }
  CHECK(alone.contains("by alternate angles"));
  CHECK(alone.contains("by corresponding angles"));
  // Taught one of them only, there is no choice.
  const Found one(rail + "taught: alternate-interior-angles, angles-on-a-straight-line\n" + sum);
  REQUIRE(one.found.ways.size() == 1);
  CHECK(one.found.ways[0].proofs.size() == 1);
}

TEST_CASE("of the three angle sums when a line cuts a triangle in two, any two are the same arithmetic") {
  // Both small sums, or one of them and that of triangle VCB.
  const std::string chain = "line: V, A, C in this order\nline: V, B, D in this order\ntriangle: VAB\nVA = AB = BC\nangle AVB = 20\n";
  CHECK(Found(chain + "find: angle CBD\n").found.ways.size() == 1);
  // One small sum, or the two others: that goes through other triangles.
  const Found other("triangle: KLM\nline: L, P, M in this order\nKL = KP\nangle KLM = 70\nangle KML = 30\n"
                    "taught: isosceles-base-angles, triangle-angle-sum, angles-on-a-straight-line\nfind: angle PKM\n");
  CHECK(other.found.ways.size() == 2);
}

TEST_CASE("the angle sum of a quadrilateral and those of its two triangles are one idea, whichever diagonal is drawn") {
  const Found found("convex: K, L, M, N\ntriangle: KLM\ntriangle: LMN\n"
                    "prove: angle NKL + angle KLM + angle LMN + angle MNK = 360\n");
  REQUIRE(found.found.ways.size() == 1);
  CHECK(found.found.ways[0].proofs.size() >= 2);
  CHECK(found.found.ways[0].proofs[0].steps == 1);
}

TEST_CASE("another triangle, another theorem: other ideas") {
  const Found found("KLMN is a parallelogram\nangle NKL = 116\nangle LKM = 41\nfind: angle KML\n");
  REQUIRE(found.found.ways.size() >= 3);
  std::set<std::string> names;
  std::int64_t before = 0;
  for (const Way& way : found.found.ways) {
    CHECK(trusted(way.proofs[0].checked));
    CHECK(way.proofs[0].checked.light.weight >= before);
    before = way.proofs[0].checked.light.weight;
  }
  CHECK(found.titles()[0][0] == "by alternate angles");
}

TEST_CASE("the first way is the proof that `prove` shows") {
  for (const char* text : {base_angles, angle_sum}) {
    const Found found(text);
    REQUIRE_FALSE(found.found.ways.empty());
    CHECK(found.found.ways[0].proofs[0].checked.light.weight == found.goal().light.weight);
  }
}

TEST_CASE("only proofs that cite a rule, only short ones") {
  const std::string text = "KLMN is a parallelogram\nangle NKL = 116\nangle LKM = 41\nfind: angle KML\n";
  WaysLimits limits;
  const RuleId opposite = *standard_catalogue().find("parallelogram-opposite-angles");
  limits.with = {opposite};
  const Found with(text, limits);
  REQUIRE_FALSE(with.found.ways.empty());
  CHECK(with.found.left_out > 0);
  for (const Way& way : with.found.ways)
    for (const WayProof& proof : way.proofs)
      CHECK(std::any_of(proof.checked.proof.steps.begin(), proof.checked.proof.steps.end(),
                        [&](const ProofStep& step) { return step.instance.rule == opposite; }));
  limits.with.clear();
  limits.most_steps = 2;
  const Found short_ones(text, limits);
  for (const Way& way : short_ones.found.ways)
    for (const WayProof& proof : way.proofs) CHECK(proof.steps <= 2);
  limits.most_steps = 0;
  limits.most = 1;
  const Found first(text, limits);
  CHECK(first.found.ways.size() == 1);
  CHECK(first.found.more > 0);
  CHECK(first.found.complete_below >= first.found.ways[0].proofs[0].checked.light.weight);
}

TEST_CASE("what small change alone gives has one way") {
  const Found found("line: S, K, U in this order\ntriangle: SKT\nangle SKT = 50\nfind: angle TKU\n");
  REQUIRE(found.found.ways.size() == 1);
  CHECK(found.titles()[0][0] == "by angles on a straight line");
}
