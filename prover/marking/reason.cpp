// How a reason is understood: its text becomes units (words with meanings, places, commas), the words are cut into stretches each of
// which fits a row of the index, and each stretch is one reason. Cutting is a shortest path: few stretches, cut where the pupil
// put a comma rather than elsewhere, and a part between two commas is understood whole or not at all, because a word left over
// ("exterior" beside "angle of a triangle") makes another reason of it.
#include "prover/marking/reason.hpp"

#include <algorithm>
#include <limits>

#include "prover/marking/reason_index.hpp"
#include "prover/rule/wording.hpp"

namespace prover {
namespace {

constexpr int cost_of_reason = 10;
constexpr int cost_of_vague = 15;
constexpr int cost_of_cut = 5;       // elsewhere than at a comma
constexpr int cost_of_crossing = 11;  // a comma inside a reason, unless it is said exactly so
constexpr int cost_of_unknown = 30;   // a part not understood
constexpr std::size_t most_words = 80;
constexpr std::size_t longest_reason = 26;  // words with a meaning

struct Match {
  ReasonKind kind = ReasonKind::unknown;
  std::vector<const ReasonRow*> rows;
  bool exact = false;
  bool converse = false;  // "converse of …": of the rules that the rows name
};

struct Stretch {
  std::size_t begin = 0, end = 0;  // words
  Match match;
};

class Reader {
 public:
  Reader(std::string_view text, const Names& names, const Catalogue& catalogue, Register wording)
      : catalogue_(catalogue), index_(reason_index(catalogue)), register_(wording), read_(reason_units(text, names, index_->vocabulary())), text_(text) {}

  std::vector<ReadReason> read() {
    if (const auto* rules = index_->called(text_)) {
      ReadReason out;
      out.kind = ReasonKind::rule;
      for (const RuleId rule : *rules) add_family(rule, out.rules);
      return {out};
    }
    plain_ = read_.units;
    turn_round(read_.units, index_->vocabulary());
    collect_words();
    cut();
    return reasons();
  }

 private:
  void collect_words() {
    bool separated = true;
    for (std::size_t u = 0; u < read_.units.size() && words_.size() < most_words; ++u) {
      const ReasonUnit& unit = read_.units[u];
      if (unit.kind == UnitKind::separator) separated = true;
      if (unit.kind == UnitKind::place || unit.kind == UnitKind::figure) shapes_ |= unit.bits & index_->shapes();
      if (unit.kind != UnitKind::word || unit.bits.none()) continue;
      words_.push_back(u);
      starts_part_.push_back(separated);
      separated = false;
    }
  }

  Match match(const Meanings& words) const {
    Match out;
    out.rows = index_->matching(words, shapes_);
    const auto converse = index_->vocabulary().known("converse");
    if (out.rows.empty() && converse && words.test(*converse)) {
      Meanings rest = words;
      out.rows = index_->matching(rest.reset(*converse), shapes_);
      out.converse = true;
    }
    // What is refused or needs no rule is so in spite of rules with like words: "parallel lines" is a definition's wording, too.
    // Unless a rule asks for more of these words.
    const Meanings telling = ~index_->neutral();
    const std::size_t said = (words & telling).count();
    std::size_t best = 0, best_rule = 0;
    for (const ReasonRow* row : out.rows) {
      const std::size_t asked = (row->required & telling).count(), weak = (row->required & ~telling & words).count();
      if (row->kind == ReasonKind::rule) {
        best_rule = std::max(best_rule, 8 * asked + weak);
      } else if (const std::size_t weight = 8 * std::max(said, asked) + weak; weight > best) {
        out.kind = row->kind;
        best = weight;
      }
    }
    if (best < best_rule || out.kind == ReasonKind::unknown) out.kind = out.rows.empty() ? ReasonKind::unknown : ReasonKind::rule;
    for (const ReasonRow* row : out.rows) out.exact = out.exact || (row->own && (row->worded & ~index_->neutral()) == (words & ~index_->neutral()));
    return out;
  }

  Meanings said(std::size_t begin, std::size_t end, bool turned) const {
    Meanings all;
    for (std::size_t w = begin; w < end; ++w) all |= (turned ? read_.units : plain_)[words_[w]].bits;
    if (!turned)
      for (const std::string_view turn : {"so", "because"})
        if (const auto bit = index_->vocabulary().known(turn)) all.reset(*bit);
    return all;
  }

