#include "prover/proof/weights.hpp"

namespace prover {

const char* name_of(Measure measure) {
  switch (measure) {
    case Measure::classroom:
      return "classroom";
    case Measure::fewest_steps:
      return "fewest-steps";
  }
  return "";
}

std::optional<Measure> measure_from(std::string_view name) {
  for (const Measure m : {Measure::classroom, Measure::fewest_steps})
    if (name == name_of(m)) return m;
  return std::nullopt;
}

std::int64_t weight_of(const Instance& instance, const Catalogue& catalogue, const Arrangement& arrangement,
                       Measure measure) {
  const Rule& rule = catalogue[instance.rule];
  if (measure == Measure::fewest_steps) {
    const bool free = rule.builtin == Builtin::given || rule.builtin == Builtin::angle_addition ||
                      rule.builtin == Builtin::segment_addition;
    return rule.builtin == Builtin::given ? 0 : free ? kWeightUnit / 100 : kWeightUnit;
  }
  const Rational scaled = rule.cost * Rational(kWeightUnit);
  auto weight = static_cast<std::int64_t>(scaled.to_double());
  for (const Position& position : instance.positions)
    if (arrangement.source(position) == PositionSource::seen) weight += kWeightUnit / 4;
  return weight;
}

Rational weight_as_cost(std::int64_t weight) { return Rational(weight, kWeightUnit); }

}  // namespace prover
