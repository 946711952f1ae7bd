// A pupil's work marked, or that of a class. Nothing is kept and nothing leaves this computer.
#include "frontend/command/mark.hpp"

#include <fmt/format.h>

#include <cstdio>
#include <memory>

#include "frontend/command/answering.hpp"
#include "frontend/command/choices.hpp"
#include "frontend/command/input.hpp"
#include "frontend/command/mark_class.hpp"
#include "frontend/command/mark_json.hpp"
#include "frontend/command/mark_page.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/progress.hpp"
#include "frontend/command/status.hpp"

namespace frontend {

namespace {

struct MarkArguments {
  std::string file, work, folder, scheme;
  std::string format = "text", copy = "teacher";
  bool json = false, show_scheme = false;
  unsigned threads = 0;
  ProblemOptions problem;
};

// Marked is marked, however few the marks; but a problem that cannot be read or is not proved says so.
int mark_one(const MarkArguments& arguments, const std::string& problem, const Setting& setting,
             const prover::SchemePolicy& policy, Session& session) {
  const std::stop_token stop = session.interrupt.token();
  std::string work;
  if (!arguments.work.empty()) {
    const Input input = read_work_file(arguments.work, stop);
    if (!input.text) {
      write_message(input.mistake);
      return status_mistake;
    }
    work = *input.text;
  }
  std::optional<Marked> marked;
  {
    const Progress progress(session.quiet, [](int seconds) {
      return fmt::format("working, {} s (Ctrl-C ends the search and shows what is established)", seconds);
    });
    marked = mark_work(problem, work, setting, policy, stop);
  }
  show_problem_mistakes(marked->judgement.problem, arguments.file, problem);
  const int status = status_of(marked->judgement.problem);
  std::string page;
  const bool for_teacher = arguments.copy == "teacher";
  if (arguments.json)
    page = json_page(mark_json(*marked, problem, for_teacher));
  else if (status != status_mistake)
    page = renderer_named(arguments.format)->render(mark_page(*marked, {for_teacher, arguments.show_scheme}), Layout::two_column);
  return write_answer(page) ? setting.rules.status(status) : status_mistake;
}

int run_mark(const MarkArguments& arguments, Session& session) {
  if (arguments.file == "-" && arguments.work == "-") {
    write_message("the problem and the work cannot both come from standard input; name a file for one of them");
    return status_mistake;
  }
  if (arguments.show_scheme && arguments.copy == "pupil") {
    write_message("--show-scheme is for the teacher's copy: the scheme holds the answer");
    return status_mistake;
  }
  const auto setting = setting_of(arguments.problem);
  if (!setting) return status_mistake;
  const auto policy = scheme_named(arguments.scheme, setting->options.wording);
  if (!policy) return status_mistake;
  const Input problem = read_text(arguments.file, session.interrupt.token());
  if (!problem.text) {
    write_message(problem.mistake);
    return status_mistake;
  }
  if (arguments.folder.empty()) return mark_one(arguments, *problem.text, *setting, *policy, session);
  const ClassWork work{arguments.folder, arguments.file, *problem.text, arguments.format, arguments.json, arguments.threads};
  return mark_class(work, *setting, *policy, session);
}

}  // namespace

Run declare_mark(CLI::App& app) {
  auto arguments = std::make_shared<MarkArguments>();
  app.add_option("FILE", arguments->file, "The problem, with the pupil's lines behind work:; - reads standard input")
      ->required()
      ->type_name("");
  auto* work = app.add_option("--work", arguments->work, "The pupil's lines in a file of their own; - reads standard input")->type_name("FILE");
  auto* folder = app.add_option("--class", arguments->folder, "The work of a class: a folder with a file for each pupil; gives a tally")
                     ->type_name("FOLDER")
                     ->excludes(work);
  app.add_option("--scheme", arguments->scheme,
                 "How marks are given: plain, sa, uk, us, friendly, strict, or a file; the default is that of the wording")
      ->type_name("SCHEME");
  app.add_flag("--show-scheme", arguments->show_scheme, "The scheme's policies in full, with their sources");
  app.add_option("--copy,--for", arguments->copy, "teacher, or pupil: then without the scheme and what would bridge a gap")
      ->type_name("READER")
      ->check(one_of(choices_of("copy")))
      ->excludes(folder);
  declare(app, arguments->problem);
  app.add_flag("--json", arguments->json, "The marks as JSON");
  app.add_option("--format", arguments->format, "The page as text or markdown")
      ->type_name("FORMAT")
      ->check(one_of(format_names()));
  app.add_option("--threads", arguments->threads, "With --class: how many pupils at a time; the default is one for each core")
      ->type_name("N")
      ->check(CLI::Range(1U, 256U));
  return [arguments](Session& session) { return run_mark(*arguments, session); };
}

}  // namespace frontend
