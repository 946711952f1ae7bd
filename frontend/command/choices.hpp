// The words that options accept, in one place for the command line, its help and its completion.
#pragma once
#include <CLI/CLI.hpp>

#include <string>
#include <vector>

#include "frontend/render/renderer_table.hpp"
#include "prover/rule/rule.hpp"

namespace frontend {

struct NamedRegister {
  const char* name;     // for --wording and in JSON
  const char* reader;   // who says it so
  const char* title;    // for the head of a column
  prover::Register wording;
};
const std::vector<NamedRegister>& registers();

struct NamedLayout {
  const char* name;
  Layout layout;
};
const std::vector<NamedLayout>& layouts();

std::vector<std::string> register_names();
std::vector<std::string> layout_names();
std::vector<std::string> format_names();
std::vector<std::string> measure_names();

// Accepts these words only; says which they are when another one comes.
CLI::Validator one_of(std::vector<std::string> words);

// The choices of an option, by its long name; empty when any word may follow.
std::vector<std::string> choices_of(const std::string& option);

prover::Register register_named(const std::string& name);  // the name is one of the above
Layout layout_named(const std::string& name);

}  // namespace frontend
