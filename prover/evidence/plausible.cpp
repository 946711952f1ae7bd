#include "prover/evidence/plausible.hpp"

#include <algorithm>
#include <set>

#include "prover/proof/assemble.hpp"
#include "prover/reading/order.hpp"
#include "prover/rule/mistakes.hpp"
#include "prover/statement/canonical_fact.hpp"
#include "prover/statement/figure_text.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

// A wrong step is worth avoiding: an argument has as few of them as it can.
constexpr std::int64_t kWrongStep = 4 * kWeightUnit;
constexpr std::size_t kMostPointsToJoin = 10;
// From a wrong rule much follows that nobody would read.
constexpr std::size_t kMostInstances = 10'000;
constexpr auto kLongest = std::chrono::milliseconds(800);

struct Argument {
  AnswerPlausible shown;
  std::size_t unused = 0;   // givens about sizes that it makes nothing of: who argues uses what is given
  std::int64_t weight = 0;
  friend bool operator<(const Argument& a, const Argument& b) {
    return a.unused != b.unused ? a.unused < b.unused : a.weight < b.weight;
  }
};

// The words of a figure, and the one figure that the reader has before her.
Arrangement before_the_reader(const Statement& statement, const std::vector<Sketch>& views, bool join_points) {
  std::vector<Coordinates> coordinates;
  for (const Sketch& sketch : views) coordinates.push_back(sketch.points);
  Arrangement arrangement(figure_text(statement), std::move(coordinates));
  if (join_points)
    for (std::size_t i = 0; i < arrangement.point_count(); ++i)
      for (std::size_t j = i + 1; j < arrangement.point_count(); ++j)
        if (!statement.hidden[i] && !statement.hidden[j])
          arrangement.join(PointId(static_cast<std::int64_t>(i)), PointId(static_cast<std::int64_t>(j)));
  arrangement.freeze();
  return arrangement;
}

class Search {
 public:
  Search(const MistakeBook& book, const Statement& statement, const Goal& goal, const AttemptOptions& options,
         const UnknownTable& known, const Budget& budget)
      : book_(book), statement_(statement), goal_(goal), options_(options), budget_(budget) {
    budget_.max_instances = kMostInstances;
    const auto latest = Budget::Clock::now() + kLongest;
    if (!budget_.deadline || *budget_.deadline > latest) budget_.deadline = latest;
    for (std::size_t i = 0; i < known.size(); ++i)
      if (const Unknown& unknown = known[UnknownId(static_cast<std::int64_t>(i))]; unknown.kind == UnknownKind::fact)
        facts_.insert(unknown.fact);
  }

  std::optional<Argument> lightest(const std::vector<Sketch>& views, bool join_points) const {
    std::optional<Argument> best;
    for (const Mistake& mistake : book_.mistakes) {
      if (budget_.exhausted()) break;
      const auto instead = book_.catalogue.find(mistake.instead);
      if (!options_.allowed[instead->index()] || !may_apply(book_.catalogue[mistake.rule])) continue;
      auto one = with(mistake, views, join_points);
      if (one && (!best || *one < *best)) best = std::move(one);
    }
    return best;
  }

 private:
  // No circle, no mistake about circles: only one kind of mistake is made, so what it rests on is true.
  bool may_apply(const Rule& rule) const {
    return std::all_of(rule.given.begin(), rule.given.end(), [&](const Phrase& phrase) {
      const auto kind = fact_kind_of(phrase);
      return !kind || facts_.contains(*kind);
    });
  }

  std::size_t unused_sizes(const std::vector<Instance>& used) const {
    std::size_t unused = 0;
    UnknownTable unknowns;
    const Arrangement arrangement = before_the_reader(statement_, {}, false);
    for (std::size_t g = 0; g < statement_.givens.size(); ++g)
      unused += !given_forms(statement_.givens[g].phrase, arrangement, unknowns).empty() &&
                std::none_of(used.begin(), used.end(), [&](const Instance& i) { return i.hypothesis == static_cast<int>(g); });
    return unused;
  }

  std::optional<Argument> with(const Mistake& mistake, const std::vector<Sketch>& views, bool join_points) const {
    AttemptOptions options{book_.catalogue, options_.allowed, options_.measure, options_.wording, join_points};
    options.allowed.resize(book_.catalogue.rules.size(), false);
    options.allowed[mistake.rule.index()] = true;
    const Arrangement arrangement = before_the_reader(statement_, views, join_points);
    UnknownTable unknowns;
    note_goal(goal_, arrangement, unknowns);
    ChainOptions chain;
    chain.allowed = options.allowed;
    const Saturation saturation = saturate(statement_, arrangement, book_.catalogue, unknowns, {}, chain, budget_.share(0.2));
    const GoalForms forms = goal_forms(goal_, saturation.closure, arrangement, unknowns, statement_.names);
    if (forms.unsupported || !forms.missing_position.empty() || forms.forms.empty()) return std::nullopt;
    const Scene scene{statement_, arrangement, unknowns, views, options};
    GoalSearch search = goal_search(saturation, {goal_, forms.forms, forms.positions, false}, scene);
    bool fires = false;
    for (std::size_t i = 0; i < search.instances.size(); ++i)
      if (search.instances[i]->rule == mistake.rule) {
        search.problem.candidates[i].weight += kWrongStep;
        fires = true;
      }
    if (!fires) return std::nullopt;
    const auto light = lightest_set(search.problem, {budget_.share(0.1), {}, nullptr});
    if (!light) return std::nullopt;
    return told(mistake, search, *light, forms, scene);
  }

