// What two proofs have in common when they rest on one idea: a name for a set of carrying facts that is the same
//   for mirror images;
//   for what the table of ideas calls composed (the angle sum of a quadrilateral, or of the two triangles that a diagonal
//   makes of it);
//   for arithmetic in another order: of facts of one kind it counts what they say together, the span of their equations
//   (when a line cuts a triangle in two, any two of the three angle sums say the same).
//
// Premises, and who rests on whom, are not part of the name: a theorem that says this at these places rests on what it
// always rests on, and what brings that is among the other facts.
#pragma once
#include <map>
#include <string>
#include <vector>

#include "prover/ways/carrying.hpp"
#include "prover/ways/symmetry.hpp"

namespace prover {

class IdeaNames {
 public:
  IdeaNames(const CarryingProblem& carrying, std::vector<Exchange> symmetries, const Arrangement& arrangement,
            UnknownTable& unknowns);
  // `facts` give the goal and are minimal, but for small change.
  const std::string& of(const std::vector<int>& facts);

 private:
  std::vector<int> composed(std::vector<int> facts) const;
  bool gives_goal(const std::vector<int>& facts) const;
  bool made_of(const CarryingFact& whole, const std::vector<const CarryingFact*>& parts) const;
  std::string name_under(const std::vector<int>& facts, std::size_t symmetry);

  struct Image {
    std::vector<Form> conclusions;
    bool complete = true;  // false: a line that it needs is not drawn
  };
  const Image& image(int fact, std::size_t symmetry);

  const CarryingProblem& carrying_;
  std::vector<Exchange> symmetries_;
  const Arrangement& arrangement_;
  UnknownTable& unknowns_;
  std::vector<int> always_;                                  // candidates that are no facts
  std::map<std::string, std::vector<int>> of_kind_;          // facts
  std::map<std::pair<int, std::size_t>, Image> images_;      // by fact and symmetry
  std::map<std::vector<int>, std::string> names_;
};

}  // namespace prover
