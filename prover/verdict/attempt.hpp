// One attempt at a statement: with the positions of the text alone, or with a set of figures that agree on what is
// read from them; with the drawn lines only, or with every two named points joined. Saturation, a light proof
// for each goal, and the two checks.
#pragma once
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "prover/verdict/checked_proof.hpp"
#include "prover/verdict/goal_forms.hpp"

namespace prover {

// What the attempt worked in, kept for whoever wants further proofs of its goals.
struct Workings {
  Arrangement arrangement;
  UnknownTable unknowns;
  Saturation saturation;
  std::vector<GoalForms> goals;  // one for each goal of the statement
  std::vector<Sketch> views;
};

struct Attempt {
  std::vector<std::optional<CheckedProof>> goals;  // one for each goal of the statement
  std::optional<CheckedProof> contradiction;       // the givens exclude each other
  bool all_reached = false;
  bool unsupported_goal = false;
  StopReason stop = StopReason::none;
  std::size_t instances = 0, matches = 0;
  int rounds = 0;
  // Not reached, but forced by the directions of the lines alone: its value, or "true" (DESIGN's direction layer).
  std::vector<std::string> forced_by_directions;   // one for each goal; empty when not forced or not asked
  std::string impossible;                          // "∠KLM = 190°", when a forced value cannot be
  std::shared_ptr<Workings> workings;              // never null once attempted
};

// The chain alone, for whoever asks what follows and shows no proof of it.
std::shared_ptr<Workings> worked_out(const Statement& statement, const std::vector<Sketch>& views,
                                     const AttemptOptions& options, const Budget& budget);

// The lightest set; among several that weigh the same, the one that reads best. Nothing when the claim does not follow.
std::optional<LightSet> best_set(const GoalSearch& search, const Claim& claim, const Scene& scene, const Budget& budget);

Attempt attempt(const Statement& statement, const std::vector<Sketch>& views, const AttemptOptions& options,
                const Budget& budget, StageTimes& times);

}  // namespace prover
