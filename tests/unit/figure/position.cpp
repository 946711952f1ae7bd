#include "prover/figure/position.hpp"

#include <catch2/catch.hpp>

using namespace prover;

namespace {
constexpr PointId K(0), L(1), M(2), N(3);
const Names names{{"K", "L", "M", "N"}};
Position position(PositionKind kind, PointId a, PointId b, PointId c, PointId d = {}) {
  return canonical({kind, a, b, c, d});
}
}  // namespace

TEST_CASE("a position is the same whichever way round it is said") {
  using Kind = PositionKind;
  CHECK(position(Kind::between, K, L, M) == position(Kind::between, M, L, K));
  CHECK(position(Kind::same_side, K, L, M, N) == position(Kind::same_side, L, K, N, M));
  CHECK(position(Kind::opposite_sides, K, L, N, M) == position(Kind::opposite_sides, L, K, M, N));
  for (const auto& [a, b, c] : {std::array{K, M, L}, std::array{L, K, M}, std::array{L, M, K},
                                std::array{M, K, L}, std::array{M, L, K}})
    CHECK(position(Kind::not_collinear, K, L, M) == position(Kind::not_collinear, a, b, c));
}

TEST_CASE("different positions differ") {
  using Kind = PositionKind;
  CHECK(position(Kind::between, K, L, M) != position(Kind::between, L, K, M));
  CHECK(position(Kind::same_side, K, L, M, N) != position(Kind::same_side, M, N, K, L));
  CHECK(position(Kind::same_side, K, L, M, N) != position(Kind::opposite_sides, K, L, M, N));
  CHECK(position(Kind::not_collinear, K, L, M) != position(Kind::not_collinear, K, L, N));
}

TEST_CASE("a position reads as a sentence") {
  CHECK(describe({PositionKind::between, K, L, M, {}}, names) == "L is between K and M");
  CHECK(describe({PositionKind::same_side, K, N, L, M}, names) == "K and N are on the same side of LM");
  CHECK(describe({PositionKind::opposite_sides, K, N, L, M}, names) == "K and N are on opposite sides of LM");
  CHECK(describe({PositionKind::not_collinear, K, L, M, {}}, names) == "K, L and M are not on one line");
}
