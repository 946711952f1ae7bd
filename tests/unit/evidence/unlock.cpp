// What would bring a problem within reach is tried here once more, from the text: with the rules taught, with the course as
// far as it is said, with the line added. And nothing is offered where nothing helps.
#include <catch2/catch.hpp>

#include <algorithm>

#include "prover/prove.hpp"

using namespace prover;

namespace {

Answer ask(const std::string& text, const std::string& taught = "") {
  ProveOptions options;
  if (!taught.empty()) options.taught = {taught};
  return prove(text, standard_catalogue(), options);
}

std::string joined(const std::vector<std::string>& items) {
  std::string text;
  for (const std::string& item : items) text += (text.empty() ? "" : ", ") + item;
  return text;
}

// Each thing offered is enough, and a set of rules is not enough without any one of them.
void check_offers(const std::string& taught, const std::string& problem, const std::string& value) {
  const Answer answer = ask(problem, taught);
  REQUIRE(answer.verdict == Verdict::beyond_rules);
  REQUIRE_FALSE(answer.unlocked_by.empty());
  for (const AnswerUnlock& one : answer.unlocked_by) {
    CHECK(std::find(answer.unlock.begin(), answer.unlock.end(), one.text) != answer.unlock.end());
    if (!one.rules.empty()) {
      const Answer with = ask(problem, taught + ", " + joined(one.rules));
      CHECK(with.verdict == Verdict::proved);
      CHECK(with.value == value);
      for (std::size_t i = 0; i < one.rules.size(); ++i) {
        std::vector<std::string> fewer = one.rules;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
        CHECK(ask(problem, taught + (fewer.empty() ? "" : ", " + joined(fewer))).verdict == Verdict::beyond_rules);
      }
    }
    if (!one.course.empty()) CHECK(ask(problem, taught + ", " + one.course + " up to " + one.up_to).verdict == Verdict::proved);
    if (!one.lines.empty()) CHECK(ask(problem + "add: " + joined(one.lines) + "\n", taught).verdict == Verdict::proved);
  }
}

bool offers_rule(const Answer& answer, const std::string& id) {
  return std::any_of(answer.unlocked_by.begin(), answer.unlocked_by.end(),
                     [&](const AnswerUnlock& one) { return one.rules == std::vector<std::string>{id}; });
}

const std::string quadrilateral = "concyclic: A, B, C, D in this order\nangle ABC = 70\nfind: angle ADC\n";

}  // namespace

TEST_CASE("one theorem more, and the chapter in which it comes", "[evidence]") {
  check_offers("school", quadrilateral, "110");
  const Answer answer = ask(quadrilateral, "school");
  CHECK(offers_rule(answer, "cyclic-opposite-angles"));
  const auto chapter = std::find_if(answer.unlocked_by.begin(), answer.unlocked_by.end(),
                                    [](const AnswerUnlock& one) { return !one.chapter.empty(); });
  REQUIRE(chapter != answer.unlocked_by.end());
  CHECK(chapter->course == "school-with-circles");
  CHECK(chapter->chapter == "angles at the circumference");
}

TEST_CASE("several single theorems that would do", "[evidence]") {
  const std::string problem = "triangle: KLM\nKL = KM\nline: L, P, M in this order\nLP = PM\nfind: angle KPL\n";
  check_offers("angles", problem, "90");
  CHECK(offers_rule(ask(problem, "angles"), "isosceles-apex-line-median"));
}

TEST_CASE("two theorems together where no single one does", "[evidence]") {
  // Base angles and the sum: neither alone gives the apex angle.
  const std::string problem = "triangle: KLM\nKL = KM\nangle KLM = 50\nfind: angle LKM\n";
  const Answer answer = ask(problem, "parallel");
  REQUIRE(answer.verdict == Verdict::beyond_rules);
  REQUIRE_FALSE(answer.unlocked_by.empty());
  CHECK(answer.unlocked_by[0].rules.size() == 2);
  check_offers("parallel", problem, "80");
}

