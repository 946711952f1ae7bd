// How far the grammar got in a sentence that it could not read, and which words would have led on. From this
// the diagnostic is written: the farthest place is nearly always where a person would put a finger.
#pragma once
#include <string_view>
#include <vector>

namespace prover {

struct Trail {
  const char* furthest = nullptr;
  std::vector<std::string_view> expected;  // words, signs and names of pieces, at `furthest`

  void note(const char* place, std::string_view wanted) {
    if (furthest == nullptr || place > furthest) {
      furthest = place;
      expected.clear();
    }
    if (place == furthest) expected.push_back(wanted);
  }
};

}  // namespace prover
