#include "frontend/command/mark_class.hpp"

#include <fmt/format.h>
#include <tbb/global_control.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <atomic>
#include <cstdio>
#include <filesystem>
#include <thread>

#include "frontend/command/answering.hpp"
#include "frontend/command/batch_tasks.hpp"
#include "frontend/command/choices.hpp"
#include "frontend/command/input.hpp"
#include "frontend/command/mark_json.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/progress.hpp"
#include "frontend/command/status.hpp"
#include "prover/marking/marks_tally.hpp"

namespace frontend {

namespace {

struct Pupil {
  std::string name;     // of the file, without its ending
  std::string mistake;  // the file could not be read
  Marked marked;
};

// The files of the folder itself, in the order in which people count; hidden ones, the backups of editors and problems are no
// pupil's work.
std::vector<std::string> work_files(const ClassWork& work, std::string& mistake) {
  namespace fs = std::filesystem;
  std::vector<std::string> names;
  std::error_code error;
  if (!fs::is_directory(work.folder, error)) {
    mistake = fmt::format("there is no folder {}", work.folder);
    return names;
  }
  for (fs::directory_iterator at(work.folder, error), end; !error && at != end; at.increment(error)) {
    const std::string name = at->path().filename().string();
    std::error_code ignored;
    if (at->is_regular_file(ignored) && name.front() != '.' && name.back() != '~' && !name.ends_with(".aw")) names.push_back(name);
  }
  if (error) mistake = fmt::format("{} cannot be read: {}", work.folder, error.message());
  if (mistake.empty() && names.empty())
    mistake = fmt::format("there is no work in {}: it holds a file for each pupil, a line of work a line, for example pupil-1.txt", work.folder);
  sort_as_people_count(names);
  return names;
}

struct ClassPage {
  const ClassWork& work;
  const std::vector<Pupil>& pupils;
  const Marked& own;
  const prover::Tally& tally;

  static std::string of(int n, std::size_t all) { return fmt::format("{} of {}", n, all); }
  std::size_t read() const {
    return static_cast<std::size_t>(std::count_if(pupils.begin(), pupils.end(), [](const Pupil& p) { return p.mistake.empty(); }));
  }

  Document page() const {
    Document document;
    const auto add = [&](Block block) { document.blocks.push_back(std::move(block)); };
    const std::size_t all = read();
    int complete = 0;
    for (const Pupil& pupil : pupils) complete += pupil.marked.judgement.complete && pupil.mistake.empty();
    add(Paragraph{fmt::format("{} {}; {} what is asked. Scheme \"{}\".", all, all == 1 ? "piece of work" : "pieces of work",
                              complete == 1 ? "1 reaches" : fmt::format("{} reach", complete), own.scheme.policy.id)});
    if (own.judgement.problem.verdict != prover::Verdict::proved) add(Paragraph{"The problem itself: " + own.judgement.problem.summary});
    if (!tally.steps.empty()) {
      add(Heading{2, "Step by step"});
      Table table{{"Step", "Reached", "Reason given", "Reason"}, {}, true};
      for (const prover::TallyStep& step : tally.steps)
        table.rows.push_back({step.statement + (step.of_all ? "" : " (another way)"), of(step.reached, all),
                              step.needs_reason ? of(step.reasoned, all) : "–", step.reason});
      add(std::move(table));
    }
    if (!tally.ideas.empty()) {
      add(Heading{2, "Wrong ideas"});
      Table table{{"Idea", "Pupils", "Whose work"}, {}, true};
      for (const prover::TallyIdea& idea : tally.ideas) {
        std::string names;
        for (const std::string& name : idea.pupils) names += (names.empty() ? "" : ", ") + name;
        table.rows.push_back({idea.name, std::to_string(idea.pupils.size()), names});
      }
      add(std::move(table));
    }
    add(Heading{2, "Marks"});
    Table table{{"Work", "Marks", "Complete", "Remark"}, {}, true};
    for (const Pupil& pupil : pupils) {
      const prover::Marks& marks = pupil.marked.marks;
      if (pupil.mistake.empty())
        table.rows.push_back({pupil.name, fmt::format("{} of {}", marks.awarded, marks.possible),
                              pupil.marked.judgement.complete ? "yes" : "no", pupil.marked.judgement.first_break});
      else
        table.rows.push_back({pupil.name, "–", "–", pupil.mistake});
    }
    add(std::move(table));
    add(Note{prover::suggestion_note});
    return document;
  }

