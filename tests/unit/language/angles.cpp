#include <catch2/catch.hpp>

#include "tests/unit/language/understood.hpp"

using namespace prover;

TEST_CASE("a bare corner is the angle of the only triangle or polygon named with it") {
  CHECK(understood("triangle KLM; angle L = 40") == "KLM is a triangle; ∠KLM = 40°");
  CHECK(understood("KLMN is a square; LP bisects angle L") == "KLMN is a square; LP bisects ∠KLM");
  CHECK(understood("triangle KLM; the exterior angle at M is 110°").find("exterior angle at M = 110°") !=
        std::string::npos);
  CHECK(understood("angle K of triangle KLM is 40") == "∠MKL = 40°");
}

TEST_CASE("a bare corner of two triangles is a question") {
  const auto found = mistakes("triangle KLM; triangle KLP; angle L = 40; find: x");
  REQUIRE(found.size() == 1);
  CHECK(found[0].message == "\"angle L\" can mean more than one angle");
  CHECK(found[0].way_out == "write \"angle KLM\" or \"angle KLP\"");
}

TEST_CASE("two triangles whose sides lie on one ray name the same angle") {
  CHECK(understood("triangle KLM; P is on LM; triangle KLP; angle L = 40") ==
        "KLM is a triangle; P lies between L and M; KLP is a triangle; ∠KLM = 40°");
}

TEST_CASE("without a triangle, the only two sides at the corner decide") {
  CHECK(understood("LK = LM; angle L = 40") == "LK = LM; ∠KLM = 40°");
  CHECK(understood("LK = LM = LN; angle L = 40") == "mistake: \"angle L\" can mean more than one angle");
  CHECK(understood("PQ = RS; angle L = 40") ==
        "mistake: \"angle L\": no triangle or polygon with the corner L is named here");
}

TEST_CASE("an angle may have a name") {
  CHECK(understood("call angle KLM a; a = 40; angle LMN = 2a + b") == "∠KLM = 40°; ∠LMN = 2∠KLM + b°");
  CHECK(understood("let a = angle KLM; 2a = 40") == "2∠KLM = 40°");
  CHECK(understood("angles at K: 1 = LKP, 2 = PKM; angle K1 = 40; K₂ = 50") == "∠LKP = 40°; ∠PKM = 50°");
  CHECK(understood("call angle KLM a; call angle LMN a") ==
        "mistake: a is already the name of another angle");
}

TEST_CASE("letters may stand apart, and A is a point before a capital") {
  CHECK(understood("A B = A C; angle A B C = 40; D is on A B") ==
        "AB = AC; ∠ABC = 40°; D lies between A and B");
  CHECK(understood("A triangle ABC has AB = AC") == "ABC is a triangle; AB = AC");
}

TEST_CASE("angles are written with three different letters") {
  CHECK(understood("angle KL = 40") ==
        "mistake: an angle has three letters, or its corner alone; \"KL\" has 2");
  CHECK(understood("angle KLMN = 40") ==
        "mistake: an angle has three letters, or its corner alone; \"KLMN\" has 4");
  CHECK(understood("angle KLK = 40") == "mistake: angle KLK repeats a letter");
}

TEST_CASE("products of unknowns are refused with the reason") {
  for (const char* text :
       {"angle KLM = x * y", "angle KLM = x^2", "angle KLM = x²", "angle KLM * angle LMN = 40", "KL² = 9",
        "angle KLM = x(x + 1)", "angle KLM = 40/x", "angle KLM = xy"}) {
    INFO(text);
    CHECK(understood(text).find("unknown") != std::string::npos);
  }
  CHECK(understood("angle KLM = 2 * x") == "∠KLM = 2x°");
  CHECK(understood("angle KLM = x/2") == "∠KLM = ½x°");
  CHECK(understood("angle KLM = 2 * 3 * x - (x + 5)/2") == "∠KLM = (6x − ½x − 2.5)°");
}

TEST_CASE("sizes that no angle has are mistakes") {
  for (const char* size : {"400", "-5", "0", "180", "200", "360"}) {
    INFO(size);
    CHECK(understood(std::string("angle KLM = ") + size).starts_with("mistake: ∠KLM"));
  }
  CHECK(understood("reflex angle KLM = 100").starts_with("mistake: reflex ∠KLM"));
  CHECK(understood("reflex angle KLM = 200") == "reflex ∠KLM = 200°");
  CHECK(understood("2 angle KLM = 200") == "2∠KLM = 200°");
  CHECK(understood("angle KLM = 40 cm") == "mistake: gives an angle in units of length");
  CHECK(understood("KL = 40°") == "mistake: gives a length in degrees");
}
