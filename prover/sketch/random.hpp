// Pseudo-random numbers that are the same on every machine (the distributions of <random> are not): SplitMix64,
// Steele, Lea and Flood, "Fast splittable pseudorandom number generators", 2014.
#pragma once
#include <cstdint>

namespace prover::sketching {

class Random {
 public:
  explicit Random(std::uint64_t seed) : state_(seed) {}
  std::uint64_t next() {
    std::uint64_t z = (state_ += 0x9e3779b97f4a7c15ULL);
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31);
  }
  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(next() >> 11) * 0x1.0p-53);
  }
  std::size_t below(std::size_t bound) { return static_cast<std::size_t>(next() % bound); }
  bool chance(double probability) { return between(0, 1) < probability; }

 private:
  std::uint64_t state_;
};

}  // namespace prover::sketching
