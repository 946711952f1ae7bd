// Givens too many. What is said of a problem is shown by solving others: a smallest set proves the same answer, and
// without any one of its sentences it does not; a consequence can be proved from the sentences it is said to follow from.
#include "prover/evidence/superfluous.hpp"

#include <catch2/catch.hpp>
#include <algorithm>

#include "tests/problems/asked.hpp"

using namespace prover;

namespace {

Answer in_full(const std::string& text) {
  ProveOptions options;
  options.solvable = true;
  return asked::ask(text, options);
}

bool has(const std::vector<std::string>& list, const std::string& sentence) {
  return std::find(list.begin(), list.end(), sentence) != list.end();
}

std::string text_of(const std::vector<std::string>& sentences) {
  std::string text;
  for (const std::string& sentence : sentences) text += sentence + "\n";
  return text;
}

const AnswerConsequence* consequence(const AnswerSuperfluous& superfluous, const std::string& given) {
  for (const AnswerConsequence& one : superfluous.consequences)
    if (one.given == given) return &one;
  return nullptr;
}

}  // namespace

TEST_CASE("two base angles and the equal sides: any two of the three are enough", "[superfluous]") {
  const Answer answer = in_full("triangle: KLM\nKL = KM\nangle KLM = 70\nangle KML = 70\nfind: angle LKM\n");
  REQUIRE(answer.superfluous);
  const AnswerSuperfluous& found = *answer.superfluous;
  CHECK(found.stop == "saturated");
  CHECK(found.not_needed.empty());
  CHECK(found.sufficient.size() == 3);
  CHECK(found.consequences.size() == 3);
  for (const auto& set : found.sufficient) {
    INFO(text_of(set));
    const Answer alone = asked::ask(text_of(set) + "find: angle LKM\n");
    CHECK(alone.verdict == Verdict::proved);
    CHECK(alone.value == answer.value);
    for (std::size_t spare = 1; spare < set.size(); ++spare) {  // the first names the triangle
      auto less = set;
      less.erase(less.begin() + static_cast<std::ptrdiff_t>(spare));
      CHECK(asked::ask(text_of(less) + "find: angle LKM\n").verdict != Verdict::proved);
    }
  }
  for (const AnswerConsequence& one : found.consequences) {
    INFO(one.given);
    REQUIRE(one.proof);
    CHECK((one.proof->replay && one.proof->z3 && !one.proof->steps.empty()));
    CHECK_FALSE(has(one.from, one.given));
    CHECK(asked::ask("triangle: KLM\n" + text_of(one.from) + "prove: " + one.given + "\n").verdict == Verdict::proved);
  }
}

TEST_CASE("without a given too many nothing is listed", "[superfluous]") {
  const Answer answer = in_full("triangle: KLM\nKL = KM\nangle KLM = 70\nfind: angle LKM\n");
  REQUIRE(answer.superfluous);
  CHECK(answer.superfluous->not_needed.empty());
  CHECK(answer.superfluous->consequences.empty());
  REQUIRE(answer.superfluous->sufficient.size() == 1);
  CHECK(answer.superfluous->sufficient[0].size() == 3);
}

TEST_CASE("what the answer does without need not follow from the rest", "[superfluous]") {
  // KL = 7 is news, but no angle rests on it.
  const Answer answer = in_full("triangle: KLM\nangle KLM = 70\nangle KML = 50\nKL = 7\nfind: angle LKM\n");
  REQUIRE(answer.superfluous);
  CHECK(answer.superfluous->not_needed == std::vector<std::string>{"KL = 7"});
  CHECK(answer.superfluous->consequences.empty());
}

TEST_CASE("of two sentences about positions that say the same one is needed", "[superfluous]") {
  const std::string rails = "parallel: KL, PQ\nangle LKQ = 52\n";
  const Answer answer = in_full(rails + "sides: L and P on opposite sides of KQ\nsides: P and L on opposite sides of KQ\nfind: angle PQK\n");
  REQUIRE(answer.superfluous);
  CHECK(answer.superfluous->sufficient.size() == 2);
  CHECK(answer.superfluous->consequences.size() == 2);
  const Answer single = in_full(rails + "sides: L and P on opposite sides of KQ\nfind: angle PQK\n");
  REQUIRE(single.superfluous);
  CHECK(single.superfluous->not_needed.empty());
  CHECK(single.superfluous->consequences.empty());
  CHECK(has(single.proofs[0].givens_used, "L and P are on opposite sides of KQ"));
}

TEST_CASE("a sentence about positions that no answer rests on is not needed, its twin is", "[superfluous]") {
  const std::string angles = "triangle: KLM\nangle KLM = 70\nangle KML = 50\n";
  const std::string inside = "inside: P lies inside triangle KLM\n";
  const Answer idle = in_full(angles + inside + "find: angle LKM\n");
  REQUIRE(idle.superfluous);
  CHECK(idle.superfluous->not_needed == std::vector<std::string>{"P lies inside △KLM"});
  CHECK(idle.superfluous->consequences.empty());
  const Answer used = in_full(angles + inside + "angle PKL = 20\nfind: angle PKM\n");
  REQUIRE(used.superfluous);
  CHECK(used.superfluous->not_needed.empty());
}

TEST_CASE("the midpoint says the order on its line; the order does not say the midpoint", "[superfluous]") {
  const Answer answer =
      in_full("triangle: KLM\nmidpoint: M of LP\nline: L, M, P in this order\nangle KML = 80\nfind: angle KMP\n");
  REQUIRE(answer.superfluous);
  const AnswerConsequence* order = consequence(*answer.superfluous, "L, M, P lie on a line in this order");
  REQUIRE(order);
  CHECK(has(order->from, "M is the midpoint of LP"));
  CHECK_FALSE(consequence(*answer.superfluous, "M is the midpoint of LP"));
}

TEST_CASE("the question in full is asked only when it is asked", "[superfluous]") {
  CHECK_FALSE(asked::ask("triangle: KLM\nangle KLM = 70\nangle KML = 50\nfind: angle LKM\n").superfluous);
  CHECK_FALSE(in_full("triangle: KLM\nangle KLM = 70\nfind: angle LKM\n").superfluous);  // nothing is proved
}
