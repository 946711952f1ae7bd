#include "prover/reading/board.hpp"

#include <algorithm>
#include <numeric>

#include "prover/reading/number_text.hpp"
#include "prover/reading/title.hpp"
#include "prover/reading/worked_out.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

// Which conclusions of each step anything later rests on.
std::vector<std::set<int>> used_conclusions(const Proof& proof) {
  std::vector<std::set<int>> used(proof.steps.size());
  auto note = [&](const Combination& c) {
    for (const auto& part : c.parts) used[static_cast<std::size_t>(part.step)].insert(part.conclusion);
  };
  for (const ProofStep& step : proof.steps)
    for (const Combination& c : step.premises) note(c);
  for (const Combination& c : proof.conclusion) note(c);
  return used;
}

// Equal things are chained: "VW = WX" and "WX = XY" make one row, as do "∠P = 108°" and "∠Q = 108°".
bool chain(std::string& row, const std::string& next) {
  const std::string equals = " = ";
  auto count = [&](const std::string& text) {
    std::size_t n = 0;
    for (std::size_t at = text.find(equals); at != text.npos; at = text.find(equals, at + 1)) ++n;
    return n;
  };
  if (count(row) == 0 || count(row) > 2 || count(next) != 1) return false;
  const std::size_t split = next.find(equals), end = row.rfind(equals);
  const std::string left = next.substr(0, split), right = next.substr(split + equals.size());
  if (row.substr(end + equals.size()) == left) {
    row += equals + right;
    return true;
  }
  if (right.find_first_of("0123456789") != 0 && row.substr(end + equals.size()) == right && count(row) <= 2) {
    row += equals + left;
    return true;
  }
  if (const std::size_t first = row.find(equals); row.substr(0, first) == left && count(row) == 1 && right.find_first_of("0123456789") != 0) {
    row = right + equals + row;
    return true;
  }
  if (row.substr(end + equals.size()) == right && right.ends_with("°")) {
    row.insert(end, equals + left);
    return true;
  }
  return false;
}

void append_rows(std::vector<std::string>& rows, const std::vector<std::string>& more) {
  for (const std::string& row : more)
    if (more.size() > 1 || rows.empty() || !chain(rows.back(), row)) rows.push_back(row);
}

// Two equations that are put together in the head: a reader wants a line of its own for more.
bool wants_a_line(const std::vector<Said::Part>& parts) {
  const std::size_t lines = lines_of(parts).size();
  std::set<int> open;
  for (const Said::Part& p : parts)
    if (p.line > 0 && !p.plain) open.insert(p.line);
  return open.size() >= 2 || lines > kAtOnce;
}

// The same equation in whole numbers, the first term positive.
Form in_whole_numbers(Form form) {
  if (form.terms.empty()) return form;
  form = form.normalised();
  for (int k = 1; k <= 12; ++k) {
    const Rational factor(k);
    if (std::all_of(form.terms.begin(), form.terms.end(), [&](const auto& t) { return (t.second * factor).is_integer(); }))
      return form.scale(factor);
  }
  return form;
}

}  // namespace

Board::Board(const Scene& scene, std::optional<Letter> letter)
    : scene_(scene), names_(scene.statement, scene.arrangement, scene.unknowns),
      reasons_(scene.statement, scene.catalogue, scene.unknowns, scene.arrangement, names_, scene.wording),
      letter_(std::move(letter)) {
  for (const Form& g : scene.proof.goal)
    for (const auto& [u, c] : g.terms) wanted_.insert(u);
}

Reading Board::write(const std::vector<std::size_t>& order) {
  const auto used = used_conclusions(scene_.proof);
  for (const std::size_t i : order)
    if (const Instance& instance = scene_.proof.steps[i].instance; instance.hypothesis >= 0) say_given(instance);
  if (letter_) known_.call(letter_->unknown, letter_->name);
  prefer_names();
  for (const AddedSentence& added : scene_.statement.added) {
    reading_.constructions.push_back(added.text);
    add_line({{added.text}, "", "construction", "construction", {}, false, {}, {}}, {});
  }
  say_joins(order);
  for (const std::size_t i : order) {
    const Instance& instance = scene_.proof.steps[i].instance;
    if (instance.hypothesis < 0 && scene_.catalogue[instance.rule].builtin != Builtin::join)
      say(instance, used[i], static_cast<int>(i));
  }
  close();
  reading_.title = title_of(cited_, scene_.catalogue);
  return std::move(reading_);
}

void Board::say_given(const Instance& instance) {
  for (const Form& f : instance.conclusions) {
    known_.add(f);
    said_.by_given(f, instance.hypothesis);
  }
  reading_.givens_used.push_back(instance.hypothesis);
}

