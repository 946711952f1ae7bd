#include "prover/check/parity.hpp"

#include <bit>

namespace prover::replay {
namespace {

void flip(std::vector<std::uint64_t>& row, std::size_t bit) {
  row[bit / 64] ^= std::uint64_t{1} << (bit % 64);
}
bool has(const std::vector<std::uint64_t>& row, std::size_t bit) {
  return (row[bit / 64] >> (bit % 64)) & 1U;
}

}  // namespace

// The last bit of a row is the constant.
Parity::Parity(std::size_t bits) : bits_(bits), words_(bits / 64 + 1), row_of_(bits) {}

std::ptrdiff_t Parity::first_bit(const Row& row) const {
  for (std::size_t w = 0; w < words_; ++w) {
    if (row[w] == 0) continue;
    const std::size_t bit = w * 64 + static_cast<std::size_t>(std::countr_zero(row[w]));
    return bit < bits_ ? static_cast<std::ptrdiff_t>(bit) : -1;
  }
  return -1;
}

Parity::Row Parity::reduced(const SignSum& sum) const {
  Row row(words_, 0);
  for (const int bit : sum.bits) flip(row, static_cast<std::size_t>(bit));
  if (sum.odd) flip(row, bits_);
  for (std::size_t w = 0; w < words_; ++w) {
    std::uint64_t open = row[w];
    while (open != 0) {
      const std::size_t bit = w * 64 + static_cast<std::size_t>(std::countr_zero(open));
      open &= open - 1;
      if (bit >= bits_ || row_of_[bit].empty()) continue;
      for (std::size_t i = w; i < words_; ++i) row[i] ^= row_of_[bit][i];
      open = row[w] & ~((std::uint64_t{2} << (bit % 64)) - 1);  // what lies behind this bit
    }
  }
  return row;
}

bool Parity::add(const SignSum& sum, bool value) {
  Row row = reduced(sum);
  if (value) flip(row, bits_);
  const std::ptrdiff_t first = first_bit(row);
  if (first < 0) {
    if (has(row, bits_)) consistent_ = false;
    return false;
  }
  row_of_[static_cast<std::size_t>(first)] = std::move(row);
  return true;
}

std::optional<bool> Parity::value(const SignSum& sum) const {
  const Row row = reduced(sum);
  if (first_bit(row) >= 0) return std::nullopt;
  return has(row, bits_);
}

}  // namespace prover::replay
