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
};

struct Course {
  std::string id;     // "school-with-circles"
  std::string title;  // "school geometry with circles"
  std::string says;   // who is taught this
  std::vector<std::string> sources;
  std::vector<CourseEntry> entries;  // in the order in which they are taught; a rule stands here at most once

  std::optional<std::size_t> place_of(RuleId rule) const;  // its index in `entries`
};

const Course* find_course(const Catalogue& catalogue, std::string_view id);
// The course in which every rule of the catalogue has its place. Only a catalogue that was loaded without the
// courses compiled into the program lacks it.
const Course& default_course(const Catalogue& catalogue);

}  // namespace prover