  std::optional<Argument> told(const Mistake& mistake, const GoalSearch& search, const LightSet& light, const GoalForms& forms,
                               const Scene& scene) const {
    std::vector<Instance> ordered;
    for (const int i : light.members) ordered.push_back(*search.instances[static_cast<std::size_t>(i)]);
    ordered = order_for_reading(std::move(ordered), forms.forms);
    // With a wrong rule the chain may contradict itself; an argument that does so on the way persuades nobody.
    const Instance* wrong = nullptr;
    LinearSystem so_far;
    const auto follows = [&](const Form& form) { return so_far.entails(form); };
    for (const Instance& instance : ordered) {
      if (!wrong && instance.rule == mistake.rule) wrong = &instance;
      if (!std::all_of(instance.premises.begin(), instance.premises.end(), follows)) return std::nullopt;
      for (const Form& form : instance.conclusions) so_far.add(form);
    }
    if (!wrong || so_far.contradictory() || !std::all_of(forms.forms.begin(), forms.forms.end(), follows)) return std::nullopt;
    const Rule& rule = book_.catalogue[mistake.rule];
    Argument out;
    out.weight = light.weight;
    out.unused = unused_sizes(ordered);
    out.shown.mistake = rule.id;
    out.shown.name = rule.title;
    out.shown.goal = goal_.text;
    out.shown.instead = mistake.instead;
    out.shown.why = rule.why;
    std::vector<std::string> names;
    for (const PointId p : wrong->places) names.push_back(statement_.names.of(p));
    out.shown.missing = fill_missing(book_, mistake, names);
    const Proof argument = assemble(std::move(ordered), forms.forms, scene.unknowns, scene.arrangement);
    const Reading reading = reading_of(argument, statement_, goal_, book_.catalogue, scene.unknowns, scene.arrangement, options_.wording);
    for (const ReadingLine& line : reading.lines) {
      std::string claim = line.claim;
      for (const std::string& row : line.rows)
        if (line.claim.empty()) claim += (claim.empty() ? "" : " ") + row;
      const int n = static_cast<int>(out.shown.steps.size()) + 1;
      out.shown.steps.push_back({n, claim, line.rows, line.rule, line.reason, line.uses, line.closing, line.places, line.made_of});
      if (line.rule == rule.id && out.shown.wrong_step == 0) out.shown.wrong_step = n;
    }
    if (out.shown.wrong_step == 0) return std::nullopt;  // it is inside another step: nothing to point at
    return out;
  }

  const MistakeBook& book_;
  const Statement& statement_;
  const Goal& goal_;
  const AttemptOptions& options_;
  Budget budget_;
  std::set<FactKind> facts_;  // of which the problem speaks, or what follows from it
};

bool breaks(const Goal& goal, const Sketch& figure) {
  return std::any_of(goal.claims.begin(), goal.claims.end(), [&](const Phrase& claim) { return !holds(claim, figure, 1e-3); });
}

}  // namespace

std::optional<AnswerPlausible> plausible_argument(const Statement& statement, const Solved& solved, const AttemptOptions& options,
                                                  const Budget& budget) {
  LoadedMistakes own;
  const MistakeBook* book = &standard_mistakes();
  if (options.catalogue.serial != standard_catalogue().serial) {
    own = load_mistakes(options.catalogue, builtin_mistake_files(), Examples::kept);
    book = &own.book;
  }
  for (const Goal& goal : statement.goals) {
    if (goal.kind != GoalKind::prove) continue;
    const auto& figures = solved.figures.sketches;
    const auto counter = std::find_if(figures.begin(), figures.end(), [&](const Sketch& figure) { return breaks(goal, figure); });
    if (counter == figures.end() || solved.cases.empty()) continue;
    const Search search(*book, statement, goal, options, solved.cases[0].attempt.workings->unknowns, budget);
    std::optional<Argument> found;
    for (const auto& [views, join_points] : {std::pair{std::vector<Sketch>{}, false}, {{*counter}, false}, {{*counter}, true}}) {
      if (join_points && statement.names.points.size() > kMostPointsToJoin) continue;
      auto one = search.lightest(views, join_points);
      if (one && (!found || *one < *found)) found = std::move(one);
      if (found && found->unused == 0) break;
    }
    if (found) return std::move(found->shown);
  }
  return std::nullopt;
}

}  // namespace prover
