#include "benchmarks/search/child.hpp"

#include <fcntl.h>
#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <sstream>

namespace prover {

namespace {

using Clock = std::chrono::steady_clock;

double seconds_since(Clock::time_point begin) { return std::chrono::duration<double>(Clock::now() - begin).count(); }

// `child` runs in the new process with the writing end of a pipe and does not return.
ChildRun in_new_process(const std::function<void(int)>& child, double limit_seconds) {
  ChildRun run;
  std::array<int, 2> ends{};
  if (pipe(ends.data()) != 0) return run;
  std::fflush(nullptr);
  const auto begin = Clock::now();
  const pid_t pid = fork();
  if (pid < 0) return run;
  if (pid == 0) {
    close(ends[0]);
    child(ends[1]);
    _exit(3);
  }
  close(ends[1]);
  std::string output;
  std::array<char, 4096> buffer{};
  for (;;) {
    const double left = limit_seconds - seconds_since(begin);
    pollfd waiting{ends[0], POLLIN, 0};
    if (left <= 0 || poll(&waiting, 1, static_cast<int>(left * 1000) + 1) == 0) {
      run.time_up = seconds_since(begin) >= limit_seconds;
      if (run.time_up) break;
      continue;
    }
    const ssize_t count = read(ends[0], buffer.data(), buffer.size());
    if (count <= 0) break;
    output.append(buffer.data(), static_cast<std::size_t>(count));
  }
  if (run.time_up) kill(pid, SIGKILL);
  int status = 0;
  waitpid(pid, &status, 0);
  close(ends[0]);
  run.seconds = seconds_since(begin);
  if (!run.time_up && !WIFSIGNALED(status)) run.output = std::move(output);
  return run;
}

}  // namespace

ChildRun run_in_child(const std::function<std::string()>& work, double limit_seconds) {
  return in_new_process(
      [&](int out) {
        const std::string text = work();
        for (std::size_t done = 0; done < text.size();) {
          const ssize_t count = write(out, text.data() + done, text.size() - done);
          if (count <= 0) break;
          done += static_cast<std::size_t>(count);
        }
        _exit(0);
      },
      limit_seconds);
}

ChildRun run_program(const std::vector<std::string>& words, double limit_seconds) {
  return in_new_process(
      [&](int out) {
        dup2(out, STDOUT_FILENO);
        const int nowhere = open("/dev/null", O_RDWR);
        dup2(nowhere, STDERR_FILENO);
        dup2(nowhere, STDIN_FILENO);
        std::vector<char*> arguments;
        for (const std::string& word : words) arguments.push_back(const_cast<char*>(word.c_str()));
        arguments.push_back(nullptr);
        execvp(arguments[0], arguments.data());
      },
      limit_seconds);
}

bool is_installed(const std::string& program) {
  const char* path = std::getenv("PATH");
  std::istringstream folders(path ? path : "");
  for (std::string folder; std::getline(folders, folder, ':');)
    if (access((std::filesystem::path(folder) / program).c_str(), X_OK) == 0) return true;
  return false;
}

}  // namespace prover
