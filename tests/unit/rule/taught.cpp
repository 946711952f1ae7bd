// What a class has been taught, by any of the names that people use.
#include <catch2/catch.hpp>

#include "prover/rule/rule.hpp"

using namespace prover;

namespace {

TaughtRules lesson(const std::vector<std::string>& names, const std::vector<std::string>& excluded = {}) {
  Taught taught;
  for (const std::string& name : names) taught.names.push_back({name, Span{3, 5}, "", {}});
  for (const std::string& name : excluded) taught.excluded.push_back({name, Span{7, 9}, "", {}});
  return taught_rules(standard_catalogue(), {taught});
}
bool may_cite(const TaughtRules& taught, const char* id) {
  const auto rule = standard_catalogue().find(id);
  REQUIRE(rule);
  return taught.allowed[rule->index()];
}

}  // namespace

TEST_CASE("without a list everything may be cited") {
  const TaughtRules all = taught_rules(standard_catalogue(), {});
  CHECK(may_cite(all, "congruent-sss"));
  CHECK(may_cite(all, "midsegment"));
}

TEST_CASE("a list allows what it names, and what needs no name") {
  const TaughtRules some = lesson({"alternate angles", "triangle-angle-sum"});
  CHECK(some.diagnostics.empty());
  CHECK(may_cite(some, "alternate-interior-angles"));
  CHECK(may_cite(some, "triangle-angle-sum"));
  CHECK_FALSE(may_cite(some, "corresponding-angles"));
  CHECK_FALSE(may_cite(some, "alternate-interior-angles-converse"));
  CHECK(may_cite(some, "given"));
  CHECK(may_cite(some, "angle-addition"));
  CHECK(may_cite(some, "midpoint-definition"));
  CHECK(may_cite(some, "construction"));
}

TEST_CASE("names are taken from every register and from everyday words") {
  for (const char* name :
       {"vertical-angles", "Vertically opposite angles", "vertically opposite angles are equal",
        "vert opp ∠s =", "Vertical Angles Theorem", "vertical angles theorem.", "angle facts", "point"}) {
    INFO(name);
    const TaughtRules some = lesson({name});
    CHECK(some.diagnostics.empty());
    CHECK(may_cite(some, "vertical-angles"));
    CHECK_FALSE(may_cite(some, "triangle-angle-sum"));
  }
  CHECK(may_cite(lesson({"parallel lines"}), "co-interior-angles-converse"));
  CHECK(may_cite(lesson({"congruence"}), "congruent-rhs"));
  CHECK(may_cite(lesson({"triangles"}), "isosceles-base-angles"));
  CHECK(may_cite(lesson({"alt ∠s"}), "alternate-interior-angles"));
  CHECK(may_cite(lesson({"allied angles"}), "co-interior-angles"));
  CHECK(may_cite(lesson({"CPCTC"}), "congruent-parts"));
}

TEST_CASE("a row of several files is taught as one") {
  const TaughtRules some = lesson({"isosceles-apex-line"});
  CHECK(may_cite(some, "isosceles-apex-line-median"));
  CHECK(may_cite(some, "isosceles-apex-line-altitude"));
  CHECK_FALSE(may_cite(some, "isosceles-apex-line-converse"));
}

TEST_CASE("not takes away, also from a topic or from everything") {
  const TaughtRules some = lesson({"triangles", "congruence"}, {"midsegment", "SSS"});
  CHECK(may_cite(some, "isosceles-base-angles"));
  CHECK_FALSE(may_cite(some, "midsegment"));
  CHECK_FALSE(may_cite(some, "congruent-sss"));
  CHECK(may_cite(some, "congruent-sas"));
  const TaughtRules most = lesson({}, {"congruence", "given"});
  CHECK_FALSE(may_cite(most, "congruent-sas"));
  CHECK(may_cite(most, "triangle-angle-sum"));
  CHECK(may_cite(most, "given"));
}

