#include "prover/motion/existence.hpp"

#include <Eigen/LU>
#include <Eigen/QR>
#include <algorithm>
#include <cmath>

#include "prover/sketch/plane.hpp"
#include "prover/sketch/solve.hpp"
#include "prover/sketch/variables.hpp"

namespace prover::motion {

using namespace sketching;

namespace {

constexpr double radii[] = {1e-11, 1e-9, 1e-7};  // of the box, by a figure about 2 wide
constexpr double holds_to = 1e-9;
constexpr double rank_threshold = 1e-7;

bool same(const Constraint& a, const Constraint& b) {
  if (a.form != b.form || a.constant != b.constant || a.terms.size() != b.terms.size()) return false;
  for (std::size_t i = 0; i < a.terms.size(); ++i) {
    const Summand &s = a.terms[i], &t = b.terms[i];
    if (s.kind != t.kind || s.coefficient != t.coefficient || s.a != t.a || s.b != t.b || s.c != t.c) return false;
  }
  return true;
}

// What must hold at the figure: of each clause the branch that does.
struct Conditions {
  std::vector<const Constraint*> equations, positions;
};
std::optional<Conditions> conditions(const System& system, const std::vector<double>& x) {
  Conditions result;
  for (const Clause& clause : system.clauses()) {
    if (clause.steers) continue;
    const Branch* holding = nullptr;
    for (const Branch& branch : clause.branches)
      if (!holding && violation(branch, system.layout(), x.data(), 0) <= holds_to) holding = &branch;
    if (!holding) return std::nullopt;
    for (const Constraint& constraint : *holding) {
      std::vector<const Constraint*>& list = constraint.equation ? result.equations : result.positions;
      if (std::none_of(list.begin(), list.end(), [&](const Constraint* c) { return same(*c, constraint); }))
        list.push_back(&constraint);
    }
  }
  return result;
}

Box box_round(const std::vector<double>& x, const std::vector<int>& variables, double radius) {
  Box box{x, {}};
  for (const double value : x) box.ranges.emplace_back(value);
  for (const int v : variables) {
    const auto i = static_cast<std::size_t>(v);
    box.ranges[i] = Interval(x[i] - radius, x[i] + radius);
  }
  return box;
}

// The Newton image of the box lies inside it.
bool maps_into_itself(const std::vector<const Constraint*>& equations, const std::vector<int>& variables,
                      const Eigen::MatrixXd& inverse, const Layout& layout, const Box& box) {
  const std::size_t n = equations.size();
  std::vector<Enclosure> rows;
  for (const Constraint* equation : equations) {
    auto row = enclose(*equation, layout, box);
    if (!row) return false;
    rows.push_back(std::move(*row));
  }
  for (std::size_t i = 0; i < n; ++i) {
    Interval moved(0.0);
    std::vector<Interval> remains(n, Interval(0.0));  // row i of 1 - inverse · slopes
    remains[i] = Interval(1.0);
    for (std::size_t k = 0; k < n; ++k) {
      const Interval by(inverse(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(k)));
      moved -= by * rows[k].at_middle;
      for (std::size_t j = 0; j < n; ++j)
        if (const auto slope = rows[k].slopes.find(variables[j]); slope != rows[k].slopes.end())
          remains[j] -= by * slope->second;
    }
    for (std::size_t j = 0; j < n; ++j) {
      const auto v = static_cast<std::size_t>(variables[j]);
      moved += remains[j] * (box.ranges[v] - Interval(box.middle[v]));
    }
    const auto v = static_cast<std::size_t>(variables[i]);
    const Interval image = moved + Interval(box.middle[v]);
    if (!boost::numeric::proper_subset(image, box.ranges[v]) || !(image.lower() > box.ranges[v].lower()) ||
        !(image.upper() < box.ranges[v].upper()))
      return false;
  }
  return true;
}

bool positions_hold(const std::vector<const Constraint*>& positions, const Layout& layout, const Box& box) {
  return std::all_of(positions.begin(), positions.end(), [&](const Constraint* position) {
    if (position->form == Form::winding) return winds_alike(*position, box);
    const auto enclosure = enclose(*position, layout, box);
    return enclosure && enclosure->over(box).lower() > 0;
  });
}

}  // namespace

std::optional<Existence> Existence::of(const std::vector<Phrase>& givens, const Sketch& figure) {
  const Units units = units_of(givens, figure.points.size());
  const System system(givens, units.layout);
  if (!system.has_branches()) return std::nullopt;
  const std::vector<double> x = variables_of(figure, units);
  const auto wanted = conditions(system, x);
  if (!wanted) return std::nullopt;
  const std::size_t n = wanted->equations.size();
  std::vector<int> variables;
  Eigen::MatrixXd inverse;
  if (n > 0) {
    Eigen::MatrixXd slopes = Eigen::MatrixXd::Zero(static_cast<Eigen::Index>(n), static_cast<Eigen::Index>(x.size()));
    Gradient gradient(x.size());
    for (std::size_t i = 0; i < n; ++i) {
      // Rows as the enclosures have them: a division by a size makes no difference where the value is 0, but for scale.
      evaluate(*wanted->equations[i], units.layout, x.data(), &gradient);
      for (const int j : gradient.touched()) slopes(static_cast<Eigen::Index>(i), j) = gradient[j];
    }
    Eigen::ColPivHouseholderQR<Eigen::MatrixXd> pivots(slopes);
    pivots.setThreshold(rank_threshold);
    if (pivots.rank() < static_cast<Eigen::Index>(n)) return std::nullopt;
    for (std::size_t k = 0; k < n; ++k)
      variables.push_back(static_cast<int>(pivots.colsPermutation().indices()[static_cast<Eigen::Index>(k)]));
    // The inverse for the enclosures' own rows.
    const Box point = box_round(x, {}, 0);
    Eigen::MatrixXd square = Eigen::MatrixXd::Zero(static_cast<Eigen::Index>(n), static_cast<Eigen::Index>(n));
    for (std::size_t i = 0; i < n; ++i) {
      const auto row = enclose(*wanted->equations[i], units.layout, point);
      if (!row) return std::nullopt;
      for (std::size_t j = 0; j < n; ++j)
        if (const auto slope = row->slopes.find(variables[j]); slope != row->slopes.end())
          square(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) = boost::numeric::median(slope->second);
    }
    inverse = square.partialPivLu().inverse();
    if (!inverse.allFinite()) return std::nullopt;
  }
  for (const double radius : radii) {
    Existence result;
    result.box_ = box_round(x, variables, radius);
    if (!maps_into_itself(wanted->equations, variables, inverse, units.layout, result.box_)) continue;
    if (!positions_hold(wanted->positions, units.layout, result.box_)) return std::nullopt;
    result.layout_ = units.layout;
    result.within_ = radius;
    return result;
  }
  return std::nullopt;
}

std::optional<Existence::Bounds> Existence::bounds(const Expression& quantity) const {
  const auto enclosure = enclose(quantity, layout_, box_);
  if (!enclosure) return std::nullopt;
  const Interval range = enclosure->over(box_);
  return Bounds{range.lower(), range.upper()};
}

bool Existence::breaks(const Phrase& claim) const {
  for (const Clause& clause : clauses_of(claim, layout_)) {
    if (clause.steers) continue;
    const bool every_branch_fails = std::all_of(clause.branches.begin(), clause.branches.end(), [&](const Branch& branch) {
      return std::any_of(branch.begin(), branch.end(), [&](const Constraint& constraint) {
        const auto enclosure = enclose(constraint, layout_, box_);
        if (!enclosure) return false;
        const Interval range = enclosure->over(box_);
        return constraint.equation ? !boost::numeric::zero_in(range) : range.upper() < 0;
      });
    });
    if (every_branch_fails) return true;
  }
  return false;
}

}  // namespace prover::motion
