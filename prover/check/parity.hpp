// Signs as a linear system: a sign is a bit, "these signs agree" is a sum of bits that is known. Elimination
// over the field of two elements then answers whether a further sum is forced.
#pragma once
#include <cstdint>
#include <optional>
#include <vector>

namespace prover::replay {

// A product of signs, perhaps negated.
struct SignSum {
  std::vector<int> bits;
  bool odd = false;
  friend SignSum operator+(SignSum a, const SignSum& b) {
    a.bits.insert(a.bits.end(), b.bits.begin(), b.bits.end());
    a.odd = a.odd != b.odd;
    return a;
  }
};

class Parity {
 public:
  explicit Parity(std::size_t bits);
  bool add(const SignSum& sum, bool value);  // whether it was new
  std::optional<bool> value(const SignSum& sum) const;
  bool consistent() const { return consistent_; }

 private:
  using Row = std::vector<std::uint64_t>;
  Row reduced(const SignSum& sum) const;
  std::ptrdiff_t first_bit(const Row& row) const;  // -1 for none; the constant does not count

  std::size_t bits_;
  std::size_t words_;
  std::vector<Row> row_of_;  // by first bit; empty where there is none
  bool consistent_ = true;
};

}  // namespace prover::replay
