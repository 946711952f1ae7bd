#include "prover/language/claim_reader.hpp"

#include <algorithm>

#include "prover/language/diagnose.hpp"
#include "prover/language/text_limits.hpp"

namespace prover {

namespace {

std::string sentence_of(std::string message) {
  if (message.empty()) return message;
  if (message[0] >= 'a' && message[0] <= 'z') message[0] = static_cast<char>(message[0] - 'a' + 'A');
  if (message.back() != '.' && message.back() != '?') message += '.';
  return message;
}

std::string listed(const std::vector<std::string>& names) {
  std::string list;
  for (std::size_t i = 0; i < names.size(); ++i)
    list += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  return list;
}

// The sum of the coefficients of a letter.
Rational weight(const Expression& expression, const std::string& letter) {
  Rational total = 0;
  for (const Term& term : expression.terms) {
    const Number* number = std::get_if<Number>(&term.quantity);
    if (number != nullptr && number->name == letter) total += term.coefficient;
  }
  return total;
}

bool has_quantity(const Expression& expression) {
  return std::any_of(expression.terms.begin(), expression.terms.end(), [](const Term& term) {
    return std::holds_alternative<Angle>(term.quantity) || std::holds_alternative<Segment>(term.quantity);
  });
}

}  // namespace

ClaimReader::ClaimReader(ProblemText& problem, const Draft& draft)
    : problem_(problem), draft_(std::make_unique<Draft>(draft)) {
  draft_->vague.clear();
  draft_->units.clear();
  draft_->unnamed.clear();
}

std::string ClaimReader::points() const {
  std::vector<std::string> names;
  for (const std::string& name : problem_.names.points)
    if (name[0] >= 'A' && name[0] <= 'Z') names.push_back(name);
  return listed(names);
}

std::string ClaimReader::only_triangle() const {
  std::string name;
  if (draft_->polygons.size() != 1 || draft_->polygons[0].size() != 3) return name;
  for (const PointId p : draft_->polygons[0]) name += problem_.names.of(p);
  return name;
}

std::optional<Expression> ClaimReader::asked() const {
  std::optional<Expression> asked;
  for (const Goal& goal : problem_.goals) {
    if (goal.kind != GoalKind::find || goal.claims.size() != 1 || goal.claims[0].relation.expressions.size() != 1 ||
        asked)
      return std::nullopt;
    asked = goal.claims[0].relation.expressions[0];
  }
  return asked;
}

void ClaimReader::forget(std::size_t points, std::size_t mistakes) {
  problem_.names.points.resize(points);
  problem_.diagnostics.resize(mistakes);
}

bool ClaimReader::take_mistakes(ReadClaim& result, std::size_t mistakes) {
  for (std::size_t i = mistakes; i < problem_.diagnostics.size(); ++i) {
    const Diagnostic& diagnostic = problem_.diagnostics[i];
    if (diagnostic.severity != Severity::error) continue;
    result.trouble = sentence_of(diagnostic.message);
    if (!diagnostic.way_out.empty()) result.trouble += " " + sentence_of(diagnostic.way_out);
    result.place = diagnostic.span;
    return true;
  }
  return false;
}

std::vector<Phrase> ClaimReader::parsed(Draft& draft, const Rewritten& text, ReadClaim& result) {
  std::vector<Phrase> phrases;
  const std::string_view sentence = text.text();
  if (auto mistake = too_much(sentence, {0, sentence.size()})) {
    result.trouble = sentence_of(mistake->message);
    return {};
  }
  const Parsed tree = parse_tree(Start::sentence, sentence, 0);
  if (!tree.tree) {
    const Diagnostic mistake = diagnose(sentence, 0, tree.trail);
    result.trouble = sentence_of(mistake.message);
    result.place = mistake.span;
    if (mistake.message.ends_with("is not a word known here")) {
      result.suggestion = mistake.way_out.substr(1, mistake.way_out.size() - 2);
      result.trouble += " Perhaps " + mistake.way_out + " is meant.";
    }
    return {};
  }
  result.grammatical = true;
  Reader reader(sentence, draft);
  reader.take_letters_for_angles();
  std::vector<Goal> goals;
  draft.begin_unit(UnitKind::goal, 0);
  reader.sentence(*tree.tree, phrases, goals);
  result.asks = !goals.empty();
  result.read = true;
  return phrases;
}

// The whole text is looked at (where a line is said to be, which circles there are); only these phrases change.
void ClaimReader::settle_with(Draft& draft, std::vector<Phrase>& phrases, UnitKind kind) {
  Units units;
  for (Sentence& sentence : problem_.sentences) units.push_back({UnitKind::given, &sentence.phrases});
  for (Sentence& sentence : problem_.added) units.push_back({UnitKind::added, &sentence.phrases});
  units.push_back({kind, &phrases});
  for (VagueShape& shape : draft.vague) shape.unit = units.size() - 1;
  std::vector<Goal> none;
  settle_circles(draft, units);
  settle_lettered_lines(draft, units);
  settle_angles(draft, units, none);
  settle_vague_shapes(draft, units);
  if (kind == UnitKind::added) {
    check_orders(draft, units);
    check_sizes(draft, units);
  }
}

ReadClaim ClaimReader::claim(const Rewritten& text) {
  ReadClaim result;
  const std::size_t points = problem_.names.points.size(), mistakes = problem_.diagnostics.size();
  auto trial = std::make_unique<Draft>(*draft_);
  std::vector<Phrase> phrases = parsed(*trial, text, result);
  if (!result.read || result.asks) {
    forget(points, mistakes);
    return result;
  }
  const auto refuse = [&] {
    result.read = false;
    forget(points, mistakes);
    return result;
  };
  if (problem_.names.points.size() > points) {
    std::vector<std::string> unknown(problem_.names.points.begin() + static_cast<std::ptrdiff_t>(points),
                                     problem_.names.points.end());
    problem_.names.points.resize(points);
    result.unknown_point = true;
    const bool one = unknown.size() == 1;
    result.trouble = std::string("There ") + (one ? "is no point " : "are no points ") + listed(unknown) +
                     " in this figure; its points are " + this->points() + ".";
    return refuse();
  }
  if (trial->lettered.size() > draft_->lettered.size()) {
    result.trouble = "There is no line " + trial->lettered.back().name + " in this figure.";
    return refuse();
  }
  if (take_mistakes(result, mistakes)) return refuse();
  if (trial->called.size() > draft_->called.size()) {
    std::vector<Phrase> own;
    settle_with(*trial, own, UnitKind::goal);
    if (take_mistakes(result, mistakes)) {
      result.ambiguous = true;
      return refuse();
    }
    for (std::size_t i = draft_->called.size(); i < trial->called.size(); ++i) {
      const auto& [name, angle] = trial->called[i];
      const std::vector<Term> meaning = {Term{1, angle, {}}};
      if (draft_->number_letters.contains(name) || letters_.contains(name)) {
        Phrase phrase;  // the letter has a meaning: what is said is that the angle is as large
        phrase.relation.expressions = {Expression{{Term{1, Number{name}, {}}}, {}}, Expression{meaning, {}}};
        phrase.relation.comparisons = {Comparison::equal};
        phrase.span = {0, text.size()};
        phrases.push_back(std::move(phrase));
      } else {
        result.letters.emplace(name, meaning);
        result.names_letter = phrases.empty();
      }
    }
    trial = std::make_unique<Draft>(*draft_);  // the letter is put in below, unless it is a number of the problem
  }
  for (const bool in_place : {true, false}) {
    if (in_place && place_.empty()) continue;
    auto settling = std::make_unique<Draft>(*trial);
    if (in_place) settling->polygons = place_;
    std::vector<Phrase> settled = phrases;
    // "a kite with KL = KN" looks at its own words for the sides; "isosceles" is what is claimed.
    const bool finds_sides = std::any_of(settling->vague.begin(), settling->vague.end(), [](const VagueShape& shape) {
      return shape.kind == VagueKind::kite || shape.kind == VagueKind::trapezium;
    });
    settle_with(*settling, settled, finds_sides ? UnitKind::given : UnitKind::goal);
    const bool failed = take_mistakes(result, mistakes);
    if (failed && in_place) {
      result.trouble.clear();
      problem_.diagnostics.resize(mistakes);
      continue;
    }
    if (failed) {
      const auto bare = [](const Phrase& phrase) {
        for (const Expression& expression : phrase.relation.expressions)
          for (const Term& term : expression.terms)
            if (const Angle* angle = std::get_if<Angle>(&term.quantity); angle != nullptr && !angle->arm1.valid())
              return true;
        return phrase.predicate == Predicate::bisects && !phrase.points[1].valid();
      };
      result.ambiguous = std::any_of(phrases.begin(), phrases.end(), bare);
      return refuse();
    }
    phrases = std::move(settled);
    break;
  }
  if (problem_.names.points.size() > points) {
    result.trouble = "The centre of the circle has no name here.";
    return refuse();
  }
  result.phrases = std::move(phrases);
  forget(points, mistakes);
  if (!result.names_letter) name_letters(result);
  for (Phrase& phrase : result.phrases) text.to_source(phrase);
  return result;
}

const std::vector<Term>* ClaimReader::meaning(const std::string& letter, const ReadClaim& result) const {
  if (const auto known = letters_.find(letter); known != letters_.end()) return &known->second;
  const auto fresh = result.letters.find(letter);
  return fresh == result.letters.end() ? nullptr : &fresh->second;
}

std::set<std::string> ClaimReader::unknown_letters(const Phrase& phrase, const ReadClaim& result) const {
  std::set<std::string> unknown;
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms)
      if (const Number* number = std::get_if<Number>(&term.quantity))
        if (!draft_->number_letters.contains(number->name) && meaning(number->name, result) == nullptr)
          unknown.insert(number->name);
  return unknown;
}

