// Givens that exclude each other, and twins that do not. That a set is smallest is checked by asking anew about the
// problem without each of its members.
#include <algorithm>
#include <nlohmann/json.hpp>

#include <fstream>

#include "tests/problems/asked.hpp"

using namespace prover;
using asked::ask;

namespace {

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    lines.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  return lines;
}

// The text in which the given printed as `given` is left out, or another sentence stands in its place. A line with one
// sentence is found by reading it alone together with the rest.
std::string with_instead(const std::string& text, const std::string& given, const std::string& instead) {
  const std::vector<std::string> lines = lines_of(text);
  const Answer whole = prove(text, standard_catalogue(), {});
  std::size_t index = 0;  // the first givens in read_as are the sentences, one each in these tests
  for (const std::string& read : whole.read_as) {
    if (read == given) break;
    ++index;
  }
  REQUIRE(index < lines.size());
  std::string changed;
  for (std::size_t i = 0; i < lines.size(); ++i)
    if (i != index || !instead.empty()) changed += (i == index ? instead : lines[i]) + "\n";
  return changed;
}

bool contradictory(const std::string& text) {
  return prove(text, standard_catalogue(), {}).verdict == Verdict::contradictory;
}

// Verdict, shape of the evidence, minimality and repairs.
Answer check_contradictory(const std::string& text) {
  INFO(text);
  Answer answer = ask(text);
  CHECK(answer.verdict == Verdict::contradictory);
  CHECK(answer.value.empty());
  CHECK(answer.conflict.size() >= 2);
  CHECK_FALSE(answer.conflict_shown_by.empty());
  if (answer.conflict_shown_by == "proof") CHECK_FALSE(answer.proofs.empty());
  if (answer.conflict_shown_by == "positions") CHECK(answer.proofs.empty());
  for (const std::string& given : answer.conflict) {
    INFO("without " << given);
    CHECK_FALSE(contradictory(with_instead(text, given, "")));
  }
  for (const AnswerRepair& repair : answer.repair) {
    INFO(repair.text);
    CHECK(std::find(answer.conflict.begin(), answer.conflict.end(), repair.given) != answer.conflict.end());
    CHECK(repair.text.find(repair.given.substr(0, repair.given.find(" = "))) != std::string::npos);
    if (repair.instead.empty() || !(repair.exact || !repair.low.empty() || !repair.high.empty())) continue;
    const Answer repaired = ask(with_instead(text, repair.given, repair.instead));
    CHECK(repaired.verdict != Verdict::contradictory);
    CHECK_FALSE(repaired.figures.empty());
  }
  return answer;
}

const AnswerRepair* repair_of(const Answer& answer, const std::string& given) {
  for (const AnswerRepair& repair : answer.repair)
    if (repair.given == given) return &repair;
  return nullptr;
}

std::string facts_of(const nlohmann::json& item) {
  std::string text;
  for (const auto& fact : item["facts"]) text += fact.get<std::string>() + "\n";
  return text;
}

nlohmann::json classroom() {
  std::ifstream file(std::string(TESTS_DIR) + "/published/classroom.json");
  return nlohmann::json::parse(file);
}

}  // namespace

TEST_CASE("a slip of the pen is named with its repair") {
  const Answer rails = check_contradictory(
      "parallel: KL, PQ\nsides: L and P on opposite sides of KQ\nangle LKQ = 54\nangle KQP = 44\nfind: angle LKQ\n");
  // On either side of KQ the angles do not fit, so the sentence about sides is no part of the conflict.
  CHECK(rails.conflict == std::vector<std::string>{"KL ∥ PQ", "∠LKQ = 54°", "∠KQP = 44°"});
  CHECK_FALSE(rails.proofs.empty());
  REQUIRE(repair_of(rails, "∠LKQ = 54°"));
  CHECK(repair_of(rails, "∠LKQ = 54°")->instead == "∠LKQ = 44°");
  CHECK(repair_of(rails, "∠LKQ = 54°")->text == "∠LKQ = 44°, not 54°");
  CHECK(repair_of(rails, "∠LKQ = 54°")->exact);
  CHECK(ask("parallel: KL, PQ\nsides: L and P on opposite sides of KQ\nangle LKQ = 44\nangle KQP = 44\nfind: angle LKQ\n").verdict ==
        Verdict::proved);
  // On one side of KQ the same two angles would have to make 180°, and without the sentence both are thinkable.
  CHECK(ask("parallel: KL, PQ\nangle LKQ = 54\nangle KQP = 126\nfind: angle LKQ\n").verdict != Verdict::contradictory);
}

