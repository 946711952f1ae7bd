#include "frontend/command/output.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <fstream>

namespace frontend {

void ignore_broken_pipes() { std::signal(SIGPIPE, SIG_IGN); }

void write_message(std::string_view text) { fmt::print(stderr, "anglewright: {}\n", text); }

bool write_file(const std::filesystem::path& path, std::string_view text) {
  std::filesystem::path beside = path;
  beside += ".new";
  std::error_code error;
  {
    std::ofstream out(beside, std::ios::binary | std::ios::trunc);
    out << text;
    out.flush();
    if (!out) {
      write_message(fmt::format("cannot write {}: {}", path.string(), std::strerror(errno)));
      std::filesystem::remove(beside, error);
      return false;
    }
  }
  std::filesystem::rename(beside, path, error);
  if (error) {
    write_message(fmt::format("cannot write {}: {}", path.string(), error.message()));
    std::filesystem::remove(beside, error);
  }
  return !error;
}

bool write_answer(std::string_view text) {
  while (!text.empty()) {
    const ssize_t written = write(STDOUT_FILENO, text.data(), text.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) {
      write_message(errno == EPIPE ? std::string("the reader of the answer has gone")
                                   : fmt::format("the answer cannot be written: {}", std::strerror(errno)));
      return false;
    }
    text.remove_prefix(static_cast<std::size_t>(written));
  }
  return true;
}

}  // namespace frontend
