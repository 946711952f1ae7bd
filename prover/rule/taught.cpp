// What a class may cite. The names are looked up one by one; courses bring their rules as far as they are taught.
#include <algorithm>
#include <set>

#include "prover/rule/name_index.hpp"
#include "prover/rule/rule.hpp"

namespace prover {
namespace {

// A hypothesis, an addition or a meaning can be refused by nobody: without them no proof can be written down.
bool is_always_allowed(const Rule& rule) {
  return rule.meaning || rule.builtin == Builtin::given || rule.builtin == Builtin::angle_addition ||
         rule.builtin == Builtin::segment_addition;
}
// These need not be named where single rules and topics are, but `not` can take them away. A course names its own.
bool needs_no_name(const Rule& rule) {
  return is_always_allowed(rule) || rule.kind == RuleKind::definition || rule.kind == RuleKind::construction;
}

// Looks names up, one list after the other, and gathers what they mean and what is wrong with them.
class Lookup {
 public:
  explicit Lookup(const Catalogue& catalogue) : catalogue_(catalogue), index_(catalogue) {}

  // The rules that the list means. A comma or semicolon may stand inside a name ("equal chords; equal ∠s"), so two
  // or three parts that make a name together are read as one.
  std::set<std::size_t> rules_of(const std::vector<TaughtName>& list) {
    std::set<std::size_t> out;
    for (std::size_t i = 0; i < list.size();) {
      std::size_t count = std::min<std::size_t>(3, list.size() - i);
      while (count > 1 && !is_one_name(list, i, count)) --count;
      TaughtName name = list[i + count - 1];
      name.name = joined(list, i, count);
      name.span.begin = list[i].span.begin;
      out.merge(rules_of(name));
      i += count;
    }
    return out;
  }
  bool names_course() const { return names_course_; }
  std::vector<Diagnostic> diagnostics;

 private:
  static std::string joined(const std::vector<TaughtName>& list, std::size_t from, std::size_t count) {
    std::string out = list[from].name;
    for (std::size_t i = from + 1; i < from + count; ++i) out += ", " + list[i].name;
    return out;
  }
  bool is_one_name(const std::vector<TaughtName>& list, std::size_t from, std::size_t count) const {
    for (std::size_t i = from; i + 1 < from + count; ++i)
      if (!list[i].up_to.empty()) return false;
    return index_.find(joined(list, from, count)) != nullptr;
  }

  std::set<std::size_t> rules_of(const TaughtName& said) {
    const Called* called = known(said.name, said.span);
    if (!called) return {};
    std::set<std::size_t> rules = called->rules;
    if (called->course) {
      names_course_ = true;
      rules.merge(part_of(*called->course, said));
    } else if (!said.up_to.empty()) {
      error(said.span, "\"" + said.name + "\" is not a course, so it has no order to stop in",
            "name a course before \"up to\": " + all_courses());
    }
    return rules;
  }

  // The rules of a course, as far as the class has come.
  std::set<std::size_t> part_of(const Course& course, const TaughtName& said) {
    std::size_t end = course.entries.size();
    if (!said.up_to.empty()) {
      const Called* last = known(said.up_to, said.up_to_span);
      if (!last) return {};
      end = 0;
      for (std::size_t i = 0; i < course.entries.size(); ++i)
        if (last->rules.contains(course.entries[i].rule.index())) end = i + 1;
      if (end == 0)
        error(said.up_to_span, "the course " + course.id + " does not teach \"" + said.up_to + "\"",
              "`anglewright rules --course " + course.id + "` lists what it teaches, in order");
    }
    std::set<std::size_t> rules;
    for (std::size_t i = 0; i < end; ++i) rules.insert(course.entries[i].rule.index());
    return rules;
  }

  const Called* known(const std::string& name, Span span) {
    const Called* called = index_.find(name);
    if (called) return called;
    const std::string near = index_.nearest(name);
    error(span, "no rule, course, topic or reason is called \"" + name + "\"",
          near.empty() ? "`anglewright rules` lists them" : "did you mean \"" + near + "\"?");
    return nullptr;
  }
  std::string all_courses() const {
    std::string out;
    for (const Course& course : catalogue_.courses) out += (out.empty() ? "" : ", ") + course.id;
    return out;
  }
  void error(Span span, std::string message, std::string way_out) {
    diagnostics.push_back({Severity::error, span, std::move(message), std::move(way_out)});
  }

  const Catalogue& catalogue_;
  NameIndex index_;
  bool names_course_ = false;
};

}  // namespace

TaughtRules taught_rules(const Catalogue& catalogue, const std::vector<Taught>& taught) {
  TaughtRules result;
  const bool names_any = std::any_of(taught.begin(), taught.end(), [](const Taught& line) {
    return !line.names.empty() || !line.excluded.empty();
  });
  if (!names_any) {  // most problems; the index of names is not even made
    result.allowed.assign(catalogue.rules.size(), true);
    return result;
  }
  const bool names_some =
      std::any_of(taught.begin(), taught.end(), [](const Taught& line) { return !line.names.empty(); });
  Lookup lookup(catalogue);
  std::set<std::size_t> named, excluded;
  for (const Taught& line : taught) named.merge(lookup.rules_of(line.names));
  const bool names_course = lookup.names_course();
  for (const Taught& line : taught) excluded.merge(lookup.rules_of(line.excluded));
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) {
    const Rule& rule = catalogue.rules[i];
    const bool is_named = !names_some || named.contains(i) || (!names_course && needs_no_name(rule));
    result.allowed.push_back(is_always_allowed(rule) || (is_named && !excluded.contains(i)));
  }
  result.diagnostics = std::move(lookup.diagnostics);
  return result;
}

}  // namespace prover
