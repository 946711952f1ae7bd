// A sum of many equations, step by step: each step puts at most three together, the last gives the whole, and nothing is
// left out or used twice.
#include "prover/reading/worked_out.hpp"

#include <catch2/catch.hpp>

#include <set>

using namespace prover;

namespace {

Form equation(std::vector<std::pair<int, int>> terms, int constant = 0) {
  Form form = Form::number(-constant);
  for (const auto& [u, c] : terms) form.add(Form::of(UnknownId(u), c));
  return form;
}

void check_steps(const std::vector<Form>& summands, const LinearSystem& given) {
  const std::vector<WorkedOut> steps = work_out(summands, given);
  REQUIRE_FALSE(steps.empty());
  Form whole;
  for (const Form& f : summands) whole.add(f);
  CHECK(steps.back().result == given.reduce(whole));
  std::multiset<int> used;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    CHECK(steps[i].from.size() <= kAtOnce);
    CHECK(steps[i].from.size() >= (summands.size() > 1 ? 2u : 1u));
    Form sum;
    for (const int k : steps[i].from) {
      CHECK(k < static_cast<int>(summands.size() + i));  // only what stands above
      used.insert(k);
      sum.add(static_cast<std::size_t>(k) < summands.size() ? summands[static_cast<std::size_t>(k)]
                                                            : steps[static_cast<std::size_t>(k) - summands.size()].result);
    }
    CHECK(given.reduce(sum) == steps[i].result);
  }
  for (int k = 0; k < static_cast<int>(summands.size() + steps.size()) - 1; ++k) CHECK(used.count(k) == 1);
}

}  // namespace

TEST_CASE("bisected co-interior angles: the halves together first") {
  // ∠A + ∠D = 180°, ∠A = 2a, ∠D = 2d, a + d + e = 180°; wanted e = 90°.
  const std::vector<Form> summands{equation({{0, 1}, {1, 1}}, 180).scale(Rational(-1, 2)), equation({{0, 1}, {2, -2}}).scale(Rational(1, 2)),
                                   equation({{1, 1}, {3, -2}}).scale(Rational(1, 2)), equation({{2, 1}, {3, 1}, {4, 1}}, 180)};
  const LinearSystem none;
  const auto steps = work_out(summands, none);
  REQUIRE(steps.size() == 2);
  CHECK(steps[0].result.normalised() == equation({{2, 1}, {3, 1}}, 90));
  CHECK(steps[1].result == equation({{4, 1}}, 90));
  check_steps(summands, none);
}

TEST_CASE("three equations or fewer are put together at once") {
  const LinearSystem none;
  CHECK(work_out({equation({{0, 1}, {1, -1}})}, none).size() == 1);
  CHECK(work_out({equation({{0, 1}, {1, -1}}), equation({{1, 1}, {2, -1}}), equation({{2, 1}}, 50)}, none).size() == 1);
}

TEST_CASE("any number of equations, few or many, and what the givens make equal") {
  LinearSystem given;
  given.add(equation({{1, 1}, {30, -1}}));
  for (const int n : {2, 4, 7, 9, 10, 23}) {
    std::vector<Form> summands;
    for (int i = 0; i < n; ++i) summands.push_back(equation({{i, 1}, {i + 1, -1}, {40 + i % 3, i % 2 == 0 ? 1 : -1}}, i));
    INFO(n);
    check_steps(summands, LinearSystem());
    check_steps(summands, given);
  }
}
