#include "prover/trigonometry/settle.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "prover/statement/meaning.hpp"
#include "prover/trigonometry/degrees.hpp"
#include "prover/trigonometry/only_root.hpp"

namespace prover {

namespace {

constexpr int kLargestDenominator = 120;  // of a number of degrees
constexpr double kTolerance = 2e-6;       // of a figure's angle, in degrees: a guess, to be shown exactly
constexpr std::size_t kMostTried = 80;    // conditions of one direction
constexpr std::size_t kMostSteps = 6;

double measured(const Unknown& unknown, const Sketch& figure) {
  if (unknown.kind == UnknownKind::angle)
    return measure(Angle{unknown.points[1], unknown.points[0], unknown.points[2]}, figure);
  if (unknown.kind == UnknownKind::number) {
    const auto found = figure.numbers.find(unknown.name);
    if (found != figure.numbers.end()) return found->second;
  }
  return std::nan("");
}

// Its size when all figures agree on it.
std::optional<double> measured(const Unknown& unknown, const std::vector<Sketch>& figures) {
  std::optional<double> size;
  for (const Sketch& figure : figures) {
    const double here = measured(unknown, figure);
    if (!std::isfinite(here) || (size && std::fabs(here - *size) > 1e-5)) return std::nullopt;
    if (!size) size = here;
  }
  return size;
}

// Σ_m γ_m e^(imx) for the unknown x, the settled angles put in; up to a factor that is not 0. Nothing when a settled angle
// occurs with odd and even multiples beside each other (only e^(2i·angle) is known).
std::optional<Frequencies> frequencies(const TrigSum& sum, UnknownId x, const KnownAngles& known) {
  struct Powers {
    const SettledAngle* angle;
    std::int64_t most = 0;
    int parity = -1;
    std::vector<RootSum> numerators, denominators;  // by exponent
  };
  std::map<UnknownId, Powers> powers;
  for (const SettledAngle& s : known.all())
    if (!s.value) powers[s.angle] = {&s, 0, -1, {}, {}};
  for (const auto& [f, r] : sum.terms())
    for (auto& [angle, p] : powers) {
      const auto c = f.coefficient(angle).to_int64();
      constexpr std::int64_t most_turns = 12;
      if (!c || std::abs(*c) > most_turns) return std::nullopt;
      const int parity = static_cast<int>(std::abs(*c) % 2);
      if (p.parity >= 0 && p.parity != parity) return std::nullopt;
      p.parity = parity;
      p.most = std::max(p.most, std::abs(*c));
    }
  for (auto& [angle, p] : powers) {
    p.numerators.push_back(RootSum::direction(0));
    p.denominators.push_back(RootSum::direction(0));
    for (std::int64_t k = 0; k < p.most; ++k) {
      p.numerators.push_back(p.numerators.back() * p.angle->numerator);
      p.denominators.push_back(p.denominators.back() * p.angle->denominator);
    }
  }
  Frequencies result;
  for (const auto& [f, r] : sum.terms())
    for (const int sign : {1, -1}) {
      RootSum factor = RootSum::direction(f.constant * Rational(sign), r / 2);
      for (const auto& [angle, p] : powers) {
        // e^(ic·angle), times e^(i·most·angle), times denominator^most: numerator^h · denominator^(most − h).
        const std::int64_t h = (sign * *f.coefficient(angle).to_int64() + p.most) / 2;
        factor = factor * p.numerators[static_cast<std::size_t>(h)] * p.denominators[static_cast<std::size_t>(p.most - h)];
      }
      result[f.coefficient(x) * Rational(sign)].add(factor);
    }
  for (auto at = result.begin(); at != result.end();) {
    const auto zero = at->second.is_zero();
    if (!zero) return std::nullopt;
    at = *zero ? result.erase(at) : std::next(at);
  }
  return result;
}

bool vanishes_at(const Frequencies& waves, const Rational& x) {
  RootSum value;
  for (const auto& [m, factor] : waves) value.add(factor.turned(m * x));
  return value.is_zero().value_or(false);
}

struct Limits {
  Rational low = 0, high = 180;
  std::vector<UnknownId> bounding;
};

class Settler {
 public:
  Settler(const Statement& statement, std::size_t goal, Workings& workings, const Budget& budget)
      : statement_(statement), goal_(statement.goals[goal]), workings_(workings), known_(workings.saturation.closure), budget_(budget) {}

