// The search for sketches: starts, solving, sorting out, choosing.
//
// One figure is found at the first or second start. The rest of the time goes into finding others: fresh starts
// give other shapes, altered copies of what was found give other arrangements, and the search ends when both have
// brought nothing new for a while.
#include "prover/sketch/sketch.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>

#include "prover/base/log.hpp"
#include "prover/sketch/arrangement.hpp"
#include "prover/sketch/random.hpp"
#include "prover/sketch/solve.hpp"
#include "prover/sketch/starts.hpp"

namespace prover {
namespace {

constexpr double equation_tolerance = 1e-9;
constexpr double position_margin = 1e-5;
constexpr double drawn_diameter = 10;
constexpr double needle = 0.01;          // a figure less clear than this is kept only when there is no better one
constexpr double coincident = 1e-4;      // and one less clear than this never
constexpr double same_figure = 1e-6;     // difference of two figures that are one

// What the givens need beside points: the unknown numbers, a point of each circle, the size of the text's units.
struct Units {
  Layout layout;
  bool measured = false;  // a length is given in units, so a figure cannot be scaled
};

Units units_of(const std::vector<Phrase>& givens, std::size_t points) {
  Units units;
  Layout& layout = units.layout;
  layout.points = points;
  layout.on_circle.assign(points, PointId());
  std::set<std::string> of_angles, of_lengths;
  double largest = 0;
  const auto circle_point = [&](PointId centre, PointId point) {
    if (centre.valid() && centre.index() < points && !layout.on_circle[centre.index()].valid())
      layout.on_circle[centre.index()] = point;
  };
  for (const Phrase& phrase : givens) {
    const std::vector<PointId>& p = phrase.points;
    if ((phrase.predicate == Predicate::circle || phrase.predicate == Predicate::circle_cyclic) && p.size() > 1)
      circle_point(p[0], p[1]);
    if (phrase.predicate == Predicate::diameter && p.size() > 2) circle_point(p[2], p[0]);
    bool angles = false, lengths = false;
    double constant = 0;
    std::set<std::string> names;
    for (const Expression& expression : phrase.relation.expressions)
      for (const Term& term : expression.terms) {
        if (std::holds_alternative<Angle>(term.quantity)) angles = true;
        if (std::holds_alternative<Segment>(term.quantity)) lengths = true;
        if (std::holds_alternative<One>(term.quantity))
          constant = std::max(constant, std::fabs(term.coefficient.to_double()));
        if (const auto* number = std::get_if<Number>(&term.quantity)) names.insert(number->name);
      }
    (lengths ? of_lengths : of_angles).insert(names.begin(), names.end());
    if (lengths && !angles && (constant > 0 || !names.empty())) {
      units.measured = true;
      largest = std::max(largest, constant);
    }
  }
  // A circle with tangents and no other point goes through the first point of contact.
  for (const Phrase& phrase : givens)
    if (phrase.predicate == Predicate::tangent && phrase.points.size() > 2)
      circle_point(phrase.points[2], phrase.points[1]);
  if (largest > 0) layout.length_unit = largest;
  std::set<std::string> all = of_angles;
  all.insert(of_lengths.begin(), of_lengths.end());
  for (const std::string& name : all) {
    layout.numbers.push_back(name);
    layout.units.push_back(of_lengths.contains(name) ? layout.length_unit : 1 / degree);
  }
  return units;
}

struct Candidate {
  std::vector<double> x;  // in normal place, variables of the layout
  Arrangement arrangement;
};

// What was found so far, one family an arrangement.
class Album {
 public:
  explicit Album(std::size_t points) : points_(points) {}

  enum class News { nothing, shape, arrangement };
  News add(Candidate candidate) {
    std::vector<std::size_t>& family = families_[candidate.arrangement.signs];
    if (family.size() >= family_limit) return News::nothing;
    for (const std::size_t i : family)
      if (difference(found_[i].x, candidate.x, points_) < same_figure) return News::nothing;
    family.push_back(found_.size());
    found_.push_back(std::move(candidate));
    return family.size() == 1 ? News::arrangement : News::shape;
  }

  const std::vector<Candidate>& found() const { return found_; }

