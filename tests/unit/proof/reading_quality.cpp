// Ruling 7.13 of the classroom notes, key by key: each case holds two proofs that differ in one thing, and the better
// one comes first.
#include "prover/proof/reading_quality.hpp"

#include <catch2/catch.hpp>

#include <deque>

using namespace prover;

namespace {

struct Proofs {
  UnknownTable unknowns;
  std::deque<Instance> kept;  // addresses stay

  UnknownId angle(int vertex, int arm1, int arm2) {
    Unknown u;
    u.kind = UnknownKind::angle;
    u.points = {PointId(vertex), PointId(arm1), PointId(arm2)};
    return unknowns.intern(u);
  }
  const Instance* cite(const std::string& rule, std::vector<UnknownId> angles, std::vector<PointId> places = {}) {
    Instance one;
    one.rule = *standard_catalogue().find(rule);
    one.places = std::move(places);
    Form form = Form::number(-180);
    for (const UnknownId u : angles) form.add(Form::of(u));
    one.conclusions = {form};
    kept.push_back(std::move(one));
    return &kept.back();
  }
  ReadingQuality quality(const std::vector<const Instance*>& members, const std::vector<UnknownId>& asked = {}) {
    return reading_quality(members, {asked.begin(), asked.end()}, unknowns, standard_catalogue());
  }
};

}  // namespace

TEST_CASE("no construction is better than fewer theorems") {
  Proofs p;
  const UnknownId a = p.angle(0, 1, 2);
  const auto joined = p.quality({p.cite("construction", {}), p.cite("triangle-angle-sum", {a})});
  const auto plain = p.quality({p.cite("triangle-angle-sum", {a}), p.cite("vertical-angles", {a})});
  CHECK(plain < joined);
  CHECK(joined.constructions == 1);
}

TEST_CASE("one theorem twice is better than two theorems, and a family counts once") {
  Proofs p;
  const UnknownId a = p.angle(0, 1, 2), b = p.angle(1, 0, 2);
  const auto twice = p.quality({p.cite("triangle-angle-sum", {a}), p.cite("triangle-angle-sum", {b})});
  const auto both = p.quality({p.cite("triangle-angle-sum", {a}), p.cite("vertical-angles", {b})});
  CHECK(twice < both);
  CHECK(twice.theorems == 1);
  CHECK(p.quality({p.cite("equal-tangents", {a}), p.cite("equal-tangents-circumcircle", {b})}).theorems == 1);
  CHECK(p.quality({p.cite("triangle-angle-sum", {a}), p.cite("angle-addition", {b}), p.cite("given", {b})}).theorems == 1);
}

TEST_CASE("what is taught earlier is better") {
  Proofs p;
  const UnknownId a = p.angle(0, 1, 2);
  CHECK(p.quality({p.cite("vertical-angles", {a})}) < p.quality({p.cite("inscribed-angle-centre", {a})}));
  CHECK(p.quality({p.cite("inscribed-angle-centre", {a})}) < p.quality({p.cite("tangent-chord-angle", {a})}));
}

TEST_CASE("fewer angles that are not in the question are better") {
  Proofs p;
  const UnknownId asked = p.angle(0, 1, 2), strange = p.angle(1, 0, 2), stranger = p.angle(2, 0, 1);
  const auto near = p.quality({p.cite("triangle-angle-sum", {asked, strange})}, {asked});
  const auto far = p.quality({p.cite("triangle-angle-sum", {asked, strange, stranger})}, {asked});
  CHECK(near < far);
  CHECK(near.strange_angles == 1);
  CHECK(far.strange_angles == 2);
}

TEST_CASE("what reads alike is told apart by its places, in whatever order the members come") {
  Proofs p;
  const UnknownId a = p.angle(0, 1, 2);
  const Instance* first = p.cite("triangle-angle-sum", {a}, {PointId(0), PointId(1), PointId(2)});
  const Instance* second = p.cite("triangle-angle-sum", {a}, {PointId(0), PointId(1), PointId(3)});
  const Instance* third = p.cite("vertical-angles", {a}, {PointId(0)});
  CHECK(p.quality({first, third}) == p.quality({third, first}));
  CHECK(p.quality({first, third}) < p.quality({second, third}));
  CHECK(p.quality({first}) == p.quality({first}));
}

TEST_CASE("only angles are counted as angles of the question") {
  Proofs p;
  Unknown length;
  length.kind = UnknownKind::length;
  length.points = {PointId(0), PointId(1)};
  const UnknownId ab = p.unknowns.intern(length), a = p.angle(0, 1, 2);
  CHECK(angles_of({Form::of(ab).add(Form::of(a))}, p.unknowns) == std::set<UnknownId>{a});
}
