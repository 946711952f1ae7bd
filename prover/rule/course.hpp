// A course: what a class has been taught, in order. A class of South Africa's grade 11 takes "the tangent is
// perpendicular to the radius" on trust, Euclid proves it; so whether a fact is a postulate or a theorem is said
// by the course and not by the rule. Courses are files, `rules/courses/<id>.course`; rules/README.md has their
// grammar.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "prover/base/ids.hpp"

namespace prover {

struct Catalogue;

struct CourseEntry {
  RuleId rule;
  bool taken = false;  // without proof: a postulate or definition of this course
  std::string chapter; // under which it stands; empty where the course has no chapters
};

struct Course {
  std::string id;     // "school-with-circles"
  std::string title;  // "school geometry with circles"
  std::string says;   // who is taught this
  std::vector<std::string> sources;
  std::vector<CourseEntry> entries;  // in the order in which they are taught; a rule stands here at most once

  std::optional<std::size_t> place_of(RuleId rule) const;  // its index in `entries`
};

// The chapter that a proof needs: that of the rule cited which the course reaches last. Nothing when none of the rules
// stands in the course.
struct ChapterNeeded {
  RuleId rule;
  std::size_t place = 0;
  std::string chapter;  // empty where the course has no chapters
};
std::optional<ChapterNeeded> chapter_needed(const Course& course, const std::vector<RuleId>& cited);

const Course* find_course(const Catalogue& catalogue, std::string_view id);
// The course in which every rule of the catalogue has its place. Only a catalogue that was loaded without the
// courses compiled into the program lacks it.
const Course& default_course(const Catalogue& catalogue);

}  // namespace prover
