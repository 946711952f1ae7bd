#include <catch2/catch.hpp>
#include <unistd.h>

#include <array>
#include <thread>

#include "frontend/command/input.hpp"

using namespace frontend;

namespace {

std::vector<LineReader::Line> lines_of(const std::string& text, std::size_t longest) {
  std::array<int, 2> ends{};
  REQUIRE(pipe(ends.data()) == 0);
  std::thread writer([&] {
    REQUIRE(write(ends[1], text.data(), text.size()) == static_cast<ssize_t>(text.size()));
    close(ends[1]);
  });
  LineReader reader(ends[0], longest, {});
  std::vector<LineReader::Line> lines;
  while (auto line = reader.next()) lines.push_back(*line);
  writer.join();
  close(ends[0]);
  return lines;
}

}  // namespace

TEST_CASE("lines are read with their numbers, also the last without an end") {
  const auto lines = lines_of("a\r\n\nbc", 10);
  REQUIRE(lines.size() == 3);
  CHECK(lines[0].text == "a");
  CHECK(lines[1].text.empty());
  CHECK(lines[2].text == "bc");
  CHECK(lines[2].number == 3);
  CHECK(lines_of("", 10).empty());
}

TEST_CASE("a line that is too long is cut, and the next one is whole") {
  const auto lines = lines_of(std::string(200'000, 'x') + "\nshort\n", 100);
  REQUIRE(lines.size() == 2);
  CHECK(lines[0].too_long);
  CHECK(lines[0].text.size() == 100);
  CHECK_FALSE(lines[1].too_long);
  CHECK(lines[1].text == "short");
}

TEST_CASE("waiting for a line ends when a stop is asked for") {
  std::array<int, 2> ends{};
  REQUIRE(pipe(ends.data()) == 0);
  std::stop_source stop;
  LineReader reader(ends[0], 100, stop.get_token());
  std::jthread later([&] {
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
    stop.request_stop();
  });
  CHECK_FALSE(reader.next());
  later.join();
  close(ends[0]);
  close(ends[1]);
}
