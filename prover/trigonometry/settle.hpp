// The angles that the law of sines settles, one condition after the other, until what is asked is known exactly.
//
// The rules' linear closure leaves a few angles open. A condition (sine_graph.hpp) in which only one of them moves
// settles it in one of two ways:
//   tangent    the condition is A sin x + B cos x = 0 (so is sin x : sin (c − x) = k): between 0° and 180° one angle fits
//   only root  it vanishes at a rational number of degrees, exactly, and nowhere else within the limits that the figure
//              sets (only_root.hpp)
// A number of degrees is taken from a drawn figure as a guess only; that it is right is shown in exact arithmetic. An
// angle that is not rational is carried on as e^(2ix), also exactly; a later angle may well be rational again.
#pragma once
#include <string>

#include "prover/trigonometry/sine_graph.hpp"

namespace prover {

enum class SettledBy { tangent, only_root };

struct SettledStep {
  SineCondition condition;
  std::vector<SineProduct> shown;  // its terms, with the settled angle as the unknown
  UnknownId angle;
  std::optional<Rational> value;
  double measured = 0;
  SettledBy by = SettledBy::tangent;
  Rational low, high;              // the limits of the angle
  std::vector<UnknownId> bounding; // the angles that set them
};

struct Settling {
  std::vector<SettledStep> steps;
  bool reached = false;
  std::optional<Rational> value;   // find: what was asked
  std::vector<SineCondition> identities;  // prove: equal lengths, shown by these
  std::string obstacle;            // not reached: why, a sentence
  bool worth_saying = false;       // it tells a reader something of the problem
  std::vector<Form> proved_forms;  // what the rules must show, each "= 0": everything that the steps use
};

// `workings`: of an attempt with the points joined, in one arrangement.
Settling settle(const Statement& statement, std::size_t goal, Workings& workings, const Budget& budget);

}  // namespace prover
