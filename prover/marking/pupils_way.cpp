#include "prover/marking/pupils_way.hpp"

#include <algorithm>
#include <set>

#include "prover/language/equation.hpp"
#include "prover/marking/support.hpp"
#include "prover/verdict/answer_of.hpp"

namespace prover {

namespace {

bool same_instance(const Instance& a, const Instance& b) {
  return a.rule == b.rule && a.places == b.places && a.hypothesis == b.hypothesis && a.conclusions == b.conclusions;
}

class PupilsWay {
 public:
  PupilsWay(const JudgeTask& task, Grounds& grounds, const std::vector<LineClaim>& claims, Judgement& judgement)
      : task_(task), grounds_(grounds), claims_(claims), judgement_(judgement) {}

  void add() {
    std::size_t first = 0;
    for (const LineClaim& claim : claims_)
      if (!claim.wrong) first = std::max(first, claim.ground);
    for (std::size_t g = first; g < grounds_.count(); ++g)
      if (add_on(g)) return;
    for (std::size_t g = 0; g < first; ++g)
      if (add_on(g)) return;
    if (!judgement_.problem.proofs.empty()) judgement_.way = judgement_.problem.proofs[0];
  }

 private:
  // One goal for all: a question with several parts is answered by one proof of them all.
  std::optional<Goal> whole_goal(const Ground& ground, GoalForms& forms) const {
    Goal whole;
    for (std::size_t k = 0; k < task_.goals; ++k) {
      const Goal& goal = task_.statement.goals[k];
      GoalForms one = goal_forms(goal, ground.saturation().closure, ground.arrangement(), ground.unknowns(), task_.statement.names);
      if (!one.reached) return std::nullopt;
      forms.forms.insert(forms.forms.end(), one.forms.begin(), one.forms.end());
      forms.positions.insert(forms.positions.end(), one.positions.begin(), one.positions.end());
      forms.positive.insert(forms.positive.end(), one.positive.begin(), one.positive.end());
      if (task_.goals == 1) return goal;
      whole.kind = GoalKind::prove;
      whole.text += (whole.text.empty() ? "" : "; ") + goal.text;
      if (goal.kind == GoalKind::find && one.number)
        whole.claims.push_back(equation(goal.claims[0].relation.expressions[0], *one.number));
      else if (goal.kind == GoalKind::find)
        return std::nullopt;
      else
        whole.claims.insert(whole.claims.end(), goal.claims.begin(), goal.claims.end());
    }
    return whole;
  }

  bool add_on(std::size_t g) {
    const Ground& ground = grounds_.at(g);
    GoalForms forms;
    const auto goal = whole_goal(ground, forms);
    if (!goal) return false;
    AttemptOptions options = ground.options();
    const Scene scene{task_.statement, ground.arrangement(), ground.unknowns(), ground.views(), options};
    const Claim claim{*goal, forms.forms, forms.positions, false, forms.positive};
    GoalSearch search = goal_search(ground.saturation(), claim, scene);
    const std::vector<const Instance*> shown = shown_instances(g);
    for (std::size_t i = 0; i < search.instances.size(); ++i)
      if (std::any_of(shown.begin(), shown.end(), [&](const Instance* s) { return same_instance(*s, *search.instances[i]); }))
        search.problem.candidates[i].weight = 0;
    auto light = best_set(search, claim, scene, grounds_.budget().share(0.3));
    if (!light) return false;
    StageTimes times;
    CheckedProof checked = checked_proof(search, std::move(*light), claim, scene, grounds_.budget(), times);
    if (!trusted(checked)) return false;
    judgement_.way = answer_proof(checked, task_.statement, *goal, "", options);
    credit(g, checked.proof);
    return true;
  }

  std::vector<const Instance*> shown_instances(std::size_t g) {
    std::vector<const Instance*> shown;
    for (const LineClaim& claim : claims_)
      if (!claim.wrong && claim.shown && claim.ground <= g)
        for (const int i : claim.instances) shown.push_back(&grounds_.at(claim.ground).instance(i));
    if (g == 0) return shown;
    // Unknowns are numbered by each ground for itself: what is the same there is told by rule and places.
    return shown;
  }

  void credit(std::size_t g, const Proof& proof) {
    std::vector<AnswerStep>& steps = judgement_.way->steps;
    for (const LineClaim& claim : claims_) {
      if (claim.wrong) continue;
      JudgedLine& line = judgement_.lines[claim.line];
      if (!line.stated) continue;
      for (const AnswerStep& step : steps) {
        bool states = false, reasoned = false;
        for (const int m : step.made_of) {
          const Instance& instance = proof.steps[static_cast<std::size_t>(m)].instance;
          const auto is = [&](int i) {
            const Instance& other = grounds_.at(claim.ground).instance(i);
            return other.rule == instance.rule && other.places == instance.places && other.hypothesis == instance.hypothesis;
          };
          states = states || (claim.shown && std::any_of(claim.instances.begin(), claim.instances.end(), is));
          reasoned = reasoned || std::any_of(claim.reasoned.begin(), claim.reasoned.end(), is);
        }
        states = states || says(g, claim, step);
        if (!states) continue;
        if (std::find(line.steps.begin(), line.steps.end(), step.n) == line.steps.end()) line.steps.push_back(step.n);
        const bool needs_none = step.made_of.empty();
        if ((reasoned || needs_none) && line.reasoned && std::find(line.reasoned_steps.begin(), line.reasoned_steps.end(), step.n) == line.reasoned_steps.end())
          line.reasoned_steps.push_back(step.n);
      }
      std::sort(line.steps.begin(), line.steps.end());
    }
  }

  // The line says what the step says: its claim follows from the line with the givens and nothing cited.
  bool says(std::size_t g, const LineClaim& claim, const AnswerStep& step) {
    const Ground& ground = grounds_.at(g);
    const GroundClaim line = ground.claim(claim.phrase);
    if (!line.meant || line.forms.empty()) return false;
    std::vector<Diagnostic> ignored;
    Names names = task_.statement.names;
    std::vector<Phrase> phrases = parse_phrases(plain(step.claim), names, ignored);
    if (phrases.empty() || !ignored.empty() || names.points.size() != task_.statement.names.points.size()) return false;
    for (const Phrase& phrase : phrases) {
      const GroundClaim said = ground.claim(phrase);
      if (!said.meant || said.forms.empty()) return false;
      SupportQuestion question{said.forms, {}, {{line.forms.empty() ? 0 : 1, line.forms, true}}, ground.options().allowed, true, false, false};
      const auto one = support(ground, question, grounds_.budget());
      if (!one || one->lines.empty()) return false;
    }
    return true;
  }

  static std::string plain(const std::string& claim) {
    const std::size_t so = claim.rfind("so ");
    return so == claim.npos ? claim : claim.substr(so + 3);
  }

  const JudgeTask& task_;
  Grounds& grounds_;
  const std::vector<LineClaim>& claims_;
  Judgement& judgement_;
};

}  // namespace

void add_pupils_way(const JudgeTask& task, Grounds& grounds, const AttemptOptions&, const std::vector<LineClaim>& claims,
                    Judgement& judgement) {
  PupilsWay(task, grounds, claims, judgement).add();
}

}  // namespace prover