TEST_CASE("a course allows what it teaches, and nothing else that needs no name") {
  const TaughtRules angles = lesson({"angles"});
  CHECK(angles.diagnostics.empty());
  CHECK(may_cite(angles, "alternate-interior-angles"));
  CHECK(may_cite(angles, "isosceles-base-angles"));  // taken there, and so it may be cited
  CHECK(may_cite(angles, "given"));
  CHECK_FALSE(may_cite(angles, "congruent-sss"));
  CHECK_FALSE(may_cite(angles, "congruent-parts"));  // a definition, of a thing that this class has not met
  CHECK_FALSE(may_cite(angles, "construction"));
  const TaughtRules more = lesson({"angles", "congruence"});
  CHECK(may_cite(more, "congruent-parts"));
  CHECK(may_cite(more, "alternate-interior-angles"));
  CHECK_FALSE(may_cite(more, "midsegment"));
  CHECK(may_cite(lesson({"Euclid, book I"}), "congruent-sas"));  // by title
  CHECK_FALSE(may_cite(lesson({"school"}, {"congruence"}), "congruent-sas"));
}

TEST_CASE("a course up to a rule ends with it") {
  const auto up_to = [](const char* course, const char* last) {
    Taught taught;
    taught.names.push_back({course, Span{3, 5}, last, Span{9, 12}});
    return taught_rules(standard_catalogue(), {taught});
  };
  // Heath: I.29 is proved after I.27 and before I.32.
  const TaughtRules euclid = up_to("euclid-1", "alternate-interior-angles");
  CHECK(euclid.diagnostics.empty());
  CHECK(may_cite(euclid, "alternate-interior-angles-converse"));
  CHECK(may_cite(euclid, "alternate-interior-angles"));
  CHECK_FALSE(may_cite(euclid, "triangle-angle-sum"));
  CHECK(may_cite(up_to("school", "sides opp equal ∠s"), "isosceles-base-angles-converse"));
  CHECK_FALSE(may_cite(up_to("school", "sides opp equal ∠s"), "congruent-sss"));
  CHECK(may_cite(up_to("school", "angle facts"), "angles-at-a-point"));  // a topic: to its last rule
  CHECK_FALSE(may_cite(up_to("school", "angle facts"), "isosceles-base-angles"));

  const TaughtRules absent = up_to("angles", "midsegment");
  REQUIRE(absent.diagnostics.size() == 1);
  CHECK(absent.diagnostics[0].message == "the course angles does not teach \"midsegment\"");
  CHECK(absent.diagnostics[0].span == Span{9, 12});
  const TaughtRules topic = up_to("triangles", "midsegment");
  REQUIRE(topic.diagnostics.size() == 1);
  CHECK(topic.diagnostics[0].message == "\"triangles\" is not a course, so it has no order to stop in");
  CHECK(up_to("school", "midsegmant").diagnostics.at(0).way_out == "did you mean \"midsegment\"?");
  CHECK(up_to("scholl", "midsegment").diagnostics.at(0).way_out == "did you mean \"school\"?");
}

TEST_CASE("a comma inside a name does not end it") {
  const TaughtRules some = lesson({"Euclid", "books I and III"});
  CHECK(some.diagnostics.empty());
  CHECK(may_cite(some, "cyclic-opposite-angles"));  // III.22
}

TEST_CASE("an unknown name gets the nearest known one, in its place") {
  const TaughtRules some = lesson({"alternate angels"}, {"midsegmant"});
  REQUIRE(some.diagnostics.size() == 2);
  CHECK(some.diagnostics[0].message == "no rule, course, topic or reason is called \"alternate angels\"");
  CHECK(some.diagnostics[0].way_out == "did you mean \"alternate angles\"?");
  CHECK(some.diagnostics[0].span == Span{3, 5});
  CHECK(some.diagnostics[1].way_out == "did you mean \"midsegment\"?");
  CHECK(some.diagnostics[1].span == Span{7, 9});
}

TEST_CASE("letter shapes are no names for angles") {
  for (const char* name : {"Z angles", "F angles", "C angles", "X angles"})
    CHECK(lesson({name}).diagnostics.size() == 1);
}
