// One problem a line in, one answer a line out. Nothing is kept between lines, and no more lines are in the house
// than a few for each thread: so the stream may be as long as it likes.
#include "frontend/command/batch.hpp"

#include <fmt/format.h>
#include <tbb/global_control.h>
#include <tbb/parallel_pipeline.h>
#include <unistd.h>

#include <atomic>
#include <memory>
#include <thread>

#include "frontend/command/answer_json.hpp"
#include "frontend/command/input.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/problem_options.hpp"
#include "frontend/command/progress.hpp"
#include "frontend/command/status.hpp"

namespace frontend {

namespace {

constexpr std::size_t lines_per_thread = 4;

struct BatchArguments {
  std::string file;
  bool json = true;  // accepted for uniformity
  ProblemOptions problem;
  unsigned threads = 0;
};

struct Answered {
  std::string line;
  int status = status_mistake;
};

prover::Answer mistake_in_line(std::size_t column, std::string message, std::string way_out) {
  prover::Answer answer;
  answer.summary = "The line could not be read.";
  answer.stop = "mistake";
  prover::Diagnostic diagnostic;
  diagnostic.span = {column, column + 1};
  diagnostic.message = std::move(message);
  diagnostic.way_out = std::move(way_out);
  answer.diagnostics.push_back(std::move(diagnostic));
  return answer;
}

bool can_be_id(const Json& id) { return id.is_string() || id.is_number_integer(); }

Answered answer_line(const LineReader::Line& line, const BatchArguments& arguments, const Setting& setting,
                     const std::stop_token& stop) {
  const char* const shape = "{\"id\": \"17\", \"problem\": \"triangle: KLM\\n…\\nfind: angle KLM\"}";
  const std::string where = fmt::format("line {} of the input ", line.number);
  Json id;
  std::string text;
  prover::Answer answer;
  const Json object = Json::parse(line.text, nullptr, false);
  if (object.is_object() && object.contains("id") && can_be_id(object["id"])) id = object["id"];
  if (line.too_long) {
    answer = mistake_in_line(0, where + "is longer than a megabyte", "send large problems on their own");
  } else if (!object.is_object()) {
    answer = mistake_in_line(0, where + "is not a JSON object", shape);
  } else if (id.is_null()) {
    answer = mistake_in_line(0, where + "has no \"id\" that is a text or a whole number", shape);
  } else if (!object.contains("problem") || !object["problem"].is_string()) {
    answer = mistake_in_line(0, where + "has no \"problem\" that is a text", shape);
  } else {
    text = object["problem"].get<std::string>();
    const std::string wrong = not_a_text(text);
    answer = wrong.empty() ? setting.prove(text, stop) : mistake_in_line(0, "the problem " + wrong, "");
  }
  Json result;
  if (!id.is_null()) result["id"] = id;
  result.update(answer_json(answer, text, arguments.problem.times));
  return {json_line(result) + "\n", status_of(answer)};
}

// The worst news of all lines. A verdict other than "proved" is no news: the line was answered.
int worse(int so_far, int status) {
  const int news = status == status_other ? status_proved : status;
  return std::max(so_far, news);
}

int run_batch(const BatchArguments& arguments, Session& session) {
  const auto setting = setting_of(arguments.problem);
  if (!setting) return status_mistake;
  std::string mistake;
  const int descriptor = open_for_reading(arguments.file, mistake);
  if (descriptor < 0) {
    write_message(mistake);
    return status_mistake;
  }
  const std::stop_token stop = session.interrupt.token();
  LineReader reader(descriptor, largest_text, stop);
  const unsigned threads = arguments.threads > 0 ? arguments.threads : std::max(1U, std::thread::hardware_concurrency());
  const tbb::global_control control(tbb::global_control::max_allowed_parallelism, threads);
  std::atomic<std::size_t> answered = 0;
  std::atomic<bool> writable = true;
  int status = status_proved;
  {
    const Progress progress(session.quiet || isatty(STDOUT_FILENO) != 0, [&](int seconds) {
      return fmt::format("{} answered, {} s (Ctrl-C ends the work)", answered.load(), seconds);
    });
    const auto read = [&](tbb::flow_control& flow) {
      while (writable) {
        auto line = reader.next();
        if (!line) break;
        if (line->too_long || line->text.find_first_not_of(" \t") != std::string::npos) return *line;
      }
      flow.stop();
      return LineReader::Line{};
    };
    const auto work = [&](const LineReader::Line& line) { return answer_line(line, arguments, *setting, stop); };
    const auto write = [&](const Answered& answer) {
      if (writable && !write_answer(answer.line)) writable = false;
      status = worse(status, answer.status);
      ++answered;
    };
    tbb::parallel_pipeline(threads * lines_per_thread,
                           tbb::make_filter<void, LineReader::Line>(tbb::filter_mode::serial_in_order, read) &
                               tbb::make_filter<LineReader::Line, Answered>(tbb::filter_mode::parallel, work) &
                               tbb::make_filter<Answered, void>(tbb::filter_mode::serial_in_order, write));
  }
  if (descriptor != STDIN_FILENO) close(descriptor);
  if (!reader.mistake().empty()) write_message(reader.mistake());
  if (stop.stop_requested()) write_message(fmt::format("interrupted after {} answers", answered.load()));
  if (!writable || !reader.mistake().empty()) return std::max(status, status_mistake);
  return setting->rules.status(stop.stop_requested() ? std::max(status, status_other) : status);
}

}  // namespace

Run declare_batch(CLI::App& app) {
  auto arguments = std::make_shared<BatchArguments>();
  app.add_option("FILE", arguments->file, "The problems, one JSON object a line; - reads standard input")
      ->required()
      ->type_name("");
  declare(app, arguments->problem);
  app.add_option("--threads", arguments->threads, "How many problems at a time; the default is one for each core")
      ->type_name("N")
      ->check(CLI::Range(1U, 256U));
  app.add_flag("--json", arguments->json, "Accepted for uniformity: answers are always JSON");
  return [arguments](Session& session) { return run_batch(*arguments, session); };
}

}  // namespace frontend
