// Sparse rows of whole numbers: the search's own form of an equation "Σ factor · column = 0". The constant has a
// column of its own. Machine words throughout; a row that would not fit throws `RowOverflow`, never wraps, and the
// search then says that it cannot judge (`lightest_set.hpp`).
#pragma once
#include <cstdint>
#include <span>
#include <stdexcept>
#include <vector>

namespace prover {

struct RowEntry {
  std::int32_t column = 0;
  std::int64_t factor = 0;
  friend bool operator==(const RowEntry&, const RowEntry&) = default;
};
using Row = std::vector<RowEntry>;  // sorted by column, no zero factor

struct RowOverflow : std::runtime_error {
  RowOverflow() : std::runtime_error("a coefficient outgrew a machine word") {}
};

std::int64_t checked_product(std::int64_t a, std::int64_t b);
std::int64_t checked_sum(std::int64_t a, std::int64_t b);
std::int64_t factor_in(std::span<const RowEntry> row, std::int32_t column);  // 0 when absent
// Divides by the greatest common divisor; the factor of `column` (of the first entry when absent) becomes positive.
void make_primitive(Row& row, std::int32_t column = -1);
// row := x·row + y·other, through `scratch`.
void combine(Row& row, std::int64_t x, std::span<const RowEntry> other, std::int64_t y, Row& scratch);

}  // namespace prover
