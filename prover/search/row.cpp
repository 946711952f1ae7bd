#include "prover/search/row.hpp"

#include <algorithm>
#include <numeric>

namespace prover {

std::int64_t checked_product(std::int64_t a, std::int64_t b) {
  std::int64_t result = 0;
  if (__builtin_mul_overflow(a, b, &result)) throw RowOverflow();
  return result;
}

std::int64_t checked_sum(std::int64_t a, std::int64_t b) {
  std::int64_t result = 0;
  if (__builtin_add_overflow(a, b, &result) || result == INT64_MIN) throw RowOverflow();
  return result;
}

std::int64_t factor_in(std::span<const RowEntry> row, std::int32_t column) {
  const auto at = std::lower_bound(row.begin(), row.end(), column,
                                   [](const RowEntry& entry, std::int32_t c) { return entry.column < c; });
  return at != row.end() && at->column == column ? at->factor : 0;
}

void make_primitive(Row& row, std::int32_t column) {
  if (row.empty()) return;
  std::int64_t divisor = 0;
  for (const RowEntry& entry : row) {
    divisor = std::gcd(divisor, entry.factor);
    if (divisor == 1) break;
  }
  const std::int64_t leading = column < 0 ? row.front().factor : factor_in(row, column);
  if (leading < 0) divisor = -divisor;
  if (divisor != 1)
    for (RowEntry& entry : row) entry.factor /= divisor;
}

void combine(Row& row, std::int64_t x, std::span<const RowEntry> other, std::int64_t y, Row& scratch) {
  scratch.clear();
  auto a = row.begin();
  auto b = other.begin();
  while (a != row.end() || b != other.end()) {
    if (b == other.end() || (a != row.end() && a->column < b->column)) {
      scratch.push_back({a->column, checked_product(x, a->factor)});
      ++a;
    } else if (a == row.end() || b->column < a->column) {
      scratch.push_back({b->column, checked_product(y, b->factor)});
      ++b;
    } else {
      const std::int64_t sum = checked_sum(checked_product(x, a->factor), checked_product(y, b->factor));
      if (sum != 0) scratch.push_back({a->column, sum});
      ++a;
      ++b;
    }
  }
  row.swap(scratch);
}

}  // namespace prover
