// Which rules the words of one reason name, the most likely first.
#pragma once
#include "prover/marking/reason_index.hpp"

namespace prover {

struct ReasonMatch {
  ReasonKind kind = ReasonKind::unknown;
  std::vector<const ReasonRow*> rows;
  bool exact = false;     // said just so in a rule file
  bool converse = false;  // "converse of …": of the rules that the rows name
};
ReasonMatch match_words(const ReasonIndex& index, const Meanings& words, const Meanings& shapes);

struct NamedRules {
  std::vector<RuleId> rules;  // each family behind its first member
  bool names_relation = true;
  bool misstated = false;
};
// `supposed`: what the reason itself takes for given ("the lines are parallel, so …"), among words and shapes.
NamedRules named_rules(const ReasonIndex& index, const Catalogue& catalogue, Register wording, const ReasonMatch& match, const Meanings& words,
                       const std::vector<Meaning>& sequence, const Meanings& shapes, const Meanings& supposed);

}  // namespace prover