// Of angles that the givens make equal the one that most equations speak of is used when they are put together.
void Board::prefer_names() {
  std::map<UnknownId, int> spoken;
  for (const ProofStep& step : scene_.proof.steps)
    if (step.instance.hypothesis < 0)
      for (const auto* forms : {&step.instance.conclusions, &step.instance.premises})
        for (const Form& f : *forms)
          for (const auto& [u, c] : f.terms) ++spoken[u];
  for (const UnknownId u : wanted_) spoken[u] += 100;
  std::vector<std::pair<Form, UnknownId>> best;
  for (const auto& [u, times] : spoken) {
    const Form form = said_.given().reduce(Form::of(u));
    if (form.terms.empty()) continue;
    const auto same = std::find_if(best.begin(), best.end(), [&](const auto& b) { return b.first == form; });
    if (same == best.end())
      best.emplace_back(form, u);
    else if (spoken[same->second] < times)
      same->second = u;
  }
  for (const auto& [u, times] : spoken)
    for (const auto& [form, name] : best)
      if (form == said_.given().reduce(Form::of(u))) preferred_[u] = name;
}

// One line for all: "Join KM and LN". What follows shows by itself that it uses them.
void Board::say_joins(const std::vector<std::size_t>& order) {
  std::vector<std::string> lines;
  std::vector<int> steps;
  std::string rule;
  for (const std::size_t i : order) {
    const Instance& instance = scene_.proof.steps[i].instance;
    if (scene_.catalogue[instance.rule].builtin != Builtin::join) continue;
    const Names& names = scene_.statement.names;
    lines.push_back(names.of(instance.places[0]) + names.of(instance.places[1]));
    steps.push_back(static_cast<int>(i));
    reading_.constructions.push_back("Join " + lines.back());
    for (const Form& f : instance.conclusions) {
      known_.add(f);
      said_.by_given(f, -1);
    }
    cite(instance.rule);
    rule = scene_.catalogue[instance.rule].id;
  }
  std::sort(lines.begin(), lines.end());
  if (!lines.empty()) add_line({{"Join " + enumerated(lines)}, "", rule, "construction", {}, false, {}, steps}, {});
}

void Board::say_letter() {
  if (letter_said_ || !letter_) return;
  letter_said_ = true;
  add_line({{"Let " + names_.of(letter_->unknown) + " = " + letter_->name}, "", "let", "for short", {}, false, {}, {}}, {});
}

void Board::say(const Instance& instance, const std::set<int>& used, int step) {
  const Rule& rule = scene_.catalogue[instance.rule];
  std::vector<Form> claims;
  for (std::size_t i = 0; i < instance.conclusions.size(); ++i)
    if (used.contains(static_cast<int>(i))) claims.push_back(instance.conclusions[i]);
  if (claims.empty()) claims = instance.conclusions;
  ReadingLine line;
  line.rule = rule.id;
  line.made_of = {step};
  if (!rule.builtin)
    for (const PointId p : instance.places) line.places.push_back(scene_.statement.names.of(p));
  const bool addition = rule.builtin == Builtin::angle_addition || rule.builtin == Builtin::segment_addition;

  std::vector<Form> gained;  // values that the line settles
  std::vector<Form> relations, values, told;
  bool in_letter = false;
  for (const Form& claim : claims) {
    if (is_fact(claim, scene_.unknowns)) {
      const std::string fact = reasons_.fact_text(instance, claim);  // a circle through several points has several forms
      if (std::find(line.rows.begin(), line.rows.end(), fact) == line.rows.end()) line.rows.push_back(fact);
      continue;
    }
    const ClaimRows rows = claim_rows(claim, known_, names_, {wanted_, &said_.given(), &preferred_, addition});
    in_letter |= rows.in_letter;
    for (const UnknownId u : rows.values_used)
      if (const auto size = known_.size(u)) {
        Form value = Form::of(u).add(Form::number(-size->rest));
        if (!size->is_number()) value.add(Form::of(known_.called()), -size->multiple);
        values.push_back(std::move(value));
      }
    relations.insert(relations.end(), rows.relations_used.begin(), rows.relations_used.end());
    if (rows.solved_for.valid() && !names_.is_number(rows.solved_for) &&
        (rows.relations_used.size() >= 2 || std::any_of(rows.relations_used.begin(), rows.relations_used.end(), [&](const Form& f) {
           const auto parts = said_.parts(f);
           return parts && wants_a_line(*parts);
         })))
      note_letter(rows.solved_for);
    append_rows(line.rows, rows.rows);
    told.insert(told.end(), rows.told.begin(), rows.told.end());
    if (rows.settled.valid()) gained.push_back(Form::of(rows.settled).add(Form::number(-rows.value)));
    known_.add(claim);
  }
  if (in_letter) say_letter();
  for (const Form& premise : instance.premises)
    if (!is_fact(premise, scene_.unknowns)) work_out_first(premise);
  for (const Form& relation : relations) work_out_first(relation);
  for (const Form& value : values) work_out_first(value);

  std::set<int> uses;
  std::vector<std::string> given_texts;
  line.reason = reasons_.reason(instance);
  std::set<int> hypotheses;
  for (const Form& premise : instance.premises)
    rest_on(premise, uses, reasons_.names_places(rule) ? nullptr : &given_texts, &hypotheses);
  for (const Form& value : values) rest_on(value, uses, letter_ ? &given_texts : nullptr, &hypotheses);
  for (const Form& relation : relations) rest_on(relation, uses, &given_texts, &hypotheses);
  line.uses.assign(uses.begin(), uses.end());
  line.givens.assign(hypotheses.begin(), hypotheses.end());
  line.ask = reasons_.hints(instance);
  for (const Form& claim : claims)
    if (!is_fact(claim, scene_.unknowns)) line.relation += (line.relation.empty() ? "" : "; ") + names_.equation(claim);
  show_givens(rule, given_texts, line.reason);
  std::vector<Form> all = gained;
  all.insert(all.end(), claims.begin(), claims.end());
  all.insert(all.end(), instance.conclusions.begin(), instance.conclusions.end());
  add_line(std::move(line), all);
  last_told_ = told;
  for (const Form& f : told) said_.derived_by_line(f, static_cast<int>(reading_.lines.size()));
  cite(instance.rule);
}

