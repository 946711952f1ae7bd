#include "prover/base/hash_set.hpp"

#include <catch2/catch.hpp>

using prover::HashSet;

TEST_CASE("a hash is new once, also 0, and after the table has grown") {
  HashSet set;
  CHECK_FALSE(set.contains(7));
  for (std::uint64_t hash = 0; hash < 1000; hash += 2) CHECK(set.insert(hash));
  for (std::uint64_t hash = 0; hash < 1000; hash += 2) CHECK_FALSE(set.insert(hash));
  for (std::uint64_t hash = 0; hash < 1000; hash += 2) CHECK(set.contains(hash));
  for (std::uint64_t hash = 3; hash < 1000; hash += 2) CHECK_FALSE(set.contains(hash));
}
