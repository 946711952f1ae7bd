// Work in a process of its own, so that it can be ended when its time is up and takes nothing with it when it fails.
#pragma once
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace prover {

struct ChildRun {
  std::optional<std::string> output;  // nothing when the time was up or it failed
  double seconds = 0;                 // from start to end
  bool time_up = false;
};
// Runs `work` in a copy of this process and hands over the text that it returns.
ChildRun run_in_child(const std::function<std::string()>& work, double limit_seconds);
// Runs a program, found by the usual path, and hands over what it prints.
ChildRun run_program(const std::vector<std::string>& words, double limit_seconds);
bool is_installed(const std::string& program);

}  // namespace prover
