#include "tests/unit/ways/found.hpp"

using namespace proved;

TEST_CASE("an isosceles triangle is its own mirror image, one with a given base angle is not") {
  CHECK(symmetry_count("triangle: KLM\nKL = KM\nprove: angle KLM = angle KML\n") == 2);
  CHECK(symmetry_count("triangle: KLM\nKL = KM\nangle KLM = 50\nprove: angle KLM = angle KML\n") == 1);
}

TEST_CASE("what is asked must be the same, too") {
  CHECK(symmetry_count("triangle: KLM\nKL = KM\nangle LKM = 40\nfind: angle KLM + angle KML\n") == 2);
  CHECK(symmetry_count("triangle: KLM\nKL = KM\nangle LKM = 40\nfind: angle KLM\n") == 1);
}

TEST_CASE("a parallelogram may be read from every corner and in both senses") {
  const std::string parallelogram = "KLMN is a parallelogram\n";
  CHECK(symmetry_count(parallelogram + "prove: KL = MN\n") == 4);
  CHECK(symmetry_count(parallelogram + "prove: KL = MN; LM = NK\n") == 8);
  CHECK(symmetry_count(parallelogram + "angle KLM = 100\nprove: KL = MN; LM = NK\n") == 2);  // K and M change places
}

TEST_CASE("points keep their order on a line") {
  const std::string chain = "line: K, L, M, N in this order\nKL = MN\nprove: KM = LN\n";
  CHECK(symmetry_count(chain) == 2);  // turned round
  CHECK(symmetry_count("line: K, L, M, N, P in this order\nKL = MN\nprove: KM = LN\n") == 1);
}