// Of all that is tied to the unknown that was solved for, the one by which the others are told most simply: whole
// multiples, with nothing added.
void Board::note_letter(UnknownId solved_for) {
  if (worth_a_letter_.valid()) return;
  const Form base = known_.reduce(Form::of(solved_for));
  std::vector<std::pair<UnknownId, Form>> tied;
  for (const auto& [u, name] : preferred_)
    if (u == name)
      if (Form form = known_.reduce(Form::of(u)); form.terms.size() == 1 && base.terms.size() == 1 &&
                                                  form.terms[0].first == base.terms[0].first)
        tied.emplace_back(u, std::move(form));
  int least = -1;
  for (const auto& [t, of_t] : tied) {
    int burden = 0;
    for (const auto& [u, form] : tied) {
      const Rational multiple = form.terms[0].second / of_t.terms[0].second;
      burden += multiple.is_integer() ? 0 : 4;
      burden += form.constant == multiple * of_t.constant ? 0 : 1;
      burden += multiple.is_one() ? 0 : 1;
    }
    if (least >= 0 && least <= burden) continue;
    least = burden;
    worth_a_letter_ = t;
  }
}

void Board::add_line(ReadingLine line, const std::vector<Form>& says) {
  // "NK = NL = NM" by one reason: one line.
  if (!reading_.lines.empty() && line.rows.size() == 1) {
    ReadingLine& last = reading_.lines.back();
    if (last.rule == line.rule && last.reason == line.reason && last.uses == line.uses && last.rows.size() == 1 &&
        chain(last.rows[0], line.rows[0])) {
      last.made_of.insert(last.made_of.end(), line.made_of.begin(), line.made_of.end());
      last.givens.insert(last.givens.end(), line.givens.begin(), line.givens.end());
      if (!line.relation.empty()) last.relation += (last.relation.empty() ? "" : "; ") + line.relation;
      for (const std::string& p : line.places)
        if (std::find(last.places.begin(), last.places.end(), p) == last.places.end()) last.places.push_back(p);
      for (const Form& f : says) {
        known_.add(f);
        said_.by_line(f, static_cast<int>(reading_.lines.size()));
      }
      last_ = says;
      last_told_.clear();
      return;
    }
  }
  reading_.lines.push_back(std::move(line));
  for (const Form& f : says) {
    known_.add(f);
    said_.by_line(f, static_cast<int>(reading_.lines.size()));
  }
  last_ = says;
  last_told_.clear();
}

// Lines for an equation that rests on more of them than a reader puts together in the head.
void Board::work_out_first(const Form& form) {
  const auto parts = said_.parts(form);
  if (parts && wants_a_line(*parts)) work_out(*parts, form);
}

