// How long we may go on. One value goes down the whole walk: a deadline, a stop token (Ctrl-C) and a bound on
// stored rule instances. Whoever loops asks `exhausted`; whoever gives up says why with `reason`.
#pragma once
#include <chrono>
#include <cstddef>
#include <optional>
#include <stop_token>

namespace prover {

enum class StopReason { none, saturated, goal_reached, time_limit, instance_limit, interrupted };
const char* name_of(StopReason reason);  // "time-limit" and so on, as in JSON

struct Budget {
  using Clock = std::chrono::steady_clock;
  std::optional<Clock::time_point> deadline;
  std::stop_token stop;
  std::size_t max_instances = 400'000;

  static Budget seconds(double limit, std::stop_token stop = {});
  Budget share(double fraction) const;  // the same, ending after this fraction of the time that is left
  bool exhausted() const { return stop.stop_requested() || (deadline && Clock::now() >= *deadline); }
  StopReason reason() const;  // none while not exhausted
};

}  // namespace prover
