// The courses as a class meets them: which rules stand where, and the orders that outside sources fix.
#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "prover/rule/rule.hpp"

using namespace prover;

namespace {

const Catalogue& catalogue() {
  return standard_catalogue();
}
const Course& course(std::string_view id) {
  const Course* found = find_course(catalogue(), id);
  INFO(id);
  REQUIRE(found);
  return *found;
}
// The rules of a course among these, in its order.
std::vector<std::string> order_of(const Course& in, const std::vector<std::string>& ids) {
  std::vector<std::string> out;
  for (const CourseEntry& entry : in.entries)
    if (std::count(ids.begin(), ids.end(), catalogue()[entry.rule].id)) out.push_back(catalogue()[entry.rule].id);
  return out;
}
bool is_taken(const Course& in, std::string_view id) {
  const auto place = in.place_of(*catalogue().find(id));
  INFO(in.id << ": " << id);
  REQUIRE(place);
  return in.entries[*place].taken;
}

}  // namespace

TEST_CASE("every rule has exactly one place in the default course", "[course]") {
  const Course& all = default_course(catalogue());
  std::string missing;
  for (std::size_t i = 0; i < catalogue().rules.size(); ++i)
    if (!all.place_of(RuleId(i))) missing += " " + catalogue().rules[i].id;
  CHECK(missing == "");  // give each its place in rules/courses/school-with-circles.course
  CHECK(all.entries.size() == catalogue().rules.size());
}

TEST_CASE("a rule stands in a course once", "[course]") {
  for (const Course& each : catalogue().courses) {
    INFO(each.id);
    std::vector<RuleId> rules;
    for (const CourseEntry& entry : each.entries) rules.push_back(entry.rule);
    std::sort(rules.begin(), rules.end());
    CHECK(std::adjacent_find(rules.begin(), rules.end()) == rules.end());
    CHECK_FALSE(each.sources.empty());
    CHECK(std::any_of(each.entries.begin(), each.entries.end(), [](const CourseEntry& e) { return !e.taken; }));
  }
}

TEST_CASE("the default course rests on few postulates", "[course]") {
  // A postulate here is what is taken beyond hypotheses, definitions, and the words for plain arithmetic.
  std::set<std::string> postulates;  // the cases of one count once
  for (const CourseEntry& entry : default_course(catalogue()).entries) {
    const Rule& rule = catalogue()[entry.rule];
    if (entry.taken && !rule.meaning && rule.kind != RuleKind::definition && rule.kind != RuleKind::hypothesis)
      postulates.insert(rule.family.empty() ? rule.id : rule.family);
  }
  CHECK(postulates.size() >= 10);
  CHECK(postulates.size() <= 15);
}

TEST_CASE("definitions are not proved", "[course]") {
  // Kinds of a shape that follow from its definition ("a rhombus is a parallelogram") may be.
  for (const CourseEntry& entry : default_course(catalogue()).entries) {
    const Rule& rule = catalogue()[entry.rule];
    if (rule.kind != RuleKind::definition || entry.taken) continue;
    INFO(rule.id);
    CHECK_FALSE(rule.meaning);
    CHECK(rule.topic == "quadrilateral");
  }
}

TEST_CASE("Euclid's order", "[course]") {
  // Heath, The Thirteen Books of Euclid's Elements: I.4, I.5, I.8, I.15, I.26, I.27, I.29, I.32, I.34.
  const std::vector<std::string> euclid = {"congruent-sas",
                                           "isosceles-base-angles",
                                           "congruent-sss",
                                           "vertical-angles",
                                           "congruent-asa",
                                           "alternate-interior-angles-converse",
                                           "alternate-interior-angles",
                                           "triangle-angle-sum",
                                           "parallelogram-opposite-sides"};
  CHECK(order_of(course("euclid-1"), euclid) == euclid);
  CHECK(order_of(course("euclid-3"), euclid) == euclid);
  // Nothing before I.29 rests on the fifth postulate, so it comes no earlier.
  const Course& first = course("euclid-1");
  CHECK(first.place_of(*catalogue().find("parallel-postulate")) >
        first.place_of(*catalogue().find("alternate-interior-angles-converse")));
  CHECK_FALSE(first.place_of(*catalogue().find("same-segment-angles")));
  CHECK(course("euclid-3").place_of(*catalogue().find("same-segment-angles")));  // III.21
}

TEST_CASE("a postulate in one school, a theorem in another", "[course]") {
  // Published table, "Postulate or theorem": I.13 is a theorem of Euclid and a postulate in US1, US2; US3 has the
  // congruence cases as postulates where Euclid proves I.8 and I.26; corresponding angles in US3, US5 and I.29.
  for (const char* id : {"angles-on-a-straight-line", "congruent-sss", "congruent-asa", "corresponding-angles"}) {
    CHECK(is_taken(course("us-high-school"), id));
    CHECK_FALSE(is_taken(course("euclid-1"), id));
  }
  // ZA10: what stands before grade 11 is an axiom there.
  CHECK(is_taken(course("south-africa-grade-11"), "midsegment"));
  CHECK_FALSE(is_taken(course("south-africa-grade-10"), "midsegment"));
  CHECK_FALSE(is_taken(course("south-africa-grade-11"), "cyclic-opposite-angles"));
}

TEST_CASE("no congruence in the course on angles, no circle without circles", "[course]") {
  for (const CourseEntry& entry : course("angles").entries)
    CHECK(catalogue()[entry.rule].topic != "congruence");
  for (const char* topic : {"chord", "inscribed", "tangent", "secant"})
    for (const CourseEntry& entry : course("school").entries) CHECK(catalogue()[entry.rule].topic != topic);
}
