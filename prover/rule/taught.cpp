// What a class may cite. Every rule answers to many names (id, title, synonyms, its wording in each register,
// its topic and what people call that topic); they are gathered in one index, so that "not known" can suggest
// the nearest of all. Letter-shape names for parallel angles are deliberately not among them: examiners
// refuse them.
#include <array>
#include <map>
#include <set>

#include "prover/rule/rule.hpp"
#include "prover/rule/wording.hpp"

namespace prover {
namespace {

struct GroupName {
  std::string_view said;
  std::string_view topic;
};
constexpr std::array<GroupName, 33> group_names = {{
    {"angle facts", "point"},
    {"angles at a point", "point"},
    {"basic angle facts", "point"},
    {"parallels", "parallel"},
    {"parallel lines", "parallel"},
    {"angles on parallel lines", "parallel"},
    {"angles and parallel lines", "parallel"},
    {"triangles", "triangle"},
    {"triangle facts", "triangle"},
    {"congruence", "congruence"},
    {"congruent triangles", "congruence"},
    {"similarity", "similarity"},
    {"similar triangles", "similarity"},
    {"quadrilaterals", "quadrilateral"},
    {"quads", "quadrilateral"},
    {"quad", "quadrilateral"},
    {"parallelograms", "quadrilateral"},
    {"special quadrilaterals", "quadrilateral"},
    {"polygons", "polygon"},
    {"loci", "locus"},
    {"locus facts", "locus"},
    {"circles", "chord"},
    {"circles", "inscribed"},
    {"circles", "tangent"},
    {"circles", "secant"},
    {"circle theorems", "chord"},
    {"circle theorems", "inscribed"},
    {"circle theorems", "tangent"},
    {"circle theorems", "secant"},
    {"chords", "chord"},
    {"tangents", "tangent"},
    {"secants", "secant"},
    {"definitions", "general"},
}};

// Names are compared in small letters, with hyphens as blanks and no full stop or article: "The
// Isosceles-Triangle Theorem." is "isosceles triangle theorem".
std::string plain_name(std::string_view name) {
  std::string out;
  for (const char c : name) {
    const bool blank = c == ' ' || c == '-' || c == '\t' || c == '\n' || c == '\r';
    if (blank && (out.empty() || out.back() == ' ')) continue;
    out += blank ? ' ' : (c >= 'A' && c <= 'Z') ? static_cast<char>(c - 'A' + 'a') : c;
  }
  while (!out.empty() && (out.back() == ' ' || out.back() == '.')) out.pop_back();
  for (const std::string_view article : {"the ", "a ", "an "})
    if (out.size() > article.size() && out.compare(0, article.size(), article) == 0)
      return out.substr(article.size());
  return out;
}

class NameIndex {
 public:
  explicit NameIndex(const Catalogue& catalogue) {
    for (std::size_t i = 0; i < catalogue.rules.size(); ++i) {
      const Rule& rule = catalogue.rules[i];
      add(rule.id, i);
      add(rule.family, i);
      add(rule.title, i);
      add(rule.topic, i);
      for (const std::string& synonym : rule.synonyms) add(synonym, i);
      for (const auto& [wording, text] : rule.wording) add(wording_without_places(text), i);
      for (const GroupName& group : group_names)
        if (group.topic == rule.topic) add(group.said, i);
      add("all", i);
      add("everything", i);
    }
  }

  const std::set<std::size_t>* find(std::string_view name) const {
    const auto at = rules_.find(plain_name(name));
    return at == rules_.end() ? nullptr : &at->second;
  }
  std::string nearest(std::string_view name) const {
    const auto near = nearest_word(plain_name(name), names_);
    return near ? *near : std::string();
  }

 private:
  void add(std::string_view said, std::size_t rule) {
    const std::string name = plain_name(said);
    if (name.empty()) return;
    const auto [at, is_new] = rules_.try_emplace(name);
    if (is_new) names_.push_back(name);
    at->second.insert(rule);
  }
  std::map<std::string, std::set<std::size_t>> rules_;
  std::vector<std::string> names_;
};

// A hypothesis, an addition or a meaning can be refused by nobody: without them no proof can be written down.
bool is_always_allowed(const Rule& rule) {
  return rule.meaning || rule.builtin == Builtin::given || rule.builtin == Builtin::angle_addition ||
         rule.builtin == Builtin::segment_addition;
}
// These need not be named, but `not` can take them away.
bool needs_no_name(const Rule& rule) {
  return is_always_allowed(rule) || rule.kind == RuleKind::definition || rule.kind == RuleKind::construction;
}

}  // namespace

TaughtRules taught_rules(const Catalogue& catalogue, const std::vector<Taught>& taught) {
  TaughtRules result;
  std::optional<NameIndex> names;  // gathered when a name is first looked up: most problems name none
  bool names_some = false;
  for (const Taught& line : taught) names_some = names_some || !line.names.empty();

  for (const Rule& rule : catalogue.rules) result.allowed.push_back(!names_some || needs_no_name(rule));
  const auto set_all = [&](const std::vector<std::pair<std::string, Span>>& said, bool value) {
    for (const auto& [name, span] : said) {
      const NameIndex& index = names ? *names : names.emplace(catalogue);
      if (const auto* rules = index.find(name)) {
        for (const std::size_t rule : *rules) result.allowed[rule] = value;
        continue;
      }
      const std::string near = index.nearest(name);
      result.diagnostics.push_back(
          {Severity::error, span, "no rule, topic or reason is called \"" + name + "\"",
           near.empty() ? "`anglewright rules` lists them" : "did you mean \"" + near + "\"?"});
    }
  };
  for (const Taught& line : taught) set_all(line.names, true);
  for (const Taught& line : taught) set_all(line.excluded, false);
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i)
    if (is_always_allowed(catalogue.rules[i])) result.allowed[i] = true;
  return result;
}

}  // namespace prover
