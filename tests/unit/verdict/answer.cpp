#include "prover/verdict/answer.hpp"

#include <catch2/catch.hpp>

using namespace prover;

TEST_CASE("verdicts have the names that users and machines read, each its own") {
  CHECK(std::string(name_of(Verdict::proved)) == "proved");
  CHECK(std::string(name_of(Verdict::false_claim)) == "false");
  CHECK(std::string(name_of(Verdict::undetermined)) == "undetermined");
  CHECK(std::string(name_of(Verdict::contradictory)) == "contradictory");
  CHECK(std::string(name_of(Verdict::depends_on_figure)) == "depends-on-figure");
  CHECK(std::string(name_of(Verdict::beyond_rules)) == "beyond-rules");
  CHECK(std::string(name_of(Verdict::unknown)) == "unknown");
}

TEST_CASE("an answer of which nothing is known says unknown") {
  CHECK(Answer().verdict == Verdict::unknown);
}
