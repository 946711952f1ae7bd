#include "frontend/command/interrupt.hpp"

#include <pthread.h>
#include <unistd.h>

#include <csignal>

namespace frontend {

namespace {

constexpr int interrupted_status = 130;  // what shells expect after Ctrl-C

bool is_ignored(int signal_number) {
  struct sigaction now{};
  return sigaction(signal_number, nullptr, &now) == 0 && now.sa_handler == SIG_IGN;
}

}  // namespace

Interrupt::Interrupt() {
  if (is_ignored(SIGINT)) return;  // started in the background: Ctrl-C is not meant for us
  sigset_t signals;
  sigemptyset(&signals);
  sigaddset(&signals, SIGINT);
  pthread_sigmask(SIG_BLOCK, &signals, nullptr);
  thread_ = std::thread([this, signals] {
    int received = 0;
    sigwait(&signals, &received);
    if (done_) return;
    source_.request_stop();
    sigwait(&signals, &received);
    if (!done_) _exit(interrupted_status);
  });
}

Interrupt::~Interrupt() {
  if (!thread_.joinable()) return;
  done_ = true;
  pthread_kill(thread_.native_handle(), SIGINT);
  thread_.join();
}

}  // namespace frontend
