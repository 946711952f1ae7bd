// The replay: givens are read, positions verified, then each step in its order: its premises from conclusions
// of earlier steps by exact arithmetic, its rule by its own meaning, and at the end the goal. Lines and
// positions only grow on the way, so a name of an angle that rests on something shown in step 5 does not
// exist before step 5.
#include <algorithm>
#include <optional>
#include <set>

#include "prover/check/check.hpp"
#include "prover/check/rule_meaning.hpp"
#include "prover/check/sight.hpp"
#include "prover/rule/mistakes.hpp"

namespace prover {
namespace {

using namespace replay;

// Sums that no sizes allow: an angle is between 0° and 180°, a length is more than 0.
bool impossible(const Equation& equation, const std::set<int>& proper_angles, const Naming& naming, const Excesses& excesses) {
  if (equation.is_constant()) return !equation.is_zero();
  Rational low = equation.constant, high = equation.constant;
  bool low_open = false, high_open = false, attained = true;  // `open`: without bound
  for (const auto& [key, coefficient] : equation.terms) {
    const bool rising = coefficient.sign() > 0;
    switch (naming.kind_of(key)) {
      case UnknownKind::angle:
        (rising ? high : low) += coefficient * Rational(180);
        if (proper_angles.contains(key)) attained = false;
        break;
      case UnknownKind::excess:
        if (!excesses.known(key)) return false;
        (rising ? high_open : low_open) = true;
        attained = false;
        break;
      case UnknownKind::length:
        (rising ? high_open : low_open) = true;
        attained = false;
        break;
      case UnknownKind::number:
      case UnknownKind::fact:
        return false;
    }
  }
  if (!low_open && (low.sign() > 0 || (low.is_zero() && !attained))) return true;
  return !high_open && (high.sign() < 0 || (high.is_zero() && !attained));
}

class Replay {
 public:
  Replay(const Proof& proof, const Statement& statement, const Goal& goal, const Catalogue& catalogue,
         const UnknownTable& unknowns, const std::vector<Sketch>& sketches)
      : proof_(proof),
        statement_(statement),
        goal_(goal),
        catalogue_(catalogue),
        unknowns_(unknowns),
        sketches_(sketches),
        text_(statement.names.points.size()) {
    for (std::size_t i = 0; i < points(); ++i) identity_.emplace_back(static_cast<std::int64_t>(i));
  }

  CheckReport run() {
    read_givens();
    if (auto trouble = read_positions(); !trouble.empty()) return refused(-1, trouble);
    for (std::size_t s = 0; s < proof_.steps.size(); ++s)
      if (auto trouble = step(s); !trouble.empty())
        return refused(static_cast<int>(s), "step " + std::to_string(s + 1) + ": " + trouble);
    for (const Position& position : unsettled_)
      if (!positions_.follows(position))
        return refused(-1, "the text does not say that " + describe(position, statement_.names));
    if (auto trouble = goal(); !trouble.empty()) return refused(-1, trouble);
    return {true, -1, {}};
  }

 private:
  static CheckReport refused(int step, std::string objection) { return {false, step, std::move(objection)}; }
  std::size_t points() const { return statement_.names.points.size(); }
  bool exists(PointId p) const { return p.valid() && p.index() < points(); }

  bool exists(const Position& p) const {
    const bool sides = p.kind == PositionKind::same_side || p.kind == PositionKind::opposite_sides;
    return exists(p.a) && exists(p.b) && exists(p.c) && (!sides || exists(p.d));
  }

  // What the sentences say of lines and positions. A sentence that we can't read says nothing.
  void read_givens() {
    for (const Given& given : statement_.givens) {
      const Placement placement = placement_of(given.phrase, identity_);
      if (placement.readable) text_.assume(placement);
    }
    for (const Given& given : statement_.givens) {
      for (const Position& angle : named_angles(given.phrase))
        if (exists(angle)) text_.assume(angle);
      const Points& p = given.phrase.points;
      if (given.phrase.predicate != Predicate::inside_polygon || p.size() < 5) continue;
      const Points corners(p.begin() + 1, p.end());  // inside means beside every side only where it is convex
      if (text_.follows(convex_polygon(corners))) text_.assume(inside_convex_polygon(p[0], corners));
    }
  }

  // The text's own coordinates count as a sentence where it says so.
  bool drawn_by_the_text(const Position& position) const {
    if (!statement_.positions_count) return false;
    Drawing drawing(points());
    std::set<PointId> placed;
    for (const DrawnPoint& drawn : statement_.drawn) {
      if (!exists(drawn.point)) return false;
      drawing[drawn.point.index()] = {drawn.x, drawn.y};
      placed.insert(drawn.point);
    }
    for (const PointId p : {position.a, position.b, position.c, position.d})
      if (p.valid() && !placed.contains(p)) return false;
    return shows(drawing, position);
  }

