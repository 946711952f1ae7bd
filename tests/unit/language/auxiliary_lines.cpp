// What a teacher draws in addition, in her own words. Points without a name get a letter that the text does not have.
#include <catch2/catch.hpp>

#include "tests/unit/language/understood.hpp"

using namespace prover;

namespace {

const std::string triangle = "triangle: KLM\n";
const std::string circle = "circle: centre O through K, L, M, N\n";
const std::string cut = "triangle: KLM\nD is on KL\nE is on KM\n";

// What an added line says, or the first mistake.
std::string drawn(const std::string& givens, const std::string& added) {
  const ProblemText problem = parse_problem(givens + "add: " + added + "\nprove: KL = KM");
  if (!problem.diagnostics.empty()) return "mistake: " + problem.diagnostics.front().message;
  std::string all;
  for (const Sentence& sentence : problem.added)
    all += (all.empty() ? "" : "; ") + joined(sentence.phrases, problem.names);
  return all;
}

struct Row {
  const char* written;
  const char* understood;
};

void check(const std::string& givens, const std::vector<Row>& rows) {
  for (const Row& row : rows) {
    INFO(row.written);
    CHECK(drawn(givens, row.written) == row.understood);
  }
}

}  // namespace

TEST_CASE("a line through a point has a point on either side of it") {
  const char* parallel = "P, K, Q lie on a line in this order; PQ ∥ LM; Q and M are on the same side of KL";
  check(triangle, {
      {"draw through K the line parallel to LM", parallel},
      {"through K draw the line parallel to LM", parallel},
      {"draw the line through K parallel to LM", parallel},
      {"draw the parallel to LM through K", parallel},
      {"draw the parallel through K to LM", parallel},
      {"draw KP parallel to LM", "KP ∥ LM"},
      {"draw the line PQ through K parallel to LM", "P, K, Q lie on a line in this order; PQ ∥ LM"},
      {"draw through K the perpendicular to LM", "P, K, Q lie on a line in this order; PQ ⊥ LM"},
      {"erect the perpendicular to KL at K", "P, K, Q lie on a line in this order; PQ ⊥ KL"},
      {"draw through L the line parallel to LM",
       "mistake: L lies on LM, so the parallel through it is the same line"},
      {"draw a line through K", "mistake: what fixes this line is not said"},
  });
  check(cut, {
      {"through D draw the line parallel to KM, meeting LM", "DP ∥ KM; P lies on line LM"},
      {"through D draw the line parallel to KM, meeting LM at S", "DS ∥ KM; S lies on line LM"},
      {"draw through D the ray parallel to LM, on the side of KL where M lies",
       "DP ∥ LM; P and M are on the same side of KL"},
      {"draw through D the ray parallel to LM, on the other side of KL from M",
       "DP ∥ LM; P and M are on opposite sides of KL"},
      {"draw through D the ray parallel to LM", "mistake: to which side does the ray go?"},
  });
}

TEST_CASE("joins, diagonals and radii") {
  check(circle, {
      {"join O to K, L and M", "OK is drawn; OL is drawn; OM is drawn"},
      {"join K and L to M and to N", "KM is drawn; KN is drawn; LM is drawn; LN is drawn"},
      {"join K to L and M to N", "KL is drawn; MN is drawn"},
      {"join the centre to L and N", "OL is drawn; ON is drawn"},
      {"draw KN and LM", "KN is drawn; LM is drawn"},
      {"draw the diagonals KM and LN", "KM is drawn; LN is drawn"},
      {"draw the radii OK and OL", "OK is drawn; OL is drawn"},
      {"join K to K", "mistake: K cannot be joined to itself"},
      {"join K", "mistake: what fixes this line is not said"},
      // No construction: the room that judges drawings refuses it.
      {"draw the line through K, O and M", "K, O, M lie on a line"},
  });
}

TEST_CASE("rays, diameters and tangents end where they are said to end") {
  check(circle, {
      {"draw the ray from K through O", "K, O, P lie on a line in this order"},
      {"draw the ray from K through O, meeting LM at S", "S lies on ray KO; S lies on line LM"},
      {"draw the diameter through K", "KP is a diameter of the circle with centre O"},
      {"draw the diameter through K, meeting the circle again at S", "KS is a diameter of the circle with centre O"},
      {"draw the tangent at K", "PK touches the circle with centre O at K; P, K, Q lie on a line in this order"},
      {"draw the tangent to the circle at K, meeting LM",
       "PK touches the circle with centre O at K; P lies on line LM"},
      {"draw the tangents at K and L, meeting at S",
       "SK touches the circle with centre O at K; SL touches the circle with centre O at L"},
      {"draw the tangent", "mistake: what fixes this line is not said"},
      {"draw the tangent at K, meeting at S", "mistake: one tangent alone meets nothing"},
  });
  const std::string two = circle + "circle: centre W through D, E, F\n";
  CHECK(drawn(two, "draw the diameter through K") == "mistake: there is more than one circle here; which one is meant?");
  CHECK(drawn(two, "draw the diameter of circle O through K") == "KP is a diameter of the circle with centre O");
  CHECK(drawn(triangle, "draw the tangent at K") == "mistake: there is no circle in this problem");
}