  Settling run() {
    if (!read_goal()) return std::move(result_);
    while (true) {
      const SineGraph graph(statement_, workings_, known_);
      if (goal_reached(graph)) {
        result_.reached = true;
        result_.obstacle.clear();
        drop_needless_steps();
        collect_forms();
        return std::move(result_);
      }
      if (result_.steps.size() >= kMostSteps || budget_.exhausted() || !one_step(graph)) break;
    }
    const auto size = asked_size();
    if (size && !simplest_near(*size, kLargestDenominator, kTolerance))
      result_.obstacle = not_rational(*size);
    result_.worth_saying = !result_.obstacle.empty();
    if (result_.obstacle.empty())
      result_.obstacle = budget_.exhausted() ? "The time was up before the law of sines had settled it."
                                             : "No condition of the law of sines settles it by itself: more than one angle stays open at a time.";
    return std::move(result_);
  }

 private:
  bool read_goal() {
    std::vector<PointId> identity;
    for (std::size_t i = 0; i < workings_.arrangement.point_count(); ++i) identity.emplace_back(static_cast<std::int64_t>(i));
    if (goal_.kind == GoalKind::find) {
      bool degenerate = false;
      asked_.push_back(form_of(goal_.claims[0].relation.expressions[0], identity, workings_.arrangement, workings_.unknowns, degenerate));
      if (degenerate || !goal_.in_terms_of.empty()) return refuse("What is asked is not a number of degrees.");
    } else {
      for (const Phrase& claim : goal_.claims) {
        const Meaning meaning = meaning_of(claim, workings_.arrangement, workings_.unknowns);
        const auto& signs = claim.relation.comparisons;
        if (std::any_of(signs.begin(), signs.end(), [](Comparison c) { return c != Comparison::equal; }))
          return refuse("Only sizes of angles and equal lengths are certified by the law of sines.");
        if (claim.predicate != Predicate::relation || meaning.degenerate || meaning.unsupported || meaning.forms.empty())
          return refuse("Only sizes of angles and equal lengths are certified by the law of sines.");
        asked_.insert(asked_.end(), meaning.forms.begin(), meaning.forms.end());
      }
    }
    for (const Form& form : asked_)
      for (const auto& [unknown, c] : form.terms) {
        const UnknownKind kind = workings_.unknowns[unknown].kind;
        if (kind == UnknownKind::fact || (kind == UnknownKind::length && goal_.kind == GoalKind::find))
          return refuse("Only sizes of angles and equal lengths are certified by the law of sines.");
      }
    return true;
  }
  bool refuse(std::string why) {
    result_.obstacle = std::move(why);
    return false;
  }

  bool only_angles(const Form& form) const {
    return std::all_of(form.terms.begin(), form.terms.end(), [&](const auto& term) {
      const UnknownKind kind = workings_.unknowns[term.first].kind;
      return kind == UnknownKind::angle || kind == UnknownKind::number;
    });
  }

  bool goal_reached(const SineGraph& graph) {
    result_.identities.clear();
    for (const Form& form : asked_) {
      const Form now = known_.closed(form);
      if (goal_.kind == GoalKind::find) {
        if (now.terms.empty()) {
          result_.value = now.constant;
          continue;
        }
        if (!reached_by_settled(form, now)) return false;
        continue;
      }
      if (now.is_zero()) continue;
      if (only_angles(form)) return false;
      const auto identity = graph.condition_for(form);
      if (!identity) return false;
      const auto waves = frequencies(expanded(identity->terms), UnknownId(), known_);
      if (!waves || !waves->empty()) return false;
      // Nothing may move in it: an open angle would stand in a frequency of its own only if it is asked for.
      for (const SineProduct& term : identity->terms)
        for (const Form& sine : term.sines)
          for (const auto& [unknown, c] : sine.terms)
            if (!known_.settled(unknown)) return false;
      result_.identities.push_back(*identity);
    }
    return true;
  }

