// A pupil's line taken apart: "∠LKQ = ∠PQK = 52°" is two links, each one thing said, and "180 − 70 = 110" is arithmetic.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "prover/figure/arrangement.hpp"
#include "prover/language/problem_text.hpp"

namespace prover {

enum class LinkKind {
  claim,       // to be judged in the figure
  arithmetic,  // numbers alone on both sides, and equal
  slip,        // numbers alone, and not equal
};

struct Link {
  LinkKind kind = LinkKind::claim;
  Phrase phrase;
  std::optional<Rational> left, right;  // slip: what stands on either side
};

// Straight angles (∠PKQ with K between P and Q by what is known) count as 180°.
std::vector<Link> links_of(const std::vector<Phrase>& claims, const Arrangement& arrangement);

// After a slip: what the chain says in the end, its first member equal to its last. Nothing for other phrases.
std::optional<Phrase> ends_of_chain(const Phrase& phrase);

}  // namespace prover
