// The self-proving library as pages and as JSON: all theorems of a course, and what one of them rests on.
#pragma once
#include <string>
#include <vector>

#include "frontend/command/answer_json.hpp"
#include "frontend/document/document.hpp"
#include "prover/library/ancestry.hpp"
#include "prover/library/prove_library.hpp"

namespace frontend {

Document library_page(const prover::Catalogue& catalogue, const prover::Course& course,
                      const std::vector<prover::TheoremReport>& reports);
Json library_json(const prover::Catalogue& catalogue, const prover::Course& course,
                  const std::vector<prover::TheoremReport>& reports);

// One theorem: its proofs, then what it rests on, the deepest first, and what of that is taken on trust.
Document theorem_page(const prover::Catalogue& catalogue, const std::vector<prover::TheoremReport>& reports,
                      prover::RuleId rule);
Json theorem_json(const prover::Catalogue& catalogue, const std::vector<prover::TheoremReport>& reports,
                  prover::RuleId rule);
// The same as a graph: an arrow from a theorem to each that its proof cites.
std::string theorem_dot(const prover::Catalogue& catalogue, const std::vector<prover::TheoremReport>& reports,
                        prover::RuleId rule);

}  // namespace frontend
