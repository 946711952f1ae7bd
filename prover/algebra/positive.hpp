// What is positive although no number says so: angles, lengths and excesses are more than 0, so a sum of them with positive
// factors is, and so is whatever equals such a sum. Stiemke's theorem: equations have a solution in positive numbers
// exactly when no combination of them is such a sum (Schrijver, "Theory of Linear and Integer Programming", 1986, section
// 7.8; from memory). The combination is found by the simplex method, exactly, with Bland's rule, so that it ends.
#pragma once
#include <optional>

#include "prover/algebra/linear_system.hpp"
#include "prover/fact/unknown.hpp"

namespace prover {

// A sum of positive sizes that equals `form` by the equations of the system; nothing when there is none, or the system is
// too large.
std::optional<Form> as_positive_sum(const Form& form, const LinearSystem& system, const UnknownTable& unknowns);
// The same by a look at its normal form and at one further equation: quick, and not complete.
std::optional<Form> plainly_positive_sum(const Form& form, const LinearSystem& system, const UnknownTable& unknowns);
// A sum of positive sizes that the system makes 0: what it says cannot be.
std::optional<Form> positive_sum_that_is_zero(const LinearSystem& system, const UnknownTable& unknowns);

}  // namespace prover
