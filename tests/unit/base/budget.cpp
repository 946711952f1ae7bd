#include "prover/base/budget.hpp"

#include <catch2/catch.hpp>
#include <string>

using namespace prover;

TEST_CASE("without a limit we may go on") {
  CHECK_FALSE(Budget{}.exhausted());
  CHECK_FALSE(Budget::seconds(1e18).exhausted());
  CHECK(Budget{}.reason() == StopReason::none);
}

TEST_CASE("a limit of no time is reached at once, and says so") {
  CHECK(Budget::seconds(0).exhausted());
  CHECK(Budget::seconds(-1).reason() == StopReason::time_limit);
  CHECK(std::string(name_of(Budget::seconds(0).reason())) == "time-limit");
}

TEST_CASE("who asks to stop is heard before the clock") {
  std::stop_source source;
  const Budget budget = Budget::seconds(0, source.get_token());
  source.request_stop();
  CHECK(budget.reason() == StopReason::interrupted);
}

TEST_CASE("a share ends no later than the whole") {
  const Budget whole = Budget::seconds(100);
  CHECK(*whole.share(0.5).deadline < *whole.deadline);
  CHECK(*whole.share(7).deadline <= *whole.deadline);
  CHECK(whole.share(0).exhausted());
  CHECK_FALSE(Budget{}.share(0.5).deadline);
}
