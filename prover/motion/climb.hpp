// Continuation along the free directions: a mechanism is moved, step by step, to where something is as large as it can be
// made. A step goes along the part of the gradient that is free, and Newton's method takes the figure back to the givens.
// On the way every position keeps: which side, which order, for every three points. So the figures at both ends are the
// same kind of figure, and nobody can say that another case was drawn.
#pragma once
#include <functional>
#include <optional>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/motion/mechanism.hpp"

namespace prover::motion {

// What is to become large: its value at a figure's variables, and its gradient where one is asked for.
using Aim = std::function<double(const std::vector<double>& x, Eigen::VectorXd* gradient)>;

Aim quantity(const Expression& expression, const sketching::Units& units, double sign);  // angles in radians

// Moves `mechanism` until the aim and the clearness of the figure together get no larger (see shape.hpp), or after so many
// steps. Never leaves it less clear than `least_clear`, unless it was that before.
void climb(Mechanism& mechanism, const Aim& aim, const Budget& budget, int steps = 40, double least_clear = 0.05);

// The same figure, as clear as the givens let it be.
void tidy(Mechanism& mechanism, const Budget& budget);

}  // namespace prover::motion
