// The self-proving library: every theorem of the default course from what stands before it. Which theorems there are,
// and what Euclid rests them on: the published table (reasons.tsv) and the courses' own sources.
#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

#include "prover/library/ancestry.hpp"
#include "prover/library/prove_library.hpp"

using namespace prover;

namespace {

const std::vector<TheoremReport>& reports() {
  static const std::vector<TheoremReport> all =
      prove_library(standard_catalogue(), default_course(standard_catalogue()), {});
  return all;
}

const TheoremReport& report(const char* id) {
  const RuleId rule = *standard_catalogue().find(id);
  return *std::find_if(reports().begin(), reports().end(), [&](const TheoremReport& r) { return r.rule == rule; });
}

}  // namespace

TEST_CASE("every theorem of the default course is proved from what stands before it", "[library]") {
  // PM, QM and OM lie on one line, which is what is to be shown: none of them can be joined before it is known.
  const std::set<std::string> not_yet{"chord-bisector-through-centre-two"};
  const Course& course = default_course(standard_catalogue());
  for (const TheoremReport& one : reports()) {
    INFO(standard_catalogue()[one.rule].id << ": " << one.why_not);
    CHECK((one.status != TheoremStatus::not_proved) == !not_yet.contains(standard_catalogue()[one.rule].id));
    for (const AnswerProof& proof : one.proofs) {
      CHECK(proof.replay);
      CHECK(proof.z3);
    }
    std::vector<std::string> cites;
    for (const RuleId cited : one.cites) cites.push_back(standard_catalogue()[cited].id);
    INFO("python3 tests/rules/write_rests.py brings the files up to date");
    CHECK(standard_catalogue()[one.rule].rests == cites);
    for (const RuleId cited : one.cites) {
      INFO("cites " << standard_catalogue()[cited].id);
      const auto place = course.place_of(cited);
      CHECK((standard_catalogue()[cited].meaning || (place && *place < *course.place_of(one.rule))));
    }
  }
}

TEST_CASE("nobody is his own ancestor, and every line of ancestors ends in what is taken", "[library]") {
  const Ancestry ancestry(standard_catalogue(), reports());
  for (const TheoremReport& one : reports()) {
    INFO(standard_catalogue()[one.rule].id);
    CHECK_FALSE(ancestry.rests_on_itself(one.rule));
    if (one.status == TheoremStatus::taken) continue;
    const std::vector<RuleId> line = ancestry.deepest_line(one.rule);
    if (one.status == TheoremStatus::not_proved) continue;
    REQUIRE_FALSE(line.empty());
    CHECK(ancestry.depth(line.back()) == 0);
  }
}

TEST_CASE("a circle of citations is noticed", "[library]") {
  const Catalogue& catalogue = standard_catalogue();
  const RuleId sum = *catalogue.find("triangle-angle-sum"), outer = *catalogue.find("exterior-angle-of-triangle");
  TheoremReport one, other;
  one.rule = sum;
  one.cites = {outer};
  other.rule = outer;
  other.cites = {sum};
  one.status = other.status = TheoremStatus::proved;
  CHECK(Ancestry(catalogue, {one, other}).rests_on_itself(sum));
  other.cites.clear();
  CHECK_FALSE(Ancestry(catalogue, {one, other}).rests_on_itself(sum));
}

TEST_CASE("the angle sum rests on the parallel through a corner", "[library]") {
  // Euclid I.32 uses I.29 and I.31 (Heath); so does ours.
  const TheoremReport& sum = report("triangle-angle-sum");
  REQUIRE(sum.proofs.size() == 1);
  CHECK(sum.proofs[0].constructions.size() == 1);
  const auto& rules = sum.proofs[0].rules;
  CHECK(std::find(rules.begin(), rules.end(), "alternate-interior-angles") != rules.end());
}

