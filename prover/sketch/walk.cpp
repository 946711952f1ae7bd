// Steps by Newton's method with the pseudo-inverse (newton.hpp): degenerate figures, where equations depend on each other
// or nearly so, are what a walk looks for, and the damped normal equations of solve.cpp do not bear them.
#include "prover/sketch/walk.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

#include "prover/sketch/arrangement.hpp"
#include "prover/sketch/newton.hpp"
#include "prover/sketch/random.hpp"
#include "prover/sketch/solve.hpp"
#include "prover/sketch/starts.hpp"

namespace prover {

using namespace sketching;

namespace {

constexpr double meets = 1e-9;              // equations, as `sketch` has it
constexpr double position_margin = 1e-6;    // positions hold by more than this
constexpr double closest = 1e-5;            // two points, by the figure's size
constexpr double edge = 0.01;               // clearance below which a figure is near its degenerate edge
constexpr double rounding = 64 * std::numeric_limits<double>::epsilon();
constexpr double no_evidence = 1e-5;        // a wider tolerance tells nothing
constexpr std::size_t homes_kept = 64;

double length_of(const Gradient& gradient) {
  double sum = 0;
  for (const int i : gradient.touched()) sum += gradient[i] * gradient[i];
  return std::sqrt(sum);
}

Layout layout_of(const Sketch& sketch) {
  Layout layout;
  layout.points = sketch.points.size();
  layout.on_circle = sketch.on_circle;
  for (const auto& [name, value] : sketch.numbers) {
    layout.numbers.push_back(name);
    layout.units.push_back(1);
  }
  return layout;
}

std::vector<double> variables_of(const Sketch& sketch) {
  std::vector<double> x;
  for (const auto& point : sketch.points) x.insert(x.end(), point.begin(), point.end());
  for (const auto& [name, value] : sketch.numbers) x.push_back(value);
  return x;
}

}  // namespace

struct Walk::State {
  State(const std::vector<Phrase>& phrases, const std::vector<Phrase>& claimed, const std::vector<Sketch>& starts,
        std::uint64_t seed)
      : givens(phrases), system(phrases, layout_of(starts.front())), random(seed), gradient(system.layout().variables()) {
    for (const Phrase& claim : claimed) claims.push_back(clauses_of(claim, system.layout()));
    for (const Sketch& sketch : starts) homes.push_back(variables_of(sketch));
    for (std::vector<double>& home : homes) rescale(home);
    x = homes.front();
  }

  std::vector<Phrase> givens;
  System system;
  Random random;
  Gradient gradient;
  std::vector<std::vector<Clause>> claims;
  std::vector<std::vector<double>> homes;  // clear figures to set out from
  std::vector<double> x;
  double off = 0;                          // the distance to an exact figure, as estimated
  Arrangement arrangement;
  std::optional<std::size_t> broken;
  bool evidence = true;
  double widest = 0;

  // To a size of about 2, unless lengths are given in units; then only numbers keep it, and the text has none here.
  void rescale(std::vector<double>& figure) const {
    if (system.layout().numbers.empty()) normalise(figure, system.layout().points, 2);
  }

  Vector at(const std::vector<double>& figure, std::size_t p) const { return {figure[2 * p], figure[2 * p + 1]}; }
  static void put(std::vector<double>& figure, std::size_t p, Vector v) {
    figure[2 * p] = v.x;
    figure[2 * p + 1] = v.y;
  }

