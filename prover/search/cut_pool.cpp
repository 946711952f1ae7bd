#include "prover/search/cut_pool.hpp"

namespace prover {

void CutPool::set(int candidate, Choice choice) {
  Choice& now = choice_[static_cast<std::size_t>(candidate)];
  if (now == choice) return;
  for (const int cut : cuts_of_[static_cast<std::size_t>(candidate)]) {
    const auto k = static_cast<std::size_t>(cut);
    hits_[k] += (choice == Choice::chosen) - (now == Choice::chosen);
    free_[k] += (choice == Choice::free) - (now == Choice::free);
  }
  now = choice;
}

int CutPool::add(std::vector<int> members) {
  const int cut = size();
  int hits = 0, free = 0;
  for (const int i : members) {
    cuts_of_[static_cast<std::size_t>(i)].push_back(cut);
    hits += choice(i) == Choice::chosen;
    free += choice(i) == Choice::free;
  }
  hits_.push_back(hits);
  free_.push_back(free);
  cuts_.push_back(std::move(members));
  return cut;
}

int CutPool::unhit_with(int candidate) const {
  int count = 0;
  for (const int cut : cuts_of_[static_cast<std::size_t>(candidate)]) count += !hit(cut);
  return count;
}

}  // namespace prover