TEST_CASE("what is produced") {
  check(cut, {
      {"produce LM to P", "L, M, P lie on a line in this order"},
      {"produce LM beyond M", "L, M, P lie on a line in this order"},
      {"produce LM beyond L", "M, L, P lie on a line in this order"},
      {"produce LM by its own length", "L, M, P lie on a line in this order; MP = LM"},
      {"produce DE to meet LM", "D, E, P lie on a line in this order; P lies on line LM"},
      {"produce LE and MD to meet the circumcircle of KLM again at S and T",
       "L, E, S lie on a line in this order; K, L, M, S lie on a circle; M, D, T lie on a line in this order; "
       "K, L, M, T lie on a circle"},
      {"produce LM", "mistake: how far is LM produced?"},
      {"produce LM beyond K", "mistake: LM does not end in K"},
      {"produce LE and MD to meet the circumcircle of KLM again at S",
       "mistake: 1 point is named where 2 are drawn"},
  });
}

TEST_CASE("perpendiculars, bisectors, medians and midpoints") {
  check(triangle, {
      {"drop the perpendicular from K to LM", "P is the foot of the perpendicular from K to LM"},
      {"drop the perpendicular from K to LM, meeting it at S", "S is the foot of the perpendicular from K to LM"},
      {"drop the perpendicular KP to LM", "P is the foot of the perpendicular from K to LM"},
      {"draw the bisector of angle KLM", "LP bisects ∠KLM"},
      {"draw the bisector of angle KLM, meeting KM at S", "LS bisects ∠KLM; S lies on line KM"},
      {"draw the median from K in triangle KLM", "P is the midpoint of LM"},
      {"draw the altitude from K", "P is the foot of the perpendicular from K to LM"},
      {"mark the midpoint of KL", "P is the midpoint of KL"},
      {"let S be the midpoint of KL", "S is the midpoint of KL"},
      {"draw the perpendicular bisector of KL", "P is the midpoint of KL; PQ ⊥ KL"},
      {"mark the incentre of triangle KLM", "KP bisects ∠MKL; LP bisects ∠KLM; MP bisects ∠LMK"},
      {"draw the altitude from S", "mistake: of which triangle is this the altitude?"},
      {"drop the perpendicular from K", "mistake: the sentence stops too early"},
      {"mark the midpoints S and T of KL", "mistake: 2 points are named where 1 is drawn"},
  });
  CHECK(drawn(triangle + "triangle: KDE\n", "draw the altitude from K") ==
        "mistake: of which triangle is this the altitude?");
}

TEST_CASE("figures put on a side, mirror images, angles laid off") {
  check(triangle, {
      {"build the equilateral triangle KLX on KL, on the other side from M",
       "△KLX is equilateral; X and M are on opposite sides of KL"},
      {"build the equilateral triangle on KL on the outer side",
       "△KLP is equilateral; P and M are on opposite sides of KL"},
      {"build the equilateral triangle KLX on KL, outside triangle KLM",
       "△KLX is equilateral; X and M are on opposite sides of KL"},
      {"build the equilateral triangle KLX on KL, on the side of M",
       "△KLX is equilateral; X and M are on the same side of KL"},
      {"complete the parallelogram KLMX", "KLMX is a parallelogram"},
      {"mirror M in KL", "KL is the perpendicular bisector of MP"},
      {"mark P on KL with KP = LM", "P lies between K and L; KP = LM"},
      {"draw from L the ray making with LK an angle equal to the angle at K, meeting KM",
       "∠KLP = ∠MKL; P lies between K and M"},
      {"draw from L the ray making with LK an angle of 20°, on the side of M",
       "∠KLP = 20°; P and M are on the same side of LK"},
      {"build the equilateral triangle on KL", "mistake: on which side of KL?"},
      {"complete the parallelogram KLM", "mistake: a parallelogram has 4 corners; KLM has 3"},
      {"mirror K in KL", "mistake: K lies on KL, so it is its own mirror image"},
      {"draw from L the ray making with LK an angle of 20°", "mistake: on which side of LK is the angle drawn?"},
      {"draw from L the ray making with KM an angle of 20°, on the side of M",
       "mistake: an angle at L has an arm that starts at L; KM does not"},
      {"draw from L the ray making with LK an angle equal to KM, on the side of M",
       "mistake: an angle has no length"},
  });
}

TEST_CASE("notes and second ways in an added line are not dropped in silence") {
  const std::string bracket = "mistake: what stands in brackets draws nothing";
  const std::string choice = "mistake: one way of drawing at a time: which of the two?";
  CHECK(drawn(triangle, "draw through K the line parallel to LM (it is parallel to PQ)") == bracket);
  CHECK(drawn(triangle, "mark the midpoint of KL (or join the centre to L)") == choice);
  CHECK(drawn(triangle, "mark the midpoint of KL; or complete the parallelogram KLMX") == choice);
  CHECK(drawn(triangle, "note the circle through K, L, M") == "mistake: this draws nothing");
}

TEST_CASE("a fresh point takes a letter that stands nowhere in the text, and is printed") {
  const ProblemText problem = parse_problem(
      "triangle: KLM\nadd: mark the midpoint of KL; mark the midpoint of LM\nP lies on KM\nfind: angle QKL");
  REQUIRE(problem.added.size() == 2);
  const auto name = [&](std::size_t i) { return problem.names.of(problem.added[i].fresh.at(0)); };
  CHECK(name(0) == "R");
  CHECK(name(1) == "S");
  CHECK_FALSE(problem.hidden.at(problem.added[0].fresh[0].index()));
  // A capital that begins a word is no point: "Produce" does not take the letter P.
  CHECK(drawn(triangle, "Produce LM beyond M") == "L, M, P lie on a line in this order");
}
