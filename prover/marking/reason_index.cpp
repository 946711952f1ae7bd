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

std::vector<Meaning> sequence_of(const std::vector<ReasonUnit>& units, const Meanings& telling) {
  std::vector<Meaning> out;
  for (const ReasonUnit& unit : units)
    if (unit.kind == UnitKind::word)
      if (const Meanings told = unit.bits & telling; told.any()) out.push_back(told._Find_first());
  return out;
}

std::size_t common_order(const std::vector<Meaning>& a, const std::vector<Meaning>& b) {
  constexpr std::size_t most = 32;
  std::array<std::size_t, most + 1> row{};
  const std::size_t width = std::min(b.size(), most);
  for (std::size_t i = 0; i < std::min(a.size(), most); ++i) {
    std::size_t diagonal = 0;
    for (std::size_t j = 0; j < width; ++j) {
      const std::size_t above = row[j + 1];
      row[j + 1] = a[i] == b[j] ? diagonal + 1 : std::max(above, row[j]);
      diagonal = above;
    }
  }
  return row[width];
}

void turn_round(std::vector<ReasonUnit>& units, const ReasonVocabulary& vocabulary) {
  const auto so = vocabulary.known("so"), because = vocabulary.known("because"), within = vocabulary.known("within");
  // "Of an isosceles triangle", "on parallel lines": that is no conclusion.
  std::vector<bool> place(units.size(), false);
  for (std::size_t i = 0; i < units.size(); ++i)
    if (within && units[i].kind == UnitKind::word && units[i].bits.test(*within)) {
      units[i].bits.reset();
      for (std::size_t k = i + 1; k < units.size() && k < i + 3 && units[k].kind == UnitKind::word; ++k) place[k] = true;
    }
  const auto conclude = [&](ReasonUnit& unit) {
    if (place[static_cast<std::size_t>(&unit - units.data())]) return;
    if (unit.kind == UnitKind::place) {  // what it says is no given of the rule
      const bool parallel = unit.place.predicate == Predicate::parallel;
      unit.bits.reset();
      if (const auto turned = vocabulary.known("so_parallel"); parallel && turned) unit.bits.set(*turned);
      return;
    }
    const Meanings before = unit.bits;
    for (Meaning m = before._Find_first(); m < most_meanings; m = before._Find_next(m))
        if (const auto turned = vocabulary.concluded(m)) unit.bits.reset(m).set(*turned);
  };
  std::size_t begin = 0;  // of the sentence
  bool concluding = false, supposing = false, after_comma = false;
  for (std::size_t i = 0; i < units.size(); ++i) {
    ReasonUnit& unit = units[i];
    if (unit.kind == UnitKind::separator) {
      if (unit.sentence) begin = i + 1, concluding = supposing = after_comma = false;
      else if (after_comma) concluding = true, supposing = after_comma = false;
    }
    unit.supposed = supposing;
    if (unit.kind == UnitKind::place && concluding) conclude(unit);
    if (unit.kind != UnitKind::word) continue;
    if (so && unit.bits.test(*so)) {
      concluding = std::any_of(units.begin() + static_cast<std::ptrdiff_t>(begin), units.begin() + static_cast<std::ptrdiff_t>(i),
                               [](const ReasonUnit& u) { return u.kind == UnitKind::word || u.kind == UnitKind::place; });
      for (std::size_t k = begin; k < i && concluding; ++k) units[k].supposed = true;
      supposing = false;
      unit.bits.reset();
    } else if (because && unit.bits.test(*because)) {
      unit.bits.reset();
      concluding = false;
      supposing = true;
      bool anything = false;
      for (std::size_t k = begin; k < i; ++k)
        if (units[k].kind == UnitKind::place || (units[k].kind == UnitKind::word && units[k].bits.any())) anything = true, conclude(units[k]);
      after_comma = !anything;
      begin = i + 1;
    } else if (concluding) {
      conclude(unit);
    }
  }
}