  bool seen(const Position& position) const {
    for (const Sketch& sketch : sketches_)
      if (sketch.points.size() < points() || !shows(sketch.points, position)) return false;
    return !sketches_.empty();
  }

  std::string read_positions() {
    std::vector<Position> verified;
    for (const SeenPosition& listed : proof_.positions) {
      const Position& position = listed.position;
      if (!exists(position)) return "a position speaks of a point that does not exist";
      switch (listed.source) {
        case PositionSource::text:
          if (text_.follows(position) || drawn_by_the_text(position))
            verified.push_back(position);
          else
            unsettled_.push_back(position);  // perhaps after a line that a step shows; see run()
          break;
        case PositionSource::seen:
          if (!seen(position)) return "not every figure shows that " + describe(position, statement_.names);
          verified.push_back(position);
          break;
        case PositionSource::unknown:
          return "nothing says that " + describe(position, statement_.names);
      }
    }
    positions_ = text_;
    for (const Position& position : verified) positions_.assume(position);
    return {};
  }

  // A form in the checker's keys; nothing when it speaks of what has no meaning.
  std::optional<Equation> equation(const Form& form) {
    Equation result = Equation::number(form.constant);
    for (const auto& [unknown, coefficient] : form.terms) {
      if (!unknown.valid() || unknown.index() >= unknowns_.size()) return std::nullopt;
      const auto key = naming_.of(unknowns_[unknown]);
      if (!key) return std::nullopt;
      result.add(*key, coefficient);
    }
    return result;
  }

  bool equations(const std::vector<Form>& forms, std::vector<Equation>& result) {
    for (const Form& form : forms) {
      const auto read = equation(form);
      if (!read) return false;
      result.push_back(*read);
    }
    return true;
  }

  // Whether `claim` is exactly the stated sum of conclusions of steps before `before`.
  bool adds_up(const Equation& claim, const Combination& combination, std::size_t before) {
    Equation sum;
    for (const auto& [step, conclusion, multiplier] : combination.parts) {
      if (step < 0 || static_cast<std::size_t>(step) >= before) return false;
      const auto& conclusions = proof_.steps[static_cast<std::size_t>(step)].instance.conclusions;
      if (conclusion < 0 || static_cast<std::size_t>(conclusion) >= conclusions.size()) return false;
      const auto cited = equation(conclusions[static_cast<std::size_t>(conclusion)]);
      if (!cited) return false;
      sum.add(*cited, multiplier);
    }
    return sum == claim;
  }

  std::string step(std::size_t s) {
    const Instance& instance = proof_.steps[s].instance;
    if (!instance.rule.valid() || instance.rule.index() >= catalogue_.rules.size())
      return "there is no such rule";
    const Rule& rule = catalogue_[instance.rule];
    if (is_mistake(rule)) return "it is a mistake and no rule";
    for (const PointId place : instance.places)
      if (!exists(place)) return "a place is no point of the figure";
    for (const Position& position : instance.positions)
      if (!exists(position) || !positions_.follows(position))
        return "a position that it rests on is not known";

    Step read{rule, instance.places, {}, {}};
    if (!equations(instance.premises, read.premises) || !equations(instance.conclusions, read.conclusions))
      return "it speaks of something that has no meaning";
    if (proof_.steps[s].premises.size() != read.premises.size())
      return "it does not say where each of its premises comes from";
    for (std::size_t i = 0; i < read.premises.size(); ++i)
      if (!adds_up(read.premises[i], proof_.steps[s].premises[i], s))
        return "premise " + std::to_string(i + 1) + " is not the stated sum of earlier conclusions";

    if (rule.builtin == Builtin::given) return hypothesis(instance, read);
    if (rule.builtin) return objection_to_shape(*rule.builtin, read, naming_, statement_);
    if (auto trouble = objection_to_pattern(read, naming_, given_inequalities(), excesses_); !trouble.empty())
      return trouble;
    for (const Phrase& phrase : rule.then) positions_.assume(placement_of(phrase, instance.places));
    return {};
  }

  std::string hypothesis(const Instance& instance, const Step& read) {
    if (instance.hypothesis < 0 || static_cast<std::size_t>(instance.hypothesis) >= statement_.givens.size())
      return "there is no such given";
    const Given& given = statement_.givens[static_cast<std::size_t>(instance.hypothesis)];
    const Claims claims = consequences_of(given.phrase, identity_, naming_);
    if (!claims.readable) return "the given is not one that we can use";
    for (const Equation& conclusion : read.conclusions)
      if (!in_span(conclusion, claims.all()) && !excesses_.introduces(conclusion, claims.positive, naming_))
        return "the given does not say this";
    return {};
  }

  std::vector<Equation> given_inequalities() {
    std::vector<Equation> result;
    for (const Given& given : statement_.givens) {
      if (given.phrase.predicate != Predicate::relation) continue;
      const Claims claims = claims_of(given.phrase, identity_, naming_);
      if (claims.readable) result.insert(result.end(), claims.positive.begin(), claims.positive.end());
    }
    return result;
  }

