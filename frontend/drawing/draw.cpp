#include "frontend/drawing/draw.hpp"

#include <algorithm>
#include <cmath>

#include "frontend/drawing/labels.hpp"

namespace frontend {

namespace {

constexpr double pi = 3.14159265358979323846;
// Sizes in millimetres, legible after a photocopy at 70 %.
constexpr double letter_size = 3.6, number_size = 3.2;
constexpr double edge = 8;             // room round the figure for labels
constexpr double dot_radius = 0.55;
constexpr double arc_radius = 5.5, arc_step = 1.0, arc_nest = 2.6, square_side = 2.6;
constexpr double tick_length = 2.4, tick_gap = 1.0, arrow_length = 2.0, arrow_gap = 1.3;
constexpr double beyond_end = 5;

Spot operator+(Spot a, Spot b) { return {a.x + b.x, a.y + b.y}; }
Spot operator-(Spot a, Spot b) { return {a.x - b.x, a.y - b.y}; }
Spot operator*(double s, Spot a) { return {s * a.x, s * a.y}; }
double norm(Spot a) { return std::hypot(a.x, a.y); }
Spot unit(Spot a) {
  const double n = norm(a);
  return n > 0 ? (1 / n) * a : Spot{1, 0};
}
Spot across(Spot a) { return {-a.y, a.x}; }
Spot toward(double degrees) { return {std::cos(degrees * pi / 180), -std::sin(degrees * pi / 180)}; }
// The direction of a spot as seen, counterclockwise from the right, 0 to 360.
double bearing(Spot a) {
  const double degrees = std::atan2(-a.y, a.x) * 180 / pi;
  return degrees < 0 ? degrees + 360 : degrees;
}

struct Wedge {  // an angle on paper
  double from = 0, span = 0;
  double middle() const { return from + span / 2; }
};

struct Drafter {
  const Picture& picture;
  Drawing drawing;
  std::vector<Spot> at;
  std::vector<Label> labels;

  void place_points(const Paper& paper);
  void draw_lines();
  void draw_ticks();
  void draw_angles();
  void name_points();

