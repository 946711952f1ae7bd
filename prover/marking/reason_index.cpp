#include "prover/marking/reason_index.hpp"

#include <algorithm>
#include <array>
#include <deque>
#include <mutex>

#include "prover/marking/reason_lexer.hpp"
#include "prover/marking/reason_tables.hpp"
#include "prover/rule/wording.hpp"

namespace prover {
namespace {

constexpr std::array<std::pair<std::string_view, ReasonKind>, 6> kind_names = {{{"nickname", ReasonKind::nickname},
                                                                               {"vague", ReasonKind::vague},
                                                                               {"given", ReasonKind::given},
                                                                               {"working", ReasonKind::working},
                                                                               {"sight", ReasonKind::sight},
                                                                               {"measured", ReasonKind::measured}}};

// The letters with which places are filled in; enough for every rule.
Names places_letters() {
  Names names;
  for (char c = 'A'; c <= 'Z'; ++c) names.points.emplace_back(1, c);
  return names;
}

std::string filled(std::string_view wording, const Names& variables, bool with_places) {
  std::string out;
  for (const WordingPiece& piece : wording_pieces(wording, variables)) {
    if (!piece.is_place) {
      out += piece.text;
      continue;
    }
    if (!with_places) continue;
    if (piece.kind == PlaceKind::angle) out += "∠";
    if (piece.kind == PlaceKind::triangle) out += "triangle ";
    for (const PointId point : piece.points) {
      const std::string& name = variables.of(point);
      out += name.size() == 1 ? name : "ABCDE";  // a builtin's {line} or {polygon}
    }
  }
  return out;
}

// A wording with a part in brackets is said with and without it, and by the part alone: "three sides equal (SSS)".
std::vector<std::string> bracket_variants(const std::string& text) {
  const std::size_t open = text.find('('), close = text.find(')', open == text.npos ? 0 : open);
  if (open == text.npos || close == text.npos) return {text};
  return {text, text.substr(0, open) + text.substr(close + 1), text.substr(open + 1, close - open - 1)};
}

}  // namespace

void turn_round(std::vector<ReasonUnit>& units, const ReasonVocabulary& vocabulary) {
  const auto so = vocabulary.known("so"), because = vocabulary.known("because");
  const auto conclude = [&](ReasonUnit& unit) {
    for (Meaning m = 0; m < most_meanings && unit.bits.any(); ++m)
      if (unit.bits.test(m))
        if (const auto turned = vocabulary.concluded(m)) unit.bits.reset(m).set(*turned);
  };
  std::size_t begin = 0;  // of the sentence
  bool concluding = false, after_comma = false;
  for (std::size_t i = 0; i < units.size(); ++i) {
    ReasonUnit& unit = units[i];
    if (unit.kind == UnitKind::separator) {
      if (unit.sentence) begin = i + 1, concluding = after_comma = false;
      else if (after_comma) concluding = true, after_comma = false;
    }
    if (unit.kind != UnitKind::word) continue;
    if (so && unit.bits.test(*so)) {
      concluding = std::any_of(units.begin() + static_cast<std::ptrdiff_t>(begin), units.begin() + static_cast<std::ptrdiff_t>(i),
                               [](const ReasonUnit& u) { return u.kind == UnitKind::word || u.kind == UnitKind::place; });
      unit.bits.reset();
    } else if (because && unit.bits.test(*because)) {
      unit.bits.reset();
      concluding = false;
      bool anything = false;
      for (std::size_t k = begin; k < i; ++k)
        if (units[k].kind == UnitKind::word && units[k].bits.any()) anything = true, conclude(units[k]);
      after_comma = !anything;
      begin = i + 1;
    } else if (concluding) {
      conclude(unit);
    }
  }
}

ReasonIndex::ReasonIndex(const Catalogue& catalogue) : vocabulary_(builtin_reason_tables().words), letters_(places_letters()) {
  mistakes_ = vocabulary_.mistakes();
  learn_shapes(catalogue);
  by_key_.resize(most_meanings);
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) learn_words(catalogue.rules[i], RuleId(static_cast<std::int64_t>(i)));
  learn_table(builtin_reason_tables().said, "said.table", catalogue, false);
  learn_table(builtin_reason_tables().refused, "refused.table", catalogue, true);
  // Rows are filed under the rarest meaning that they require.
  std::array<std::size_t, most_meanings> often{};
  for (const ReasonRow& row : rows_)
    for (Meaning m = 0; m < most_meanings; ++m) often[m] += row.required.test(m);
  for (std::size_t r = 0; r < rows_.size(); ++r) {
    Meaning key = most_meanings;
    for (Meaning m = 0; m < most_meanings; ++m)
      if (rows_[r].required.test(m) && (key == most_meanings || often[m] < often[key])) key = m;
    if (key < most_meanings) by_key_[key].push_back(static_cast<std::uint32_t>(r));
  }
}

