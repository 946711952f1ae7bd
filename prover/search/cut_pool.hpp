// The cuts found so far, and how the present choice stands to each: whether a chosen candidate hits it, and how many
// free candidates are left in it. Kept up to date as candidates are chosen, forbidden and freed again.
#pragma once
#include <cstdint>
#include <vector>

#include "prover/search/cut_finder.hpp"

namespace prover {

enum class Choice : std::uint8_t { free, chosen, forbidden };

class CutPool {
 public:
  explicit CutPool(int candidates)
      : choice_(static_cast<std::size_t>(candidates), Choice::free), cuts_of_(static_cast<std::size_t>(candidates)) {}

  Choice choice(int candidate) const { return choice_[static_cast<std::size_t>(candidate)]; }
  void set(int candidate, Choice choice);
  int add(std::vector<int> members);  // its number

  int size() const { return static_cast<int>(cuts_.size()); }
  const std::vector<int>& members(int cut) const { return cuts_[static_cast<std::size_t>(cut)]; }
  bool hit(int cut) const { return hits_[static_cast<std::size_t>(cut)] > 0; }
  int free_in(int cut) const { return free_[static_cast<std::size_t>(cut)]; }
  int unhit_with(int candidate) const;  // unhit cuts that the candidate is in

 private:
  std::vector<Choice> choice_;
  std::vector<std::vector<int>> cuts_of_;
  std::vector<std::vector<int>> cuts_;
  std::vector<int> hits_, free_;
};

}  // namespace prover
