// Phrases in canonical words, with the signs of a textbook.
#include <algorithm>
#include <map>

#include "prover/language/phrase.hpp"

namespace prover {

namespace {

// Points that a text does not name (they give a lettered line its direction, or are the centre of a circle
// without one) have small letters; a line through one is called by its letter.
bool is_nameless(const std::string& name) {
  return !name.empty() && !(name[0] >= 'A' && name[0] <= 'Z');
}

class Words {
 public:
  Words(const std::vector<PointId>& points, const Names& names) : points_(points), names_(names) {}

  const std::string& at(std::size_t i) const { return names_.of(points_[i]); }
  std::string line(std::size_t i) const {
    for (const std::string& name : {at(i), at(i + 1)}) {
      if (is_nameless(name)) return name.substr(0, name.find_first_of("0123456789"));
    }
    return at(i) + at(i + 1);
  }
  std::string row(std::size_t from, std::size_t to) const {  // "KLM"
    std::string letters;
    for (std::size_t i = from; i < to; ++i) letters += at(i);
    return letters;
  }
  std::string row(std::size_t from) const { return row(from, points_.size()); }
  std::string list(std::size_t from) const {  // "K, L, M"
    std::string letters;
    for (std::size_t i = from; i < points_.size(); ++i) letters += (i == from ? "" : ", ") + at(i);
    return letters;
  }
  std::string corner(std::size_t i) const { return "∠" + row(i, i + 3); }
  std::string triangle(std::size_t i) const { return "△" + row(i, i + 3); }
  std::string polygon(std::size_t from) const {
    return points_.size() - from == 3 ? "△" + row(from) : row(from);
  }
  std::string circle(std::size_t centre) const {
    return is_nameless(at(centre)) ? "the circle" : "the circle with centre " + at(centre);
  }
  std::size_t size() const { return points_.size(); }