  void cut() {
    const std::size_t n = words_.size();
    constexpr int far = std::numeric_limits<int>::max() / 2;
    std::vector<int> cost(n + 1, far);
    std::vector<Stretch> last(n + 1);
    cost[0] = 0;
    for (std::size_t begin = 0; begin < n; ++begin) {
      if (cost[begin] >= far) continue;
      const bool at_part = starts_part_[begin];
      int crossed = 0;
      for (std::size_t end = begin + 1; end <= n; ++end) {
        if (end - begin > 1 && starts_part_[end - 1]) ++crossed;
        const bool to_part = end == n || starts_part_[end];
        if (at_part && to_part && crossed == 0 && cost[begin] + cost_of_unknown < cost[end]) {
          cost[end] = cost[begin] + cost_of_unknown;
          last[end] = {begin, end, {}};
        }
        if (end - begin > longest_reason || crossed > 3) {
          if (crossed > 0) break;
          continue;
        }
        Match found = match(said(begin, end, true));
        if (found.kind == ReasonKind::unknown) found = match(said(begin, end, false));
        if (found.kind == ReasonKind::unknown) continue;
        const bool inside = !at_part || !to_part;
        if (inside && found.kind == ReasonKind::vague) continue;
        int price = cost[begin] + cost_of_reason + (found.kind == ReasonKind::vague ? cost_of_vague : 0);
        price += (at_part ? 0 : cost_of_cut) + (found.exact ? 0 : crossed * cost_of_crossing);
        if (price < cost[end]) {
          cost[end] = price;
          last[end] = {begin, end, std::move(found)};
        }
      }
    }
    for (std::size_t end = n; end > 0; end = last[end].begin) stretches_.push_back(last[end]);
    std::reverse(stretches_.begin(), stretches_.end());
  }

  void add_family(RuleId rule, std::vector<RuleId>& into) const {
    const auto add = [&](RuleId r) {
      if (std::find(into.begin(), into.end(), r) == into.end()) into.push_back(r);
    };
    add(rule);
    for (const RuleId member : index_->family(rule)) add(member);
  }

  int rating(const ReasonRow& row, std::size_t place, const Meanings& words, const Meanings& shapes) const {
    const Meanings& weak = index_->neutral();
    int rating = 4 * static_cast<int>((row.required & ~weak).count()) + static_cast<int>((row.required & weak & words).count());
    if ((row.worded & ~weak) == (words & ~weak)) rating += 6;
    rating -= static_cast<int>((row.worded & ~words & ~weak).count());
    if (row.wording == register_) rating += 2;
    rating -= 2 * static_cast<int>(std::min<std::size_t>(place, 6));
    const RuleId rule = row.rules[place];
    rating = 2 * rating + (catalogue_[rule].family.empty() ? 1 : 0);
    const Meanings given = index_->given_shapes(rule) & shapes, then = index_->concluded_shapes(rule) & shapes;
    if (given.any()) rating += 10;
    else if (then.any()) rating -= 10;
    return rating;
  }

  // The rules that the rows name, the best rated first, each with its family behind it.
  std::vector<RuleId> rules_of(const Match& match, const Meanings& words, const Meanings& shapes) const {
    std::vector<RatedRule> rated;
    for (const ReasonRow* row : match.rows) {
      // Of too few words, and of "given", also the rules that are called just so, behind those of the table.
      const bool called_so = match.kind != ReasonKind::rule && match.kind != ReasonKind::nickname && row->kind == ReasonKind::rule && row->own && row->worded == words && (words & ~index_->neutral() & ~index_->vocabulary().all(WordRole::relation)).any();
      if (row->kind != match.kind && !called_so) continue;
      for (std::size_t place = 0; place < row->rules.size(); ++place) {
        RuleId rule = row->rules[place];
        if (match.converse) {
          const auto other = converse_of(rule, catalogue_);
          if (!other) continue;
          rule = *other;
        }
        const int value = rating(*row, place, words, shapes) - (called_so ? 40 : 0);
        const auto at = std::find_if(rated.begin(), rated.end(), [&](const RatedRule& r) { return r.rule == rule; });
        if (at == rated.end()) rated.push_back({rule, value});
        else at->rating = std::max(at->rating, value);
      }
    }
    std::stable_sort(rated.begin(), rated.end(), [](const RatedRule& a, const RatedRule& b) { return a.rating > b.rating; });
    std::vector<RuleId> rules;
    for (const RatedRule& r : rated)
      if (std::find(rules.begin(), rules.end(), r.rule) == rules.end()) rules.push_back(r.rule);
    for (const RatedRule& r : rated) add_family(r.rule, rules);
    return rules;
  }

