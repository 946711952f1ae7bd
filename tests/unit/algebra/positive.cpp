#include "prover/algebra/positive.hpp"

#include <catch2/catch.hpp>

using namespace prover;

namespace {

struct Sizes {
  UnknownTable table;
  LinearSystem system;
  UnknownId length(int a, int b) { return table.length(PointId(a), PointId(b)); }
  Form of(UnknownId unknown) { return Form::of(unknown); }
  // a − b is an excess.
  void more(const Form& a, const Form& b) { system.add(more_than_zero(Form(a).add(b, -1), table)); }
};

}  // namespace

TEST_CASE("a round of inequalities is a positive sum that is zero; without one of them it is not") {
  Sizes s;
  const Form a = s.of(s.length(0, 1)), b = s.of(s.length(1, 2)), c = s.of(s.length(2, 3));
  s.more(a, b);
  s.more(b, c);
  CHECK_FALSE(positive_sum_that_is_zero(s.system, s.table));
  s.more(c, a);
  const auto sum = positive_sum_that_is_zero(s.system, s.table);
  REQUIRE(sum);
  CHECK(is_positive(*sum, s.table));
  CHECK(s.system.entails(*sum));
}

TEST_CASE("what follows by adding inequalities is a positive sum, and its converse is not") {
  Sizes s;
  const Form a = s.of(s.length(0, 1)), b = s.of(s.length(1, 2)), c = s.of(s.length(2, 3)), d = s.of(s.length(3, 4));
  s.more(a, Form(b).add(c));
  s.more(c, d);
  Form difference = a;
  difference.add(b, -1).add(d, -1);  // a > b + c > b + d
  const auto sum = as_positive_sum(difference, s.system, s.table);
  REQUIRE(sum);
  CHECK(is_positive(*sum, s.table));
  CHECK(s.system.entails(Form(difference).add(*sum, -1)));
  CHECK_FALSE(as_positive_sum(-difference, s.system, s.table));
  CHECK_FALSE(as_positive_sum(Form(b).add(d, -1), s.system, s.table));
}

TEST_CASE("numbers with units: 1 + 2 is not more than 5, 3 + 4 is") {
  for (const int third : {5, 6, 7, 8}) {
    Sizes s;
    const UnknownId a = s.length(0, 1), b = s.length(1, 2), c = s.length(2, 0);
    s.system.add(s.of(a).add(Form::number(-3)));
    s.system.add(s.of(b).add(Form::number(-4)));
    s.system.add(s.of(c).add(Form::number(-third)));
    s.more(s.of(a).add(s.of(b)), s.of(c));
    CHECK(positive_sum_that_is_zero(s.system, s.table).has_value() == (third >= 7));
  }
}

TEST_CASE("an unknown number may be negative, so it carries no inequality") {
  Sizes s;
  const UnknownId a = s.length(0, 1), x = s.table.intern({UnknownKind::number, {}, {}, "x"});
  s.more(s.of(a), s.of(x));
  CHECK_FALSE(as_positive_sum(s.of(x), s.system, s.table));
  CHECK_FALSE(as_positive_sum(s.of(x).scale(-1), s.system, s.table));
  CHECK(as_positive_sum(s.of(a).add(s.of(x), -1), s.system, s.table));
}

TEST_CASE("one difference has one excess, whoever says it") {
  Sizes s;
  const Form a = s.of(s.length(0, 1)), b = s.of(s.length(1, 2));
  CHECK(more_than_zero(Form(a).add(b, -1), s.table) == more_than_zero(Form(a).add(b, -1), s.table));
  CHECK_FALSE(more_than_zero(Form(a).add(b, -1), s.table) == more_than_zero(Form(b).add(a, -1), s.table));
}
