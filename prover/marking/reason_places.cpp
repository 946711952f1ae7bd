#include "prover/marking/reason_places.hpp"

#include <algorithm>
#include <charconv>

namespace prover {

PointReader::PointReader(const Names& names) {
  for (std::size_t i = 0; i < names.points.size(); ++i)
    if (!names.points[i].empty()) names_.emplace_back(names.points[i], PointId(static_cast<std::int64_t>(i)));
  // Longer names first, so that K1 is not read as K.
  std::stable_sort(names_.begin(), names_.end(), [](const auto& a, const auto& b) { return a.first.size() > b.first.size(); });
}

bool PointReader::split(std::string_view rest, std::vector<PointId>& into) const {
  if (rest.empty()) return true;
  for (const auto& [name, point] : names_) {
    if (!rest.starts_with(name) || std::find(into.begin(), into.end(), point) != into.end()) continue;
    into.push_back(point);
    if (split(rest.substr(name.size()), into)) return true;
    into.pop_back();
  }
  return false;
}

std::vector<PointId> PointReader::points(std::string_view text) const {
  constexpr std::size_t longest = 24;
  std::vector<PointId> found;
  if (text.size() > longest || !split(text, found)) found.clear();
  return found;
}

namespace {

class PlaceReader {
 public:
  PlaceReader(const std::vector<RawToken>& tokens, const std::vector<PointToken>& points, std::size_t at) : tokens_(tokens), points_(points), at_(at) {}

  std::optional<FoundPlace> read() {
    const std::size_t begin = at_;
    for (const auto reader : {&PlaceReader::parallels, &PlaceReader::two_triangles, &PlaceReader::relation}) {
      at_ = begin;
      if (std::optional<Phrase> phrase = (this->*reader)()) {
        phrase->span = {tokens_[begin].span.begin, tokens_[at_ - 1].span.end};
        for (std::size_t i = 0; i < phrase->points.size(); ++i) phrase->point_spans.push_back(phrase->span);
        return FoundPlace{std::move(*phrase), at_};
      }
    }
    return std::nullopt;
  }

 private:
  bool has(std::size_t i) const { return i < tokens_.size(); }
  bool is(std::size_t i, std::string_view lower) const { return has(i) && tokens_[i].lower == lower; }
  bool any(std::size_t i, std::initializer_list<std::string_view> words) const {
    return has(i) && std::find(words.begin(), words.end(), tokens_[i].lower) != words.end();
  }
  std::size_t count(std::size_t i) const { return has(i) ? points_[i].points.size() : 0; }
  bool eat(std::initializer_list<std::string_view> words) {
    if (!any(at_, words)) return false;
    ++at_;
    return true;
  }

  // "∥", "is parallel to", "ll" typed for the sign.
  std::optional<Predicate> between_lines() {
    const std::size_t begin = at_;
    eat({"is", "are", "being", "both"});
    eat({"both"});
    std::optional<Predicate> said;
    if (eat({"∥", "parallel", "paralell", "parallell", "paralel", "ll", "ii", "par"})) said = Predicate::parallel;
    else if (eat({"⊥", "perpendicular", "perp"})) said = Predicate::perpendicular;
    if (!said) at_ = begin;
    else eat({"to", "with"});
    return said;
  }

  std::optional<Phrase> parallels() {
    while (eat({"line", "lines", "side", "sides", "segment", "segments"})) {
    }
    if (count(at_) != 2) return std::nullopt;
    Phrase phrase;
    phrase.points = points_[at_++].points;
    const auto line = [&] { phrase.points.insert(phrase.points.end(), points_[at_].points.begin(), points_[at_].points.end()), ++at_; };
    if (const auto said = between_lines(); said && count(at_) == 2) {
      phrase.predicate = *said;
      line();
      // A third line, KL ∥ MN ∥ PQ: the first two say enough.
      while (*said == Predicate::parallel && is(at_, "∥") && count(at_ + 1) == 2) at_ += 2;
      return phrase;
    }
    if (any(at_, {"and", "&", ","}) && count(at_ + 1) == 2) {
      ++at_;
      line();
      eat({"are", "is", "being"});
      eat({"both"});
      if (eat({"parallel", "∥", "paralell", "parallell", "paralel"})) phrase.predicate = Predicate::parallel;
      else if (eat({"perpendicular", "⊥", "perp"})) phrase.predicate = Predicate::perpendicular;
      else return std::nullopt;
      eat({"lines", "line"});
      return phrase;
    }
    return std::nullopt;
  }

  // "△KLM ≅ △NPQ", "triangle KLM is congruent to triangle NPQ"
  std::optional<Phrase> two_triangles() {
    if (!eat({"Δ", "triangle"}) || count(at_) != 3) return std::nullopt;
    Phrase phrase;
    phrase.points = points_[at_++].points;
    eat({"is", "and"});
    if (eat({"≅", "congruent"})) phrase.predicate = Predicate::congruent;
    else if (eat({"⦀", "similar"})) phrase.predicate = Predicate::similar;
    else return std::nullopt;
    eat({"to", "with"});
    if (!eat({"Δ", "triangle"}) || count(at_) != 3) return std::nullopt;
    phrase.points.insert(phrase.points.end(), points_[at_].points.begin(), points_[at_].points.end());
    ++at_;
    return phrase;
  }

