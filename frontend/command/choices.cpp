#include "frontend/command/choices.hpp"

#include "prover/proof/weights.hpp"

namespace frontend {

namespace {

template <class Table>
std::vector<std::string> names(const Table& table) {
  std::vector<std::string> result;
  for (const auto& row : table) result.emplace_back(row.name);
  return result;
}

}  // namespace

const std::vector<NamedRegister>& registers() {
  static const std::vector<NamedRegister> table = {
      {"plain", "plain words", "Plain", prover::Register::plain},
      {"us", "US class", "US", prover::Register::us},
      {"uk", "UK examination", "UK", prover::Register::uk},
      {"sa", "South African short reasons", "NSC", prover::Register::sa},
  };
  return table;
}

const std::vector<NamedLayout>& layouts() {
  static const std::vector<NamedLayout> table = {
      {"two-column", Layout::two_column},
      {"paragraph", Layout::paragraph},
  };
  return table;
}

std::vector<std::string> register_names() { return names(registers()); }
std::vector<std::string> layout_names() { return names(layouts()); }
std::vector<std::string> format_names() { return names(renderers()); }
std::vector<std::string> measure_names() {
  std::vector<std::string> names;
  for (const prover::Measure measure : prover::measures()) names.emplace_back(prover::name_of(measure));
  return names;
}

CLI::Validator one_of(std::vector<std::string> words) {
  return CLI::Validator(
      [words = std::move(words)](const std::string& word) -> std::string {
        std::string all;
        for (const std::string& known : words) {
          if (word == known) return "";
          all += (all.empty() ? "" : ", ") + known;
        }
        return "\"" + word + "\" is none of " + all;
      },
      "");
}

std::vector<std::string> choices_of(const std::string& option) {
  if (option == "wording") return register_names();
  if (option == "layout") return layout_names();
  if (option == "format") return format_names();
  if (option == "measure") return measure_names();
  if (option == "for" || option == "copy") return {"teacher", "pupil"};
  return {};
}

prover::Register register_named(const std::string& name) {
  for (const NamedRegister& row : registers()) {
    if (name == row.name) return row.wording;
  }
  return prover::Register::plain;
}

Layout layout_named(const std::string& name) {
  for (const NamedLayout& row : layouts()) {
    if (name == row.name) return row.layout;
  }
  return Layout::two_column;
}

}  // namespace frontend
