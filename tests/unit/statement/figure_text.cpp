#include "prover/statement/figure_text.hpp"

#include "tests/unit/statement/told.hpp"

using namespace prover;
using told::Told;

TEST_CASE("lines come from givens, segments from givens and goals") {
  const Told told("triangle: KLM; line: L, P, M in this order", "KP = PM");
  CHECK(told.line("KP").valid());
  CHECK(told.line("LM") == told.line("PM"));
  CHECK_FALSE(Told("triangle: KLM; line: L, P, M in this order").line("KP").valid());
}

TEST_CASE("what a goal claims about lines is not drawn as true") {
  const Told told("triangle: KLM; triangle: KLN", "collinear: K, M, N");
  CHECK(told.line("KM") != told.line("KN"));
  CHECK(told.line("KM").valid());
}

TEST_CASE("an angle that is given has arms on two lines") {
  CHECK(Told("angle KLM = 40").says("triangle: KLM"));
  CHECK_FALSE(Told("KL = LM").says("triangle: KLM"));
}

TEST_CASE("a parallelogram's sides are parallel for positions too") {
  const Told told("polygon: KLMN parallelogram");
  CHECK(told.says("sides: K and L on the same side of MN"));
  CHECK(told.says("sides: L and M on the same side of KN"));
  CHECK_FALSE(Told("triangle: KLM; triangle: KLN").says("sides: L and M on the same side of KN"));
}

TEST_CASE("inside a polygon is a matter of sides where the polygon is convex") {
  CHECK(Told("convex: K, L, M, N, P; inside: Q lies inside polygon KLMNP")
            .says("sides: Q and N on the same side of KL"));
  CHECK_FALSE(
      Told("inside: Q lies inside polygon KLMNP; PL = KN").says("sides: Q and N on the same side of KL"));
}

TEST_CASE("each phrase draws the segments that it names") {
  auto drawn = [](const char* sentence) {
    Names names;
    std::string all;
    for (const auto& [a, b] : drawn_pairs(Told::phrases(sentence, names)[0]))
      all += (all.empty() ? "" : " ") + names.of(a) + names.of(b);
    return all;
  };
  CHECK(drawn("triangle: KLM") == "KL LM MK");
  CHECK(drawn("angle KLM = 40") == "LK LM");
  CHECK(drawn("KL = MN") == "KL MN");
  CHECK(drawn("parallel: KL, MN") == "KL MN");
  CHECK(drawn("sides: P and Q on the same side of KL") == "KL");
  CHECK(drawn("concyclic: K, L, M, N").empty());
}
