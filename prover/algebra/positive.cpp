#include "prover/algebra/positive.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace prover {

namespace {

constexpr std::size_t most_cells = 40'000;  // of the tableau
constexpr int most_pivots = 400;

bool is_size(UnknownId id, const UnknownTable& unknowns) {
  const UnknownKind kind = unknowns[id].kind;
  return kind == UnknownKind::angle || kind == UnknownKind::length || kind == UnknownKind::excess;
}

// Maximise t where every size is z + t with z ≥ 0, in the homogeneous equations (their constants times one more size). All
// right sides are 0, so t is 0 or as large as we like. When it is 0 the row of costs is the combination looked for.
class Tableau {
 public:
  Tableau(const LinearSystem& system, const UnknownTable& unknowns) : system_(system), unknowns_(unknowns) {}

  // `more`: a form that is asked to be positive: it is set to −w with w ≥ 0.
  bool fill(const Form* more) {
    collect(more);
    for (const Form& row : rows_)
      for (const auto& [u, c] : row.terms) column(u);
    one_ = columns_++;
    t_ = columns_++;
    if (more != nullptr) w_ = columns_++;
    if ((rows_.size() + 1) * columns_ > most_cells) return false;
    for (std::size_t r = 0; r < rows_.size(); ++r) {
      std::vector<Rational> cells(columns_);
      const bool asked = more != nullptr && r + 1 == rows_.size();
      for (const auto& [u, c] : rows_[r].terms) {
        const auto [positive, negative] = place_.at(u);
        cells[positive] += c;
        if (negative != positive)
          cells[negative] -= c;
        else
          cells[t_] += c;
      }
      cells[one_] = rows_[r].constant;
      cells[t_] += rows_[r].constant;
      if (asked) cells[w_] = 1;
      basis_.push_back(asked ? w_ : place_.at(pivots_[r]).first);
      cells_.push_back(std::move(cells));
    }
    cost_.assign(columns_, 0);
    cost_[t_] = 1;
    return true;
  }

  // True: t stays 0.
  bool bounded() {
    for (int pivot = 0; pivot < most_pivots; ++pivot) {
      const auto entering = std::find_if(cost_.begin(), cost_.end(), [](const Rational& c) { return c.sign() > 0; });
      if (entering == cost_.end()) return true;
      const auto column = static_cast<std::size_t>(entering - cost_.begin());
      std::size_t row = cells_.size();
      for (std::size_t r = 0; r < cells_.size(); ++r)
        if (cells_[r][column].sign() > 0 && (row == cells_.size() || basis_[r] < basis_[row])) row = r;
      if (row == cells_.size()) return false;
      exchange(row, column);
    }
    return false;
  }

  Form combination() const {
    Form sum = Form::number(-cost_[one_]);
    for (const auto& [u, place] : place_)
      if (place.first == place.second && !cost_[place.first].is_zero()) sum.add(Form::of(u, -cost_[place.first]));
    return sum;
  }
  Rational factor_of_more() const { return -cost_[w_]; }

 private:
  // Rows that share sizes with an excess or with the form; all others have no part in it.
  void collect(const Form* more) {
    std::set<UnknownId> reached;
    const auto note = [&](const Form& form) {
      for (const auto& [u, c] : form.terms) reached.insert(u);
    };
    Form asked;
    if (more != nullptr) note(asked = system_.reduce(*more));
    std::vector<bool> taken(system_.rank(), false);
    for (bool changed = true; changed;) {
      changed = false;
      for (std::size_t r = 0; r < system_.rank(); ++r) {
        if (taken[r] || !is_size(system_.pivot(r), unknowns_)) continue;
        const Form& row = system_.row(r);
        if (std::none_of(row.terms.begin(), row.terms.end(), [&](const auto& term) {
              return reached.contains(term.first) || (more == nullptr && unknowns_[term.first].kind == UnknownKind::excess);
            }))
          continue;
        taken[r] = changed = true;
        note(row);
      }
    }
    for (std::size_t r = 0; r < taken.size(); ++r) {
      if (!taken[r]) continue;
      rows_.push_back(system_.row(r));
      pivots_.push_back(system_.pivot(r));
    }
    if (more != nullptr) rows_.push_back(asked);
  }

  void column(UnknownId u) {
    if (place_.contains(u)) return;
    const std::size_t first = columns_++;
    place_[u] = {first, is_size(u, unknowns_) ? first : columns_++};  // what may be negative has two columns
  }

  void exchange(std::size_t row, std::size_t column) {
    std::vector<Rational>& pivot = cells_[row];
    const Rational by = pivot[column];
    for (Rational& cell : pivot)
      if (!cell.is_zero()) cell /= by;
    const auto clear = [&](std::vector<Rational>& cells) {
      if (cells[column].is_zero()) return;
      const Rational factor = cells[column];
      for (std::size_t c = 0; c < columns_; ++c)
        if (!pivot[c].is_zero()) cells[c] -= factor * pivot[c];
    };
    for (std::size_t r = 0; r < cells_.size(); ++r)
      if (r != row) clear(cells_[r]);
    clear(cost_);
    basis_[row] = column;
  }

  const LinearSystem& system_;
  const UnknownTable& unknowns_;
  std::vector<Form> rows_;
  std::vector<UnknownId> pivots_;
  std::map<UnknownId, std::pair<std::size_t, std::size_t>> place_;
  std::size_t columns_ = 0, one_ = 0, t_ = 0, w_ = 0;
  std::vector<std::vector<Rational>> cells_;
  std::vector<std::size_t> basis_;
  std::vector<Rational> cost_;
};

}  // namespace

std::optional<Form> plainly_positive_sum(const Form& form, const LinearSystem& system, const UnknownTable& unknowns) {
  const Form normal = system.reduce(form);
  if (is_positive(normal, unknowns)) return normal;
  const auto negative = std::find_if(normal.terms.begin(), normal.terms.end(), [](const auto& term) { return term.second.sign() < 0; });
  if (negative == normal.terms.end()) return std::nullopt;
  for (std::size_t r = 0; r < system.rank(); ++r) {
    const Rational there = system.row(r).coefficient(negative->first);
    if (there.sign() <= 0) continue;
    Form sum = normal;
    sum.add(system.row(r), -negative->second / there);
    if (is_positive(sum, unknowns)) return sum;
  }
  return std::nullopt;
}

std::optional<Form> as_positive_sum(const Form& form, const LinearSystem& system, const UnknownTable& unknowns) {
  if (auto plain = plainly_positive_sum(form, system, unknowns)) return plain;
  Tableau tableau(system, unknowns);
  if (!tableau.fill(&form) || !tableau.bounded() || tableau.factor_of_more().sign() <= 0) return std::nullopt;
  Form sum = tableau.combination();
  sum.scale(Rational(1) / tableau.factor_of_more());
  return is_positive(sum, unknowns) ? std::optional(sum) : std::nullopt;
}

std::optional<Form> positive_sum_that_is_zero(const LinearSystem& system, const UnknownTable& unknowns) {
  Tableau tableau(system, unknowns);
  if (!tableau.fill(nullptr) || !tableau.bounded()) return std::nullopt;
  Form sum = tableau.combination();
  return is_positive(sum, unknowns) && system.entails(sum) ? std::optional(sum) : std::nullopt;
}

}  // namespace prover