void Board::work_out(const std::vector<Said::Part>& parts, const Form& form) {
  const std::vector<int> lines = lines_of(parts);
  std::vector<Form> summands;
  for (const int line : lines) {
    Form sum;
    for (const Said::Part& p : parts)
      if (p.line == line) sum.add(p.form);
    summands.push_back(std::move(sum));
  }
  const std::vector<WorkedOut> steps = prover::work_out(summands, said_.given());
  std::vector<int> number = lines;  // of each summand and of each result, its line
  for (std::size_t i = 0; i < steps.size(); ++i) {
    std::vector<int> from;
    for (const int k : steps[i].from) from.push_back(number[static_cast<std::size_t>(k)]);
    const bool last = i + 1 == steps.size();
    std::vector<Said::Part> used;
    for (const Said::Part& p : parts)
      if (p.line == 0) used.push_back(p);
    Form result;
    for (const auto& [u, c] : steps[i].result.terms) {
      const auto better = preferred_.find(u);
      result.add(Form::of(better == preferred_.end() ? u : better->second), c);
    }
    result.constant = steps[i].result.constant;
    say_worked_out(last ? form : result, from, last ? used : std::vector<Said::Part>{});
    number.push_back(static_cast<int>(reading_.lines.size()));
  }
}

void Board::say_worked_out(const Form& form, const std::vector<int>& from, const std::vector<Said::Part>& parts) {
  ReadingLine line;
  line.rule = "substitution";
  line.reason = "substituting";
  line.uses = from;
  std::sort(line.uses.begin(), line.uses.end());
  line.uses.erase(std::unique(line.uses.begin(), line.uses.end()), line.uses.end());
  line.rows = {names_.equation(in_whole_numbers(form))};
  std::vector<std::string> givens;
  note_givens(parts, givens);
  std::erase_if(givens, [&](const std::string& text) {
    return std::any_of(reading_.lines.begin(), reading_.lines.end(),
                       [&](const ReadingLine& l) { return l.reason.find(text) != std::string::npos; });
  });
  if (!givens.empty()) line.reason += ", given " + enumerated(givens);
  reading_.lines.push_back(std::move(line));
  last_told_.clear();
  said_.derived_by_line(form, static_cast<int>(reading_.lines.size()));
  last_ = {form};
}

// The lines that an equation rests on, and the sentences that tie unknowns together ("HJ bisects ∠GHF") and were
// put in without a line of their own.
void Board::rest_on(const Form& form, std::set<int>& uses, std::vector<std::string>* givens, std::set<int>* hypotheses) const {
  const auto parts = said_.parts(form);
  if (!parts) return;
  for (const int line : lines_of(*parts)) uses.insert(line);
  if (hypotheses)
    for (const Said::Part& p : *parts)
      if (p.line == 0 && p.hypothesis >= 0) hypotheses->insert(p.hypothesis);
  if (givens) note_givens(*parts, *givens);
}

void Board::note_givens(const std::vector<Said::Part>& parts, std::vector<std::string>& givens) const {
  for (const Said::Part& p : parts) {
    if (p.line > 0 || p.hypothesis < 0 || !ties_unknowns(p.hypothesis)) continue;
    const Given& given = scene_.statement.givens[static_cast<std::size_t>(p.hypothesis)];
    if (std::find(givens.begin(), givens.end(), given.text) == givens.end()) givens.push_back(given.text);
  }
}

bool Board::ties_unknowns(int hypothesis) const {
  for (const ProofStep& step : scene_.proof.steps)
    if (step.instance.hypothesis == hypothesis)
      for (const Form& f : step.instance.conclusions)
        if (f.terms.size() > 1) return true;
  return scene_.statement.givens[static_cast<std::size_t>(hypothesis)].phrase.predicate == Predicate::perpendicular;
}

void Board::show_givens(const Rule& rule, const std::vector<std::string>& texts, std::string& reason) const {
  const bool addition = rule.builtin == Builtin::angle_addition || rule.builtin == Builtin::segment_addition;
  std::vector<std::string> shown;
  for (const std::string& text : texts) {
    const bool above = !addition && std::any_of(reading_.lines.begin(), reading_.lines.end(), [&](const ReadingLine& l) {
      return l.reason.find(text) != std::string::npos;
    });
    if (!above && reason.find(text) == std::string::npos) shown.push_back(text);
  }
  if (shown.empty()) return;
  std::string list;
  for (const std::string& text : shown) list += (list.empty() ? "" : ", ") + text;
  reason = addition ? list : reason + ", given " + list;
}

void Board::cite(RuleId rule) {
  const std::string& id = scene_.catalogue[rule].id;
  if (std::find(reading_.rules.begin(), reading_.rules.end(), id) == reading_.rules.end()) reading_.rules.push_back(id);
  cited_.push_back(rule);
}

}  // namespace prover
