#include "prover/measure/trial.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "prover/sketch/walk.hpp"

namespace prover {

namespace {

constexpr std::size_t steps_for_a_figure = 40;  // steps tried for each figure wanted before a case is given up

std::vector<Sketch> starts_for(const LetterCase& drawn, int starts, const TrialOptions& options, const Budget& budget) {
  SketchOptions how;
  how.wanted = 12;
  how.starts = starts;
  how.seed = options.seed;
  return sketch(drawn.premises, drawn.names.points.size(), budget, how).sketches;
}

}  // namespace

std::string coordinates_of(const Sketch& figure, const Names& names, int digits) {
  std::string text;
  for (std::size_t p = 0; p < names.points.size(); ++p)
    text += fmt::format("{}{} ({:.{}f}, {:.{}f})", p == 0 ? "" : ", ", names.points[p], figure.points[p][0], digits,
                        figure.points[p][1], digits);
  return text;
}

Trial try_rule(const Rule& rule, const TrialOptions& options, const Budget& budget) {
  Trial trial;
  std::set<std::uint64_t> arrangements;
  bool apart = true;
  for (const LetterCase& drawn : letter_cases(rule, options.most_shared)) {
    const std::size_t wanted = apart ? options.figures : options.figures / 10;
    const std::vector<Sketch> starts = starts_for(drawn, apart ? 240 : 24, options, budget);
    if (!starts.empty()) {
      Walk walk(drawn.premises, drawn.claims, starts, options.seed);
      std::size_t figures = 0;
      for (std::size_t step = 0; figures < wanted && step < steps_for_a_figure * wanted; ++step) {
        if (step % 64 == 0 && budget.exhausted()) return trial;
        if (!walk.step()) continue;
        if (!walk.is_evidence()) {
          ++trial.unclear;
          continue;
        }
        ++figures;
        trial.tolerance = std::max(trial.tolerance, walk.tolerance());
        if (apart) {
          trial.on_edge += walk.is_on_edge() ? 1 : 0;
          arrangements.insert(walk.arrangement());
        }
        if (const auto broken = walk.broken()) {
          trial.refutation = {drawn.names, walk.figure(), drawn.claims[*broken]};
          return trial;
        }
      }
      (apart ? trial.figures : trial.shared) += figures;
      trial.cases += !apart && figures > 0 ? 1 : 0;
    }
    apart = false;
  }
  trial.arrangements = arrangements.size();
  return trial;
}

}  // namespace prover
