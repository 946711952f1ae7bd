// The linter: one bad rule for each of its messages, and the good twin about which it says nothing.
#include <catch2/catch.hpp>

#include <fmt/format.h>

#include "prover/measure/lint_rules.hpp"

using namespace prover;

namespace {

// A rule file with these lines for its pattern and fields.
RuleFile file(const std::string& id, const std::string& lines) {
  return {"own/" + id + ".rule", "rule " + id + R"(
  title    "our own"
  kind     theorem
  says     "A rule of our own."
)" + lines + R"(
  plain    "our own rule"
  why      To be tried.
  source   "our own"
  example  fires   triangle: KLM   gives  angle LKM = 40
  example  silent  triangle: KLM   gives  angle LKM = 40
)"};
}

// "line:column: severity: message", one a line, about the rules in these files.
std::string said(const std::vector<RuleFile>& files, const LintOptions& options = {}) {
  const LoadedCatalogue loaded = load_catalogue(files);
  for (const auto& [broken, mistakes] : loaded.mistakes)
    for (const Diagnostic& mistake : mistakes) FAIL_CHECK(render(mistake, broken.name, broken.text));
  std::string out;
  for (const LintedRule& linted : lint_rules(loaded.catalogue, files, options))
    for (const Diagnostic& found : linted.findings) {
      const LineColumn at = line_column(linted.file.text, found.span.begin);
      CHECK_FALSE(found.way_out.empty());
      out += fmt::format("{}:{}: {}: {}\n", at.line, at.column, found.severity == Severity::error ? "error" : "warning",
                         found.message);
    }
  return out;
}

const std::string base_angles = "  given    triangle: ABC; equal lengths: AB = AC\n  then     angle ABC = angle ACB";

}  // namespace

TEST_CASE("a conclusion that does not follow is shown by a figure") {
  CHECK(said({file("base-angles", base_angles)}).empty());
  const std::string wrong =
      said({file("wrong-angles", "  given    triangle: ABC; equal lengths: AB = AC\n  then     angle ABC = angle BAC")});
  CHECK(wrong.starts_with("6:12: error: ∠ABC = ∠BAC does not follow: it is wrong in the figure A ("));
  CHECK(wrong.find(", C (") != wrong.npos);
  // The second of two conclusions is the one that is told.
  const std::string second = said({file("second-angles", base_angles + "; angle ABC = angle BAC")});
  CHECK(second.starts_with("6:35: error: ∠ABC = ∠BAC does not follow"));
}

TEST_CASE("a conclusion that is wrong in a few positions only is found out") {
  // Equal angles on one segment: on the same side of it the points are on a circle, on opposite sides they are not.
  const std::string given = "  given    angle ACB = angle ADB\n", then = "  then     concyclic: A, B, C, D";
  CHECK(said({file("same-side", given + "  where    sides: C and D on the same side of AB\n" + then)}).empty());
  CHECK(said({file("either-side", given + "  where    triangle: ABC\n" + then)}).starts_with("7:12: error: A, B, C, D"));
  // A right angle makes it true on both.
  CHECK(said({file("right-angles", "  given    angle ACB = 90; angle ADB = 90\n" + then)}).empty());
}

TEST_CASE("a conclusion that is wrong when two letters are one point is found out") {
  const std::string where = "  where    sides: A and D on the same side of BE; sides: C and F on the same side of BE\n";
  const std::string given = "  given    parallel: BA, ED; parallel: BC, EF\n";
  CHECK(said({file("arms", given + where + "  then     angle ABC = angle DEF")}).empty());
  // Right unless B and D are one point: then two of the angles need not agree.
  const std::string apart = "  given    triangle: ABC; triangle: DEF; equal lengths: AB = DE; equal lengths: BC = EF; equal lengths: CA = FD\n";
  CHECK(said({file("sss", apart + "  then     △ABC ≅ △DEF")}).empty());
  CHECK(said({file("sss-turned", apart + "  then     △ABC ≅ △EFD")}).find("error") != std::string::npos);
}