ReasonIndex::ReasonIndex(const Catalogue& catalogue) : vocabulary_(builtin_reason_tables().words), letters_(places_letters()) {
  mistakes_ = vocabulary_.mistakes();
  relations_ = vocabulary_.all(WordRole::relation);
  for (const char* name : {"equal", "congruent"}) equalities_.set(vocabulary_.meaning(name));
  for (const char* name : {"sum", "supplementary", "complementary"}) sums_.set(vocabulary_.meaning(name));
  for (const char* name : {"180", "360", "90"}) numbers_.set(vocabulary_.meaning(name));
  for (const char* name : {"angle", "line", "side", "point", "triangle", "quadrilateral", "polygon", "circle"}) generic_.set(vocabulary_.meaning(name));
  for (const char* name : {"theorem", "property", "any", "degree", "measurement", "value"}) titles_.set(vocabulary_.meaning(name));
  figure_nouns_ = generic_ | vocabulary_.all(WordRole::weak);
  for (const char* name : {"chord", "arc", "tangent", "radius", "diameter", "centre", "polygon", "straight"}) figure_nouns_.set(vocabulary_.meaning(name));
  telling_ = ~(relations_ | vocabulary_.all(WordRole::weak) | vocabulary_.all(WordRole::turn));
  learn_shapes(catalogue);
  by_key_.resize(most_meanings);
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) learn_words(catalogue.rules[i], RuleId(static_cast<std::int64_t>(i)));
  learn_table(builtin_reason_tables().said, "said.table", catalogue, false);
  learn_table(builtin_reason_tables().refused, "refused.table", catalogue, true);
  // Rows are filed under the rarest meaning that they require.
  std::array<std::size_t, most_meanings> often{};
  for (const ReasonRow& row : rows_)
    for (Meaning m = row.required._Find_first(); m < most_meanings; m = row.required._Find_next(m)) ++often[m];
  for (std::size_t r = 0; r < rows_.size(); ++r) {
    Meaning key = most_meanings;
    const Meanings& required = rows_[r].required;
    for (Meaning m = required._Find_first(); m < most_meanings; m = required._Find_next(m))
      if (key == most_meanings || often[m] < often[key]) key = m;
    if (key < most_meanings) by_key_[key].push_back(static_cast<std::uint32_t>(r));
  }
}

void ReasonIndex::learn_shapes(const Catalogue& catalogue) {
  for (std::size_t s = 0; s < shape_count; ++s) shapes_.set(meaning_of(static_cast<Shape>(s), vocabulary_));
  std::map<std::string, std::vector<RuleId>> families;
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) {
    const Rule& rule = catalogue.rules[i];
    families[rule.family.empty() ? rule.id : rule.family].emplace_back(static_cast<std::int64_t>(i));
    Meanings given, then;
    Statement says;
    for (const Phrase& phrase : rule.given)
      if (const auto shape = shape_of(phrase)) given.set(meaning_of(*shape, vocabulary_));
    for (const Phrase& phrase : rule.then) {
      const auto shape = shape_of(phrase);
      if (!shape) continue;
      then.set(meaning_of(*shape, vocabulary_));
      says.equal = says.equal || *shape == Shape::equal_angles || *shape == Shape::equal_lengths || *shape == Shape::other;
      says.sum = says.sum || *shape == Shape::angle_sum;
      if (*shape == Shape::equal_angles)
        for (const Expression& e : phrase.relation.expressions) says.multiple = says.multiple || e.terms[0].coefficient != Rational(1);
      if (*shape == Shape::perpendicular) says.numbers.set(vocabulary_.meaning("90"));
      for (const Expression& e : phrase.relation.expressions)
        for (const Term& t : e.terms)
          if (std::holds_alternative<One>(t.quantity))
            if (const auto number = vocabulary_.known(t.coefficient.to_string())) says.numbers.set(*number);
    }
    given_.push_back(given);
    then_.push_back(then);
    statements_.push_back(says);
  }
  family_.resize(catalogue.rules.size());
  for (const auto& [head, members] : families)
    for (const RuleId member : members) family_[member.index()] = members;
}

ReasonIndex::Said ReasonIndex::said_in(std::string_view text) const {
  ReasonUnits read = reason_units(text, letters_, vocabulary_);
  turn_round(read.units, vocabulary_);
  Said said;
  for (const ReasonUnit& unit : read.units) {
    if (unit.kind == UnitKind::word) said.words |= unit.bits;
    if (unit.kind == UnitKind::place) said.shapes |= unit.bits;
  }
  // "Equal chords" are a kind of chords, "… are equal" says something of them.
  for (std::size_t u = 0; u + 1 < read.units.size(); ++u)
    said.adjective = said.adjective || (read.units[u].kind == UnitKind::word && (read.units[u].bits & equalities_).any() && read.units[u + 1].kind == UnitKind::word &&
                                        (read.units[u + 1].bits & telling_ & ~equalities_).any());
  said.sequence = sequence_of(read.units, telling_);
  return said;
}

