#include "prover/reading/reading.hpp"

#include <algorithm>
#include <set>

#include "prover/algebra/linear_system.hpp"
#include "prover/reading/claim_rows.hpp"
#include "prover/reading/name_book.hpp"
#include "prover/reading/number_text.hpp"
#include "prover/rule/ideas.hpp"
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

class Board {
 public:
  Board(const Proof& proof, const Statement& statement, const Goal& goal, const Catalogue& catalogue,
        UnknownTable& unknowns, const Arrangement& arrangement, Register wording)
      : proof_(proof), statement_(statement), goal_(goal), catalogue_(catalogue), unknowns_(unknowns),
        arrangement_(arrangement), wording_(wording), names_(statement, arrangement, unknowns) {}

  Reading write() {
    const auto used = used_conclusions(proof_);
    for (const Form& g : proof_.goal)
      for (const auto& [u, c] : g.terms) wanted_.insert(u);
    for (const AddedSentence& added : statement_.added) {
      reading_.constructions.push_back(added.text);
      add_line({{added.text}, "construction", "construction", {}, false, {}}, {});
    }
    for (std::size_t i = 0; i < proof_.steps.size(); ++i) {
      const Instance& instance = proof_.steps[i].instance;
      if (instance.hypothesis >= 0)
        say_given(instance);
      else if (catalogue_[instance.rule].builtin == Builtin::join)
        say_join(instance);
      else
        say(instance, used[i]);
    }
    close();
    reading_.title = title();
    return std::move(reading_);
  }

 private:
  void say_given(const Instance& instance) {
    for (const Form& f : instance.conclusions) {
      known_.add(f);
      said_.add(f, -1 - instance.hypothesis);
    }
    reading_.givens_used.push_back(instance.hypothesis);
  }

  void say_join(const Instance& instance) {
    const std::string line = statement_.names.of(instance.places[0]) + statement_.names.of(instance.places[1]);
    reading_.constructions.push_back("Join " + line);
    add_line({{"Join " + line}, catalogue_[instance.rule].id, "construction", {}, false, {}}, instance.conclusions);
    cite(instance.rule);
  }

  void say(const Instance& instance, const std::set<int>& used) {
    const Rule& rule = catalogue_[instance.rule];
    std::vector<Form> claims;
    for (std::size_t i = 0; i < instance.conclusions.size(); ++i)
      if (used.contains(static_cast<int>(i))) claims.push_back(instance.conclusions[i]);
    if (claims.empty()) claims = instance.conclusions;
    ReadingLine line;
    line.rule = rule.id;
    line.reason = reason(instance);
    if (!rule.builtin)
      for (PointId p : instance.places) line.places.push_back(statement_.names.of(p));
    std::set<int> uses;
    for (const Form& premise : instance.premises) add_uses(premise, uses);

    std::vector<Form> gained;  // values that the line settles
    std::vector<std::string> given_texts;
    for (const Form& claim : claims) {
      if (is_fact(claim, unknowns_)) {
        const std::string fact = fact_text(instance, claim);  // a circle through several points has several forms
        if (std::find(line.rows.begin(), line.rows.end(), fact) == line.rows.end()) line.rows.push_back(fact);
        continue;
      }
      const ClaimRows rows = claim_rows(claim, known_, names_, wanted_);
      for (UnknownId u : rows.values_used)
        if (const auto value = known_.value(u)) add_uses(Form::of(u).add(Form::number(-*value)), uses);
      for (const Form& f : rows.relations_used) {
        add_uses(f, uses, &given_texts);
      }
      append_rows(line.rows, rows.rows);
      if (rows.settled.valid()) gained.push_back(Form::of(rows.settled).add(Form::number(-rows.value)));
      known_.add(claim);
    }
    line.uses.assign(uses.begin(), uses.end());
    show_givens(rule, given_texts, line.reason);
    std::vector<Form> all = gained;
    all.insert(all.end(), claims.begin(), claims.end());
    all.insert(all.end(), instance.conclusions.begin(), instance.conclusions.end());
    add_line(std::move(line), all);
    cite(instance.rule);
  }

  // Equal things are chained: "VW = WX" and "WX = XY" make one row, as do "∠P = 108°" and "∠Q = 108°".
  static void append_rows(std::vector<std::string>& rows, const std::vector<std::string>& more) {
    for (const std::string& row : more) {
      if (more.size() > 1 || rows.empty() || !chain(rows.back(), row)) rows.push_back(row);
    }
  }
  static bool chain(std::string& row, const std::string& next) {
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
    if (row.substr(end + equals.size()) == right && right.ends_with("°")) {
      row.insert(end, equals + left);
      return true;
    }
    return false;
  }

