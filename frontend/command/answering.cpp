#include "frontend/command/answering.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>

#include "frontend/command/answer_json.hpp"
#include "frontend/command/answer_page.hpp"
#include "frontend/command/choices.hpp"
#include "frontend/command/input.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/problem_options.hpp"
#include "frontend/command/progress.hpp"
#include "frontend/command/status.hpp"

namespace frontend {

namespace {

constexpr std::size_t most_mistakes_shown = 40;

}  // namespace

void show_problem_mistakes(const prover::Answer& answer, const std::string& file, const std::string& text) {
  const std::string name = file == "-" ? "standard input" : file;
  const std::size_t shown = std::min(answer.diagnostics.size(), most_mistakes_shown);
  for (std::size_t i = 0; i < shown; ++i) {
    fmt::print(stderr, "{}", prover::render(answer.diagnostics[i], name, text));
  }
  if (shown < answer.diagnostics.size()) fmt::print(stderr, "… and {} more\n", answer.diagnostics.size() - shown);
}

namespace {

std::string page_of(const prover::Answer& answer, const AnswerArguments& arguments, const Setting& setting) {
  const PageOptions options{arguments.reader == "teacher", arguments.problem.times, arguments.variants, arguments.report};
  const Document document = answer_page(answer, *setting.catalogue, options);
  return renderer_named(arguments.format)->render(document, layout_named(arguments.layout));
}

}  // namespace

std::optional<Answered> answered(const std::string& file, const Setting& setting, Session& session) {
  const Input input = read_text(file, session.interrupt.token());
  if (!input.text) {
    write_message(input.mistake);
    return std::nullopt;
  }
  Answered result{*input.text, {}};
  {
    const Progress progress(session.quiet, [](int seconds) {
      return fmt::format("working, {} s (Ctrl-C ends the search and shows what is established)", seconds);
    });
    result.answer = setting.prove(result.text, session.interrupt.token());
  }
  show_problem_mistakes(result.answer, file, result.text);
  return result;
}

int answer_problem(const AnswerArguments& arguments, const std::optional<prover::WaysOptions>& ways, Session& session) {
  auto setting = setting_of(arguments.problem);
  if (!setting) return status_mistake;
  setting->options.solvable = arguments.report;
  if (ways) {
    setting->options.ways = ways;
    const auto with = rule_ids(*setting->catalogue, ways->with, "--with");
    if (!with) return status_mistake;
    setting->options.ways->with = *with;
  }
  const auto solved = answered(arguments.file, *setting, session);
  if (!solved) return status_mistake;
  const auto& [text, answer] = *solved;
  int status = status_of(answer);
  // Proved, but in no way that was asked for: nothing of that is shown.
  if (status == status_proved && !answer.ways.empty() && answer.proofs.empty()) status = status_other;
  std::string page;
  if (arguments.json) {
    page = json_page(answer_json(answer, text, arguments.problem.times));
  } else if (status != status_mistake) {
    page = page_of(answer, arguments, *setting);
  }
  return write_answer(page) ? setting->rules.status(status) : status_mistake;
}

void declare(CLI::App& app, AnswerArguments& arguments) {
  app.add_option("FILE", arguments.file, "The problem; - reads standard input")->required()->type_name("");
  declare(app, arguments.problem);
  app.add_flag("--json", arguments.json, "The answer as JSON");
  app.add_option("--layout", arguments.layout, "The proof as two-column or paragraph")
      ->type_name("LAYOUT")
      ->check(one_of(layout_names()));
  app.add_option("--format", arguments.format, "The page as text or markdown")
      ->type_name("FORMAT")
      ->check(one_of(format_names()));
  app.add_option("--for", arguments.reader,
                 "teacher, or pupil: then without what was only seen in the figure")
      ->type_name("READER")
      ->check(one_of(choices_of("for")));
}

}  // namespace frontend
