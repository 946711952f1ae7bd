// What a step costs a reader, by a measure with a name. Charges sit on rule instances and add up, so that
// "shortest" has one meaning: least total charge of the distinct instances used.
//   classroom     each cited rule its own weight (in its file); a position seen in the figure ¼
//   fewest-steps  1 for each cited theorem, definition or construction; free steps (givens, adding neighbouring
//                 angles or segments) a hundredth, so that ties go to the shorter page
#pragma once
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "prover/figure/arrangement.hpp"
#include "prover/rule/instance.hpp"

namespace prover {

enum class Measure { classroom, fewest_steps };
const char* name_of(Measure measure);
std::optional<Measure> measure_from(std::string_view name);

constexpr std::int64_t kWeightUnit = 100'000;  // weights are whole numbers of this fraction

std::int64_t weight_of(const Instance& instance, const Catalogue& catalogue, const Arrangement& arrangement,
                       Measure measure);
Rational weight_as_cost(std::int64_t weight);

}  // namespace prover
