#include "prover/check/positions.hpp"

#include <catch2/catch.hpp>
#include <random>

#include "prover/check/reading.hpp"
#include "tests/unit/check/board.hpp"

using namespace board;
using namespace prover::replay;

namespace {

// "K between L and M" is {between, "LKM"}; "K and L beside MN" is {same_side, "KLMN"}.
struct Said {
  Predicate predicate;
  std::string letters;
};

bool follows(const std::string& letters, const std::vector<Said>& givens, PositionKind kind,
             const std::string& asked) {
  const Board b(letters);
  Positions positions(letters.size());
  for (const auto& [predicate, names] : givens) {
    const Placement placement = placement_of(b.phrase(predicate, names), b.points(letters));
    CHECK(placement.readable);
    positions.assume(placement);
  }
  return positions.follows(b.position(kind, asked));
}

constexpr auto in_between = PositionKind::between;
constexpr auto same = PositionKind::same_side;
constexpr auto opposite = PositionKind::opposite_sides;
constexpr auto triangle = PositionKind::not_collinear;

}  // namespace

TEST_CASE("order on a line composes") {
  const std::vector<Said> row{{Predicate::on_segment, "LKM"}, {Predicate::on_segment, "MLN"}};  // K L M N
  CHECK(follows("KLMN", row, in_between, "KLN"));
  CHECK(follows("KLMN", row, in_between, "KMN"));
  CHECK(follows("KLMN", row, in_between, "NMK"));
  CHECK_FALSE(follows("KLMN", row, in_between, "LKM"));
  CHECK_FALSE(
      follows("KLMN", {{Predicate::on_segment, "LKM"}, {Predicate::on_line, "NKL"}}, in_between, "KLN"));
  CHECK(follows("KLMN", {{Predicate::on_segment, "LKM"}, {Predicate::on_segment, "NKL"}}, in_between, "NLM"));
}

TEST_CASE("a ray gives no order but keeps it") {
  const std::vector<Said> row{{Predicate::on_ray, "NKL"}, {Predicate::on_segment, "KML"}};  // M K (L, N)
  CHECK(follows("KLMN", row, in_between, "MKN"));
  CHECK_FALSE(follows("KLMN", row, in_between, "KLN"));
}

TEST_CASE("a point beside a line is beside it whatever two points name it") {
  const std::vector<Said> figure{{Predicate::triangle, "KLM"}, {Predicate::on_segment, "PKL"}};
  CHECK(follows("KLMP", figure, triangle, "KPM"));
  CHECK(follows("KLMP", figure, triangle, "PLM"));
  CHECK(follows("KLMP", figure, opposite, "KLPM"));
  CHECK(follows("KLMP", figure, same, "PLKM"));
  CHECK_FALSE(follows("KLMP", figure, same, "KLPM"));
  CHECK_FALSE(follows("KLMP", {{Predicate::on_segment, "PKL"}}, triangle, "KPM"));
}

TEST_CASE("diagonals of a convex quadrilateral part it") {
  const std::vector<Said> figure{{Predicate::convex, "KLMN"}, {Predicate::cross, "XKMLN"}};
  CHECK(follows("KLMNX", figure, opposite, "KMLN"));
  CHECK(follows("KLMNX", figure, opposite, "KMXN"));
  CHECK(follows("KLMNX", figure, same, "XMKL"));
  CHECK(follows("KLMNX", {{Predicate::convex, "KLMN"}, {Predicate::meet, "XKMLN"}}, in_between, "KXM"));
  CHECK(follows("KLMN", {{Predicate::convex, "KLMN"}}, opposite, "KMLN"));
  CHECK_FALSE(
      follows("KLMN", {{Predicate::triangle, "KLM"}, {Predicate::triangle, "KMN"}}, opposite, "KMLN"));
}

TEST_CASE("a ray inside an angle parts its arms") {
  const std::vector<Said> figure{{Predicate::inside_angle, "PKLM"}};
  CHECK(follows("KLMP", figure, opposite, "KMLP"));
  CHECK_FALSE(follows("KLMP", figure, same, "LPKM"));
  CHECK_FALSE(follows("KLMP", figure, opposite, "LPKM"));
}

