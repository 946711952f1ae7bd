#include "prover/statement/canonical_fact.hpp"

#include "tests/unit/statement/told.hpp"

using namespace prover;
using told::Told;

namespace {
struct Points {
  UnknownTable unknowns;
  UnknownId operator()(FactKind kind, const std::string& letters) {
    std::vector<PointId> points;
    for (const char letter : letters) points.emplace_back(letter - 'A');
    return point_fact(kind, points, unknowns);
  }
};
}  // namespace

TEST_CASE("a fact is the same whichever way round it is said") {
  struct Row {
    FactKind kind;
    const char* first;
    std::vector<const char*> same, other;
  };
  const std::vector<Row> rows{
      {FactKind::collinear, "ABC", {"BCA", "CBA"}, {"ABD"}},
      {FactKind::concyclic, "ABCD", {"DBCA", "BACD"}, {"ABCE"}},
      {FactKind::joined, "AB", {"BA"}, {"AC"}},
      {FactKind::congruent, "ABCDEF", {"BACEDF", "CABFDE", "DEFABC", "EFDBCA"}, {"ABCEDF", "ABCDFE"}},
      {FactKind::similar, "ABCDEF", {"BCAEFD", "FEDCBA"}, {"ABCEFD"}},
      {FactKind::parallelogram, "ABCD", {"BCDA", "DCBA", "CBAD"}, {"ACBD", "ABDC"}},
      {FactKind::regular_polygon, "ABCDE", {"CDEAB", "AEDCB"}, {"ACEBD"}},
      {FactKind::square, "ABCD", {"DABC", "ADCB"}, {"ABDC"}},
      {FactKind::rectangle, "ABCD", {"DABC", "ADCB"}, {"ABDC"}},
      {FactKind::rhombus, "ABCD", {"DABC", "ADCB"}, {"ABDC"}},
      {FactKind::kite, "ABCD", {"ADCB"}, {"BCDA", "DCBA"}},  // AB = AD, CB = CD; not AB = BC
      {FactKind::trapezium, "ABCD", {"BADC", "CDAB", "DCBA"}, {"BCDA", "DABC"}},  // AB ∥ DC; not BC ∥ AD
  };
  for (const Row& row : rows) {
    Points fact;
    const UnknownId first = fact(row.kind, row.first);
    for (const char* same : row.same) {
      INFO(row.first << " and " << same);
      CHECK(fact(row.kind, same) == first);
    }
    for (const char* other : row.other) {
      INFO(row.first << " and " << other);
      CHECK(fact(row.kind, other) != first);
    }
  }
}

// AB = AD and CB = CD say the same with A and C exchanged.
TEST_CASE("a kite may start at either end of its axis") {
  Points fact;
  CHECK(fact(FactKind::kite, "ABCD") == fact(FactKind::kite, "CBAD"));
}

TEST_CASE("parallels are a fact of two lines, whichever points name them") {
  Told told("line: K, L, P in this order; line: M, N, Q in this order; parallel: KL, MN; parallel: KM, LN");
  auto fact = [&](FactKind kind, const std::string& p) {
    return line_fact(kind, told.point(p.substr(0, 1)), told.point(p.substr(1, 1)), told.point(p.substr(2, 1)),
                     told.point(p.substr(3, 1)), told.figure, told.unknowns);
  };
  const UnknownId rails = fact(FactKind::parallel, "KLMN");
  CHECK(rails.valid());
  for (const char* same : {"LKMN", "MNKL", "NQPK", "QMLP"}) CHECK(fact(FactKind::parallel, same) == rails);
  CHECK(fact(FactKind::parallel, "KMLN") != rails);
  CHECK(fact(FactKind::perpendicular, "KLMN") != rails);
  CHECK_FALSE(fact(FactKind::parallel, "KLLP").valid());  // one line
  CHECK_FALSE(fact(FactKind::parallel, "KLMP").valid());  // MP is not drawn
}

TEST_CASE("an angle is the same fact from any points on its arms") {
  Told told("line: K, L, M in this order; line: K, N, P in this order; KL = KN");
  CHECK(told.form("angle LKN = 40") == told.form("angle MKP = 40"));
  CHECK(told.form("angle LKN = 40") == told.form("angle PKL = 40"));
  CHECK_FALSE(told.form("angle LKN = 40") == told.form("angle LKN = 41"));
  CHECK_FALSE(told.form("angle LKN = angle MKP + 1").is_zero());
  CHECK(told.form("angle LKN = angle MKP").is_zero());
}
