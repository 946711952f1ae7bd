// One course file, from text to names, and from names to rules. The first needs nothing but the file; the second
// needs the catalogue, so it comes when all rules are known. Every mistake of the file is told at once.
#pragma once
#include <set>
#include <unordered_map>

#include "prover/rule/rule.hpp"

namespace prover {

struct NamedEntry {
  std::string id;
  Span span;
  bool taken = false;
  std::string chapter;
};
struct ParsedCourse {
  Course course;  // without entries
  Span id_span;
  std::vector<NamedEntry> entries;
  std::vector<Diagnostic> diagnostics;
};
ParsedCourse parse_course(const RuleFile& file);

// The rules of a catalogue by name and by family; every run of the program loads all courses, so it is made once.
struct RuleNames {
  explicit RuleNames(const Catalogue& catalogue);
  std::unordered_map<std::string_view, RuleId> ids;
  std::unordered_map<std::string_view, std::vector<RuleId>> families;
};

// Finds the rules that the course names, with the members of each family behind its head and the rules of a course
// that it names in the order of that one. A name in `broken` belongs to a file that has a mistake, which is told
// there; here it is passed over.
void place_rules(ParsedCourse& parsed, const Catalogue& catalogue, const RuleNames& names,
                 const std::set<std::string>& broken, std::string_view text);

}  // namespace prover
