#include "prover/marking/reason_match.hpp"

#include <algorithm>

namespace prover {

ReasonMatch match_words(const ReasonIndex& index, const Meanings& words, const Meanings& shapes) {
  ReasonMatch out;
  out.rows = index.matching(words, shapes);
  const auto converse = index.vocabulary().known("converse");
  if (out.rows.empty() && converse && words.test(*converse)) {
    Meanings rest = words;
    out.rows = index.matching(rest.reset(*converse), shapes);
    std::erase_if(out.rows, [](const ReasonRow* row) { return row->kind != ReasonKind::rule; });
    out.converse = true;
  }
  // What is refused or needs no rule is so in spite of rules with like words ("parallel lines" is a definition's wording, too),
  // unless a rule asks for more of these words.
  const std::size_t said = (words & index.telling()).count();
  std::size_t best = 0, best_rule = 0;
  for (const ReasonRow* row : out.rows) {
    const std::size_t asked = (row->required & index.telling()).count(), others = (row->required & ~index.telling() & words).count();
    if (row->kind == ReasonKind::rule) {
      best_rule = std::max(best_rule, 8 * asked + others);
    } else if (const std::size_t weight = 8 * std::max(said, asked) + others; weight > best) {
      out.kind = row->kind;
      best = weight;
    }
  }
  if (best < best_rule || out.kind == ReasonKind::unknown) out.kind = out.rows.empty() ? ReasonKind::unknown : ReasonKind::rule;
  for (const ReasonRow* row : out.rows) out.exact = out.exact || (row->own && ((row->worded ^ words) & ~index.vocabulary().all(WordRole::weak)).none());
  return out;
}

namespace {

class Rater {
 public:
  Rater(const ReasonIndex& index, const Catalogue& catalogue, Register wording, const ReasonMatch& match, const Meanings& words,
        const std::vector<Meaning>& sequence, const Meanings& shapes, const Meanings& supposed)
      : index_(index), catalogue_(catalogue), register_(wording), match_(match), words_(words), sequence_(sequence), shapes_(shapes), supposed_(supposed) {}

  NamedRules named() {
    collect();
    keep_what_is_stated();
    keep_the_order_said();
    keep_the_direction();
    std::stable_sort(rated_.begin(), rated_.end(), [](const Rated& a, const Rated& b) { return a.rating > b.rating; });
    NamedRules out;
    out.misstated = misstated_;
    for (const Rated& r : rated_) add(r.rule, out.rules);
    for (const Rated& r : rated_)
      for (const RuleId member : index_.family(r.rule)) add(member, out.rules);
    out.names_relation = relation_named();
    return out;
  }

 private:
  struct Rated {
    RuleId rule;
    int rating = 0;
    std::size_t in_order = 0;
  };

  static void add(RuleId rule, std::vector<RuleId>& into) {
    if (std::find(into.begin(), into.end(), rule) == into.end()) into.push_back(rule);
  }
  bool exactly(const ReasonRow& row) const { return ((row.worded ^ words_) & ~index_.titles()).none(); }

  int rating(const ReasonRow& row, std::size_t place, RuleId rule) const {
    const Meanings& weak = index_.vocabulary().all(WordRole::weak);
    int value = 8 * static_cast<int>((row.required & index_.telling()).count()) + 2 * static_cast<int>((row.required & ~index_.telling() & words_).count());
    value += 4 * static_cast<int>(common_order(row.sequence, sequence_));
    // A converse's short form is its own only in its school: "co-int ∠s supp".
    const bool here = row.wording == register_;
    if (exactly(row)) value += here ? 18 : catalogue_[rule].kind == RuleKind::converse && row.wording ? 0 : 10;
    value -= 2 * static_cast<int>((row.worded & ~words_ & ~weak).count());
    value -= 3 * static_cast<int>((words_ & weak & ~row.worded).count());
    value -= 4 * static_cast<int>(std::min<std::size_t>(place, 6));
    // "Equals the sum of …" tells no number of degrees.
    if (index_.names_any(words_, {"equal"}) && index_.names_any(words_, {"sum"}) && !index_.names_any(words_, {"180", "360", "90"}) && index_.statement(rule).numbers.any()) value -= 20;
    // What is said of the angles is nothing that a rule without a statement says.
    const Statement& says = index_.statement(rule);
    if (!says.equal && !says.sum && says.numbers.none() && index_.names_relation(words_) && !exactly(row)) value -= 8;
    if (catalogue_[rule].family.empty()) value += 1;
    if (catalogue_[rule].kind != RuleKind::converse) value += 3;
    if (catalogue_[rule].kind == RuleKind::definition && index_.names_any(words_, {"theorem"})) value -= 20;
    const Meanings given = index_.given_shapes(rule) & shapes_, then = index_.concluded_shapes(rule) & shapes_;
    if (given.any()) value += 10;
    else if (then.any()) value -= 10;
    return value;
  }

