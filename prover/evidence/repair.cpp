#include "prover/evidence/repair.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

constexpr int easy = 60;           // starts after which we take it that there is no figure, when much is tried
constexpr double same = 1e-7;      // relative: two figures show the same number

// The number that the other givens force, when the chain says so.
std::optional<Rational> forced_number(const Statement& rest, const NumberInGiven& number, const AttemptOptions& options,
                                      const Budget& budget) {
  // What is looked for stays drawn although the sentence that drew it is gone.
  Statement asked = rest;
  asked.goals.clear();
  for (const Expression* part : {&number.wanted, &number.counted}) {
    if (part->terms.empty()) continue;
    Phrase quantity;
    quantity.relation.expressions.push_back(*part);
    Goal goal;
    goal.claims.push_back(std::move(quantity));
    asked.goals.push_back(std::move(goal));
  }
  const auto workings = worked_out(asked, {}, options, budget);
  if (workings->saturation.contradictory) return std::nullopt;
  std::vector<PointId> identity;
  for (std::size_t i = 0; i < rest.names.points.size(); ++i) identity.emplace_back(static_cast<std::int64_t>(i));
  const auto value = [&](const Expression& expression) -> std::optional<Rational> {
    bool degenerate = false;
    const Form form = workings->saturation.closure.reduce(
        form_of(expression, identity, workings->arrangement, workings->unknowns, degenerate));
    if (degenerate || !form.terms.empty()) return std::nullopt;
    return form.constant;
  };
  const auto wanted = value(number.wanted);
  if (!wanted || !number.factor) return wanted;
  const auto counted = value(number.counted);
  if (!counted || counted->is_zero()) return std::nullopt;
  return *wanted / *counted;
}

bool near(double a, double b) { return std::fabs(a - b) <= same * std::max({1.0, std::fabs(a), std::fabs(b)}); }

// A short number at this place: whole, or with a small denominator.
std::optional<Rational> short_number(double value) {
  for (std::int64_t d = 1; d <= 12; ++d) {
    const double n = std::round(value * static_cast<double>(d));
    if (std::fabs(n) < 1e6 && near(n / static_cast<double>(d), value)) return Rational(static_cast<std::int64_t>(n), d);
  }
  return std::nullopt;
}

Rational thousandths(double value) { return Rational(static_cast<std::int64_t>(std::llround(value * 1000)), 1000); }
Rational hundredths(double value) { return Rational(static_cast<std::int64_t>(std::llround(value * 100)), 100); }

// The roundest number well inside the range, as near to what was written as that allows.
Rational round_inside(double low, double high, double written) {
  const double width = high - low;
  const double target = std::clamp(written, low + 0.2 * width, high - 0.2 * width);
  for (const double step : {10.0, 5.0, 1.0, 0.5, 0.1, 0.01, 0.001}) {
    if (step > width / 4) continue;
    const double value = std::round(target / step) * step;
    if (value >= low + 0.1 * width && value <= high - 0.1 * width) return thousandths(value);
  }
  return thousandths(target);
}

class Repairer {
 public:
  Repairer(const Statements& statements, const AttemptOptions& options, const Budget& budget)
      : statements_(statements), options_(options), budget_(budget) {}

  std::optional<Repair> repair(std::size_t given) {
    const Phrase& phrase = statements_[0].givens[given].phrase;
    const auto number = number_in(phrase);
    const auto left = number ? without_number(phrase, *number) : std::nullopt;
    const Statements rest = left ? with_instead(statements_, given, *left) : without(statements_, given);
    Repair one;
    one.given = given;
    if (!number) return draw(rest, easy, budget_).figure ? std::optional(one) : std::nullopt;
    const std::vector<double> shown = numbers_shown(rest, *number);
    if (shown.empty()) return std::nullopt;
    one.number = number;
    if (near(shown.front(), shown.back())) {
      const auto forced = forced_number(rest[0], *number, options_, budget_.share(0.3));
      one.exact = forced && near(forced->to_double(), shown.front());
      const auto value = one.exact ? forced : short_number(shown.front());
      one.rounded = !value;
      one.value = value ? *value : hundredths(shown.front());
    } else if (!range(given, *number, shown, one)) {
      return std::nullopt;
    }
    one.instead = with_number(phrase, *number, one.value);
    if (!one.rounded && !one.between && !draws(given, *number, one.value.to_double())) return std::nullopt;
    return one;
  }

