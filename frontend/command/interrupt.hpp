// Ctrl-C. The first asks the work to stop, and what was established so far is still printed; the second ends the
// program at once. A thread of its own waits for the signal, so no code runs inside a signal handler.
#pragma once
#include <atomic>
#include <stop_token>
#include <thread>

namespace frontend {

class Interrupt {
 public:
  Interrupt();   // before any other thread starts: they inherit that the signal is not theirs
  ~Interrupt();
  Interrupt(const Interrupt&) = delete;
  Interrupt& operator=(const Interrupt&) = delete;

  std::stop_token token() const { return source_.get_token(); }

 private:
  std::stop_source source_;
  std::atomic<bool> done_ = false;
  std::thread thread_;
};

}  // namespace frontend
