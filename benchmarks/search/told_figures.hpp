// Problems told in sentences and worked through by the whole catalogue: the rule instances that the chain finds, as a search
// problem. Here premises must themselves be derived, which no general solver takes; for a comparison they are granted.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "benchmarks/search/instance.hpp"

namespace prover {

struct ToldFigure {
  SearchInstance instance;
  std::size_t fired = 0;      // all instances of the chain; the search sees those that can matter to the goal
  std::size_t nested = 0;     // candidates with premises
  double chain_seconds = 0;   // from sentences that have been read to the last instance
};
// Nothing when the goal is not reached, or is not one claim, within the limit.
std::optional<ToldFigure> told_figure(const std::string& name, const std::string& text, double limit_seconds);

// The same without its premises: what the goal costs when the facts are known. Weights divided by what they have in common.
SearchInstance with_premises_granted(const ToldFigure& figure);

struct PublishedText {
  std::string name, text;
};
std::vector<PublishedText> published_texts();  // of tests/published, one problem with one claim each

}  // namespace prover
