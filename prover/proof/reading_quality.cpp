#include "prover/proof/reading_quality.hpp"

#include <algorithm>
#include <string>

namespace prover {

std::set<UnknownId> angles_of(const std::vector<Form>& forms, const UnknownTable& unknowns) {
  std::set<UnknownId> angles;
  for (const Form& form : forms)
    for (const auto& [u, c] : form.terms)
      if (unknowns[u].kind == UnknownKind::angle) angles.insert(u);
  return angles;
}

ReadingQuality reading_quality(const std::vector<const Instance*>& members, const std::set<UnknownId>& in_question,
                               const UnknownTable& unknowns, const Catalogue& catalogue) {
  ReadingQuality quality;
  const Course& course = default_course(catalogue);
  std::set<std::string> families;
  std::set<RuleId> rules;
  std::set<UnknownId> strange;
  std::vector<std::vector<int>> fixed;
  for (const Instance* member : members) {
    const Rule& rule = catalogue[member->rule];
    if (rule.kind == RuleKind::hypothesis) continue;  // the same givens stand in the question, whoever uses them
    quality.constructions += rule.kind == RuleKind::construction;
    if (!rule.free_step && rule.kind != RuleKind::construction) {
      families.insert(rule.family.empty() ? rule.id : rule.family);
      rules.insert(member->rule);
    }
    for (const UnknownId u : angles_of(member->conclusions, unknowns))
      if (!in_question.contains(u)) strange.insert(u);
    std::vector<int> one{static_cast<int>(member->rule.index())};
    for (const PointId p : member->places) one.push_back(p.valid() ? static_cast<int>(p.index()) : -1);
    fixed.push_back(std::move(one));
  }
  quality.theorems = static_cast<int>(families.size());
  for (const RuleId rule : rules) {
    const int place = static_cast<int>(course.place_of(rule).value_or(course.entries.size()));
    quality.latest = std::max(quality.latest, place);
    quality.taught += place;
  }
  quality.strange_angles = static_cast<int>(strange.size());
  std::sort(fixed.begin(), fixed.end());
  for (const auto& one : fixed) quality.fixed.insert(quality.fixed.end(), one.begin(), one.end());
  return quality;
}

}  // namespace prover
