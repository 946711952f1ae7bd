#include "prover/reading/modular_echelon.hpp"

#include <algorithm>

namespace prover {

namespace {

constexpr std::uint64_t kPrime = 2'147'483'647;

std::uint64_t power(std::uint64_t base, std::uint64_t exponent) {
  std::uint64_t result = 1;
  for (; exponent > 0; exponent /= 2, base = base * base % kPrime)
    if (exponent % 2 == 1) result = result * base % kPrime;
  return result;
}
std::uint32_t whole_modulo(std::int64_t n) {
  const std::int64_t p = static_cast<std::int64_t>(kPrime);
  return static_cast<std::uint32_t>((n % p + p) % p);
}

int open_terms(const ModularEchelon::Row& row) {
  const int open = static_cast<int>(row.size() - 1) - static_cast<int>(std::count(row.begin(), row.end() - 1, 0u));
  if (open < 2) return 0;
  std::uint64_t sum = 0;
  for (std::size_t k = 0; k + 1 < row.size(); ++k) sum += row[k];
  const bool equality = open == 2 && row.back() == 0 && sum % kPrime == 0;
  return open - (equality ? 1 : 0);
}

}  // namespace

std::uint32_t ModularEchelon::modulo(const Rational& r) {
  if (const auto whole = r.to_int64()) return whole_modulo(*whole);
  const std::string text = r.to_string();  // "37/2": rare
  const std::size_t slash = text.find('/');
  const auto part = [](const std::string& digits) {
    std::uint64_t value = 0;
    for (const char c : digits)
      if (c != '-') value = (value * 10 + static_cast<std::uint64_t>(c - '0')) % kPrime;
    return value;
  };
  const std::uint64_t numerator = part(text.substr(0, slash)), denominator = slash == text.npos ? 1 : part(text.substr(slash + 1));
  const std::uint64_t value = numerator * power(denominator, kPrime - 2) % kPrime;
  return static_cast<std::uint32_t>(text[0] == '-' && value != 0 ? kPrime - value : value);
}

void ModularEchelon::reduce(Row& row) const {
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const std::uint64_t factor = row[pivots_[i]];
    if (factor == 0) continue;
    for (std::size_t k = pivots_[i]; k < row.size(); ++k)
      if (rows_[i][k] != 0)
        row[k] = static_cast<std::uint32_t>((row[k] + (kPrime - factor) * rows_[i][k]) % kPrime);
  }
}

void ModularEchelon::add(Row row) {
  reduce(row);
  std::size_t pivot = 0;
  while (pivot + 1 < row.size() && row[pivot] == 0) ++pivot;
  if (pivot + 1 >= row.size()) return;
  const std::uint64_t inverse = power(row[pivot], kPrime - 2);
  for (std::uint32_t& c : row) c = static_cast<std::uint32_t>(c * inverse % kPrime);
  for (Row& other : rows_) {
    const std::uint64_t factor = other[pivot];
    if (factor == 0) continue;
    for (std::size_t k = 0; k < row.size(); ++k)
      other[k] = static_cast<std::uint32_t>((other[k] + (kPrime - factor) * row[k]) % kPrime);
  }
  rows_.push_back(std::move(row));
  pivots_.push_back(pivot);
}

bool ModularEchelon::entails(Row row) const {
  reduce(row);
  return std::all_of(row.begin(), row.end(), [](std::uint32_t c) { return c == 0; });
}

int ModularEchelon::left_open(Row row) const {
  const int as_it_stands = open_terms(row);
  reduce(row);
  return std::min(as_it_stands, open_terms(row));
}

}  // namespace prover
