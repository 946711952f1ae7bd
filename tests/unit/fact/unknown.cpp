#include "prover/fact/unknown.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/statement/told.hpp"

using namespace prover;
using told::Told;

TEST_CASE("the table gives a thing one index for good") {
  UnknownTable table;
  const Unknown angle{UnknownKind::angle, {}, {PointId(1), PointId(0), PointId(2)}, {}};
  const Unknown other{UnknownKind::angle, {}, {PointId(0), PointId(1), PointId(2)}, {}};
  CHECK_FALSE(table.find(angle).valid());
  const UnknownId first = table.intern(angle);
  CHECK(table.intern(other) != first);
  CHECK(table.intern(angle) == first);
  CHECK(table.find(angle) == first);
  CHECK(table.size() == 2);
  CHECK(table[first] == angle);
}

TEST_CASE("kinds with the same points stay apart") {
  UnknownTable table;
  const std::vector<PointId> p{PointId(0), PointId(1), PointId(2), PointId(3)};
  CHECK(table.intern({UnknownKind::fact, FactKind::parallel, p, {}}) !=
        table.intern({UnknownKind::fact, FactKind::perpendicular, p, {}}));
  CHECK(table.intern({UnknownKind::number, {}, {}, "x"}) != table.intern({UnknownKind::number, {}, {}, "y"}));
}

TEST_CASE("equations are printed in textbook signs") {
  Told told("triangle: KLM; triangle: KLN; parallel: KL, MN");
  struct Row {
    const char *sentence, *printed;
  };
  for (const Row& row :
       {Row{"angle KLM = 40", "∠KLM = 40°"}, Row{"angle KLM = 37/2", "∠KLM = 37/2°"},
        Row{"angle KLM = 2 angle KML", "∠KLM = 2∠KML"},
        Row{"angle KLM + angle KML = 90", "∠KLM + ∠KML = 90°"}, Row{"KL = LM", "KL = LM"},
        Row{"KL = 5", "KL = 5"}, Row{"MN ∥ KL", "KL ∥ MN"}, Row{"angle KLM = 3x + 10", "∠KLM = 3x + 10°"},
        Row{"triangle KLM is congruent to triangle NLK", "△KLM ≅ △NLK"}}) {
    INFO(row.sentence);
    CHECK(describe_equation(told.form(row.sentence), told.unknowns, told.statement.names) == row.printed);
  }
}

TEST_CASE("an unknown is the same by its points and as a whole, however many points it has") {
  UnknownTable table;
  const auto point = [](int i) { return PointId(i); };
  const UnknownId angle = table.angle(point(0), point(2), point(1));
  CHECK(table.find({UnknownKind::angle, {}, {point(0), point(1), point(2)}, {}}) == angle);
  CHECK(table.angle(point(0), point(1), point(2)) == angle);
  CHECK_FALSE(table.find_angle(point(1), point(0), point(2)).valid());
  const UnknownId length = table.length(point(3), point(1));
  CHECK(table.find_length(point(1), point(3)) == length);
  CHECK_FALSE(table.find({UnknownKind::fact, FactKind::joined, {point(1), point(3)}, {}}).valid());
  std::vector<PointId> corners;
  for (int i = 0; i < 6; ++i) corners.push_back(point(i));
  const UnknownId congruent = table.intern(UnknownKind::fact, FactKind::congruent, corners);
  CHECK(table.find(UnknownKind::fact, FactKind::congruent, corners) == congruent);
  CHECK_FALSE(table.find(UnknownKind::fact, FactKind::similar, corners).valid());
  std::swap(corners[0], corners[1]);
  CHECK_FALSE(table.find(UnknownKind::fact, FactKind::congruent, corners).valid());
  const UnknownId far = table.length(point(8191), point(8192));  // the second does not fit the key of a slot
  CHECK(table.find_length(point(8192), point(8191)) == far);
  CHECK_FALSE(table.find_length(point(8191), point(0)).valid());
  CHECK(table.size() == 4);
}
