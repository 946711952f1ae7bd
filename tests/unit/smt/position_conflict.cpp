#include "prover/smt/position_conflict.hpp"

#include <catch2/catch.hpp>

#include "prover/language/problem_text.hpp"
#include "prover/statement/figure_text.hpp"

using namespace prover;

namespace {

PositionsAnswer said(const std::string& text) {
  const ProblemText problem = parse_problem(text + "\nfind: x\nx = 1\n");
  const FigureText figure = figure_text(statements_of(problem)[0]);
  return positions_exclude_each_other({figure.collinear, figure.positions, figure.rays, figure.parallel}, {});
}

}  // namespace

TEST_CASE("sentences about order and sides that exclude each other are found; their tame twins may hold") {
  struct Twins {
    const char *wild, *tame;
  };
  for (const Twins& twins : {
           Twins{"line: K, L, M in this order; line: K, M, L in this order", "line: K, L, M in this order; line: M, L, K in this order"},
           Twins{"sides: P and Q on the same side of KL; sides: P and Q on opposite sides of KL",
                 "sides: P and Q on the same side of KL; sides: P and R on opposite sides of KL"},
           // Three points: not each two of them on different sides of one line.
           Twins{"sides: P and Q on opposite sides of KL; sides: Q and R on opposite sides of KL; sides: P and R on opposite sides of KL",
                 "sides: P and Q on opposite sides of KL; sides: Q and R on opposite sides of KL; sides: P and R on the same side of KL"},
           // Pasch: a line through no corner meets two sides of a triangle or none.
           Twins{"triangle KLM; line: K, P, L in this order; line: L, Q, M in this order; line: M, R, K in this order; line: P, Q, R in this order",
                 "triangle KLM; line: K, P, L in this order; line: L, Q, M in this order; line: M, K, R in this order; line: R, P, Q in this order"},
           Twins{"triangle KLM; P lies inside triangle KLM; line: L, P, M in this order",
                 "triangle KLM; P lies inside triangle KLM; line: L, Q, M in this order; line: K, P, Q in this order"},
           // A round of orders, no two of which exclude each other.
           Twins{"line: K, L, M in this order; line: L, N, M in this order; line: N, K, M in this order",
                 "line: K, L, M in this order; line: L, N, M in this order; line: K, N, M in this order"},
       }) {
    INFO(twins.wild);
    CHECK(said(twins.wild) == PositionsAnswer::exclude_each_other);
    INFO(twins.tame);
    CHECK(said(twins.tame) == PositionsAnswer::perhaps);
  }
}

TEST_CASE("four points: one inside the triangle of the others is on no side of two of them at once") {
  // P inside KLM and M inside KLP exclude each other; P inside KLM and P inside KLN do not.
  CHECK(said("P lies inside triangle KLM; M lies inside triangle KLP") == PositionsAnswer::exclude_each_other);
  CHECK(said("P lies inside triangle KLM; P lies inside triangle KLN") == PositionsAnswer::perhaps);
}

TEST_CASE("too many points are not looked at, and that is said") {
  CHECK(said("line: A, B, C, D, E, F, G, H, K, L, M in this order") == PositionsAnswer::too_many_points);
}
