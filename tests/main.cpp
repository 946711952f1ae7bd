// Runs the tests written in C++ and closes with one line that says how many passed, for tests/run.sh to add up.
#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <cstdio>

namespace {

struct ClosingLine : Catch::TestEventListenerBase {
  using TestEventListenerBase::TestEventListenerBase;
  void testRunEnded(const Catch::TestRunStats& stats) override {
    std::fflush(stdout);
    const Catch::Counts& cases = stats.totals.testCases;
    closing_passed = cases.passed + cases.failedButOk;
    closing_failed = cases.failed;
  }
  static inline std::size_t closing_passed = 0, closing_failed = 0;
};
CATCH_REGISTER_LISTENER(ClosingLine)

}  // namespace

int main(int argc, char* argv[]) {
  const int status = Catch::Session().run(argc, argv);
  std::printf("%zu passed, %zu failed\n", ClosingLine::closing_passed, ClosingLine::closing_failed);
  return status;
}
