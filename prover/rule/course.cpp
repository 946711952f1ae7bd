#include "prover/rule/course.hpp"

#include <algorithm>
#include <cassert>

#include "prover/rule/rule.hpp"

namespace prover {

std::optional<std::size_t> Course::place_of(RuleId rule) const {
  const auto at = std::find_if(entries.begin(), entries.end(), [&](const CourseEntry& e) { return e.rule == rule; });
  if (at == entries.end()) return std::nullopt;
  return static_cast<std::size_t>(at - entries.begin());
}

std::optional<ChapterNeeded> chapter_needed(const Course& course, const std::vector<RuleId>& cited) {
  std::optional<ChapterNeeded> last;
  for (const RuleId rule : cited)
    if (const auto place = course.place_of(rule); place && (!last || last->place < *place))
      last = ChapterNeeded{rule, *place, course.entries[*place].chapter};
  return last;
}

const Course* find_course(const Catalogue& catalogue, std::string_view id) {
  const auto at = std::find_if(catalogue.courses.begin(), catalogue.courses.end(),
                               [&](const Course& course) { return course.id == id; });
  return at == catalogue.courses.end() ? nullptr : &*at;
}

const Course& default_course(const Catalogue& catalogue) {
  const Course* course = find_course(catalogue, "school-with-circles");
  assert(course && "the courses compiled into the program were not loaded");
  return *course;
}

}  // namespace prover
