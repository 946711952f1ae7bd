// Evidence for `undetermined`, measured anew from the coordinates; and twins that are settled and have none of it.
#include <catch2/catch.hpp>
#include <cmath>

#include "prover/prove.hpp"
#include "tests/unit/motion/anew.hpp"

using namespace prover;

namespace {

Answer answer_to(const std::string& text) {
  ProveOptions options;
  options.budget = Budget::seconds(20);
  Answer answer = prove(text, standard_catalogue(), options);
  for (const Diagnostic& d : answer.diagnostics) CHECK(d.severity != Severity::error);
  return answer;
}

bool contains(const std::vector<std::string>& list, const std::string& wanted) {
  return std::find(list.begin(), list.end(), wanted) != list.end();
}

const std::string bisectors = "triangle: KLM\nangle KLM = 54\nbisects: ray LN bisects angle KLM\nbisects: ray MN bisects angle KML\n";

// Whatever would settle it does: with its sentences added the answer is one value.
void check_settles(const std::string& givens, const std::string& goal, const Answer& answer) {
  CHECK(answer.settled_by.size() == answer.missing.size());
  for (const auto& sentences : answer.settled_by) {
    std::string text = givens;
    for (const std::string& sentence : sentences) text += sentence + "\n";
    INFO(text);
    const Answer settled = answer_to(text + goal);
    CHECK((settled.verdict == Verdict::proved || settled.verdict == Verdict::beyond_rules));
  }
}

}  // namespace

TEST_CASE("undetermined: two figures that meet the givens and differ widely", "[undetermined]") {
  const Answer answer = answer_to(bisectors + "find: angle LNM\n");
  REQUIRE(answer.verdict == Verdict::undetermined);
  REQUIRE(answer.figures.size() == 2);
  for (const AnswerFigure& figure : answer.figures) {
    const anew::Points& p = figure.points;
    CHECK(figure.exists);
    CHECK(std::fabs(anew::angle(p, "KLM") - 54) < 1e-9);
    CHECK(std::fabs(anew::angle(p, "KLN") - 27) < 1e-9);
    CHECK(std::fabs(anew::angle(p, "NLM") - 27) < 1e-9);
    CHECK(std::fabs(anew::angle(p, "KMN") - anew::angle(p, "NML")) < 1e-9);
    CHECK(std::fabs(anew::angle(p, "LNM") - *figure.value) < 1e-9);
  }
  CHECK(anew::angle(answer.figures[1].points, "LNM") - anew::angle(answer.figures[0].points, "LNM") > 20);
}

TEST_CASE("undetermined: what would settle it, and the value in terms of what is free", "[undetermined]") {
  const Answer answer = answer_to(bisectors + "find: angle LNM\n");
  CHECK(contains(answer.in_terms_of, "∠LNM = 90° + ½∠LKM"));
  REQUIRE_FALSE(answer.settled_by.empty());
  CHECK(answer.missing[0].starts_with("give ∠LKM"));
  for (const std::string& line : answer.missing) CHECK(line.find("give ∠LNM") == std::string::npos);  // that is the question
  check_settles(bisectors, "find: angle LNM\n", answer);
  // The twin: with the angle at K it is settled, and nothing is missing.
  const Answer twin = answer_to(bisectors + "angle LKM = 40\nfind: angle LNM\n");
  CHECK(twin.verdict == Verdict::proved);
  CHECK(twin.value == "110");
  CHECK(twin.missing.empty());
  CHECK(twin.in_terms_of.empty());
  CHECK(twin.figures.size() == 1);
}

TEST_CASE("undetermined: two givens where one is not enough", "[undetermined]") {
  const std::string givens = "triangle: KLM\nline: L, P, M in this order\n";
  const Answer answer = answer_to(givens + "find: angle KPM\n");
  REQUIRE(answer.verdict == Verdict::undetermined);
  REQUIRE(answer.settled_by.size() > 1);
  CHECK(answer.settled_by[0].size() <= answer.settled_by.back().size());
  check_settles(givens, "find: angle KPM\n", answer);
}

TEST_CASE("undetermined: a free shape alone is no reason", "[undetermined]") {
  const Answer settled = answer_to("triangle: KLM\nfind: angle KLM + angle LMK + angle MKL\n");
  CHECK(settled.verdict == Verdict::proved);
  CHECK(settled.settled_by.empty());
  const Answer open = answer_to("triangle: KLM\nfind: angle KLM + angle LMK\n");
  CHECK(open.verdict == Verdict::undetermined);
  CHECK(contains(open.in_terms_of, "∠KLM + ∠LMK = 180° − ∠LKM"));
}

TEST_CASE("false: the claim fails widely, in words that the coordinates bear out", "[undetermined]") {
  const Answer answer = answer_to("triangle: PQR\nmidpoint: M of QR\nprove: angle QPM = angle MPR\n");
  REQUIRE(answer.verdict == Verdict::false_claim);
  REQUIRE(answer.figures.size() == 1);
  const AnswerFigure& figure = answer.figures[0];
  CHECK(figure.exists);
  const double one = anew::angle(figure.points, "QPM"), other = anew::angle(figure.points, "MPR");
  CHECK(std::fabs(one - other) > 40);
  CHECK(std::fabs(anew::length(figure.points, "QM") - anew::length(figure.points, "MR")) < 1e-9);
  CHECK(figure.words.starts_with("∠QPM = "));
  CHECK(std::fabs(std::stod(figure.words.substr(std::string("∠QPM = ").size())) - one) < 0.051);
  CHECK(answer_to("triangle: PQR\nmidpoint: M of QR\nPQ = PR\nprove: angle QPM = angle MPR\n").verdict == Verdict::proved);
}
