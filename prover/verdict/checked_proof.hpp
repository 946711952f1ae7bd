// From a light set of rule instances to a proof that may be shown: assembled, laid out for reading and put to the
// two checks. Every proof goes through here, the first one of a goal and all other ways to it.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "prover/chain/saturate.hpp"
#include "prover/check/check.hpp"
#include "prover/proof/weights.hpp"
#include "prover/reading/reading.hpp"
#include "prover/search/lightest_set.hpp"
#include "prover/sketch/sketch.hpp"
#include "prover/smt/second_opinion.hpp"

namespace prover {

struct AttemptOptions {
  const Catalogue& catalogue;
  std::vector<bool> allowed;
  Measure measure = Measure::classroom;
  Register wording = Register::plain;
  bool join_points = false;
  bool inequalities = false;  // rules that speak by "greater" and "less" too
};

struct CheckedProof {
  Proof proof;
  Reading reading;
  LightSet light;
  CheckReport replay;
  SecondOpinion z3;
  std::string value;
  std::optional<Rational> number;
};
bool trusted(const CheckedProof& proof);  // both checks said yes: only such a proof is ever shown as one
// One of the two says no. Z3 out of time has said nothing: then the proof is not shown as proved, that is all.
bool refuted(const CheckedProof& proof);

struct StageTimes {
  double chain = 0, search = 0, check = 0, z3 = 0, layout = 0;  // milliseconds
};

class StageTimer {  // adds the time until its end
 public:
  explicit StageTimer(double& total) : total_(total), start_(Budget::Clock::now()) {}
  ~StageTimer() { total_ += std::chrono::duration<double, std::milli>(Budget::Clock::now() - start_).count(); }
  StageTimer(const StageTimer&) = delete;
  StageTimer& operator=(const StageTimer&) = delete;

 private:
  double& total_;
  Budget::Clock::time_point start_;
};

// Where a proof is made and read.
struct Scene {
  const Statement& statement;
  const Arrangement& arrangement;
  UnknownTable& unknowns;
  const std::vector<Sketch>& views;
  const AttemptOptions& options;
};

// What is to be proved, once the chain has reached it.
struct Claim {
  const Goal& goal;
  const std::vector<Form>& forms;  // empty: 0 = 1
  const std::vector<Position>& positions;
  bool contradiction = false;
  std::vector<Form> positive = {};  // differences that the claim says to be more than 0; `forms` shows them so
};

// The claim as the search sees it: candidate i of the problem is instance i.
struct GoalSearch {
  std::vector<const Instance*> instances;  // of the saturation, those that can matter to the claim
  SearchProblem problem;
};
GoalSearch goal_search(const Saturation& saturation, const Claim& claim, const Scene& scene);

CheckedProof checked_proof(const GoalSearch& search, LightSet light, const Claim& claim, const Scene& scene,
                           const Budget& budget, StageTimes& times);

}  // namespace prover