  // The first of each arrangement, generic ones before those in which points happen to be collinear; then what
  // differs most from all before it.
  std::vector<std::size_t> chosen(std::size_t wanted) const {
    std::vector<std::size_t> pool;
    double clearest = 0;
    for (const Candidate& c : found_) clearest = std::max(clearest, c.arrangement.clear);
    for (std::size_t i = 0; i < found_.size(); ++i)
      if (clearest < needle || found_[i].arrangement.clear >= needle) pool.push_back(i);
    std::vector<std::size_t> first, later;
    std::set<std::string> seen;
    for (const std::size_t i : pool)
      (seen.insert(found_[i].arrangement.signs).second ? first : later).push_back(i);
    std::stable_sort(first.begin(), first.end(), [&](std::size_t a, std::size_t b) {
      return found_[a].arrangement.collinear < found_[b].arrangement.collinear;
    });
    if (first.size() > wanted) first.resize(wanted);
    while (first.size() < wanted && !later.empty()) {
      std::size_t best = 0;
      double most = -1;
      for (std::size_t k = 0; k < later.size(); ++k) {
        double least = std::numeric_limits<double>::infinity();
        for (const std::size_t i : first)
          least = std::min(least, difference(found_[i].x, found_[later[k]].x, points_));
        if (least > most) {
          most = least;
          best = k;
        }
      }
      first.push_back(later[best]);
      later.erase(later.begin() + static_cast<std::ptrdiff_t>(best));
    }
    return first;
  }

 private:
  static constexpr std::size_t family_limit = 12;
  std::size_t points_;
  std::vector<Candidate> found_;
  std::map<std::string, std::vector<std::size_t>> families_;
};

Sketch sketch_of(const std::vector<double>& x, const Units& units, const System& system) {
  const Layout& layout = units.layout;
  Sketch result;
  result.residual = system.residual(x.data());
  const double scale = units.measured ? layout.length_unit : 1;
  for (std::size_t p = 0; p < layout.points; ++p) result.points.push_back({scale * x[2 * p], scale * x[2 * p + 1]});
  for (std::size_t k = 0; k < layout.numbers.size(); ++k)
    result.numbers[layout.numbers[k]] = layout.units[k] * x[2 * layout.points + k];
  result.on_circle = layout.on_circle;
  return result;
}

}  // namespace

SketchReport sketch(const std::vector<Phrase>& givens, std::size_t points, const Budget& budget,
                    const SketchOptions& options) {
  SketchReport report;
  report.best_residual = std::numeric_limits<double>::infinity();
  const Units units = units_of(givens, points);
  System system(givens, units.layout);
  Random random(options.seed);
  Album album(points);
  const auto wanted = static_cast<std::size_t>(std::max(options.wanted, 0));
  const int patience = 16 + 2 * options.wanted;  // starts without news after which the search ends
  int fruitless = 0;                             // since the last news
  report.stop = StopReason::saturated;
  if (!system.has_branches()) return report;

  for (int start = 0; start < options.starts && wanted > 0; ++start) {
    if (budget.exhausted()) {
      report.stop = budget.reason();
      break;
    }
    ++report.starts_tried;
    const std::vector<Candidate>& found = album.found();
    const bool altered = options.seek_arrangements && !found.empty() && start % 3 != 0;
    std::vector<double> x = altered ? altered_start(found[random.below(found.size())].x, units.layout, random)
                                    : random_start(givens, units.layout, random, start % 8 == 7 ? 0 : 2);
    const Solution solution = solve(system, x, budget);
    Album::News news = Album::News::nothing;
    if (!solution.converged) {
      report.best_residual = std::min(report.best_residual, solution.residual);
    } else {
      normalise(x, points, units.measured ? 0 : 2);
      Candidate candidate{std::move(x), {}};
      candidate.arrangement = arrangement_of(candidate.x, points);
      if (candidate.arrangement.clear > coincident &&
          system.holds(candidate.x.data(), equation_tolerance, position_margin))
        news = album.add(std::move(candidate));
    }
    fruitless = news == Album::News::nothing || (news == Album::News::shape && album.found().size() > wanted)
                    ? fruitless + 1
                    : 0;
    if (!options.seek_arrangements && album.found().size() >= wanted) break;
    if (!album.found().empty() && fruitless >= patience) break;
  }

  for (const std::size_t i : album.chosen(wanted)) {
    std::vector<double> x = album.found()[i].x;
    if (!units.measured)
      for (std::size_t k = 0; k < 2 * points; ++k) x[k] *= drawn_diameter / 2;
    report.sketches.push_back(sketch_of(x, units, system));
  }
  if (!report.sketches.empty()) report.best_residual = report.sketches.front().residual;
  log::debug("sketch: {} figures in {} starts", report.sketches.size(), report.starts_tried);
  return report;
}

}  // namespace prover
