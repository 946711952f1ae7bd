#include "prover/evidence/settling_candidates.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "prover/language/phrase_points.hpp"
#include "prover/statement/figure_text.hpp"

namespace prover {

namespace {

using Pair = std::pair<PointId, PointId>;
using Corner = std::tuple<PointId, PointId, PointId>;  // vertex, and a point for each ray, in order

Pair sorted(PointId a, PointId b) { return a < b ? Pair{a, b} : Pair{b, a}; }

Expression quantity_of(Quantity quantity) {
  Expression expression;
  expression.terms.push_back({1, std::move(quantity), {}});
  return expression;
}

Phrase equal(Expression left, Expression right) {
  Phrase phrase;
  phrase.relation.expressions = {std::move(left), std::move(right)};
  phrase.relation.comparisons = {Comparison::equal};
  return phrase;
}

class Collector {
 public:
  Collector(const Statement& statement, const Arrangement& arrangement, const Sketch& figure, const Expression& asked)
      : statement_(statement), arrangement_(arrangement), figure_(figure) {
    for (const Term& term : asked.terms) {
      if (const auto* angle = std::get_if<Angle>(&term.quantity)) {
        asked_.insert(corner(angle->vertex, angle->arm1, angle->arm2));
        in_words_.push_back(*angle);
      }
      asks_length_ = asks_length_ || std::holds_alternative<Segment>(term.quantity);
    }
    alone_ = asked.terms.size() == 1;
    for (const Given& given : statement.givens) read(given.phrase);
    for (const Goal& goal : statement.goals)
      for (const Phrase& claim : goal.claims) read(claim);
  }

  std::vector<SettlingCandidate> collect() {
    for (std::size_t v = 0; v < figure_.points.size(); ++v) angles_at(PointId(static_cast<std::int64_t>(v)));
    equal_lengths();
    parallels();
    midpoints();
    on_segments();
    if (asks_length_) lengths();
    std::stable_sort(found_.begin(), found_.end(),
                     [](const SettlingCandidate& a, const SettlingCandidate& b) { return a.cost < b.cost; });
    return std::move(found_);
  }

 private:
  const Statement& statement_;
  const Arrangement& arrangement_;
  const Sketch& figure_;
  std::set<Corner> asked_, named_;
  std::vector<Angle> in_words_;  // angles as the text writes them
  std::set<Pair> drawn_;
  std::vector<Pair> segments_;   // the same, in the order of the text
  bool asks_length_ = false, alone_ = false;
  std::vector<SettlingCandidate> found_;

  bool hidden(PointId p) const {  // of a line with a letter, or a centre without a name
    const std::string& name = statement_.names.of(p);
    return statement_.hidden[p.index()] || name.empty() || name[0] < 'A' || name[0] > 'Z';
  }
  Corner corner(PointId vertex, PointId a, PointId b) const {
    const Pair rays = sorted(arrangement_.ray(vertex, a), arrangement_.ray(vertex, b));
    return {vertex, rays.first, rays.second};
  }
  void name(PointId a, PointId vertex, PointId b) {
    if (named_.insert(corner(vertex, a, b)).second) in_words_.push_back({std::min(a, b), vertex, std::max(a, b)});
  }
  void read(const Phrase& phrase) {
    for (const auto& [a, b] : drawn_pairs(phrase))
      if (a != b && !hidden(a) && !hidden(b) && drawn_.insert(sorted(a, b)).second) segments_.push_back(sorted(a, b));
    const auto& p = phrase.points;
    for (const Expression& expression : phrase.relation.expressions)
      for (const Term& term : expression.terms)
        if (const auto* angle = std::get_if<Angle>(&term.quantity)) name(angle->arm1, angle->vertex, angle->arm2);
    switch (phrase.predicate) {
      case Predicate::triangle:
      case Predicate::acute:
      case Predicate::isosceles:
      case Predicate::isosceles_at:
      case Predicate::right_angled:
      case Predicate::convex:
      case Predicate::simple_polygon:
      case Predicate::parallelogram:
      case Predicate::rhombus:
      case Predicate::kite:
      case Predicate::trapezium:
        for (std::size_t i = 0; i < p.size(); ++i) name(p[(i + p.size() - 1) % p.size()], p[i], p[(i + 1) % p.size()]);
        break;
      case Predicate::bisects: name(p[1], p[2], p[3]); break;
      default: break;  // other sentences name no angles
    }
  }

  // An angle as the text writes it, where it does.
  Angle written(PointId vertex, PointId a, PointId b) const {
    const Corner wanted = corner(vertex, a, b);
    for (const Angle& angle : in_words_)
      if (corner(angle.vertex, angle.arm1, angle.arm2) == wanted) return {angle.arm1, angle.vertex, angle.arm2};
    return {a, vertex, b};
  }
  bool straight(PointId vertex, PointId a, PointId b) const { return orientation(figure_, vertex, a, b) == 0; }
  // Beside the asked angle on a straight line, or opposite to it: to give it is all but to give the answer.
  bool gives_away(PointId vertex, PointId a, PointId b) const {
    for (const auto& [v, p, q] : asked_) {
      if (v != vertex) continue;
      const auto along = [&](PointId r, PointId s) { return straight(vertex, r, s); };
      if ((along(a, p) && along(b, q)) || (along(a, q) && along(b, p))) return true;
    }
    return false;
  }

