#include "frontend/command/picture_of.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace frontend {

namespace {

using prover::FigureMarks;

constexpr double on_line = 1e-6;  // by the figure's size
constexpr int most_arcs = 4;

struct Vector {
  double x, y;
};
Vector operator-(Vector a, Vector b) { return {a.x - b.x, a.y - b.y}; }
double dot(Vector a, Vector b) { return a.x * b.x + a.y * b.y; }
double cross(Vector a, Vector b) { return a.x * b.y - a.y * b.x; }
double norm(Vector a) { return std::sqrt(dot(a, a)); }

struct Composer {
  const FigureMarks& marks;
  Picture picture;
  std::map<std::string, int> index;
  double size = 1;

  Vector at(int i) const {
    const auto& p = picture.points[static_cast<std::size_t>(i)];
    return {p.x, p.y};
  }
  std::optional<int> find(const std::string& name) const {
    const auto found = index.find(name);
    return found == index.end() ? std::nullopt : std::optional(found->second);
  }
  bool straight(int a, int b, int p) const {
    return std::fabs(cross(at(b) - at(a), at(p) - at(a))) <= on_line * size * norm(at(b) - at(a));
  }

  void add_points(const prover::AnswerFigure& figure);
  void add_lines();
  void add_circles();
  void add_marks();
  void add_dots();
  void add_line(const FigureMarks::Line& mark);
  bool join(Picture::Line& one, const Picture::Line& other) const;
};

void Composer::add_points(const prover::AnswerFigure& figure) {
  for (const std::string& name : marks.points) {
    const auto place = figure.points.find(name);
    if (place == figure.points.end()) continue;
    index[name] = static_cast<int>(picture.points.size());
    picture.points.push_back({name, place->second.first, place->second.second, false});
  }
  double extent = 0;
  for (const auto& p : picture.points)
    for (const auto& q : picture.points) extent = std::max(extent, std::hypot(p.x - q.x, p.y - q.y));
  size = extent > 0 ? extent : 1;
}

// From the first to the last of its points, as they stand in this figure.
void Composer::add_line(const FigureMarks::Line& mark) {
  std::vector<int> on;
  for (const std::string& name : mark.points)
    if (const auto i = find(name)) on.push_back(*i);
  if (on.size() < 2) return;
  int a = on[0], b = on[1];
  for (const int p : on)
    for (const int q : on)
      if (norm(at(q) - at(p)) > norm(at(b) - at(a))) a = p, b = q;
  if (norm(at(b) - at(a)) <= on_line * size) return;
  picture.lines.push_back({a, b, mark.added, mark.beyond, 0});
}

// Two strokes of one line that meet or overlap become one.
bool Composer::join(Picture::Line& one, const Picture::Line& other) const {
  if (one.dashed != other.dashed || !straight(one.a, one.b, other.a) || !straight(one.a, one.b, other.b)) return false;
  const Vector along = at(one.b) - at(one.a);
  const double length = norm(along);
  const auto place = [&](int p) { return dot(at(p) - at(one.a), along) / length; };
  const double from = std::min(place(other.a), place(other.b)), to = std::max(place(other.a), place(other.b));
  if (from > length + on_line * size || to < -on_line * size) return false;
  const int first = place(other.a) < place(other.b) ? other.a : other.b;
  const int last = first == other.a ? other.b : other.a;
  if (to > length) one.b = last;
  if (from < 0) one.a = first;
  one.beyond |= other.beyond;
  return true;
}

void Composer::add_lines() {
  for (const auto& mark : marks.lines) add_line(mark);
  for (bool joined = true; joined;) {
    joined = false;
    for (std::size_t i = 0; i < picture.lines.size() && !joined; ++i)
      for (std::size_t j = i + 1; j < picture.lines.size() && !joined; ++j)
        if (join(picture.lines[i], picture.lines[j])) {
          picture.lines.erase(picture.lines.begin() + static_cast<std::ptrdiff_t>(j));
          joined = true;
        }
  }
  for (const auto& parallel : marks.parallels) {
    const auto a = find(parallel.line[0]), b = find(parallel.line[1]);
    if (!a || !b) continue;
    for (Picture::Line& line : picture.lines)
      if (line.arrowheads == 0 && straight(line.a, line.b, *a) && straight(line.a, line.b, *b)) {
        line.arrowheads = parallel.group;
        break;
      }
  }
}

void Composer::add_circles() {
  for (const auto& mark : marks.circles) {
    std::vector<int> through;
    for (const std::string& name : mark.through)
      if (const auto i = find(name)) through.push_back(*i);
    Picture::Circle circle;
    if (const auto centre = find(mark.centre); centre && !through.empty()) {
      circle = {at(*centre).x, at(*centre).y, norm(at(through[0]) - at(*centre))};
    } else if (mark.centre.empty() && through.size() == 3) {
      const Vector a = at(through[0]), u = at(through[1]) - a, v = at(through[2]) - a;
      const double d = 2 * cross(u, v);
      if (std::fabs(d) < 1e-9 * size * size) continue;
      const Vector to_centre{(v.y * dot(u, u) - u.y * dot(v, v)) / d, (u.x * dot(v, v) - v.x * dot(u, u)) / d};
      circle = {a.x + to_centre.x, a.y + to_centre.y, norm(to_centre)};
    } else {
      continue;
    }
    const bool known = std::any_of(picture.circles.begin(), picture.circles.end(), [&](const Picture::Circle& c) {
      return std::hypot(c.x - circle.x, c.y - circle.y) + std::fabs(c.radius - circle.radius) < on_line * size;
    });
    if (!known) picture.circles.push_back(circle);
  }
}

void Composer::add_marks() {
  // An angle with its size has one arc; equal ones without a size are told apart by more.
  const bool lone = std::any_of(marks.angles.begin(), marks.angles.end(), [](const auto& a) { return a.group == 0 && !a.right; });
  for (const auto& mark : marks.angles) {
    const auto p = find(mark.arm1), v = find(mark.vertex), q = find(mark.arm2);
    if (!p || !v || !q) continue;
    const int arcs = mark.group == 0 ? 1 : std::min(most_arcs, mark.group + (lone ? 1 : 0));
    std::string text = mark.right ? "" : mark.size;
    if (text.empty() && mark.asked) text = "?";
    picture.angles.push_back({*p, *v, *q, mark.reflex, mark.right, arcs, text});
  }
  for (const auto& mark : marks.lengths) {
    const auto a = find(mark.a), b = find(mark.b);
    if (!a || !b) continue;
    picture.ticks.push_back({*a, *b, std::min(most_arcs, mark.group), mark.size.empty() && mark.asked ? "?" : mark.size});
  }
}

void Composer::add_dots() {
  std::vector<std::string> shown = marks.contacts;
  for (const auto& circle : marks.circles) shown.push_back(circle.centre);
  for (const std::string& name : shown)
    if (const auto i = find(name)) picture.points[static_cast<std::size_t>(*i)].dot = true;
  // A point of one line only, and not at its end, would not be seen.
  for (std::size_t p = 0; p < picture.points.size(); ++p) {
    int lines = 0, ends = 0;
    for (const auto& line : picture.lines) {
      const int i = static_cast<int>(p);
      const Vector along = at(line.b) - at(line.a);
      const double place = dot(at(i) - at(line.a), along) / dot(along, along);
      if (straight(line.a, line.b, i) && place > -1e-6 && place < 1 + 1e-6) ++lines;
      if (line.a == i || line.b == i) ++ends;
    }
    if (lines < 2 && ends == 0) picture.points[p].dot = true;
  }
}

std::string listed(const std::vector<std::string>& items) {
  std::string text;
  for (const std::string& item : items) text += (text.empty() ? "" : ", ") + item;
  return text;
}

// For a screen reader: what there is, then what is marked.
std::string description_of(const FigureMarks& marks) {
  std::vector<std::string> lines, equal, sizes;
  for (const auto& line : marks.lines) {
    std::string name;
    for (const std::string& p : line.points) name += p;
    const std::string reversed(name.rbegin(), name.rend());
    const auto known = [&](const std::string& other) { return other == name || other == reversed; };
    if (std::none_of(lines.begin(), lines.end(), known)) lines.push_back(name);
  }
  for (const auto& angle : marks.angles) {
    const std::string name = (angle.reflex ? "reflex angle " : "angle ") + angle.arm1 + angle.vertex + angle.arm2;
    if (angle.right) sizes.push_back(name + " is a right angle");
    else if (!angle.size.empty()) sizes.push_back(name + " is " + angle.size);
    else if (angle.asked) sizes.push_back(name + " is asked");
  }
  for (const auto& length : marks.lengths)
    if (!length.size.empty()) sizes.push_back(length.a + length.b + " is " + length.size);
  std::map<int, std::string> groups, parallels;
  for (const auto& angle : marks.angles)
    if (angle.group > 0) groups[angle.group] += (groups[angle.group].empty() ? "angle " : " = angle ") + angle.arm1 + angle.vertex + angle.arm2;
  for (const auto& [group, text] : groups) equal.push_back(text);
  groups.clear();
  for (const auto& length : marks.lengths)
    if (length.group > 0) groups[length.group] += (groups[length.group].empty() ? "" : " = ") + length.a + length.b;
  for (const auto& [group, text] : groups) equal.push_back(text);
  for (const auto& line : marks.parallels)
    if (line.group > 0) parallels[line.group] += (parallels[line.group].empty() ? "" : " parallel to ") + line.line[0] + line.line[1];
  for (const auto& [group, text] : parallels) equal.push_back(text);
  std::string text = "Points " + listed(marks.points) + ".";
  if (!lines.empty()) text += " Lines " + listed(lines) + ".";
  for (const auto& circle : marks.circles)
    text += circle.centre.empty() ? " A circle through " + listed(circle.through) + "." : " A circle with centre " + circle.centre + ".";
  if (!equal.empty()) text += " Marked equal or parallel: " + listed(equal) + ".";
  if (!sizes.empty()) text += " Sizes: " + listed(sizes) + ".";
  return text;
}

}  // namespace

Picture picture_of(const prover::AnswerFigure& figure, const FigureMarks& marks, bool with_caption) {
  Composer composer{marks, {}, {}, 1};
  composer.add_points(figure);
  composer.add_lines();
  composer.add_circles();
  composer.add_marks();
  composer.add_dots();
  composer.picture.description = description_of(marks);
  if (with_caption) {
    composer.picture.caption = figure.name;
    if (figure.value && !marks.asked.empty())
      composer.picture.caption += fmt::format(": {} = {:.4g}{}", marks.asked, *figure.value, marks.in_degrees ? "°" : "");
  }
  return std::move(composer.picture);
}

}  // namespace frontend
