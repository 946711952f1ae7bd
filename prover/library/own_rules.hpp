// A teacher's own rules: files beside the catalogue. A file cannot say of itself that it is proved; so whenever a proof
// cites such a rule, the rule is proved anew, from the catalogue and the own rules that come before it. What cannot be
// proved stays an assumption, and the proof that rests on it says so.
#pragma once
#include "prover/base/budget.hpp"
#include "prover/library/prove_library.hpp"

namespace prover {

// `rule` is marked as assumed in the catalogue. Stands after the whole default course and the own rules before it.
TheoremReport prove_own_rule(const Catalogue& catalogue, RuleId rule, Register wording, const Budget& budget);

// Takes from `assumed` the rules that can be proved, unless one of their own ancestors is assumed. With `unfold`, their
// proofs stand in the place of their citations, lines renumbered.
void settle_own_rules(const Catalogue& catalogue, bool unfold, Register wording, const Budget& budget, AnswerProof& proof);

}  // namespace prover
