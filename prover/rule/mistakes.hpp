// Classic wrong rules: "two sides and an angle that is not between them", the angle at the centre whichever arc the point
// lies on. Each is a true rule that has lost a condition. They serve to find the step at which a plausible argument goes
// wrong, and to name it. They are no rules: no catalogue that proves anything holds them (`load_catalogue` never sees their
// files, which end in `.mistake`), and the replay checker refuses a step that cites one.
#pragma once
#include <string>
#include <vector>

#include "prover/rule/rule.hpp"

namespace prover {

inline constexpr std::string_view mistakes_topic = "mistakes";
inline bool is_mistake(const Rule& rule) { return rule.topic == mistakes_topic; }

struct Mistake {
  RuleId rule;          // in the catalogue of a MistakeBook
  std::string instead;  // the true rule that it is taken for, by id
  std::string missing;  // what would have to be known, a wording with places in braces
};

// The rules of a catalogue and behind them the mistakes; rules keep their ids. For arguments only, never for proofs.
struct MistakeBook {
  Catalogue catalogue;
  std::vector<Mistake> mistakes;
  std::size_t true_rules = 0;
  const Mistake* find(RuleId rule) const;
};

const std::vector<RuleFile>& builtin_mistake_files();  // compiled into the program, like the rules

struct LoadedMistakes {
  MistakeBook book;
  std::vector<std::pair<RuleFile, std::vector<Diagnostic>>> errors;  // a broken file is left out
};
LoadedMistakes load_mistakes(const Catalogue& rules, const std::vector<RuleFile>& files,
                             Examples examples = Examples::checked);

// The book for a catalogue; kept for the catalogue of the program.
const MistakeBook& standard_mistakes();

// `missing` with its places filled in, as `fill_wording` does for a reason.
std::string fill_missing(const MistakeBook& book, const Mistake& mistake, const std::vector<std::string>& place);

}  // namespace prover
