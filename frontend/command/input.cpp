#include "frontend/command/input.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <filesystem>

namespace frontend {

namespace {

std::string shown(const std::string& path) { return path == "-" ? "standard input" : path; }

enum class Chunk { data, end, failed, stopped };

// Waits for input in short turns, since a stop may be asked for meanwhile.
Chunk read_chunk(int descriptor, const std::stop_token& stop, std::string& to) {
  std::array<char, 65536> space;
  while (true) {
    if (stop.stop_requested()) return Chunk::stopped;
    pollfd waiting{descriptor, POLLIN, 0};
    const int ready = poll(&waiting, 1, 100);
    if (ready == 0 || (ready < 0 && errno == EINTR)) continue;
    const ssize_t count = read(descriptor, space.data(), space.size());
    if (count < 0 && (errno == EINTR || errno == EAGAIN)) continue;
    if (count < 0) return Chunk::failed;
    if (count == 0) return Chunk::end;
    to.append(space.data(), static_cast<std::size_t>(count));
    return Chunk::data;
  }
}

}  // namespace

int open_for_reading(const std::string& path, std::string& mistake) {
  if (path == "-") return STDIN_FILENO;
  const int descriptor = open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (descriptor < 0) {
    mistake = errno == ENOENT   ? fmt::format("there is no file {}", path)
              : errno == EACCES ? fmt::format("{} may not be read: the file's permissions forbid it", path)
                                : fmt::format("{} cannot be opened: {}", path, std::strerror(errno));
    return -1;
  }
  struct stat about{};
  if (fstat(descriptor, &about) == 0 && S_ISDIR(about.st_mode)) {
    mistake = fmt::format("{} is a folder; name a file in it", path);
    close(descriptor);
    return -1;
  }
  return descriptor;
}

std::string not_a_text(const std::string& text) {
  if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) return "is UTF-16; save it as UTF-8";
  if (text.find('\0') != std::string::npos) return "is not a text file";
  if (text.find_first_not_of(" \t\r\n") == std::string::npos) {
    return "is empty; write what is given, a sentence a line, and what to find or prove";
  }
  return "";
}

Input read_text(const std::string& path, std::stop_token stop) {
  std::string mistake;
  const int descriptor = open_for_reading(path, mistake);
  if (descriptor < 0) return {std::nullopt, mistake};
  std::string text;
  Chunk last = Chunk::data;
  while (text.size() <= largest_text && (last = read_chunk(descriptor, stop, text)) == Chunk::data) {
  }
  const int reading_error = errno;
  if (descriptor != STDIN_FILENO) close(descriptor);
  if (last == Chunk::stopped) return {std::nullopt, "interrupted before the problem was read"};
  if (last == Chunk::failed) {
    return {std::nullopt, fmt::format("{} cannot be read: {}", shown(path), std::strerror(reading_error))};
  }
  if (text.size() > largest_text) {
    return {std::nullopt, fmt::format("{} is too large: a problem has at most one megabyte; many problems go "
                                      "through \"anglewright batch\"", shown(path))};
  }
  if (const std::string wrong = not_a_text(text); !wrong.empty()) {
    return {std::nullopt, shown(path) + " " + wrong};
  }
  return {std::move(text), ""};
}

FolderListing files_below(const std::string& folder, const std::string& suffix) {
  namespace fs = std::filesystem;
  FolderListing listing;
  std::error_code error;
  if (!fs::is_directory(folder, error)) {
    listing.mistake = fmt::format("there is no folder {}", folder);
    return listing;
  }
  for (fs::recursive_directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
    if (at->is_regular_file(error) && at->path().extension() == suffix) {
      listing.names.push_back(fs::relative(at->path(), folder, error).generic_string());
    }
  }
  if (error) listing.mistake = fmt::format("{} cannot be read: {}", folder, error.message());
  std::sort(listing.names.begin(), listing.names.end());
  return listing;
}

LineReader::LineReader(int descriptor, std::size_t longest, std::stop_token stop)
    : descriptor_(descriptor), longest_(longest), stop_(std::move(stop)) {}

bool LineReader::fill() {
  buffer_.erase(0, at_);
  at_ = 0;
  const Chunk chunk = read_chunk(descriptor_, stop_, buffer_);
  if (chunk == Chunk::failed) mistake_ = fmt::format("reading failed: {}", std::strerror(errno));
  return chunk == Chunk::data;
}

std::optional<LineReader::Line> LineReader::next() {
  Line line;
  bool begun = false;
  while (true) {
    const std::size_t end = buffer_.find('\n', at_);
    const std::size_t until = end == std::string::npos ? buffer_.size() : end;
    begun = begun || until > at_ || end != std::string::npos;
    const std::size_t room = longest_ - std::min(longest_, line.text.size());
    line.too_long = line.too_long || until - at_ > room;
    line.text.append(buffer_, at_, std::min(room, until - at_));
    at_ = until;
    if (end != std::string::npos) {
      ++at_;
      break;
    }
    if (!fill()) {
      if (!begun || stop_.stop_requested()) return std::nullopt;
      break;
    }
  }
  if (!line.text.empty() && line.text.back() == '\r') line.text.pop_back();
  line.number = ++number_;
  return line;
}

}  // namespace frontend
