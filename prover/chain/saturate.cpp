#include "prover/chain/saturate.hpp"

#include <algorithm>
#include <map>
#include <optional>

#include "prover/algebra/positive.hpp"
#include "prover/base/log.hpp"
#include "prover/chain/inequalities.hpp"
#include "prover/chain/knowledge.hpp"
#include "prover/chain/matcher.hpp"
#include "prover/chain/shapes.hpp"
#include "prover/chain/tied_parts.hpp"
#include "prover/chain/triangle_pairs.hpp"
#include "prover/statement/canonical_fact.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

bool is_of_circles(const Phrase& phrase) {
  if (phrase.predicate == Predicate::circle_cyclic || phrase.predicate == Predicate::concyclic_cyclic ||
      phrase.predicate == Predicate::diameter)
    return true;
  const auto kind = fact_kind_of(phrase);
  return kind == FactKind::circle || kind == FactKind::concyclic || kind == FactKind::tangent ||
         kind == FactKind::tangent_through;
}

// A circle that no sentence speaks of is a new line, as it were: where the text has none, rules that only find a
// circle with its centre, or a tangent, are left out. (Concyclic points are found everywhere.)
std::vector<bool> in_use(const Catalogue& catalogue, std::vector<bool> allowed, const Statement& statement) {
  bool circles = std::any_of(statement.givens.begin(), statement.givens.end(),
                             [](const Given& given) { return is_of_circles(given.phrase); });
  for (const Goal& goal : statement.goals)
    circles = circles || std::any_of(goal.claims.begin(), goal.claims.end(), is_of_circles);
  for (std::size_t i = 0; i < catalogue.rules.size() && !circles; ++i) {
    const auto& then = catalogue.rules[i].then;
    if (!then.empty() && std::all_of(then.begin(), then.end(), [](const Phrase& phrase) {
          return is_of_circles(phrase) && fact_kind_of(phrase) != FactKind::concyclic;
        }))
      allowed[i] = false;
  }
  return allowed;
}

// The rules of one run, sorted by how they are matched. Those that rest on facts get a matcher when facts of their
// kinds are first known.
class RuleBook {
 public:
  RuleBook(const Catalogue& catalogue, const std::vector<bool>& allowed, std::size_t most_tried, Knowledge& knowledge)
      : plans(PlanBook::of(catalogue)), catalogue_(catalogue), allowed_(allowed), most_tried_(most_tried),
        knowledge_(knowledge) {
    for (const RuleId id : plans->pair_rules())
      if (allowed_[id.index()])
        pair_rules.emplace_back(Matcher(catalogue, id, *plans, knowledge), std::nullopt);
    for (auto& [matcher, pairs] : pair_rules) pairs.emplace(catalogue[matcher.rule()], matcher, knowledge);
    for (const RuleId id : plans->figure_rules()) {
      if (!allowed_[id.index()]) continue;
      if (auto tied = TiedParts::of(catalogue[id]))
        tied_rules.emplace_back(Matcher(catalogue, id, *plans, knowledge), std::move(*tied));
      else
        figure_rules_.push_back(id);
    }
  }

  std::shared_ptr<const PlanBook> plans;
  std::vector<std::pair<Matcher, std::optional<TrianglePairs>>> pair_rules;
  std::vector<std::pair<Matcher, TiedParts>> tied_rules;

  RuleId shape(Builtin kind) const { return plans->shape(kind); }
  void match_figure() {
    for (const RuleId id : figure_rules_) {
      Matcher matcher(catalogue_, id, *plans, knowledge_, most_tried_);
      matcher.match_figure();
      tried_ += matcher.tried();
    }
  }
  std::size_t tried() const {
    std::size_t sum = tried_;
    for (const auto& [id, matcher] : fact_rules_) sum += matcher.tried();
    return sum;
  }
  void match_facts(std::size_t since, std::size_t until) {
    FactKinds fresh = 0;
    for (std::size_t f = since; f < until; ++f) fresh |= only(knowledge_.facts()[f].kind);
    known_ |= fresh;
    for (const RuleId id : plans->fact_rules(fresh, known_)) {
      if (!allowed_[id.index()]) continue;
      const auto matcher = fact_rules_.try_emplace(id, catalogue_, id, *plans, knowledge_, most_tried_).first;
      matcher->second.match_facts(since, until);
    }
  }

