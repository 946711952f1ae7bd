// From rule files to the catalogue: one order for all, one rule a name, a broken file never takes the others
// along.
#include <tbb/parallel_for.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <cassert>
#include <map>
#include <set>

#include "prover/rule/course_loader.hpp"
#include "prover/rule/hint_fields.hpp"
#include "prover/rule/rule.hpp"
#include "prover/rule/rule_parser.hpp"

namespace prover {
namespace {

// Topics in the order in which a course meets them; what is not named here comes after, by name.
constexpr std::array<std::string_view, 13> topic_order = {
    "general", "point", "parallel", "triangle",  "congruence", "similarity", "quadrilateral",
    "polygon", "locus", "chord",    "inscribed", "tangent",    "secant"};

std::size_t rank_of(std::string_view topic) {
  return static_cast<std::size_t>(std::find(topic_order.begin(), topic_order.end(), topic) -
                                  topic_order.begin());
}

struct Candidate {
  const RuleFile* file = nullptr;
  ParsedRule parsed;
};

// Files given later (a teacher's own) do not replace a rule: the first file of a name keeps it.
void refuse_second_names(std::vector<Candidate>& candidates) {
  std::map<std::string, const RuleFile*> first;
  for (Candidate& c : candidates) {
    const std::string& id = c.parsed.rule.id;
    if (id.empty()) continue;
    const auto [it, is_new] = first.emplace(id, c.file);
    if (!is_new)
      c.parsed.diagnostics.push_back({Severity::error, c.parsed.id_span,
                                      "there is a rule `" + id + "` already, in " + it->second->name,
                                      "give this rule another name"});
  }
}

}  // namespace

std::optional<RuleId> Catalogue::find(std::string_view id) const {
  const auto at = std::find_if(rules.begin(), rules.end(), [&](const Rule& rule) { return rule.id == id; });
  if (at == rules.end()) return std::nullopt;
  return RuleId(at - rules.begin());
}

std::vector<std::string> Catalogue::ids() const {
  std::vector<std::string> out;
  out.reserve(rules.size());
  for (const Rule& rule : rules) out.push_back(rule.id);
  return out;
}

LoadedCatalogue load_catalogue(const std::vector<RuleFile>& files, Examples examples) {
  std::vector<const RuleFile*> rule_files;
  for (const RuleFile& file : files)
    if (!holds_course(file) && !holds_hints(file)) rule_files.push_back(&file);
  // Each file on its own, on all cores: every run of the program waits for this.
  std::vector<Candidate> candidates(rule_files.size());
  tbb::parallel_for(std::size_t{0}, rule_files.size(), [&](std::size_t i) {
    candidates[i] = {rule_files[i], parse_rule(*rule_files[i], examples)};
  });
  refuse_second_names(candidates);

  LoadedCatalogue loaded;
  for (Candidate& c : candidates)
    if (!c.parsed.diagnostics.empty()) loaded.mistakes.emplace_back(*c.file, c.parsed.diagnostics);
  std::set<std::string> broken;
  for (const Candidate& c : candidates)
    if (has_error(c.parsed.diagnostics)) broken.insert(c.parsed.rule.id);
  std::erase_if(candidates, [](const Candidate& c) { return has_error(c.parsed.diagnostics); });
  std::stable_sort(candidates.begin(), candidates.end(), [](const Candidate& a, const Candidate& b) {
    const std::string &ta = a.parsed.rule.topic, &tb = b.parsed.rule.topic;
    const std::size_t ra = rank_of(ta), rb = rank_of(tb);
    if (ra != rb) return ra < rb;
    if (ta != tb) return ta < tb;
    return a.file->name < b.file->name;
  });
  for (Candidate& c : candidates) loaded.catalogue.rules.push_back(std::move(c.parsed.rule));
  for (const RuleFile& file : files) {
    if (!holds_hints(file)) continue;
    std::vector<Diagnostic> found;
    load_hints(file, loaded.catalogue.rules, found);
    if (!found.empty()) loaded.mistakes.emplace_back(file, std::move(found));
  }
  load_courses(files, std::move(broken), loaded);
  static std::atomic<std::uint64_t> loads{0};
  loaded.catalogue.serial = ++loads;
  return loaded;
}

const Catalogue& standard_catalogue() {
  static const Catalogue catalogue = [] {
    LoadedCatalogue loaded = load_catalogue(builtin_rule_files(), Examples::kept);
    assert(loaded.mistakes.empty() &&
           "the rules compiled into the program must load; tests/rules says what is wrong");
    return std::move(loaded.catalogue);
  }();
  return catalogue;
}

}  // namespace prover
