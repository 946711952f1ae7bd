// A goal's search problem with the small change taken out of it. What is left are carrying facts: theorems at places of
// the figure, and lines drawn. Rule instances that say the same thing there but for small change ("alternate" and
// "corresponding" angles at the same parallels and transversal, the angle sum and the exterior angle of one triangle)
// are one fact: their conclusions have the same normal form once all small change is linear algebra for free.
//
// A minimal set of carrying facts that gives the goal is an idea. So the search for other ideas runs over ideas, not over
// the permutations of their small change, and "no other idea below this cost" is what the search says.
#pragma once
#include <cstdint>
#include <string>
#include <vector>

#include "prover/rule/ideas.hpp"
#include "prover/search/search_problem.hpp"
#include "prover/verdict/checked_proof.hpp"

namespace prover {

struct CarryingFact {
  std::string kind;                         // the fact's name in the table of ideas
  std::vector<Form> premises, conclusions;  // normal forms modulo small change, sorted
  std::vector<int> members;                 // candidates of the goal search that say it
  int candidate = -1;                       // of the problem below
};

struct CarryingProblem {
  std::vector<CarryingFact> facts;
  // Candidates of the goal search that make no difference: the givens, small change, and what says nothing new with these.
  std::vector<int> free;
  // Its candidates are the facts, each with the weight of its lightest member, and those of `free` that wait for a fact.
  // All modulo what the rest of `free` gives.
  SearchProblem problem;
  std::vector<int> fact;       // by candidate of `problem`: which fact it is, or −1
  bool free_suffices = false;  // the goal follows from the givens and small change
  LinearSystem small_change;   // what small change gives without any givens
  std::vector<Candidate> small_steps;  // small change that has premises, modulo that
};

CarryingProblem carrying_problem(const GoalSearch& search, const Catalogue& catalogue);

// The facts among the members of a set of candidates of the goal search, or of the problem here; sorted.
std::vector<int> facts_said(const CarryingProblem& carrying, const std::vector<int>& members);
std::vector<int> facts_among(const CarryingProblem& carrying, const std::vector<int>& candidates);

}  // namespace prover
