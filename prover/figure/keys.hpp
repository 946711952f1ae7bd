// Small keys for the tables of the figure room: pairs and triples of ids packed into 64 bits (21 bits each,
// far above the limit on points).
#pragma once
#include <algorithm>
#include <cstdint>

#include "prover/base/ids.hpp"

namespace prover {

inline std::uint64_t key(std::int64_t a, std::int64_t b, std::int64_t c = 0) {
  return (static_cast<std::uint64_t>(a) << 42) | (static_cast<std::uint64_t>(b) << 21) |
         static_cast<std::uint64_t>(c);
}
inline std::uint64_t pair_key(PointId a, PointId b) {
  return a < b ? key(a.value, b.value) : key(b.value, a.value);
}
inline std::uint64_t triple_key(PointId a, PointId b, PointId c) {
  std::int32_t v[3] = {a.value, b.value, c.value};
  std::sort(v, v + 3);
  return key(v[0], v[1], v[2]);
}

}  // namespace prover
