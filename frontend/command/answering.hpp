// What the commands that answer one problem have in common: the options, the walk, the page or the JSON.
#pragma once
#include <optional>
#include <string>

#include "frontend/command/command.hpp"
#include "frontend/command/problem_options.hpp"

namespace frontend {

struct AnswerArguments {
  std::string file;
  ProblemOptions problem;
  bool json = false;
  bool variants = false;  // of the command `ways`
  bool report = false;    // the command `solvable`: the verdict with all its evidence
  std::string layout = "two-column";
  std::string format = "text";
  std::string reader = "teacher";
};

// One problem read and answered, with progress on a terminal and its mistakes shown. Nothing when the file cannot be read,
// which it says.
struct Answered {
  std::string text;
  prover::Answer answer;
};
void show_problem_mistakes(const prover::Answer& answer, const std::string& file, const std::string& text);
std::optional<Answered> answered(const std::string& file, const Setting& setting, Session& session);

void declare(CLI::App& app, AnswerArguments& arguments);
// The exit status. `ways`: all ideas instead of one proof; its rule names are looked up here.
int answer_problem(const AnswerArguments& arguments, const std::optional<prover::WaysOptions>& ways, Session& session);

}  // namespace frontend