  std::optional<Rational> number() {
    if (!has(at_)) return std::nullopt;
    if (is(at_, "½")) return ++at_, Rational(1, 2);
    if (tokens_[at_].kind != RawKind::number) return std::nullopt;
    const std::string& text = tokens_[at_].text;
    long whole = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), whole);
    if (error != std::errc() || whole > 100000) return std::nullopt;
    Rational value(whole);
    if (end != text.data() + text.size()) {  // decimals
      long digits = 0;
      const char* begin = end + 1;
      const auto rest = std::from_chars(begin, text.data() + text.size(), digits);
      if (rest.ec != std::errc() || digits > 100000) return std::nullopt;
      long scale = 1;
      for (const char* c = begin; c != rest.ptr; ++c) scale *= 10;
      value += Rational(digits, scale);
    }
    ++at_;
    return value;
  }

  std::optional<Term> term() {
    Term out;
    bool counted = false;
    if (const auto factor = number()) {
      out.coefficient = *factor;
      counted = true;
      while (eat({"×", "°", "degrees"})) {
      }
    }
    const bool reflex = eat({"reflex"});
    const bool angle = eat({"∠", "angle", "angles", "ang"});
    if (count(at_) == 3 && (angle || tokens_[at_].hat || only_angles_)) {
      const auto& p = points_[at_++].points;
      out.quantity = Angle{p[0], p[1], p[2], reflex};
      only_angles_ = true;
    } else if (count(at_) == 1 && (angle || tokens_[at_].hat)) {
      out.quantity = Angle{PointId(), points_[at_++].points[0], PointId(), reflex};
      only_angles_ = true;
    } else if (!angle && !reflex && count(at_) == 2) {
      const auto& p = points_[at_++].points;
      out.quantity = Segment{p[0], p[1]};
    } else if (angle || reflex || !counted) {
      return std::nullopt;
    } else {
      out.quantity = One{};
    }
    return out;
  }

  std::optional<Expression> expression() {
    Expression out;
    Rational sign = 1;
    while (true) {
      std::optional<Term> next = term();
      if (!next) return std::nullopt;
      next->coefficient *= sign;
      out.terms.push_back(std::move(*next));
      if (any(at_, {"+", "−"})) {
        sign = is(at_, "+") ? 1 : -1;
        ++at_;
        continue;
      }
      return out;
    }
  }

  std::optional<Comparison> comparison() {
    const std::size_t begin = at_;
    if (eat({"=", "≅"})) return Comparison::equal;
    if (eat({"<"})) return Comparison::less;
    if (eat({">"})) return Comparison::greater;
    eat({"is", "are"});
    if (eat({"equal", "equals"})) {
      eat({"to"});
      return Comparison::equal;
    }
    if (at_ > begin && has(at_) && (tokens_[at_].kind == RawKind::number)) return Comparison::equal;
    at_ = begin;
    return std::nullopt;
  }

  std::optional<Phrase> relation() {
    Phrase phrase;
    only_angles_ = false;
    std::optional<Expression> first = expression();
    if (!first) return std::nullopt;
    phrase.relation.expressions.push_back(std::move(*first));
    bool speaks = false;
    while (true) {
      const std::size_t before = at_;
      const auto sign = comparison();
      if (!sign) break;
      std::optional<Expression> next = expression();
      if (!next) {
        at_ = before;
        break;
      }
      phrase.relation.comparisons.push_back(*sign);
      phrase.relation.expressions.push_back(std::move(*next));
    }
    if (phrase.relation.comparisons.empty()) {
      // "KL and KM are equal"
      if (phrase.relation.expressions[0].terms.size() != 1 || !any(at_, {"and", "&"})) return std::nullopt;
      ++at_;
      std::optional<Expression> next = expression();
      eat({"are", "is"});
      eat({"both"});
      if (!next || !eat({"equal", "congruent", "="})) return std::nullopt;
      phrase.relation.comparisons.push_back(Comparison::equal);
      phrase.relation.expressions.push_back(std::move(*next));
    }
    for (const Expression& e : phrase.relation.expressions)
      for (const Term& t : e.terms) speaks = speaks || !std::holds_alternative<One>(t.quantity);
    if (!speaks) return std::nullopt;
    while (eat({"°", "degrees", "degree"})) {
    }
    return phrase;
  }

  const std::vector<RawToken>& tokens_;
  const std::vector<PointToken>& points_;
  std::size_t at_;
  bool only_angles_ = false;  // after a first angle, "KLM" is one too
};

}  // namespace

std::optional<FoundPlace> place_at(const std::vector<RawToken>& tokens, const std::vector<PointToken>& points, std::size_t at) {
  return PlaceReader(tokens, points, at).read();
}

}  // namespace prover
