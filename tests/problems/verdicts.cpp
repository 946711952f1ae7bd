// What is said when there is more to say than a proof.
#include <set>

#include "tests/problems/asked.hpp"

using namespace prover;
using asked::ask;
using asked::cites;

namespace {
const std::string isosceles = "triangle: KLM\nKL = KM\nangle LKM = 40\n";
const std::string rails =
    "parallel: KL, MN\nsides: L and N on opposite sides of KM\ntriangle: KLM\ntriangle: KMN\n";
}  // namespace

TEST_CASE("givens that exclude each other are contradictory, with those at fault; their tame twins are not") {
  struct Twins {
    const char *wild, *tame;
    std::size_t at_fault;
  };
  for (const Twins& twins :
       {Twins{"triangle: KLM\nangle KLM = 50\nangle LMK = 60\nangle MKL = 80\nKL = 7\n",
              "triangle: KLM\nangle KLM = 50\nangle LMK = 60\nangle MKL = 70\nKL = 7\n", 3},
        Twins{"triangle: KLM\nangle KLM = 100\nangle LMK = 90\n",
              "triangle: KLM\nangle KLM = 80\nangle LMK = 90\n", 2},
        Twins{"triangle: KLM\nKL = KM\nangle KLM = 50\nangle LMK = 60\n",
              "triangle: KLM\nKL = KM\nangle KLM = 50\nangle LMK = 50\n", 3}}) {
    INFO(twins.wild);
    const Answer wild = ask(std::string(twins.wild) + "find: angle LKM\n");
    CHECK(wild.verdict == Verdict::contradictory);
    CHECK(wild.value.empty());
    CHECK(wild.conflict.size() == twins.at_fault);
    INFO(twins.tame);
    CHECK(ask(std::string(twins.tame) + "find: angle LKM\n").verdict == Verdict::proved);
  }
}

TEST_CASE("two arrangements with different answers are both answered") {
  // Nothing says on which side of KM the laths KL and MN run.
  const Answer open = ask("parallel: KL, MN\nangle LKM = 40\nfind: angle KMN\n");
  CHECK(open.verdict == Verdict::depends_on_figure);
  CHECK(open.value.empty());
  std::set<std::string> values, names;
  for (const AnswerCase& one : open.cases) {
    values.insert(one.value);
    names.insert(one.name);
  }
  CHECK(values == std::set<std::string>{"140", "40"});
  CHECK(names.size() == 2);
  CHECK(open.figures.size() == 2);
  const Answer closed =
      ask("parallel: KL, MN\nangle LKM = 40\nsides: L and N on the same side of KM\nfind: angle KMN\n");
  CHECK(closed.verdict == Verdict::proved);
  CHECK(closed.value == "140");
}

TEST_CASE("isosceles without saying which sides has an answer for each case") {
  const Answer open = ask("isosceles: triangle KLM\nangle LKM = 40\nfind: angle KLM\n");
  CHECK(open.verdict == Verdict::depends_on_figure);
  std::multiset<std::string> values;
  for (const AnswerCase& one : open.cases) values.insert(one.value);
  CHECK(values == std::multiset<std::string>{"100", "40", "70"});
  // An angle of 100° can only be at the apex: one case is left.
  const Answer closed = ask("isosceles: triangle KLM\nangle LKM = 100\nfind: angle KLM\n");
  CHECK(closed.verdict == Verdict::proved);
  CHECK(closed.value == "40");
}

TEST_CASE("what is not settled is undetermined, with two figures that differ") {
  const Answer open = ask("triangle: KLM\nangle KLM = 50\nfind: angle LKM\n");
  CHECK(open.verdict == Verdict::undetermined);
  REQUIRE(open.figures.size() == 2);
  REQUIRE(open.figures[0].value);
  REQUIRE(open.figures[1].value);
  CHECK(std::abs(*open.figures[0].value - *open.figures[1].value) > 1e-3);
}

