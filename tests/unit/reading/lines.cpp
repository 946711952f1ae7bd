// What makes a proof read like a board: known numbers put in, halves written as halves, one letter for what comes up
// again and again, long sums worked out, equal things chained, names as in the problem. Each claim has a twin in which
// the means must not be used.
#include "tests/unit/proof/proved.hpp"

using namespace prover;
using proved::Proved;

namespace {

std::vector<std::string> claims(const Reading& reading) {
  std::vector<std::string> all;
  for (const ReadingLine& line : reading.lines) {
    std::string text;
    for (const std::string& row : line.rows) text += (text.empty() ? "" : " ") + row;
    all.push_back(text);
  }
  return all;
}
bool says(const Reading& reading, const std::string& text) {
  const auto all = claims(reading);
  return std::find(all.begin(), all.end(), text) != all.end();
}
bool has_rule(const Reading& reading, const std::string& rule) {
  return std::any_of(reading.lines.begin(), reading.lines.end(), [&](const ReadingLine& l) { return l.rule == rule; });
}

const char* const golden_triangle =
    "triangle: KLM\nKL = KM\nline: K, N, M in this order\nKN = LN = LM\ntaught: isosceles-base-angles, "
    "exterior-angle-of-triangle, triangle-angle-sum\nfind: angle LKM\n";
const char* const halved_cointerior =
    "parallel: KP, LQ\nsides: P and Q on the same side of KL\nbisects: ray KT bisects angle PKL\n"
    "bisects: ray LT bisects angle QLK\ninside: T lies inside angle PKL\n"
    "taught: co-interior-angles, triangle-angle-sum\nprove: angle KTL = 90\n";

}  // namespace

TEST_CASE("one unknown that comes up three times or more gets a letter, and sizes are told by it") {
  const Reading reading = Proved(golden_triangle).goal().reading;
  CHECK(claims(reading).front() == "Let ∠LKM = x");
  CHECK(says(reading, "∠LNM = ∠LKM + ∠KLN = 2x"));
  CHECK(says(reading, "∠LKM + ∠KLM + ∠KML = 180° so x + 2x + 2x = 180° so ∠LKM = x = 36°"));
  CHECK(reading.lines.back().closing);
}

TEST_CASE("no letter where a value settles things, nor one that the problem uses itself") {
  CHECK_FALSE(has_rule(Proved(proved::base_angles).goal().reading, "let"));
  CHECK_FALSE(has_rule(Proved(proved::angle_sum).goal().reading, "let"));
  const Reading reading =
      Proved("line: U, V, W in this order\ntriangle: UVT\nangle UVT = 2x\nangle TVW = 3x + 5\nfind: x\n").goal().reading;
  CHECK_FALSE(has_rule(reading, "let"));
}

TEST_CASE("a whole that is bisected is twice its half, and a group of angles is known together") {
  const Reading reading = Proved(halved_cointerior).goal().reading;
  CHECK(says(reading, "∠PKL = 2∠LKT"));
  CHECK(says(reading, "∠LKT + ∠KLT = 90°"));
  CHECK(says(reading, "∠KTL = 180° − (∠LKT + ∠KLT) = 180° − 90° = 90°"));
}

TEST_CASE("angles that together are as much as a third one make it twice") {
  const std::string text = "triangle: RSU\nline: R, T, S in this order\nTR = TS = TU\n"
                           "taught: isosceles-base-angles, triangle-angle-sum\n";
  const Reading reading = Proved(text + "prove: angle RUS = 90\n").goal().reading;
  REQUIRE(reading.lines.back().rows.size() == 3);  // the sum, whatever its order, and what it makes
  CHECK(reading.lines.back().rows[1] == "so 2∠RUS = 180°");
  CHECK(reading.lines.back().rows[2] == "so ∠RUS = 90°");
  CHECK(reading.lines.back().closing);
  CHECK(reading.lines.size() == 4);
}

TEST_CASE("no line puts more than three sums together, and each says which") {
  for (const char* text : {halved_cointerior, golden_triangle,
                           "triangle: KLM\nbisects: ray LT bisects angle KLM\nbisects: ray MT bisects angle KML\n"
                           "prove: angle LTM = 90 + 1/2 angle LKM\n"}) {
    INFO(text);
    const Reading reading = Proved(text).goal().reading;
    for (const ReadingLine& line : reading.lines)
      if (line.rule == "substitution") {
        CHECK(line.uses.size() <= 5);
        CHECK_FALSE(line.uses.empty());
      }
  }
}