 private:
  const std::vector<PointId>& points_;
  const Names& names_;
};

std::string regular_name(std::size_t corners) {
  static const std::map<std::size_t, std::string> names = {
      {5, "pentagon"}, {6, "hexagon"},  {7, "heptagon"},    {8, "octagon"},
      {9, "nonagon"},  {10, "decagon"}, {11, "hendecagon"}, {12, "dodecagon"}};
  const auto found = names.find(corners);
  return found == names.end() ? std::to_string(corners) + "-gon" : found->second;
}

std::string circle_row(const Words& w, bool ordered) {
  const std::string centre = is_nameless(w.at(0)) ? "a circle" : "a circle with centre " + w.at(0);
  return w.list(1) + (w.size() == 2 ? " lies on " : " lie on ") + centre + (ordered ? " in this order" : "");
}

bool has_angle(const Expression& expression) {
  return std::any_of(expression.terms.begin(), expression.terms.end(),
                     [](const Term& t) { return std::holds_alternative<Angle>(t.quantity); });
}
bool has_number(const Expression& expression) {
  return std::any_of(expression.terms.begin(), expression.terms.end(),
                     [](const Term& t) { return std::holds_alternative<Number>(t.quantity); });
}

std::string glyph(const Rational& part) {
  static const std::map<std::string, std::string> glyphs = {
      {"1/2", "½"}, {"1/3", "⅓"}, {"2/3", "⅔"}, {"1/4", "¼"}, {"3/4", "¾"}};
  const auto found = glyphs.find(part.to_string());
  return found == glyphs.end() ? "" : found->second;
}

// 40, 22.5, 23⅓, 540/7 – for a positive number.
std::string size(const Rational& value) {
  if (value.is_integer()) return value.to_string();
  for (const auto& [power, digits] : {std::pair{10, 1U}, {100, 2U}, {1000, 3U}}) {
    const Rational scaled = value * Rational(power);
    if (!scaled.is_integer()) continue;
    std::string written = scaled.to_string();
    if (written.size() <= digits) written.insert(0, digits + 1 - written.size(), '0');
    return written.insert(written.size() - digits, ".");
  }
  if (const auto thirds = (value * Rational(3)).to_int64()) {
    const std::int64_t whole = *thirds / 3;
    return (whole == 0 ? "" : std::to_string(whole)) + glyph(value - Rational(whole));
  }
  return value.to_string();
}

std::string coefficient(const Rational& value) {
  if (value.is_one()) return "";
  if (value.is_integer()) return value.to_string();
  const std::string known = glyph(value);
  return known.empty() ? "(" + value.to_string() + ")" : known;
}

std::string quantity(const Quantity& quantity, const Names& names) {
  if (const Angle* angle = std::get_if<Angle>(&quantity)) return describe(*angle, names);
  if (const Segment* segment = std::get_if<Segment>(&quantity))
    return names.of(segment->a) + names.of(segment->b);
  if (const Number* number = std::get_if<Number>(&quantity)) return number->name;
  return "";
}

std::string sum(const Expression& expression, const Names& names, bool degrees) {
  // "(3x + 10)°": one sign of degrees for a sum of unknown numbers.
  const bool numbers_only = has_number(expression) && !has_angle(expression);
  const bool bracket = degrees && numbers_only && expression.terms.size() > 1;
  std::string written;
  for (const Term& term : expression.terms) {
    const bool negative = term.coefficient.sign() < 0;
    const Rational value = negative ? -term.coefficient : term.coefficient;
    if (written.empty()) {
      if (negative) written += "−";
    } else {
      written += negative ? " − " : " + ";
    }
    const bool constant = std::holds_alternative<One>(term.quantity);
    written += constant ? size(value) : coefficient(value) + quantity(term.quantity, names);
    const bool plain = constant || std::holds_alternative<Number>(term.quantity);
    if (degrees && plain && !bracket) written += "°";
  }
  if (written.empty()) written = degrees ? "0°" : "0";
  return bracket ? "(" + written + ")°" : written;
}

const char* comparison_sign(Comparison comparison) {
  switch (comparison) {
    case Comparison::equal:
      return " = ";
    case Comparison::less:
      return " < ";
    case Comparison::greater:
      return " > ";
  }
  return " = ";
}

std::string relation(const Relation& relation, const Names& names) {
  const bool degrees = std::any_of(relation.expressions.begin(), relation.expressions.end(), has_angle);
  std::string written;
  for (std::size_t i = 0; i < relation.expressions.size(); ++i) {
    if (i > 0) written += comparison_sign(relation.comparisons[i - 1]);
    written += sum(relation.expressions[i], names, degrees);
  }
  return written;
}

}  // namespace

std::string describe(const Angle& angle, const Names& names) {
  if (angle.exterior) return "exterior angle at " + names.of(angle.vertex);
  std::string written = angle.reflex ? "reflex ∠" : "∠";
  if (angle.arm1.valid()) written += names.of(angle.arm1);
  written += names.of(angle.vertex);
  if (angle.arm2.valid()) written += names.of(angle.arm2);
  return written;
}

std::string describe(const Expression& expression, const Names& names) {
  return sum(expression, names, has_angle(expression));
}

std::string describe(const Phrase& phrase, const Names& names) {
  const Words w(phrase.points, names);
  switch (phrase.predicate) {
    case Predicate::relation:
      return relation(phrase.relation, names);
    case Predicate::triangle:
      return w.row(0) + " is a triangle";
    case Predicate::acute:
      return w.triangle(0) + " is acute-angled";
    case Predicate::line_order:
      return w.size() == 2 ? w.line(0) + " is drawn" : w.list(0) + " lie on a line in this order";
    case Predicate::collinear:
      return w.list(0) + " lie on a line";
    case Predicate::on_ray:
      return w.at(0) + " lies on ray " + w.line(1);
    case Predicate::on_segment:
      return w.at(0) + " lies between " + w.at(1) + " and " + w.at(2);
    case Predicate::on_line:
      return w.at(0) + " lies on line " + w.line(1);
    case Predicate::parallel:
      return w.line(0) + " ∥ " + w.line(2);
    case Predicate::perpendicular:
      return w.line(0) + " ⊥ " + w.line(2);
    case Predicate::meet:
      return "lines " + w.line(1) + " and " + w.line(3) + " meet at " + w.at(0);
    case Predicate::cross:
      return "segments " + w.line(1) + " and " + w.line(3) + " cross at " + w.at(0);
    case Predicate::midpoint:
      return w.at(0) + " is the midpoint of " + w.line(1);
    case Predicate::foot:
      return w.at(0) + " is the foot of the perpendicular from " + w.at(1) + " to " + w.line(2);
    case Predicate::perpendicular_bisector:
      return w.line(0) + " is the perpendicular bisector of " + w.line(2);
    case Predicate::isosceles:
      return w.triangle(0) + " is isosceles";
    case Predicate::isosceles_at:
      return w.triangle(0) + " is isosceles with " + w.row(0, 2) + " = " + w.at(0) + w.at(2);
    case Predicate::equilateral:
      return w.triangle(0) + " is equilateral";
    case Predicate::right_angled:
      return w.triangle(0) + " is right-angled at " + w.at(0);
    case Predicate::circle:
      return circle_row(w, false);
    case Predicate::circle_cyclic:
      return circle_row(w, true);
    case Predicate::concyclic:
      return w.list(0) + " lie on a circle";
    case Predicate::concyclic_cyclic:
      return w.list(0) + " lie on a circle in this order";
    case Predicate::diameter:
      return w.line(0) + " is a diameter of " + w.circle(2);
    case Predicate::tangent:
      return w.line(0) + " touches " + w.circle(2) + " at " + w.at(1);
    case Predicate::tangent_circumcircle:
      return w.line(0) + " touches circle " + w.row(2) + " at " + w.at(1);
    case Predicate::bisects:
      return w.at(2) + w.at(0) + " bisects " + w.corner(1);
    case Predicate::regular_polygon:
      if (w.size() == 3) return w.triangle(0) + " is equilateral";
      if (w.size() == 4) return w.row(0) + " is a square";
      return w.row(0) + " is a regular " + regular_name(w.size());
    case Predicate::convex:
      return w.row(0) + " is convex";
    case Predicate::simple_polygon:
      return w.row(0) + " is a polygon whose sides do not cross";
    case Predicate::parallelogram:
      return w.row(0) + " is a parallelogram";
    case Predicate::rectangle:
      return w.row(0) + " is a rectangle";
    case Predicate::rhombus:
      return w.row(0) + " is a rhombus";
    case Predicate::square:
      return w.row(0) + " is a square";
    case Predicate::kite:
      return w.row(0) + " is a kite with " + w.row(0, 2) + " = " + w.at(0) + w.at(3);
    case Predicate::trapezium:
      return w.row(0) + " is a trapezium with " + w.row(0, 2) + " ∥ " + w.at(3) + w.at(2);
    case Predicate::inside_polygon:
      return w.at(0) + " lies inside " + w.polygon(1);
    case Predicate::inside_angle:
      return w.at(0) + " lies inside " + w.corner(1);
    case Predicate::inside_circle:
      return w.at(0) + " lies inside " + w.circle(1);
    case Predicate::outside_polygon:
      return w.at(0) + " lies outside " + w.polygon(1);
    case Predicate::outside_circle:
      return w.at(0) + " lies outside " + w.circle(1);
    case Predicate::same_side:
      return w.at(0) + " and " + w.at(1) + " are on the same side of " + w.line(2);
    case Predicate::opposite_sides:
      return w.at(0) + " and " + w.at(1) + " are on opposite sides of " + w.line(2);
    case Predicate::congruent:
      return w.triangle(0) + " ≅ △" + w.row(3, 6);
    case Predicate::similar:
      return w.triangle(0) + " ∼ △" + w.row(3, 6);
  }
  return "";
}

}  // namespace prover