  void add_line(ReadingLine line, const std::vector<Form>& says) {
    reading_.lines.push_back(std::move(line));
    for (const Form& f : says) {
      known_.add(f);
      said_.add(f, static_cast<int>(reading_.lines.size()));
    }
    last_ = says;
  }

  // The lines that an equation rests on, and the sentences that tie unknowns together ("HJ bisects ∠GHF") and were
  // put in without a line of their own.
  void add_uses(const Form& form, std::set<int>& uses, std::vector<std::string>* givens = nullptr) const {
    const auto certificate = said_.certificate(form);
    if (!certificate) return;
    for (const auto& [tag, m] : certificate->parts) {
      if (tag > 0) uses.insert(tag);
      if (tag >= 0 || !givens) continue;
      const int hypothesis = -1 - tag;
      if (!ties_unknowns(hypothesis)) continue;
      const Given& given = statement_.givens[static_cast<std::size_t>(hypothesis)];
      if (std::find(givens->begin(), givens->end(), given.text) == givens->end()) givens->push_back(given.text);
    }
  }
  bool ties_unknowns(int hypothesis) const {
    for (const ProofStep& step : proof_.steps)
      if (step.instance.hypothesis == hypothesis)
        for (const Form& f : step.instance.conclusions)
          if (f.terms.size() > 1) return true;
    return statement_.givens[static_cast<std::size_t>(hypothesis)].phrase.predicate == Predicate::perpendicular;
  }
  void show_givens(const Rule& rule, const std::vector<std::string>& texts, std::string& reason) const {
    if (texts.empty()) return;
    std::string list;
    for (const std::string& text : texts) list += (list.empty() ? "" : ", ") + text;
    if (reason.find(list) != std::string::npos) return;
    const bool addition = rule.builtin == Builtin::angle_addition || rule.builtin == Builtin::segment_addition;
    reason = addition ? list : reason + ", given " + list;
  }

  // A fact in the words of the rule, with its places: the letters stay in corresponding order.
  std::string fact_text(const Instance& instance, const Form& claim) {
    const Rule& rule = catalogue_[instance.rule];
    for (const Phrase& phrase : rule.then) {
      const Meaning meaning = meaning_of(phrase, instance.places, arrangement_, unknowns_);
      if (std::find(meaning.forms.begin(), meaning.forms.end(), claim) == meaning.forms.end()) continue;
      if (phrase.predicate == Predicate::parallel) return names_.equation(claim);
      Names places;
      for (PointId p : instance.places) places.points.push_back(p.valid() ? statement_.names.of(p) : "?");
      return describe(phrase, places);
    }
    return names_.equation(claim);
  }

  std::string reason(const Instance& instance) const {
    const Rule& rule = catalogue_[instance.rule];
    std::vector<std::string> places;
    if (rule.builtin)
      for (std::size_t i = 0; i < rule.variables.points.size(); ++i)
        places.push_back(shape_part(rule, i, instance.places));
    else
      for (PointId p : instance.places) places.push_back(p.valid() ? statement_.names.of(p) : "?");
    return fill_wording(rule, wording_, places);
  }

  // The named parts of a built-in shape: {line}, {point}, {angle}, {polygon}, or single points.
  std::string shape_part(const Rule& rule, std::size_t variable, const std::vector<PointId>& places) const {
    const std::string& part = rule.variables.points[variable];
    auto name = [&](std::size_t i) { return statement_.names.of(places[i]); };
    if (places.empty()) return {};
    if (part == "point") return name(0);
    if (part == "line") return name(1) + name(0) + name(places.size() - 1);
    if (part == "angle") return "∠" + name(1) + name(0) + name(places.size() - 1);
    if (part == "polygon") {
      const bool with_produced_sides = rule.builtin == Builtin::polygon_exterior_sum;
      std::string corners;
      for (std::size_t i = 0; i < places.size() / (with_produced_sides ? 2 : 1); ++i) corners += name(i);
      return corners;
    }
    // One by one, the last place by the last name: a segment of many points is named by its ends.
    return variable + 1 == rule.variables.points.size() ? name(places.size() - 1) : name(variable);
  }

  void cite(RuleId rule) {
    const std::string& id = catalogue_[rule].id;
    if (std::find(reading_.rules.begin(), reading_.rules.end(), id) == reading_.rules.end())
      reading_.rules.push_back(id);
    cited_.push_back(rule);
  }

