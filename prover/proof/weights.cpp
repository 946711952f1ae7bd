#include "prover/proof/weights.hpp"

#include <cassert>

namespace prover {

namespace {

// What a citation of the rule costs, wherever it is cited; `place` counts from 0 at the beginning of the course to 1.
std::int64_t citation(const Rule& rule, Measure measure, double place) {
  const auto own = static_cast<std::int64_t>((rule.cost * Rational(kWeightUnit)).to_double());
  switch (measure) {
    case Measure::classroom:
      return own;
    case Measure::fewest_steps:
      return rule.kind == RuleKind::hypothesis ? 0 : rule.free_step ? kWeightUnit / 100 : kWeightUnit;
    case Measure::early: {
      constexpr double dearer_at_the_end = 3;
      const bool taught = rule.kind != RuleKind::hypothesis && rule.kind != RuleKind::construction && !rule.free_step;
      // Whole hundredths, so that a cost can be read.
      const auto hundredth = kWeightUnit / 100;
      return taught ? static_cast<std::int64_t>(static_cast<double>(own) * (1 + dearer_at_the_end * place)) / hundredth *
                          hundredth
                    : own;
    }
  }
  return 0;
}

// By rule; worked out once for a catalogue, since the search asks for every instance.
const std::vector<std::int64_t>& citations(const Catalogue& catalogue, Measure measure) {
  struct Kept {
    std::uint64_t serial = 0;
    std::vector<std::int64_t> weights;
  };
  static thread_local std::vector<Kept> kept(measures().size());
  Kept& mine = kept[static_cast<std::size_t>(measure)];
  if (mine.serial == catalogue.serial && mine.weights.size() == catalogue.rules.size()) return mine.weights;
  mine.serial = catalogue.serial;
  mine.weights.clear();
  // A rule that the course does not teach (a teacher's own) comes after all that it does.
  std::vector<double> places(catalogue.rules.size(), 1);
  if (measure == Measure::early) {
    const auto& entries = default_course(catalogue).entries;
    for (std::size_t i = 0; i < entries.size(); ++i)
      places[entries[i].rule.index()] = static_cast<double>(i) / static_cast<double>(entries.size());
  }
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) {
    mine.weights.push_back(citation(catalogue.rules[i], measure, places[i]));
    assert(mine.weights.back() >= 0 && "the loader refuses costs below 0");
  }
  return mine.weights;
}

}  // namespace

const std::vector<Measure>& measures() {
  static const std::vector<Measure> all{Measure::classroom, Measure::fewest_steps, Measure::early};
  return all;
}

const char* name_of(Measure measure) {
  switch (measure) {
    case Measure::classroom:
      return "classroom";
    case Measure::fewest_steps:
      return "fewest-steps";
    case Measure::early:
      return "early";
  }
  return "";
}

std::optional<Measure> measure_from(std::string_view name) {
  for (const Measure m : measures())
    if (name == name_of(m)) return m;
  return std::nullopt;
}

std::int64_t weight_of(const Instance& instance, const Catalogue& catalogue, const Arrangement& arrangement,
                       Measure measure) {
  std::int64_t weight = citations(catalogue, measure)[instance.rule.index()];
  if (measure != Measure::fewest_steps)
    for (const Position& position : instance.positions)
      if (arrangement.source(position) == PositionSource::seen) weight += kWeightUnit / 4;
  return weight;
}

Rational weight_as_cost(std::int64_t weight) { return Rational(weight, kWeightUnit); }

}  // namespace prover
