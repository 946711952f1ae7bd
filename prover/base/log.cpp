#include "prover/base/log.hpp"

#include <spdlog/sinks/stdout_sinks.h>
#include <spdlog/spdlog.h>

#include <memory>

namespace prover::log {

namespace {

spdlog::level::level_enum spdlog_level(Level level) {
  switch (level) {
    case Level::quiet:
      return spdlog::level::off;
    case Level::warn:
      return spdlog::level::warn;
    case Level::info:
      return spdlog::level::info;
    case Level::debug:
      return spdlog::level::debug;
    case Level::trace:
      return spdlog::level::trace;
  }
  return spdlog::level::off;
}

// One sink, made at first use, safe for threads. No time stamps: the same run writes the same log.
spdlog::logger& logger() {
  static const std::shared_ptr<spdlog::logger> instance = [] {
    auto made =
        std::make_shared<spdlog::logger>("anglewright", std::make_shared<spdlog::sinks::stderr_sink_mt>());
    made->set_pattern("%l: %v");
    made->set_level(spdlog::level::warn);
    return made;
  }();
  return *instance;
}

}  // namespace

void set_level(Level level) {
  logger().set_level(spdlog_level(level));
}

bool enabled(Level level) {
  return level != Level::quiet && logger().should_log(spdlog_level(level));
}

void write(Level level, std::string_view message) {
  if (level != Level::quiet)
    logger().log(spdlog_level(level), spdlog::string_view_t(message.data(), message.size()));
}

}  // namespace prover::log
