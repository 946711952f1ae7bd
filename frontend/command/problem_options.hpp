// The options that say how a problem is to be solved; the same for one problem and for many.
#pragma once
#include <CLI/CLI.hpp>

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "frontend/command/catalogue.hpp"
#include "prover/prove.hpp"

namespace frontend {

struct ProblemOptions {
  std::string taught;
  std::vector<std::string> without, without_only;
  std::string measure = "classroom";
  double limit = 2;
  std::string wording = "plain";
  std::vector<std::string> rule_folders;
  bool unfold = false;
  bool times = false;
};

void declare(CLI::App& app, ProblemOptions& options);

// The options looked up and ready for the prover, except for the budget, which starts with each problem.
struct Setting {
  LoadedRules rules;  // `catalogue`, and whether one of its files had to be left out
  CataloguePointer catalogue;
  prover::ProveOptions options;
  double limit = 2;

  prover::Answer prove(const std::string& text, std::stop_token stop) const;
};
std::optional<Setting> setting_of(const ProblemOptions& options);  // nothing after a mistake, which it printed

}  // namespace frontend
