#include "prover/evidence/line_candidates.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace prover {

namespace {

using Point = std::array<double, 2>;
using Place = std::optional<Point>;

Point operator-(const Point& a, const Point& b) { return {a[0] - b[0], a[1] - b[1]}; }
Point along(const Point& a, const Point& u, double t) { return {a[0] + t * u[0], a[1] + t * u[1]}; }
double dot(const Point& a, const Point& b) { return a[0] * b[0] + a[1] * b[1]; }
double cross(const Point& a, const Point& b) { return a[0] * b[1] - a[1] * b[0]; }
double length(const Point& a) { return std::sqrt(dot(a, a)); }
Point unit(const Point& a) { return {a[0] / length(a), a[1] / length(a)}; }

Place meet(const Point& a, const Point& u, const Point& b, const Point& v) {
  const double d = cross(u, v);
  if (std::fabs(d) < 1e-6 * length(u) * length(v)) return std::nullopt;
  return along(a, u, cross(b - a, v) / d);
}

// 1 when c is left of the line from a to b, −1 when it is right.
int side(const Point& a, const Point& b, const Point& c) { return cross(b - a, c - a) > 0 ? 1 : -1; }

class Candidates {
 public:
  Candidates(const Statement& statement, const Arrangement& lines, const Sketch& figure, std::string name)
      : statement_(statement), lines_(lines), figure_(figure), x_(std::move(name)) {
    for (std::size_t i = 0; i < lines.point_count(); ++i)
      if (!statement.hidden[i]) points_.emplace_back(static_cast<std::int64_t>(i));
    for (std::size_t i = 0; i < lines.line_count(); ++i) {
      std::vector<PointId> on;
      for (const PointId p : lines.points_on(LineId(static_cast<std::int64_t>(i))))
        if (!statement.hidden[p.index()]) on.push_back(p);
      if (on.size() >= 2) drawn_.push_back(on);
    }
  }

  std::vector<LineCandidate> all() {
    meeting_points();
    from_points_to_lines();
    on_lines();
    on_segments();
    bisectors();
    return std::move(out_);
  }

 private:
  const std::string& n(PointId p) const { return statement_.names.of(p); }
  std::string seg(PointId a, PointId b) const { return n(a) + n(b); }
  static const Point& at(const Sketch& f, PointId p) { return f.points[p.index()]; }
  bool on(const std::vector<PointId>& line, PointId p) const { return std::find(line.begin(), line.end(), p) != line.end(); }

  void add(std::string sentence, std::string words, std::function<Place(const Sketch&)> place, int built_in, int effort) {
    const Place here = place(figure_);
    if (!here || !std::isfinite((*here)[0]) || !std::isfinite((*here)[1])) return;
    double size = 0;
    for (const PointId p : points_) size = std::max(size, length(at(figure_, p) - at(figure_, points_[0])));
    for (const PointId p : points_)
      if (length(at(figure_, p) - *here) < 1e-4 * size) return;  // a point that has a name
    if (length(*here - at(figure_, points_[0])) > 20 * size) return;
    out_.push_back({std::move(sentence), std::move(words), std::move(place), built_in, effort});
  }

  void meeting_points() {
    for (std::size_t i = 0; i < drawn_.size(); ++i)
      for (std::size_t j = i + 1; j < drawn_.size(); ++j) {
        const auto& l = drawn_[i];
        const auto& m = drawn_[j];
        if (std::any_of(l.begin(), l.end(), [&](PointId p) { return on(m, p); })) continue;
        const PointId a = l[0], b = l[1], c = m[0], d = m[1];
        add(fmt::format("meet: {} is where lines {} and {} meet", x_, seg(a, b), seg(c, d)),
            fmt::format("let the lines {} and {} meet at {}", seg(a, b), seg(c, d), x_),
            [=](const Sketch& f) { return meet(at(f, a), at(f, b) - at(f, a), at(f, c), at(f, d) - at(f, c)); }, 2, 0);
      }
  }

  void from_points_to_lines() {
    for (const auto& l : drawn_)
      for (const PointId p : points_) {
        if (on(l, p)) continue;
        const PointId a = l[0], b = l[1];
        add(fmt::format("collinear: {}, {}, {}; perpendicular: {}{}, {}", n(a), x_, n(b), n(p), x_, seg(a, b)),
            fmt::format("drop the perpendicular {}{} to {}", n(p), x_, seg(a, b)),
            [=](const Sketch& f) -> Place {
              const Point u = unit(at(f, b) - at(f, a));
              return along(at(f, a), u, dot(at(f, p) - at(f, a), u));
            },
            2, 1);
        mirror(p, a, b);
        for (const auto& m : drawn_) {
          if (&m == &l || on(m, p)) continue;
          const PointId c = m[0], d = m[1];
          add(fmt::format("parallel: {}{}, {}; collinear: {}, {}, {}", n(p), x_, seg(a, b), n(c), x_, n(d)),
              fmt::format("draw through {} the parallel to {}, which meets {} at {}", n(p), seg(a, b), seg(c, d), x_),
              [=](const Sketch& f) { return meet(at(f, p), at(f, b) - at(f, a), at(f, c), at(f, d) - at(f, c)); }, 1, 2);
        }
      }
  }

