// The theorems of a course proved from the ones before: all of them, or one with what it rests on.
#include "frontend/command/catalogue.hpp"
#include "frontend/command/choices.hpp"
#include "frontend/command/command.hpp"
#include "frontend/command/library_page.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/rules_arguments.hpp"
#include "frontend/drawing/graph_svg.hpp"

namespace frontend {

int show_library(const RulesArguments& arguments, const prover::Catalogue& catalogue) {
  const prover::Course* course = arguments.course.empty() ? &prover::default_course(catalogue)
                                                          : course_named(catalogue, arguments.course);
  if (!course) return status_mistake;
  if (!arguments.from.empty() && !rule_ids(catalogue, {arguments.from}, "--from")) return status_mistake;
  const auto reports = prover::prove_library(catalogue, *course, prover::LibraryOptions{});
  std::string text;
  if (arguments.from.empty()) {
    text = arguments.json ? json_page(library_json(catalogue, *course, reports))
                          : renderer_named(arguments.format)->render(library_page(catalogue, *course, reports), {});
  } else {
    const prover::RuleId rule = *catalogue.find(arguments.from);
    text = arguments.json              ? json_page(theorem_json(catalogue, reports, rule))
           : arguments.graph == "dot" ? theorem_dot(catalogue, reports, rule)
           : arguments.graph == "svg" ? svg_of_dot(theorem_dot(catalogue, reports, rule))
                                       : renderer_named(arguments.format)->render(theorem_page(catalogue, reports, rule), {});
  }
  return write_answer(text) ? status_proved : status_mistake;
}

}  // namespace frontend