TEST_CASE("a line that enters a triangle through a side leaves it through another") {
  // P inside triangle KLM, X on KP and on LM: X is between L and M, and P between K and X.
  const std::vector<Said> figure{{Predicate::inside_polygon, "PKLM"}, {Predicate::meet, "XKPLM"}};
  CHECK(follows("KLMPX", figure, in_between, "LXM"));
  CHECK(follows("KLMPX", figure, in_between, "KPX"));
  CHECK_FALSE(
      follows("KLMPX", {{Predicate::triangle, "KLM"}, {Predicate::meet, "XKPLM"}}, in_between, "LXM"));
}

TEST_CASE("parallels have all of each other on one side") {
  const std::vector<Said> figure{{Predicate::parallel, "KLMN"}, {Predicate::on_line, "PMN"}};
  CHECK(follows("KLMNP", figure, same, "MPKL"));
  CHECK(follows("KLMNP", figure, triangle, "KLP"));
  CHECK_FALSE(follows("KLMNP", figure, opposite, "KNLM"));
  CHECK_FALSE(follows("KLMNP", figure, same, "KNLM"));
}

TEST_CASE("what follows is true in every figure that shows what was said") {
  // Random points on a small grid, so that many are on lines; some true facts are told, and nothing false may
  // follow from them.
  std::mt19937 random(7);
  const auto pick = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
  int told = 0, followed = 0;
  for (int figure = 0; figure < 300; ++figure) {
    const int n = 5 + pick(3);
    std::vector<std::array<int, 2>> at;
    while (static_cast<int>(at.size()) < n) {
      const std::array<int, 2> p{pick(5), pick(4)};
      if (std::find(at.begin(), at.end(), p) == at.end()) at.push_back(p);
    }
    const auto side = [&](PointId a, PointId b, PointId c) {
      const auto &p = at[a.index()], &q = at[b.index()], &r = at[c.index()];
      const int cross = (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
      return (cross > 0) - (cross < 0);
    };
    const auto holds = [&](const Position& p) {
      switch (p.kind) {
        case PositionKind::between: {
          const auto &a = at[p.a.index()], &b = at[p.b.index()], &c = at[p.c.index()];
          return p.a != p.b && p.b != p.c && side(p.a, p.b, p.c) == 0 &&
                 (a[0] - b[0]) * (c[0] - b[0]) + (a[1] - b[1]) * (c[1] - b[1]) < 0;
        }
        case PositionKind::same_side:
          return side(p.c, p.d, p.a) * side(p.c, p.d, p.b) > 0;
        case PositionKind::opposite_sides:
          return side(p.c, p.d, p.a) * side(p.c, p.d, p.b) < 0;
        case PositionKind::not_collinear:
          return side(p.a, p.b, p.c) != 0;
      }
      return false;
    };
    std::vector<Position> all;
    for (int code = 0; code < n * n * n * n; ++code)
      for (const auto kind : {in_between, same, opposite, triangle})
        all.push_back({kind, PointId(code % n), PointId(code / n % n), PointId(code / n / n % n),
                       PointId(code / n / n / n)});
    Placement placement;
    for (int i = 0; i < 60; ++i) {
      const Position& p = all[static_cast<std::size_t>(pick(static_cast<int>(all.size())))];
      if (p.kind == PositionKind::between && holds(p)) placement.lines.push_back({p.a, p.b, p.c});
      if (holds(p)) placement.positions.push_back(p);
      if (p.a != p.b && p.b != p.c && p.a != p.c && side(p.a, p.b, p.c) == 0 && pick(2) == 0)
        placement.lines.push_back({p.a, p.b, p.c});
    }
    Positions positions(static_cast<std::size_t>(n));
    positions.assume(placement);
    for (const Position& p : placement.positions) CHECK(positions.follows(p));
    for (const Position& p : all) {
      if (!positions.follows(p)) continue;
      ++followed;
      if (!holds(p)) FAIL("something false follows");
    }
    told += static_cast<int>(placement.positions.size());
  }
  CHECK(followed > 2 * told);
}