  void mirror(PointId p, PointId a, PointId b) {
    add(fmt::format("equal lengths: {0}{1} = {0}{2}; equal lengths: {3}{1} = {3}{2}; sides: {1} and {2} on opposite sides of {0}{3}",
                    n(a), x_, n(p), n(b)),
        fmt::format("let {} be the mirror image of {} in {}", x_, n(p), seg(a, b)),
        [=](const Sketch& f) -> Place {
          const Point u = unit(at(f, b) - at(f, a));
          const Point foot = along(at(f, a), u, dot(at(f, p) - at(f, a), u));
          return along(foot, foot - at(f, p), 1);
        },
        2, 4);
  }

  // On a ray from a through b: a length laid off, or an isosceles triangle with a point beside the line.
  void on_lines() {
    std::vector<std::pair<PointId, PointId>> segments;
    for (const auto& l : drawn_)
      for (std::size_t i = 0; i < l.size(); ++i)
        for (std::size_t j = i + 1; j < l.size(); ++j) segments.emplace_back(l[i], l[j]);
    for (const auto& l : drawn_)
      for (const PointId a : l)
        for (const PointId b : l) {
          if (a == b) continue;
          for (const auto& [c, d] : segments)
            lay_off(a, b, c, d);
          if (a < b)
            for (const PointId p : points_)
              for (const PointId q : points_)
                if (!on(l, p) && p != q && (lines_.line(p, q).valid())) swing(a, b, p, q);
        }
  }

  std::string order_of(PointId a, PointId b, double t, double whole) const {
    if (t < 0) return fmt::format("line: {}, {}, {} in this order", x_, n(a), n(b));
    if (t < whole) return fmt::format("line: {}, {}, {} in this order", n(a), x_, n(b));
    return fmt::format("line: {}, {}, {} in this order", n(a), n(b), x_);
  }

  void lay_off(PointId a, PointId b, PointId c, PointId d) {
    const Point u = at(figure_, b) - at(figure_, a);
    const double t = length(at(figure_, d) - at(figure_, c)), whole = length(u);
    if ((a == c && b == d) || (a == d && b == c)) return;
    // One of several points b names the ray: the nearest beyond, or the last before.
    for (const bool beyond : {false, true}) {
      if (beyond && t < whole) continue;  // in the ray's own sense
      const double s = beyond ? whole + t : t;
      if (beyond && !(lines_.line(a, b) == lines_.line(c, d) || a == c || a == d || b == c || b == d)) continue;
      const PointId from = beyond ? b : a;
      add(fmt::format("{}; equal lengths: {}{} = {}", order_of(a, b, s, whole), n(from), x_, seg(c, d)),
          beyond ? fmt::format("produce {} beyond {} to {} with {}{} = {}", seg(a, b), n(b), x_, n(b), x_, seg(c, d))
                 : fmt::format("mark {} on the ray {} with {}{} = {}", x_, seg(a, b), n(a), x_, seg(c, d)),
          [=](const Sketch& f) -> Place {
            const Point v = at(f, b) - at(f, a);
            const double r = length(at(f, d) - at(f, c));
            return along(at(f, a), unit(v), beyond ? length(v) + r : r);
          },
          2, 2);
    }
  }

  // On line ab with px = pq.
  void swing(PointId a, PointId b, PointId p, PointId q) {
    for (const double sense : {1.0, -1.0}) {
      const auto place = [=](const Sketch& f) -> Place {
        const Point u = unit(at(f, b) - at(f, a));
        const double foot = dot(at(f, p) - at(f, a), u);
        const double height = std::fabs(cross(u, at(f, p) - at(f, a))), r = length(at(f, q) - at(f, p));
        if (r <= height * (1 + 1e-9)) return std::nullopt;
        return along(at(f, a), u, foot + sense * std::sqrt(r * r - height * height));
      };
      const Place here = place(figure_);
      if (!here) continue;
      const Point u = at(figure_, b) - at(figure_, a);
      const double t = dot(*here - at(figure_, a), unit(u));
      add(fmt::format("{}; equal lengths: {}{} = {}", order_of(a, b, t, length(u)), n(p), x_, seg(p, q)),
          fmt::format("mark {} on the line {} with {}{} = {}", x_, seg(a, b), n(p), x_, seg(p, q)), place, 2, 3);
    }
  }

