#include "prover/marking/bridge.hpp"

#include "prover/reading/reasons.hpp"

namespace prover {

namespace {

class Words {
 public:
  explicit Words(const Ground& ground)
      : ground_(ground), names_(ground.statement(), ground.arrangement(), ground.unknowns()),
        reasons_(ground.statement(), ground.options().catalogue, ground.unknowns(), ground.arrangement(), names_, ground.options().wording) {}

  std::string reason(int i) const { return reasons_.reason(ground_.instance(i)); }
  std::string step(int i) {
    const Instance& instance = ground_.instance(i);
    const Form& first = instance.conclusions.front();
    const std::string claim = is_fact(first, ground_.unknowns()) ? reasons_.fact_text(instance, first)
                              : names_.compares(first)           ? names_.inequality(first)
                                                                 : names_.equation(first);
    return claim + " (" + reason(i) + ")";
  }

 private:
  const Ground& ground_;
  NameBook names_;
  Reasons reasons_;
};

}  // namespace

std::vector<std::string> reasons_of(const Ground& ground, const std::vector<int>& instances) {
  std::vector<std::string> texts;
  if (instances.empty()) return texts;
  const Words words(ground);
  for (const int i : instances) texts.push_back(words.reason(i));
  return texts;
}

std::vector<std::string> steps_of(const Ground& ground, const std::vector<int>& instances) {
  std::vector<std::string> texts;
  if (instances.empty()) return texts;
  Words words(ground);
  for (const int i : instances) texts.push_back(words.step(i));
  return texts;
}

}  // namespace prover
