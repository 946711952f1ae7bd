// Reasons with their places filled in.
#include "prover/rule/wording.hpp"

#include <catch2/catch.hpp>

using namespace prover;

namespace {
const Rule& rule_named(const char* id) {
  const Catalogue& catalogue = standard_catalogue();
  return catalogue[*catalogue.find(id)];
}
// Places in the order of the rule's variables.
std::string reason(const char* id, Register wording, const std::map<std::string, std::string>& at) {
  const Rule& rule = rule_named(id);
  std::vector<std::string> place;
  for (const std::string& name : rule.variables.points)
    place.push_back(at.contains(name) ? at.at(name) : "?");
  return fill_wording(rule, wording, place);
}
}  // namespace

TEST_CASE("a parallel reason names the lines as each school wants it") {
  const std::map<std::string, std::string> at = {{"P", "K"}, {"A", "L"}, {"Q", "M"}, {"D", "N"}};
  CHECK(reason("alternate-interior-angles", Register::plain, at) == "alternate angles, KL ∥ MN, cut by KM");
  CHECK(reason("alternate-interior-angles", Register::us, at) == "Alternate Interior Angles Theorem");
  CHECK(reason("alternate-interior-angles", Register::uk, at) == "alternate angles are equal");
  CHECK(reason("alternate-interior-angles", Register::sa, at) == "alt ∠s; KL ∥ MN");
}

TEST_CASE("angles, triangles and points are written as such") {
  CHECK(reason("isosceles-base-angles", Register::plain, {{"A", "K"}, {"B", "L"}, {"C", "M1"}}) ==
        "angles opposite equal sides, KL = KM1, triangle KLM1");
  CHECK(reason("alternate-interior-angles-converse", Register::plain,
               {{"A", "L"}, {"P", "K"}, {"Q", "M"}, {"D", "N"}}) ==
        "alternate angles are equal, ∠LKM = ∠NMK");
  CHECK(reason("vertical-angles", Register::plain,
               {{"A", "K"}, {"X", "R"}, {"C", "L"}, {"B", "M"}, {"D", "N"}}) ==
        "vertically opposite angles, KL and MN crossing at R");
}

TEST_CASE("a builtin takes what it names as a whole") {
  CHECK(reason("angles-on-a-straight-line", Register::plain, {{"line", "PKQ"}}) ==
        "angles on the straight line PKQ");
  CHECK(reason("angles-at-a-point", Register::plain, {{"point", "K"}}) == "angles round the point K");
  CHECK(reason("polygon-interior-sum", Register::plain, {{"polygon", "KLMNP"}}) ==
        "interior angles of polygon KLMNP");
  CHECK(reason("segment-addition", Register::plain, {{"A", "K"}, {"C", "L"}}) == "adding lengths along KL");
}

TEST_CASE("a short reason names what makes it true") {
  CHECK(reason("same-segment-angles", Register::sa, {{"A", "K"}, {"B", "L"}}) == "∠s in the same seg; chord KL");
  CHECK(reason("triangle-angle-sum", Register::sa, {{"A", "K"}, {"B", "L"}, {"C", "M"}}) == "∠ sum in ΔKLM");
  CHECK(reason("isosceles-base-angles", Register::sa, {{"A", "K"}, {"B", "L"}, {"C", "M"}}) ==
        "∠s opp equal sides; KL = KM");
}

TEST_CASE("a register without a phrase of its own says it plainly, and marks that it does") {
  const Rule& rule = rule_named("angles-with-parallel-arms");
  CHECK_FALSE(rule.wording.contains(Register::uk));
  CHECK(reason("angles-with-parallel-arms", Register::uk,
               {{"B", "K"}, {"A", "L"}, {"E", "M"}, {"D", "N"}, {"C", "P"}, {"F", "Q"}}) ==
        "[arms parallel and pointing the same way, KL ∥ MN, KP ∥ MQ]");
}

TEST_CASE("a wording stands without its places too") {
  CHECK(wording_without_places("alt ∠s; {PA} ∥ {QD}") == "alt ∠s");
  CHECK(wording_without_places("alternate angles, {PA} ∥ {QD}, cut by {PQ}") == "alternate angles");
  CHECK(wording_without_places("sides of a square are equal; angles are 90°") ==
        "sides of a square are equal; angles are 90°");
  CHECK(wording_without_places("{AB} ∥ {CD}").empty());
}
