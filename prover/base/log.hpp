// The log: to standard error, `info` one line a stage, `debug` one a round, `trace` one a match. spdlog stays
// behind this header. Arguments are formatted with fmt, and only when the level is on.
#pragma once
#include <fmt/format.h>

#include <string_view>
#include <utility>

namespace prover::log {

enum class Level { quiet, warn, info, debug, trace };
void set_level(Level level);
bool enabled(Level level);
void write(Level level, std::string_view message);

template <class... Args>
void info(fmt::format_string<Args...> format, Args&&... args) {
  if (enabled(Level::info)) write(Level::info, fmt::format(format, std::forward<Args>(args)...));
}
template <class... Args>
void debug(fmt::format_string<Args...> format, Args&&... args) {
  if (enabled(Level::debug)) write(Level::debug, fmt::format(format, std::forward<Args>(args)...));
}
template <class... Args>
void trace(fmt::format_string<Args...> format, Args&&... args) {
  if (enabled(Level::trace)) write(Level::trace, fmt::format(format, std::forward<Args>(args)...));
}
template <class... Args>
void warn(fmt::format_string<Args...> format, Args&&... args) {
  if (enabled(Level::warn)) write(Level::warn, fmt::format(format, std::forward<Args>(args)...));
}

}  // namespace prover::log
