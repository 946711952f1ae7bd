#include "prover/reading/name_book.hpp"

#include <algorithm>

#include "prover/reading/number_text.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

NameBook::NameBook(const Statement& statement, const Arrangement& arrangement, UnknownTable& unknowns)
    : names_(statement.names), unknowns_(unknowns) {
  // What is asked first, so that the answer is named as in the question.
  for (const Goal& goal : statement.goals)
    for (const Phrase& phrase : goal.claims) note(phrase, arrangement, unknowns);
  for (const Given& given : statement.givens) note(given.phrase, arrangement, unknowns);
  for (std::size_t i = 0; i < unknowns.size(); ++i)
    if (const UnknownId id(static_cast<std::int64_t>(i)); is_number(id)) numbers_.push_back(id);
}

void NameBook::note(const Phrase& phrase, const Arrangement& arrangement, UnknownTable& unknowns) {
  if (phrase.predicate == Predicate::parallel || phrase.predicate == Predicate::congruent ||
      phrase.predicate == Predicate::similar || phrase.predicate == Predicate::perpendicular) {
    const Meaning meaning = meaning_of(phrase, arrangement, unknowns);
    if (meaning.forms.size() == 1 && meaning.forms[0].terms.size() == 1 &&
        unknowns[meaning.forms[0].terms[0].first].kind == UnknownKind::fact)
      called_.try_emplace(meaning.forms[0].terms[0].first, prover::describe(phrase, names_));
  }
  if ((phrase.predicate == Predicate::parallel || phrase.predicate == Predicate::perpendicular) && phrase.points.size() == 4)
    for (const std::size_t i : {0, 2})
      if (const LineId line = arrangement.line(phrase.points[i], phrase.points[i + 1]); line.valid())
        lines_.try_emplace(line, names_.of(phrase.points[i]) + names_.of(phrase.points[i + 1]));
  if (phrase.predicate == Predicate::triangle) triangles_.push_back(phrase.points);
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms) {
      Expression one;
      one.terms.push_back(term);
      one.terms[0].coefficient = 1;
      std::string text;
      if (const auto* angle = std::get_if<Angle>(&term.quantity)) {
        Angle plain = *angle;
        plain.reflex = plain.exterior = false;
        text = prover::describe(plain, names_);
        one.terms[0].quantity = plain;
      } else if (const auto* segment = std::get_if<Segment>(&term.quantity)) {
        text = names_.of(segment->a) + names_.of(segment->b);
      } else {
        continue;
      }
      std::vector<PointId> identity;
      for (std::size_t i = 0; i < arrangement.point_count(); ++i) identity.emplace_back(static_cast<std::int64_t>(i));
      bool degenerate = false;
      const Form form = form_of(one, identity, arrangement, unknowns, degenerate);
      if (!degenerate && form.terms.size() == 1) called_.try_emplace(form.terms[0].first, text);
    }
}

std::string NameBook::of(UnknownId unknown) const {
  const auto found = called_.find(unknown);
  return found != called_.end() ? found->second : prover::describe(unknowns_[unknown], names_);
}

std::string NameBook::line(LineId line) const {
  const auto found = lines_.find(line);
  return found == lines_.end() ? "" : found->second;
}

std::string NameBook::triangle(std::vector<PointId> corners) const {
  std::sort(corners.begin(), corners.end(), [&](PointId a, PointId b) { return names_.of(a) < names_.of(b); });
  for (const auto& named : triangles_)
    if (std::is_permutation(named.begin(), named.end(), corners.begin(), corners.end())) corners = named;
  std::string text;
  for (const PointId p : corners) text += names_.of(p);
  return text;
}

bool NameBook::has_angle(const Form& form) const {
  for (const auto& [u, c] : form.terms)
    if (is_angle(u)) return true;
  return false;
}

std::string NameBook::sum(const Form& form) const {
  const bool degrees = has_angle(form);
  std::string text;
  auto append = [&](bool positive, const std::string& what) {
    if (text.empty())
      text = positive ? what : "−" + what;
    else
      text += (positive ? " + " : " − ") + what;
  };
  for (const auto& [u, c] : form.terms)
    if (c.sign() > 0) append(true, multiple_text(c, of(u)));
  if (form.constant.sign() > 0) append(true, degrees ? degrees_text(form.constant) : number_text(form.constant));
  for (const auto& [u, c] : form.terms)
    if (c.sign() < 0) append(false, multiple_text(-c, of(u)));
  if (form.constant.sign() < 0) append(false, degrees ? degrees_text(-form.constant) : number_text(-form.constant));
  return text.empty() ? "0" : text;
}

// The sign of the excess tells which side is the larger one.
std::string NameBook::inequality(const Form& form) const {
  Form larger, smaller;
  int sign = 0;
  for (const auto& [u, c] : form.terms)
    if (unknowns_[u].kind == UnknownKind::excess) sign = -c.sign();
  const Rational turn(sign);
  for (const auto& [u, c] : form.terms) {
    if (unknowns_[u].kind == UnknownKind::excess) continue;
    const Rational count = c * turn;
    (count.sign() > 0 ? larger : smaller).terms.emplace_back(u, count.sign() > 0 ? count : -count);
  }
  const Rational constant = form.constant * turn;
  (constant.sign() > 0 ? larger : smaller).constant = constant.sign() > 0 ? constant : -constant;
  const auto side = [&](const Form& sum_of) {
    const bool bare_angle = sum_of.terms.empty() && has_angle(form);
    return bare_angle ? degrees_text(sum_of.constant) : sum(sum_of);
  };
  return side(larger) + " > " + side(smaller);
}

std::string NameBook::equation(const Form& form) const {
  if (form.terms.size() == 1 && form.constant.is_zero() && unknowns_[form.terms[0].first].kind == UnknownKind::fact)
    return of(form.terms[0].first);
  if (compares(form)) return inequality(form);
  const bool degrees = has_angle(form);
  Form left, right;
  std::size_t positive = 0;
  for (const auto& [u, c] : form.terms) positive += c.sign() > 0 ? 1 : 0;
  const int sign = 2 * positive >= form.terms.size() ? 1 : -1;
  for (const auto& [u, c] : form.terms)
    (c.sign() == sign ? left : right).terms.emplace_back(u, c.sign() > 0 ? c : -c);
  const Rational constant = sign > 0 ? -form.constant : form.constant;
  // A lone whole equal to its parts reads better with the parts on the right.
  auto number = [&](const Rational& value) { return degrees ? degrees_text(value) : number_text(value); };
  std::string l = left.terms.empty() ? "" : sum(left), r = right.terms.empty() ? "" : sum(right);
  if (constant.sign() > 0) r += (r.empty() ? "" : " + ") + number(constant);
  if (constant.sign() < 0) {
    if (r.empty())
      l += " + " + number(-constant);
    else
      r += " − " + number(-constant);
  }
  if (l.empty()) l = "0";
  if (r.empty()) r = "0";
  // "∠GHF = 2∠GHJ" too, not the other way round.
  const bool multiple_left = left.terms.size() == 1 && right.terms.size() == 1 && right.terms[0].second.is_one() && !left.terms[0].second.is_one();
  if (((left.terms.size() > 1 && right.terms.size() == 1) || multiple_left) && constant.is_zero()) std::swap(l, r);
  return l + " = " + r;
}

}  // namespace prover