TEST_CASE("the conflict holds the sentences of position that it needs, and nothing else") {
  const Answer answer = check_contradictory(
      "triangle: KLM\nline: L, M, P in this order\nangle KMP = 100\nangle KLM = 60\nangle LKM = 50\nKL = 7\nfind: angle KML\n");
  CHECK(answer.conflict ==
        std::vector<std::string>{"L, M, P lie on a line in this order", "∠KMP = 100°", "∠KLM = 60°", "∠LKM = 50°"});
  CHECK_FALSE(contradictory("triangle: KLM\nangle KMP = 100\nangle KLM = 60\nangle LKM = 50\nfind: angle KML\n"));
}

TEST_CASE("angle sums, isosceles triangles, circles and tangents that do not fit") {
  for (const char* text : {
           "triangle: KLM\nangle KLM = 50\nangle LMK = 55\nangle LKM = 80\nfind: angle LKM\n",
           "triangle: KLM\nKL = KM\nangle KLM = 70\nangle KML = 60\nfind: angle LKM\n",
           "polygon: KLMN cyclic, in this order\nangle KLM = 100\nangle KNM = 90\nfind: angle LKN\n",
           "circle: centre O through T, S (in any order)\ntangent: line PT touches circle O at T\nangle OTP = 80\nfind: angle TPO\n",
           "line: K, L, M in this order\ninside: P lies inside angle KLQ\nangle KLP = 80\nangle PLQ = 70\nangle QLM = 50\nfind: angle KLQ\n",
           "triangle: KLM\nline: L, P, M in this order\nbisects: ray KP bisects angle LKM\nangle KLM = 50\nangle KML = 60\nangle LKP = 40\nfind: angle KPL\n",
           "triangle: KLM\ninside: P lies inside triangle KLM\nangle LPM = 50\nangle LKM = 60\nfind: angle KLM\n",
       })
    CHECK_FALSE(check_contradictory(text).proofs.empty());
}

TEST_CASE("what only lengths show is numerical, and said to be") {
  const Answer right = check_contradictory("triangle: KLM\nangle KLM = 90\nKL = 3\nLM = 4\nKM = 6\nfind: angle KLM\n");
  CHECK(right.conflict_shown_by == "figures");
  CHECK(right.summary.find("numerical") != std::string::npos);
  REQUIRE(repair_of(right, "KM = 6"));
  CHECK(repair_of(right, "KM = 6")->instead == "KM = 5");
  CHECK_FALSE(repair_of(right, "KM = 6")->exact);
  CHECK(ask("triangle: KLM\nangle KLM = 90\nKL = 3\nLM = 4\nKM = 5\nfind: angle KLM\n").verdict == Verdict::proved);
  // The side opposite 60° is at least KL · sin 60° = 4.33 long.
  const Answer short_side = check_contradictory("triangle: KLM\nKL = 5\nKM = 3\nangle KLM = 60\nfind: angle KML\n");
  REQUIRE(repair_of(short_side, "KM = 3"));
  CHECK(std::stod(repair_of(short_side, "KM = 3")->low) == Approx(5 * std::sqrt(3) / 2).epsilon(0.01));
  CHECK(ask("triangle: KLM\nKL = 5\nKM = 4.4\nangle KLM = 60\nfind: angle KML\n").verdict != Verdict::contradictory);
}

TEST_CASE("order and sides that exclude each other are contradictory") {
  for (const char* text : {
           "line: L, K, M in this order\nline: K, L, M in this order\nangle KLP = 40\nfind: angle KLP\n",
           "sides: P and Q on the same side of KL\nsides: P and Q on opposite sides of KL\nangle KLP = 40\nfind: angle KLQ\n",
           "triangle: KLM\nline: L, P, M in this order\ninside: P lies inside triangle KLM\nangle KPL = 40\nfind: angle KPM\n",
       }) {
    INFO(text);
    const Answer answer = check_contradictory(text);
    CHECK(answer.conflict.size() == 2);
    CHECK(answer.conflict_shown_by == "positions");
  }
  CHECK(ask("sides: P and Q on the same side of KL\nangle KLP = 40\nangle KLQ = 50\nfind: angle KLQ\n").verdict == Verdict::proved);
}