  // The asked angle as a sum of multiples of settled angles that are not rational: e^(2i·asked) is known.
  bool reached_by_settled(const Form& asked, const Form& now) {
    if (asked.terms.size() != 1 || !asked.terms[0].second.is_one() || !asked.constant.is_zero() ||
        workings_.unknowns[asked.terms[0].first].kind != UnknownKind::angle)
      return false;
    RootSum left = RootSum::direction(now.constant * Rational(2)), right = RootSum::direction(0);
    for (const auto& [unknown, c] : now.terms) {
      const SettledAngle* settled = known_.settled(unknown);
      const auto times = c.to_int64();
      constexpr std::int64_t most_times = 6;
      if (!settled || !times || std::abs(*times) > most_times) return false;
      const auto exponent = static_cast<int>(std::abs(*times));
      left = left * (*times > 0 ? settled->numerator : settled->denominator).power(exponent);
      right = right * (*times > 0 ? settled->denominator : settled->numerator).power(exponent);
    }
    const auto size = measured(workings_.unknowns[asked.terms[0].first], workings_.views);
    if (!size) return false;
    const auto guess = simplest_near(*size, kLargestDenominator, kTolerance);
    if (!guess || !left.add(right.turned(*guess * Rational(2)), -1).is_zero().value_or(false)) return false;
    result_.value = *guess;
    return true;
  }

  std::optional<double> asked_size() const {
    if (goal_.kind != GoalKind::find || asked_.size() != 1 || workings_.views.empty() || !only_angles(asked_[0])) return std::nullopt;
    const double size = measure(goal_.claims[0].relation.expressions[0], workings_.views[0]);
    return std::isfinite(size) ? std::optional(size) : std::nullopt;
  }

  static std::string not_rational(double size) {
    return fmt::format("No exact value is named: {:.6g}° is not a fraction of a degree with a denominator up to {}.", size,
                       kLargestDenominator);
  }

  Form moving(const Form& closed) const {
    Form direction;
    for (const auto& [unknown, c] : closed.terms)
      if (!known_.settled(unknown)) direction.terms.emplace_back(unknown, c);
    return direction;
  }

  bool one_step(const SineGraph& graph) {
    // What is asked first, then as the figure has them.
    std::vector<std::size_t> order;
    std::vector<Form> wanted;
    for (const Form& form : asked_)
      if (only_angles(form)) {
        const Form way = moving(known_.closed(form));
        if (!way.terms.empty()) wanted.push_back(way.normalised());
      }
    for (const bool first : {true, false})
      for (std::size_t d = 0; d < graph.directions().size(); ++d)
        if ((std::find(wanted.begin(), wanted.end(), graph.directions()[d]) != wanted.end()) == first) order.push_back(d);
    std::vector<std::pair<std::size_t, std::vector<SineCondition>>> found;
    constexpr std::size_t most_directions = 40;
    for (const std::size_t d : order) {
      if (budget_.exhausted() || found.size() >= most_directions) break;
      found.emplace_back(d, graph.conditions(d, budget_));
      if (found.back().second.size() > kMostTried) found.back().second.resize(kMostTried);
      for (const SineCondition& condition : found.back().second)
        if (!budget_.exhausted() && settles(graph.directions()[d], condition, true)) return true;
    }
    for (const auto& [d, conditions] : found)
      for (const SineCondition& condition : conditions)
        if (!budget_.exhausted() && settles(graph.directions()[d], condition, false)) return true;
    return false;
  }

  Rational speed(const Form& closed, const Form& direction) const { return closed.coefficient(direction.terms[0].first); }

  // The angle that the condition is read as a condition for.
  UnknownId angle_to_show(const Form& direction, const SineCondition& condition) const {
    std::vector<UnknownId> candidates;
    for (const Form& form : asked_)
      if (form.terms.size() == 1) candidates.push_back(form.terms[0].first);
    candidates.insert(candidates.end(), condition.angles.begin(), condition.angles.end());
    if (direction.terms.size() == 1) candidates.push_back(direction.terms[0].first);
    UnknownId best;
    double least = 0;
    for (const UnknownId candidate : candidates) {
      const UnknownKind kind = workings_.unknowns[candidate].kind;
      if (kind != UnknownKind::angle && kind != UnknownKind::number) continue;
      const Form closed = known_.closed(Form::of(candidate));
      const Form way = moving(closed);
      if (way.terms.empty() || !(way.normalised() == direction)) continue;
      double effort = 0;
      for (const SineProduct& term : condition.terms)
        for (const Form& sine : term.sines) {
          const Rational m = speed(sine, direction) / speed(closed, direction);
          effort += std::fabs(m.to_double()) + (m.is_integer() ? 0 : 20);
        }
      if (!best.valid() || effort < least - 0.5) {
        best = candidate;
        least = effort;
      }
    }
    return best;
  }

