#include <catch2/catch.hpp>

#include "tests/unit/language/understood.hpp"

using namespace prover;

TEST_CASE("what is asked") {
  struct Row {
    const char* written;
    const char* understood;
  };
  const std::vector<Row> rows = {
      {"find: angle KLM", "find ∠KLM"},
      {"find: angle KLM + angle LMN", "find ∠KLM + ∠LMN"},
      {"find: reflex angle KLM", "find reflex ∠KLM"},
      {"find: x, y", "find x | find y"},
      {"Find angles KLM and LMN.", "find ∠KLM | find ∠LMN"},
      {"Calculate the size of angle KLM (3 marks)", "find ∠KLM"},
      {"Work out the value of x. Give reasons for your answer. [4]", "find x"},
      {"express angle KPL in terms of angle KML", "find ∠KPL"},
      {"What is angle KLM?", "find ∠KLM"},
      {"prove: KL ∥ MN; equal lengths KL = MN", "prove KL ∥ MN; KL = MN"},
      {"show that KL ∥ MN", "prove KL ∥ MN"},
      {"prove that triangle KLM is isosceles", "prove △KLM is isosceles"},
      {"is it true that KP = KQ?", "prove KP = KQ"},
      {"(a) find: angle KLM [2]\n(b) hence prove: KL = KM [4]", "find ∠KLM | prove KL = KM"},
      {"Prove that KL = KM and hence find angle KLM", "prove KL = KM | find ∠KLM"},
      {"prove: concyclic K, L, N, M", "prove K, L, N, M lie on a circle"},
      {"prove: parallel KL, MN", "prove KL ∥ MN"},
      {"prove: midpoint X of PR; midpoint X of QS", "prove X is the midpoint of PR; X is the midpoint of QS"},
      {"prove: tangent line ME touches circle UEF at E", "prove ME touches circle UEF at E"},
  };
  for (const Row& row : rows) {
    INFO(row.written);
    CHECK(asked(row.written) == row.understood);
  }
}

TEST_CASE("\"if … then\" gives the first and claims the second") {
  CHECK(asked("triangle KLM. Prove that if KL = KM then angle L = angle M") == "prove ∠KLM = ∠LMK");
  const ProblemText problem = parse_problem("triangle KLM. Prove that if KL = KM, then angle L = angle M");
  REQUIRE(problem.sentences.size() == 2);
  CHECK(joined(problem.sentences[1].phrases, problem.names) == "KL = KM");
  CHECK(asked("Prove that KL = KM where KM = LM").starts_with("mistake: "));
  CHECK(asked("Prove that KL = KM or KM = LM").starts_with("mistake: "));
}

TEST_CASE("in terms of what") {
  const ProblemText problem = parse_problem("find: angle BIC in terms of angle BAC");
  REQUIRE(problem.goals.size() == 1);
  REQUIRE(problem.goals[0].in_terms_of.size() == 1);
  CHECK(describe(std::get<Angle>(problem.goals[0].in_terms_of[0]), problem.names) == "∠BAC");
}

TEST_CASE("a problem that asks nothing is told so, a line of steering is not a problem") {
  CHECK(mistakes("KL = KM").at(0).message == "nothing is asked");
  CHECK(mistakes("taught: triangles").empty());
  CHECK(mistakes("").at(0).message == "there is nothing in this text");
}

TEST_CASE("a goal about a point that is nowhere is told so") {
  const auto found = mistakes("triangle KLM\nfind: angle KDM");
  REQUIRE(found.size() == 1);
  CHECK(found[0].message == "D is not on the figure yet");
  CHECK(mistakes("triangle KLM; D is on LM\nfind: angle KDM").empty());
}

TEST_CASE("the inside of a circle of unknown size is a question") {
  const auto told = [](const char* text) {
    for (const Diagnostic& d : parse_problem(text).diagnostics)
      if (d.message.find("how large the circle") != std::string::npos) return true;
    return false;
  };
  CHECK(told("triangle: QRU\noutside: U lies outside circle P\nfind: angle QRU\n"));
  CHECK(told("triangle: QRU\ncircle: centre Q through R\ninside: U lies inside circle P\nfind: angle QRU\n"));
  CHECK_FALSE(told("triangle: QRU\ncircle: centre P through Q\noutside: U lies outside circle P\nfind: angle QRU\n"));
  CHECK_FALSE(told("tangent: line KT touches circle P at T\noutside: K lies outside circle P\nfind: angle KTP\n"));
}
