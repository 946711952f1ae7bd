// The field `hint`: a sentence for each rung, in each register; what it may not say; and files by which a teacher changes
// or translates the sentences of rules that exist.
#include <catch2/catch.hpp>
#include <string>

#include "prover/rule/rule.hpp"
#include "prover/rule/wording.hpp"

using namespace prover;

namespace {

const std::string head = R"(rule lath-across
  title    "a lath across two rails"
  kind     theorem
  says     "A lath across two parallel rails makes equal angles with them, on opposite sides."
  given    parallel: PA, QD
  where    sides: A and D on opposite sides of PQ
  then     angle APQ = angle DQP
  plain    "{PQ} across {PA} and {QD}"
)";
const std::string tail = R"(  why      As drawn.
  source   "our own"
  example  fires   parallel: KL, MN; sides: L and N on opposite sides of KM   gives  angle LKM = angle NMK
  example  silent  sides: L and N on opposite sides of KM   gives  angle LKM = angle NMK
)";

std::string told(const LoadedCatalogue& loaded) {
  std::string out;
  for (const auto& [file, mistakes] : loaded.mistakes)
    for (const Diagnostic& m : mistakes) {
      const LineColumn at = line_column(file.text, m.span.begin);
      out += (out.empty() ? "" : "\n") + std::to_string(at.line) + ":" + std::to_string(at.column) + ": " + m.message + " (" +
             m.way_out + ")";
    }
  return out;
}

// What is said about a rule file with these lines of hints; they begin at line 9.
std::string said(const std::string& hints) {
  const LoadedCatalogue loaded = load_catalogue({{"own/lath-across.rule", head + hints + tail}});
  CHECK(loaded.catalogue.rules.empty() != told(loaded).empty());
  return told(loaded);
}

Rule lath_with(const std::string& hints) {
  const LoadedCatalogue loaded = load_catalogue({{"own/lath-across.rule", head + hints + tail}});
  REQUIRE(loaded.catalogue.rules.size() == 1);
  return loaded.catalogue.rules.front();
}

const std::vector<std::string> laths = {"K", "L", "M", "N"};  // for P, A, Q, D

}  // namespace

TEST_CASE("a hint sentence has its places filled in, rung by rung", "[hints]") {
  const Rule rule = lath_with(
      "  hint where \"Which lines does {PQ} cut?\"\n"
      "  hint kind \"What do {PA} and {QD} have in common?\"\n"
      "  hint places \"One of the pair is {angle APQ}. Which angle at {Q} belongs to it?\"\n");
  CHECK(fill_hint(rule, Register::plain, HintRung::where, laths) == "Which lines does KM cut?");
  CHECK(fill_hint(rule, Register::plain, HintRung::kind, laths) == "What do KL and MN have in common?");
  CHECK(fill_hint(rule, Register::plain, HintRung::places, laths) == "One of the pair is ∠LKM. Which angle at M belongs to it?");
}

TEST_CASE("a register has its own sentence, or the plain one as it stands", "[hints]") {
  const Rule rule = lath_with(
      "  hint where \"Which lines does {PQ} cut?\"\n  hint us where \"Which rails does {PQ} cross?\"\n"
      "  hint kind \"Look at triangle {PQA}: which lines bound {triangle PQA}?\"\n"
      "  hint sa kind \"Look at {triangle PQA}.\"\n");
  CHECK(fill_hint(rule, Register::us, HintRung::where, laths) == "Which rails does KM cross?");
  CHECK(fill_hint(rule, Register::uk, HintRung::where, laths) == "Which lines does KM cut?");
  CHECK(fill_hint(rule, Register::us, HintRung::kind, laths) == "Look at triangle KML: which lines bound triangle KML?");
  CHECK(fill_hint(rule, Register::sa, HintRung::kind, laths) == "Look at △KML.");
  CHECK(fill_hint(rule, Register::plain, HintRung::places, laths).empty());  // the rule has none
}

TEST_CASE("a hint that cannot be read is told with its place and a way out", "[hints]") {
  CHECK(said("  hint whare \"Look.\"\n").starts_with("9:8: unknown rung \"whare\" (did you mean `where`?)"));
  CHECK(said("  hint fr where \"Look.\"\n").starts_with("9:8: unknown rung \"fr\""));
  CHECK(said("  hint us us where \"Look.\"\n").starts_with("9:11: unknown rung \"us\""));
  CHECK(said("  hint where kind \"Look.\"\n").starts_with("9:14: a sentence between quotes was expected here"));
  CHECK(said("  hint us \"Look.\"\n").starts_with("9:3: a hint says at which rung it stands"));
  CHECK(said("  hint \"Look.\"\n").starts_with("9:3: a hint says at which rung it stands"));
  CHECK(said("  hint where\n").starts_with("9:3: this hint has no sentence"));
  CHECK(said("  hint where \"\"\n").starts_with("9:14: there is nothing between the quotes"));
  CHECK(said("  hint where \"Look.\n").starts_with("9:14: `hint` holds a text between quotes"));
  CHECK(said("  hint where \"Look.\"\n  hint where \"Look!\"\n").starts_with("10:3: this sentence is here twice"));
  CHECK(said("  hint where \"Look at {P.\"\n").starts_with("9:23: a brace without its partner"));
  CHECK(said("  hint where \"Look at {PX}.\"\n").starts_with("9:24: \"PX\" names no place of this rule (its places are P, A, Q, D)"));
  CHECK(said("  hint where \"Look at {P}.\"\n  hint us where \"Look.\"\n  hint kind \"Look.\"\n").empty());
}