  Limits limits_of(UnknownId x, const Form& direction) {
    Limits limits;
    const Form closed_x = known_.closed(Form::of(x));
    const bool is_angle = workings_.unknowns[x].kind == UnknownKind::angle;
    bool low_set = is_angle, high_set = is_angle;
    UnknownId low_by, high_by;
    for (std::size_t i = 0; i < workings_.unknowns.size(); ++i) {
      const UnknownId u(static_cast<std::int64_t>(i));
      const Unknown& unknown = workings_.unknowns[u];
      if (unknown.kind != UnknownKind::angle) continue;
      const auto& p = unknown.points;
      if (!workings_.arrangement.known(canonical({PositionKind::not_collinear, p[0], p[1], p[2], {}}))) continue;
      const Form closed = known_.closed(Form::of(u));
      const Form way = moving(closed);
      if (way.terms.empty() || !(way.normalised() == direction)) continue;
      const Rational m = speed(closed, direction) / speed(closed_x, direction);
      Form rest = closed;
      rest.add(closed_x, -m);
      if (!rest.terms.empty()) continue;
      // 0 < m x + rest < 180
      Rational low = -rest.constant / m, high = (Rational(180) - rest.constant) / m;
      if (high < low) std::swap(low, high);
      if (!low_set || limits.low < low) {
        limits.low = low;
        low_by = u;
        low_set = true;
      }
      if (!high_set || high < limits.high) {
        limits.high = high;
        high_by = u;
        high_set = true;
      }
    }
    for (const UnknownId u : {low_by, high_by})
      if (u.valid() && u != x) limits.bounding.push_back(u);
    if (!low_set || !high_set) limits.high = limits.low;  // an unknown number without limits
    return limits;
  }

  bool settles(const Form& direction, const SineCondition& condition, bool rational) {
    const UnknownId x = angle_to_show(direction, condition);
    if (!x.valid()) return false;
    const auto size = measured(workings_.unknowns[x], workings_.views);
    if (!size) return false;
    const auto guess = simplest_near(*size, kLargestDenominator, kTolerance);
    if (rational != guess.has_value()) {
      if (rational) return false;
    }
    SettledStep step;
    step.condition = condition;
    step.angle = x;
    step.measured = *size;
    const Form closed_x = known_.closed(Form::of(x));
    for (const SineProduct& term : condition.terms) {
      SineProduct shown{term.factor, {}};
      for (Form sine : term.sines) {
        const Rational m = speed(sine, direction) / speed(closed_x, direction);
        if (!m.is_zero()) sine.add(closed_x, -m).add(Form::of(x), m);
        shown.sines.push_back(std::move(sine));
      }
      step.shown.push_back(std::move(shown));
    }
    const TrigSum sum = expanded(step.shown);
    const auto waves = frequencies(sum, x, known_);
    if (!waves || waves->empty()) return false;
    Rational slowest = 0;
    bool one_frequency = true;
    for (const auto& [m, factor] : *waves) {
      const Rational speed = m.sign() < 0 ? -m : m;
      if (speed.is_zero() || (!slowest.is_zero() && !(speed == slowest))) one_frequency = false;
      slowest = speed;
    }
    // A tangent that comes back after 180° needs no other limits than those of any angle.
    const bool narrow = !one_frequency || Rational(1) < slowest || workings_.unknowns[x].kind != UnknownKind::angle;
    const Limits limits = narrow ? limits_of(x, direction) : Limits();
    if (!(limits.low < limits.high)) return false;
    step.low = limits.low;
    step.high = limits.high;
    step.bounding = limits.bounding;
    SettledAngle settled;
    settled.angle = x;
    if (one_frequency) {
      if (Rational(180) / slowest < limits.high - limits.low) return false;
      step.by = SettledBy::tangent;
      if (guess && vanishes_at(*waves, *guess)) {
        settled.value = step.value = *guess;
      } else {
        if (rational || !slowest.is_one() || waves->size() != 2) return false;
        settled.numerator = RootSum().add(waves->at(-1), -1);
        settled.denominator = waves->at(1);
      }
    } else {
      if (!rational || !guess || !vanishes_at(*waves, *guess)) return false;
      std::vector<Wave> waves_of_x;
      for (const auto& [f, r] : sum.terms()) {
        for (const auto& [unknown, c] : f.terms)
          if (unknown != x) return false;  // a settled angle that is not rational has no place in an interval
        waves_of_x.push_back({r, f.coefficient(x), f.constant});
      }
      const RootCount count = count_roots(waves_of_x, *guess, limits.low, limits.high, budget_);
      if (count != RootCount::only_this) {
        result_.obstacle = count == RootCount::several
                               ? fmt::format("An exact figure has this value, but a condition of the law of sines allows others, too.")
                               : fmt::format("An exact figure has this value; that it is the only one was not shown.");
        return false;
      }
      step.by = SettledBy::only_root;
      settled.value = step.value = *guess;
    }
    known_.settle(std::move(settled));
    result_.steps.push_back(std::move(step));
    result_.obstacle.clear();
    return true;
  }

