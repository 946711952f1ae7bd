#include "prover/search/elimination.hpp"

#include <algorithm>
#include <numeric>

namespace prover {

void Elimination::clear() {
  for (const std::int32_t pivot : pivots_) row_of_[static_cast<std::size_t>(pivot)] = -1;
  for (const std::int32_t column : touched_) occurs_[static_cast<std::size_t>(column)].clear();
  touched_.clear();
  rows_.clear();
  pivots_.clear();
}

void Elimination::note(std::int32_t column, std::int32_t index) {
  if (column == constant_) return;
  auto& list = occurs_[static_cast<std::size_t>(column)];
  if (list.empty()) touched_.push_back(column);
  if (std::find(list.begin(), list.end(), index) == list.end()) list.push_back(index);
}

void Elimination::reduce(Row& row) const {
  // Pivots stand in no other row, so reducing by one brings in no other.
  for (std::size_t at = 0; at < row.size();) {
    const std::int32_t column = row[at].column;
    if (column >= data_columns_) break;
    if (!is_pivot(column)) {
      ++at;
      continue;
    }
    const Row& by = rows_[static_cast<std::size_t>(row_of_[static_cast<std::size_t>(column)])];
    const std::int64_t c = row[at].factor;
    const std::int64_t f = factor_in(by, column);  // positive
    const std::int64_t common = std::gcd(c, f);
    combine(row, f / common, by, -(c / common), scratch_);
    // What lies before `at` may have changed, but holds no pivot; find the first entry not yet looked at.
    at = 0;
    while (at < row.size() && row[at].column < column) ++at;
    // Entries before the column that came from `by` are not pivots.
  }
}

bool Elimination::add(Row row) {
  reduce(row);
  if (row.empty() || row.front().column >= data_columns_) return false;
  if (static_cast<std::size_t>(data_columns_) > occurs_.size()) {
    occurs_.resize(static_cast<std::size_t>(data_columns_));
    row_of_.resize(static_cast<std::size_t>(data_columns_), -1);
  }
  // The rarest column becomes the pivot: it disturbs the fewest rows.
  std::int32_t best = -1;
  std::size_t fewest = 0;
  for (const RowEntry& entry : row) {
    if (entry.column >= data_columns_) break;
    if (entry.column == constant_ && best >= 0) continue;
    const std::size_t count = occurs_[static_cast<std::size_t>(entry.column)].size();
    if (best < 0 || count < fewest || (count == fewest && ties_ == Ties::last)) {
      fewest = count;
      best = entry.column;
    }
  }
  make_primitive(row, best);
  const auto index = static_cast<std::int32_t>(rows_.size());
  auto& list = occurs_[static_cast<std::size_t>(best)];
  const std::int64_t f = factor_in(row, best);
  for (const std::int32_t k : list) {
    Row& other = rows_[static_cast<std::size_t>(k)];
    const std::int64_t c = factor_in(other, best);
    if (c == 0) continue;
    const std::int64_t common = std::gcd(c, f);
    combine(other, f / common, row, -(c / common), scratch_);
    if (f / common != 1) make_primitive(other, pivots_[static_cast<std::size_t>(k)]);
    for (const RowEntry& entry : row) {
      if (entry.column >= data_columns_) break;
      if (entry.column != best) note(entry.column, k);
    }
  }
  if (list.empty()) touched_.push_back(best);
  list.clear();
  for (const RowEntry& entry : row) {
    if (entry.column >= data_columns_) break;
    if (entry.column == best || entry.column == constant_) continue;
    auto& rows = occurs_[static_cast<std::size_t>(entry.column)];
    if (rows.empty()) touched_.push_back(entry.column);
    rows.push_back(index);  // new: it cannot stand there yet
  }
  row_of_[static_cast<std::size_t>(best)] = index;
  rows_.push_back(std::move(row));
  pivots_.push_back(best);
  return true;
}

}  // namespace prover
