#include "prover/language/draft.hpp"

#include <algorithm>

namespace prover {

Draft::Draft(Names& the_names, std::vector<Diagnostic>& the_diagnostics)
    : names(the_names), diagnostics(the_diagnostics) {
  for (std::size_t i = 0; i < names.points.size(); ++i) {
    index_.emplace(names.points[i], PointId(static_cast<std::int64_t>(i)));
  }
}

PointId Draft::point(const std::string& name) {
  const auto [place, fresh] = index_.emplace(name, PointId(static_cast<std::int64_t>(names.points.size())));
  if (fresh) names.points.push_back(name);
  return place->second;
}

PointId Draft::fresh_point() {
  std::string name;
  for (const char letter : std::string_view("PQRSTUVWXYZABCDEFGHJKLMN")) {
    name = letter;
    if (!index_.contains(name) && !written.contains(name)) break;
    name.clear();
  }
  for (int number = 1; name.empty(); ++number) {
    const std::string next = "P" + std::to_string(number);
    if (!index_.contains(next) && !written.contains(next)) name = next;
  }
  unnamed.push_back(point(name));
  return unnamed.back();
}

PointId Draft::hidden_point(const std::string& stem) {
  int number = 1;
  while (index_.contains(stem + std::to_string(number))) ++number;
  const PointId made = point(stem + std::to_string(number));
  hidden.insert(made);
  return made;
}

std::optional<PointId> Draft::find_point(const std::string& name) const {
  const auto found = index_.find(name);
  return found == index_.end() ? std::nullopt : std::optional(found->second);
}

std::size_t Draft::lettered_line(const std::string& name, Span span) {
  const auto [place, fresh] = lettered_index_.emplace(name, lettered.size());
  if (fresh) lettered.push_back({name, span, {}});
  return place->second;
}

const Angle* Draft::find_called(const std::string& name) const {
  const auto found = called_index_.find(name);
  return found == called_index_.end() ? nullptr : &called[found->second].second;
}

void Draft::call(const std::string& name, const Angle& angle) {
  if (called_index_.emplace(name, called.size()).second) called.emplace_back(name, angle);
}

void Draft::name_polygon(const std::vector<Placed>& corners) {
  std::vector<PointId> points;
  for (const Placed& corner : corners) points.push_back(corner.id);
  if (points.size() < 3) return;
  for (std::size_t i = 0; i < points.size(); ++i) name_segment(points[i], points[(i + 1) % points.size()]);
  // The same polygon may be read from any corner, either way round.
  std::vector<PointId> key = points;
  std::rotate(key.begin(), std::min_element(key.begin(), key.end()), key.end());
  if (key.back() < key[1]) std::reverse(key.begin() + 1, key.end());
  if (polygon_keys_.insert(key).second) polygons.push_back(points);
}

void Draft::name_segment(PointId a, PointId b) {
  segments.emplace(a, b);
  segments.emplace(b, a);
}

void Draft::name_circle(PointId centre, const std::vector<Placed>& points) {
  auto known = std::find_if(circles.begin(), circles.end(), [&](const NamedCircle& circle) {
    return centre.valid() && circle.centre == centre;
  });
  if (known == circles.end()) known = circles.insert(circles.end(), NamedCircle{centre, {}});
  for (const Placed& point : points) known->points.push_back(point.id);
}

std::string Draft::letters(const std::vector<Placed>& points) const {
  std::string row;
  for (const Placed& point : points) row += names.of(point.id);
  return row;
}

void Draft::error(Span span, std::string message, std::string way_out) {
  diagnostics.push_back({Severity::error, span, std::move(message), std::move(way_out)});
}

void Draft::warn(Span span, std::string message, std::string way_out) {
  diagnostics.push_back({Severity::warning, span, std::move(message), std::move(way_out)});
}

}  // namespace prover
