// Words that are no rule, and converses: what is refused, what needs no reason, and what is only too little.
#include <catch2/catch.hpp>

#include "prover/marking/reason.hpp"

using namespace prover;

namespace {

Names knots() {
  Names names;
  for (const char* name : {"K", "L", "M", "N", "P", "Q", "O"}) names.points.emplace_back(name);
  return names;
}

ReadReason only(std::string_view text, Register wording = Register::uk) {
  const std::vector<ReadReason> read = read_reason(text, knots(), standard_catalogue(), wording);
  INFO(text);
  REQUIRE(read.size() == 1);
  return read[0];
}

std::string first(const ReadReason& reason) {
  return reason.rules.empty() ? "" : standard_catalogue()[reason.rules[0]].id;
}

}  // namespace

TEST_CASE("letter shapes and initials are understood and not accepted", "[reason]") {
  // AQA 8300 as quoted in the published conventions; initials: an Australian school sheet there.
  const ReadReason z = only("Z angles");
  CHECK(z.kind == ReasonKind::nickname);
  CHECK(first(z) == "alternate-interior-angles");
  CHECK(z.accepted == "alternate angles are equal");
  CHECK(only("Z angles", Register::sa).accepted == "alt ∠s");
  CHECK(first(only("F-angles")) == "corresponding-angles");
  CHECK(first(only("v.o.a.")) == "vertical-angles");
  CHECK(only("alternate angles").kind == ReasonKind::rule);
  CHECK(only("angle K").kind != ReasonKind::nickname);
}

TEST_CASE("too little, by eye, measured, given, and plain working are told apart", "[reason]") {
  for (const char* text : {"circle theorem", "angles in a circle", "parallel lines", "angles", "triangle", "geometry", "theorem"}) CHECK(only(text).kind == ReasonKind::vague);
  for (const char* text : {"it looks parallel", "looks equal", "from the diagram"}) CHECK(only(text).kind == ReasonKind::sight);
  for (const char* text : {"I measured it", "protractor"}) CHECK(only(text).kind == ReasonKind::measured);
  for (const char* text : {"given", "hypothesis", "from the question"}) CHECK(only(text).kind == ReasonKind::given);
  for (const char* text : {"substitution", "algebra", "line 3", "(3)", "from 2 and 4", "x = 180 − 2 × 40"}) CHECK(only(text).kind == ReasonKind::working);
  for (const char* text : {"because my teacher said so", "blah", "opposite angles of a triangle are equal"})
    CHECK(only(text).kind == ReasonKind::unknown);
  CHECK(only("from lines 2 and 4").lines == std::vector<int>{2, 4});
}

TEST_CASE("a rule's name with something else said of the angles is told", "[reason]") {
  CHECK(first(only("co-interior angles are equal")) == "co-interior-angles");
  CHECK(only("co-interior angles are equal").misstated);
  CHECK_FALSE(only("co-interior angles add up to 180°").misstated);
  CHECK(only("angles in a triangle add up to 360°").misstated);
  CHECK_FALSE(only("angles in a triangle add up to 180°").misstated);
  CHECK(only("alternate angles add up to 180°").misstated);
  CHECK_FALSE(only("alternate angles are equal").misstated);
  CHECK_FALSE(only("corresponding angles = 70°").misstated);
}

TEST_CASE("a theorem and its converse find each other", "[reason]") {
  const Catalogue& catalogue = standard_catalogue();
  const auto converse = [&](std::string_view id) {
    const auto found = converse_of(*catalogue.find(id), catalogue);
    return found ? catalogue[*found].id : std::string();
  };
  CHECK(converse("alternate-interior-angles") == "alternate-interior-angles-converse");
  CHECK(converse("alternate-interior-angles-converse") == "alternate-interior-angles");
  CHECK(converse("greater-side-greater-angle") == "greater-angle-greater-side");
  CHECK(converse("tangent-chord-angle-converse-circumcircle") == "tangent-chord-angle-circumcircle");
  CHECK(converse("triangle-angle-sum").empty());
}
