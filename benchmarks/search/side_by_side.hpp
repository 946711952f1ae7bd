// Anglewright and general solvers on the same equations, in the same run: tables, a line "ratio NAME VALUE" for each
// row (the fastest peer's time divided by ours), and whether all answers agree.
#pragma once
#include <string>
#include <vector>

namespace prover {

struct SideBySide {
  bool quick = false;
  double limit_seconds = 15;  // for each run of each solver
  int runs = 5;               // of everything that is quick enough, in turn
  std::vector<std::string> tables;  // some of table_names(); empty: all
};
const std::vector<std::string>& table_names();
// The number of disagreements.
int compare_side_by_side(const SideBySide& options);

}  // namespace prover
