// A weighted search problem whose every equation is true in one drawn figure, and the same figure told by the
// directions of its lines. The candidates have no premises, so general solvers can take the very same problem.
#pragma once
#include <cstddef>
#include <string>
#include <vector>

#include "prover/search/search_problem.hpp"

namespace prover {

struct SearchInstance {
  std::string name;
  SearchProblem problem;
  std::size_t unknowns = 0;

  // One unknown for each line. What the text would give of them (parallels, equal angles), every candidate's equation,
  // and the goal; empty when the figure is not made of lines or not known.
  struct Directions {
    std::size_t lines = 0;
    std::vector<Form> given, equations;
    Form goal;
  } directions;
};

}  // namespace prover