 private:
  // What figures of the other givens show, from the smallest to the largest.
  std::vector<double> numbers_shown(const Statements& rest, const NumberInGiven& number) const {
    SketchOptions some;
    some.wanted = 6;
    some.starts = easy;
    std::vector<double> shown;
    for (const Statement& statement : rest)
      for (const Sketch& figure : sketch(phrases_of(statement), statement.names.points.size(), budget_, some).sketches)
        if (const double value = measured_number(number, figure); std::isfinite(value)) shown.push_back(value);
    std::sort(shown.begin(), shown.end());
    return shown;
  }

  bool draws(std::size_t given, const NumberInGiven& number, double value, int starts = easy) const {
    const Rational near_it(static_cast<std::int64_t>(std::llround(value * 1e6)), 1'000'000);
    const auto exact = short_number(value);
    const Phrase changed = with_number(statements_[0].givens[given].phrase, number, exact ? *exact : near_it);
    return draw(with_instead(statements_, given, changed), starts, budget_).figure.has_value();
  }

  // Between a number that can be drawn and one that cannot: where that changes.
  double boundary(std::size_t given, const NumberInGiven& number, double drawn, double not_drawn) const {
    constexpr int quick = 12;
    for (int halving = 0; halving < 11 && !near(drawn, not_drawn) && !budget_.exhausted(); ++halving) {
      const double middle = (drawn + not_drawn) / 2;
      (draws(given, number, middle, quick) ? drawn : not_drawn) = middle;
    }
    return drawn;
  }

  bool range(std::size_t given, const NumberInGiven& number, const std::vector<double>& shown, Repair& one) const {
    const double written = number.value.to_double();
    // A few numbers only, or all between the first and the last?
    const double middle = shown.size() > 1 ? (shown[shown.size() / 2] + shown[shown.size() / 2 - 1]) / 2 : shown[0];
    if (!draws(given, number, middle)) {
      const double nearest = *std::min_element(shown.begin(), shown.end(), [&](double a, double b) {
        return std::fabs(a - written) < std::fabs(b - written);
      });
      const auto value = short_number(nearest);
      one.rounded = !value;
      one.value = value ? *value : hundredths(nearest);
      return true;
    }
    double low = shown.front(), high = shown.back();
    if (written >= low && written <= high) return false;  // then the range has a gap, and we do not know it
    const double span = std::max(high - low, 1e-3 * std::fabs(high));
    if (written > high) {
      high = boundary(given, number, high, written);
      low = boundary(given, number, low, std::max(low - 4 * span, std::min(0.0, low)));
    } else {
      low = boundary(given, number, low, written);
      high = boundary(given, number, high, high + 4 * span);
    }
    // Near nothing, near a straight angle, beyond all measure: no bound worth naming.
    const bool angle = !number.factor && std::any_of(number.wanted.terms.begin(), number.wanted.terms.end(), [](const Term& t) {
      return std::holds_alternative<Angle>(t.quantity);
    });
    one.between = Range{};
    if (std::fabs(low) > 0.02 * (high - low)) one.between->low = low;
    if (angle ? high < 179 : high < 8 * std::fabs(written)) one.between->high = high;
    one.value = round_inside(low, high, written);
    return draws(given, number, one.value.to_double());
  }

  const Statements& statements_;
  const AttemptOptions& options_;
  const Budget& budget_;
};

}  // namespace

std::vector<Repair> repairs(const Statements& statements, const std::vector<std::size_t>& conflict,
                            const AttemptOptions& options, const Budget& budget) {
  Repairer repairer(statements, options, budget);
  std::vector<Repair> found;
  for (const std::size_t given : conflict) {
    if (budget.exhausted()) break;
    if (auto one = repairer.repair(given)) found.push_back(std::move(*one));
  }
  return found;
}

std::optional<Drawn> drawn_within_rounding(const Statements& statements, const std::vector<std::size_t>& conflict,
                                           const Budget& budget) {
  Statements loose = statements;
  bool in_conflict = false;
  for (std::size_t g = 0; g < statements[0].givens.size(); ++g) {
    const Phrase& phrase = statements[0].givens[g].phrase;
    const auto number = number_in(phrase);
    const auto half_unit = number && phrase.relation.expressions.size() == 2 ? rounding_of(*number) : std::nullopt;
    if (!half_unit) continue;
    in_conflict = in_conflict || std::find(conflict.begin(), conflict.end(), g) != conflict.end();
    loose = with_instead(loose, g, within_rounding(*number, *half_unit));
  }
  if (!in_conflict) return std::nullopt;
  constexpr int starts = 100;
  Drawn drawn = draw(loose, starts, budget);
  return drawn.figure ? std::optional(std::move(drawn)) : std::nullopt;
}

}  // namespace prover
