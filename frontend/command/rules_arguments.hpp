// What the command `rules` was asked for. Each of its pages is a function of these and the catalogue.
#pragma once
#include <string>
#include <vector>

#include "prover/rule/rule.hpp"

namespace frontend {

struct RulesArguments {
  std::string id;
  std::string topic;
  std::string wording = "plain";
  std::string format = "text";
  std::string course;
  bool courses = false;
  bool lint = false;
  bool prove_all = false;
  std::string from;
  std::string graph;  // with `from`: dot or svg
  std::vector<std::string> save;  // name and problem
  bool assume = false, force = false;
  std::vector<std::string> folders;
  bool json = false;
};

// Each prints its page and returns the exit status.
int show_rule(const RulesArguments& arguments, const prover::Catalogue& catalogue);      // all about one rule
int show_rules(const RulesArguments& arguments, const prover::Catalogue& catalogue);     // the list, or the wordings
int show_courses(const RulesArguments& arguments, const prover::Catalogue& catalogue);   // all courses, or one in order
int show_library(const RulesArguments& arguments, const prover::Catalogue& catalogue);   // proved from the ones before

}  // namespace frontend