TEST_CASE("a flat figure is said to be flat") {
  const Answer flat = check_contradictory("triangle: KLM\nangle KLM = 120\nangle LMK = 60\nfind: angle LKM\n");
  CHECK(flat.summary.find("flat") != std::string::npos);
  CHECK(ask("triangle: KLM\nangle KLM = 120\nangle LMK = 59\nfind: angle LKM\n").verdict == Verdict::proved);
}

TEST_CASE("numbers that agree after rounding are no contradiction") {
  const Answer rounded = ask("triangle: KLM\nKL = 3\nLM = 2\nangle KLM = 90\nangle LKM = 33.7\nfind: angle KML\n");
  CHECK(rounded.verdict == Verdict::unknown);
  CHECK(rounded.summary.find("rounding") != std::string::npos);
  REQUIRE(rounded.figures.size() == 1);
  CHECK(*rounded.figures[0].value == Approx(56.3).margin(0.06));  // atan 3/2 = 56.31°
  CHECK(contradictory("triangle: KLM\nKL = 3\nLM = 2\nangle KLM = 90\nangle LKM = 34.7\nfind: angle KML\n"));
  CHECK(ask("triangle: KLM\nangle KLM = 33.7\nangle LMK = 56.3\nangle LKM = 90.1\nfind: angle LKM\n").verdict == Verdict::unknown);
  CHECK(contradictory("triangle: KLM\nangle KLM = 33.7\nangle LMK = 56.3\nangle LKM = 91\nfind: angle LKM\n"));
}

TEST_CASE("more givens than needed that agree are not contradictory") {
  for (const char* text : {
           "triangle: KLM\nangle KLM = 50\nangle LMK = 50\nangle LKM = 80\nKL = KM\nfind: angle LKM\n",
           "triangle: KLM\nKL = 3\nLM = 4\nKM = 5\nangle KLM = 90\nfind: angle KLM\n",
           "polygon: KLMN cyclic, in this order\nangle KLM = 100\nangle KNM = 80\nangle LKN = 70\nangle LMN = 110\nfind: angle LMN\n",
       })
    CHECK(ask(text).verdict == Verdict::proved);
}

// The data say which fact was added to a published problem, and where its points are without it.
TEST_CASE("the contradictory classroom problems: conflict and repair, verified anew") {
  int found = 0;
  for (const auto& item : classroom()) {
    if (item["answer"] != "contradictory") continue;
    ++found;
    const std::string text = facts_of(item) + "find: " + item["ask"].get<std::string>() + "\n";
    const Answer answer = check_contradictory(text);
    CHECK(answer.conflict_shown_by == "proof");
    // The added fact is among them, and its repair is what the figure without it shows.
    const std::string added = item["extra_facts"][0];
    const std::string given = prove(added + "\nfind: x\n", standard_catalogue(), {}).read_as.empty()
                                  ? "∠" + added.substr(6) + "°"
                                  : prove(added + "\nfind: x\n", standard_catalogue(), {}).read_as[0];
    const AnswerRepair* repair = repair_of(answer, given);
    REQUIRE(repair);
    const auto at = [&](char name) {
      const auto& p = item["points_without"][std::string(1, name)];
      return std::array<double, 2>{p[0].get<double>(), p[1].get<double>()};
    };
    const auto a = at(added[6]), v = at(added[7]), b = at(added[8]);  // "angle EGF = 80"
    const double ux = a[0] - v[0], uy = a[1] - v[1], wx = b[0] - v[0], wy = b[1] - v[1];
    const double degrees = std::atan2(std::fabs(ux * wy - uy * wx), ux * wx + uy * wy) * 180 / 3.14159265358979324;
    const std::string number = repair->instead.substr(repair->instead.find("= ") + 2);
    CHECK(std::stod(number) == Approx(degrees).margin(1e-6));
    CHECK(repair->exact);
  }
  CHECK(found == 4);
}
