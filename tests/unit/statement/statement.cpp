#include "prover/statement/statement.hpp"

#include <catch2/catch.hpp>

using namespace prover;

namespace {
std::vector<Statement> statements(const std::string& text) {
  const ProblemText problem = parse_problem(text);
  for (const Diagnostic& mistake : problem.diagnostics) FAIL_CHECK(render(mistake, "problem", text));
  return statements_of(problem);
}
std::vector<std::string> case_names(const std::string& text) {
  std::vector<std::string> names;
  for (const Statement& one : statements(text)) names.push_back(one.case_name);
  return names;
}
}  // namespace

TEST_CASE("isosceles, which two sides not said, is three cases") {
  const auto all = statements("isosceles: triangle KLM\nangle KLM = 50\nfind: angle LKM\n");
  REQUIRE(all.size() == 3);
  CHECK(all[0].case_name == "KL = KM");
  CHECK(all[1].case_name == "LK = LM");
  CHECK(all[2].case_name == "ML = MK");
  for (const Statement& one : all) {
    CHECK(one.givens.size() == 2);
    CHECK(one.givens[0].phrase.predicate == Predicate::isosceles_at);
    CHECK(one.goals.size() == 1);
  }
}

TEST_CASE("isosceles with its equal sides named is one statement without a case") {
  CHECK(case_names("triangle: KLM\nKL = KM\nfind: angle LKM\n") == std::vector<std::string>{""});
}

TEST_CASE("two bare isosceles triangles are nine cases, and no more than nine are opened") {
  CHECK(case_names("isosceles: triangle KLM\nisosceles: triangle NPQ\nfind: angle KLM\n").size() == 9);
  const auto names = case_names("isosceles: triangle KLM\nisosceles: triangle NPQ\nfind: angle KLM\n");
  CHECK(names[0] == "KL = KM, NP = NQ");
}

TEST_CASE("auxiliary lines stand among the givens and are marked") {
  const auto all = statements("triangle: KLM\nadd: line: L, M, P in this order\nfind: angle KMP\n");
  REQUIRE(all[0].givens.size() == 2);
  CHECK_FALSE(all[0].givens[0].added);
  CHECK(all[0].givens[1].added);
}
