// What a command is: a name, one sentence, an example for its help, and how it declares its options. Declaring
// also says what to run; the exit status is the answer in short.
#pragma once
#include <CLI/CLI.hpp>

#include <functional>
#include <string>
#include <vector>

#include "frontend/command/interrupt.hpp"

namespace frontend {

// Exit statuses, part of the contract with scripts.
inline constexpr int status_proved = 0;       // also: what was asked for was shown
inline constexpr int status_other = 1;        // any verdict but "proved"
inline constexpr int status_mistake = 2;      // a mistake in the input
inline constexpr int status_disagreement = 3; // our own checks disagree

struct Session {
  Interrupt interrupt;
  bool quiet = false;  // -q: nothing but the answer and mistakes
};

using Run = std::function<int(Session& session)>;

struct Command {
  const char* name;
  const char* summary;
  const char* example;           // closes the help
  Run (*declare)(CLI::App& app); // adds options to the command's part of the command line
};

const std::vector<Command>& commands();

int run(int argc, char** argv);  // the whole program

}  // namespace frontend
