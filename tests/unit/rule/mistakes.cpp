// Each mistake that a rule file can hold, with its place and a way out; and that nothing else suffers from
// it.
#include <catch2/catch.hpp>
#include <string>

#include "prover/rule/rule.hpp"

using namespace prover;

namespace {

const std::string good = R"(rule third-rail
  title    "third rail"
  kind     theorem
  cost     1.5
  says     "Rails parallel to a third rail are parallel."
  given    parallel: AB, CD; parallel: CD, EF   # both
  where    triangle: AEF
  then     parallel: AB, EF
  plain    "{AB} and {EF} both parallel to {CD}"
  why      There is only one parallel
           through a point.
  source   "our own"
  example  fires   parallel: KL, MN; parallel: MN, PQ;
                   triangle: KPQ
                   gives  parallel: KL, PQ
  example  silent  parallel: KL, MN; triangle: KPQ   gives  parallel: KL, PQ
)";

std::string changed(const std::string& from, const std::string& to) {
  std::string text = good;
  const std::size_t at = text.find(from);
  REQUIRE(at != text.npos);
  return text.replace(at, from.size(), to);
}

// What is said about a file: "line:column: message (try: way out)", one a line.
std::string said(const std::string& text, const std::string& name = "own/third-rail.rule") {
  const LoadedCatalogue loaded = load_catalogue({{name, text}});
  std::string out;
  for (const auto& [file, mistakes] : loaded.mistakes)
    for (const Diagnostic& m : mistakes) {
      const LineColumn at = line_column(file.text, m.span.begin);
      out += (out.empty() ? "" : "\n") + std::to_string(at.line) + ":" + std::to_string(at.column) + ": " +
             m.message;
      if (!m.way_out.empty()) out += " (" + m.way_out + ")";
    }
  CHECK(loaded.catalogue.rules.size() == (out.empty() ? 1u : 0u));
  return out;
}

}  // namespace

TEST_CASE("a good rule file is read whole") {
  CHECK(said(good).empty());
  const LoadedCatalogue loaded = load_catalogue({{"rails/third-rail.rule", good}});
  REQUIRE(loaded.catalogue.rules.size() == 1);
  const Rule& rule = loaded.catalogue.rules.front();
  CHECK(rule.topic == "rails");
  CHECK(rule.kind == RuleKind::theorem);
  CHECK(rule.cost == Rational(3, 2));
  CHECK(rule.why == "There is only one parallel through a point.");
  CHECK(rule.given.size() == 2);
  CHECK(rule.where.size() == 1);
  CHECK(rule.then.size() == 1);
  CHECK(rule.variables.points == std::vector<std::string>{"A", "B", "C", "D", "E", "F"});
  REQUIRE(rule.examples.size() == 2);
  CHECK(rule.examples[0].fires);
  CHECK(rule.examples[0].givens == "parallel: KL, MN; parallel: MN, PQ; triangle: KPQ");
  CHECK(rule.examples[0].conclusion == "parallel: KL, PQ");
  CHECK(rule.examples[0].line == 13);
  CHECK_FALSE(rule.examples[1].fires);
}

TEST_CASE("an unknown field is told with the nearest one") {
  CHECK(said(changed("  plain ", "  plian ")).find("9:3: unknown field `plian` (did you mean `plain`?)") ==
        0);
}

TEST_CASE("a rule without conclusion, premise, wording or examples is refused") {
  CHECK(said(changed("  then     parallel: AB, EF\n", ""))
            .find("1:6: this rule concludes nothing (add a line `then …`)") == 0);
  CHECK(said(changed("  plain    \"{AB} and {EF} both parallel to {CD}\"\n", "")) ==
        "1:6: no plain wording (add `plain \"…\"`)");
  CHECK(said(changed("  example  silent", "  example  fires"))
            .find("1:6: no example in which the rule stays silent") == 0);
  CHECK(said(changed("  example  fires ", "  example  silent"))
            .find("1:6: no example in which the rule fires") == 0);
  CHECK(said(changed("  title    \"third rail\"\n", "")) == "1:6: no `title` (add a line `title …`)");
}

TEST_CASE("letters that are not bound, or bind nothing, are shown") {
  const std::string unbound = said(changed("then     parallel: AB, EF", "then     parallel: AB, EG"));
  CHECK(unbound.find("8:12: G stands in the conclusion but in no premise") != unbound.npos);
  CHECK(said(changed("then     parallel: AB, EF", "then     parallel: AE, EF"))
            .find("6:12: B is used only once") == 0);
}

TEST_CASE("a side condition speaks of position only") {
  const std::string size = said(changed("where    triangle: AEF", "where    equal lengths: AE = AF"));
  CHECK(size.find("7:") == 0);
  CHECK(size.find(
            "`where` holds positions only (order, sides, inside, convex) (move this phrase to `given`)") !=
        size.npos);
}