TEST_CASE("the angle at the circumference is proved in all positions of the centre", "[library]") {
  CHECK(report("inscribed-angle-centre").proofs.size() >= 3);   // on either arm, or on neither
  CHECK(report("same-segment-angles").proofs.size() >= 3);      // the centre on either side of the chord, or on it
}

namespace {

// A course with one more theorem at its end.
TheoremReport tried(const std::string& file) {
  std::vector<RuleFile> files = builtin_rule_files();
  files.push_back({"own/tried.rule", file});
  const LoadedCatalogue loaded = load_catalogue(files, Examples::kept);
  const auto rule = loaded.catalogue.find("tried");
  for (const auto& [bad, mistakes] : loaded.mistakes)
    for (const Diagnostic& mistake : mistakes) UNSCOPED_INFO(bad.name << ": " << mistake.message);
  REQUIRE(rule);
  Course course = default_course(loaded.catalogue);
  std::erase_if(course.entries, [&](const CourseEntry& e) { return e.rule == *rule; });
  course.entries.push_back({*rule, false, {}});
  LibraryOptions options;
  options.only = {*rule};
  const auto all = prove_library(loaded.catalogue, course, options);
  REQUIRE(all.size() == 1);
  return all[0];
}

std::string theorem(const std::string& parts) {
  return "rule tried\n  title \"tried\"\n  kind theorem\n  says \"Tried.\"\n" + parts +
         "\n  plain \"tried\"\n  why  A test.\n  source \"own\"\n"
         "  example fires   triangle: RST   gives  triangle: RST\n  example silent  triangle: RST   gives  triangle: RST\n";
}

}  // namespace

TEST_CASE("what is false or left open in one position is no theorem", "[library]") {
  // Two sides and an angle that is not between them (not a congruence reason: US14).
  CHECK(tried(theorem("  given triangle: ABC; triangle: DEF; equal lengths: AB = DE; equal lengths: BC = EF; angle BAC = angle EDF\n"
                      "  then triangles ABC and DEF are congruent")).status == TheoremStatus::not_proved);
  CHECK(tried(theorem("  given triangle: ABC; triangle: DEF; equal lengths: AB = DE; equal lengths: AC = DF; angle BAC = angle EDF\n"
                      "  then triangles ABC and DEF are congruent")).status == TheoremStatus::proved);
  // One case is missing: M may stand on either side.
  const std::string kite = "  given equal lengths: PA = PB; equal lengths: QA = QB\n  where triangle: PAB; triangle: QAB\n"
                           "  then angle PAQ = angle PBQ\n";
  CHECK(tried(theorem(kite)).status == TheoremStatus::proved);
  const TheoremReport open = tried(theorem(kite + "  case sides: P and Q on opposite sides of AB"));
  CHECK(open.status == TheoremStatus::not_proved);
  CHECK(open.why_not.find("no case covers") != std::string::npos);
}

TEST_CASE("a line that cannot always be drawn proves nothing", "[library]") {
  // The foot of the perpendicular need not lie between the ends.
  const std::string base = "  given triangle: ABC; equal lengths: AB = AC\n  then angle ABC = angle ACB\n";
  CHECK(tried(theorem(base + "  add line: B, X, C in this order; perpendicular: AX, BC")).status == TheoremStatus::proved);
  const std::string any = "  given triangle: ABC\n  then angle ABC = angle ABC\n";
  const TheoremReport outside = tried(theorem(any + "  add line: B, X, C in this order; perpendicular: AX, BC"));
  CHECK(outside.status == TheoremStatus::not_proved);
  CHECK(outside.why_not.find("cannot be drawn") != std::string::npos);
  // The bisector at right angles to the other side asks too much: it would make every triangle isosceles.
  CHECK(tried(theorem("  given triangle: ABC\n  then equal lengths: AB = AC\n"
                      "  add angle BAX = angle XAC; line: B, X, C in this order; perpendicular: AX, BC")).status ==
        TheoremStatus::not_proved);
}
