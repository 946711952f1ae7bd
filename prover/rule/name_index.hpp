// What people call a rule: its id, title, synonyms, its wording in each register, its topic and what people call that
// topic; and what they call a course. All names stand in one index, so that "not known" can suggest the nearest of
// all. Letter-shape names for parallel angles are deliberately not among them: examiners refuse them.
#pragma once
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "prover/rule/rule.hpp"

namespace prover {

struct Called {
  const Course* course = nullptr;
  std::set<std::size_t> rules;
};

class NameIndex {
 public:
  explicit NameIndex(const Catalogue& catalogue);
  const Called* find(std::string_view name) const;  // null when nothing is called so
  std::string nearest(std::string_view name) const;

 private:
  Called* called_by(std::string_view said);
  void add(std::string_view said, std::size_t rule);

  std::map<std::string, Called> called_;
  std::vector<std::string> names_;
};

}  // namespace prover