  void angles_at(PointId vertex) {
    if (hidden(vertex)) return;
    const auto& rays = arrangement_.rays_at(vertex);
    for (std::size_t i = 0; i < rays.size(); ++i)
      for (std::size_t k = i + 1; k < rays.size(); ++k) {
        const PointId a = rays[i], b = rays[k];
        if (hidden(a) || hidden(b) || straight(vertex, a, b)) continue;
        if (arrangement_.is_joined(arrangement_.line(vertex, a)) || arrangement_.is_joined(arrangement_.line(vertex, b))) continue;
        const bool named = named_.contains(corner(vertex, a, b));
        const Angle angle = written(vertex, a, b);
        const bool drawn = drawn_.contains(sorted(vertex, angle.arm1)) && drawn_.contains(sorted(vertex, angle.arm2));
        const double cost = named ? 1 : drawn ? 1.4 : 2.6;
        const bool is_asked = asked_.contains(corner(vertex, a, b));
        if (!(is_asked && alone_)) {
          SettlingCandidate size{SettlingCandidate::Kind::angle, {}, quantity_of(angle), cost + (gives_away(vertex, a, b) ? 3 : 0)};
          found_.push_back(std::move(size));
          SettlingCandidate right{SettlingCandidate::Kind::right_angle,
                                  phrase_of(Predicate::perpendicular, {angle.vertex, angle.arm1, angle.vertex, angle.arm2}), {},
                                  cost + 0.9};
          if (!is_asked && !gives_away(vertex, a, b)) found_.push_back(std::move(right));
        }
        for (const PointId d : rays)
          if (d != a && d != b && !hidden(d) && !arrangement_.is_joined(arrangement_.line(vertex, d)) && inside(d, vertex, a, b))
            found_.push_back({SettlingCandidate::Kind::bisector,
                              phrase_of(Predicate::bisects, {d, angle.arm1, vertex, angle.arm2}), {}, named ? 1.7 : 2.9});
      }
  }
  bool inside(PointId d, PointId v, PointId a, PointId b) const {
    const int turn = orientation(figure_, v, a, b);
    return orientation(figure_, v, a, d) == turn && orientation(figure_, v, d, b) == turn;
  }

  void equal_lengths() {
    for (std::size_t i = 0; i < segments_.size(); ++i)
      for (std::size_t k = i + 1; k < segments_.size(); ++k) {
        const auto [a, b] = segments_[i];
        const auto [c, d] = segments_[k];
        double cost = 3.2;
        if (const PointId apex = a == c || a == d ? a : b == c || b == d ? b : PointId(); apex.valid()) {
          const PointId p = a == apex ? b : a, q = c == apex ? d : c;
          if (straight(apex, p, q)) continue;  // a midpoint, or no figure
          cost = drawn_.contains(sorted(p, q)) ? 1.5 : 2.2;
          found_.push_back({SettlingCandidate::Kind::equal_lengths,
                            equal(quantity_of(Segment{a, b}), quantity_of(Segment{c, d})), {}, cost});
          continue;
        }
        found_.push_back({SettlingCandidate::Kind::equal_lengths, equal(quantity_of(Segment{a, b}), quantity_of(Segment{c, d})),
                          {}, cost});
      }
  }

  void parallels() {
    for (std::size_t i = 0; i < segments_.size(); ++i)
      for (std::size_t k = i + 1; k < segments_.size(); ++k) {
        const auto [a, b] = segments_[i];
        auto [c, d] = segments_[k];
        if (a == c || a == d || b == c || b == d) continue;
        if (straight(a, b, c) || straight(a, b, d)) continue;
        const auto& p = figure_.points;
        const double along = (p[b.index()][0] - p[a.index()][0]) * (p[d.index()][0] - p[c.index()][0]) +
                             (p[b.index()][1] - p[a.index()][1]) * (p[d.index()][1] - p[c.index()][1]);
        if (along < 0) std::swap(c, d);  // as a reader sees them run
        found_.push_back({SettlingCandidate::Kind::parallel, phrase_of(Predicate::parallel, {a, b, c, d}), {}, 2});
      }
  }

  void midpoints() {
    for (std::size_t l = 0; l < arrangement_.line_count(); ++l) {
      const LineId line(static_cast<std::int64_t>(l));
      if (arrangement_.is_joined(line)) continue;
      const auto& points = arrangement_.points_on(line);
      for (const PointId m : points)
        for (const PointId a : points)
          for (const PointId b : points)
            if (a < b && m != a && m != b && !hidden(m) && !hidden(a) && !hidden(b) && between(figure_, a, m, b))
              found_.push_back({SettlingCandidate::Kind::midpoint, phrase_of(Predicate::midpoint, {m, a, b}), {},
                                points.size() == 3 ? 1.8 : 2.4});
    }
  }

  // A point that belongs on a side: the sentence that is most often forgotten.
  void on_segments() {
    for (std::size_t i = 0; i < figure_.points.size(); ++i) {
      const PointId p(static_cast<std::int64_t>(i));
      if (hidden(p)) continue;
      for (const auto& [a, b] : segments_)
        if (p != a && p != b && !straight(p, a, b))
          found_.push_back({SettlingCandidate::Kind::on_segment, phrase_of(Predicate::on_segment, {p, a, b}), {}, 1.9});
    }
  }

  void lengths() {
    for (const auto& [a, b] : segments_)
      found_.push_back({SettlingCandidate::Kind::length, {}, quantity_of(Segment{a, b}), 1.2});
  }
};

}  // namespace

std::vector<SettlingCandidate> settling_candidates(const Statement& statement, const Arrangement& arrangement,
                                                   const Sketch& figure, const Expression& asked) {
  return Collector(statement, arrangement, figure, asked).collect();
}

Phrase with_size(const SettlingCandidate& candidate, const Rational& size) {
  return equal(candidate.quantity, Expression{{Term{size, One{}, {}}}, {}});
}

}  // namespace prover
