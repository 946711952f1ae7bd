#include "prover/hints/leak.hpp"

#include <algorithm>

#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

// The number itself as a size: the constants of sums are none ("= 180°"), nor are factors.
bool is_sum_constant(const Rational& number) { return number == Rational(180) || number == Rational(360); }

}  // namespace

LeakGuard::LeakGuard(const Statement& statement, const Goal& goal, const std::string& value,
                     const std::vector<AnswerFigure>& figures)
    : reader_(statement, figures) {
  if (goal.kind == GoalKind::find) {
    std::vector<PointId> identity;
    for (std::size_t i = 0; i < arrangement().point_count(); ++i) identity.emplace_back(static_cast<std::int64_t>(i));
    bool degenerate = false;
    Form asked = form_of(goal.claims[0].relation.expressions[0], identity, arrangement(), unknowns(), degenerate);
    if (!degenerate && !asked.terms.empty()) asked_ = std::move(asked);
    value_ = Rational::parse(value);
  } else {
    for (const Phrase& claim : goal.claims)
      for (const Form& form : meaning_of(claim, arrangement(), unknowns()).forms) goal_.push_back(form.normalised());
  }
  const auto note = [&](const std::string& text) {
    for (const SentenceNumber& number : maths_of(text, reader_.statement().names).numbers) question_.insert(number.value);
  };
  note(goal.text);
  for (const Given& given : statement.givens) {
    note(given.text);
    for (const Form& form : meaning_of(given.phrase, arrangement(), unknowns()).forms)
      if (form.terms.size() == 1 && !is_fact(form, unknowns())) known_.add(form);
  }
}

std::optional<Form> LeakGuard::form_of_quantity(const std::string& text) {
  std::vector<Form> forms = reader_.forms_of(text + " = 1");
  if (forms.size() != 1) return std::nullopt;
  forms[0].constant = 0;
  return forms[0];
}

bool LeakGuard::is_goal(const Form& form) const {
  return std::find(goal_.begin(), goal_.end(), form.normalised()) != goal_.end();
}

bool LeakGuard::settles_asked(const std::vector<Form>& forms) const {
  LinearSystem with = known_;
  if (asked_ && with.reduce(*asked_).terms.empty()) return false;  // it is known already: nothing is given away
  for (const Form& form : forms) with.add(form);
  if (asked_) return with.reduce(*asked_).terms.empty();
  LinearSystem alone;
  for (const Form& form : forms) alone.add(form);
  return !goal_.empty() && std::all_of(goal_.begin(), goal_.end(), [&](const Form& g) { return alone.entails(g); });
}

std::optional<std::string> LeakGuard::leak_by_number(const SentenceMaths& maths, Told told, const std::set<Rational>& sizes) const {
  std::set<Rational> bases{90, 180, 360}, said = sizes;
  bases.insert(question_.begin(), question_.end());
  bases.insert(told_.begin(), told_.end());
  for (const SentenceNumber& number : maths.numbers) {
    if (number.factor) continue;
    if (told == Told::hint && !question_.contains(number.value) && !told_.contains(number.value))
      return "a number that is neither in the question nor in a step already told";
    // A number of the question may be named, though not as the size of something else that leads there at once.
    if (!question_.contains(number.value) && !is_sum_constant(number.value)) said.insert(number.value);
  }
  if (!value_ || !asked_) return std::nullopt;
  if (said.contains(*value_)) return "the asked value";
  for (const Rational& one : said)
    for (const Rational& base : bases)
      if (base - one == *value_ || one - base == *value_) return "a value from which the asked one follows by one subtraction";
  return std::nullopt;
}

std::optional<std::string> LeakGuard::leak(std::string_view sentence, Told told) {
  const SentenceMaths maths = maths_of(sentence, statement().names);
  std::vector<Form> forms;
  for (const std::string& relation : maths.relations)
    for (Form& form : reader_.forms_of(relation)) forms.push_back(std::move(form));
  std::set<Rational> sizes;  // that the sentence is the first to give to something
  for (const Form& form : forms)
    if (form.terms.size() == 1 && !is_fact(form, unknowns()) && !known_.value(form.terms[0].first))
      sizes.insert(-form.constant / form.terms[0].second);
  if (auto found = leak_by_number(maths, told, sizes)) return found;
  if (std::any_of(forms.begin(), forms.end(), [&](const Form& form) { return is_goal(form); })) return "the relation that is asked for";
  if (settles_asked(forms)) return "relations that give what is asked";
  if (told == Told::hint && asked_) {
    bool asked = false, other = false;
    for (const std::string& quantity : maths.quantities) {
      const auto form = form_of_quantity(quantity);
      if (!form || form->terms.empty()) continue;
      const bool angle = unknowns()[form->terms[0].first].kind == UnknownKind::angle;
      const bool is_asked = asked_->terms.size() == 1 && form->terms[0].first == asked_->terms[0].first;
      const bool same_kind = angle == (unknowns()[asked_->terms[0].first].kind == UnknownKind::angle);
      asked |= is_asked;
      other |= !is_asked && same_kind;
    }
    if (asked && other) return "what is asked beside another size";
  }
  return std::nullopt;
}

void LeakGuard::told(std::string_view step) {
  const SentenceMaths maths = maths_of(step, statement().names);
  for (const SentenceNumber& number : maths.numbers) told_.insert(number.value);
  for (const std::string& relation : maths.relations)
    for (const Form& form : reader_.forms_of(relation))
      if (form.terms.size() == 1 && !is_fact(form, unknowns())) known_.add(form);
}

}  // namespace prover
