#include "frontend/command/progress.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <chrono>
#include <cstdio>
#include <utility>

namespace frontend {

Progress::Progress(bool quiet, std::function<std::string(int seconds)> what) {
  if (quiet || isatty(STDERR_FILENO) == 0) return;
  thread_ = std::thread([this, what = std::move(what)] {
    std::unique_lock lock(mutex_);
    bool shown = false;
    for (int seconds = 1; !ended_.wait_for(lock, std::chrono::seconds(1), [this] { return done_; }); ++seconds) {
      fmt::print(stderr, "\r\x1b[K{}", what(seconds));
      std::fflush(stderr);
      shown = true;
    }
    if (shown) fmt::print(stderr, "\r\x1b[K");
  });
}

Progress::~Progress() {
  if (!thread_.joinable()) return;
  {
    const std::lock_guard lock(mutex_);
    done_ = true;
  }
  ended_.notify_one();
  thread_.join();
}

}  // namespace frontend