 private:
  const Catalogue& catalogue_;
  const std::vector<bool>& allowed_;
  std::size_t most_tried_;
  Knowledge& knowledge_;
  std::vector<RuleId> figure_rules_;
  std::map<RuleId, Matcher> fact_rules_;
  FactKinds known_ = 0;
  std::size_t tried_ = 0;
};

void offer_givens(const Statement& statement, const Catalogue& catalogue, RuleId given, bool inequalities, Knowledge& knowledge) {
  for (std::size_t i = 0; i < statement.givens.size(); ++i) {
    std::vector<Form> says = given_forms(statement.givens[i].phrase, knowledge.arrangement, knowledge.unknowns);
    if (inequalities)
      for (const Form& difference : given_differences(statement.givens[i].phrase, knowledge.arrangement, knowledge.unknowns))
        says.push_back(more_than_zero(difference, knowledge.unknowns));
    if (says.empty()) continue;
    Instance instance;
    instance.rule = given;
    instance.hypothesis = static_cast<int>(i);
    instance.conclusions = std::move(says);
    instance.cost = catalogue[given].cost;
    knowledge.offer(instance);
  }
}

void offer_joins(const Catalogue& catalogue, RuleId join, Knowledge& knowledge) {
  const Arrangement& figure = knowledge.arrangement;
  for (std::size_t l = 0; l < figure.line_count(); ++l) {
    const LineId line(static_cast<std::int64_t>(l));
    if (!figure.is_joined(line)) continue;
    Instance instance;
    instance.rule = join;
    instance.places = figure.points_on(line);
    instance.cost = catalogue[join].cost;
    instance.conclusions.push_back(Form::of(point_fact(FactKind::joined, instance.places, knowledge.unknowns)));
    knowledge.offer(instance);
  }
}

bool reached(const std::vector<Form>& goal, const Knowledge& knowledge) {
  return !goal.empty() &&
         std::all_of(goal.begin(), goal.end(), [&](const Form& form) { return knowledge.entails(form); });
}

// An angle that would not lie between 0° and 180°, a length that is not positive, or such quantities that would make a
// positive sum without being there (x + y + 20 = 0): no such figure exists.
std::vector<Form> impossible_values(const Knowledge& knowledge) {
  constexpr std::size_t enough = 6;
  std::vector<Form> found;
  const auto is_size = [&](UnknownId id) {
    const UnknownKind kind = knowledge.unknowns[id].kind;
    return kind == UnknownKind::angle || kind == UnknownKind::length || kind == UnknownKind::excess;
  };
  for (std::size_t i = 0; i < knowledge.unknowns.size(); ++i) {
    const UnknownId id(static_cast<std::int64_t>(i));
    if (!is_size(id)) continue;
    const auto value = knowledge.system().value(id);
    if (!value) continue;
    if (value->sign() <= 0 || (knowledge.unknowns[id].kind == UnknownKind::angle && *value >= Rational(180)))
      found.push_back(Form::of(id).add(Form::number(-*value)));
    if (found.size() == enough) return found;
  }
  const Form* shortest = nullptr;
  for (std::size_t i = 0; i < knowledge.system().rank(); ++i) {
    const Form& row = knowledge.system().row(i);
    const bool cannot_be = row.constant.sign() >= 0 && std::all_of(row.terms.begin(), row.terms.end(), [&](const auto& t) {
                             return t.second.sign() > 0 && is_size(t.first);
                           });
    if (cannot_be && (shortest == nullptr || row.terms.size() < shortest->terms.size())) shortest = &row;
  }
  if (shortest != nullptr) found.push_back(*shortest);
  return found;
}

}  // namespace

