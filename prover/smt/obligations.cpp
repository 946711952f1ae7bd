#include "prover/smt/obligations.hpp"

namespace prover {
namespace {

bool known(const Form& form, const UnknownTable& unknowns) {
  for (const auto& [unknown, coefficient] : form.terms)
    if (!unknown.valid() || unknown.index() >= unknowns.size()) return false;
  return true;
}

bool known(const std::vector<Form>& forms, const UnknownTable& unknowns) {
  for (const Form& form : forms)
    if (!known(form, unknowns)) return false;
  return true;
}

// The cited conclusions, or false when one does not exist or comes no earlier than the step that cites it.
bool cite(const Proof& proof, const Combination& combination, std::size_t before,
          std::vector<const Form*>& from) {
  for (const auto& part : combination.parts) {
    if (part.step < 0 || static_cast<std::size_t>(part.step) >= before) return false;
    const auto& conclusions = proof.steps[static_cast<std::size_t>(part.step)].instance.conclusions;
    if (part.conclusion < 0 || static_cast<std::size_t>(part.conclusion) >= conclusions.size()) return false;
    from.push_back(&conclusions[static_cast<std::size_t>(part.conclusion)]);
  }
  return true;
}

}  // namespace

Obligations obligations_of(const Proof& proof, const UnknownTable& unknowns) {
  Obligations result;
  const auto malformed = [&](const std::string& why) {
    result.list.clear();
    result.malformed = why;
    return result;
  };
  Obligation whole;
  whole.name = "the whole proof";
  whole.whole = true;
  whole.denies = !proof.contradiction;

  for (std::size_t s = 0; s < proof.steps.size(); ++s) {
    const ProofStep& step = proof.steps[s];
    const std::string name = "step " + std::to_string(s + 1);
    if (!known(step.instance.premises, unknowns) || !known(step.instance.conclusions, unknowns))
      return malformed(name + " speaks of an unknown that is not in the table");
    if (step.premises.size() != step.instance.premises.size())
      return malformed(name + " does not say where each of its premises comes from");
    for (std::size_t p = 0; p < step.premises.size(); ++p) {
      Obligation obligation;
      obligation.name = name + ", premise " + std::to_string(p + 1);
      if (!cite(proof, step.premises[p], s, obligation.from))
        return malformed(obligation.name + " cites what has not been shown before");
      obligation.claims.push_back(&step.instance.premises[p]);
      result.list.push_back(std::move(obligation));
    }
    for (const Form& conclusion : step.instance.conclusions) whole.from.push_back(&conclusion);
  }

  if (proof.goal.empty()) return malformed("the proof has no goal");
  if (!known(proof.goal, unknowns))
    return malformed("the goal speaks of an unknown that is not in the table");
  if (proof.goal.size() != proof.conclusion.size())
    return malformed("the proof does not say where each part of the goal comes from");
  for (std::size_t g = 0; g < proof.goal.size(); ++g) {
    Obligation obligation;
    obligation.name = "goal " + std::to_string(g + 1);
    if (!cite(proof, proof.conclusion[g], proof.steps.size(), obligation.from))
      return malformed(obligation.name + " cites what has not been shown");
    obligation.claims.push_back(&proof.goal[g]);
    result.list.push_back(std::move(obligation));
    whole.claims.push_back(&proof.goal[g]);
  }
  if (!known(proof.positive, unknowns)) return malformed("the goal speaks of an unknown that is not in the table");
  for (const Form& difference : proof.positive) whole.positive.push_back(&difference);
  result.list.push_back(std::move(whole));
  return result;
}

}  // namespace prover
