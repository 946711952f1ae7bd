// How a reason is understood: its text becomes units (words with meanings, places, commas), the words are cut into stretches each of
// which fits a row of the index, and each stretch is one reason. Cutting is a shortest path: few stretches, cut where the pupil
// put a comma rather than elsewhere, and a part between two commas is understood whole or not at all, because a word left over
// ("exterior" beside "angle of a triangle") makes another reason of it.
#include "prover/marking/reason.hpp"

#include <algorithm>
#include <limits>

#include "prover/marking/reason_match.hpp"
#include "prover/rule/wording.hpp"

namespace prover {
namespace {

constexpr int cost_of_reason = 10;
constexpr int cost_of_vague = 15;
constexpr int cost_of_cut = 5;       // elsewhere than at a comma
constexpr int cost_of_crossing = 11;  // a comma inside a reason, unless it is said exactly so
constexpr int cost_of_tie = 4;          // a comma or "and" between words that the reason needs both: "radius and tangent"
constexpr int cost_of_bracket = 1;      // a bracket inside a reason
constexpr int cost_of_remark = 12;      // a part in brackets, left aside
constexpr int cost_of_unknown = 30;   // a part not understood
constexpr int cost_of_place = 8;       // a part that only says where
constexpr int most_crossed = 6;
constexpr std::size_t most_words = 80;
constexpr std::size_t longest_reason = 26;  // words with a meaning

struct Stretch {
  std::size_t begin = 0, end = 0;  // words
  ReasonMatch match;
  bool turned = true;   // "so" and "because" were minded
  bool place = false;   // no reason, but a place: "triangle KLM"
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
  // Parts stand between commas. "…, triangle KLM" is a place and no reason of its own, when there is another part.
  void collect_words() {
    bool separated = true, soft = false, figure = false, nouns = true, others = false, inside = false;
    std::size_t first = 0;
    const auto end_part = [&] {
      for (std::size_t w = first; w < words_.size(); ++w) is_place_[w] = figure && nouns;
      others = others || (first < words_.size() && !(figure && nouns));
      first = words_.size();
      separated = nouns = soft = true;
      figure = false;
    };
    for (std::size_t u = 0; u < read_.units.size() && words_.size() < most_words; ++u) {
      const ReasonUnit& unit = read_.units[u];
      shapes_ |= unit.bits & index_->shapes();
      if (unit.kind == UnitKind::separator) {
        const bool only_brackets = unit.bracket && (!separated || soft);
        end_part();
        soft = only_brackets;
        if (unit.bracket) inside = !inside;
      }
      figure = figure || unit.kind == UnitKind::figure || unit.kind == UnitKind::place;
      // A place that is concluded is a word, too: "so KL ∥ MN".
      if ((unit.kind != UnitKind::word && unit.kind != UnitKind::place) || (unit.bits & ~index_->shapes()).none()) continue;
      nouns = nouns && (unit.bits & ~index_->figure_nouns()).none();
      words_.push_back(u);
      starts_part_.push_back(separated);
      cost_to_cross_.push_back(!separated ? 0 : soft ? cost_of_bracket : cost_of_crossing);
      in_bracket_.push_back(inside);
      is_place_.push_back(false);
      separated = soft = false;
    }
    end_part();
    if (!others) is_place_.assign(words_.size(), false);
  }

  Meanings said(std::size_t begin, std::size_t end, bool turned) const {
    Meanings all;
    for (std::size_t w = begin; w < end; ++w) all |= (turned ? read_.units : plain_)[words_[w]].bits;
    all &= ~index_->shapes();
    if (!turned)
      for (const std::string_view turn : {"so", "because"})
        if (const auto bit = index_->vocabulary().known(turn)) all.reset(*bit);
    return all;
  }

  // Whether some rule is named by telling words of every part between the commas, and not by those of one alone.
  bool ties_parts(const ReasonMatch& match, std::size_t begin, std::size_t end) const {
    const auto ties = [&](const ReasonRow* row) {
      for (std::size_t from = begin; from < end;) {
        std::size_t to = from + 1;
        while (to < end && !starts_part_[to]) ++to;
        if ((said(from, to, true) & row->required & ~index_->generic() & index_->telling()).none()) return false;
        from = to;
      }
      return row->kind == ReasonKind::rule;
    };
    return std::any_of(match.rows.begin(), match.rows.end(), ties);
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
      int crossed = 0, crossing = 0;
      for (std::size_t end = begin + 1; end <= n; ++end) {
        if (end - begin > 1 && starts_part_[end - 1]) ++crossed, crossing += cost_to_cross_[end - 1];
        const bool to_part = end == n || starts_part_[end];
        if (at_part && to_part && crossed == 0 && cost[begin] + cost_of_unknown < cost[end]) {
          cost[end] = cost[begin] + cost_of_unknown;
          last[end] = {begin, end, {}, true};
        }
        const int aside = is_place_[begin] ? cost_of_place : cost_of_remark;
        if (at_part && to_part && crossed == 0 && (is_place_[begin] || (in_bracket_[begin] && n > end - begin)) && cost[begin] + aside < cost[end]) {
          cost[end] = cost[begin] + aside;
          last[end] = {begin, end, {}, true, true};
        }
        if (end - begin > longest_reason || crossed > most_crossed) {
          if (crossed > 0) break;
          continue;
        }
        ReasonMatch found = match_words(*index_, said(begin, end, true), shapes_);
        const bool turned = found.kind != ReasonKind::unknown;
        if (!turned) found = match_words(*index_, said(begin, end, false), shapes_);
        if (found.kind == ReasonKind::unknown) continue;
        const int commas = crossed > 0 && ties_parts(found, begin, end) ? std::min(crossing, crossed * cost_of_tie) : crossing;
        const bool inside = !at_part || !to_part;
        if (inside && found.kind == ReasonKind::vague) continue;
        int price = cost[begin] + cost_of_reason + (found.kind == ReasonKind::vague ? cost_of_vague : 0);
        price += (at_part ? 0 : cost_of_cut) + (found.exact ? 0 : commas);
        if (price < cost[end]) {
          cost[end] = price;
          last[end] = {begin, end, std::move(found), turned};
        }
      }
    }
    for (std::size_t end = n; end > 0; end = last[end].begin)
      if (!last[end].place) stretches_.push_back(last[end]);
    std::reverse(stretches_.begin(), stretches_.end());
  }