TEST_CASE("conditions that no figure meets are told") {
  CHECK(said({file("flat", "  given    triangle: ABC\n  where    line: A, B, C in this order\n  then     equal lengths: AB = BC")}) ==
        "1:6: error: no figure meets the conditions of this rule\n");
}

TEST_CASE("two rules that say the same with other letters are told") {
  const RuleFile first = file("base-angles", base_angles);
  const auto with = [&](const std::string& lines) { return said({first, file("other", lines)}); };
  CHECK(with("  given    equal lengths: QR = PQ; triangle: PQR\n  then     angle QPR = angle PRQ") ==
        "1:6: warning: this rule says the same as `base-angles`\n");
  CHECK(with("  given    triangle: ABC; angle ABC = angle ACB\n  then     equal lengths: AB = AC").empty());  // the converse
  CHECK(with("  given    triangle: ABC; equal lengths: AB = AC = BC\n  then     angle ABC = angle ACB").empty());
}

TEST_CASE("facts are the same whichever way round they are said") {
  const RuleFile kite = file("kite", "  given    ABCD is a kite with AB = AD\n  then     perpendicular: AC, BD");
  const auto with = [&](const std::string& lines) { return said({kite, file("other", lines)}); };
  CHECK(with("  given    PQRS is a kite with PQ = PS\n  then     perpendicular: SQ, RP") ==
        "1:6: warning: this rule says the same as `kite`\n");
  CHECK(with("  given    ABCD is a kite with AB = AD\n  then     equal lengths: AB = AD").empty());
  const RuleFile box = file("box", "  given    polygon: ABCD parallelogram, in this order\n  then     equal lengths: AB = CD");
  CHECK(said({box, file("other", "  given    polygon: ABCD parallelogram, in this order\n  then     equal lengths: BC = DA")}) ==
        "1:6: warning: this rule says the same as `box`\n");
  CHECK(said({box, file("other", "  given    polygon: ABCD parallelogram, in this order\n  then     parallel: BC, DA")}).empty());
}

TEST_CASE("a wording that the family has is missed") {
  const RuleFile family = file("base-angles", base_angles + "\n  uk       \"base angles are equal\"");
  const std::string further = "  family   base-angles\n  given    triangle: ABC; angle ABC = angle ACB\n  then     equal lengths: AB = AC\n";
  CHECK(said({family, file("further", further)}) == "1:6: warning: no `uk` wording, though its family `base-angles` has one\n");
  CHECK(said({family, file("further", further + "  uk       \"sides opposite equal angles\"")}).empty());
  CHECK(said({family, file("further", further + "  unworded uk")}).empty());
}

TEST_CASE("a rule that is too general to join cheaply is told with its cost") {
  const std::string then = "  then     angle ABC = angle DEF";
  const std::string loose = said({file("any-two", "  given    angle ABC = angle GHI; angle GHI = angle DEF\n" + then)});
  CHECK(loose == "1:6: warning: too general to join cheaply: 200000 steps of matching on a figure of sixteen points, and not "
                 "at an end\n");
  CHECK(said({file("vertical", "  where    line: A, B, E in this order; line: C, B, D in this order; triangle: ABC\n"
                               "  then     angle ABC = angle EBD")})
            .empty());
}

TEST_CASE("the rules of the catalogue lint clean") {
  const auto& files = builtin_rule_files();
  LintOptions options;
  options.figures = 50;
  std::string out;
  for (const LintedRule& linted : lint_rules(standard_catalogue(), files, options))
    for (const Diagnostic& found : linted.findings) out += render(found, linted.file.name, linted.file.text);
  CHECK(out.empty());
}

TEST_CASE("what matching the rules of the catalogue costs", "[.][costs]") {
  for (const Rule& rule : standard_catalogue().rules)
    if (!rule.then.empty()) fmt::print("{:10} {}\n", matching_cost(rule, 10'000'000), rule.id);
}
