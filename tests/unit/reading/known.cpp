#include "prover/reading/known.hpp"

#include <catch2/catch.hpp>

using namespace prover;

namespace {
const UnknownId a(0), b(1), c(2);
Form is(UnknownId u, UnknownId v, Rational times, Rational more) { return Form::of(u).add(Form::of(v), -times).add(Form::number(-more)); }
}  // namespace

TEST_CASE("a size is a number, or told by the letter while that is open") {
  Known known;
  known.add(is(b, a, 2, 30));
  CHECK_FALSE(known.size(b));  // no letter yet
  known.call(a, "x");
  CHECK(*known.size(a) == Size{1, 0});
  CHECK(*known.size(b) == Size{2, 30});
  CHECK_FALSE(known.size(c));
  known.add(Form::of(a).add(Form::number(-20)));
  CHECK(*known.size(b) == Size{0, 70});
  CHECK(*known.size_in_letter(b) == Size{2, 30});  // as it was told before
}

TEST_CASE("sizes in terms of a letter are written as a class writes them") {
  Known known;
  known.call(a, "x");
  CHECK(known.text({0, 52}, true) == "52°");
  CHECK(known.text({1, 0}, true) == "x");
  CHECK(known.text({1, 36}, true) == "x + 36°");
  CHECK(known.text({2, -30}, true) == "2x − 30°");
  CHECK(known.text({-2, 180}, true) == "180° − 2x");
  CHECK(known.text({-1, 0}, true) == "−x");
  CHECK(known.text({Rational(1, 2), 3}, false) == "½x + 3");
}