  std::vector<double> moved();
  bool settle(std::vector<double>& figure);
  bool judge(const Constraint& constraint);
  void judge_claims();
};

// A start for the next figure.
std::vector<double> Walk::State::moved() {
  const std::size_t n = system.layout().points;
  std::vector<double> start = homes[random.below(homes.size())];
  const std::size_t p = random.below(n), a = n > 1 ? (p + 1 + random.below(n - 1)) % n : p;
  std::size_t b = random.below(n);
  if (n > 2)
    while (b == a || b == p) b = (b + 1) % n;
  const double small = std::pow(10, -random.between(0.3, 4));
  const std::size_t kind = random.below(20);
  if (kind == 0) {
    start = random_start(givens, system.layout(), random, 2, random.chance(0.5));
    solve(system, start, 0.1, {});
  } else if (kind < 4) {
    start = altered_start(start, system.layout(), random);
  } else if (kind < 7) {  // towards another point
    put(start, p, at(start, a) + small * (at(start, p) - at(start, a)));
  } else if (kind < 10 && n > 2) {  // towards the line through two others
    put(start, p, at(start, p) + (0.5 * (1 - small)) * (mirror(at(start, p), at(start, a), at(start, b)) - at(start, p)));
  } else if (kind < 12 && n > 2) {  // all of it pressed flat against a line
    for (std::size_t q = 0; q < n; ++q)
      put(start, q, at(start, q) + (0.5 * (1 - small)) * (mirror(at(start, q), at(start, a), at(start, b)) - at(start, q)));
  } else if (kind < 15) {  // one point anywhere near
    const double far = std::pow(10, -random.between(-0.3, 2));
    put(start, p, at(start, p) + Vector{far * random.between(-1, 1), far * random.between(-1, 1)});
  } else {  // everything a little
    const double far = std::pow(10, -random.between(0, 2));
    for (std::size_t k = 0; k < 2 * n; ++k) start[k] += far * random.between(-1, 1);
  }
  return start;
}

// Takes the start to the nearest figure of the givens; false when it does not get there.
bool Walk::State::settle(std::vector<double>& figure) {
  system.choose(figure.data());
  const Settled settled = sketching::settle(system, figure);
  off = settled.off;
  return settled.arrived && system.holds(figure.data(), meets, position_margin);
}

// Whether the constraint of a claim holds, as well as this figure can tell; leaves `evidence` false where it cannot.
bool Walk::State::judge(const Constraint& constraint) {
  gradient.clear();
  const double value = evaluate(constraint, system.layout(), x.data(), &gradient);
  const double tolerance = 4 * length_of(gradient) * (off + rounding) + rounding * static_cast<double>(constraint.terms.size());
  widest = std::max(widest, tolerance);
  gradient.clear();
  if (!(tolerance < no_evidence)) {
    evidence = false;
    return true;
  }
  return constraint.equation ? std::fabs(value) <= tolerance : value > tolerance;
}

void Walk::State::judge_claims() {
  broken.reset();
  evidence = true;
  widest = 0;
  for (std::size_t i = 0; i < claims.size() && !broken; ++i)
    for (const Clause& clause : claims[i]) {
      const bool held = clause.steers || std::any_of(clause.branches.begin(), clause.branches.end(), [&](const Branch& branch) {
        return std::all_of(branch.begin(), branch.end(), [&](const Constraint& constraint) { return judge(constraint); });
      });
      if (!held) broken = i;
    }
}

Walk::Walk(const std::vector<Phrase>& givens, const std::vector<Phrase>& claims, const std::vector<Sketch>& starts,
           std::uint64_t seed)
    : state_(std::make_unique<State>(givens, claims, starts, seed)) {}
Walk::~Walk() = default;

bool Walk::step() {
  State& s = *state_;
  std::vector<double> figure = s.moved();
  s.rescale(figure);
  if (s.random.chance(0.5))  // mirrored: the figures that we are used to have their first triangle turn left
    for (std::size_t p = 0; p < s.system.layout().points; ++p) figure[2 * p + 1] = -figure[2 * p + 1];
  if (!s.settle(figure)) return false;
  const std::size_t points = s.system.layout().points;
  Arrangement arrangement = arrangement_of(figure, points);
  if (arrangement.nearest < closest) return false;
  s.x = std::move(figure);
  s.arrangement = std::move(arrangement);
  if (s.arrangement.clear > 0.05) {
    std::vector<double> home = s.x;
    s.rescale(home);
    if (s.homes.size() < homes_kept) s.homes.push_back(std::move(home));
    else s.homes[s.random.below(homes_kept)] = std::move(home);
  }
  s.judge_claims();
  return true;
}

Sketch Walk::figure() const {
  const Layout& layout = state_->system.layout();
  Sketch sketch;
  for (std::size_t p = 0; p < layout.points; ++p) sketch.points.push_back({state_->x[2 * p], state_->x[2 * p + 1]});
  for (std::size_t k = 0; k < layout.numbers.size(); ++k) sketch.numbers[layout.numbers[k]] = state_->x[2 * layout.points + k];
  sketch.on_circle = layout.on_circle;
  sketch.residual = state_->system.residual(state_->x.data());
  return sketch;
}

std::optional<std::size_t> Walk::broken() const { return state_->broken; }
bool Walk::is_evidence() const { return state_->evidence; }
bool Walk::is_on_edge() const { return state_->arrangement.clear < edge; }
std::uint64_t Walk::arrangement() const { return std::hash<std::string>{}(state_->arrangement.signs); }
double Walk::tolerance() const { return state_->widest; }

}  // namespace prover