// The meaning of the pupil's letters in place of the letters.
void ClaimReader::put_in(Phrase& phrase, const ReadClaim& result) const {
  for (Expression& expression : phrase.relation.expressions) {
    std::vector<Term> terms;
    for (const Term& term : expression.terms) {
      const Number* number = std::get_if<Number>(&term.quantity);
      const std::vector<Term>* known = number == nullptr ? nullptr : meaning(number->name, result);
      if (known == nullptr) {
        terms.push_back(term);
        continue;
      }
      for (const Term& meant : *known)
        terms.push_back({meant.coefficient * term.coefficient, meant.quantity, term.span});
    }
    expression.terms = std::move(terms);
  }
}

void ClaimReader::name_letters(ReadClaim& result) {
  for (std::size_t i = 0; i < result.phrases.size();) {
    Phrase& phrase = result.phrases[i];
    if (phrase.predicate != Predicate::relation) {
      ++i;
      continue;
    }
    std::vector<Expression>& sides = phrase.relation.expressions;
    const std::set<std::string> unknown = unknown_letters(phrase, result);
    const bool equation = std::all_of(phrase.relation.comparisons.begin(), phrase.relation.comparisons.end(),
                                      [](Comparison c) { return c == Comparison::equal; });
    bool named = false;
    if (unknown.size() == 1 && equation && sides.size() >= 2) {
      // "∠KLM = 2x": from here on x is half of it. The side with the letter says no more than that.
      const std::string& letter = *unknown.begin();
      for (std::size_t k = 0; k < sides.size() && !named; ++k) {
        const Rational own = weight(sides[k], letter);
        if (own.is_zero() || sides[k].terms.size() > 2) continue;
        const std::size_t other = k == 0 ? 1 : k - 1;
        if (!weight(sides[other], letter).is_zero() || !has_quantity(sides[other]) || sides[other].terms.size() != 1)
          continue;
        std::vector<Term> meaning;
        for (const Term& term : sides[other].terms) meaning.push_back({term.coefficient / own, term.quantity, {}});
        for (const Term& term : sides[k].terms)
          if (!std::holds_alternative<Number>(term.quantity))
            meaning.push_back({-term.coefficient / own, term.quantity, {}});
        result.letters.emplace(letter, std::move(meaning));
        named = true;
        sides.erase(sides.begin() + static_cast<std::ptrdiff_t>(k));
        phrase.relation.comparisons.pop_back();
      }
    }
    if (named && sides.size() < 2) {
      result.phrases.erase(result.phrases.begin() + static_cast<std::ptrdiff_t>(i));
      result.names_letter = result.phrases.empty();
      continue;
    }
    if (!named && !unknown.empty()) {
      const auto asked = this->asked();
      const bool one = unknown.size() == 1 && asked && asked->terms.size() == 1 && has_quantity(*asked);
      const bool taken = std::any_of(letters_.begin(), letters_.end(), [&](const auto& known) {
        return asked && known.second.size() == 1 && known.second[0].quantity == asked->terms[0].quantity;
      });
      if (one && !taken) {
        result.letters.emplace(*unknown.begin(), asked->terms);
      } else {
        result.read = false;
        result.phrases.clear();
        result.trouble = "Nothing says what " + *unknown.begin() + " stands for. Write it first, for example \"let " +
                         *unknown.begin() + " = ∠" + (problem_.names.points.size() >= 3
                             ? problem_.names.points[0] + problem_.names.points[1] + problem_.names.points[2]
                             : std::string("KLM")) + "\".";
        return;
      }
    }
    put_in(phrase, result);
    ++i;
  }
}

