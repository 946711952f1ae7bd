// Sparse exact elimination over linear forms, kept fully reduced so that every question is one pass: does this
// equation follow, what is this unknown's value, are these two angles now known equal (they have the same normal
// form). On request each row remembers which added forms it came from, with multipliers: the certificate that
// the checker replays.
#pragma once
#include <optional>
#include <vector>

#include "prover/fact/form.hpp"

namespace prover {

class LinearSystem {
 public:
  enum class Added { new_row, follows, contradiction };
  struct Certificate {  // form = Σ multiplier · form added under that tag
    std::vector<std::pair<int, Rational>> parts;  // sorted by tag, no zero
  };

  explicit LinearSystem(bool with_certificates = false) : with_certificates_(with_certificates) {}

  // Adds "form = 0". After a contradiction (0 = c) the system stays as it was and says so ever after.
  Added add(const Form& form, int tag = -1);
  bool contradictory() const { return contradiction_.has_value(); }
  const Certificate& contradiction() const { return *contradiction_; }  // of the form 1 (constant) = 0

  // The normal form: what remains when every determined unknown is replaced. Equal for forms that are known equal.
  Form reduce(const Form& form) const;
  bool entails(const Form& form) const;
  bool is_zero(UnknownId unknown) const;  // entails that it is
  std::optional<Rational> value(UnknownId unknown) const;
  std::optional<Certificate> certificate(const Form& form) const;  // only when entailed and certificates are kept
  bool is_pivot(UnknownId unknown) const {
    return unknown.index() < row_of_.size() && row_of_[unknown.index()] >= 0;
  }
  std::size_t rank() const { return rows_.size(); }
  // The rows, each "= 0", solved for an unknown that stands in no other row; in no particular order.
  const Form& row(std::size_t i) const { return rows_[i].form; }
  UnknownId pivot(std::size_t row) const { return rows_[row].pivot; }  // the one that it is solved for

 private:
  struct Row {
    UnknownId pivot;    // coefficient 1 in `form`; occurs in no other row
    Form form;
    Certificate source;
  };
  std::pair<Form, Certificate> reduce_with_source(const Form& form) const;
  void note(const Form& form, std::size_t row);

  bool with_certificates_;
  std::vector<Row> rows_;
  std::vector<std::int32_t> row_of_;                     // by unknown: the row whose pivot it is, or -1
  std::vector<std::vector<std::int32_t>> occurs_in_;     // by unknown: rows that may contain it
  std::optional<Certificate> contradiction_;
};

}  // namespace prover