  // The answer line, unless the last line is the answer already.
  void close() {
    const bool nothing_said = reading_.lines.empty();
    if (!nothing_said && proof_.goal.size() == 1 && goal_is_last()) {
      reading_.lines.back().closing = true;
      return;
    }
    ReadingLine line;
    line.closing = true;
    line.rule = "substitution";
    line.reason = nothing_said ? "given" : "substituting";
    std::set<int> uses;
    std::vector<std::string> givens;
    for (const Form& g : proof_.goal) add_uses(g, uses, &givens);
    std::erase_if(givens, [&](const std::string& text) {
      return std::any_of(reading_.lines.begin(), reading_.lines.end(),
                         [&](const ReadingLine& l) { return l.reason.find(text) != std::string::npos; });
    });
    line.uses.assign(uses.begin(), uses.end());
    line.rows = goal_rows(goal_, proof_.goal, known_, names_, statement_.names);
    if (proof_.contradiction) {
      line.rows = {"The givens cannot all hold."};
      line.reason = "the lines above exclude each other";
      line.rule = "contradiction";
    }
    if (!proof_.contradiction && all_shown()) line.reason = "as shown";
    for (std::size_t i = 0; i < givens.size() && !nothing_said && !proof_.contradiction; ++i)
      line.reason += (i == 0 ? ", given " : i + 1 == givens.size() ? " and " : ", ") + givens[i];
    reading_.lines.push_back(std::move(line));
  }

  // Each part of the goal is the claim of some line.
  bool all_shown() const {
    return std::all_of(proof_.goal.begin(), proof_.goal.end(), [&](const Form& g) {
      const auto certificate = said_.certificate(g);
      return certificate && certificate->parts.size() == 1;
    });
  }

  bool goal_is_last() const {
    const Form goal = proof_.goal[0].normalised();
    if (goal_.kind == GoalKind::find && goal.terms.size() == 1 && !is_plain_goal()) return false;
    return std::any_of(last_.begin(), last_.end(), [&](const Form& f) { return f.normalised() == goal; }) &&
           last_shows(goal);
  }
  // A quantity asked for as it stands, not a sum or a reflex angle.
  bool is_plain_goal() const {
    const auto& terms = goal_.claims[0].relation.expressions[0].terms;
    if (terms.size() != 1 || !terms[0].coefficient.is_one()) return false;
    const auto* angle = std::get_if<Angle>(&terms[0].quantity);
    return !angle || (!angle->reflex && !angle->exterior);
  }
  bool last_shows(const Form& goal) const {
    const auto& rows = reading_.lines.back().rows;
    if (rows.empty()) return false;
    if (goal_.kind == GoalKind::prove) {
      // The claim itself, in the words of the line.
      return goal_.claims.size() == 1 && rows.size() == 1;
    }
    if (goal.terms.size() != 1) return false;
    const std::string name = names_.of(goal.terms[0].first) + " = ";
    return rows.front().starts_with(name) || rows.back().starts_with(name);
  }

  std::string title() const {
    // Small change tells nothing about the idea, unless there is nothing else (`rules/ideas.table`).
    std::vector<RuleId> telling, rest;
    for (RuleId r : cited_) {
      const auto& b = catalogue_[r].builtin;
      if (b == Builtin::angle_addition || b == Builtin::segment_addition || b == Builtin::join) continue;
      auto& list = idea_table().role(catalogue_[r]) == IdeaRole::carries ? telling : rest;
      if (std::find(list.begin(), list.end(), r) == list.end()) list.push_back(r);
    }
    const std::vector<RuleId>& chosen = telling.empty() ? rest : telling;
    if (chosen.empty()) return "directly from the givens";
    std::string text = "by ";
    const std::size_t shown = std::min<std::size_t>(chosen.size(), 3);
    for (std::size_t i = 0; i < shown; ++i) {
      if (i > 0) text += i + 1 == shown ? " and " : ", ";
      text += catalogue_[chosen[i]].title;
    }
    return text;
  }

  const Proof& proof_;
  const Statement& statement_;
  const Goal& goal_;
  const Catalogue& catalogue_;
  UnknownTable& unknowns_;
  const Arrangement& arrangement_;
  Register wording_;
  NameBook names_;
  Reading reading_;
  LinearSystem known_;
  LinearSystem said_{true};   // tags: line numbers from 1; hypothesis h is −1 − h
  std::set<UnknownId> wanted_;
  std::vector<Form> last_;
  std::vector<RuleId> cited_;
};

}  // namespace

Reading reading_of(const Proof& proof, const Statement& statement, const Goal& goal, const Catalogue& catalogue,
                   UnknownTable& unknowns, const Arrangement& arrangement, Register wording) {
  return Board(proof, statement, goal, catalogue, unknowns, arrangement, wording).write();
}

}  // namespace prover
