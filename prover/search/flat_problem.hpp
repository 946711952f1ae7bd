// A search problem laid out flat: unknowns become columns without gaps, every form a row of whole numbers in one
// array, and for each column stands which conclusions speak of it. Built once, in time linear in its size.
#pragma once
#include <span>

#include "prover/search/row.hpp"
#include "prover/search/search_problem.hpp"

namespace prover {

class FlatProblem {
 public:
  // Throws RowOverflow when a form's coefficients do not fit in machine words.
  explicit FlatProblem(const SearchProblem& problem);

  int size() const { return static_cast<int>(weights_.size()); }  // candidates
  std::int32_t columns() const { return constant_ + 1; }
  std::int32_t constant() const { return constant_; }             // the last column
  std::int64_t weight(int i) const { return weights_[static_cast<std::size_t>(i)]; }
  std::size_t row_count() const { return row_begin_.size() - 1; }

  std::span<const RowEntry> row(int r) const {
    const auto at = static_cast<std::size_t>(r);
    return {entries_.data() + row_begin_[at], entries_.data() + row_begin_[at + 1]};
  }
  // Rows first_row(i) … first_conclusion(i) − 1 are premises of candidate i, from there to first_row(i + 1) its
  // conclusions.
  int first_row(int i) const { return first_row_[static_cast<std::size_t>(i)]; }
  int first_conclusion(int i) const { return first_conclusion_[static_cast<std::size_t>(i)]; }
  bool has_premises(int i) const { return first_row(i) != first_conclusion(i); }
  bool any_premises() const { return any_premises_; }
  int owner(int r) const { return owner_[static_cast<std::size_t>(r)]; }

  struct Occurrence {
    std::int32_t row;
    std::int64_t factor;
  };
  // Conclusions that contain a column; nothing for the constant.
  std::span<const Occurrence> occurrences(std::int32_t column) const {
    const auto at = static_cast<std::size_t>(column);
    return {occurrences_.data() + occurrence_begin_[at], occurrences_.data() + occurrence_begin_[at + 1]};
  }
  const std::vector<Row>& goal() const { return goal_; }
  bool wants_contradiction() const { return wants_contradiction_; }  // the goal is 0 = 1
  UnknownId unknown(std::int32_t column) const { return unknowns_[static_cast<std::size_t>(column)]; }
  Form form(std::span<const RowEntry> row) const;

 private:
  std::int32_t column_of(UnknownId unknown);
  void append(const Form& form);

  std::int32_t constant_ = 0;
  bool wants_contradiction_ = false, any_premises_ = false;
  std::vector<UnknownId> unknowns_;          // by column
  std::vector<std::int32_t> column_of_;      // by unknown, −1 when it does not occur
  std::vector<std::int64_t> weights_;
  std::vector<RowEntry> entries_;
  std::vector<std::size_t> row_begin_{0};
  std::vector<int> first_row_, first_conclusion_, owner_;
  std::vector<Occurrence> occurrences_;
  std::vector<std::size_t> occurrence_begin_;
  std::vector<Row> goal_;
};

}  // namespace prover