  void collect() {
    for (const ReasonRow* row : match_.rows) {
      // Of too few words, and of "given", also the rules that are called just so, behind those of the table.
      const bool called_so = match_.kind != ReasonKind::rule && match_.kind != ReasonKind::nickname && row->kind == ReasonKind::rule && row->own && row->worded == words_;
      if (row->kind != match_.kind && !called_so) continue;
      for (std::size_t place = 0; place < row->rules.size(); ++place) {
        RuleId rule = row->rules[place];
        if (match_.converse && catalogue_[rule].kind != RuleKind::converse) {
          const auto other = converse_of(rule, catalogue_);
          if (!other) continue;
          rule = *other;
        }
        const int value = rating(*row, place, rule) - (called_so ? 100 : 0);
        const std::size_t in_order = common_order(row->sequence, sequence_);
        const auto at = std::find_if(rated_.begin(), rated_.end(), [&](const Rated& r) { return r.rule == rule; });
        if (at == rated_.end()) {
          rated_.push_back({rule, value, in_order});
        } else {
          at->rating = std::max(at->rating, value);
          at->in_order = std::max(at->in_order, in_order);
        }
      }
    }
  }

  // Rules that say something else of the angles are meant only when no other is.
  void keep_what_is_stated() {
    if (match_.kind != ReasonKind::rule) return;
    const auto wrong = [&](const Rated& r) { return index_.misstates(words_, r.rule); };
    misstated_ = !rated_.empty() && std::all_of(rated_.begin(), rated_.end(), wrong);
    if (!misstated_) std::erase_if(rated_, wrong);
  }

  // "Sides opposite equal angles" has the words of its converse in another order.
  void keep_the_order_said() {
    std::vector<RuleId> beaten;
    for (const Rated& a : rated_) {
      if (a.in_order < sequence_.size()) continue;
      const auto converse = converse_of(a.rule, catalogue_);
      for (const Rated& b : rated_)
        if (b.in_order < a.in_order && converse && (b.rule == *converse || catalogue_[b.rule].family == catalogue_[*converse].id)) beaten.push_back(b.rule);
    }
    std::erase_if(rated_, [&](const Rated& r) { return std::find(beaten.begin(), beaten.end(), r.rule) != beaten.end(); });
  }

  // "The lines are parallel, so …" is no reason for parallels.
  void keep_the_direction() {
    Meanings given = supposed_ & index_.shapes();
    const auto& vocabulary = index_.vocabulary();
    for (const auto& [word, shape] : {std::pair("parallel", "@parallel"), std::pair("isosceles", "@equal-lengths")}) {
      const auto said = vocabulary.known(word), meant = vocabulary.known(shape);
      if (said && meant && supposed_.test(*said)) given.set(*meant);
    }
    const auto turned = [&](const Rated& r) { return (index_.concluded_shapes(r.rule) & given).any() && (index_.given_shapes(r.rule) & given).none(); };
    if (!std::all_of(rated_.begin(), rated_.end(), turned)) std::erase_if(rated_, turned);
  }

  bool relation_named() const {
    if (match_.kind != ReasonKind::rule || rated_.empty()) return true;
    for (const ReasonRow* row : match_.rows)
      if (row->lacking && std::find(row->rules.begin(), row->rules.end(), rated_[0].rule) != row->rules.end()) return false;
    if (index_.names_relation(words_)) return true;
    for (const std::string_view name : {"theorem", "definition"})  // a name by itself
      if (const auto bit = index_.vocabulary().known(name); bit && words_.test(*bit)) return true;
    bool bare = false, accepted = false;
    for (const ReasonRow* row : match_.rows) {
      bare = bare || row->bare;
      accepted = accepted || (row->wording == register_ && exactly(*row));
    }
    if (bare) return accepted && register_ == Register::sa;
    return accepted || !index_.statement(rated_[0].rule).examiners_want_it;
  }

  const ReasonIndex& index_;
  const Catalogue& catalogue_;
  Register register_;
  const ReasonMatch& match_;
  const Meanings& words_;
  const std::vector<Meaning>& sequence_;
  const Meanings& shapes_;
  const Meanings& supposed_;
  std::vector<Rated> rated_;
  bool misstated_ = false;
};

}  // namespace

NamedRules named_rules(const ReasonIndex& index, const Catalogue& catalogue, Register wording, const ReasonMatch& match, const Meanings& words,
                       const std::vector<Meaning>& sequence, const Meanings& shapes, const Meanings& supposed) {
  return Rater(index, catalogue, wording, match, words, sequence, shapes, supposed).named();
}

}  // namespace prover
