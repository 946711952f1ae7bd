#include "prover/fact/unknown.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace prover {

namespace {

const std::string no_name;

constexpr std::uint64_t is_whole = std::uint64_t{1} << 63;  // the key says everything

std::uint64_t key_of(UnknownKind kind, FactKind fact, std::span<const PointId> points, const std::string& name) {
  constexpr std::size_t most_points = 4;
  constexpr std::int32_t bits = 13;
  std::uint64_t key = static_cast<std::uint64_t>(kind) | static_cast<std::uint64_t>(fact) << 2 | points.size() << 7;
  bool whole = points.size() <= most_points && name.empty();
  if (whole)
    for (std::size_t i = 0; i < points.size(); ++i) {
      whole = whole && points[i].value >= 0 && points[i].value < (1 << bits);
      key |= static_cast<std::uint64_t>(points[i].value) << (10 + bits * i);
    }
  if (whole) return key | is_whole;
  std::uint64_t h = static_cast<std::uint64_t>(kind) * 64 + static_cast<std::uint64_t>(fact) + 1;
  for (const PointId p : points) h = (h ^ static_cast<std::uint32_t>(p.value)) * 0x9e3779b97f4a7c15U + (h >> 32);
  return (h ^ std::hash<std::string>{}(name)) & ~is_whole;
}

std::size_t start_of(std::uint64_t key) { return static_cast<std::size_t>((key * 0x9e3779b97f4a7c15U) >> 24); }

}  // namespace

std::size_t UnknownTable::slot_of(const Sought& sought, std::uint64_t key) const {
  const std::size_t mask = slots_.size() - 1;
  for (std::size_t at = start_of(key) & mask;; at = (at + 1) & mask) {
    const Slot& slot = slots_[at];
    if (slot.unknown < 0) return at;
    if (slot.key != key) continue;
    if ((key & is_whole) != 0) return at;
    const Unknown& u = unknowns_[static_cast<std::size_t>(slot.unknown)];
    if (u.kind == sought.kind && u.fact == sought.fact && u.name == sought.name &&
        std::equal(u.points.begin(), u.points.end(), sought.points.begin(), sought.points.end()))
      return at;
  }
}

void UnknownTable::grow() {
  std::vector<Slot> old(slots_.empty() ? 64 : 2 * slots_.size());
  std::swap(old, slots_);
  const std::size_t mask = slots_.size() - 1;
  for (const Slot& slot : old) {
    if (slot.unknown < 0) continue;
    std::size_t at = start_of(slot.key) & mask;
    while (slots_[at].unknown >= 0) at = (at + 1) & mask;
    slots_[at] = slot;
  }
}

UnknownId UnknownTable::found_or_added(const Sought& sought) {
  if (2 * unknowns_.size() >= slots_.size()) grow();
  const std::uint64_t key = key_of(sought.kind, sought.fact, sought.points, sought.name);
  Slot& slot = slots_[slot_of(sought, key)];
  if (slot.unknown < 0) {
    slot = {key, static_cast<std::int32_t>(unknowns_.size())};
    unknowns_.push_back({sought.kind, sought.fact, {sought.points.begin(), sought.points.end()}, sought.name});
  }
  return UnknownId(slot.unknown);
}

UnknownId UnknownTable::found(const Sought& sought) const {
  if (slots_.empty()) return {};
  return UnknownId(slots_[slot_of(sought, key_of(sought.kind, sought.fact, sought.points, sought.name))].unknown);
}

UnknownId UnknownTable::intern(const Unknown& u) {
  return found_or_added({u.kind, u.fact, u.points, u.name});
}

UnknownId UnknownTable::find(const Unknown& u) const {
  return found({u.kind, u.fact, u.points, u.name});
}

UnknownId UnknownTable::intern(UnknownKind kind, FactKind fact, std::span<const PointId> points) {
  return found_or_added({kind, fact, points, no_name});
}

UnknownId UnknownTable::find(UnknownKind kind, FactKind fact, std::span<const PointId> points) const {
  return found({kind, fact, points, no_name});
}

