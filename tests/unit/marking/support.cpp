// What a pupil's line rests on: which rules, which earlier lines, and how much is missing.
#include <catch2/catch.hpp>

#include "prover/marking/support.hpp"
#include "prover/walk.hpp"

using namespace prover;

namespace {

// Two rails cut by a lath, and an isosceles triangle between them.
const char* trellis =
    "parallel: KL, PQ\nsides: L and P on opposite sides of KQ\ntriangle: KLQ\nequal lengths: KL = KQ\nangle PQK = 52\nfind: angle KLQ\n";

struct Desk {
  explicit Desk(const char* text) : way(walk(text, standard_catalogue(), {})), statement(way.statements[0]) {}

  Phrase phrase(const std::string& words) {
    std::vector<Diagnostic> mistakes;
    const std::vector<Phrase> phrases = parse_phrases(words, statement.names, mistakes);
    REQUIRE(mistakes.empty());
    REQUIRE(phrases.size() == 1);
    return phrases[0];
  }
  const Ground& ground() {
    if (!ground_) ground_.emplace(statement, std::vector<Sketch>{}, way.options, Budget::seconds(5));
    return *ground_;
  }
  std::vector<bool> named(std::initializer_list<const char*> ids) const {
    std::vector<bool> rules(standard_catalogue().rules.size(), false);
    for (const char* id : ids) rules[standard_catalogue().find(id)->index()] = true;
    return rules;
  }
  std::optional<Support> of(const std::string& words, std::vector<bool> rules = {}, const std::vector<std::string>& before = {},
                            bool only_named = false) {
    SupportQuestion question;
    question.forms = ground().claim(phrase(words)).forms;
    question.named = std::move(rules);
    int n = 0;
    for (const std::string& line : before) question.lines.push_back({++n, ground().claim(phrase(line)).forms, true});
    question.allowed = way.options.allowed;
    question.only_named = only_named;
    question.doubtful = only_named;
    return support(ground(), question, Budget::seconds(5));
  }

  Walked way;
  Statement statement;
  std::optional<Ground> ground_;
};

}  // namespace

TEST_CASE("a line that its reason gives has nothing missing", "[marking]") {
  Desk desk(trellis);
  const auto found = desk.of("angle LKQ = 52", desk.named({"alternate-interior-angles"}));
  REQUIRE(found);
  CHECK(found->missing.empty());
  CHECK(found->named.size() == 1);
}

TEST_CASE("the same line with a rule that does not give it has that rule missing", "[marking]") {
  Desk desk(trellis);
  const auto found = desk.of("angle LKQ = 52", desk.named({"corresponding-angles"}));
  REQUIRE(found);
  CHECK(found->named.empty());
  REQUIRE(found->missing.size() == 1);
  CHECK(desk.ground().rule_of(found->missing[0]).id == "alternate-interior-angles");
}

TEST_CASE("a given repeated is only a given", "[marking]") {
  Desk desk(trellis);
  const auto found = desk.of("KL = KQ");
  REQUIRE(found);
  CHECK(found->only_givens);
  CHECK(!desk.of("angle LKQ = 52")->only_givens);
}

TEST_CASE("the size of a gap is the number of theorems that nobody named", "[marking]") {
  Desk desk(trellis);
  CHECK(desk.of("angle KLQ = 64")->missing_theorems == 2);  // co-interior angles and base angles
  CHECK(desk.of("angle KLQ = 64", {}, {"angle LKQ = 52"})->missing_theorems == 2);
  CHECK(desk.of("angle KLQ = 64", desk.named({"triangle-angle-sum"}), {"angle LKQ = 52", "angle KLQ = angle KQL"})->missing_theorems == 0);
}

TEST_CASE("an earlier line is used rather than shown again", "[marking]") {
  Desk desk(trellis);
  const auto found = desk.of("angle KLQ = 64", desk.named({"triangle-angle-sum"}), {"angle LKQ = 52", "angle KLQ = angle KQL"});
  REQUIRE(found);
  CHECK(found->lines == std::vector<int>{1, 2});
}

TEST_CASE("what is false has no support, whatever is named", "[marking]") {
  Desk desk(trellis);
  CHECK(!desk.of("angle KLQ = 60"));
  CHECK(!desk.of("angle KLQ = 60", desk.named({"triangle-angle-sum", "isosceles-base-angles"})));
}

TEST_CASE("from a wrong line only what rests on it follows, and nothing from two lines that exclude each other", "[marking]") {
  Desk desk(trellis);
  const auto carried = desk.of("angle KQL = 60", desk.named({"isosceles-base-angles"}), {"angle KLQ = 60"}, true);
  REQUIRE(carried);
  CHECK(carried->lines == std::vector<int>{1});
  CHECK(!desk.of("angle PQK = 10", {}, {"angle KLQ = 60", "angle KLQ = 64"}, true));
  CHECK(!desk.of("angle KQL = 60", desk.named({"isosceles-base-angles"}), {"angle KLQ = 61"}, true));
}