  std::string goal() {
    std::vector<Equation> shown;
    if (proof_.goal.empty()) return "the proof has no goal";
    if (proof_.goal.size() != proof_.conclusion.size())
      return "the proof does not say where its goal comes from";
    if (!equations(proof_.goal, shown)) return "the goal speaks of something that has no meaning";
    for (std::size_t i = 0; i < shown.size(); ++i)
      if (!adds_up(shown[i], proof_.conclusion[i], proof_.steps.size()))
        return "the goal is not the stated sum of what was shown";
    if (proof_.contradiction) return conflict(shown);
    return goal_.kind == GoalKind::find ? found(shown) : proved(shown);
  }

  std::string conflict(const std::vector<Equation>& shown) {
    std::set<int> proper;  // angles whose three points are known to make a triangle
    for (const Form& form : proof_.goal)
      for (const auto& term : form.terms) {
        const Unknown& unknown = unknowns_[term.first];
        if (unknown.kind != UnknownKind::angle) continue;
        const Points& p = unknown.points;
        if (const auto key = naming_.of(unknown); !key->is_constant())
          if (positions_.follows({PositionKind::not_collinear, p[0], p[1], p[2], {}}))
            proper.insert(key->terms.begin()->first);
      }
    for (const Equation& equation : shown)
      if (impossible(equation, proper, naming_, excesses_)) return {};
    return "what is shown is no contradiction";
  }

  // The shown equation is the asked expression (times a number) minus a constant, or minus the quantities in
  // terms of which it is asked.
  std::string found(const std::vector<Equation>& shown) {
    if (goal_.claims.size() != 1 || goal_.claims[0].relation.expressions.size() != 1)
      return "one quantity is asked for";
    if (shown.size() != 1) return "one value is to be shown";
    Claims claims;
    std::vector<Equation> terms;
    for (const Quantity& quantity : goal_.in_terms_of) {
      Expression alone;
      alone.terms.push_back({1, quantity, {}});
      terms.push_back(equation_of(alone, identity_, naming_, claims));
    }
    Equation asked = equation_of(goal_.claims[0].relation.expressions[0], identity_, naming_, claims);
    if (!claims.readable) return "what is asked has no meaning";
    if (asked.is_constant()) return shown[0].is_zero() ? "" : "what is asked is known without a proof";
    Equation value = shown[0];
    for (Equation& term : terms) term.constant = 0;
    asked.constant = 0;
    value.constant = 0;
    asked = modulo(asked, terms);
    value = modulo(value, terms);
    if (asked.is_constant() || value.is_constant()) return "the goal is not what was asked for";
    const auto& [key, coefficient] = *asked.terms.begin();
    const auto match = value.terms.find(key);
    if (match == value.terms.end()) return "the goal is not what was asked for";
    value.add(asked, -(match->second / coefficient));
    return value.is_zero() ? "" : "the goal is not what was asked for";
  }

  std::string proved(const std::vector<Equation>& shown) {
    if (goal_.claims.empty()) return "nothing was claimed";
    for (const Phrase& phrase : goal_.claims) {
      const std::string what = "the claim " + describe(phrase, statement_.names);
      const Claims claims = claims_of(phrase, identity_, naming_);
      const Placement placement = placement_of(phrase, identity_);
      if (!claims.readable || !claims.complete || !placement.readable)
        return what + " cannot be checked";
      for (const Equation& difference : claims.positive)
        if (!excesses_.surely_positive(difference, naming_) &&
            std::none_of(shown.begin(), shown.end(), [&](const Equation& e) {
              return excesses_.surely_positive(Equation(difference).add(e, -1), naming_);
            }))
          return what + " is not shown";
      std::vector<std::vector<Equation>> wanted = claims.groups;  // of each group, one equation
      if (!claims.choice.empty()) wanted.push_back(claims.choice);
      for (const auto& group : wanted)
        if (std::none_of(group.begin(), group.end(), [&](const Equation& e) { return in_span(e, shown); }))
          return what + " is not shown";
      if (!positions_.follows(placement)) return what + " is not known of the figure";
    }
    return {};
  }

  const Proof& proof_;
  const Statement& statement_;
  const Goal& goal_;
  const Catalogue& catalogue_;
  const UnknownTable& unknowns_;
  const std::vector<Sketch>& sketches_;
  Points identity_;
  Positions text_;          // what follows from the sentences alone
  Positions positions_{0};  // with what the proof sees, and what it has shown
  Naming naming_{positions_};
  Excesses excesses_;
  std::vector<Position> unsettled_;
};

}  // namespace

CheckReport check(const Proof& proof, const Statement& statement, const Goal& goal,
                  const Catalogue& catalogue, const UnknownTable& unknowns,
                  const std::vector<Sketch>& sketches) {
  return Replay(proof, statement, goal, catalogue, unknowns, sketches).run();
}

}  // namespace prover
