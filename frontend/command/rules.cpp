// The command `rules`: its options, and which page answers them. Each page is a file of its own.
#include "frontend/command/rules.hpp"

#include <memory>

#include "frontend/command/catalogue.hpp"
#include "frontend/command/choices.hpp"
#include "frontend/command/rules_arguments.hpp"
#include "frontend/command/rules_lint.hpp"
#include "frontend/command/rules_save.hpp"

namespace frontend {

namespace {

int show(const RulesArguments& arguments, const prover::Catalogue& catalogue) {
  if (arguments.prove_all || !arguments.from.empty()) return show_library(arguments, catalogue);
  if (arguments.courses || !arguments.course.empty()) return show_courses(arguments, catalogue);
  if (!arguments.id.empty()) return show_rule(arguments, catalogue);
  return show_rules(arguments, catalogue);
}

}  // namespace

Run declare_rules(CLI::App& app) {
  auto arguments = std::make_shared<RulesArguments>();
  std::vector<std::string> wordings = register_names();
  wordings.emplace_back("all");
  app.add_option("ID", arguments->id, "Show all about this rule")->type_name("");
  app.add_option("--topic", arguments->topic, "Only the rules of this topic")->type_name("TOPIC");
  app.add_option("--wording", arguments->wording,
                 "Wording of the reasons: plain, us, uk, sa, or all with where each comes from")
      ->type_name("REGISTER")
      ->check(one_of(wordings));
  app.add_flag("--courses", arguments->courses, "List the courses: what a class has been taught, in order");
  app.add_option("--course", arguments->course, "What this course takes for granted and what it teaches, in order; with the options below, whose order counts")
      ->type_name("COURSE");
  app.add_option("--format", arguments->format, "The page as text or markdown")
      ->type_name("FORMAT")
      ->check(one_of(format_names()));
  app.add_option("--rules", arguments->folders, "Add the rules and courses in this folder (repeatable)")
      ->type_name("FOLDER")
      ->take_all()
      ->allow_extra_args(false);
  app.add_flag("--prove-all", arguments->prove_all, "Prove every theorem from those taught before it");
  app.add_option("--from", arguments->from, "What this rule rests on: its proof and its ancestors")->type_name("ID");
  app.add_option("--graph", arguments->graph, "With --from: the graph of what it rests on, as dot or svg")
      ->type_name("FORMAT")
      ->check(one_of({"dot", "svg"}));
  app.add_flag("--lint", arguments->lint, "Draw, match and compare the rules (with --rules, those of the folders)");
  app.add_flag("--json", arguments->json, "As JSON");
  app.add_option("--save", arguments->save, "Make the problem in FILE a rule NAME of your own, in the first folder of --rules")
      ->type_name("NAME FILE")
      ->expected(2);
  app.add_flag("--assume", arguments->assume, "With --save: also a rule that is not proved");
  app.add_flag("--force", arguments->force, "With --save: write over the file");
  return [arguments](Session& session) {
    if (!arguments->save.empty())
      return save_rule({arguments->save[0], arguments->save[1], arguments->assume, arguments->force},
                       arguments->folders, session);
    if (arguments->lint) return lint_command(arguments->id, arguments->folders, arguments->json);
    const LoadedRules loaded = catalogue_with(arguments->folders);
    if (!loaded.catalogue) return status_mistake;
    return loaded.status(show(*arguments, *loaded.catalogue));
  };
}

}  // namespace frontend