UnknownId UnknownTable::angle(PointId v, PointId p, PointId q) {
  const std::array points{v, std::min(p, q), std::max(p, q)};
  return found_or_added({UnknownKind::angle, {}, points, no_name});
}

UnknownId UnknownTable::find_angle(PointId v, PointId p, PointId q) const {
  const std::array points{v, std::min(p, q), std::max(p, q)};
  return found({UnknownKind::angle, {}, points, no_name});
}

UnknownId UnknownTable::length(PointId a, PointId b) {
  const std::array points{std::min(a, b), std::max(a, b)};
  return found_or_added({UnknownKind::length, {}, points, no_name});
}

UnknownId UnknownTable::excess(const Form& difference) {
  std::string name;
  for (const auto& [unknown, coefficient] : difference.terms)
    name += coefficient.to_string() + "*" + std::to_string(unknown.value) + " ";
  name += difference.constant.to_string();
  const UnknownId id = found_or_added({UnknownKind::excess, {}, {}, name});
  differences_.try_emplace(id, difference);
  return id;
}

const Form& UnknownTable::difference(UnknownId excess) const {
  static const Form none;
  const auto found = differences_.find(excess);
  return found == differences_.end() ? none : found->second;
}

UnknownId UnknownTable::find_length(PointId a, PointId b) const {
  const std::array points{std::min(a, b), std::max(a, b)};
  return found({UnknownKind::length, {}, points, no_name});
}

namespace {

std::string letters(const std::vector<PointId>& points, const Names& names, std::size_t from = 0,
                    std::size_t count = std::string::npos) {
  std::string text;
  for (std::size_t i = from; i < points.size() && i - from < count; ++i) text += names.of(points[i]);
  return text;
}

std::string listed(const std::vector<PointId>& points, const Names& names) {
  std::string text;
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (i > 0) text += i + 1 == points.size() ? " and " : ", ";
    text += names.of(points[i]);
  }
  return text;
}

std::string describe_fact(const Unknown& u, const Names& names) {
  const auto& p = u.points;
  switch (u.fact) {
    case FactKind::parallel:
      return letters(p, names, 0, 2) + " ∥ " + letters(p, names, 2, 2);
    case FactKind::perpendicular:
      return letters(p, names, 0, 2) + " ⊥ " + letters(p, names, 2, 2);
    case FactKind::collinear:
      return listed(p, names) + " lie on one line";
    case FactKind::congruent:
      return "△" + letters(p, names, 0, 3) + " ≅ △" + letters(p, names, 3, 3);
    case FactKind::similar:
      return "△" + letters(p, names, 0, 3) + " ~ △" + letters(p, names, 3, 3);
    case FactKind::regular_polygon:
      return letters(p, names) + " is a regular polygon";
    case FactKind::parallelogram:
      return letters(p, names) + " is a parallelogram";
    case FactKind::rectangle:
      return letters(p, names) + " is a rectangle";
    case FactKind::rhombus:
      return letters(p, names) + " is a rhombus";
    case FactKind::square:
      return letters(p, names) + " is a square";
    case FactKind::kite:
      return letters(p, names) + " is a kite";
    case FactKind::trapezium:
      return letters(p, names) + " is a trapezium";
    case FactKind::circle:
      return names.of(p[1]) + " lies on the circle with centre " + names.of(p[0]);
    case FactKind::concyclic:
      return listed(p, names) + " lie on one circle";
    case FactKind::joined:
      return letters(p, names) + " is joined";
    case FactKind::tangent:
      return letters(p, names, 0, 2) + " touches the circle with centre " + names.of(p[3]) + " at " +
             names.of(p[2]);
    case FactKind::tangent_through:
      return letters(p, names, 0, 2) + " touches the circle " + letters(p, names, 2) + " at " + names.of(p[2]);
  }
  return {};
}