TEST_CASE("a phrase that would not be tested in full is refused") {
  const std::string shorter = said(changed("parallel: CD, EF ", "parallel: CD, EF; lengths: AB > CD "));
  CHECK(shorter.find("6:") == 0);
  CHECK(shorter.find("a rule speaks by equations") != shorter.npos);
  CHECK(said(changed("parallel: CD, EF ", "parallel: CD, EF; acute: AEF "))
            .find("6:48: a rule cannot ask for this") == 0);
  const std::string side =
      said(changed("parallel: CD, EF ", "parallel: CD, EF; sides: A and C on the same side of EF "));
  CHECK(side.find("6:") == 0);
  CHECK(side.find("a position stands in `where`") != side.npos);
  CHECK(said(changed("then     parallel: AB, EF", "then     line: A, B, E in this order"))
            .find("8:12: a rule cannot conclude this") == 0);
}

TEST_CASE("a builtin must be one of ours, and has no pattern") {
  const std::string pattern = good.substr(good.find("  given"), good.find("  plain") - good.find("  given"));
  CHECK(said(changed(pattern, "  builtin  angles-at-a-pint\n"))
            .find("6:12: unknown builtin \"angles-at-a-pint\" (did you mean `angles-at-a-point`?)") == 0);
  CHECK(said(changed("  plain", "  builtin  join\n  plain"))
            .find("1:6: a builtin has no `given`, `where` or `then`") == 0);
}

TEST_CASE("a wording names places of its rule") {
  CHECK(said(changed("{CD}\"", "{CG}\"")) ==
        "9:45: \"CG\" names no place of this rule (its places are A, B, C, D, E, F)");
  CHECK(said(changed("{CD}\"", "{CD\"")) ==
        "9:44: a brace without its partner (write places as {AB} or {angle ABC})");
  CHECK(said(changed("{CD}\"", "{angle CD}\"")).find("9:45: \"angle CD\" names no place") == 0);
}

TEST_CASE("kinds, costs, quotes and recalled wordings are checked") {
  CHECK(said(changed("kind     theorem", "kind     lemma")).find("3:12: unknown kind \"lemma\"") == 0);
  CHECK(said(changed("cost     1.5", "cost     -1")).find("4:12: a cost is a number, not below 0") == 0);
  CHECK(said(changed("cost     1.5", "cost     1001")).find("4:12: no cost is above 1000") == 0);
  CHECK(said(changed("cost     1.5", "cost     1.5\n  step     costly")).find("5:12: a step is counted, or it is `free`") == 0);
  CHECK(said(changed("cost     1.5", "cost     dear")).find("4:12: a cost is a number, not below 0") == 0);
  CHECK(said(changed("\"third rail\"", "third rail")) ==
        "2:12: `title` holds a text between quotes (write it as \"…\")");
  CHECK(said(changed("  why ", "  recalled uk\n  why "))
            .find("`recalled` names uk, which has no wording here") != std::string::npos);
  CHECK(said(changed("  why ", "  recalled german\n  why ")).find("10:12: unknown wording \"german\"") == 0);
  CHECK(said(changed("  cost     1.5", "  cost     1\n  cost     2")).find("5:3: `cost` is here twice") == 0);
  CHECK(said(changed("gives  parallel: KL, PQ\n  example  silent", "so  parallel: KL, PQ\n  example  silent"))
            .find("13:12: an example reads") == 0);
}

TEST_CASE("what is no rule file at all") {
  CHECK(said("") ==
        "1:1: a rule file begins with `rule` and a name (write for example `rule alternate-angles`)");
  CHECK(said("triangle: ABC\n").find("1:1: a rule file begins with `rule`") == 0);
  CHECK(said(std::string("rule a\0b", 8)).find("1:1: this is not a text file") == 0);
  CHECK(said(changed("third-rail", "Third Rail")).find("1:6: a rule is named in small letters") == 0);
}

TEST_CASE("a phrase that cannot be read is shown in its place, also on a later line") {
  const std::string text = changed("  given    parallel: AB, CD; parallel: CD, EF   # both",
                                   "  given    parallel: AB, CD;\n           parallell CD EF");
  const std::string first = said(text);
  CHECK(first.find("7:") == 0);
}

TEST_CASE("of two rules with one name the first is kept, and all others load") {
  std::string other = changed("third-rail", "fourth-rail");
  const LoadedCatalogue loaded = load_catalogue(
      {{"b/one.rule", good}, {"a/two.rule", good}, {"a/three.rule", other}, {"a/four.rule", "rule x\n"}});
  CHECK(loaded.catalogue.ids() == std::vector<std::string>{"fourth-rail", "third-rail"});
  REQUIRE(loaded.mistakes.size() == 2);
  CHECK(loaded.mistakes[0].first.name == "a/two.rule");
  CHECK(loaded.mistakes[0].second.front().message == "there is a rule `third-rail` already, in b/one.rule");
  CHECK(loaded.mistakes[1].first.name == "a/four.rule");
}

TEST_CASE("line ends of another system and tabs are read too") {
  std::string text;
  for (const char c : good) text += c == '\n' ? "\r\n" : std::string(1, c);
  CHECK(said(text).empty());
}