void ReasonIndex::add(ReasonRow row) {
  row.allowed |= row.required | row.worded | vocabulary_.all(WordRole::weak);
  // What is said of the angles is weighed later; but plain working and givens are not told by it.
  if (row.kind != ReasonKind::working && row.kind != ReasonKind::given) row.allowed |= relations_;
  rows_.push_back(std::move(row));
}

void ReasonIndex::learn_statement(const Meanings& words, RuleId id, std::optional<Register> wording) {
  Statement& says = statements_[id.index()];
  const bool sum = (words & sums_).any(), numbers = (words & numbers_).any();
  says.numbers |= words & numbers_;
  says.sum = says.sum || sum;
  says.equal = says.equal || ((words & equalities_).any() && !numbers);
  if (wording == Register::uk) {
    Meanings rest = words;
    if (words.test(vocabulary_.meaning("congruent")) && words.test(vocabulary_.meaning("triangle"))) rest &= ~equalities_;
    says.examiners_want_it = names_relation(rest);
  }
}

bool ReasonIndex::names_relation(const Meanings& words) const {
  const auto value = vocabulary_.known("value");
  if (Meanings said = words & relations_; value ? said.reset(*value).any() : said.any()) return true;
  return names_any(words, {"twice", "half", "congruent", "right"});
}

bool ReasonIndex::names_any(const Meanings& words, std::initializer_list<std::string_view> names) const {
  return std::any_of(names.begin(), names.end(), [&](std::string_view name) {
    const auto bit = vocabulary_.known(name);
    return bit && words.test(*bit);
  });
}

bool ReasonIndex::misstates(const Meanings& words, RuleId rule) const {
  const Statement& says = statement(rule);
  if (!says.equal && !says.sum && says.numbers.none()) return false;
  const Meanings numbers = words & numbers_;
  const bool sum = (words & sums_).any(), equal = (words & equalities_).any();
  if ((numbers & ~says.numbers).any() && !(numbers.count() == 1 && numbers.test(*vocabulary_.known("90")) && says.numbers.none())) return true;
  if (sum && numbers.none() && says.equal && !says.sum && says.numbers.none()) return true;
  if (equal && says.multiple && !names_any(words, {"twice", "half", "two", "value"})) return true;
  return equal && !sum && numbers.none() && says.sum && !says.equal;
}

void ReasonIndex::add_text(std::string_view text, const Rule& rule, RuleId id, std::optional<Register> wording) {
  const Meanings& weak = vocabulary_.all(WordRole::weak);
  const Meaning congruent = vocabulary_.meaning("congruent"), triangle = vocabulary_.meaning("triangle");
  for (const std::string& variant : bracket_variants(std::string(text))) {
    const Said said = said_in(variant);
    ReasonRow row;
    row.worded = said.words;
    row.sequence = said.sequence;
    // "Congruent" is another word for equal, unless triangles are.
    Meanings asked = said.words;
    if (!asked.test(triangle)) asked.reset(congruent);
    row.required = asked & ~weak & ~relations_;
    const std::size_t characteristic = (row.required & ~generic_).count();
    if (said.adjective) row.required |= asked & equalities_;
    if (characteristic == 0) row.required = asked & ~titles_;              // "angles in a triangle add up to 180°"
    else if (characteristic == 1) row.required |= asked & weak & ~titles_;  // "half the arc"
    if (characteristic <= 1) row.required |= said.shapes;        // "parallelogram {ABCD} with {AC} = {BD}"
    if ((row.required & telling_).none() && row.required.count() < 2) continue;  // nothing but "equal"
    // A converse is told from the theorem by what it says of the angles.
    if (rule.kind == RuleKind::converse) row.relation = said.words & (relations_ | equalities_);
    if ((row.relation & equalities_).any()) row.relation |= equalities_;
    if ((row.relation & (sums_ | numbers_)).any()) row.relation |= sums_ | numbers_;
    row.rules = {id};
    row.wording = wording;
    row.own = true;
    learn_statement(said.words, id, wording);
    add(std::move(row));
  }
}

