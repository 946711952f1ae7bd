// Tone and grain as on a class's board: one relation and one reason a line, arithmetic inside the step, equal
// things chained, substitution last. The problems are those of section 2 of the classroom notes, in laths and
// knots.
#include "prover/reading/reading.hpp"

#include "tests/unit/proof/proved.hpp"

using namespace prover;
using proved::Proved;

namespace {
// "claim ← reason", rows joined by blanks; of the reason the theorem only, without its places.
std::vector<std::string> lines(const Reading& reading) {
  std::vector<std::string> all;
  for (const ReadingLine& line : reading.lines) {
    std::string text;
    for (const std::string& row : line.rows) text += (text.empty() ? "" : " ") + row;
    all.push_back(text + " ← " + line.reason.substr(0, line.reason.find(',')));
  }
  return all;
}
}  // namespace

TEST_CASE("a numeric problem: values chained, arithmetic inside the step") {
  const Reading reading = Proved(proved::base_angles).goal().reading;
  CHECK(lines(reading) ==
        std::vector<std::string>{"∠LKQ = ∠PQK = 52° ← alternate angles",
                                 "∠KLQ = ∠KQL ← angles opposite equal sides",
                                 "∠KLQ = (180° − 52°) ÷ 2 = 64° ← angle sum of triangle KLQ"});
  CHECK(reading.lines.back().closing);
  CHECK(reading.rules ==
        std::vector<std::string>{"alternate-interior-angles", "isosceles-base-angles", "triangle-angle-sum"});
}

TEST_CASE("a reason names the places that make it true") {
  const Reading reading = Proved(proved::base_angles).goal().reading;
  REQUIRE(reading.lines.size() == 3);
  CHECK(reading.lines[0].reason.find("cut by KQ") != std::string::npos);
  CHECK(reading.lines[1].reason.find("KL = KQ") != std::string::npos);
  CHECK(reading.lines[1].reason.find("triangle KLQ") != std::string::npos);
}

TEST_CASE("a general proof: substitution is the last line and there is none before it") {
  const Reading reading = Proved(proved::angle_sum).goal().reading;
  REQUIRE(reading.lines.size() == 4);
  for (std::size_t i = 0; i + 1 < reading.lines.size(); ++i) CHECK(reading.lines[i].rule != "substitution");
  CHECK(reading.lines.back().rule == "substitution");
  CHECK(reading.lines.back().uses == std::vector<int>{1, 2, 3});
  const auto all = lines(reading);
  for (const char* cut : {"cut by KL", "cut by KM"})
    CHECK(std::count_if(reading.lines.begin(), reading.lines.end(), [&](const ReadingLine& line) {
            return line.rule == "alternate-interior-angles" && line.reason.find(cut) != std::string::npos;
          }) == 1);
  CHECK(all.back() == "∠KLM + ∠LKM + ∠KML = 180° ← substituting");
}

TEST_CASE("parallel by alternate angles: the last line is the claim") {
  const Reading reading =
      Proved(
          "triangle: DEF\nDE = DF\nline: E, D, G in this order\nbisects: ray DH bisects angle GDF\n"
          "prove: parallel: DH, EF\n")
          .goal()
          .reading;
  CHECK(reading.lines.back().rows.back().find("DH ∥ EF") != std::string::npos);
  CHECK(reading.lines.back().closing);
  CHECK(reading.lines.size() <= 5);
}

TEST_CASE("a line rests on earlier lines only, and every line but the last is used") {
  const std::string text =
      GENERATE(as<std::string>{}, proved::base_angles, proved::angle_sum,
               "triangle: KLM\ntriangle: KNM\nKL = KN\nLM = NM\nangle KLM = 70\nfind: angle KNM\n",
               "line: L, M, P in this order\ntriangle: KLM\nangle KLM = 2x\nangle LKM = 3x + 5\n"
               "angle KMP = 105\nfind: angle KLM\n");
  INFO(text);
  const Proved problem(text);
  const Reading& reading = problem.goal().reading;
  REQUIRE_FALSE(reading.lines.empty());
  std::vector<bool> used(reading.lines.size() + 1, false);
  for (std::size_t i = 0; i < reading.lines.size(); ++i) {
    CHECK_FALSE(reading.lines[i].rows.empty());
    CHECK_FALSE(reading.lines[i].reason.empty());
    for (const int n : reading.lines[i].uses) {
      CHECK(n >= 1);
      CHECK(n <= static_cast<int>(i));
      used[static_cast<std::size_t>(n)] = true;
    }
  }
  for (std::size_t n = 1; n < reading.lines.size(); ++n) CHECK(used[n]);
}

TEST_CASE("the givens that served are listed and the others are not") {
  const Proved problem("triangle: KLM\nangle KLM = 50\nangle LMK = 60\nKL = 7\nfind: angle LKM\n");
  std::vector<std::string> used;
  for (const int given : problem.goal().reading.givens_used)
    used.push_back(problem.statement.givens[static_cast<std::size_t>(given)].text);
  CHECK(used == std::vector<std::string>{"∠KLM = 50°", "∠LMK = 60°"});
}
