// Exchanges of a rule's variables that leave it as it is: the angle sum of triangle ABC is that of BCA. Places that
// differ by one of them are the same instance, so only the first of them is tried. Phrases are compared as sets of
// predicate, points and terms in a canonical order; a phrase that is symmetric in its own points (a triangle, a
// segment, an angle's arms) is sorted before it is compared.
#include <algorithm>
#include <numeric>
#include <optional>
#include <string>

#include "prover/chain/match_plan.hpp"
#include "prover/statement/canonical_fact.hpp"

namespace prover {

namespace {

using Permutation = std::vector<int>;

std::string letter(PointId p, const Permutation& to) { return std::to_string(to[p.index()]) + "."; }

std::string quantity_text(const Quantity& quantity, const Permutation& to) {
  if (const auto* a = std::get_if<Angle>(&quantity)) {
    std::string p = letter(a->arm1, to), q = letter(a->arm2, to);
    if (q < p) std::swap(p, q);
    return "a" + letter(a->vertex, to) + p + q + (a->reflex ? "r" : "") + (a->exterior ? "x" : "");
  }
  if (const auto* s = std::get_if<Segment>(&quantity)) {
    std::string p = letter(s->a, to), q = letter(s->b, to);
    if (q < p) std::swap(p, q);
    return "s" + p + q;
  }
  if (const auto* n = std::get_if<Number>(&quantity)) return "n" + n->name;
  return "1";
}

std::string sum_text(const Expression& expression, const Permutation& to) {
  std::vector<std::string> terms;
  for (const Term& term : expression.terms)
    terms.push_back(term.coefficient.to_string() + "*" + quantity_text(term.quantity, to));
  std::sort(terms.begin(), terms.end());
  std::string text;
  for (const std::string& t : terms) text += t + "+";
  return text;
}

// `readings`: facts whichever way round they are said, polygons from any corner. Symmetries do without: places that
// differ by them are the same instance to the chain anyway, and the letters in which a reason is told stay as they are.
enum class Facts { as_written, in_every_reading };

std::string phrase_text(const Phrase& phrase, const Permutation& to, Facts facts = Facts::as_written) {
  std::string text = std::to_string(static_cast<int>(phrase.predicate)) + ":";
  if (phrase.predicate == Predicate::relation) {
    // A chain of equalities is a set; with "<" the order stays.
    std::vector<std::string> sides;
    for (const Expression& e : phrase.relation.expressions) sides.push_back(sum_text(e, to));
    const bool equal = std::all_of(phrase.relation.comparisons.begin(), phrase.relation.comparisons.end(),
                                   [](Comparison c) { return c == Comparison::equal; });
    if (equal) std::sort(sides.begin(), sides.end());
    for (const std::string& s : sides) text += s + "=";
    return text;
  }
  std::vector<std::string> p;
  for (PointId q : phrase.points) p.push_back(letter(q, to));
  auto sort_pair = [&](std::size_t i, std::size_t j) {
    if (p[j] < p[i]) std::swap(p[i], p[j]);
  };
  if (phrase.predicate == Predicate::triangle) std::sort(p.begin(), p.end());
  if (phrase.predicate == Predicate::line_order && p.back() < p.front()) std::reverse(p.begin(), p.end());
  if (phrase.predicate == Predicate::same_side || phrase.predicate == Predicate::opposite_sides) {
    sort_pair(0, 1);
    sort_pair(2, 3);
  }
  if (phrase.predicate == Predicate::parallel || phrase.predicate == Predicate::perpendicular) {
    sort_pair(0, 1);
    sort_pair(2, 3);
    if (p[2] + p[3] < p[0] + p[1]) {
      std::swap(p[0], p[2]);
      std::swap(p[1], p[3]);
    }
  }
  if (phrase.predicate == Predicate::midpoint || phrase.predicate == Predicate::on_segment) sort_pair(1, 2);
  if (phrase.predicate == Predicate::isosceles_at) sort_pair(1, 2);
  if (phrase.predicate == Predicate::circle) std::sort(p.begin() + 1, p.end());
  if (phrase.predicate == Predicate::concyclic) std::sort(p.begin(), p.end());
  if (phrase.predicate == Predicate::tangent_circumcircle) std::sort(p.begin() + 2, p.end());
  if (phrase.predicate == Predicate::bisects || phrase.predicate == Predicate::inside_angle) sort_pair(1, 3);
  std::optional<FactKind> kind = fact_kind_of(phrase);
  if (phrase.predicate == Predicate::convex) kind = FactKind::regular_polygon;  // read from any corner as well
  if (facts == Facts::in_every_reading && kind && *kind != FactKind::parallel && *kind != FactKind::perpendicular) {
    std::string least;
    for (const std::vector<PointId>& reading : readings(*kind, phrase.points)) {
      std::string said;
      for (const PointId q : reading) said += letter(q, to);
      if (least.empty() || said < least) least = said;
    }
    return text + least;
  }
  for (const std::string& q : p) text += q;
  return text;
}

std::vector<std::string> rule_text(const Rule& rule, const Permutation& to, Facts facts = Facts::as_written) {
  std::vector<std::string> text;
  for (const Phrase& p : rule.given) text.push_back("g" + phrase_text(p, to, facts));
  for (const Phrase& p : rule.where) text.push_back("w" + phrase_text(p, to, facts));
  for (const Phrase& p : rule.then) text.push_back("t" + phrase_text(p, to, facts));
  std::sort(text.begin(), text.end());
  return text;
}

}  // namespace

namespace {

// How a variable is used, whatever the others are called: only variables used alike can be exchanged.
std::vector<std::string> uses_of(const Rule& rule, std::size_t variable, Facts facts = Facts::as_written) {
  Permutation marked(rule.variables.points.size(), 0);
  marked[variable] = 1;
  return rule_text(rule, marked, facts);
}

// Looks for letters of `a` for the letters of `b`.
class Renaming {
 public:
  Renaming(const Rule& a, const Rule& b) : b_(b), to_(b.variables.points.size()), taken_(to_.size(), false) {
    Permutation as_it_is(to_.size());
    std::iota(as_it_is.begin(), as_it_is.end(), 0);
    wanted_ = rule_text(a, as_it_is, Facts::in_every_reading);
    for (std::size_t v = 0; v < to_.size(); ++v) {
      uses_a_.push_back(uses_of(a, v, Facts::in_every_reading));
      uses_b_.push_back(uses_of(b, v, Facts::in_every_reading));
    }
  }
  bool exists(std::size_t v = 0) {
    if (v == to_.size()) return rule_text(b_, to_, Facts::in_every_reading) == wanted_;
    for (std::size_t image = 0; image < to_.size(); ++image) {
      if (taken_[image] || uses_b_[v] != uses_a_[image]) continue;
      taken_[image] = true;
      to_[v] = static_cast<int>(image);
      if (exists(v + 1)) return true;
      taken_[image] = false;
    }
    return false;
  }

