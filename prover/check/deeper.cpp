// The laws of order that are not linear: of a few terms not all have one sign (positions.hpp, laws 2 to 4).
#include "prover/check/positions.hpp"

namespace prover::replay {
namespace {

PointId point(std::size_t i) { return PointId(static_cast<std::int64_t>(i)); }
SignSum negated(SignSum sum) {
  sum.odd = !sum.odd;
  return sum;
}

}  // namespace

bool Positions::not_all_equal(std::span<const SignSum> terms) {
  for (std::size_t last = 0; last < terms.size(); ++last) {
    const SignSum& first = terms[last == 0 ? 1 : 0];
    bool agree = true;
    for (std::size_t i = 0; agree && i < terms.size(); ++i)
      if (i != last && &terms[i] != &first) agree = parity_.value(first + terms[i]) == false;
    if (agree) return parity_.add(first + terms[last], true);
  }
  return false;
}

bool Positions::order_lines() {
  bool learnt = false;
  for (const Points& line : lines_.kept())
    for (std::size_t i = 0; i < line.size(); ++i)
      for (std::size_t j = i + 1; j < line.size(); ++j)
        for (std::size_t k = j + 1; k < line.size(); ++k) {
          const std::array<SignSum, 3> terms{sense(line[i], line[j]), sense(line[j], line[k]), sense(line[k], line[i])};
          learnt |= not_all_equal(terms);
        }
  return learnt;
}

bool Positions::five_points() {
  bool learnt = false;
  const std::size_t n = lines_.points();
  for (std::size_t x = 0; x < n; ++x)
    for (std::size_t a = 0; a < n; ++a)
      for (std::size_t b = a + 1; b < n; ++b)
        for (std::size_t c = b + 1; c < n; ++c)
          for (std::size_t d = c + 1; d < n; ++d) {
            if (x == a || x == b || x == c || x == d) continue;
            const PointId p[4] = {point(a), point(b), point(c), point(d)};
            // The term [x p q][x r s]: gone when a factor is 0, unusable when a factor is not known to be nonzero.
            std::vector<SignSum> terms;
            bool usable = true;
            const auto term = [&](int q, int r, int s, int t, bool minus) {
              if (lines_.collinear(point(x), p[q], p[r]) || lines_.collinear(point(x), p[s], p[t])) return;
              usable = usable && proper(point(x), p[q], p[r]) && proper(point(x), p[s], p[t]);
              if (!usable) return;
              SignSum sum = orientation(point(x), p[q], p[r]) + orientation(point(x), p[s], p[t]);
              terms.push_back(minus ? negated(std::move(sum)) : std::move(sum));
            };
            term(0, 1, 2, 3, false);
            if (usable) term(0, 2, 1, 3, true);
            if (usable) term(0, 3, 1, 2, false);
            if (usable && terms.size() >= 2) learnt |= not_all_equal(terms);
          }
  return learnt;
}

bool Positions::four_points() {
  bool learnt = false;
  const std::size_t n = lines_.points();
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = i + 1; j < n; ++j)
      for (std::size_t k = j + 1; k < n; ++k)
        for (std::size_t l = k + 1; l < n; ++l) {
          const PointId a = point(i), b = point(j), c = point(k), d = point(l);
          if (!proper(a, b, c) || !proper(a, b, d) || !proper(a, c, d) || !proper(b, c, d)) continue;
          const std::array<SignSum, 4> terms{orientation(a, b, c), negated(orientation(a, b, d)),
                                             orientation(a, c, d), negated(orientation(b, c, d))};
          learnt |= not_all_equal(terms);
        }
  return learnt;
}

void Positions::search_deeper() {
  if (deep_) return;
  deep_ = true;
  bool learnt = true;
  while (learnt) {
    learnt = four_points();
    learnt |= five_points();
    learnt |= order_lines();
    if (learnt) ++version_;
  }
}

}  // namespace prover::replay
