// Pairs of triangles by hashing: a rule such as SAS ties two triangles by equal parts. For every drawn triangle in
// every order of its corners the normal forms of those parts are its key; equal keys are matches. So only
// triangles that already agree meet, never all pairs.
#pragma once
#include <array>
#include <vector>

#include "prover/chain/matcher.hpp"

namespace prover {

// Drawn triangles, corners in every order.
std::vector<std::array<PointId, 3>> drawn_triangles(const Arrangement& figure);

class TrianglePairs {
 public:
  TrianglePairs(const Rule& rule, Matcher& matcher, Knowledge& knowledge);
  void match(const std::vector<std::array<PointId, 3>>& triangles);

 private:
  struct Tie {             // quantity on the first triangle = quantity on the second
    Expression first, second;
  };
  Matcher& matcher_;
  Knowledge& knowledge_;
  std::array<std::size_t, 3> first_{}, second_{};  // variables
  std::vector<Tie> ties_;
  std::vector<Phrase> first_only_, second_only_;   // conditions on one triangle
  std::size_t variables_;
  bool usable_ = true;
  std::size_t last_version_ = static_cast<std::size_t>(-1);
};

}  // namespace prover
