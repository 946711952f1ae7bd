// Families of growing problems, by names that say everything:
//   triangle              a triangle with the parallel through its apex; no triangle sum may be used
//   grid-PxT              P parallels, T transversals; three far angles make 180°
//   grid-PxT-chainK       the same; the angle across K transversals is the sum of the angles between neighbours
//   fan-N                 a zigzag of N strokes between two parallels: long proofs
//   doubling-fan-N        N isosceles triangles in a row: the goal takes every second equation twice as often
//   random-N              N lines with parallel and isosceles relations, and some lemmas
// Endings, in this order, where they make sense: -chainK, -neighbours (rules between neighbouring parallels only),
// -goalK (the random goal is a sum of K equations), -seedS, -weighted (by reason; otherwise all cost the same).
#pragma once
#include <cstdint>
#include <optional>
#include <string>

#include "benchmarks/search/drawn_lines.hpp"

namespace prover {

std::optional<SearchInstance> instance_named(const std::string& name);  // nothing when there is no such family

struct GridShape {
  int parallels, transversals;
  int chain = 0;  // 0: the goal is the sum of three far angles
  DrawnLines::Pairs pairs = DrawnLines::Pairs::all;
  std::uint64_t seed = 1;
};
struct RandomShape {
  int lines;
  int goal_steps = 6;
  std::uint64_t seed = 1;
};
void draw_triangle(EquationBook& book);
void draw_grid(EquationBook& book, const GridShape& shape);
void draw_fan(EquationBook& book, int strokes);
void draw_doubling_fan(EquationBook& book, int triangles);
void draw_random_lines(EquationBook& book, const RandomShape& shape);

}  // namespace prover
