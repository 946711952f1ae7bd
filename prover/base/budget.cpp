#include "prover/base/budget.hpp"

#include <algorithm>
#include <utility>

namespace prover {

const char* name_of(StopReason reason) {
  switch (reason) {
    case StopReason::none:
      return "none";
    case StopReason::saturated:
      return "saturated";
    case StopReason::goal_reached:
      return "goal-reached";
    case StopReason::time_limit:
      return "time-limit";
    case StopReason::instance_limit:
      return "instance-limit";
    case StopReason::interrupted:
      return "interrupted";
  }
  return "none";
}

Budget Budget::seconds(double limit, std::stop_token stop) {
  // A day is as good as for ever, and adding more could overflow the clock.
  constexpr double day = 86'400;
  Budget budget;
  if (limit < day) {
    const std::chrono::duration<double> span(std::max(limit, 0.0));
    budget.deadline = Clock::now() + std::chrono::duration_cast<Clock::duration>(span);
  }
  budget.stop = std::move(stop);
  return budget;
}

Budget Budget::share(double fraction) const {
  Budget part = *this;
  if (deadline) {
    const Clock::time_point now = Clock::now();
    const std::chrono::duration<double> left = std::max(*deadline - now, Clock::duration::zero());
    part.deadline = now + std::chrono::duration_cast<Clock::duration>(left * std::clamp(fraction, 0.0, 1.0));
  }
  return part;
}

StopReason Budget::reason() const {
  if (stop.stop_requested()) return StopReason::interrupted;
  return exhausted() ? StopReason::time_limit : StopReason::none;
}

}  // namespace prover
