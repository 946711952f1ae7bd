// A set of hashes, for millions of "was this there before?": open addressing, a table of numbers and nothing else.
#pragma once
#include <cstddef>
#include <cstdint>
#include <vector>

namespace prover {

class HashSet {
 public:
  // True when it was not there.
  bool insert(std::uint64_t hash) {
    if (hash == 0) hash = 1;  // 0 is a free slot
    if (2 * size_ >= slots_.size()) grow();
    std::uint64_t& slot = slots_[slot_of(hash)];
    if (slot == hash) return false;
    slot = hash;
    ++size_;
    return true;
  }
  bool contains(std::uint64_t hash) const {
    if (hash == 0) hash = 1;
    return !slots_.empty() && slots_[slot_of(hash)] == hash;
  }

 private:
  std::size_t slot_of(std::uint64_t hash) const {
    const std::size_t mask = slots_.size() - 1;
    std::size_t at = static_cast<std::size_t>(hash * 0x9e3779b97f4a7c15U >> 20) & mask;
    while (slots_[at] != 0 && slots_[at] != hash) at = (at + 1) & mask;
    return at;
  }
  void grow() {
    std::vector<std::uint64_t> old(slots_.empty() ? 64 : 2 * slots_.size());
    std::swap(old, slots_);
    for (const std::uint64_t hash : old)
      if (hash != 0) slots_[slot_of(hash)] = hash;
  }

  std::vector<std::uint64_t> slots_;  // a power of two
  std::size_t size_ = 0;
};

}  // namespace prover