 private:
  const Rule& b_;
  Permutation to_;
  std::vector<bool> taken_;
  std::vector<std::string> wanted_;
  std::vector<std::vector<std::string>> uses_a_, uses_b_;
};

class SymmetrySearch {
 public:
  explicit SymmetrySearch(const Rule& rule) : rule_(rule), to_(rule.variables.points.size()) {
    for (std::size_t v = 0; v < to_.size(); ++v) uses_.push_back(uses_of(rule, v));
    taken_.assign(to_.size(), false);
    std::iota(to_.begin(), to_.end(), 0);
    as_it_is_ = rule_text(rule, to_);
  }
  std::vector<std::vector<int>> run() {
    extend(0);
    return std::move(found_);
  }

 private:
  void extend(std::size_t v) {
    if (v == to_.size()) {
      const bool identity = std::is_sorted(to_.begin(), to_.end());
      if (!identity && rule_text(rule_, to_) == as_it_is_) found_.push_back(to_);
      return;
    }
    for (std::size_t image = 0; image < to_.size(); ++image) {
      if (taken_[image] || uses_[v] != uses_[image]) continue;
      taken_[image] = true;
      to_[v] = static_cast<int>(image);
      extend(v + 1);
      taken_[image] = false;
    }
  }

  const Rule& rule_;
  Permutation to_;
  std::vector<std::vector<std::string>> uses_;
  std::vector<bool> taken_;
  std::vector<std::string> as_it_is_;
  std::vector<std::vector<int>> found_;
};

}  // namespace

std::vector<std::vector<int>> symmetries_of(const Rule& rule) {
  constexpr std::size_t most_variables = 6;
  if (rule.variables.points.size() < 2 || rule.variables.points.size() > most_variables) return {};
  return SymmetrySearch(rule).run();
}

bool say_the_same(const Rule& a, const Rule& b) {
  const bool patterns = !a.builtin && !b.builtin && !a.then.empty() && !b.then.empty();
  return patterns && a.variables.points.size() == b.variables.points.size() && a.given.size() == b.given.size() &&
         a.where.size() == b.where.size() && a.then.size() == b.then.size() && Renaming(a, b).exists();
}

}  // namespace prover