TEST_CASE("a hint asks and does not tell: no sign, no number, no two angles that the rule makes equal", "[hints]") {
  CHECK(said("  hint kind \"Is {PA} ∥ {QD}?\"\n").starts_with("9:22: a hint asks in words; \"∥\" states something"));
  CHECK(said("  hint kind \"Is {angle APQ} = something?\"\n").starts_with("9:29: a hint asks in words; \"=\""));
  CHECK(said("  hint kind \"They make 180 together.\"\n").starts_with("9:24: a hint holds no number"));
  const std::string both = "9:16: this hint names together what the rule makes equal or adds up";
  CHECK(said("  hint places \"Compare {angle APQ} and {angle DQP}.\"\n").starts_with(both));
  CHECK(said("  hint places \"Compare {angle QPA} and {angle PQD}.\"\n").starts_with(both));  // the arms the other way round
  // One of them, and the corner of the other; or an angle that the rule says nothing about.
  CHECK(said("  hint places \"Compare {angle APQ} with one at {Q}.\"\n").empty());
  CHECK(said("  hint places \"Compare {angle APQ} and {angle PAQ}.\"\n").empty());
}

TEST_CASE("a file of hints changes or translates the sentences of a rule", "[hints]") {
  const std::string rule = head + "  hint where \"Which lines does {PQ} cut?\"\n  hint kind \"Look.\"\n" + tail;
  const auto with = [&](const std::string& text) {
    return load_catalogue({{"school/hints/ours.hints", text}, {"own/lath-across.rule", rule}});
  };
  const LoadedCatalogue changed = with(
      "# our own\nrule lath-across\n  hint where \"Welche Linien schneidet {PQ}?\"\n"
      "  hint us places \"Which angle at {Q}?\"\n");
  CHECK(told(changed).empty());
  REQUIRE(changed.catalogue.rules.size() == 1);
  const Rule& lath = changed.catalogue.rules[0];
  CHECK(fill_hint(lath, Register::plain, HintRung::where, laths) == "Welche Linien schneidet KM?");
  CHECK(fill_hint(lath, Register::plain, HintRung::kind, laths) == "Look.");  // what is not changed stays
  CHECK(fill_hint(lath, Register::us, HintRung::places, laths) == "Which angle at M?");

  // Mistakes are told, and the rule keeps its own sentence.
  const LoadedCatalogue wrong = with(
      "rule lath-acros\n  hint where \"A\"\nrule lath-across\n  hint where \"Is {PA} ∥ {QD}?\"\n  plain \"laths\"\n  hint kind \"B\"\n  hint kind \"C\"\n");
  CHECK(told(wrong) ==
        "1:6: there is no rule \"lath-acros\" (did you mean `lath-across`?)\n"
        "4:23: a hint asks in words; \"∥\" states something (ask for it, and write places as {AB} or {angle ABC})\n"
        "5:3: unknown field `plain` (a file of hints holds `rule` and `hint`)\n"
        "7:3: this sentence is here twice (keep one of them)");
  CHECK(fill_hint(wrong.catalogue.rules[0], Register::plain, HintRung::where, laths) == "Which lines does KM cut?");
  CHECK(fill_hint(wrong.catalogue.rules[0], Register::plain, HintRung::kind, laths) == "B");
  CHECK(told(with("  hint where \"A\"\n")).starts_with("1:3: this hint belongs to no rule"));
  CHECK(told(with("rule\n")).starts_with("1:1: there is no rule \"\""));

  // What is no such file is told as far as anybody would read; lines may end as on other systems.
  std::string junk;
  for (int i = 0; i < 1000; ++i) junk += "lath " + std::to_string(i) + "\n";
  const LoadedCatalogue no_hints = with(junk);
  REQUIRE(no_hints.mistakes.size() == 1);
  CHECK(no_hints.mistakes[0].second.size() == 51);
  CHECK(told(with("rule lath-across\r\n  hint kind \"A\"\r\n")).empty());
  CHECK(told(with("")).empty());
}