void ReasonIndex::learn_words(const Rule& rule, RuleId id) {
  const auto learn = [&](const std::string& text, std::optional<Register> wording) {
    // Words that no table has mean themselves: a teacher's own rule is called by its own words.
    for (const RawToken& token : raw_tokens(filled(text, rule.variables, false), 64))
      if (token.kind == RawKind::word && token.lower.size() > 2 && vocabulary_.find(token.lower) == nullptr)
        vocabulary_.add_form(token.lower, {{vocabulary_.meaning(token.lower)}, false});
    add_text(filled(text, rule.variables, true), rule, id, wording);
    if (text.find('{') == text.npos) return;
    // Without the places, unless a sign between them would be left alone.
    if (const std::string rest = filled(text, rule.variables, false); rest.find_first_of("=+>") == rest.npos && rest.find("∥") == rest.npos && rest.find("⟂") == rest.npos)
      add_text(rest, rule, id, wording);
    // The part before a comma stands without the places behind it: "alt ∠s" of "alt ∠s; {PA} ∥ {QD}".
    const std::size_t mark = text.substr(0, text.find('{')).find_last_of(",;");
    if (mark != text.npos) add_text(text.substr(0, mark), rule, id, wording);
  };
  for (const auto& [wording, text] : rule.wording) learn(text, wording);
  for (const std::string& synonym : rule.synonyms) learn(synonym, std::nullopt);
  learn(rule.title, std::nullopt);
  if (rule.id.find('-') != rule.id.npos) called_[rule.id].push_back(id);  // "given" is a word, too
}

namespace {

// "angle/side [two]" as all choices of an alternative each; words in brackets may be missing.
struct Choice {
  std::vector<std::pair<std::string, bool>> words;  // and whether it must be there
};
std::vector<Choice> choices_of(const std::string& words) {
  std::vector<Choice> all = {{}};
  for (const std::string& group : parts_of(words, ' ')) {
    const bool optional = group.front() == '[' && group.back() == ']';
    const std::vector<std::string> ways = parts_of(optional ? group.substr(1, group.size() - 2) : group, '/');
    if (optional) {
      for (Choice& choice : all)
        for (const std::string& way : ways) choice.words.emplace_back(way, false);
      continue;
    }
    std::vector<Choice> wider;
    for (const Choice& choice : all)
      for (const std::string& way : ways) {
        wider.push_back(choice);
        wider.back().words.emplace_back(way, true);
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
      } else if (word == "lacking") {
        out.lacking = true;
      } else if (const auto rule = catalogue.find(word)) {
        out.rules.push_back(*rule);
      } else {
        mistake("no rule and no kind is called " + word);
      }
    }
    if (!kind_said) mistake("no kind is said");
    for (const Choice& choice : choices_of(row.columns[0])) {
      ReasonRow each = out;
      for (const auto& [word, must] : choice.words) {
        Meanings& into = must ? each.required : each.allowed;
        if (word == "…") {
          each.allowed.set();
        } else if (const auto known = vocabulary_.known(word)) {
          into.set(*known);
          if (telling_.test(*known)) each.sequence.push_back(*known);
        } else if (const Form* form = vocabulary_.find(word)) {
          if (form->meanings.empty()) mistake(word + " says nothing");
          for (const Meaning m : form->meanings) into.set(m);
        } else {
          const Meaning made = vocabulary_.meaning(word);
          vocabulary_.add_form(word, {{made}, false});
          into.set(made);
        }
      }
      each.worded = each.required;
      if (each.required.none()) mistake("nothing must be said");
      else add(std::move(each));
    }
  }
}

std::vector<const ReasonRow*> ReasonIndex::matching(const Meanings& words, const Meanings& shapes) const {
  std::vector<std::uint32_t> found;
  const Meanings all = words | shapes;
  for (Meaning m = all._Find_first(); m < most_meanings; m = all._Find_next(m))
    for (const std::uint32_t r : by_key_[m]) {
      const ReasonRow& row = rows_[r];
      if ((row.required & ~all).any() || (words & ~row.allowed).any()) continue;
      if (row.relation.any() && (row.relation & words).none()) continue;
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