TEST_CASE("parallels are named as the text names them, not by the rays that a rule met") {
  const Reading reading = Proved(proved::angle_sum).goal().reading;
  int parallels = 0;
  for (const ReadingLine& line : reading.lines) {
    if (line.rule != "alternate-interior-angles") continue;
    ++parallels;
    CHECK(line.reason.find("PQ ∥ LM, cut by K") != std::string::npos);
    CHECK(line.reason.find("KP ∥") == std::string::npos);
  }
  CHECK(parallels == 2);
}

TEST_CASE("equal things are chained from line to line; the last of the chain is the claim") {
  const Reading reading = Proved("triangle: KLM\nKL = KM\nline: L, K, P in this order\nparallel: KQ, LM\n"
                                 "sides: Q and M on the same side of LP\ntaught: corresponding-angles, isosceles-base-angles\n"
                                 "prove: angle PKQ = angle KML\n")
                              .goal()
                              .reading;
  REQUIRE(reading.lines.size() == 2);
  CHECK(claims(reading) == std::vector<std::string>{"∠PKQ = ∠KLM", "= ∠KML"});
  CHECK(reading.lines.back().claim == "∠PKQ = ∠KLM = ∠KML");
  CHECK(reading.lines.back().closing);
}

TEST_CASE("values are not chained on: two right angles stand on lines of their own") {
  const Reading reading = Proved("circle: centre O through S, T\ntriangle: OST\ntangent: line PS touches circle O at S\n"
                                 "tangent: line PT touches circle O at T\nconvex: O, S, P, T\nangle SPT = 50\n"
                                 "taught: tangent-radius, quadrilateral-angle-sum\nfind: angle SOT\n")
                              .goal()
                              .reading;
  for (const ReadingLine& line : reading.lines) CHECK_FALSE(line.rows.front().starts_with("="));
}

TEST_CASE("congruent triangles keep the order of letters in which they are first said, and their givens") {
  const Reading reading = Proved("convex: K, L, M, N\nKN = LM\nangle NKL = angle KLM\nprove: KM = LN\n").goal().reading;
  REQUIRE(reading.lines.size() == 2);
  CHECK(reading.lines[0].rows[0] == "△KLM ≅ △LKN");
  CHECK(reading.lines[0].reason.find("given ") != std::string::npos);
  CHECK(reading.lines[0].reason.find("KN = LM") != std::string::npos);
  CHECK(reading.lines[1].reason.find("KLM and LKN") != std::string::npos);
}

TEST_CASE("the claim stands as the question puts it") {
  const std::string text = "angle XZY = 90\nmidpoint: M of XY\ntaught: median-to-hypotenuse\nprove: equal lengths ";
  CHECK(claims(Proved(text + "MZ = MX\n").goal().reading).back() == "MZ = MX");
  CHECK(claims(Proved(text + "MX = MZ\n").goal().reading).back() == "MX = MZ");
}

TEST_CASE("givens that cannot all hold: the last row says what does not fit") {
  const Proved problem("triangle: KLM\nangle KLM = 64\nangle LMK = 58\nangle MKL = 60\nfind: angle KLM\n");
  REQUIRE(problem.attempt.contradiction);
  CHECK(says(problem.attempt.contradiction->reading, "∠KLM + ∠LMK + ∠MKL = 180° but 64° + 58° + 60° = 182°"));
}

TEST_CASE("an answer in terms of another angle names that angle, and no number alone") {
  const std::string text = "triangle: KLM\nbisects: ray LT bisects angle KLM\nbisects: ray MT bisects angle KML\n";
  const Reading reading = Proved(text + "find: angle LTM in terms of angle LKM\n").goal().reading;
  CHECK(claims(reading).back() == "∠LTM = ½∠LKM + 90°");
  // Also where a given calls it by its letters the other way round.
  const Reading turned = Proved("triangle: KLM\nangle MKL = 2 angle KLM\nfind: angle KLM in terms of angle LKM\n").goal().reading;
  CHECK(claims(turned).back().starts_with("∠KLM = ½∠"));
  const Reading plain = Proved(text + "angle LKM = 40\nfind: angle LTM\n").goal().reading;
  CHECK(claims(plain).back().ends_with("= 110°"));
}