  void add_family(RuleId rule, std::vector<RuleId>& into) const {
    const auto add = [&](RuleId r) {
      if (std::find(into.begin(), into.end(), r) == into.end()) into.push_back(r);
    };
    add(rule);
    for (const RuleId member : index_->family(rule)) add(member);
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
    for (std::size_t u = 0; u < read_.units.size(); ++u) {
      ReasonUnit& unit = read_.units[u];
      if (unit.kind == UnitKind::word || unit.kind == UnitKind::separator || unit.kind == UnitKind::noise) continue;
      const std::size_t home = stretches_.empty() ? 0 : home_of(u);
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
    return std::all_of(words_.begin(), words_.end(), [&](std::size_t w) { return (read_.units[w].bits & index_->telling()).none(); });
  }

  void fill(ReadReason& reason, const Stretch& stretch, const Meanings& shapes) const {
    if (stretch.match.kind == ReasonKind::unknown) return;
    const Meanings words = said(stretch.begin, stretch.end, stretch.turned);
    std::vector<ReasonUnit> units;
    for (std::size_t w = stretch.begin; w < stretch.end; ++w) units.push_back((stretch.turned ? read_.units : plain_)[words_[w]]);
    Meanings supposed;
    for (const ReasonUnit& unit : read_.units)
      if (unit.supposed) supposed |= unit.bits;
    NamedRules named = named_rules(*index_, catalogue_, register_, stretch.match, words, sequence_of(units, index_->telling()), shapes, supposed);
    reason.kind = stretch.match.kind == ReasonKind::rule && named.rules.empty() ? ReasonKind::unknown : stretch.match.kind;
    reason.rules = std::move(named.rules);
    reason.names_relation = named.names_relation;
    reason.misstated = named.misstated;
    for (std::size_t w = stretch.begin; w < stretch.end; ++w) reason.misspelt = reason.misspelt || read_.units[words_[w]].misspelt;
    if (reason.kind == ReasonKind::nickname || reason.kind == ReasonKind::vague) reason.accepted = accepted_words(reason.rules);
  }

  // Places alone, "KL ∥ MN": what a rule's wording says with no other word, then what the tables make of such a place.
  void fill_from_places(ReadReason& reason, const Meanings& shapes) const {
    const ReasonMatch found = match_words(*index_, {}, shapes);
    reason.kind = found.kind;
    reason.rules = named_rules(*index_, catalogue_, register_, found, {}, {}, shapes, {}).rules;
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
          for (const RuleId rule : before.rules)
            if (std::find(both.begin(), both.end(), rule) == both.end()) both.push_back(rule);
          before.rules = std::move(both);
          before.places.insert(before.places.end(), next.places.begin(), next.places.end());
          before.figures.insert(before.figures.end(), next.figures.begin(), next.figures.end());
          before.lines.insert(before.lines.end(), next.lines.begin(), next.lines.end());
          before.lines_named = before.lines_named || next.lines_named;
          before.names_relation = before.names_relation || next.names_relation;
          before.misstated = before.misstated || next.misstated;
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
  std::vector<int> cost_to_cross_;     // by word: what stands before it
  std::vector<bool> in_bracket_;       // by word
  std::vector<bool> is_place_;         // by word: its part says only where
  Meanings shapes_;
  std::vector<Stretch> stretches_;
};

}  // namespace

namespace {

// The text without what stands in brackets: "Consecutive (Same-Side) Exterior Angles".
std::string without_brackets(std::string_view text) {
  std::string out;
  int depth = 0;
  for (const char c : text) {
    depth += c == '(';
    if (depth == 0) out += c;
    if (c == ')' && depth > 0) --depth;
  }
  return out;
}

bool anything_unknown(const std::vector<ReadReason>& reasons) {
  return std::any_of(reasons.begin(), reasons.end(), [](const ReadReason& reason) { return reason.kind == ReasonKind::unknown; });
}

}  // namespace

std::vector<ReadReason> read_reason(std::string_view text, const Names& names, const Catalogue& catalogue, Register wording) {
  std::vector<ReadReason> reasons = Reader(text, names, catalogue, wording).read();
  if (text.find('(') == text.npos || !anything_unknown(reasons)) return reasons;
  const std::string rest = without_brackets(text);
  std::vector<ReadReason> again = Reader(rest, names, catalogue, wording).read();
  return again.empty() || anything_unknown(again) ? reasons : again;
}

}  // namespace prover