std::string with_coefficient(const Rational& c, const std::string& what) {
  if (c.is_one()) return what;
  if (c == Rational(1, 2)) return "½" + what;
  return c.is_integer() ? c.to_string() + what : "(" + c.to_string() + ")" + what;
}

}  // namespace

std::vector<PointId> on_one_circle(const Form& form, const UnknownTable& unknowns) {
  if (form.terms.size() != 2 || !form.constant.is_zero()) return {};
  const Unknown& a = unknowns[form.terms[0].first];
  const Unknown& b = unknowns[form.terms[1].first];
  for (const Unknown* u : {&a, &b})
    if (u->kind != UnknownKind::fact || u->fact != FactKind::circle) return {};
  if (a.points[0] != b.points[0] || !(form.terms[0].second + form.terms[1].second).is_zero()) return {};
  return {a.points[0], std::min(a.points[1], b.points[1]), std::max(a.points[1], b.points[1])};
}

bool is_fact(const Form& form, const UnknownTable& unknowns) {
  return (form.terms.size() == 1 && form.constant.is_zero() &&
          unknowns[form.terms[0].first].kind == UnknownKind::fact) ||
         !on_one_circle(form, unknowns).empty();
}

Form more_than_zero(const Form& difference, UnknownTable& unknowns) {
  Form form = difference;
  return form.add(Form::of(unknowns.excess(difference)), -1);
}

bool compares(const Form& form, const UnknownTable& unknowns) {
  return std::any_of(form.terms.begin(), form.terms.end(),
                     [&](const auto& term) { return unknowns[term.first].kind == UnknownKind::excess; });
}

bool is_positive(const Form& form, const UnknownTable& unknowns) {
  return !form.is_zero() && form.constant.sign() >= 0 &&
         std::all_of(form.terms.begin(), form.terms.end(), [&](const auto& term) {
           const UnknownKind kind = unknowns[term.first].kind;
           return term.second.sign() > 0 && kind != UnknownKind::number && kind != UnknownKind::fact;
         });
}

std::string describe(const Unknown& u, const Names& names) {
  switch (u.kind) {
    case UnknownKind::excess:
      return "an excess";
    case UnknownKind::angle:
      return "∠" + names.of(u.points[1]) + names.of(u.points[0]) + names.of(u.points[2]);
    case UnknownKind::length:
      return letters(u.points, names);
    case UnknownKind::number:
      return u.name;
    case UnknownKind::fact:
      return describe_fact(u, names);
  }
  return {};
}

std::string describe_equation(const Form& form, const UnknownTable& unknowns, const Names& names) {
  if (const auto circle = on_one_circle(form, unknowns); !circle.empty())
    return names.of(circle[1]) + " and " + names.of(circle[2]) + " lie on one circle with centre " + names.of(circle[0]);
  if (is_fact(form, unknowns)) return describe(unknowns[form.terms[0].first], names);
  bool degrees = false;
  std::string left, right;
  // The side with more positive terms goes left.
  std::size_t positive = 0;
  for (const auto& [u, c] : form.terms) positive += c.sign() > 0 ? 1 : 0;
  const bool flip = 2 * positive < form.terms.size();
  for (const auto& [u, c] : form.terms) {
    degrees |= unknowns[u].kind == UnknownKind::angle;
    const bool on_left = (c.sign() > 0) != flip;
    std::string& side = on_left ? left : right;
    if (!side.empty()) side += " + ";
    side += with_coefficient(c.sign() > 0 ? c : -c, describe(unknowns[u], names));
  }
  const Rational constant = flip ? form.constant : -form.constant;  // on the right side
  auto number = [&](const Rational& value) { return value.to_string() + (degrees ? "°" : ""); };
  if (constant.sign() < 0) {
    if (!left.empty()) left += " + ";
    left += number(-constant);
  } else if (constant.sign() > 0 || right.empty()) {
    if (!right.empty()) right += " + ";
    right += number(constant);
  }
  if (left.empty()) left = "0";
  if (right.empty()) right = "0";
  return left + " = " + right;
}

}  // namespace prover
