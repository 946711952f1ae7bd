#include "prover/chain/match_plan.hpp"

#include <set>

#include "tests/unit/chain/chained.hpp"

using namespace prover;
using told::Chained;

namespace {

const Rule& rule(const char* id) {
  return standard_catalogue()[*standard_catalogue().find(id)];
}

// Instances as "rule: letters of its places"; letters sorted, because a mirrored place is the same place. In
// a built-in shape any point may stand for a ray, and it may be told from either end: there only their number
// counts.
std::multiset<std::string> instances(const Chained& told) {
  std::multiset<std::string> all;
  for (const Instance& instance : told.result.instances) {
    std::string letters;
    for (const PointId p : instance.places) letters += told.statement.names.of(p);
    std::sort(letters.begin(), letters.end());
    if (standard_catalogue()[instance.rule].builtin) letters = std::to_string(instance.places.size());
    all.insert(standard_catalogue()[instance.rule].id + ": " + letters);
  }
  return all;
}

}  // namespace

TEST_CASE("every step of a plan reaches what it places from what is placed, and in the end all is placed") {
  for (const Rule& one : standard_catalogue().rules) {
    if (one.builtin || one.meaning || one.then.empty()) continue;
    INFO(one.id);
    const MatchPlan first = make_plan(one);
    std::vector<int> starts = first.fact_phrases;
    if (starts.empty()) starts.push_back(-1);
    for (const int start : starts) {
      const MatchPlan plan = make_plan(one, start);
      std::set<int> placed;
      std::set<int> tested;
      auto place = [&](const Phrase& phrase) {
        for (const PointId p : phrase.points) placed.insert(p.value);
      };
      for (const MatchStep& step : plan.steps) {
        switch (step.action) {
          case MatchAction::known_fact:
          case MatchAction::drawn_triangle:
          case MatchAction::on_line_order:
            place(plan.conditions.at(static_cast<std::size_t>(step.phrase)));
            break;
          case MatchAction::ray_at:
          case MatchAction::joined_to:
            CHECK(placed.contains(step.via));
            CHECK(placed.insert(step.variable).second);
            break;
          case MatchAction::any_point:
            CHECK(placed.insert(step.variable).second);
            break;
          case MatchAction::test_position:
          case MatchAction::test_fact:
            for (const PointId p : plan.conditions.at(static_cast<std::size_t>(step.phrase)).points)
              CHECK(placed.contains(p.value));
            CHECK(tested.insert(step.phrase).second);
            break;
        }
      }
      CHECK(placed.size() == one.variables.points.size());
    }
  }
}

TEST_CASE("a rule with a fact among its givens is triggered by that fact, others by the figure") {
  CHECK(make_plan(rule("alternate-interior-angles")).fact_phrases.size() == 1);
  CHECK(make_plan(rule("vertical-angles")).fact_phrases.empty());
  CHECK(make_plan(rule("alternate-interior-angles-converse")).fact_phrases.empty());
}

TEST_CASE("two triangles tied by equal parts meet through their parts") {
  CHECK(make_plan(rule("congruent-sas")).two_triangles);
  CHECK(make_plan(rule("congruent-sss")).two_triangles);
  CHECK_FALSE(make_plan(rule("isosceles-base-angles")).two_triangles);
  CHECK_FALSE(make_plan(rule("congruent-parts")).two_triangles);
}

TEST_CASE("a parallel or a congruence is a fact, an equation or a side is none") {
  Names names;
  auto is_fact = [&](const char* sentence) {
    return is_fact_phrase(told::Told::phrases(sentence, names)[0]);
  };
  CHECK(is_fact("parallel: KL, MN"));
  CHECK(is_fact("triangle KLM is congruent to triangle NPQ"));
  CHECK(is_fact("polygon: KLMN parallelogram"));
  CHECK_FALSE(is_fact("KL = MN"));
  CHECK_FALSE(is_fact("sides: M and N on the same side of KL"));
  CHECK_FALSE(is_fact("triangle: KLM"));
}

TEST_CASE("the same instances are found when points are numbered otherwise") {
  const char* figures[] = {"parallel: KL, MN; sides: L and N on opposite sides of KM; KL = KM; triangle: KLM",
                           "triangle: KLM; line: L, P, M in this order; KP = PM; angle KLM = 40",
                           "polygon: KLMN parallelogram; KM and LN cross at P; triangle: KPL",
                           "triangle: KLM; triangle: PQR; KL = PQ; LM = QR; angle KLM = angle PQR",
                           "KLMN is a kite with KL = KN; convex: K, L, M, N"};
  for (const std::string figure : figures) {
    INFO(figure);
    std::string letters;
    for (const char letter : std::string("KLMNPQR"))
      if (figure.find(letter, figure.find(' ')) != std::string::npos) letters += letter;
    const Chained plain(figure, "", {}, {}, letters);
    for (int turn = 0; turn < 3; ++turn) {
      std::rotate(letters.begin(), letters.begin() + 1, letters.end());
      if (turn == 1) std::reverse(letters.begin(), letters.end());
      INFO("numbered " << letters);
      const Chained other(figure, "", {}, {}, letters);
      CHECK(plain.result.closure.rank() == other.result.closure.rank());
      const auto ours = instances(plain), theirs = instances(other);
      std::vector<std::string> differ;
      std::set_symmetric_difference(ours.begin(), ours.end(), theirs.begin(), theirs.end(),
                                    std::back_inserter(differ));
      CHECK(differ == std::vector<std::string>());
    }
  }
}
