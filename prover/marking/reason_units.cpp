#include "prover/marking/reason_units.hpp"

#include <algorithm>
#include <array>

#include "prover/marking/reason_places.hpp"

namespace prover {
namespace {

constexpr std::array<std::string_view, shape_count> shape_names = {"@parallel",  "@perpendicular", "@equal-lengths", "@equal-angles",
                                                                   "@angle-sum", "@angle-size",    "@greater",       "@other"};
constexpr std::size_t most_tokens = 240;  // longer reasons are read so far

}  // namespace

std::optional<Shape> shape_of(const Phrase& phrase) {
  if (phrase.predicate == Predicate::parallel) return Shape::parallel;
  if (phrase.predicate == Predicate::perpendicular) return Shape::perpendicular;
  if (phrase.predicate == Predicate::isosceles_at || phrase.predicate == Predicate::equilateral) return Shape::equal_lengths;
  if (phrase.predicate != Predicate::relation) return std::nullopt;
  std::size_t angles = 0, segments = 0, most = 0;
  for (const Expression& e : phrase.relation.expressions) {
    most = std::max(most, e.terms.size());
    for (const Term& t : e.terms) {
      angles += std::holds_alternative<Angle>(t.quantity);
      segments += std::holds_alternative<Segment>(t.quantity);
    }
  }
  for (const Comparison c : phrase.relation.comparisons)
    if (c != Comparison::equal) return Shape::greater;
  if (angles > 0 && segments == 0) return most > 1 ? Shape::angle_sum : angles == 1 ? Shape::angle_size : Shape::equal_angles;
  if (segments > 1 && angles == 0 && most == 1) return Shape::equal_lengths;
  return Shape::other;
}

Meaning meaning_of(Shape shape, ReasonVocabulary& vocabulary) {
  return vocabulary.meaning(shape_names[static_cast<std::size_t>(shape)]);
}

namespace {

bool is_capital(char c) {
  return c >= 'A' && c <= 'Z';
}

class UnitReader {
 public:
  UnitReader(std::string_view text, const Names& names, const ReasonVocabulary& vocabulary)
      : tokens_(raw_tokens(text, most_tokens)), vocabulary_(vocabulary), reader_(names) {
    for (const RawToken& token : tokens_) {
      lower_.push_back(token.lower);
      small_letters_ = small_letters_ || (token.text.size() > 2 && token.text[1] >= 'a' && token.text[1] <= 'z');
    }
    for (std::size_t i = 0; i < tokens_.size(); ++i) points_.push_back(points_at(i));
  }

  ReasonUnits read() {
    for (at_ = 0; at_ < tokens_.size();)
      if (!place() && !line_numbers() && !figure()) word();
    return std::move(out_);
  }

 private:
  bool is(std::size_t i, std::initializer_list<std::string_view> words) const {
    return i < tokens_.size() && std::find(words.begin(), words.end(), lower_[i]) != words.end();
  }

  PointToken points_at(std::size_t i) const {
    const RawToken& token = tokens_[i];
    PointToken out;
    if (token.kind != RawKind::word || !is_capital(token.text[0])) return out;
    const bool capitals = std::all_of(token.text.begin(), token.text.end(), [](char c) { return is_capital(c) || c == '\'' || (c >= '0' && c <= '9'); });
    const bool introduced = i > 0 && is(i - 1, {"∠", "angle", "Δ", "triangle", "∥", "⊥", "chord", "arc", "=", "line", "side", "diameter", "∥m"});
    const bool followed = is(i + 1, {"∥", "⊥", "="});
    if (token.text.size() == 1) {
      // "A straight line" has an article, "Z angles" a nickname; "at A" and "∠A" a point.
      const bool named = (i > 0 && is(i - 1, {"∠", "angle", "at", "from", "point", "centre", "center", "through", "vertex", "of", "⊙", "with", "and", ","})) || token.hat;
      const bool shape = is(i + 1, {"angle", "angles", "∠", "shape", "shaped", "ang"});
      if (!named || shape) return out;
      out.points = reader_.points(token.text);
      return out;
    }
    // "OK" may be a radius, "HL" hardly: words that mean something are words, unless a sign says otherwise.
    const Form* word = vocabulary_.find(token.lower);
    if (!introduced && !followed && !token.hat && word != nullptr && !(word->meanings.empty() && small_letters_)) return out;
    out.points = reader_.points(token.text);
    out.foreign = out.points.empty() && capitals && token.text.size() < 6;
    return out;
  }

