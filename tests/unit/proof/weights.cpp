// The measures: what a citation costs. The order of what is compared is from rulings 7.11 and 7.13 of the classroom
// notes: a step is a cited theorem, definition or construction; joining two points is dear.
#include "prover/proof/weights.hpp"

#include <catch2/catch.hpp>

#include <numeric>

using namespace prover;

namespace {

std::int64_t weight(const std::string& rule, Measure measure) {
  static const Arrangement nowhere{FigureText{}, {}};
  Instance instance;
  instance.rule = *standard_catalogue().find(rule);
  return weight_of(instance, standard_catalogue(), nowhere, measure);
}

}  // namespace

TEST_CASE("a measure is known by its name, and by no other") {
  for (const Measure measure : measures()) CHECK(measure_from(name_of(measure)) == measure);
  CHECK_FALSE(measure_from("shortest"));
  CHECK_FALSE(measure_from(""));
}

TEST_CASE("no rule of the catalogue has a negative weight in any measure") {
  for (const Measure measure : measures())
    for (const Rule& rule : standard_catalogue().rules) {
      INFO(rule.id);
      CHECK(weight(rule.id, measure) >= 0);
    }
}

TEST_CASE("classroom: what a file says; a join is dearer than any theorem") {
  CHECK(weight("given", Measure::classroom) == 0);
  CHECK(weight("alternate-interior-angles", Measure::classroom) == kWeightUnit);
  CHECK(weight_as_cost(weight("congruent-sas", Measure::classroom)) == Rational(3, 2));
  for (const Rule& rule : standard_catalogue().rules)
    if (rule.kind != RuleKind::construction)
      CHECK(weight(rule.id, Measure::classroom) < weight("construction", Measure::classroom));
}

TEST_CASE("fewest-steps: every theorem, definition and construction is one step; what the files call free is none") {
  for (const char* step : {"alternate-interior-angles", "thirty-sixty-ninety", "perpendicular-definition", "construction"})
    CHECK(weight(step, Measure::fewest_steps) == kWeightUnit);
  std::vector<std::string> free;
  for (const Rule& rule : standard_catalogue().rules)
    if (rule.free_step) free.push_back(rule.id);
  CHECK(free == std::vector<std::string>{"angle-addition", "given", "segment-addition"});
  // Twenty additions are still less than one theorem.
  CHECK(20 * weight("angle-addition", Measure::fewest_steps) < weight("triangle-angle-sum", Measure::fewest_steps));
  CHECK(weight("given", Measure::fewest_steps) == 0);
}

TEST_CASE("early: the later the course teaches a rule, the dearer; what costs nothing to teach stays as it is") {
  const auto dearer = [](const char* rule) {
    return static_cast<double>(weight(rule, Measure::early)) / static_cast<double>(weight(rule, Measure::classroom));
  };
  CHECK(dearer("vertical-angles") < dearer("triangle-angle-sum"));
  CHECK(dearer("triangle-angle-sum") < dearer("inscribed-angle-centre"));
  CHECK(dearer("inscribed-angle-centre") < dearer("tangent-chord-angle"));
  CHECK(dearer("tangent-chord-angle") <= 4);
  CHECK(weight("angle-addition", Measure::early) == weight("angle-addition", Measure::classroom));
  CHECK(weight("construction", Measure::early) == weight("construction", Measure::classroom));
}