TEST_CASE("a line that helps can be put behind add:", "[evidence]") {
  // Paraguayan Mathematical Olympiad 2006; published line: drop the perpendicular RT to PS. Published answer 75.
  const std::string problem = "triangle: PQR\nline: Q, S, R in this order\nlengths: RS = 2 QS\nangle PQR = 45\nangle PSR = 60\nfind: angle PRQ\n";
  const Answer answer = ask(problem);
  REQUIRE(answer.verdict == Verdict::beyond_rules);
  REQUIRE(answer.unlocked_by.size() == 1);
  REQUIRE(answer.unlocked_by[0].lines.size() == 1);
  const Answer with = ask(problem + "add: " + answer.unlocked_by[0].lines[0] + "\n");
  CHECK(with.verdict == Verdict::proved);
  CHECK(with.value == "75");
}

TEST_CASE("whether angles alone would do is said", "[evidence]") {
  const std::string lengths = "lengths or a circle come in";
  const auto says = [&](const Answer& answer) {
    return std::any_of(answer.unlock.begin(), answer.unlock.end(), [&](const std::string& s) { return s.find(lengths) != s.npos; });
  };
  CHECK(says(ask(quadrilateral, "school")));
  // Without the angle sum the directions of the lines still force the third angle.
  const std::string sum = "triangle: KLM\nangle KLM = 50\nangle KML = 60\nfind: angle LKM\n";
  const Answer by_angles = ask(sum, "vertical-angles");
  REQUIRE(by_angles.verdict == Verdict::beyond_rules);
  CHECK_FALSE(says(by_angles));
}

TEST_CASE("another given in the place of one, in the full report", "[evidence]") {
  ProveOptions options;
  options.taught = {"angles"};
  const std::string triangle = "triangle: KLM\nKL = KM\nline: L, P, M in this order\n";
  const auto swaps = [&](const std::string& problem) {
    std::vector<std::string> found;
    for (const std::string& text : prove(problem, standard_catalogue(), options).unlock)
      if (text.find("in the place of") != text.npos) found.push_back(text);
    return found;
  };
  CHECK(swaps(triangle + "LP = PM\nfind: angle KPL\n").empty());  // not asked for
  options.solvable = true;
  const std::vector<std::string> found = swaps(triangle + "LP = PM\nfind: angle KPL\n");
  REQUIRE(found.size() == 1);
  CHECK(found[0].find("∠LKP = ∠MKP in the place of LP = PM") != found[0].npos);
  options.solvable = false;
  const Answer swapped = prove(triangle + "∠LKP = ∠MKP\nfind: angle KPL\n", standard_catalogue(), options);
  CHECK(swapped.verdict == Verdict::proved);
  CHECK(swapped.value == "90");
}

TEST_CASE("where nothing helps, nothing is offered", "[evidence]") {
  // 61 in the place of 60: the angle is no fraction of a degree, so no theorem on angles gives it.
  const Answer answer = ask("triangle: KLM\nequal lengths: KL = KM\nangle LKM = 20\nline: K, U, M in this order\n"
                            "line: K, V, L in this order\nangle MLU = 61\nangle LMV = 50\nfind: angle LUV\n");
  REQUIRE(answer.verdict == Verdict::beyond_rules);
  CHECK(answer.unlocked_by.empty());
  CHECK(answer.evidence.empty());
  REQUIRE_FALSE(answer.unlock.empty());
  CHECK(answer.unlock[0].find("No exact value is named") == 0);
}

TEST_CASE("what is proved, undetermined or false needs no unlocking", "[evidence]") {
  CHECK(ask("triangle: KLM\nangle KLM = 50\nangle KML = 60\nfind: angle LKM\n").unlocked_by.empty());
  CHECK(ask("triangle: KLM\nangle KLM = 50\nfind: angle LKM\n").unlocked_by.empty());
  CHECK(ask("triangle: KLM\nangle KLM = 50\nprove: KL = KM\n").unlocked_by.empty());
}
