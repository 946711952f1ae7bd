// Ladders of whole problems: what they begin and end with, what they keep back, and where there is none.
#include <catch2/catch.hpp>

#include <algorithm>

#include "prover/hint.hpp"

using namespace prover;

namespace {

Hints hints_for(const std::string& problem, Register wording = Register::plain) {
  HintOptions options;
  options.prove.wording = wording;
  return hint(problem, standard_catalogue(), options);
}

std::vector<Rung> rungs_for(const std::string& problem, Register wording = Register::plain) {
  const Hints hints = hints_for(problem, wording);
  REQUIRE(hints.ladders.size() == 1);
  REQUIRE(hints.ladders[0].rungs.size() >= 2);
  return hints.ladders[0].rungs;
}

bool says(const std::vector<Rung>& rungs, const std::string& words) {
  return std::any_of(rungs.begin(), rungs.end(), [&](const Rung& r) { return r.text.find(words) != r.text.npos; });
}

const std::string rails =
    "RS ∥ TU\nV is between R and S\nT, W, X, U lie on a line in this order\nR and T are on the same side of VW\n"
    "VW = VX\nangle RVW = 64\nfind: angle WVX\n";

}  // namespace

TEST_CASE("a ladder goes from what is asked to the answer, each rung on its own", "[hints]") {
  const std::vector<Rung> rungs = rungs_for(rails);
  CHECK(rungs.front().kind == RungKind::look_again);
  CHECK(rungs.back().kind == RungKind::answer);
  CHECK(rungs.back().text.find("52°") != std::string::npos);
  int level = 0, left = 100;
  for (const Rung& rung : rungs) {
    CHECK(rung.level == ++level);
    CHECK(rung.steps_left <= left);
    left = rung.steps_left;
    CHECK((rung.kind == RungKind::answer) == (&rung == &rungs.back()));
  }
  CHECK(rungs.front().steps_left == 3);
  CHECK(left == 0);
  CHECK(std::count_if(rungs.begin(), rungs.end(), [](const Rung& r) { return r.kind == RungKind::look_again; }) <= 5);
}

TEST_CASE("a told step is its claim and its reason and nothing else", "[hints]") {
  for (const Rung& rung : rungs_for(rails))
    if (rung.kind == RungKind::step || rung.kind == RungKind::answer) {
      CHECK(rung.text == rung.claim + " (" + rung.reason + ")");
      CHECK_FALSE(rung.reason.empty());
    }
}

TEST_CASE("in a problem of one step the ladder stops at the name of the fact", "[hints]") {
  const std::vector<Rung> rungs = rungs_for("KL ∥ MN\nL and N are on opposite sides of KM\nangle KMN = 47\nfind: angle LKM\n");
  REQUIRE(rungs.size() >= 2);
  CHECK(rungs[rungs.size() - 2].kind == RungKind::fact);
  CHECK(rungs[rungs.size() - 2].text.find("alternate angles") != std::string::npos);
  CHECK_FALSE(says({rungs.begin(), rungs.end() - 1}, "47"));
}

TEST_CASE("a step whose number would give the answer away is told without it", "[hints]") {
  // The angle at the centre is 84°, and what is asked lies beside it on a straight line.
  const std::string problem = "O is the centre of the circle through E, F, G\nline: E, O, F in this order\nangle GEF = 42\nfind: angle EOG\n";
  const std::vector<Rung> rungs = rungs_for(problem);
  CHECK(rungs.back().text.find("96°") != std::string::npos);
  CHECK_FALSE(says({rungs.begin(), rungs.end() - 1}, "84"));
  const auto told = std::find_if(rungs.begin(), rungs.end(), [](const Rung& r) { return r.kind == RungKind::step; });
  REQUIRE(told != rungs.end());
  CHECK(told->claim.find("2∠") != std::string::npos);
  // With another question the same step is told in full.
  const std::vector<Rung> other = rungs_for(
      "O is the centre of the circle through E, F, G\nline: E, O, F in this order\nangle GEF = 42\nangle GOP = 20\n"
      "P lies inside angle FOG\nfind: angle FOP\n");
  CHECK(other.back().text.find("64°") != std::string::npos);
}

TEST_CASE("the theorem is named as the register names it", "[hints]") {
  CHECK(says(rungs_for(rails, Register::sa), "alt ∠s"));
  CHECK(says(rungs_for(rails, Register::us), "Alternate Interior Angles Theorem"));
  for (const Rung& rung : rungs_for(rails, Register::uk))  // "angles in a triangle add up to 180°" holds a number
    if (rung.kind == RungKind::fact) CHECK(rung.text.find("180") == std::string::npos);
}

TEST_CASE("what is not proved has no ladder", "[hints]") {
  const Hints false_claim = hints_for("In triangle KLM, KL = KM\nprove: angle LKM = angle KLM\n");
  CHECK(false_claim.answer.verdict == Verdict::false_claim);
  CHECK(false_claim.ladders.empty());
  CHECK(hints_for("In triangle KLM, angle KLM = 70\nfind: angle LKM\n").ladders.empty());
  CHECK(has_error(hints_for("In triangle KLM, angle KLZZ = 70\nfind: angle LKM\n").answer.diagnostics));
}

TEST_CASE("each question has a ladder of its own", "[hints]") {
  const Hints hints = hints_for("In triangle KLM, KL = KM\nangle KLM = 70\nfind: angle KML\nfind: angle LKM\n");
  REQUIRE(hints.ladders.size() == 2);
  CHECK(hints.ladders[0].rungs.back().text.find("70°") != std::string::npos);
  CHECK(hints.ladders[1].rungs.back().text.find("40°") != std::string::npos);
}

TEST_CASE("a ladder for each way, and how many of them are still open", "[hints]") {
  HintOptions options;
  options.every_way = options.worth = true;
  const Hints hints = hint(rails, standard_catalogue(), options);
  REQUIRE(hints.ladders.size() >= 2);
  for (const Ladder& ladder : hints.ladders) {
    CHECK(ladder.rungs.front().ways_open == ladder.ways);
    CHECK(ladder.rungs.back().ways_open >= 1);
  }
  options.every_way = false;
  options.way = 2;
  const Hints second = hint(rails, standard_catalogue(), options);
  REQUIRE(second.ladders.size() == 1);
  CHECK(second.ladders[0].title == hints.ladders[1].title);
}
