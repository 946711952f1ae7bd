// Exchanges of a rule's variables that leave it as it is: the angle sum of triangle ABC is that of BCA. Places that
// differ by one of them are the same instance, so only the first of them is tried. Phrases are compared as sets of
// predicate, points and terms in a canonical order; a phrase that is symmetric in its own points (a triangle, a
// segment, an angle's arms) is sorted before it is compared.
#include <algorithm>
#include <numeric>
#include <string>

#include "prover/chain/match_plan.hpp"

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

std::string phrase_text(const Phrase& phrase, const Permutation& to) {
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
  for (const std::string& q : p) text += q;
  return text;
}

std::vector<std::string> rule_text(const Rule& rule, const Permutation& to) {
  std::vector<std::string> text;
  for (const Phrase& p : rule.given) text.push_back("g" + phrase_text(p, to));
  for (const Phrase& p : rule.where) text.push_back("w" + phrase_text(p, to));
  for (const Phrase& p : rule.then) text.push_back("t" + phrase_text(p, to));
  std::sort(text.begin(), text.end());
  return text;
}

}  // namespace

namespace {

// How a variable is used, whatever the others are called: only variables used alike can be exchanged.
std::vector<std::string> uses_of(const Rule& rule, std::size_t variable) {
  Permutation marked(rule.variables.points.size(), 0);
  marked[variable] = 1;
  return rule_text(rule, marked);
}

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

}  // namespace prover