TEST_CASE("larger and smaller are proved as a textbook does, and the wrong way round they are false") {
  const std::string angles = "triangle: KLM\nangle KLM = 50\nangle KML = 60\n";
  const Answer sides = ask(angles + "prove: KL > KM\n");
  CHECK(sides.verdict == Verdict::proved);
  CHECK(cites(sides, "greater-angle-greater-side"));
  CHECK(ask(angles + "prove: KM > KL\n").verdict == Verdict::false_claim);
  CHECK(ask(angles + "prove: angle KLM < angle KML\n").verdict == Verdict::proved);
  CHECK(ask(angles + "prove: angle KLM > angle KML\n").verdict == Verdict::false_claim);
  // 70° faces LM, the largest side; which of the others is larger than half of it, nobody says.
  CHECK(ask(angles + "prove: LM > KL\n").verdict == Verdict::proved);
  CHECK(cites(ask("triangle: KLM\nKL > KM\nprove: angle KLM < angle KML\n"), "greater-side-greater-angle"));
  CHECK(ask("triangle: KLM\nKL > LM\nprove: angle KLM < angle KML\n").verdict == Verdict::false_claim);
  CHECK(cites(ask("triangle: KLM\nprove: KL < KM + ML\n"), "triangle-inequality"));
  CHECK(ask("triangle: KLM\nprove: 2KL < KM + ML\n").verdict == Verdict::false_claim);
  CHECK(cites(ask("triangle: KLM\ntriangle: PQR\nKL = PQ\nKM = PR\nangle LKM = 60\nangle QPR = 50\nprove: LM > QR\n"), "hinge"));
  CHECK(ask("triangle: KLM\ntriangle: PQR\nKL = PQ\nKM = PR\nangle KLM = 60\nangle PQR = 50\nprove: LM > QR\n").verdict ==
        Verdict::false_claim);
  // Through a further line: P on the base, KP = KM, so the angle at P outside is more than that at L.
  CHECK(ask("triangle: KLM\nline: L, P, M in this order\nKP = KM\nprove: KL > KM\n").verdict == Verdict::proved);
  CHECK(ask("triangle: KLM\nline: L, M, P in this order\nKP = KM\nprove: KL < KM\n").verdict != Verdict::proved);
}

TEST_CASE("an inequality that nothing shows is not proved") {
  CHECK(ask("triangle: KLM\nprove: KL > KM\n").verdict == Verdict::false_claim);
  // True, by the law of sines alone: nothing here compares sides of different triangles with different angles.
  CHECK(ask("triangle: KLM\nangle KLM = 60\nangle KML = 50\nprove: 3KM > 2LM\n").verdict != Verdict::proved);
}

TEST_CASE("only what has been taught is cited") {
  const Answer alternate =
      ask(rails + "angle LKM = 40\ntaught: alternate-interior-angles\nfind: angle KMN\n");
  CHECK(alternate.value == "40");
  CHECK(cites(alternate, "alternate-interior-angles"));
  const Answer nothing = ask(rails + "angle LKM = 40\ntaught: triangle-angle-sum\nfind: angle KMN\n");
  CHECK(nothing.verdict != Verdict::proved);
  CHECK(nothing.verdict != Verdict::undetermined);

  ProveOptions options;
  options.taught = {"isosceles-base-angles", "triangle-angle-sum"};
  CHECK(ask(isosceles + "find: angle KLM\n", options).value == "70");
  options.taught = {"triangle-angle-sum"};
  CHECK(ask(isosceles + "find: angle KLM\n", options).verdict != Verdict::proved);
}

TEST_CASE("what holds in every figure but is not reached is beyond the rules") {
  ProveOptions options;
  options.taught = {"triangle-angle-sum"};
  const Answer answer = ask("triangle: KLM\nKL = KM\nprove: angle KLM = angle KML\n", options);
  CHECK(answer.verdict == Verdict::beyond_rules);
  CHECK(answer.proofs.empty());
  CHECK(ask("triangle: KLM\nKL = LM\nprove: angle KLM = angle KML\n", options).verdict ==
        Verdict::false_claim);
}

// All figures for these givens are one figure (up to size), so only one is drawn; three are asked for.
TEST_CASE("a rigid figure is enough to say beyond the rules") {
  ProveOptions options;
  options.taught = {"triangle-angle-sum"};
  CHECK(ask(isosceles + "find: angle KLM\n", options).verdict == Verdict::beyond_rules);
}

TEST_CASE("what is left out is not cited, and another way is taken where there is one") {
  const std::string exterior =
      "triangle: KLM\nline: L, M, P in this order\nangle KLM = 50\nangle LKM = 60\nfind: angle KMP\n";
  CHECK(cites(ask(exterior), "exterior-angle-of-triangle"));
  ProveOptions options;
  options.without = {"exterior-angle-of-triangle"};
  const Answer other = ask(exterior, options);
  CHECK(other.value == "110");
  CHECK_FALSE(cites(other, "exterior-angle-of-triangle"));
  CHECK(other.proofs.at(0).steps.size() > ask(exterior).proofs.at(0).steps.size());
}

