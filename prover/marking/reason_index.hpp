// All the ways to name a rule, worked out once for a catalogue: the wordings, titles and synonyms of its rules, and the tables of
// rules/reasons. A way is a set of meanings: those that must be there, and those that may stand beside them.
#pragma once
#include <memory>
#include <unordered_map>

#include "prover/marking/reason.hpp"
#include "prover/marking/reason_units.hpp"

namespace prover {

struct ReasonRow {
  Meanings required;                // all of them
  Meanings allowed;                 // nothing else
  Meanings worded;                  // as it is written: when these are all said, and no more, it is said exactly
  Meanings relation;                // at least one of these, when there is one
  std::vector<Meaning> sequence;    // the telling words in their order: "sides opposite equal angles" is no "angles opposite equal sides"
  ReasonKind kind = ReasonKind::rule;
  std::vector<RuleId> rules;
  std::optional<Register> wording;  // of a rule's own words; none for titles, synonyms and tables
  bool own = false;                 // title, synonym or wording of a rule file
  bool bare = false;                // the name without what it says
  bool lacking = false;             // said in full but for a word that examiners insist on
};

// What a rule says of its angles or lengths, so far as it can be told from what it concludes and how it is worded.
struct Statement {
  bool equal = false, sum = false;
  bool multiple = false;           // twice the one is the other
  Meanings numbers;                // 180, 360, 90 …
  bool examiners_want_it = false;  // the phrase of examinations says it
};

class ReasonIndex {
 public:
  explicit ReasonIndex(const Catalogue& catalogue);

  const ReasonVocabulary& vocabulary() const { return vocabulary_; }
  // The rows that these words fit, in the order of the catalogue and then of the tables.
  std::vector<const ReasonRow*> matching(const Meanings& words, const Meanings& shapes) const;
  // By id, or by a text exactly as a rule file has it.
  const std::vector<RuleId>* called(std::string_view id) const;

  const Meanings& given_shapes(RuleId rule) const { return given_[rule.index()]; }
  const Meanings& concluded_shapes(RuleId rule) const { return then_[rule.index()]; }
  const Statement& statement(RuleId rule) const { return statements_[rule.index()]; }
  // Whether the words say something else of the angles than the rule: "co-interior angles are equal".
  bool misstates(const Meanings& words, RuleId rule) const;
  bool names_relation(const Meanings& words) const;
  bool names_any(const Meanings& words, std::initializer_list<std::string_view> names) const;
  const std::vector<RuleId>& family(RuleId rule) const { return family_[rule.index()]; }  // the rule itself among them
  const Meanings& shapes() const { return shapes_; }
  // The words that tell reasons apart: neither weak ones nor those of a relation.
  const Meanings& telling() const { return telling_; }
  const Meanings& generic() const { return generic_; }            // angle, line, side: in many reasons
  const Meanings& titles() const { return titles_; }              // theorem, property: said or left out
  const Meanings& figure_nouns() const { return figure_nouns_; }  // triangle, line, chord: what a figure's letters stand behind
  const std::vector<std::string>& mistakes() const { return mistakes_; }
  std::size_t rows() const { return rows_.size(); }

 private:
  void learn_shapes(const Catalogue& catalogue);
  void learn_words(const Rule& rule, RuleId id);
  void learn_table(std::string_view table, std::string_view file, const Catalogue& catalogue, bool kinds);
  void add_text(std::string_view text, const Rule& rule, RuleId id, std::optional<Register> wording);
  void add(ReasonRow row);
  struct Said {
    Meanings words, shapes;
    std::vector<Meaning> sequence;
    bool adjective = false;  // "equal chords"
  };
  Said said_in(std::string_view text) const;
  void learn_statement(const Meanings& words, RuleId id, std::optional<Register> wording);

  ReasonVocabulary vocabulary_;
  Names letters_;  // to fill places of wordings in
  std::vector<ReasonRow> rows_;
  std::vector<std::vector<std::uint32_t>> by_key_;  // by meaning: the rows filed under it, the rarest that they require
  std::unordered_map<std::string, std::vector<RuleId>> called_;
  std::vector<Meanings> given_, then_;
  std::vector<Statement> statements_;
  std::vector<std::vector<RuleId>> family_;
  Meanings shapes_, equalities_, sums_, numbers_, relations_, telling_, generic_, figure_nouns_, titles_;
  std::vector<std::string> mistakes_;
};

// Kept for each catalogue by its serial; safe to ask from several threads.
std::shared_ptr<const ReasonIndex> reason_index(const Catalogue& catalogue);

// The telling words of a stretch in their order.
std::vector<Meaning> sequence_of(const std::vector<ReasonUnit>& units, const Meanings& telling);
// How many of them stand in the same order in both.
std::size_t common_order(const std::vector<Meaning>& a, const std::vector<Meaning>& b);

// "so" and "because": what is concluded gets another meaning than what is supposed. Changes the words among `units` in place.
void turn_round(std::vector<ReasonUnit>& units, const ReasonVocabulary& vocabulary);

}  // namespace prover
