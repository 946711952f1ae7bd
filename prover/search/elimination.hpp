// An elimination that stays fully reduced: each row is solved for a pivot column that stands in no other row. So a
// row is reduced in one pass, and the dual vectors that give cuts can be read off (`cut_finder.hpp`).
// Columns from `data_columns` on are carried along but never become pivots: labels that tell where a row came from.
#pragma once
#include "prover/search/row.hpp"

namespace prover {

class Elimination {
 public:
  // Among columns of a row that are equally rare, which becomes the pivot. It decides which dual vectors there are, and
  // so how good the cuts: for chains of plain equations the first ones gave bounds a quarter higher, with nested
  // premises the last ones kept the search tree several times smaller.
  enum class Ties { first, last };

  // `constant`: that column becomes a pivot only when nothing else is left in a row.
  Elimination(std::int32_t data_columns, std::int32_t constant, Ties ties)
      : data_columns_(data_columns), constant_(constant), ties_(ties) {}

  void clear();
  bool add(Row row);  // "row = 0"; false when it follows already
  // row becomes its normal form, times a positive number.
  void reduce(Row& row) const;
  bool is_pivot(std::int32_t column) const {
    return static_cast<std::size_t>(column) < row_of_.size() && row_of_[static_cast<std::size_t>(column)] >= 0;
  }
  std::size_t rank() const { return rows_.size(); }
  const Row& row(std::size_t k) const { return rows_[k]; }
  const Row& row_of(std::int32_t pivot) const {
    return rows_[static_cast<std::size_t>(row_of_[static_cast<std::size_t>(pivot)])];
  }
  std::int32_t pivot(std::size_t k) const { return pivots_[k]; }
  // Indices of rows that may contain a column that is neither a pivot nor the constant; each once.
  const std::vector<std::int32_t>& rows_with(std::int32_t column) const {
    static const std::vector<std::int32_t> none;
    return static_cast<std::size_t>(column) < occurs_.size() ? occurs_[static_cast<std::size_t>(column)] : none;
  }

 private:
  void note(std::int32_t column, std::int32_t index);

  std::int32_t data_columns_, constant_;
  Ties ties_;
  std::vector<Row> rows_;
  std::vector<std::int32_t> pivots_;
  std::vector<std::int32_t> row_of_;                // by column
  std::vector<std::vector<std::int32_t>> occurs_;   // by column
  mutable std::vector<std::int32_t> touched_;       // columns with something to clear
  mutable Row scratch_;
};

}  // namespace prover