void ReasonIndex::learn_shapes(const Catalogue& catalogue) {
  for (std::size_t s = 0; s < shape_count; ++s) shapes_.set(meaning_of(static_cast<Shape>(s), vocabulary_));
  const auto bit = [&](std::string_view name) { return vocabulary_.meaning(name); };
  equalities_.set(bit("equal")).set(bit("congruent"));
  sums_.set(bit("sum")).set(bit("equal"));
  std::map<std::string, std::vector<RuleId>> families;
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) {
    const Rule& rule = catalogue.rules[i];
    families[rule.family.empty() ? rule.id : rule.family].emplace_back(static_cast<std::int64_t>(i));
    Meanings given, then, relation;
    for (const Phrase& phrase : rule.given)
      if (const auto shape = shape_of(phrase)) given.set(meaning_of(*shape, vocabulary_));
    for (const Phrase& phrase : rule.then) {
      const auto shape = shape_of(phrase);
      if (!shape) continue;
      then.set(meaning_of(*shape, vocabulary_));
      if (*shape == Shape::equal_angles || *shape == Shape::equal_lengths || *shape == Shape::other) relation |= equalities_;
      if (*shape == Shape::equal_lengths || *shape == Shape::other) relation.set(bit("length"));
      if (*shape == Shape::angle_sum || *shape == Shape::angle_size) relation |= sums_;
      if (*shape == Shape::perpendicular || *shape == Shape::angle_size) relation.set(bit("90")).set(bit("equal"));
      for (const Expression& e : phrase.relation.expressions)
        for (const Term& t : e.terms)
          if (std::holds_alternative<One>(t.quantity) && !t.coefficient.is_zero()) {
            const std::string number = t.coefficient.to_string();
            relation.set(bit(number));
            if (number == "180") relation.set(bit("supplementary"));
            if (number == "90") relation.set(bit("complementary"));
          }
    }
    given_.push_back(given);
    then_.push_back(then);
    relation_.push_back(relation);
  }
  family_.resize(catalogue.rules.size());
  for (const auto& [head, members] : families)
    for (const RuleId member : members) family_[member.index()] = members;
}

Meanings ReasonIndex::said_in(std::string_view text, Meanings* shapes) const {
  ReasonUnits read = reason_units(text, letters_, vocabulary_);
  turn_round(read.units, vocabulary_);
  Meanings words;
  for (const ReasonUnit& unit : read.units) {
    if (unit.kind == UnitKind::word) words |= unit.bits;
    if (unit.kind == UnitKind::place && shapes != nullptr) *shapes |= unit.bits;
  }
  return words;
}

void ReasonIndex::add(ReasonRow row) {
  row.allowed |= row.required | row.worded | vocabulary_.all(WordRole::weak);
  rows_.push_back(std::move(row));
}

void ReasonIndex::add_text(std::string_view text, const Rule& rule, RuleId id, std::optional<Register> wording) {
  for (const std::string& variant : bracket_variants(std::string(text))) {
    ReasonRow row;
    Meanings shapes;
    row.worded = said_in(variant, &shapes);
    const Meanings relations = row.worded & vocabulary_.all(WordRole::relation);
    const Meanings optional = vocabulary_.all(WordRole::weak) | vocabulary_.all(WordRole::relation);
    row.required = row.worded & ~optional;
    if (row.required.none()) row.required = row.worded;        // "both equal": nothing else is said
    if (row.required.none()) row.required = row.worded = shapes;  // places alone: "{AB} ∥ {DC}"
    if (row.required.none()) continue;
    // A converse is told from the theorem by what it says of the angles.
    if (rule.kind == RuleKind::converse) row.relation = relations;
    relation_[id.index()] |= relations;
    if ((relations & equalities_).any()) relation_[id.index()] |= equalities_;
    if ((relations & sums_).any()) relation_[id.index()] |= sums_;
    if ((row.relation & equalities_).any()) row.relation |= equalities_;
    if ((row.relation & sums_).any()) row.relation |= sums_;
    row.rules = {id};
    row.wording = wording;
    row.own = true;
    add(std::move(row));
  }
}

void ReasonIndex::learn_words(const Rule& rule, RuleId id) {
  const std::size_t first = rows_.size();
  const auto learn = [&](const std::string& text, std::optional<Register> wording) {
    // Words that no table has mean themselves: a teacher's own rule is called by its own words.
    for (const RawToken& token : raw_tokens(filled(text, rule.variables, false), 64))
      if (token.kind == RawKind::word && token.lower.size() > 2 && vocabulary_.find(token.lower) == nullptr)
        vocabulary_.add_form(token.lower, {{vocabulary_.meaning(token.lower)}, false});
    add_text(filled(text, rule.variables, true), rule, id, wording);
    if (text.find('{') == text.npos) return;
    add_text(filled(text, rule.variables, false), rule, id, wording);
    // The part before a comma stands without the places behind it: "alt ∠s" of "alt ∠s; {PA} ∥ {QD}".
    const std::size_t mark = text.substr(0, text.find('{')).find_last_of(",;");
    if (mark != text.npos) add_text(text.substr(0, mark), rule, id, wording);
  };
  for (const auto& [wording, text] : rule.wording) learn(text, wording);
  for (const std::string& synonym : rule.synonyms) learn(synonym, std::nullopt);
  learn(rule.title, std::nullopt);
  if (rule.id.find('-') != rule.id.npos) called_[rule.id].push_back(id);  // "given" is a word, too
  for (std::size_t r = first; r < rows_.size(); ++r) rows_[r].allowed |= relation_[id.index()];
}

