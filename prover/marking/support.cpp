#include "prover/marking/support.hpp"

#include <algorithm>
#include <set>

#include "prover/search/lightest_set.hpp"

namespace prover {

namespace {

// Weights of the search, in its whole numbers: what nobody named is dear, a line with a gap before it less so.
constexpr std::int64_t kLine = 1, kFree = 10, kNamed = 1'000, kGappy = 30'000, kJoin = 20'000, kDefinition = 50'000, kTheorem = 100'000;

std::int64_t weight_of_rule(const Rule& rule, bool named) {
  if (rule.builtin == Builtin::given) return 0;
  if (rule.builtin == Builtin::join) return kJoin;
  if (!is_cited(rule)) return kFree;
  if (named) return kNamed;
  return rule.kind == RuleKind::definition ? kDefinition : kTheorem;
}

bool cites(const SupportQuestion& question, RuleId rule) { return rule.index() < question.named.size() && question.named[rule.index()]; }

// The search takes all equations for true of one figure. Among wrong lines they are not, so there a constant becomes a multiple
// of an unknown of its own that nothing settles: then only what the lines really give follows.
Form homogeneous(const Form& form, UnknownId one) {
  Form result;
  result.terms = form.terms;
  if (!form.constant.is_zero()) result.terms.emplace_back(one, form.constant);
  return result;
}

std::vector<Form> homogeneous(const std::vector<Form>& forms, UnknownId one) {
  std::vector<Form> result;
  for (const Form& form : forms) result.push_back(homogeneous(form, one));
  return result;
}

// Nothing when the members do not give what is asked, or exclude each other: from that everything would follow.
std::optional<Support> read(const Ground& ground, const SupportQuestion& question, const std::vector<int>& instance_of, const LightSet& light) {
  Support result;
  LinearSystem system;
  std::set<int> lines;
  bool all_given = true;
  for (const int m : light.members) {
    const int i = instance_of[static_cast<std::size_t>(m)];
    for (const Form& form : i < 0 ? question.lines[static_cast<std::size_t>(-1 - i)].forms : ground.instance(i).conclusions) system.add(form);
    if (i < 0) {
      lines.insert(question.lines[static_cast<std::size_t>(-1 - i)].number);
      all_given = false;
      continue;
    }
    result.instances.push_back(i);
    const Rule& rule = ground.rule_of(i);
    all_given = all_given && rule.builtin == Builtin::given;
    if (!is_cited(rule)) continue;
    if (cites(question, ground.instance(i).rule)) {
      result.named.push_back(i);
    } else {
      result.missing.push_back(i);
      ++(rule.kind == RuleKind::definition ? result.missing_definitions : result.missing_theorems);
    }
  }
  const auto follows = [&](const Form& form) { return system.entails(form); };
  if (system.contradictory() || !std::all_of(question.forms.begin(), question.forms.end(), follows)) return std::nullopt;
  result.lines.assign(lines.begin(), lines.end());
  result.only_givens = all_given && !result.instances.empty();
  for (const int i : result.missing) {
    if (ground.rule_of(i).kind == RuleKind::definition) continue;
    for (const Form& conclusion : ground.instance(i).conclusions)
      if (is_fact(conclusion, ground.unknowns()))
        for (const auto* others : {&result.named, &result.missing})
          for (const int other : *others)
            for (const Form& premise : ground.instance(other).premises)
              result.premise_missing = result.premise_missing || premise.normalised() == conclusion.normalised();
  }
  return result;
}

}  // namespace

bool is_cited(const Rule& rule) {
  return rule.builtin != Builtin::given && rule.builtin != Builtin::join && !rule.free_step && !rule.meaning;
}

std::optional<Support> support(const Ground& ground, const SupportQuestion& question, const Budget& budget) {
  SearchProblem problem;
  problem.goal = question.forms;
  std::vector<int> instance_of;  // by candidate; lines are negative: −1 − index
  for (std::size_t l = 0; l < question.lines.size(); ++l) {
    problem.candidates.push_back({{}, question.lines[l].forms, question.lines[l].shown ? kLine : kGappy});
    instance_of.push_back(-1 - static_cast<int>(l));
  }
  for (const int i : ground.relevant_to(question.forms)) {
    const Instance& instance = ground.instance(i);
    const Rule& rule = ground.rule_of(i);
    const bool is_named = cites(question, instance.rule);
    const bool barred = question.only_named && !(question.definitions_too && rule.kind == RuleKind::definition);
    if (is_cited(rule) && !is_named && (barred || !question.allowed[instance.rule.index()])) continue;
    problem.candidates.push_back({instance.premises, instance.conclusions, weight_of_rule(rule, is_named)});
    instance_of.push_back(i);
  }
  if (question.doubtful) {
    const UnknownId one(static_cast<std::int64_t>(ground.unknowns().size()));
    problem.goal = homogeneous(problem.goal, one);
    for (Candidate& candidate : problem.candidates) {
      candidate.premises = homogeneous(candidate.premises, one);
      candidate.conclusions = homogeneous(candidate.conclusions, one);
    }
  }
  const auto light = lightest_set(problem, {budget.share(0.2), {}, nullptr});
  return light ? read(ground, question, instance_of, *light) : std::nullopt;
}

}  // namespace prover