  bool relation_named(const Match& match, const Meanings& words) const {
    const Meanings relations = index_->vocabulary().all(WordRole::relation);
    if ((words & relations).any()) return true;
    bool bare = false, accepted = false, speaks = false;
    for (const ReasonRow* row : match.rows) {
      bare = bare || row->bare;
      accepted = accepted || (row->wording == register_ && (row->worded & ~index_->neutral()) == (words & ~index_->neutral()));
      speaks = speaks || (row->wording == Register::uk && (row->worded & relations).any());
    }
    if (bare) return accepted && register_ == Register::sa;
    if (accepted) return true;
    const auto theorem = index_->vocabulary().known("theorem");
    if (theorem && words.test(*theorem)) return true;
    return !speaks_of_relation(match) && !speaks;
  }
  // Whether the examiners' full phrase for the first rule says something that these words leave out.
  bool speaks_of_relation(const Match& match) const {
    for (const ReasonRow* row : match.rows)
      for (const RuleId rule : row->rules) {
        const auto uk = catalogue_[rule].wording.find(Register::uk);
        if (uk == catalogue_[rule].wording.end()) continue;
        return uk->second.find("equal") != std::string::npos || uk->second.find("°") != std::string::npos;
      }
    return false;
  }

  std::string accepted_words(const std::vector<RuleId>& rules) const {
    for (const RuleId rule : rules) {
      const Rule& meant = catalogue_[rule];
      for (const Register wording : {register_, Register::plain}) {
        const auto found = meant.wording.find(wording);
        if (found == meant.wording.end()) continue;
        if (std::string words = wording_without_places(found->second); !words.empty()) return words;
      }
    }
    return {};
  }

  // To which stretch a place belongs: the one before it, unless it stands first, or only the one behind it is about such things.
  std::size_t home_of(std::size_t unit) const {
    std::size_t before = stretches_.size(), after = stretches_.size();
    for (std::size_t s = 0; s < stretches_.size(); ++s) {
      if (words_[stretches_[s].begin] < unit) before = s;
      else if (after == stretches_.size()) after = s;
    }
    if (before == stretches_.size()) return after;
    if (after == stretches_.size() || before == after) return before;
    const auto wants = [&](std::size_t s) {
      for (const ReasonRow* row : stretches_[s].match.rows)
        for (const RuleId rule : row->rules)
          if ((index_->given_shapes(rule) & read_.units[unit].bits).any()) return true;
      return false;
    };
    const bool said_after = [&] {
      // "…, and KL = KM so base angles": nothing parts the place from what follows, and something from what stands before.
      bool parted_before = false, parted_after = false;
      for (std::size_t u = words_[stretches_[before].end - 1]; u < unit; ++u) parted_before = parted_before || read_.units[u].kind == UnitKind::separator;
      for (std::size_t u = unit; u < words_[stretches_[after].begin]; ++u) parted_after = parted_after || read_.units[u].kind == UnitKind::separator;
      return parted_before && !parted_after;
    }();
    if (read_.units[unit].bits.any() && wants(before) != wants(after)) return wants(before) ? before : after;
    return said_after ? after : before;
  }

  std::vector<ReadReason> reasons() {
    std::vector<ReadReason> out;
    std::vector<Meanings> shapes(std::max<std::size_t>(stretches_.size(), 1));
    out.resize(shapes.size());
    std::vector<bool> any(shapes.size(), !stretches_.empty());
    for (std::size_t u = 0; u < read_.units.size(); ++u) {
      ReasonUnit& unit = read_.units[u];
      if (unit.kind == UnitKind::word || unit.kind == UnitKind::separator || unit.kind == UnitKind::noise) continue;
      const std::size_t home = stretches_.empty() ? 0 : home_of(u);
      any[home] = true;
      shapes[home] |= unit.bits;
      if (unit.kind == UnitKind::place) {
        out[home].lines_named = out[home].lines_named || unit.place.predicate == Predicate::parallel;
        out[home].places.push_back(std::move(unit.place));
      }
      if (unit.kind == UnitKind::figure) out[home].figures.push_back(std::move(unit.figure));
      if (unit.kind == UnitKind::line_number) out[home].lines.push_back(unit.line);
    }
    for (std::size_t s = 0; s < stretches_.size(); ++s) fill(out[s], stretches_[s], shapes[s]);
    if (read_.arithmetic && only_relations()) {
      out.resize(1);
      out[0].kind = ReasonKind::working;
      out[0].rules.clear();
      out[0].accepted.clear();
      return out;
    }
    if (stretches_.empty()) {
      if (!out[0].places.empty()) fill_from_places(out[0], shapes[0]);
      else if (!out[0].lines.empty() || read_.arithmetic) out[0].kind = ReasonKind::working;
      else if (text_.find_first_not_of(" \t\r\n.,;()") == text_.npos) return {};
    }
    if (read_.letters_parallel)
      for (ReadReason& reason : out) reason.lines_named = true;
    return merged(std::move(out));
  }

