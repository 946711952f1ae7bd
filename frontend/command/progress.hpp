// Signs of life on a terminal when the work takes longer than a second. Nothing at all when standard error is
// not a terminal.
#pragma once
#include <condition_variable>
#include <functional>
#include <mutex>
#include <string>
#include <thread>

namespace frontend {

class Progress {
 public:
  // `what` is asked, on another thread, for the text to show.
  explicit Progress(bool quiet, std::function<std::string(int seconds)> what);
  ~Progress();  // wipes the line
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;

 private:
  std::mutex mutex_;
  std::condition_variable ended_;
  bool done_ = false;
  std::thread thread_;
};

}  // namespace frontend