  bool place() {
    std::optional<FoundPlace> found = place_at(tokens_, points_, at_);
    if (!found) return false;
    ReasonUnit unit;
    unit.kind = UnitKind::place;
    if (const auto shape = shape_of(found->phrase))
      if (const auto bit = vocabulary_.known(shape_names[static_cast<std::size_t>(*shape)])) unit.bits.set(*bit);
    const Predicate said = found->phrase.predicate;
    unit.place = std::move(found->phrase);
    at_ = found->end;
    out_.units.push_back(std::move(unit));
    // "△KLM ≅ △NPQ" is a place, and names what is told of congruent triangles.
    if (said == Predicate::congruent || said == Predicate::similar)
      for (const std::string_view word : {said == Predicate::congruent ? "congruent" : "similar", "triangle"})
        if (const Form* form = vocabulary_.find(word)) add_word(*form, false);
    return true;
  }

  bool figure() {
    if (points_[at_].points.empty()) {
      if (!points_[at_].foreign || vocabulary_.corrected(lower_[at_]) != nullptr) return false;
      ++at_;
      return true;
    }
    ReasonUnit unit;
    unit.kind = UnitKind::figure;
    const bool hat = tokens_[at_].hat;
    unit.figure = points_[at_++].points;
    out_.units.push_back(std::move(unit));
    if (const Form* angle = hat ? vocabulary_.find("angle") : nullptr) add_word(*angle, false);
    return true;
  }

  // "line 3", "lines 2 and 4", "from 2", "(3)".
  bool line_numbers() {
    std::size_t i = at_;
    const auto number_at = [&](std::size_t k) {
      return k < tokens_.size() && tokens_[k].kind == RawKind::number && tokens_[k].text.size() < 4 && tokens_[k].text.find_first_of(".,") == std::string::npos &&
             !is(k + 1, {"°", "×", "÷", "−", "=", "degrees"});
    };
    std::vector<std::size_t> found;
    if (is(i, {"("}) && number_at(i + 1)) {
      for (++i; number_at(i); ++i) {
        found.push_back(i);
        while (is(i + 1, {"and", ",", "&"})) ++i;
      }
      if (!is(i, {")"})) return false;
      ++i;
    } else if (is(i, {"line", "lines", "step", "steps", "statement", "statements", "row", "rows", "from", "by", "using", "eq", "equation", "equations", "number", "no", "part"}) &&
               number_at(i + 1) && !(i > 0 && is(i - 1, {"straight", "str"}))) {
      found.push_back(i + 1);
      i += 2;
      while (true) {
        std::size_t next = i;
        while (is(next, {"and", ",", "&", "to"})) ++next;
        if (next == i || !number_at(next)) break;
        found.push_back(next);
        i = next + 1;
      }
    } else if (i == 0 && number_at(0) && tokens_[0].text.size() < 3) {  // "2 and 4", and nothing else
      for (; number_at(i) || is(i, {"and", ",", "&"}); ++i)
        if (number_at(i)) found.push_back(i);
      if (i < tokens_.size()) return false;
    } else {
      return false;
    }
    for (const std::size_t k : found) {
      ReasonUnit unit;
      unit.kind = UnitKind::line_number;
      unit.line = std::stoi(tokens_[k].text);
      out_.units.push_back(std::move(unit));
    }
    at_ = i;
    return true;
  }

  // A single letter means something only as the shape that angles are called by: "Z angles", "angles in a Z".
  bool shape_letter() const {
    const bool capital = is_capital(tokens_[at_].text[0]);
    if (is(at_ + 1, {"angles", "shape", "shapes", "shaped", "angs"}) || (capital && is(at_ + 1, {"angle", "∠"}))) return true;
    return capital && (tokens_.size() == 1 || (at_ > 1 && is(at_ - 1, {"a", "an"})) || is(at_ - 1, {"alternate"}));
  }

