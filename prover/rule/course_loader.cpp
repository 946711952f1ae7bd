#include "prover/rule/course_loader.hpp"

#include <algorithm>

#include "prover/rule/course_parser.hpp"

namespace prover {
namespace {

// A course may name others, so those that are named are loaded first. A refused course counts as broken for those that
// name it.
class CourseLoader {
 public:
  CourseLoader(const std::vector<RuleFile>& files, std::set<std::string> broken, LoadedCatalogue& loaded)
      : broken_(std::move(broken)), loaded_(loaded), names_(loaded.catalogue) {
    for (const RuleFile& file : files)
      if (holds_course(file)) candidates_.push_back({&file, parse_course(file)});
    refuse_second_names();
  }
  void run() {
    for (Candidate& c : candidates_) load(c);
    // In the order of the files, whoever names whom.
    const auto place = [&](const Course& course) {
      return std::find_if(candidates_.begin(), candidates_.end(),
                          [&](const Candidate& c) { return c.id == course.id && c.state == State::loaded; });
    };
    std::sort(loaded_.catalogue.courses.begin(), loaded_.catalogue.courses.end(),
              [&](const Course& a, const Course& b) { return place(a) < place(b); });
  }

 private:
  enum class State { waiting, open, loaded, refused };
  struct Candidate {
    const RuleFile* file = nullptr;
    ParsedCourse parsed;
    State state = State::waiting;
    std::string id = parsed.course.id;
  };

  void refuse_second_names() {
    for (std::size_t i = 0; i < candidates_.size(); ++i)
      for (std::size_t j = 0; j < i; ++j) {
        if (candidates_[i].id.empty() || candidates_[i].id != candidates_[j].id) continue;
        candidates_[i].parsed.diagnostics.push_back(
            {Severity::error, candidates_[i].parsed.id_span,
             "there is a course `" + candidates_[i].id + "` already, in " + candidates_[j].file->name,
             "give this course another name"});
        break;
      }
  }

  void load(Candidate& candidate) {
    if (candidate.state != State::waiting) return;
    candidate.state = State::open;
    for (const NamedEntry& entry : candidate.parsed.entries)
      for (Candidate& other : candidates_) {
        if (other.id != entry.id || names_.ids.contains(entry.id)) continue;
        if (other.state == State::open)
          candidate.parsed.diagnostics.push_back({Severity::error, entry.span,
                                                  "the course `" + entry.id + "` rests on this one",
                                                  "name its rules here, or leave this course out of it"});
        load(other);
        if (other.state == State::refused) broken_.insert(other.id);
      }
    if (!has_error(candidate.parsed.diagnostics))
      place_rules(candidate.parsed, loaded_.catalogue, names_, broken_, candidate.file->text);
    const bool is_broken = has_error(candidate.parsed.diagnostics);
    candidate.state = is_broken ? State::refused : State::loaded;
    if (is_broken) broken_.insert(candidate.id);
    if (!candidate.parsed.diagnostics.empty())
      loaded_.mistakes.emplace_back(*candidate.file, std::move(candidate.parsed.diagnostics));
    if (!is_broken) loaded_.catalogue.courses.push_back(std::move(candidate.parsed.course));
  }

  std::set<std::string> broken_;
  LoadedCatalogue& loaded_;
  RuleNames names_;
  std::vector<Candidate> candidates_;
};

}  // namespace

bool holds_course(const RuleFile& file) {
  return file.name.ends_with(".course");
}

void load_courses(const std::vector<RuleFile>& files, std::set<std::string> broken, LoadedCatalogue& loaded) {
  CourseLoader(files, std::move(broken), loaded).run();
}

}  // namespace prover
