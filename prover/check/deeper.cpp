// The laws of order that are not linear: of a few terms not all have one sign (positions.hpp, laws 2 to 4).
#include <algorithm>
#include <utility>

#include "prover/check/positions.hpp"

namespace prover::replay {
namespace {

PointId point(std::size_t i) {
  return PointId(static_cast<std::int64_t>(i));
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
          const std::array<SignSum, 3> terms{sense(line[i], line[j]), sense(line[j], line[k]),
                                             sense(line[k], line[i])};
          learnt |= not_all_equal(terms);
        }
  return learnt;
}

// Products of orientations that add up to 0. Those with a factor on a line are gone; of the others not all
// have one sign. If a single factor is not known to be off a line, and all other products agree, it must be
// off it.
bool Positions::add_up_to_zero(std::span<const Product> products) {
  std::vector<SignSum> signs;
  const Triple* open = nullptr;
  for (const Product& product : products) {
    const std::span factors(product.factors.data(), product.two ? 2U : 1U);
    if (std::any_of(factors.begin(), factors.end(),
                    [&](const Triple& t) { return lines_.collinear(t[0], t[1], t[2]); }))
      continue;
    SignSum sign{{}, product.negative};
    bool known = true;
    for (const Triple& t : factors) {
      if (proper(t[0], t[1], t[2])) {
        sign = sign + orientation(t[0], t[1], t[2]);
      } else {
        if (open) return false;
        open = &t;
        known = false;
      }
    }
    if (known) signs.push_back(std::move(sign));
  }
  if (!open) return signs.size() >= 2 && not_all_equal(signs);
  for (std::size_t i = 1; i < signs.size(); ++i)
    if (parity_.value(signs[0] + signs[i]) != false) return false;
  if (signs.empty()) return false;
  off_line_.push_back(*open);
  return true;
}

bool Positions::five_points() {
  bool learnt = false;
  const std::size_t n = lines_.points();
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j)
      for (std::size_t k = j + 1; k < n; ++k)
        for (std::size_t l = k + 1; l < n; ++l)
          for (std::size_t m = l + 1; m < n; ++m) {
            if (i == j || i == k || i == l || i == m) continue;
            const PointId x = point(i), a = point(j), b = point(k), c = point(l), d = point(m);
            const std::array<Product, 3> law{{{{{{x, a, b}, {x, c, d}}}, true, false},
                                              {{{{x, a, c}, {x, b, d}}}, true, true},
                                              {{{{x, a, d}, {x, b, c}}}, true, false}}};
            learnt |= add_up_to_zero(law);
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
          const std::array<Product, 4> law{{{{{{a, b, c}}}, false, false},
                                            {{{{a, b, d}}}, false, true},
                                            {{{{a, c, d}}}, false, false},
                                            {{{{b, c, d}}}, false, true}}};
          learnt |= add_up_to_zero(law);
        }
  return learnt;
}

void Positions::search_deeper() {
  if (deep_) return;
  bool learnt = true;
  while (learnt) {
    learnt = four_points();
    learnt |= five_points();
    learnt |= order_lines();
    if (!off_line_.empty()) {  // more triples to speak of: from the beginning, with these
      for (const auto& [a, b, c] : off_line_)
        positions_.push_back({PositionKind::not_collinear, a, b, c, {}});
      off_line_.clear();
      built_ = false;
      build();
    }
    if (learnt) ++version_;
  }
  deep_ = true;
}

}  // namespace prover::replay
