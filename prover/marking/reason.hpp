// A pupil's words for a reason, understood: in full, shortened, misspelt, in any register ("alt ∠s; KL ∥ MN", "angles in a
// trinagle", "base angles"). Whether the rule named gives the line is asked elsewhere.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "prover/language/problem_text.hpp"
#include "prover/rule/rule.hpp"

namespace prover {

enum class ReasonKind {
  rule,      // names a rule of the catalogue (`rules`)
  nickname,  // names one by a word that examiners do not accept: "Z angles" (`rules`, `accepted`)
  vague,     // too little to tell which: "circle theorem", "parallel lines", "triangle" (`rules`: what it might be)
  given,     // "given", "hypothesis", "from the question"
  working,   // "substitution", "from line 3", "algebra": no fact of geometry, and none needed
  sight,     // "it looks so", "from the diagram"
  measured,  // "I measured it"
  unknown,   // words that mean nothing to us
};

struct ReadReason {
  ReasonKind kind = ReasonKind::unknown;
  std::vector<RuleId> rules;       // all that these words name, with the further cases of their families
  std::string accepted;            // nickname, vague: an accepted phrase, in the register asked for
  std::vector<Phrase> places;      // named with it: KL ∥ MN, KL = KM
  std::vector<std::vector<PointId>> figures;  // triangles, quadrilaterals, lines named by their points alone
  bool lines_named = false;        // for a rule about parallel lines: which lines are parallel is said
  bool names_relation = true;      // false: the bare name without "equal" or the sum, which some examiners refuse
  bool misstated = false;          // the rule's name, with something else said of the angles: "co-interior angles are equal"
  bool misspelt = false;           // read in spite of a mistake in writing
  std::vector<int> lines;          // "from lines 2 and 3"
};

// `names`: the points of the problem; a reason never makes a new one. Several reasons in one text ("alt ∠s, KL ∥ MN and
// angles on a line") are several.
std::vector<ReadReason> read_reason(std::string_view text, const Names& names, const Catalogue& catalogue, Register wording);

// The rule that concludes what this one supposes: base angles and sides opposite equal angles. Nothing where the catalogue has none.
std::optional<RuleId> converse_of(RuleId rule, const Catalogue& catalogue);

}  // namespace prover
