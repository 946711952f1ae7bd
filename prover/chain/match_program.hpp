// A match plan taken apart: one move places one variable (or reads one fact), and right after it come all tests that
// can be made by then. A plan's own steps place several variables at once and ask about positions when all points of
// a phrase are placed; here "A, B, C on a line in this order" already fails when A and B share no line, and an
// equation fails as soon as an arm that it names is not drawn. Moves run through the same candidates in the same order
// as the plan's steps would, so that instances come in the same order.
#pragma once
#include <cstdint>
#include <vector>

#include "prover/chain/match_plan.hpp"
#include "prover/fact/unknown.hpp"
#include "prover/figure/position.hpp"

namespace prover {

using Variable = std::uint8_t;  // of a rule

struct MatchTest {
  enum class Kind {
    position,   // is known; its points are variables
    drawn,      // a and b are different points on one line of the figure
    two_lines,  // a, b, c: lines ab and bc differ
    angle,      // a, b, c: rays ba and bc are drawn, not the same, not opposite
    image,      // the places do not come after their image under symmetry `index`, as far as its first `size` say
    fact,       // condition `index` is a fact that is known
  };
  Kind kind = Kind::position;
  Position position;
  Variable a = 0, b = 0, c = 0;
  std::size_t index = 0, size = 0;
};

struct MatchMove {
  enum class Kind {
    fact_of_lines,     // two lines, both ways round: registers `line`, `line` + 1
    fact_of_points,    // points of a fact, in all orders in which it can be read
    fact_of_tangent,   // touching point and circle; register `line`
    lines_all,         // register `line`: every line of the figure …
    lines_through,     // … every line through `near`
    line_of_two,       // … the line through `near` and `far`
    on_line,           // variable: every point of the line
    other_on_line,     // variable: every point of the line but `near` (and `far`)
    end_on_line,       // variable: likewise, and it stands for its ray from `near`
    ray_on_line,       // variable: the rays at `near` along the line
    one_ray_on_line,   // variable: the first of these
    name_line,         // variable and `near`: the first two points of the line
    stands_on,         // the placed variable is on the line, and not `near` or `far`
    is_line,           // the placed `near` and `far` name the line
    ray,               // variable: the rays at `near`
    neighbour,         // variable: points joined to `near`, by number
    joined,            // variable: points joined to `near`, line by line
    any_point,
    tests_only,
  };
  Kind kind = Kind::tests_only;
  FactKind fact = FactKind::parallel;
  bool new_facts = false;            // only those that have come since
  std::pair<int, int> first_named{-1, -1}, second_named{-1, -1};  // lines: variables on them that stand already
  std::vector<Variable> points;      // fact: by place in the fact
  std::vector<bool> placed;          // by the same: stands already, and is compared
  std::vector<std::vector<std::uint8_t>> readings;  // orders of the fact's points
  Variable variable = 0;
  int near = -1, far = -1;           // variables
  std::size_t line = 0;
  std::vector<MatchTest> tests;
};

struct MatchProgram {
  std::vector<MatchMove> moves;
  std::size_t lines = 0;  // registers
  // From this move on, all variables stand for points of lines already chosen, or for points that only positions ask
  // for: whatever they are, premises and conclusions are the same, so the first way to place them will do.
  std::size_t free_from = 0;
};

MatchProgram program_of(const MatchPlan& plan, const Rule& rule);

}  // namespace prover
