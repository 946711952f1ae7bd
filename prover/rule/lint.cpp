#include "prover/rule/lint.hpp"

#include <algorithm>

#include "prover/language/phrase_points.hpp"
#include "prover/rule/wording.hpp"

namespace prover {
namespace {

struct Uses {
  std::size_t premises = 0, conclusions = 0;
  bool in_shape = false;  // a corner of a named polygon or a point of a circle: needed, used again or not
  Span first;
};

bool names_shape(Predicate predicate) {
  return predicate == Predicate::circle || predicate == Predicate::kite || predicate == Predicate::trapezium || predicate == Predicate::parallelogram ||
         predicate == Predicate::rectangle || predicate == Predicate::rhombus || predicate == Predicate::square ||
         predicate == Predicate::regular_polygon;
}

// A variable of the conclusion must occur in a premise, or the rule would speak about points that it never
// found. One that stands in a single place asks for nothing and is most likely a slip.
void lint_variables(const Rule& rule, std::vector<Diagnostic>& out) {
  std::vector<Uses> uses(rule.variables.points.size());
  const auto count = [&](const std::vector<Phrase>& phrases, std::size_t Uses::*counter) {
    for (const Phrase& phrase : phrases)
      for (const PointId p : points_named(phrase)) {
        Uses& use = uses[p.index()];
        if (use.premises + use.conclusions == 0) use.first = phrase.span;
        ++(use.*counter);
        use.in_shape = use.in_shape || names_shape(phrase.predicate);
      }
  };
  count(rule.given, &Uses::premises);
  count(rule.where, &Uses::premises);
  count(rule.then, &Uses::conclusions);
  for (std::size_t i = 0; i < uses.size(); ++i) {
    const std::string& name = rule.variables.points[i];
    if (uses[i].conclusions > 0 && uses[i].premises == 0)
      out.push_back({Severity::error, uses[i].first, name + " stands in the conclusion but in no premise",
                     "say in `given` or `where` which point " + name + " is"});
    else if (uses[i].premises + uses[i].conclusions == 1 && !uses[i].in_shape)
      out.push_back({Severity::error, uses[i].first, name + " is used only once",
                     "use " + name + " in another phrase, or leave it out"});
  }
}

// Such a rule is matched by triangles alone (chain/inequalities.hpp): it has triangles and relations among its givens, and
// concludes inequalities and nothing else.
bool by_inequalities(const Rule& rule) {
  const auto compares = [](const Phrase& phrase) {
    const auto& comparisons = phrase.relation.comparisons;
    return !comparisons.empty() && std::none_of(comparisons.begin(), comparisons.end(), [](Comparison c) { return c == Comparison::equal; });
  };
  return std::all_of(rule.then.begin(), rule.then.end(), compares) &&
         std::all_of(rule.given.begin(), rule.given.end(), [](const Phrase& phrase) {
           return phrase.predicate == Predicate::triangle || phrase.predicate == Predicate::relation;
         }) &&
         std::any_of(rule.given.begin(), rule.given.end(), [](const Phrase& phrase) { return phrase.predicate == Predicate::triangle; });
}

// A phrase stands where it is tested in full. Anything else would be a condition that nobody checks, and the
// rule would conclude too much.
void lint_parts(const Rule& rule, std::vector<Diagnostic>& out) {
  const auto refuse = [&](const Phrase& phrase, std::string message, std::string way_out) {
    out.push_back({Severity::error, phrase.span, std::move(message), std::move(way_out)});
  };
  for (const Phrase& phrase : rule.given) {
    const RulePart part = part_of(phrase.predicate);
    if (part.given) continue;
    if (part.where)
      refuse(phrase, "a position stands in `where`", "move this phrase to `where`");
    else
      refuse(phrase, "a rule cannot ask for this", "say it by equations, sides and order on a line");
  }
  for (const Phrase& phrase : rule.where) {
    const RulePart part = part_of(phrase.predicate);
    if (part.where) continue;
    if (part.given)
      refuse(phrase, "`where` holds positions only (order, sides, inside, convex)",
             "move this phrase to `given`");
    else
      refuse(phrase, "a rule cannot ask for this", "say it by sides and order on a line");
  }
  for (const Phrase& phrase : rule.then)
    if (!part_of(phrase.predicate).then)
      refuse(phrase, "a rule cannot conclude this",
             "conclude an equation or a fact, for a straight line `collinear: A, B, C`");
  if (by_inequalities(rule)) return;
  for (const auto* phrases : {&rule.given, &rule.then})
    for (const Phrase& phrase : *phrases)
      for (const Comparison comparison : phrase.relation.comparisons)
        if (comparison != Comparison::equal)
          refuse(phrase, "a rule speaks by equations, not by \"greater\" and \"less\"",
                 "say by sides or order what is meant");
}

void lint_pattern(const Rule& rule, const RulePlaces& places, std::vector<Diagnostic>& out) {
  const auto missing = [&](std::string message, std::string way_out) {
    out.push_back({Severity::error, places.header, std::move(message), std::move(way_out)});
  };
  const bool has_pattern = !rule.given.empty() || !rule.where.empty() || !rule.then.empty();
  if (rule.builtin || rule.meaning) {
    if (has_pattern)
      missing(rule.builtin ? "a builtin has no `given`, `where` or `then`"
                           : "a meaning has no `given`, `where` or `then`",
              "leave them out; only its wording is read");
    if (rule.builtin && rule.meaning)
      missing("a rule is either a builtin or a meaning", "leave one of them out");
    return;
  }
  if (rule.then.empty()) missing("this rule concludes nothing", "add a line `then …`");
  if (rule.given.empty() && rule.where.empty()) missing("this rule has no premise", "add a line `given …`");
  lint_parts(rule, out);
  lint_variables(rule, out);
}

void lint_examples(const Rule& rule, const RulePlaces& places, std::vector<Diagnostic>& out) {
  if (rule.builtin == Builtin::join) return;  // it concludes nothing that an example could show
  bool fires = false, silent = false;
  for (const RuleExample& example : rule.examples) (example.fires ? fires : silent) = true;
  if (!fires)
    out.push_back({Severity::error, places.header, "no example in which the rule fires",
                   "add `example fires … gives …` with letters of a figure"});
  if (!silent)
    out.push_back({Severity::error, places.header, "no example in which the rule stays silent",
                   "add `example silent … gives …` where a condition is missing"});
}

}  // namespace

std::vector<Diagnostic> lint(const Rule& rule, const RulePlaces& places) {
  std::vector<Diagnostic> out;
  lint_pattern(rule, places, out);
  if (!rule.wording.contains(Register::plain))
    out.push_back({Severity::error, places.header, "no plain wording", "add `plain \"…\"`"});
  for (const auto& [wording, offset] : places.wording) {
    if (const auto found = rule.wording.find(wording); found != rule.wording.end())
      wording_pieces(found->second, rule.variables, &out, offset);
  }
  for (const HintField& hint : places.hints) lint_hint(rule, hint, out);
  for (const auto& [wording, from_memory] : rule.recalled)
    if (from_memory && !rule.wording.contains(wording))
      out.push_back({Severity::error, places.header,
                     "`recalled` names " + std::string(name_of(wording)) + ", which has no wording here",
                     "add the wording, or leave the name out of `recalled`"});
  for (const auto& [wording, unworded] : rule.unworded)
    if (unworded && (rule.wording.contains(wording) || rule.family.empty()))
      out.push_back({Severity::error, places.header,
                     "`unworded` names " + std::string(name_of(wording)) +
                         (rule.family.empty() ? ", but this rule has no family" : ", which has a wording here"),
                     "leave the name out of `unworded`"});
  lint_examples(rule, places, out);
  return out;
}

RulePart part_of(Predicate predicate) {
  switch (predicate) {
    case Predicate::triangle:
      return {.given = true, .where = true};
    case Predicate::line_order:
    case Predicate::on_segment:
    case Predicate::cross:
    case Predicate::convex:
    case Predicate::inside_polygon:
    case Predicate::inside_angle:
    case Predicate::same_side:
    case Predicate::opposite_sides:
      return {.where = true};
    case Predicate::relation:
    case Predicate::parallel:
    case Predicate::perpendicular:
    case Predicate::collinear:
    case Predicate::midpoint:
    case Predicate::equilateral:
    case Predicate::isosceles_at:
    case Predicate::right_angled:
    case Predicate::bisects:
    case Predicate::circle:
    case Predicate::concyclic:
    case Predicate::diameter:
    case Predicate::tangent:
    case Predicate::tangent_circumcircle:
    case Predicate::regular_polygon:
    case Predicate::parallelogram:
    case Predicate::rectangle:
    case Predicate::rhombus:
    case Predicate::square:
    case Predicate::kite:
    case Predicate::trapezium:
    case Predicate::congruent:
    case Predicate::similar:
      return {.given = true, .then = true};
    case Predicate::circle_cyclic:
    case Predicate::concyclic_cyclic:
      return {.given = true};
    case Predicate::acute:
    case Predicate::on_ray:
    case Predicate::on_line:
    case Predicate::meet:
    case Predicate::foot:
    case Predicate::perpendicular_bisector:
    case Predicate::isosceles:
    case Predicate::simple_polygon:
    case Predicate::outside_polygon:
    case Predicate::inside_circle:
    case Predicate::outside_circle:
      return {};
  }
  return {};
}

}  // namespace prover
