#include <catch2/catch.hpp>

#include "tests/unit/language/understood.hpp"

using namespace prover;

TEST_CASE("comments, stories and labels fall away") {
  CHECK(understood("# a comment\nstory: A gardener nails laths.\n1. KL = KM # the givens\n(ii) KM = LM") ==
        "KL = KM; KM = LM");
  CHECK(understood("as drawn: P is inside triangle KLM") == "P lies inside △KLM");
}

TEST_CASE("a line may end in a segment whose letters make a word") {
  CHECK(understood("AB = BE\nangle ABE = 40") == "AB = BE; ∠ABE = 40°");
  CHECK(understood("LK ⊥ AN\nKL = KN") == "LK ⊥ AN; KL = KN");
  CHECK(understood("KL is\nparallel to MN") == "KL ∥ MN");
}

TEST_CASE("what the class has been taught") {
  const ProblemText problem =
      parse_problem("taught: angle facts, parallel lines; not congruence, US-course up to alternate-angles");
  REQUIRE(problem.taught.size() == 1);
  const Taught& taught = problem.taught[0];
  REQUIRE(taught.names.size() == 3);
  CHECK(taught.names[0].name == "angle facts");
  CHECK(taught.names[1].name == "parallel lines");
  CHECK(taught.names[1].up_to.empty());
  CHECK(taught.names[2].name == "US-course");
  CHECK(taught.names[2].up_to == "alternate-angles");
  REQUIRE(taught.excluded.size() == 1);
  CHECK(taught.excluded[0].name == "congruence");
}

TEST_CASE("a course may be taught up to a rule, and left out from there") {
  const std::string line = "taught: school up to  alternate angles ; and loci, not circles up to radii.";
  const ProblemText problem = parse_problem(line);
  REQUIRE(problem.taught.size() == 1);
  const Taught& taught = problem.taught[0];
  REQUIRE(taught.names.size() == 2);
  CHECK(taught.names[0].name == "school");
  CHECK(taught.names[0].up_to == "alternate angles");
  CHECK(line.substr(taught.names[0].up_to_span.begin, 9) == "alternate");
  CHECK(taught.names[1].name == "loci");
  CHECK(taught.names[1].up_to.empty());
  REQUIRE(taught.excluded.size() == 1);
  CHECK(taught.excluded[0].name == "circles");
  CHECK(taught.excluded[0].up_to == "radii");
  // "up to" between two names only.
  CHECK(parse_problem("taught: up to angles").taught.at(0).names.at(0).name == "up to angles");
}

TEST_CASE("a drawn figure has coordinates, and may count for positions") {
  const ProblemText problem = parse_problem("figure: K = (0, 0), L = (4, -1.5), M=(−1,2e1)\nfind: angle KLM");
  CHECK(problem.diagnostics.empty());
  REQUIRE(problem.drawn.size() == 3);
  CHECK(problem.drawn[1].x == 4);
  CHECK(problem.drawn[1].y == -1.5);
  CHECK(problem.drawn[2].x == -1);
  CHECK(problem.drawn[2].y == 20);
  CHECK_FALSE(problem.positions_count);
  CHECK(parse_problem("figure: K = (0, 0); positions count").positions_count);
  CHECK(mistakes("figure: K = 0").size() == 1);
  CHECK(mistakes("figure: K = (0, 0), K = (1, 1)").size() == 1);
}

TEST_CASE("auxiliary lines are kept apart") {
  const ProblemText problem = parse_problem(
      "triangle: KLM\nadd: join KP. Draw through K the line QR parallel to LM; extend LM beyond M to "
      "N\nfind: angle KLM");
  CHECK(problem.diagnostics.empty());
  REQUIRE(problem.added.size() == 3);
  CHECK(joined(problem.added[0].phrases, problem.names) == "KP is drawn");
  CHECK(joined(problem.added[1].phrases, problem.names) == "Q, K, R lie on a line in this order; QR ∥ LM");
  CHECK(joined(problem.added[2].phrases, problem.names) == "L, M, N lie on a line in this order");
  CHECK(problem.sentences.size() == 1);
}

TEST_CASE("other lines are kept as they are") {
  const ProblemText problem = parse_problem(
      "KL = KM\nfind: angle KLM\nanswer: 64\nwork:\nangle KLM = 3 because so\n\nangle KML too\nexpect: "
      "base-angles");
  CHECK(problem.diagnostics.empty());
  REQUIRE(problem.other_lines.size() == 4);
  CHECK(problem.other_lines[0].keyword == "answer");
  CHECK(problem.other_lines[0].text == "64");
  CHECK(problem.other_lines[1].keyword == "work");
  CHECK(problem.other_lines[1].text == "angle KLM = 3 because so");
  CHECK(problem.other_lines[2].text == "angle KML too");
  CHECK(problem.other_lines[3].keyword == "expect");
}

TEST_CASE("phrases of a rule share a table of names") {
  Names names;
  std::vector<Diagnostic> found;
  const auto given = parse_phrases("triangle A B C;  AB = AC", names, found, 100);
  const auto then = parse_phrases("angle A B C = angle A C B", names, found);
  CHECK(found.empty());
  CHECK(joined(given, names) == "ABC is a triangle; AB = AC");
  CHECK(joined(then, names) == "∠ABC = ∠ACB");
  CHECK(names.points == std::vector<std::string>{"A", "B", "C"});
  CHECK(given[0].span.begin == 100);
  parse_phrases("triangle A B D; angle A B = 3", names, found, 7);
  REQUIRE(found.size() == 1);
  CHECK(found[0].span.begin == 7 + 22);
}

TEST_CASE("every phrase knows where its points are written") {
  const std::string text = "KL is parallel to MN. Find x";
  const ProblemText problem = parse_problem(text);
  const Phrase& phrase = problem.sentences.at(0).phrases.at(0);
  REQUIRE(phrase.points.size() == phrase.point_spans.size());
  CHECK(text.substr(phrase.point_spans[2].begin, 1) == "M");
  CHECK(problem.sentences[0].text == "KL is parallel to MN");
}
