#include "frontend/command/hints.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

#include "frontend/command/choices.hpp"
#include "frontend/command/hints_json.hpp"
#include "frontend/command/hints_page.hpp"
#include "frontend/command/input.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/problem_options.hpp"
#include "frontend/command/progress.hpp"
#include "frontend/command/status.hpp"

namespace frontend {

namespace {

constexpr int most_rungs = 1000;

struct HintsArguments {
  std::string file;
  ProblemOptions problem;
  int step = 0, way = 0;
  bool all = false, ways = false, worth = false, json = false;
  std::vector<std::string> done;
  std::string format = "text";
};

// A rung or a way that is not there, said with how many there are.
bool asks_for_too_much(const HintsArguments& arguments, const prover::Hints& hints) {
  if (hints.answer.verdict != prover::Verdict::proved || hints.complete) return false;
  if (hints.ladders.empty() && arguments.way > 0) {
    write_message(fmt::format("there is no way {}; --ways shows those that were found", arguments.way));
    return true;
  }
  std::size_t longest = 0;
  for (const prover::Ladder& ladder : hints.ladders) longest = std::max(longest, ladder.rungs.size());
  if (static_cast<std::size_t>(arguments.step) <= longest) return false;
  write_message(fmt::format("there is no rung {}; the last one is {}", arguments.step, longest));
  return true;
}

int give_hints(const HintsArguments& arguments, Session& session) {
  const auto setting = setting_of(arguments.problem);
  if (!setting) return status_mistake;
  const Input input = read_text(arguments.file, session.interrupt.token());
  if (!input.text) {
    write_message(input.mistake);
    return status_mistake;
  }
  prover::HintOptions options;
  options.prove = setting->options;
  options.prove.budget = prover::Budget::seconds(setting->limit, session.interrupt.token());
  for (const std::string& line : arguments.done) options.done += line + "\n";
  options.every_way = arguments.ways;
  if (arguments.way > 0) options.way = arguments.way;
  options.worth = arguments.worth || (arguments.all && !arguments.json);
  prover::Hints hints;
  {
    const Progress progress(session.quiet, [](int seconds) { return fmt::format("working, {} s (Ctrl-C ends the search)", seconds); });
    hints = prover::hint(*input.text, *setting->catalogue, options);
  }
  const std::string name = arguments.file == "-" ? "standard input" : arguments.file;
  for (const prover::Diagnostic& mistake : hints.answer.diagnostics) fmt::print(stderr, "{}", prover::render(mistake, name, *input.text));
  const int status = status_of(hints.answer);
  if (status != status_mistake && asks_for_too_much(arguments, hints)) return status_mistake;
  std::string page;
  if (arguments.json) {
    page = json_page(hints_json(hints, *input.text, arguments.step, arguments.problem.times));
  } else if (status != status_mistake) {
    const Document document = arguments.all ? ladder_page(hints) : rung_page(hints, std::max(1, arguments.step));
    page = renderer_named(arguments.format)->render(document, Layout::two_column);
  }
  return write_answer(page) ? setting->rules.status(status) : status_mistake;
}

}  // namespace

Run declare_hints(CLI::App& app) {
  auto arguments = std::make_shared<HintsArguments>();
  app.add_option("FILE", arguments->file, "The problem, with the pupil's lines behind \"work:\"; - reads standard input")
      ->required()
      ->type_name("");
  auto* step = app.add_option("--step", arguments->step, "The rung to show; the default is the first")
                   ->type_name("N")
                   ->check(CLI::Range(1, most_rungs));
  app.add_flag("--all", arguments->all, "The whole ladder for the teacher, the answer last, with what each rung is worth")->excludes(step);
  app.add_option("--done", arguments->done, "A line that the pupil has already (repeatable)")
      ->type_name("LINE")
      ->take_all()
      ->allow_extra_args(false);
  auto* way = app.add_option("--way", arguments->way, "The ladder of this way, as numbered by the command ways")
                  ->type_name("N")
                  ->check(CLI::Range(1, most_rungs));
  app.add_flag("--ways", arguments->ways, "A ladder for each way")->excludes(way);
  app.add_flag("--worth", arguments->worth, "With each rung how many of the ways are still open");
  app.add_flag("--json", arguments->json, "The whole ladder as JSON; with --step this rung alone");
  app.add_option("--format", arguments->format, "The page as text or markdown")->type_name("FORMAT")->check(one_of(format_names()));
  declare(app, arguments->problem);
  return [arguments](Session& session) { return give_hints(*arguments, session); };
}

}  // namespace frontend
