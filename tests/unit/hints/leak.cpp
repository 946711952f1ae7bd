// What a hint may not say, each beside a twin that it may. The rulings are those at the head of leak.hpp.
#include <catch2/catch.hpp>

#include "prover/hints/leak.hpp"

using namespace prover;

namespace {

struct Asked {
  std::vector<Statement> statements;
  LeakGuard guard;
  Asked(const char* problem, const char* value)
      : statements(statements_of(parse_problem(problem))), guard(statements[0], statements[0].goals[0], value, {}) {}
  bool leaks(const char* sentence, Told told = Told::hint) { return guard.leak(sentence, told).has_value(); }
};

// Two rails and two equal laths that meet on the upper one.
Asked rails() {
  return {"RS ∥ TU\nV is between R and S\nT, W, X, U lie on a line in this order\nR and T are on the same side of VW\n"
          "VW = VX\nangle RVW = 64\nfind: angle WVX\n",
          "52"};
}

}  // namespace

TEST_CASE("a hint holds no number but those of the question and of what has been told", "[hints][leak]") {
  Asked problem = rails();
  CHECK_FALSE(problem.leaks("Mark the 64° in the figure."));
  CHECK(problem.leaks("The three angles make 180°."));
  CHECK(problem.leaks("Take 41° at W."));
  problem.guard.told("∠VWT = 41°");
  CHECK_FALSE(problem.leaks("Take 41° at W."));
}

TEST_CASE("neither the asked value nor one that is one subtraction away", "[hints][leak]") {
  Asked problem = rails();
  CHECK(problem.leaks("∠SVX = 52°", Told::step));
  CHECK(problem.leaks("∠RVX = 116°", Told::step));  // 116 − 64
  CHECK(problem.leaks("∠SVW = 128°", Told::step));  // 180 − 52
  CHECK_FALSE(problem.leaks("∠VWX = ∠RVW = 64°", Told::step));
  CHECK_FALSE(problem.leaks("∠VXT = ∠SVW", Told::step));
}

TEST_CASE("the number of a sum is no value of an angle", "[hints][leak]") {
  Asked problem("In triangle KLM, angle KLM = 71\nangle LMK = 52\nfind: angle LKM\n", "57");
  CHECK(problem.leaks("∠LKM + 71° + 52° = 180°", Told::step));  // gives it away as a relation
  CHECK(problem.leaks("∠KLM + ∠LMK = 123°", Told::step));       // 180 − 123
  CHECK_FALSE(problem.leaks("∠KLM + ∠LMK = 131°", Told::step));
}

TEST_CASE("what is asked stands beside no other angle before its step", "[hints][leak]") {
  Asked problem = rails();
  CHECK(problem.leaks("Compare ∠WVX and ∠RVW."));
  CHECK(problem.leaks("Compare ∠XVW and ∠RVW."));  // another name of it
  CHECK_FALSE(problem.leaks("You want ∠WVX. Name the triangle it belongs to."));
  CHECK_FALSE(problem.leaks("One of the pair is ∠RVW. Name its partner."));
}

TEST_CASE("a relation that is the goal is the last line and no hint", "[hints][leak]") {
  Asked problem("In triangle DEF, DE = DF\nED is produced to G\nDH bisects angle GDF\nprove: DH ∥ EF\n", "");
  CHECK(problem.leaks("DH ∥ EF", Told::step));
  CHECK(problem.leaks("EF ∥ HD", Told::step));
  CHECK_FALSE(problem.leaks("Which lines cut both DH and EF?"));
  CHECK_FALSE(problem.leaks("∠GDF = ∠DEF + ∠DFE (exterior angle of triangle DEF)", Told::step));
}

TEST_CASE("a relation that gives the asked size with what is known says too much", "[hints][leak]") {
  Asked problem("KL ∥ MN\nL and N are on opposite sides of KM\nangle KMN = 47\nfind: angle LKM\n", "47");
  CHECK(problem.leaks("∠LKM = ∠KMN", Told::step));
  CHECK_FALSE(problem.leaks("∠LKM = ∠KNM", Told::step));
}
