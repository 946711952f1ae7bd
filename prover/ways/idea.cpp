#include "prover/ways/idea.hpp"

#include <algorithm>

#include "prover/search/derivation.hpp"
#include "prover/ways/form_text.hpp"

namespace prover {

namespace {

// The reduced echelon form of a span of equations: the same for all that span it. Unknowns in rising order, constants last.
std::vector<Form> echelon(const std::vector<Form>& forms) {
  std::vector<Form> rows;
  for (Form form : forms) {
    for (const Form& row : rows)
      if (!row.terms.empty()) form.add(row, -form.coefficient(row.terms[0].first));
    if (form.is_zero()) continue;
    form = form.normalised();
    if (!form.terms.empty())
      for (Form& row : rows) row.add(form, -row.coefficient(form.terms[0].first));
    rows.push_back(std::move(form));
  }
  std::sort(rows.begin(), rows.end(), [](const Form& a, const Form& b) { return text_of(a) < text_of(b); });
  return rows;
}

}  // namespace

IdeaNames::IdeaNames(const CarryingProblem& carrying, std::vector<Exchange> symmetries, const Arrangement& arrangement,
                     UnknownTable& unknowns)
    : carrying_(carrying), symmetries_(std::move(symmetries)), arrangement_(arrangement), unknowns_(unknowns) {
  for (std::size_t c = 0; c < carrying.fact.size(); ++c)
    if (carrying.fact[c] < 0) always_.push_back(static_cast<int>(c));
  for (std::size_t f = 0; f < carrying.facts.size(); ++f) of_kind_[carrying.facts[f].kind].push_back(static_cast<int>(f));
}

bool IdeaNames::gives_goal(const std::vector<int>& facts) const {
  std::vector<int> members = always_;
  for (const int f : facts) members.push_back(carrying_.facts[static_cast<std::size_t>(f)].candidate);
  std::sort(members.begin(), members.end());
  return derive(carrying_.problem, members).reached;
}

// The whole says no more than its parts: its conclusions follow from theirs and its own premises, by small change.
bool IdeaNames::made_of(const CarryingFact& whole, const std::vector<const CarryingFact*>& parts) const {
  LinearSystem said;
  for (const Form& premise : whole.premises) said.add(premise);
  for (const CarryingFact* part : parts)
    for (const Form& conclusion : part->conclusions) said.add(conclusion);
  const auto follow = [&](const std::vector<Form>& forms) {
    return std::all_of(forms.begin(), forms.end(), [&](const Form& f) { return said.entails(f); });
  };
  for (bool changed = true; changed && !follow(whole.conclusions);) {
    changed = false;
    for (const Candidate& step : carrying_.small_steps)
      if (follow(step.premises))
        for (const Form& f : step.conclusions) changed |= said.add(f) == LinearSystem::Added::new_row;
  }
  return follow(whole.conclusions);
}

// Puts whole facts into the place of their parts as long as the goal still follows.
std::vector<int> IdeaNames::composed(std::vector<int> facts) const {
  const auto at = [&](int f) -> const CarryingFact& { return carrying_.facts[static_cast<std::size_t>(f)]; };
  const auto try_one = [&](const IdeaTable::Composition& composition) {
    std::vector<std::string> kinds;
    const Catalogue& catalogue = standard_catalogue();
    for (const std::string& part : composition.parts)
      if (const auto rule = catalogue.find(part)) kinds.push_back(idea_table().fact(catalogue[*rule]));
    const auto wholes = of_kind_.find(composition.rule);
    if (kinds.empty() || kinds.size() > 2 || wholes == of_kind_.end()) return false;
    for (const int a : facts) {
      if (at(a).kind != kinds[0]) continue;
      for (const int b : facts) {
        if (kinds.size() == 1 ? b != a : b == a || at(b).kind != kinds[1]) continue;
        std::vector<const CarryingFact*> parts{&at(a)};
        if (kinds.size() == 2) parts.push_back(&at(b));
        for (const int w : wholes->second) {
          if (w == a || w == b || !made_of(at(w), parts)) continue;
          std::vector<int> other = facts;
          std::erase_if(other, [&](int f) { return f == a || f == b; });
          other.push_back(w);
          std::sort(other.begin(), other.end());
          other.erase(std::unique(other.begin(), other.end()), other.end());
          if (!gives_goal(other)) continue;
          facts = std::move(other);
          return true;
        }
      }
    }
    return false;
  };
  for (bool changed = true; changed;) {
    changed = false;
    for (const auto& composition : idea_table().compositions()) changed |= try_one(composition);
  }
  return facts;
}

const IdeaNames::Image& IdeaNames::image(int fact, std::size_t symmetry) {
  const auto [place, fresh] = images_.try_emplace({fact, symmetry});
  if (!fresh) return place->second;
  const CarryingFact& f = carrying_.facts[static_cast<std::size_t>(fact)];
  for (const Form& form : f.conclusions) {
    const auto mirrored = image_of(form, symmetries_[symmetry], arrangement_, unknowns_);
    place->second.complete = place->second.complete && mirrored;
    if (mirrored) place->second.conclusions.push_back(carrying_.small_change.reduce(*mirrored));
  }
  return place->second;
}

// Empty when the figure has no such mirror image, which a symmetry of the drawn lines excludes.
std::string IdeaNames::name_under(const std::vector<int>& facts, std::size_t symmetry) {
  std::map<std::string, std::vector<Form>> said;  // by kind
  for (const int f : facts) {
    const Image& i = image(f, symmetry);
    if (!i.complete) return {};
    std::vector<Form>& all = said[carrying_.facts[static_cast<std::size_t>(f)].kind];
    all.insert(all.end(), i.conclusions.begin(), i.conclusions.end());
  }
  std::string name = ".";
  for (const auto& [kind, conclusions] : said) name += kind + "|" + text_of(echelon(conclusions)) + "\n";
  return name;
}

const std::string& IdeaNames::of(const std::vector<int>& facts) {
  const auto [place, fresh] = names_.try_emplace(facts);
  if (!fresh) return place->second;
  const std::vector<int> wholes = composed(facts);
  for (std::size_t s = 0; s < symmetries_.size(); ++s) {
    const std::string name = name_under(wholes, s);
    if (place->second.empty() || (!name.empty() && name < place->second)) place->second = name;
  }
  return place->second;
}

}  // namespace prover
