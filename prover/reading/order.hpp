// The order in which a person would say the steps of a proof. What makes an order good is a number, compared part by
// part:
//   open      how many unknowns the lines leave open beyond the one that each settles, and one more for what is left
//             open and does not just say that two things are equal: values go in at once
//   distance  how long a reader keeps things in mind: for every angle, length or fact the lines from its first mention
//             to its last use, the goal included, summed over all; and 1 for each rule that is taken up again after
//             another one came between, and for each equality that could have gone on from another one and does not
//   narrow    long equations before the short ones that are put into them
//   turned    pairs that stand the other way round than in the order given
// Givens, and what they make equal, cost nothing: they stand in the question.
#pragma once
#include <compare>
#include <vector>

#include "prover/rule/instance.hpp"

namespace prover {

struct OrderCost {
  int open = 0, distance = 0, narrow = 0, turned = 0;
  friend auto operator<=>(const OrderCost&, const OrderCost&) = default;
};

// Of steps in the order given, in which premises come first.
OrderCost order_cost(const std::vector<Instance>& ordered, const std::vector<Form>& goal);

// Givens first, then added lines, then the rest in the order of least cost: exactly up to twelve steps, beyond that
// each time the step that costs least next. Ties go to the order of `members`, which must be one in which premises
// come first. `goal`: what the last line says.
std::vector<Instance> order_for_reading(std::vector<Instance> members, const std::vector<Form>& goal = {});

// The same as indices of `members`. `lettered`: an unknown that is called x for short and counts as known; not valid when
// there is none.
std::vector<std::size_t> reading_order(const std::vector<const Instance*>& members, const std::vector<Form>& goal,
                                       UnknownId lettered);

}  // namespace prover