TEST_CASE("the same problem has the same answer each time") {
  auto printed = [](const Answer& answer) {
    std::string text = std::string(name_of(answer.verdict)) + answer.value + answer.summary + answer.stop;
    for (const AnswerProof& proof : answer.proofs) {
      text += proof.title + proof.cost + proof.case_name;
      for (const AnswerStep& step : proof.steps) text += step.claim + step.reason;
      for (const std::string& seen : proof.seen_in_figure) text += seen;
    }
    for (const AnswerFigure& figure : answer.figures)
      for (const auto& [name, p] : figure.points)
        text += name + std::to_string(p.first) + std::to_string(p.second);
    return text;
  };
  for (const std::string& text :
       {isosceles + "find: angle KLM\n", std::string("parallel: KL, MN\nangle LKM = 40\nfind: angle KMN\n"),
        std::string("triangle: KLM\nangle KLM = 50\nfind: angle LKM\n")}) {
    INFO(text);
    CHECK(printed(ask(text)) == printed(ask(text)));
  }
}

TEST_CASE("a limit ends the work and is named") {
  ProveOptions options;
  std::stop_source source;
  source.request_stop();
  options.budget.stop = source.get_token();
  const Answer stopped = prove(isosceles + "find: angle KLM\n", standard_catalogue(), options);
  CHECK(stopped.verdict == Verdict::unknown);
  CHECK(stopped.stop == "interrupted");
  CHECK(stopped.proofs.empty());
  CHECK(ask(isosceles + "find: angle KLM\n").stop == "saturated");
}

// A check that had no time to run is taken for one that objects.
TEST_CASE("no time for a check is not a disagreement") {
  ProveOptions options;
  std::stop_source source;
  source.request_stop();
  options.budget.stop = source.get_token();
  CHECK_FALSE(prove(isosceles + "find: angle KLM\n", standard_catalogue(), options).checks_disagree);
}

TEST_CASE("fewest-steps and classroom measure the same problem, each by its name") {
  ProveOptions options;
  options.measure = "fewest-steps";
  const Answer steps = ask(isosceles + "find: angle KLM\n", options);
  CHECK(steps.value == "70");
  CHECK(steps.proofs.at(0).measure == "fewest-steps");
  CHECK(ask(isosceles + "find: angle KLM\n").proofs.at(0).measure == "classroom");
}

// The angle at the rim is taught long after base angles; where nothing earlier does, `early` takes it too.
TEST_CASE("early goes by what is taught first, also where that is longer") {
  const std::string hoop = "circle: centre O through K, L, M\nline: K, O, L in this order\nangle LKM = 34\nfind: angle KOM\n";
  ProveOptions early;
  early.measure = "early";
  const Answer soon = ask(hoop, early), short_one = ask(hoop);
  CHECK(soon.value == "112");
  CHECK(soon.proofs.at(0).measure == "early");
  const auto cites = [](const Answer& answer, const char* rule) {
    const auto& rules = answer.proofs.at(0).rules;
    return std::find(rules.begin(), rules.end(), rule) != rules.end();
  };
  CHECK(cites(soon, "isosceles-base-angles"));
  CHECK_FALSE(cites(soon, "inscribed-angle-centre"));
  CHECK(cites(short_one, "inscribed-angle-centre"));
  early.without_only = {"isosceles-base-angles"};
  CHECK(cites(ask(hoop, early), "inscribed-angle-centre"));
}

TEST_CASE("a mistake in the text or the options is told and nothing is tried") {
  ProveOptions options;
  options.without = {"exterior-angel-of-triangle"};
  for (const Answer& answer :
       {prove("triangle: KLM\nfind: angle KLN\n", standard_catalogue()),
        prove("triangle: KLM\nfind: angle KLM\n", standard_catalogue(), options),
        prove("triangle: KLM\ntaught: no-such-rule\nfind: angle KLM\n", standard_catalogue())}) {
    CHECK(has_error(answer.diagnostics));
    CHECK(answer.proofs.empty());
    CHECK(answer.value.empty());
  }
}