  Json json() const {
    Json json;
    json["verdict"] = prover::name_of(own.judgement.problem.verdict);
    json["scheme"] = {{"id", own.scheme.policy.id}, {"title", own.scheme.policy.title}, {"total", own.scheme.total}};
    json["pupils"] = Json::array();
    for (const Pupil& pupil : pupils) {
      Json one;
      one["name"] = pupil.name;
      if (!pupil.mistake.empty()) {
        one["mistake"] = pupil.mistake;
      } else {
        one["awarded"] = pupil.marked.marks.awarded;
        one["possible"] = pupil.marked.marks.possible;
        one["complete"] = pupil.marked.judgement.complete;
        one["first_break"] = pupil.marked.judgement.first_break;
      }
      json["pupils"].push_back(std::move(one));
    }
    json["steps"] = Json::array();
    for (const prover::TallyStep& step : tally.steps) {
      Json one;
      one["statement"] = step.statement;
      one["reason"] = step.reason;
      one["needs_reason"] = step.needs_reason;
      one["reached"] = step.reached;
      one["reasoned"] = step.reasoned;
      one["another_way"] = !step.of_all;
      json["steps"].push_back(std::move(one));
    }
    json["wrong_ideas"] = Json::array();
    for (const prover::TallyIdea& idea : tally.ideas)
      json["wrong_ideas"].push_back({{"mistake", idea.mistake}, {"name", idea.name}, {"pupils", idea.pupils}});
    json["diagnostics"] = Json::array();
    for (const prover::Diagnostic& diagnostic : own.judgement.problem.diagnostics)
      json["diagnostics"].push_back(diagnostic_json(diagnostic, work.problem));
    json["note"] = prover::suggestion_note;
    return json;
  }
};

}  // namespace

Input read_work_file(const std::string& path, std::stop_token stop) {
  std::error_code ignored;
  if (path != "-" && std::filesystem::is_regular_file(path, ignored) && std::filesystem::file_size(path, ignored) == 0) return {"", ""};
  return read_text(path, std::move(stop));
}

int mark_class(const ClassWork& work, const Setting& setting, const prover::SchemePolicy& policy, Session& session) {
  const std::stop_token stop = session.interrupt.token();
  std::string mistake;
  const std::vector<std::string> files = work_files(work, mistake);
  if (!mistake.empty()) {
    write_message(mistake);
    return status_mistake;
  }
  // The problem's own way, whatever stands behind work: in it.
  const Marked own = mark_work(work.problem, "", setting, policy, stop);
  show_problem_mistakes(own.judgement.problem, work.problem_file, work.problem);
  int status = status_of(own.judgement.problem);
  if (status == status_mistake) return status;

  std::vector<Pupil> pupils(files.size());
  const unsigned threads = work.threads > 0 ? work.threads : std::max(1U, std::thread::hardware_concurrency());
  const tbb::global_control control(tbb::global_control::max_allowed_parallelism, threads);
  std::atomic<std::size_t> done = 0;
  {
    const Progress progress(session.quiet, [&](int seconds) {
      return fmt::format("{} of {} marked, {} s (Ctrl-C ends the work)", done.load(), files.size(), seconds);
    });
    tbb::parallel_for(std::size_t{0}, files.size(), [&](std::size_t i) {
      Pupil& pupil = pupils[i];
      pupil.name = std::filesystem::path(files[i]).replace_extension().string();
      const Input input = read_work_file((std::filesystem::path(work.folder) / files[i]).string(), stop);
      if (input.text)
        pupil.marked = mark_work(work.problem, *input.text, setting, policy, stop);
      else
        pupil.mistake = input.mistake;
      ++done;
    });
  }
  if (stop.stop_requested()) {
    write_message("interrupted: the tally would not be that of the class");
    return status_other;
  }
  std::vector<prover::PupilsWork> works;
  for (const Pupil& pupil : pupils) {
    if (pupil.mistake.empty()) works.push_back({pupil.name, &pupil.marked.judgement, &pupil.marked.scheme});
    else status = status_mistake;
  }
  const prover::Tally tally = prover::tally_of(works, {"", &own.judgement, &own.scheme});
  const ClassPage page{work, pupils, own, tally};
  const std::string text = work.json ? json_page(page.json()) : renderer_named(work.format)->render(page.page(), Layout::two_column);
  return write_answer(text) ? setting.rules.status(status) : status_mistake;
}

}  // namespace frontend