  void on_segments() {
    for (std::size_t i = 0; i < points_.size(); ++i)
      for (std::size_t j = i + 1; j < points_.size(); ++j) {
        const PointId a = points_[i], b = points_[j];
        if (!lines_.line(a, b).valid()) continue;
        add(fmt::format("midpoint: {} of {}", x_, seg(a, b)), fmt::format("mark the midpoint {} of {}", x_, seg(a, b)),
            [=](const Sketch& f) -> Place { return along(at(f, a), at(f, b) - at(f, a), 0.5); }, 2, 0);
        // A point that says which side is meant.
        const auto beside = std::find_if(points_.begin(), points_.end(), [&](PointId p) {
          return p != a && p != b && std::fabs(cross(at(figure_, b) - at(figure_, a), at(figure_, p) - at(figure_, a))) > 1e-6;
        });
        if (beside == points_.end()) continue;
        const PointId p = *beside;
        const int turn = side(at(figure_, a), at(figure_, b), at(figure_, p));
        for (const bool same : {true, false}) {
          const double height = (same ? turn : -turn) * std::sqrt(3.0) / 2;
          add(fmt::format("equal lengths: {0}{1} = {2}{1} = {0}{2}; sides: {1} and {3} on {4} of {0}{2}", n(a), x_, n(b), n(p),
                          same ? "the same side" : "opposite sides"),
              fmt::format("build the equilateral triangle {}{} on the side of {} {}", seg(a, b), x_, seg(a, b),
                          same ? "where " + n(p) + " is" : "away from " + n(p)),
              [=](const Sketch& f) -> Place {
                const Point u = at(f, b) - at(f, a), left{-u[1], u[0]};
                return along(along(at(f, a), u, 0.5), left, height);
              },
              3, 3);
        }
      }
  }

  void bisectors() {
    for (const PointId v : points_)
      for (const PointId a : points_)
        for (const PointId c : points_) {
          if (!(a < c) || v == a || v == c || !lines_.line(v, a).valid() || !lines_.line(v, c).valid() ||
              lines_.line(v, a) == lines_.line(v, c) || !lines_.line(a, c).valid())
            continue;
          add(fmt::format("line: {0}, {1}, {2} in this order; bisects: ray {3}{1} bisects angle {0}{3}{2}", n(a), x_, n(c), n(v)),
              fmt::format("draw the bisector of angle {}{}{}, which meets {} at {}", n(a), n(v), n(c), seg(a, c), x_),
              [=](const Sketch& f) -> Place {
                const double p = length(at(f, a) - at(f, v)), q = length(at(f, c) - at(f, v));
                return along(at(f, a), at(f, c) - at(f, a), p / (p + q));
              },
              1, 1);
        }
  }

  const Statement& statement_;
  const Arrangement& lines_;
  const Sketch& figure_;
  std::string x_;
  std::vector<PointId> points_;
  std::vector<std::vector<PointId>> drawn_;
  std::vector<LineCandidate> out_;
};

}  // namespace

std::vector<LineCandidate> line_candidates(const Statement& statement, const Arrangement& lines, const Sketch& figure,
                                           const std::string& name) {
  return Candidates(statement, lines, figure, name).all();
}

int coincidences(const std::array<double, 2>& x, const Sketch& figure, const std::vector<bool>& hidden) {
  constexpr double near = 1e-6;
  std::vector<Point> points;
  for (std::size_t i = 0; i < figure.points.size() && i < hidden.size(); ++i)
    if (!hidden[i]) points.push_back(figure.points[i]);
  std::vector<double> old;
  for (std::size_t i = 0; i < points.size(); ++i)
    for (std::size_t j = i + 1; j < points.size(); ++j) old.push_back(length(points[i] - points[j]));
  const double size = old.empty() ? 1 : *std::max_element(old.begin(), old.end());
  std::vector<double> fresh;
  for (const Point& p : points) fresh.push_back(length(p - x));
  const auto equal = [&](double a, double b) { return std::fabs(a - b) < near * size; };
  int shown = 0;
  for (std::size_t i = 0; i < fresh.size(); ++i) {
    shown += std::any_of(old.begin(), old.end(), [&](double l) { return equal(l, fresh[i]); });
    for (std::size_t j = i + 1; j < fresh.size(); ++j) {
      shown += equal(fresh[i], fresh[j]);
      const Point u = unit(points[i] - x), v = unit(points[j] - x);
      shown += std::fabs(cross(u, v)) < near ? 1 : 0;                // in line
      shown += std::fabs(dot(u, v)) < near ? 1 : 0;                  // a right angle
    }
  }
  return shown;
}

}  // namespace prover