  // The settled angles that a quantity is said by.
  void note_settled(const Form& form, std::set<UnknownId>& needed) const {
    for (const auto& [unknown, c] : known_.open(form).terms) needed.insert(unknown);
  }
  void note_settled(const SineCondition& condition, std::set<UnknownId>& needed) const {
    for (const UnknownId angle : condition.angles) note_settled(Form::of(angle), needed);
  }

  // A step that neither what was asked nor a later step speaks of was taken in vain.
  void drop_needless_steps() {
    std::set<UnknownId> needed;
    for (const Form& form : asked_)
      if (only_angles(form)) note_settled(form, needed);
    for (const SineCondition& identity : result_.identities) note_settled(identity, needed);
    std::vector<SettledStep> kept;
    for (auto step = result_.steps.rbegin(); step != result_.steps.rend(); ++step) {
      if (!needed.contains(step->angle)) continue;
      note_settled(step->condition, needed);
      for (const UnknownId angle : step->bounding) note_settled(Form::of(angle), needed);
      kept.push_back(std::move(*step));
    }
    result_.steps.assign(std::make_move_iterator(kept.rbegin()), std::make_move_iterator(kept.rend()));
  }

  // Everything about angles and lengths that the steps use, as the rules must show it: the settled angles keep their names.
  void collect_forms() {
    std::set<UnknownId> angles;
    std::vector<Form>& forms = result_.proved_forms;
    std::set<Form, FormOrder> seen;
    const auto take = [&](Form form) {
      if (!form.terms.empty() && seen.insert(form.normalised()).second) forms.push_back(std::move(form));
    };
    const auto take_lengths = [&](Form form) {  // "QR = 3QS", not "½QR = (3/2)QS"
      if (form.terms.empty()) return;
      Rational scale = 1;
      form = form.normalised();
      for (const auto& [unknown, c] : form.terms) scale *= denominator(c * scale);
      scale *= denominator(form.constant * scale);
      take(form.scale(scale));
    };
    const auto uses = [&](const SineCondition& condition) {
      angles.insert(condition.angles.begin(), condition.angles.end());
      for (const Form& form : condition.lengths) take_lengths(form);
    };
    for (const SettledStep& step : result_.steps) {
      uses(step.condition);
      angles.insert(step.bounding.begin(), step.bounding.end());
    }
    for (const SineCondition& identity : result_.identities) uses(identity);
    for (const UnknownId angle : angles) take(Form::of(angle).add(known_.open(Form::of(angle)), -1));
    for (const Form& form : asked_)
      if (only_angles(form)) take(Form(form).add(known_.open(form), -1));
  }

  const Statement& statement_;
  const Goal& goal_;
  Workings& workings_;
  KnownAngles known_;
  Budget budget_;
  std::vector<Form> asked_;
  Settling result_;
};

}  // namespace

Settling settle(const Statement& statement, std::size_t goal, Workings& workings, const Budget& budget) {
  return Settler(statement, goal, workings, budget).run();
}

}  // namespace prover
