// What is asked.
#include "prover/language/reader.hpp"

namespace prover {

void Reader::find(const Node& node, std::vector<Goal>& goals) {
  std::vector<Quantity> in_terms_of;
  if (const Node* names = node.child(Part::in_terms_of)) {
    for (const Node& child : names->children) in_terms_of.push_back(factor(child).terms.front().quantity);
  }
  std::vector<Expression> asked;
  for (const Node& child : node.children) {
    const std::size_t mistakes = draft_.diagnostics.size();
    if (child.part == Part::all_angles) {
      draft_.error(child.span, "this asks for more than one named thing",
                   "ask for each angle by its letters: \"find: angle KLM, angle LMK\"");
    } else if (child.part == Part::expression) {
      Expression read = expression(child);
      if (draft_.diagnostics.size() == mistakes) asked.push_back(std::move(read));
    } else if (child.part == Part::quantities) {
      const std::vector<Term> terms = quantities(child);
      if (draft_.diagnostics.size() > mistakes) continue;
      for (const Term& term : terms) asked.push_back({{term}, term.span});
    }
  }
  for (Expression& one : asked) {
    Goal goal;
    goal.kind = GoalKind::find;
    goal.span = one.span;
    goal.text = source(one.span);
    goal.in_terms_of = in_terms_of;
    Phrase phrase;
    phrase.span = one.span;
    phrase.relation.expressions.push_back(std::move(one));
    goal.claims.push_back(std::move(phrase));
    goals.push_back(std::move(goal));
    draft_.begin_unit(UnitKind::goal, goals.size() - 1);
  }
}

void Reader::prove(const Node& node, std::vector<Goal>& goals) {
  goals.emplace_back();
  draft_.begin_unit(UnitKind::goal, goals.size() - 1);
  Goal& goal = goals.back();
  goal.kind = GoalKind::prove;
  goal.span = node.span;
  goal.text = source(node.span);
  phrases_ = &goal.claims;
  for (const Node& child : node.children) clause(child);
}

}  // namespace prover
