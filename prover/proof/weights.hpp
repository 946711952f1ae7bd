// What a step costs a reader, by a measure with a name. Charges sit on rule instances and add up, so that
// "shortest" has one meaning: least total charge of the distinct instances used. All that a charge rests on stands in
// the rule files (`cost`, `step free`) and in the course; rules/README.md says why each weight is what it is.
//   classroom     each cited rule its own weight; a position seen in the figure ¼
//   fewest-steps  1 for each cited theorem, definition or construction; steps that the rule files call free a
//                 hundredth, so that ties go to the shorter page; givens nothing
//   early         like classroom, but a rule pays more the later the course teaches it, up to four times its weight at
//                 the end: the proof that a class can follow soonest
// No charge is negative.
#pragma once
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "prover/figure/arrangement.hpp"
#include "prover/rule/instance.hpp"

namespace prover {

enum class Measure { classroom, fewest_steps, early };
const std::vector<Measure>& measures();
const char* name_of(Measure measure);
std::optional<Measure> measure_from(std::string_view name);

constexpr std::int64_t kWeightUnit = 100'000;  // weights are whole numbers of this fraction

std::int64_t weight_of(const Instance& instance, const Catalogue& catalogue, const Arrangement& arrangement,
                       Measure measure);
Rational weight_as_cost(std::int64_t weight);

}  // namespace prover
