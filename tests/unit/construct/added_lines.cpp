// What may be drawn in addition. One example for each reason to refuse, beside one like it that may be drawn.
#include <catch2/catch.hpp>

#include "prover/construct/added_lines.hpp"
#include "prover/language/problem_text.hpp"

using namespace prover;

namespace {

AddedLines examined(const std::string& givens, const std::string& added) {
  const ProblemText text = parse_problem(givens + "add: " + added + "\nprove: KL = KM");
  for (const Diagnostic& mistake : text.diagnostics) FAIL(mistake.message);
  return examine_added_lines(statements_of(text).at(0), Budget::seconds(20));
}
std::string objection(const std::string& givens, const std::string& added) {
  return examined(givens, added).objection;
}

const std::string triangle = "triangle: KLM\n";
const std::string circle = "circle: centre O through K, L, M, N\n";

}  // namespace

TEST_CASE("lines that exist in every figure may be drawn") {
  for (const char* added : {"draw through K the line parallel to LM", "drop the perpendicular from K to LM",
                            "draw the bisector of angle KLM, meeting KM", "mark the incentre of triangle KLM",
                            "build the equilateral triangle on KL, outside triangle KLM",
                            "complete the parallelogram KLMX", "produce LM by its own length", "mirror M in KL"}) {
    INFO(added);
    CHECK(objection(triangle, added) == "");
  }
  for (const char* added : {"join O to K, L and M", "draw the diameter through K", "draw the tangent at K",
                            "draw the tangents at K and L"}) {
    INFO(added);
    CHECK(objection(circle, added) == "");
  }
}

TEST_CASE("what an added line says of old points alone is a given in disguise") {
  CHECK_THAT(objection(circle, "draw the line through K, O and M"), Catch::Contains("a further given"));
  CHECK_THAT(objection(triangle, "KL = KM"), Catch::Contains("a further given"));
}

TEST_CASE("a new point has to be placed, not only joined") {
  CHECK_THAT(objection(triangle, "join K to P"), Catch::Contains("where P is, is not said"));
  CHECK(objection(triangle, "mark P on line LM; join K to P") == "");
}

TEST_CASE("a new point may not ask too much: two of three conditions are enough") {
  CHECK(objection(triangle, "P is the midpoint of LM") == "");
  CHECK(objection(triangle, "P is the midpoint of LM; KP ⊥ LM") != "");
}

TEST_CASE("what exists in some figures only is refused, with one of the others") {
  const AddedLines result = examined(triangle, "mark P on KL with KP = LM");
  CHECK(result.objection == "the added line cannot be drawn in every figure that meets the givens");
  CHECK(result.figure.has_value());
}

// What the givens say already is no restriction: the angle of a rectangle is there, and here it is not.
TEST_CASE("a rectangle can be completed where there is a right angle") {
  CHECK(objection("triangle: KLM\nangle KLM = 90\n", "complete the rectangle KLMX") == "");
  CHECK(objection(triangle, "complete the rectangle KLMX") != "");
}

// The shape is fixed, and P would stand there by numbers: that must be proved, not drawn.
TEST_CASE("what holds in a figure by its numbers is not drawn") {
  const std::string sizes = "triangle: KLM\nangle LKM = 40\nangle KLM = 70\n";
  CHECK(objection(sizes, "ray KP bisects angle LKM; L, P, M lie on a line in this order") == "");
  CHECK(objection(sizes, "ray KP bisects angle LKM; L, P, M lie on a line in this order; KP ⊥ LM") != "");
  CHECK(objection("equilateral: KLM\n", "P is the midpoint of LM; KP ⊥ LM") != "");
}

TEST_CASE("where no figure is found, a line is tried with one given less") {
  const std::string none = "triangle: KLM\nangle LKM = 120\nangle KLM = 70\n";
  CHECK(objection(none, "P is the midpoint of LM") == "");
  CHECK(objection(none, "P is the midpoint of LM; KP ⊥ LM") != "");
}

TEST_CASE("lines that need not meet are named") {
  const std::string four = "convex: K, L, M, N\n";
  CHECK_FALSE(examined(four, "P is where lines KL and MN meet").provided.empty());
  CHECK(examined(four, "P is where lines KM and LN meet").provided.empty());
}