  // "= 180 − 70": nothing is said but how numbers are put together.
  bool only_relations() const {
    const Meanings quiet = index_->neutral() | index_->vocabulary().all(WordRole::relation);
    return std::all_of(words_.begin(), words_.end(), [&](std::size_t w) { return (read_.units[w].bits & ~quiet).none(); });
  }

  void fill(ReadReason& reason, const Stretch& stretch, const Meanings& shapes) const {
    Meanings words = said(stretch.begin, stretch.end, true);
    if (stretch.match.kind == ReasonKind::unknown) return;
    reason.kind = stretch.match.kind;
    reason.rules = rules_of(stretch.match, words, shapes);
    if (reason.kind == ReasonKind::rule && reason.rules.empty()) reason.kind = ReasonKind::unknown;
    reason.names_relation = reason.kind != ReasonKind::rule || relation_named(stretch.match, words);
    for (std::size_t w = stretch.begin; w < stretch.end; ++w) reason.misspelt = reason.misspelt || read_.units[words_[w]].misspelt;
    if (reason.kind == ReasonKind::nickname || reason.kind == ReasonKind::vague) reason.accepted = accepted_words(reason.rules);
  }

  // Places alone, "KL ∥ MN": what a rule's wording says with no other word, then what the tables make of such a place.
  void fill_from_places(ReadReason& reason, const Meanings& shapes) const {
    Match found;
    found.rows = index_->matching({}, shapes);
    found.kind = found.rows.empty() ? ReasonKind::unknown : ReasonKind::rule;
    reason.kind = found.kind;
    reason.rules = rules_of(found, shapes, shapes);
    reason.names_relation = false;
  }

  // Neighbours that name the same are one reason: "isosceles triangle, base angles".
  static std::vector<ReadReason> merged(std::vector<ReadReason> all) {
    std::vector<ReadReason> out;
    for (ReadReason& next : all) {
      if (!out.empty() && out.back().kind == ReasonKind::rule && next.kind == ReasonKind::rule) {
        ReadReason& before = out.back();
        std::vector<RuleId> both;
        for (const RuleId rule : next.rules)
          if (std::find(before.rules.begin(), before.rules.end(), rule) != before.rules.end()) both.push_back(rule);
        if (!both.empty()) {
          before.rules = std::move(both);
          before.places.insert(before.places.end(), next.places.begin(), next.places.end());
          before.figures.insert(before.figures.end(), next.figures.begin(), next.figures.end());
          before.lines.insert(before.lines.end(), next.lines.begin(), next.lines.end());
          before.lines_named = before.lines_named || next.lines_named;
          before.names_relation = before.names_relation || next.names_relation;
          before.misspelt = before.misspelt || next.misspelt;
          continue;
        }
      }
      out.push_back(std::move(next));
    }
    return out;
  }

  const Catalogue& catalogue_;
  std::shared_ptr<const ReasonIndex> index_;
  Register register_;
  ReasonUnits read_;
  std::string_view text_;
  std::vector<ReasonUnit> plain_;      // the units before "so" and "because" turned them
  std::vector<std::size_t> words_;     // the units that are words with a meaning
  std::vector<bool> starts_part_;      // by word: a comma or the beginning stands before it
  Meanings shapes_;
  std::vector<Stretch> stretches_;
};

}  // namespace

std::vector<ReadReason> read_reason(std::string_view text, const Names& names, const Catalogue& catalogue, Register wording) {
  return Reader(text, names, catalogue, wording).read();
}

}  // namespace prover
