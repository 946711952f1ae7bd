// One problem in, one answer out. Nothing is kept between them but the rows of a table, and no more problems are in the
// house than a few for each thread: so a stream may be as long as it likes.
#include "frontend/command/batch.hpp"

#include <fmt/format.h>
#include <tbb/global_control.h>
#include <tbb/parallel_pipeline.h>
#include <unistd.h>

#include <atomic>
#include <memory>
#include <thread>

#include "frontend/command/answer_json.hpp"
#include "frontend/command/batch_tasks.hpp"
#include "frontend/command/choices.hpp"
#include "frontend/command/mark_json.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/problem_options.hpp"
#include "frontend/command/progress.hpp"
#include "frontend/command/status.hpp"
#include "frontend/command/worksheet_table.hpp"

namespace frontend {

namespace {

constexpr std::size_t tasks_per_thread = 4;

struct BatchArguments {
  std::string file;
  bool json = false, table = false, in_full = false, mark = false;
  std::string scheme;
  std::string format = "text";
  ProblemOptions problem;
  unsigned threads = 0;
};

struct Answered {
  std::string line;  // JSON
  WorksheetRow row;  // or for the table
  int status = status_mistake;
};

prover::Answer mistake_in_task(const BatchTask& task) {
  prover::Answer answer;
  answer.summary = "The line could not be read.";
  answer.stop = "mistake";
  prover::Diagnostic diagnostic;
  diagnostic.span = {0, 1};
  diagnostic.message = task.mistake;
  diagnostic.way_out = task.way_out;
  answer.diagnostics.push_back(std::move(diagnostic));
  return answer;
}

// The problem with a pupil's work: the line is what `mark --json` gives.
Answered mark_task(const BatchTask& task, const prover::SchemePolicy& policy, const Setting& setting, const std::stop_token& stop) {
  Marked marked;
  marked.scheme.policy = policy;
  if (task.mistake.empty())
    marked = mark_work(task.text, task.work, setting, policy, stop);
  else
    marked.judgement.problem = mistake_in_task(task);
  Json json;
  if (!task.id.is_null()) json["id"] = task.id;
  json.update(mark_json(marked, task.text, true));
  return {json_line(json) + "\n", {}, status_of(marked.judgement.problem)};
}

Answered answer_task(const BatchTask& task, bool table, const BatchArguments& arguments, const Setting& setting,
                     const std::stop_token& stop) {
  const prover::Answer answer = task.mistake.empty() ? setting.prove(task.text, stop) : mistake_in_task(task);
  Answered result;
  result.status = status_of(answer);
  if (table) {
    const std::string name = task.id.is_string() ? task.id.get<std::string>() : task.id.is_null() ? "?" : task.id.dump();
    result.row = worksheet_row(name, answer, *setting.catalogue);
    return result;
  }
  Json json;
  if (!task.id.is_null()) json["id"] = task.id;
  json.update(answer_json(answer, task.text, arguments.problem.times));
  result.line = json_line(json) + "\n";
  return result;
}

// The worst news of all lines. A verdict other than "proved" is no news: the line was answered.
int worse(int so_far, int status) {
  const int news = status == status_other ? status_proved : status;
  return std::max(so_far, news);
}

int run_batch(const BatchArguments& arguments, Session& session) {
  auto setting = setting_of(arguments.problem);
  if (!setting) return status_mistake;
  const bool table = arguments.table || (is_folder(arguments.file) && !arguments.json && !arguments.mark);
  setting->options.solvable = table || arguments.in_full;
  const auto policy = scheme_named(arguments.scheme, setting->options.wording);
  if (!policy) return status_mistake;
  const std::stop_token stop = session.interrupt.token();
  std::string mistake;
  const std::unique_ptr<BatchTasks> tasks = batch_tasks(arguments.file, stop, mistake);
  if (!tasks) {
    write_message(mistake);
    return status_mistake;
  }
  const unsigned threads = arguments.threads > 0 ? arguments.threads : std::max(1U, std::thread::hardware_concurrency());
  const tbb::global_control control(tbb::global_control::max_allowed_parallelism, threads);
  std::atomic<std::size_t> answered = 0;
  std::atomic<bool> writable = true;
  std::vector<WorksheetRow> rows;
  int status = status_proved;
  {
    const Progress progress(session.quiet || (isatty(STDOUT_FILENO) != 0 && !table), [&](int seconds) {
      return fmt::format("{} answered, {} s (Ctrl-C ends the work)", answered.load(), seconds);
    });
    const auto read = [&](tbb::flow_control& flow) {
      std::optional<BatchTask> task;
      if (writable) task = tasks->next();
      if (!task) flow.stop();
      return std::move(task).value_or(BatchTask{});
    };
    const auto work = [&](const BatchTask& task) {
      return arguments.mark ? mark_task(task, *policy, *setting, stop) : answer_task(task, table, arguments, *setting, stop);
    };
    const auto write = [&](const Answered& answer) {
      if (table)
        rows.push_back(answer.row);
      else if (writable && !write_answer(answer.line))
        writable = false;
      status = worse(status, answer.status);
      ++answered;
    };
    tbb::parallel_pipeline(threads * tasks_per_thread,
                           tbb::make_filter<void, BatchTask>(tbb::filter_mode::serial_in_order, read) &
                               tbb::make_filter<BatchTask, Answered>(tbb::filter_mode::parallel, work) &
                               tbb::make_filter<Answered, void>(tbb::filter_mode::serial_in_order, write));
  }
  if (table && !write_answer(renderer_named(arguments.format)->render(worksheet_page(rows), Layout::two_column)))
    writable = false;
  if (!tasks->mistake().empty()) write_message(tasks->mistake());
  if (stop.stop_requested()) write_message(fmt::format("interrupted after {} answers", answered.load()));
  if (!writable || !tasks->mistake().empty()) return std::max(status, status_mistake);
  return setting->rules.status(stop.stop_requested() ? std::max(status, status_other) : status);
}

}  // namespace

Run declare_batch(CLI::App& app) {
  auto arguments = std::make_shared<BatchArguments>();
  app.add_option("FILE", arguments->file,
                 "The problems, one JSON object a line; - reads standard input; or a folder of problem files (.aw)")
      ->required()
      ->type_name("");
  declare(app, arguments->problem);
  app.add_option("--threads", arguments->threads, "How many problems at a time; the default is one for each core")
      ->type_name("N")
      ->check(CLI::Range(1U, 256U));
  app.add_flag("--table", arguments->table, "A table for people, with what to know of each problem; the default for a folder");
  app.add_option("--format", arguments->format, "The table as text or markdown")
      ->type_name("FORMAT")
      ->check(one_of(format_names()));
  app.add_flag("--in-full", arguments->in_full, "With all evidence, as the command solvable gives it");
  app.add_flag("--json", arguments->json, "JSON lines, for a folder too")->excludes("--table");
  app.add_flag("--mark", arguments->mark, "Mark the pupils' lines, behind work: in each problem or as \"work\" in each line; JSON lines as of mark --json")
      ->excludes("--table");
  app.add_option("--scheme", arguments->scheme, "With --mark: how marks are given; the default is that of the wording")->type_name("SCHEME");
  return [arguments](Session& session) { return run_batch(*arguments, session); };
}

}  // namespace frontend