Saturation saturate(const Statement& statement, const Arrangement& arrangement, const Catalogue& catalogue,
                    UnknownTable& unknowns, const std::vector<Form>& goal, const ChainOptions& options,
                    const Budget& budget) {
  Knowledge knowledge(arrangement, unknowns, budget);
  const std::vector<bool> used = in_use(catalogue, options.allowed, statement);
  RuleBook book(catalogue, used, options.most_tried, knowledge);
  auto cost = [&](RuleId rule) { return catalogue[rule].cost; };
  auto may = [&](RuleId rule) { return rule.valid() && options.allowed[rule.index()]; };

  offer_givens(statement, catalogue, book.shape(Builtin::given), options.inequalities, knowledge);
  if (book.shape(Builtin::join).valid()) offer_joins(catalogue, book.shape(Builtin::join), knowledge);
  if (const RuleId r = book.shape(Builtin::angle_addition); may(r)) offer_angle_addition(r, cost(r), knowledge);
  if (const RuleId r = book.shape(Builtin::segment_addition); may(r)) offer_segment_addition(r, cost(r), knowledge);
  if (const RuleId r = book.shape(Builtin::angles_on_a_straight_line); may(r))
    offer_straight_lines(r, cost(r), knowledge);
  if (const RuleId r = book.shape(Builtin::angles_at_a_point); may(r)) offer_round_points(r, cost(r), knowledge);
  offer_polygon_sums(book.shape(Builtin::quadrilateral_angle_sum), book.shape(Builtin::polygon_interior_sum),
                     catalogue, options.allowed, statement, knowledge);
  if (const RuleId r = book.shape(Builtin::polygon_exterior_sum); may(r))
    offer_exterior_sums(r, cost(r), statement, knowledge);
  book.match_figure();
  knowledge.settle();

  Saturation result;
  const RuleId sas = book.shape(Builtin::similar_sas), sss = book.shape(Builtin::similar_sss);
  const RuleId similar_sides = book.shape(Builtin::similar_parts_sides);
  std::vector<std::array<PointId, 3>> triangles;
  if (!book.pair_rules.empty() || may(sas) || may(sss) || options.inequalities) triangles = drawn_triangles(arrangement);
  std::optional<Inequalities> inequalities;
  if (options.inequalities) inequalities.emplace(catalogue, used, knowledge);
  for (std::size_t facts_seen = 0;;) {
    ++result.rounds;
    // From an absurdity everything follows, in ways that nobody wants to read: the first one is taken.
    result.impossible = impossible_values(knowledge);
    if (knowledge.contradictory() || !result.impossible.empty()) {
      result.stop = StopReason::saturated;
      break;
    }
    if (options.stop_at_goal && reached(goal, knowledge)) {
      result.stop = StopReason::goal_reached;
      break;
    }
    if (budget.exhausted() || knowledge.full()) {
      result.stop = budget.exhausted() ? budget.reason() : StopReason::instance_limit;
      break;
    }
    const std::size_t facts_now = knowledge.facts().size(), before = knowledge.version();
    if (facts_now > facts_seen) {
      book.match_facts(facts_seen, facts_now);
      offer_regular_polygons({book.shape(Builtin::regular_polygon_angles), book.shape(Builtin::regular_polygon_sides),
                              book.shape(Builtin::regular_polygon_equal_angles)},
                             catalogue, options.allowed, facts_seen, knowledge);
    }
    facts_seen = facts_now;
    for (auto& [matcher, pairs] : book.pair_rules) pairs->match(triangles);
    for (auto& [matcher, tied] : book.tied_rules) tied.match(matcher, knowledge);
    offer_similar_triangles(sas, sss, catalogue, options.allowed, triangles, knowledge);
    if (may(similar_sides)) offer_similar_sides(similar_sides, cost(similar_sides), knowledge);
    if (inequalities) inequalities->match(triangles);
    const bool news = knowledge.settle();
    log::debug("round {}: {} facts, rank {}, {} instances offered", result.rounds, knowledge.facts().size(),
               knowledge.version(), knowledge.offered());
    const bool cut = budget.exhausted() || knowledge.full();  // nothing new, because nothing was looked at
    if (!cut && !news && knowledge.version() == before && knowledge.facts().size() == facts_now) {
      result.stop = StopReason::saturated;
      break;
    }
  }
  result.contradictory = knowledge.contradictory();
  if (!result.contradictory && result.impossible.empty()) result.impossible = impossible_values(knowledge);
  if (options.inequalities && !result.contradictory && result.impossible.empty())
    if (auto sum = positive_sum_that_is_zero(knowledge.system(), unknowns)) result.impossible.push_back(std::move(*sum));
  result.zero_is_one = result.contradictory;
  result.contradictory = result.contradictory || !result.impossible.empty();
  result.matches = knowledge.offered();
  result.tried = book.tried();
  result.instances = knowledge.take_fired();
  result.closure = knowledge.take_system();
  return result;
}

}  // namespace prover
