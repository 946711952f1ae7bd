// How the places of a rule are found: its variables in an order in which each is reached from what is already
// placed, with every condition tested as soon as its variables are. Made once for each rule.
//
// A variable that only ever names an arm of an angle at one corner stands for a ray, and one point for each ray
// is tried; two variables that only name a line stand for a line. Otherwise every point is tried.
#pragma once
#include <vector>

#include "prover/rule/rule.hpp"

namespace prover {

enum class MatchAction {
  known_fact,      // run through the known facts of the phrase's kind
  drawn_triangle,  // run through drawn triangles
  on_line_order,   // run through ordered points of lines
  ray_at,          // variable: a ray at the placed variable `via`
  joined_to,       // variable: any point joined to the placed variable `via`
  any_point,       // variable: any point
  test_position,   // the positions of the phrase must be known
  test_fact,       // the fact must be known
};

struct MatchStep {
  MatchAction action = MatchAction::any_point;
  int phrase = -1;    // index into MatchPlan::conditions
  int variable = -1;
  int via = -1;
};

struct MatchPlan {
  std::vector<Phrase> conditions;   // given, then where
  std::size_t given_count = 0;
  std::vector<MatchStep> steps;
  std::vector<int> arm_of;          // by variable: the corner whose ray it stands for, or -1
  std::vector<bool> names_line;     // by variable: only ever used to name a line
  std::vector<int> fact_phrases;    // conditions that are facts: new facts trigger the rule
  std::vector<std::pair<PointId, PointId>> lines_used;  // variable pairs that must be drawn
  std::vector<std::vector<int>> symmetries;  // exchanges of variables that leave the rule as it is (not the identity)
  bool two_triangles = false;       // given is two triangles tied by equal parts: joined by hashing
};

// `first_fact`: the condition (an index of `fact_phrases`' values) that is matched first, against new facts; -1 when
// the rule has none.
MatchPlan make_plan(const Rule& rule, int first_fact = -1);

// Exchanges of variables, other than the identity, that leave the rule as it is; only for rules of up to six
// variables.
std::vector<std::vector<int>> symmetries_of(const Rule& rule);

// Whether two rules say the same with other letters: their givens, side conditions and conclusions agree, in whatever
// order, and whichever way round a fact or an angle is written.
bool say_the_same(const Rule& a, const Rule& b);

// Does the phrase, as a condition, ask for a known fact (rather than an equation or a position)?
bool is_fact_phrase(const Phrase& phrase);

}  // namespace prover