  void add_word(const Form& form, bool misspelt) {
    if (form.meanings.empty()) return;
    ReasonUnit unit;
    for (const Meaning m : form.meanings) unit.bits.set(m);
    unit.misspelt = misspelt || form.misspelt;
    static const Meanings none;
    const bool joins = vocabulary_.role(form.meanings[0]) == WordRole::turn && vocabulary_.name(form.meanings[0]) == "and";
    if (joins) {
      unit.kind = UnitKind::separator;
      unit.bits.reset();
    }
    out_.units.push_back(std::move(unit));
  }

  void word() {
    const RawToken& token = tokens_[at_];
    if (token.kind == RawKind::separator || is(at_, {"(", ")"})) {
      ReasonUnit unit;
      unit.kind = UnitKind::separator;
      unit.bracket = token.kind == RawKind::sign;
      unit.sentence = token.sentence;
      out_.units.push_back(std::move(unit));
      ++at_;
      return;
    }
    std::size_t taken = 1;
    if (token.kind == RawKind::word && token.text.size() == 1 && !shape_letter()) {
      ++at_;
      return;
    }
    // Between letters that are not in the figure a sign says nothing.
    if (is(at_, {"=", "∥", "⊥", "<", ">", "≅"}) && ((at_ > 0 && points_[at_ - 1].foreign) || (at_ + 1 < tokens_.size() && points_[at_ + 1].foreign))) {
      ++at_;
      return;
    }
    // "= 180°" tells the sum by its number, "= 70°" tells nothing of the rule.
    if (lower_[at_] == "=" && at_ + 1 < tokens_.size() && tokens_[at_ + 1].kind == RawKind::number &&
        (at_ + 2 == tokens_.size() || tokens_[at_ + 2].kind == RawKind::separator || is(at_ + 2, {"°", "degrees", "deg", ")", "−", "÷", "so"}))) {
      if (const Form* form = vocabulary_.find("value")) add_word(*form, false);
      ++at_;
      return;
    }
    if (const Form* form = vocabulary_.longest(lower_, at_, taken)) {
      if (token.kind == RawKind::sign && lower_[at_] == "∥" && at_ > 0 && at_ + 1 < tokens_.size() && tokens_[at_ - 1].kind == RawKind::word &&
          tokens_[at_ + 1].kind == RawKind::word && lower_[at_ - 1].size() == 1 && lower_[at_ + 1].size() == 1 && !is_capital(tokens_[at_ - 1].text[0]))
        out_.letters_parallel = true;
      // "+" joins words, not numbers.
      const bool plus = lower_[at_] == "+" && !(at_ > 0 && tokens_[at_ - 1].kind == RawKind::word && at_ + 1 < tokens_.size() && tokens_[at_ + 1].kind == RawKind::word);
      out_.arithmetic = out_.arithmetic || plus;
      if (!plus) add_word(*form, false);
      at_ += taken;
      return;
    }
    ++at_;
    if (token.kind != RawKind::word) {
      out_.arithmetic = out_.arithmetic || is(at_ - 1, {"×", "÷", "−", "+"});
      return;
    }
    if (std::vector<std::string> parts = vocabulary_.unglued(token.lower); !parts.empty()) {
      for (const std::string& part : parts) add_word(*vocabulary_.find(part), true);
      return;
    }
    if (const Form* form = corrections_ < 24 ? vocabulary_.corrected(token.lower) : nullptr) {
      ++corrections_;
      add_word(*form, true);
      return;
    }
    ReasonUnit unit;
    unit.kind = UnitKind::noise;
    out_.units.push_back(std::move(unit));
  }

  std::vector<RawToken> tokens_;
  const ReasonVocabulary& vocabulary_;
  PointReader reader_;
  std::vector<std::string> lower_;
  std::vector<PointToken> points_;
  bool small_letters_ = false;  // not all is written in capitals
  std::size_t at_ = 0;
  int corrections_ = 0;  // each costs time, so there is a limit
  ReasonUnits out_;
};

}  // namespace

ReasonUnits reason_units(std::string_view text, const Names& names, const ReasonVocabulary& vocabulary) {
  return UnitReader(text, names, vocabulary).read();
}

}  // namespace prover