ReadClaim ClaimReader::drawing(const Rewritten& text, Span span, const std::vector<Rewritten>& facts) {
  ReadClaim result;
  const std::size_t points = problem_.names.points.size(), mistakes = problem_.diagnostics.size();
  const auto refuse = [&] {
    result.read = false;
    forget(points, mistakes);
    return result;
  };
  if (auto mistake = draws_nothing(text.text(), 0)) {
    result.trouble = sentence_of(mistake->message);
    return refuse();
  }
  auto trial = std::make_unique<Draft>(*draft_);
  std::vector<Phrase> phrases;
  for (const Rewritten& one : facts.empty() ? std::vector<Rewritten>{text} : facts) {
    result.read = false;
    for (Phrase& phrase : parsed(*trial, one, result)) {
      one.to_source(phrase);
      phrases.push_back(std::move(phrase));
    }
    if (!result.read || result.asks || take_mistakes(result, mistakes)) return refuse();
  }
  if (!facts.empty() && problem_.names.points.size() == points) return refuse();  // facts of old points draw nothing
  settle_with(*trial, phrases, UnitKind::added);
  if (take_mistakes(result, mistakes) || phrases.empty()) return refuse();
  problem_.diagnostics.resize(mistakes);
  if (!facts.empty()) {
    for (std::size_t i = points; i < problem_.names.points.size(); ++i)
      trial->unnamed.push_back(PointId(static_cast<std::int64_t>(i)));
  }
  result.phrases = phrases;
  Sentence sentence;
  sentence.span = span;
  sentence.text = text.text();
  sentence.phrases = std::move(phrases);
  sentence.fresh = trial->unnamed;
  problem_.added.push_back(std::move(sentence));
  problem_.hidden.resize(problem_.names.points.size(), false);
  for (const PointId p : trial->hidden) problem_.hidden[p.index()] = true;
  problem_.assumptions = trial->assumptions;
  trial->vague.clear();
  trial->units.clear();
  trial->unnamed.clear();
  draft_ = std::move(trial);
  return result;
}

}  // namespace prover