  double share_without_crossing(Spot a, Spot b) const;
  static std::size_t index(int i) { return static_cast<std::size_t>(i); }
  Wedge wedge_of(const Picture::Angle& angle) const;
  double nesting(std::size_t which, const std::vector<Wedge>& wedges) const;
  void label_angle(const Picture::Angle& angle, Wedge wedge, double radius);
};

void Drafter::place_points(const Paper& paper) {
  double left = 1e300, right = -1e300, low = 1e300, high = -1e300;
  const auto include = [&](double x, double y) {
    left = std::min(left, x), right = std::max(right, x);
    low = std::min(low, y), high = std::max(high, y);
  };
  for (const auto& p : picture.points) include(p.x, p.y);
  for (const auto& c : picture.circles) {
    include(c.x - c.radius, c.y - c.radius);
    include(c.x + c.radius, c.y + c.radius);
  }
  if (picture.points.empty()) left = right = low = high = 0;
  const double wide = std::max(right - left, 1e-9), tall = std::max(high - low, 1e-9);
  const double scale = std::min((paper.width - 2 * edge) / wide, (paper.height - 2 * edge) / tall);
  drawing.width = scale * wide + 2 * edge;
  drawing.height = scale * tall + 2 * edge;
  for (const auto& p : picture.points) at.push_back({edge + scale * (p.x - left), edge + scale * (high - p.y)});
  for (const auto& c : picture.circles)
    drawing.rounds.push_back({{edge + scale * (c.x - left), edge + scale * (high - c.y)}, scale * c.radius});
}

void Drafter::draw_lines() {
  for (const auto& line : picture.lines) {
    Spot a = at[index(line.a)], b = at[index(line.b)];
    const Spot along = unit(b - a);
    if (line.beyond) {
      a = a - beyond_end * along;
      b = b + beyond_end * along;
    }
    drawing.strokes.push_back({{a, b}, Stroke::Weight::line, line.dashed, false});
    // Arrowheads stand at the middle, or where no ticks are.
    const bool ticked = std::any_of(picture.ticks.begin(), picture.ticks.end(), [&](const auto& t) {
      return t.ticks > 0 && std::minmax(t.a, t.b) == std::minmax(line.a, line.b);
    });
    // One sense for all lines of one direction, so that the arrowheads agree.
    const Spot sense = along.x < -1e-9 || (std::fabs(along.x) <= 1e-9 && along.y > 0) ? -1 * along : along;
    const Spot middle = a + (ticked ? 0.38 : 0.5) * (b - a);
    for (int i = 0; i < line.arrowheads; ++i) {
      const Spot tip = middle + (arrow_length / 2 + arrow_gap * (i - (line.arrowheads - 1) / 2.0)) * sense;
      const Spot back = tip - arrow_length * sense;
      drawing.strokes.push_back({{back + 0.5 * arrow_length * across(sense), tip, back - 0.5 * arrow_length * across(sense)},
                                 Stroke::Weight::mark, false, false});
    }
  }
}

// Where ticks stand on a segment: at its middle, or beside it where another line passes there.
double Drafter::share_without_crossing(Spot a, Spot b) const {
  const auto crossed = [&](Spot p) {
    for (const auto& line : picture.lines) {
      const Spot c = at[index(line.a)], along = unit(at[index(line.b)] - c), side = across(along);
      const Spot v = p - c;
      const double off = std::fabs(v.x * side.x + v.y * side.y), place = v.x * along.x + v.y * along.y;
      const Spot own = unit(b - a);
      if (std::fabs(own.x * along.y - own.y * along.x) < 1e-6) continue;  // its own line
      if (off < tick_length && place > -1 && place < norm(at[index(line.b)] - c) + 1) return true;
    }
    return false;
  };
  for (const double share : {0.5, 0.44, 0.56, 0.38, 0.62, 0.32, 0.68})
    if (!crossed(a + share * (b - a))) return share;
  return 0.5;
}

void Drafter::draw_ticks() {
  for (const auto& tick : picture.ticks) {
    const Spot a = at[index(tick.a)], b = at[index(tick.b)], along = unit(b - a), side = across(along);
    const double slant = 0.25;  // a tick that leans a little is not taken for a crossing line
    const Spot middle = a + share_without_crossing(a, b) * (b - a);
    for (int i = 0; i < tick.ticks; ++i) {
      const Spot foot = middle + tick_gap * (i - (tick.ticks - 1) / 2.0) * along;
      const Spot half = (tick_length / 2) * unit(side + slant * along);
      drawing.strokes.push_back({{foot - half, foot + half}, Stroke::Weight::mark, false, false});
    }
    if (tick.size.empty()) continue;
    Label label{{{}, tick.size, number_size, text_width(tick.size, number_size), false}, {}};
    for (const double share : {0.5, 0.4, 0.6, 0.3, 0.7})
      for (const double sign : {1.0, -1.0})
        for (const double gap : {1.2, 2.2}) {
          const double reach = gap + (std::fabs(side.x) * label.text.width + std::fabs(side.y) * label.text.size) / 2;
          label.places.push_back({a + share * (b - a) + (sign * reach) * side, 4 * std::fabs(share - 0.5) + 0.5 * gap});
        }
    labels.push_back(std::move(label));
  }
}

Wedge Drafter::wedge_of(const Picture::Angle& angle) const {
  const Spot v = at[index(angle.vertex)];
  const double p = bearing(at[index(angle.arm1)] - v), q = bearing(at[index(angle.arm2)] - v);
  double span = std::fmod(q - p + 360, 360);
  Wedge wedge{p, span};
  if (span > 180) wedge = {q, 360 - span};
  if (angle.reflex) wedge = {wedge.from + wedge.span, 360 - wedge.span};
  return wedge;
}

// How many smaller marked angles at the same corner lie under this one: each takes a step of the radius.
double Drafter::nesting(std::size_t which, const std::vector<Wedge>& wedges) const {
  double steps = 0;
  for (std::size_t i = 0; i < wedges.size(); ++i) {
    if (i == which || picture.angles[i].vertex != picture.angles[which].vertex || picture.angles[i].right) continue;
    const double begin = std::fmod(wedges[i].from - wedges[which].from + 720, 360);
    const bool shares = begin < wedges[which].span - 1e-6 || begin + wedges[i].span > 360 + 1e-6;
    const bool smaller = wedges[i].span < wedges[which].span - 1e-6 || (wedges[i].span < wedges[which].span + 1e-6 && i < which);
    if (shares && smaller) steps += 1;
  }
  return steps;
}

void Drafter::label_angle(const Picture::Angle& angle, Wedge wedge, double radius) {
  if (angle.size.empty()) return;
  Label label{{{}, angle.size, number_size, text_width(angle.size, number_size), false}, {}};
  const Spot v = at[index(angle.vertex)];
  const double half = std::max(std::hypot(label.text.width, label.text.size) / 2, 1.0);
  // Within the angle: as near to the arc as the arms allow, straight ahead or a little aside.
  for (double distance = radius + 0.7 * half; distance < radius + 26; distance += 1.0)
    for (const double turn : {0.0, 0.22, -0.22}) {
      const double aside = turn * wedge.span;
      label.places.push_back({v + distance * toward(wedge.middle() + aside), 0.35 * (distance - radius) + 2 * std::fabs(turn)});
    }
  // Between the corner and the arc, for angles that are wide.
  if (wedge.span > 100)
    for (const double distance : {0.55 * radius, 0.7 * radius}) label.places.push_back({v + distance * toward(wedge.middle()), 3});
  labels.push_back(std::move(label));
}

void Drafter::draw_angles() {
  std::vector<Wedge> wedges;
  for (const auto& angle : picture.angles) wedges.push_back(wedge_of(angle));
  for (std::size_t i = 0; i < wedges.size(); ++i) {
    const auto& angle = picture.angles[i];
    const Spot v = at[index(angle.vertex)];
    const double shortest = std::min(norm(at[index(angle.arm1)] - v), norm(at[index(angle.arm2)] - v));
    if (angle.right) {
      const double side = std::min(square_side, 0.4 * shortest);
      const Spot p = side * toward(wedges[i].from), q = side * toward(wedges[i].from + wedges[i].span);
      drawing.strokes.push_back({{v + p, v + p + q, v + q}, Stroke::Weight::mark, false, false});
      if (!angle.size.empty()) label_angle(angle, wedges[i], 1.2 * side);
      continue;
    }
    // A narrow angle needs a wider arc to be seen; short arms allow no more than they are long.
    const double wanted = arc_radius + arc_nest * nesting(i, wedges) + (wedges[i].span < 25 ? 3.0 : 0.0);
    const double radius = std::max(2.0, std::min(wanted, 0.8 * shortest));
    for (int arc = 0; arc < angle.arcs; ++arc)
      drawing.rounds.push_back({v, radius + arc_step * arc, wedges[i].from, wedges[i].from + wedges[i].span, Stroke::Weight::mark});
    label_angle(angle, wedges[i], radius + arc_step * std::max(0, angle.arcs - 1));
  }
}

void Drafter::name_points() {
  Spot middle;
  for (const Spot& p : at) middle = middle + (1.0 / static_cast<double>(at.size())) * p;
  for (std::size_t i = 0; i < at.size(); ++i) {
    const auto& point = picture.points[i];
    if (point.dot) drawing.dots.push_back({at[i], dot_radius});
    if (point.letter.empty()) continue;
    Label label{{{}, point.letter, letter_size, text_width(point.letter, letter_size), true}, {}};
    const double outward = bearing(at[i] - middle);
    for (const double gap : {1.3, 2.0, 2.8, 3.8})
      for (int step = 0; step < 24; ++step) {
        const double angle = outward + 15 * ((step + 1) / 2) * (step % 2 == 0 ? 1 : -1);
        const Spot direction = toward(angle);
        // To the letter's middle, so that its box keeps the gap.
        const double reach = gap + std::fabs(direction.x) * label.text.width / 2 + std::fabs(direction.y) * label.text.size / 2;
        const Spot place = at[i] + reach * direction;
        double cost = 1.2 * gap + 0.06 * step;
        // Nearer to another point than to its own, a letter would name the wrong one.
        for (std::size_t j = 0; j < at.size(); ++j)
          if (j != i && norm(at[j] - place) < 1.15 * norm(at[i] - place)) cost += 6;
        label.places.push_back({place, cost});
      }
    labels.push_back(std::move(label));
  }
}

}  // namespace

Drawing draw(const Picture& picture, const Paper& paper) {
  Drafter drafter{picture, {}, {}, {}};
  drafter.drawing.caption = picture.caption;
  drafter.drawing.description = picture.description;
  drafter.place_points(paper);
  drafter.draw_lines();
  drafter.draw_ticks();
  drafter.draw_angles();
  drafter.name_points();
  place_labels(std::move(drafter.labels), drafter.drawing);
  return std::move(drafter.drawing);
}

}  // namespace frontend
