// Which angle a bare corner means. The interior angle of the only triangle or polygon named in the text with
// that corner; failing that, the angle between the only two rays there that sides and segments name. Where
// that is not decided, the three-letter names to choose from are listed. Names given by "call" are replaced
// too.
#include <algorithm>
#include <map>

#include "prover/language/draft.hpp"

namespace prover {

namespace {

// Points in order along lines, as the text says: enough to see that two letters name the same ray.
class Rows {
 public:
  explicit Rows(const Units& units) {
    for (const Unit& unit : units) {
      if (unit.kind == UnitKind::goal) continue;
      for (const Phrase& phrase : *unit.phrases) {
        const std::vector<PointId>& p = phrase.points;
        if (phrase.predicate == Predicate::line_order) add(p);
        if (phrase.predicate == Predicate::on_segment || phrase.predicate == Predicate::midpoint)
          add({p[1], p[0], p[2]});
      }
    }
  }

  enum class Relation { unknown, same_ray, opposite };
  Relation of(PointId corner, PointId a, PointId b) const {
    if (a == b) return Relation::same_ray;
    const auto found = rows_of_.find(corner);
    if (found == rows_of_.end()) return Relation::unknown;
    for (const std::size_t which : found->second) {
      const std::vector<PointId>& row = rows_[which];
      const auto at = std::find(row.begin(), row.end(), corner), one = std::find(row.begin(), row.end(), a),
                 other = std::find(row.begin(), row.end(), b);
      if (one == row.end() || other == row.end()) continue;
      return (one < at) == (other < at) ? Relation::same_ray : Relation::opposite;
    }
    return Relation::unknown;
  }

 private:
  void add(const std::vector<PointId>& row) {
    if (row.size() < 3) return;
    for (const PointId p : row) rows_of_[p].push_back(rows_.size());
    rows_.push_back(row);
  }
  std::vector<std::vector<PointId>> rows_;
  std::map<PointId, std::vector<std::size_t>> rows_of_;
};

using Arms = std::pair<PointId, PointId>;

class Corners {
 public:
  Corners(Draft& draft, const Units& units) : draft_(draft), rows_(units) {
    for (const std::vector<PointId>& polygon : draft.polygons) {
      const std::size_t n = polygon.size();
      for (std::size_t i = 0; i < n; ++i)
        of_polygons_[polygon[i]].emplace_back(polygon[(i + n - 1) % n], polygon[(i + 1) % n]);
    }
  }

  std::optional<Arms> arms(PointId corner, Span span) {
    std::vector<Arms> choices;
    if (const auto found = of_polygons_.find(corner); found != of_polygons_.end()) {
      for (const Arms& arms : found->second) {
        const bool known =
            std::any_of(choices.begin(), choices.end(), [&](const Arms& c) { return same(corner, c, arms); });
        if (!known) choices.push_back(arms);
      }
    } else {
      choices = between_segments(corner);
    }
    if (choices.size() == 1) return choices.front();
    ask(corner, span, choices);
    return std::nullopt;
  }

 private:
  bool same_ray(PointId corner, PointId a, PointId b) const {
    return rows_.of(corner, a, b) == Rows::Relation::same_ray;
  }
  bool same(PointId corner, const Arms& a, const Arms& b) const {
    return (same_ray(corner, a.first, b.first) && same_ray(corner, a.second, b.second)) ||
           (same_ray(corner, a.first, b.second) && same_ray(corner, a.second, b.first));
  }

  std::vector<Arms> between_segments(PointId corner) const {
    std::vector<PointId> rays;
    for (auto it = draft_.segments.lower_bound({corner, PointId{}});
         it != draft_.segments.end() && it->first == corner; ++it) {
      const bool known =
          std::any_of(rays.begin(), rays.end(), [&](PointId r) { return same_ray(corner, r, it->second); });
      if (!known && it->second.value < 1'000'000'000) rays.push_back(it->second);
      if (rays.size() > 4) break;  // enough to see that it is not decided
    }
    std::vector<Arms> choices;
    for (std::size_t i = 0; i < rays.size(); ++i) {
      for (std::size_t j = i + 1; j < rays.size(); ++j) {
        if (rows_.of(corner, rays[i], rays[j]) != Rows::Relation::opposite)
          choices.emplace_back(rays[i], rays[j]);
      }
    }
    return choices;
  }

  void ask(PointId corner, Span span, const std::vector<Arms>& choices) {
    const std::string& name = draft_.names.of(corner);
    if (choices.empty()) {
      draft_.error(
          span, "\"angle " + name + "\": no triangle or polygon with the corner " + name + " is named here",
          "write the angle with three letters, " + name + " in the middle");
      return;
    }
    std::string list;
    for (std::size_t i = 0; i < choices.size() && i < 4; ++i) {
      if (i > 0) list += i + 1 == std::min<std::size_t>(choices.size(), 4) ? " or " : ", ";
      list +=
          "\"angle " + draft_.names.of(choices[i].first) + name + draft_.names.of(choices[i].second) + "\"";
    }
    draft_.error(span, "\"angle " + name + "\" can mean more than one angle", "write " + list);
  }

  Draft& draft_;
  Rows rows_;
  std::map<PointId, std::vector<Arms>> of_polygons_;
};

void settle_angle(Angle& angle, Span span, Corners& corners) {
  if (!angle.vertex.valid() || angle.arm1.valid()) return;
  if (const auto arms = corners.arms(angle.vertex, span)) {
    angle.arm1 = arms->first;
    angle.arm2 = arms->second;
  }
}

void settle_quantity(Quantity& quantity, Span span, const Draft& draft, Corners& corners) {
  if (const Number* number = std::get_if<Number>(&quantity)) {
    if (const Angle* named = draft.find_called(number->name)) quantity = *named;
  }
  if (Angle* angle = std::get_if<Angle>(&quantity)) settle_angle(*angle, span, corners);
}

// Where the corner stands in phrases whose points hold an angle.
std::optional<std::size_t> corner_place(Predicate predicate) {
  if (predicate == Predicate::bisects || predicate == Predicate::inside_angle) return 2;
  return std::nullopt;
}

}  // namespace

void settle_angles(Draft& draft, const Units& units, std::vector<Goal>& goals) {
  Corners corners(draft, units);
  for (auto& [name, angle] : draft.called) settle_angle(angle, {}, corners);
  for (const Unit& unit : units) {
    const std::size_t mistakes = draft.diagnostics.size();
    for (Phrase& phrase : *unit.phrases) {
      for (Expression& expression : phrase.relation.expressions) {
        for (Term& term : expression.terms) settle_quantity(term.quantity, term.span, draft, corners);
      }
      if (const auto place = corner_place(phrase.predicate); place && !phrase.points[*place - 1].valid()) {
        if (const auto arms = corners.arms(phrase.points[*place], phrase.point_spans[*place])) {
          phrase.points[*place - 1] = arms->first;
          phrase.points[*place + 1] = arms->second;
        }
      }
    }
    if (draft.diagnostics.size() > mistakes) unit.phrases->clear();  // never hand on an angle without arms
  }
  for (Goal& goal : goals) {
    for (Quantity& quantity : goal.in_terms_of) settle_quantity(quantity, goal.span, draft, corners);
  }
}

}  // namespace prover
