// Sums, products and comparisons of quantities. Everything is multiplied out to a linear form on the way; a
// product of two unknowns stops here with its reason.
#include <algorithm>
#include <array>

#include "prover/language/reader.hpp"

namespace prover {

namespace {

struct Worded {
  std::string_view text;
  Rational value;
};

Rational glyph_value(std::string_view glyph) {
  static const std::array<Worded, 18> table = {{{"½", {1, 2}},
                                                {"⅓", {1, 3}},
                                                {"⅔", {2, 3}},
                                                {"¼", {1, 4}},
                                                {"¾", {3, 4}},
                                                {"⅕", {1, 5}},
                                                {"⅖", {2, 5}},
                                                {"⅗", {3, 5}},
                                                {"⅘", {4, 5}},
                                                {"⅙", {1, 6}},
                                                {"⅚", {5, 6}},
                                                {"⅐", {1, 7}},
                                                {"⅛", {1, 8}},
                                                {"⅜", {3, 8}},
                                                {"⅝", {5, 8}},
                                                {"⅞", {7, 8}},
                                                {"⅑", {1, 9}},
                                                {"⅒", {1, 10}}}};
  for (const Worded& row : table) {
    if (row.text == glyph) return row.value;
  }
  return 0;
}

Rational multiple_value(const std::string& words) {
  // Longer beginnings first: "two thirds" before "two".
  static const std::array<Worded, 12> table = {{{"two thirds", {2, 3}},
                                                {"three quarters", {3, 4}},
                                                {"twice", 2},
                                                {"double", 2},
                                                {"thrice", 3},
                                                {"half", {1, 2}},
                                                {"third", {1, 3}},
                                                {"quarter", {1, 4}},
                                                {"two", 2},
                                                {"three", 3},
                                                {"four", 4},
                                                {"five", 5}}};
  for (const Worded& row : table) {
    if (words.find(row.text) != std::string::npos) return row.value;
  }
  return 6;  // "six times", the last one the grammar has
}

bool is_constant(const std::vector<Term>& terms) {
  return std::all_of(terms.begin(), terms.end(),
                     [](const Term& t) { return std::holds_alternative<One>(t.quantity); });
}

Rational constant(const std::vector<Term>& terms) {
  Rational value = 0;
  for (const Term& term : terms) value += term.coefficient;
  return value;
}

bool mentions_angle(const std::vector<Term>& terms) {
  return std::any_of(terms.begin(), terms.end(),
                     [](const Term& t) { return std::holds_alternative<Angle>(t.quantity); });
}
bool mentions_segment(const std::vector<Term>& terms) {
  return std::any_of(terms.begin(), terms.end(),
                     [](const Term& t) { return std::holds_alternative<Segment>(t.quantity); });
}

}  // namespace

Reader::Sum Reader::times(const Sum& a, const Sum& b, Span span) {
  Sum result;
  result.degrees = a.degrees || b.degrees;
  result.lengths = a.lengths || b.lengths;
  const bool left = is_constant(a.terms);
  if (!left && !is_constant(b.terms)) {
    draft_.error(span,
                 "\"" + source(span) +
                     "\" multiplies two unknowns; only sums and multiples of unknowns can be proved here",
                 "give one of the two as a number");
    return result;
  }
  const Rational scale = constant(left ? a.terms : b.terms);
  result.terms = left ? b.terms : a.terms;
  for (Term& term : result.terms) {
    term.coefficient *= scale;
    term.span = {std::min(term.span.begin, span.begin), term.span.end};
  }
  return result;
}

Reader::Sum Reader::factor(const Node& node) {
  const auto number = [&](Rational value) { return Sum{{Term{std::move(value), One{}, node.span}}}; };
  const std::string written = source(node.span);
  if (node.part == Part::number || node.part == Part::fraction) {
    const std::optional<Rational> value = Rational::parse(written);
    if (!value) draft_.error(node.span, "\"" + written + "\" divides by zero", "write another number");
    return number(value.value_or(1));
  }
  if (node.part == Part::glyph) return number(glyph_value(written));
  if (node.part == Part::mixed)
    return number(constant(factor(node.children[0]).terms) + constant(factor(node.children[1]).terms));
  if (node.part == Part::multiple) return number(multiple_value(words(node)));
  if (node.part == Part::bracketed) return sum(node.children.front());
  if (node.part == Part::sum_of) return {quantities(node.children.front())};
  if (node.part == Part::letter) {
    const std::string name = canonical_name(written);
    draft_.number_letters.emplace(name, node.span);
    return {{Term{1, Number{name}, node.span}}};
  }
  if (node.part == Part::line) {
    const Line read = line(node);
    return {{Term{1, Segment{read.a.id, read.b.id}, node.span}}};
  }
  if (node.part == Part::loose_letters) {
    if (const Angle* known = draft_.find_called(canonical_name(written)))
      return {{Term{1, *known, node.span}}};
    const std::size_t count = letters(node).size();
    if (letters_are_angles_ && (count == 1 || count == 3)) return {{Term{1, angle(node).angle, node.span}}};
    draft_.error(node.span, "\"" + written + "\" alone is not a quantity",
                 count == 1 || count == 3 ? "write \"angle " + written + "\" for the angle"
                                          : "an angle has three letters, a segment two");
    return number(1);
  }
  return {{Term{1, angle(node).angle, node.span}}};
}

Reader::Sum Reader::product(const Node& node) {
  std::optional<Sum> result;
  bool degrees = false, lengths = false;
  for (const Node& child : node.children) {
    if (child.part == Part::degree_unit) {
      degrees = true;
    } else if (child.part == Part::length_unit) {
      lengths = true;
    } else if (child.part == Part::power) {
      draft_.error(node.span,
                   "\"" + source(node.span) +
                       "\" multiplies an unknown by itself; only sums and multiples can be proved here",
                   "give it as a number");
    } else if (child.part == Part::over) {
      const Sum below = product(child);
      const Rational value = constant(below.terms);
      if (!is_constant(below.terms)) {
        draft_.error(child.span,
                     "divides by an unknown; only sums and multiples of unknowns can be proved here",
                     "multiply both sides by it, or give it as a number");
      } else if (value.is_zero()) {
        draft_.error(child.span, "divides by zero", "write another number");
      } else {
        for (Term& term : result->terms) term.coefficient /= value;
      }
    } else {
      const Sum next = factor(child);
      result = result ? times(*result, next, {node.span.begin, child.span.end}) : next;
    }
  }
  result->degrees = result->degrees || degrees;
  result->lengths = result->lengths || lengths;
  return *result;
}

Reader::Sum Reader::sum(const Node& node) {
  Sum total;
  bool negative = false;
  for (const Node& child : node.children) {
    if (child.part == Part::minus) {
      negative = true;
      continue;
    }
    Sum next = product(child);
    for (Term& term : next.terms) {
      if (negative) term.coefficient = -term.coefficient;
      total.terms.push_back(std::move(term));
    }
    total.degrees = total.degrees || next.degrees;
    total.lengths = total.lengths || next.lengths;
    negative = false;
  }
  return total;
}

Reader::Sum Reader::side(const Node& node) {
  Sum total = sum(node.children.front());
  for (const Node& child : node.children) {
    if (child.part != Part::more && child.part != Part::less) continue;
    const Sum base = sum(child.children.front());
    // "20° less than angle KML" is angle KML − 20°.
    if (child.part == Part::less) {
      for (Term& term : total.terms) term.coefficient = -term.coefficient;
    }
    total.terms.insert(total.terms.begin(), base.terms.begin(), base.terms.end());
    total.degrees = total.degrees || base.degrees;
    total.lengths = total.lengths || base.lengths;
  }
  return total;
}

Expression Reader::expression(const Node& node) {
  const Sum read = sum(node);
  check_kinds({read}, node.span);
  return {read.terms, node.span};
}

void Reader::check_kinds(const std::vector<Sum>& sides, Span span) {
  bool angles = false, segments = false, degrees = false, lengths = false;
  for (const Sum& one : sides) {
    angles = angles || mentions_angle(one.terms);
    segments = segments || mentions_segment(one.terms);
    degrees = degrees || one.degrees;
    lengths = lengths || one.lengths;
  }
  if (angles && segments) {
    draft_.error(span, "compares an angle with a length",
                 "compare angles with angles and lengths with lengths");
  } else if (angles && lengths) {
    draft_.error(span, "gives an angle in units of length", "write degrees, for example \"= 40°\"");
  } else if (segments && degrees) {
    draft_.error(span, "gives a length in degrees",
                 "write \"angle\" and three letters if an angle is meant, or the length without °");
  } else if (degrees && lengths) {
    draft_.error(span, "mixes degrees and units of length", "use one of them");
  }
}

std::vector<Term> Reader::quantities(const Node& node) {
  std::vector<Term> row;
  for (const Node& child : node.children) {
    if (child.part == Part::angles_of) {
      const std::vector<Placed> corners = letters(child);
      draft_.name_polygon(corners);
      for (const Placed& corner : corners) {
        row.push_back({1, corner_of(corners, corner, child.span), corner.span});
      }
    } else if (child.part == Part::quantities) {
      for (Term& term : quantities(child)) row.push_back(std::move(term));
    } else {
      for (Term& term : factor(child).terms) row.push_back(std::move(term));
    }
  }
  return row;
}

void Reader::compare(std::vector<Expression> expressions, std::vector<Comparison> comparisons, Span span) {
  Phrase phrase;
  phrase.relation = {std::move(expressions), std::move(comparisons)};
  phrase.span = span;
  phrases_->push_back(std::move(phrase));
}

void Reader::relation(const Node& node) {
  std::vector<Sum> sides;
  std::vector<Expression> expressions;
  std::vector<Comparison> comparisons;
  const auto constant_side = [&](Rational value, Comparison comparison, Span span) {
    expressions.push_back({{Term{std::move(value), One{}, span}}, span});
    comparisons.push_back(comparison);
    sides.push_back({expressions.back().terms, true, false});
  };
  for (const Node& child : node.children) {
    if (child.part == Part::side) {
      sides.push_back(side(child));
      expressions.push_back({sides.back().terms, child.span});
    }
    if (child.part == Part::equal) comparisons.push_back(Comparison::equal);
    if (child.part == Part::less_than) comparisons.push_back(Comparison::less);
    if (child.part == Part::greater_than) comparisons.push_back(Comparison::greater);
    if (child.part == Part::right_angle) constant_side(90, Comparison::equal, child.span);
    if (child.part == Part::straight_angle) constant_side(180, Comparison::equal, child.span);
    if (child.part == Part::acute_angle) constant_side(90, Comparison::less, child.span);
    if (child.part == Part::obtuse_angle) constant_side(90, Comparison::greater, child.span);
    if (child.part == Part::inclusive) {
      draft_.error(child.span, "only =, < and > compare quantities here", "write \"<\" or \">\"");
      return;
    }
  }
  check_kinds(sides, node.span);
  compare(std::move(expressions), std::move(comparisons), node.span);
}

// K : L : M = 2 : 3 : 4 becomes 3K = 2L and 4L = 3M: no unknown needs to be made up for it.
void Reader::ratio(const std::vector<Term>& terms, const Node& node) {
  std::vector<Rational> parts;
  for (const Node& child : node.children) parts.push_back(constant(factor(child).terms));
  if (parts.size() != terms.size()) {
    draft_.error(node.span,
                 "compares " + std::to_string(terms.size()) + " quantities by " +
                     std::to_string(parts.size()) + " numbers",
                 "give one number for each");
    return;
  }
  for (const Rational& number : parts) {
    if (number.sign() > 0) continue;
    draft_.error(node.span, "a ratio has positive numbers only", "leave out the zero");
    return;
  }
  for (std::size_t i = 0; i + 1 < terms.size(); ++i) {
    Term left = terms[i], right = terms[i + 1];
    left.coefficient = parts[i + 1];
    right.coefficient = parts[i];
    compare({{{left}, left.span}, {{right}, right.span}}, {Comparison::equal},
            {left.span.begin, node.span.end});
  }
}

}  // namespace prover
