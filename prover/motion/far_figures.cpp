#include "prover/motion/far_figures.hpp"

#include <algorithm>
#include <cmath>

#include "prover/language/equation.hpp"
#include "prover/motion/climb.hpp"
#include "prover/motion/shape.hpp"

namespace prover::motion {

namespace {

constexpr std::size_t most_starts = 3;
constexpr double differs = 1e-3;  // degrees, or units of length

// The figure with the next whole value in the direction of `inwards`: easier to read, and to check by hand.
void make_whole(std::vector<Phrase> givens, const Expression& quantity, double inwards, Sketch& figure, double& value) {
  const double whole = inwards > 0 ? std::ceil(value) : std::floor(value);
  if (!(std::fabs(whole) < 1e6)) return;
  givens.push_back(equation(quantity, Rational(static_cast<std::int64_t>(whole))));
  const auto settled = Mechanism::at(givens, figure);
  if (!settled) return;
  Sketch better = settled->figure();
  if (std::fabs(measure(quantity, better) - whole) > 1e-8 || clearness(better) < 0.9 * clearness(figure)) return;
  figure = std::move(better);
  value = whole;
}

}  // namespace

std::optional<FarFigures> far_figures(const std::vector<Phrase>& givens, const std::vector<Sketch>& figures,
                                      const Expression& asked, const Budget& budget) {
  std::optional<FarFigures> best;
  std::size_t starts = 0;
  for (const Sketch& figure : figures) {
    if (starts == most_starts || budget.exhausted()) break;
    auto up = Mechanism::at(givens, figure);
    if (!up) continue;
    if (!up->moves(asked)) {  // or it stands still just here, where it is largest or smallest
      tidy(*up, budget);
      if (!up->moves(asked)) continue;
    }
    ++starts;
    auto down = Mechanism::at(givens, up->figure());
    if (!down) continue;
    climb(*up, quantity(asked, up->units(), 1), budget);
    climb(*down, quantity(asked, down->units(), -1), budget);
    FarFigures pair{down->figure(), up->figure(), 0, 0, true, up->freedom()};
    pair.least_value = measure(asked, pair.least);
    pair.most_value = measure(asked, pair.most);
    if (!(pair.most_value - pair.least_value > differs)) continue;
    if (best && pair.most_value - pair.least_value < 1.05 * (best->most_value - best->least_value)) continue;
    best = std::move(pair);
  }
  if (best) {
    if (best->most_value - best->least_value > 3) {
      make_whole(givens, asked, 1, best->least, best->least_value);
      make_whole(givens, asked, -1, best->most, best->most_value);
    }
    return best;
  }
  // It does not move; but different arrangements may have different values.
  const Sketch *least = nullptr, *most = nullptr;
  for (const Sketch& figure : figures) {
    const double value = measure(asked, figure);
    if (!std::isfinite(value)) continue;
    if (!least || value < measure(asked, *least)) least = &figure;
    if (!most || value > measure(asked, *most)) most = &figure;
  }
  if (!least || !(measure(asked, *most) - measure(asked, *least) > differs)) return std::nullopt;
  auto low = Mechanism::at(givens, *least), high = Mechanism::at(givens, *most);
  const auto keeps_value = [&](std::optional<Mechanism>& one, const Sketch& figure) {
    if (!one) return;
    tidy(*one, budget);
    if (std::fabs(measure(asked, one->figure()) - measure(asked, figure)) > differs / 10) one.reset();
  };
  keeps_value(low, *least);
  keeps_value(high, *most);
  FarFigures pair{low ? low->figure() : *least, high ? high->figure() : *most, 0, 0, false, low ? low->freedom() : 0};
  pair.least_value = measure(asked, pair.least);
  pair.most_value = measure(asked, pair.most);
  return pair;
}

}  // namespace prover::motion