namespace {

// "angle/side [two]" as all choices of an alternative each, and what may be missing.
struct Choice {
  std::vector<std::string> required, optional;
};
std::vector<Choice> choices_of(const std::string& words) {
  std::vector<Choice> all = {{}};
  for (const std::string& group : parts_of(words, ' ')) {
    const bool optional = group.front() == '[' && group.back() == ']';
    const std::vector<std::string> ways = parts_of(optional ? group.substr(1, group.size() - 2) : group, '/');
    if (optional) {
      for (Choice& choice : all) choice.optional.insert(choice.optional.end(), ways.begin(), ways.end());
      continue;
    }
    std::vector<Choice> wider;
    for (const Choice& choice : all)
      for (const std::string& way : ways) {
        wider.push_back(choice);
        wider.back().required.push_back(way);
      }
    all = std::move(wider);
  }
  return all;
}

}  // namespace

void ReasonIndex::learn_table(std::string_view table, std::string_view file, const Catalogue& catalogue, bool kinds) {
  for (const TableRow& row : table_rows(table)) {
    const auto mistake = [&](const std::string& what) { mistakes_.push_back(std::string(file) + ":" + std::to_string(row.line) + ": " + what); };
    if (row.columns.size() != 3) {
      mistake("three columns are wanted");
      continue;
    }
    ReasonRow out;
    bool kind_said = !kinds;
    for (const std::string& word : parts_of(row.columns[1], ' ')) {
      const auto kind = std::find_if(kind_names.begin(), kind_names.end(), [&](const auto& k) { return k.first == word; });
      if (kinds && !kind_said && kind != kind_names.end()) {
        out.kind = kind->second;
        kind_said = true;
      } else if (word == "bare") {
        out.bare = true;
      } else if (const auto rule = catalogue.find(word)) {
        out.rules.push_back(*rule);
      } else {
        mistake("no rule and no kind is called " + word);
      }
    }
    if (!kind_said) mistake("no kind is said");
    for (const Choice& choice : choices_of(row.columns[0])) {
      ReasonRow each = out;
      const auto read = [&](const std::vector<std::string>& words, Meanings& into) {
        for (const std::string& word : words) {
          if (const auto known = vocabulary_.known(word)) {
            into.set(*known);
          } else if (const Form* form = vocabulary_.find(word)) {
            if (form->meanings.empty()) mistake(word + " says nothing");
            for (const Meaning m : form->meanings) into.set(m);
          } else {
            const Meaning made = vocabulary_.meaning(word);
            vocabulary_.add_form(word, {{made}, false});
            into.set(made);
          }
        }
      };
      read(choice.required, each.required);
      read(choice.optional, each.allowed);
      each.worded = each.required;
      for (const RuleId rule : each.rules)
        if (each.kind == ReasonKind::rule || each.kind == ReasonKind::nickname) each.allowed |= relation_[rule.index()];
      if (each.required.none()) mistake("nothing must be said");
      else add(std::move(each));
    }
  }
}

std::vector<const ReasonRow*> ReasonIndex::matching(const Meanings& words, const Meanings& shapes) const {
  std::vector<std::uint32_t> found;
  const Meanings all = words | shapes;
  const bool wordless = (words & ~vocabulary_.all(WordRole::weak) & ~vocabulary_.all(WordRole::relation)).none();
  for (Meaning m = all._Find_first(); m < most_meanings; m = all._Find_next(m))
    for (const std::uint32_t r : by_key_[m]) {
      const ReasonRow& row = rows_[r];
      if ((row.required & ~all).any() || (words & ~row.allowed).any()) continue;
      if (row.relation.any() && (row.relation & words).none()) continue;
      if (!wordless && (row.required & shapes_).any()) continue;
      found.push_back(r);
    }
  std::sort(found.begin(), found.end());
  std::vector<const ReasonRow*> rows;
  for (const std::uint32_t r : found) rows.push_back(&rows_[r]);
  return rows;
}

const std::vector<RuleId>* ReasonIndex::called(std::string_view id) const {
  const auto at = called_.find(std::string(id));
  return at == called_.end() ? nullptr : &at->second;
}

std::shared_ptr<const ReasonIndex> reason_index(const Catalogue& catalogue) {
  constexpr std::size_t kept = 4;  // a program works with one catalogue, tests with a few
  static std::mutex mutex;
  static std::deque<std::pair<std::uint64_t, std::shared_ptr<const ReasonIndex>>> known;
  const std::lock_guard lock(mutex);
  for (const auto& [serial, index] : known)
    if (serial == catalogue.serial) return index;
  known.emplace_front(catalogue.serial, std::make_shared<const ReasonIndex>(catalogue));
  if (known.size() > kept) known.pop_back();
  return known.front().second;
}

}  // namespace prover
