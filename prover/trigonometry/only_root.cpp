#include "prover/trigonometry/only_root.hpp"

#include <arb.h>

#include <deque>
#include <optional>
#include <utility>

#include "prover/trigonometry/root_sum.hpp"

namespace prover {

namespace {

constexpr slong kPrecision = 128;
constexpr int kHighestOrder = 8;        // of a root
constexpr int kSmallestRadius = 40;     // 2^-40 of the interval
constexpr int kMostParts = 20'000;      // of the bisection

struct Ball {
  arb_t b;
  Ball() { arb_init(b); }
  Ball(const Ball& other) {
    arb_init(b);
    arb_set(b, other.b);
  }
  Ball& operator=(const Ball& other) {
    arb_set(b, other.b);
    return *this;
  }
  ~Ball() { arb_clear(b); }
};

Ball ball_of(const Rational& value) {
  fmpq_t q;
  fmpq_init(q);
  fmpq_set_str(q, value.to_string().c_str(), 10);
  Ball ball;
  arb_set_fmpq(ball.b, q, kPrecision);
  fmpq_clear(q);
  return ball;
}

// The sum and its derivatives by x, up to a positive factor each (π/180 to the order).
class Function {
 public:
  explicit Function(const std::vector<Wave>& sum) : sum_(sum) {
    for (const Wave& wave : sum) {
      factors_.push_back(ball_of(wave.factor));
      slopes_.push_back(ball_of(wave.slope / 180));
      shifts_.push_back(ball_of(wave.shift / 180));
    }
  }

  Ball at(const Ball& x, int order) const {
    Ball value, angle, term, quarter_turns;
    arb_set_si(quarter_turns.b, order);
    arb_mul_2exp_si(quarter_turns.b, quarter_turns.b, -1);
    for (std::size_t i = 0; i < sum_.size(); ++i) {
      arb_mul(angle.b, slopes_[i].b, x.b, kPrecision);
      arb_add(angle.b, angle.b, shifts_[i].b, kPrecision);
      arb_add(angle.b, angle.b, quarter_turns.b, kPrecision);
      arb_cos_pi(term.b, angle.b, kPrecision);
      arb_mul(term.b, term.b, factors_[i].b, kPrecision);
      for (int k = 0; k < order; ++k) arb_mul(term.b, term.b, slopes_[i].b, kPrecision);
      arb_add(value.b, value.b, term.b, kPrecision);
    }
    return value;
  }

  // The order of the root at x, exactly; 0 when it is none, nothing when it is out of reach.
  std::optional<int> order_at(const Rational& x) const {
    for (int order = 0; order <= kHighestOrder; ++order) {
      RootSum value;
      for (const Wave& wave : sum_) {
        Rational factor = wave.factor;
        for (int k = 0; k < order; ++k) factor *= wave.slope;
        value.add(RootSum::cosine(wave.slope * x + wave.shift + Rational(90 * order), factor));
      }
      const auto zero = value.is_zero();
      if (!zero) return std::nullopt;
      if (!*zero) return order;
    }
    return std::nullopt;
  }

  // No zero in the interval, by its own values or by those of its middle and the slopes.
  bool keeps_away_from_zero(const Ball& interval) const {
    const Ball direct = at(interval, 0);
    if (!arb_contains_zero(direct.b)) return true;
    Ball middle, rest, slope;
    arb_get_mid_arb(middle.b, interval.b);
    arb_sub(rest.b, interval.b, middle.b, kPrecision);
    slope = at(interval, 1);
    Ball pi;
    arb_const_pi(pi.b, kPrecision);
    arb_mul(slope.b, slope.b, pi.b, kPrecision);  // `at` leaves π out; x is in degrees, slopes in half-turns
    arb_mul(rest.b, rest.b, slope.b, kPrecision);
    Ball value = at(middle, 0);
    arb_add(value.b, value.b, rest.b, kPrecision);
    return !arb_contains_zero(value.b);
  }

 private:
  const std::vector<Wave>& sum_;
  std::vector<Ball> factors_, slopes_, shifts_;
};

// How far from x (a point of the closed interval) there is no other root; in 2^-k of `width`. Nothing when not found.
std::optional<Rational> clear_radius(const Function& f, const Rational& x, const Rational& width) {
  const auto order = f.order_at(x);
  if (!order) return std::nullopt;
  Rational radius = width / 4;
  for (int k = 0; k < kSmallestRadius; ++k, radius /= 2) {
    Ball around;
    const Ball left = ball_of(x - radius), right = ball_of(x + radius);
    arb_union(around.b, left.b, right.b, kPrecision);
    const Ball value = f.at(around, *order);
    if (!arb_contains_zero(value.b)) return radius;
  }
  return std::nullopt;
}

// No root between the two numbers.
bool free_of_roots(const Function& f, const Rational& from, const Rational& to, const Budget& budget) {
  if (!(from < to)) return true;
  std::deque<std::pair<Rational, Rational>> parts{{from, to}};
  for (int done = 0; !parts.empty(); ++done) {
    if (done > kMostParts || budget.exhausted()) return false;
    const auto [a, b] = parts.front();
    parts.pop_front();
    Ball interval;
    const Ball left = ball_of(a), right = ball_of(b);
    arb_union(interval.b, left.b, right.b, kPrecision);
    if (f.keeps_away_from_zero(interval)) continue;
    const Rational middle = (a + b) / 2;
    const Ball here = f.at(ball_of(middle), 0);
    const Ball start = f.at(left, 0);
    // A change of sign is a root: no use going on.
    if ((arb_is_positive(here.b) && arb_is_negative(start.b)) || (arb_is_negative(here.b) && arb_is_positive(start.b)))
      return false;
    parts.emplace_back(a, middle);
    parts.emplace_back(middle, b);
  }
  return true;
}

// The sum has a positive and a negative value between the two numbers.
bool changes_sign(const Function& f, const Rational& from, const Rational& to) {
  constexpr int samples = 64;
  bool positive = false, negative = false;
  for (int k = 0; k <= samples && from < to; ++k) {
    const Ball value = f.at(ball_of(from + (to - from) * Rational(k, samples)), 0);
    positive = positive || arb_is_positive(value.b);
    negative = negative || arb_is_negative(value.b);
  }
  return positive && negative;
}

}  // namespace

RootCount count_roots(const std::vector<Wave>& sum, const Rational& x, const Rational& low, const Rational& high,
                      const Budget& budget) {
  if (!(low < x) || !(x < high)) return RootCount::not_decided;
  const Function f(sum);
  const auto order = f.order_at(x);
  if (!order || *order == 0) return RootCount::not_decided;
  const Rational width = high - low;
  const auto at_low = clear_radius(f, low, width), at_x = clear_radius(f, x, width), at_high = clear_radius(f, high, width);
  if (!at_low || !at_x || !at_high) return RootCount::not_decided;
  if (free_of_roots(f, low + *at_low, x - *at_x, budget) && free_of_roots(f, x + *at_x, high - *at_high, budget))
    return RootCount::only_this;
  if (changes_sign(f, low + *at_low, x - *at_x) || changes_sign(f, x + *at_x, high - *at_high)) return RootCount::several;
  return RootCount::not_decided;
}

}  // namespace prover
