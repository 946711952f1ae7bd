// Marks by a scheme, from judgements written by hand. Every piece of work has its wrong twin. No R without its S, and S is
// independent of the reason: ZA5. Communication marks stand apart from accuracy: UK2. What else is forgiven or not is
// common practice, and stands in rules/schemes with its source.
#include <catch2/catch.hpp>

#include <numeric>

#include "prover/marking/marks.hpp"
#include "prover/marking/marks_lines.hpp"
#include "prover/marking/marks_tally.hpp"
#include "tests/unit/marking/ways.hpp"

using namespace prover;

namespace {

JudgedLine line(LineStatus status, std::string text, std::vector<int> steps = {}, std::vector<int> reasoned = {}) {
  JudgedLine judged;
  judged.status = status;
  judged.text = judged.read_as = std::move(text);
  judged.steps = std::move(steps);
  judged.reasoned_steps = std::move(reasoned);
  judged.stated = status == LineStatus::right || status == LineStatus::right_no_reason || status == LineStatus::wrong_reason ||
                  status == LineStatus::reason_not_accepted || status == LineStatus::given || status == LineStatus::not_taught ||
                  status == LineStatus::follows_from_error || status == LineStatus::construction;
  judged.reasoned = !judged.reasoned_steps.empty();
  return judged;
}

struct Work {
  AnswerProof way = laths();
  SchemeRequest request;
  std::vector<std::string> givens = {"KL ∥ PQ", "KL = KQ", "∠PQK = 52°"};
  bool complete = false;

  Judgement judged(std::vector<JudgedLine> lines) const {
    Judgement judgement;
    judgement.problem.verdict = Verdict::proved;
    judgement.problem.read_as = givens;
    judgement.way = way;
    judgement.lines = std::move(lines);
    judgement.complete = complete;
    int n = 0;
    for (JudgedLine& one : judgement.lines) one.number = ++n;
    return judgement;
  }
  Scheme scheme(const SchemePolicy& policy) const { return scheme_of(way, standard_catalogue(), policy, request); }
  Marks marks(const SchemePolicy& policy, std::vector<JudgedLine> lines) const {
    const Scheme by = scheme(policy);
    const Judgement judgement = judged(std::move(lines));
    const Marks given = marks_of(judgement, by);
    // Whatever was written: what the lines and the missing steps could earn is the total, and nobody earns more.
    int possible = 0, awarded = 0;
    for (const LineMarks& one : given.lines) {
      CHECK(one.awarded <= one.possible);
      possible += one.possible, awarded += one.awarded;
    }
    for (const GivenMark& one : given.missing) {
      possible += one.possible;
      CHECK(one.awarded == 0);
    }
    CHECK(possible == by.total);
    CHECK(given.possible == by.total);
    CHECK(given.awarded == awarded);
    return given;
  }
  Marks marks(const char* policy, std::vector<JudgedLine> lines) const { return marks(*find_scheme(policy), std::move(lines)); }
};

// "1/1 0/1 1/1"
std::string by_line(const Marks& marks) {
  std::string text;
  for (const LineMarks& one : marks.lines)
    text += (text.empty() ? "" : " ") + std::to_string(one.awarded) + "/" + std::to_string(one.possible);
  return text;
}
SchemePolicy with(const char* id, const std::function<void(SchemePolicy&)>& change) {
  SchemePolicy policy = *find_scheme(id);
  change(policy);
  return policy;
}

JudgedLine alternate() { return line(LineStatus::right, "∠LKQ = 52°", {1}, {1}); }
JudgedLine base_angles() { return line(LineStatus::right, "∠KLQ = ∠KQL", {2}, {2}); }
JudgedLine answer() { return line(LineStatus::right, "∠KLQ = 64°", {3}, {3}); }
JudgedLine bare_answer(int gap = 3) {
  JudgedLine judged = line(LineStatus::unsupported, "∠KLQ = 64°");
  judged.gap = gap;
  return judged;
}
JudgedLine refused(JudgedLine judged, ReasonLack lacks) {
  judged.lacks = lacks;
  judged.reasoned = false;
  judged.reasoned_steps.clear();
  judged.status = lacks == ReasonLack::nickname ? LineStatus::reason_not_accepted : LineStatus::right_no_reason;
  return judged;
}

}  // namespace

TEST_CASE("all that is asked, with its reasons, is full marks in every scheme", "[marking][marks]") {
  const Work work;
  for (const SchemePolicy& policy : standard_schemes()) {
    INFO(policy.id);
    const Marks marks = work.marks(policy, {alternate(), base_angles(), answer()});
    CHECK(marks.awarded == marks.possible);
    CHECK(marks.missing.empty());
    CHECK(work.marks(policy, {}).awarded == 0);
    CHECK(work.marks(policy, {alternate(), base_angles()}).awarded < marks.possible);
  }
  CHECK(by_line(work.marks("sa", {alternate(), base_angles(), answer()})) == "1/1 1/1 1/1");
}

TEST_CASE("a statement without its reason: S stands, R does not", "[marking][marks]") {
  const Work work;
  const JudgedLine bare = line(LineStatus::right_no_reason, "∠LKQ = 52°", {1});
  CHECK(by_line(work.marks("sa", {bare, base_angles(), answer()})) == "0/1 1/1 1/1");  // S/R is one mark for both
  CHECK(by_line(work.marks("us", {bare, base_angles(), answer()})) == "1/2 2/2 2/2");
  CHECK(by_line(work.marks("uk", {bare, base_angles(), answer()})) == "1/2 2/2 1/1");  // one reason given, but not all
}

TEST_CASE("no R without its S", "[marking][marks]") {
  const Work work;
  JudgedLine wrong = line(LineStatus::false_line, "∠LKQ = 53°", {1}, {1});
  for (const SchemePolicy& policy : standard_schemes()) {
    INFO(policy.id);
    const Marks marks = work.marks(policy, {wrong});
    CHECK(marks.awarded == 0);
    CHECK(marks.lines[0].possible > 0);
  }
}

TEST_CASE("a reason is needed once, wherever it is named; the same missing reason costs once", "[marking][marks]") {
  Work work;
  work.way = angle_sum();
  work.request.finds = false;
  const JudgedLine sum = line(LineStatus::right, "∠PKL + ∠LKM + ∠MKQ = 180°", {1}, {1}), end = line(LineStatus::right, "∴", {4}, {4});
  const auto first = [](bool why) { return line(LineStatus::right, "∠PKL = ∠KLM", {2}, why ? std::vector<int>{2} : std::vector<int>{}); };
  const auto second = [](bool why) { return line(LineStatus::right, "∠MKQ = ∠KML", {3}, why ? std::vector<int>{3} : std::vector<int>{}); };
  CHECK(by_line(work.marks("sa", {sum, first(true), second(true), end})) == "1/1 1/1 1/1 1/1");
  CHECK(by_line(work.marks("sa", {sum, first(true), second(false), end})) == "1/1 1/1 1/1 1/1");
  CHECK(by_line(work.marks("sa", {sum, first(false), second(true), end})) == "1/1 1/1 1/1 1/1");
  CHECK(by_line(work.marks("sa", {sum, first(false), second(false), end})) == "1/1 0/1 1/1 1/1");
  CHECK(by_line(work.marks("us", {sum, first(false), second(false), end})) == "2/2 1/2 1/2 1/1");  // there, each time
}

TEST_CASE("an error is carried: method marks after a first wrong number", "[marking][marks]") {
  const Work work;
  const JudgedLine wrong = line(LineStatus::false_line, "∠LKQ = 54°");
  const JudgedLine carried = line(LineStatus::follows_from_error, "∠KLQ = 63°");
  CHECK(by_line(work.marks("sa", {wrong, base_angles(), carried})) == "0/1 1/1 0/1");  // the answer itself is wrong
  CHECK(by_line(work.marks("uk", {wrong, base_angles(), carried})).starts_with("0/"));
  CHECK(by_line(work.marks("friendly", {wrong, base_angles(), carried})) == "0/1 1/1 1/1");  // one error is charged once
  // On the way a step that follows keeps its statement.
  Work longer;
  longer.way.steps.insert(longer.way.steps.begin(), way_step(1, "∠PQK = 52°", "vertical-angles", "vertically opposite angles at Q"));
  for (std::size_t i = 1; i < 4; ++i) longer.way.steps[i].n = static_cast<int>(i) + 1;
  longer.way.steps[1].uses = {1}, longer.way.steps[3].uses = {2, 3};
  longer.givens.pop_back();
  const JudgedLine first = line(LineStatus::false_line, "∠PQK = 54°"),
                   second = line(LineStatus::follows_from_error, "∠LKQ = 54°", {2}, {2});
  CHECK(by_line(longer.marks("sa", {first, second})) == "0/1 1/1");
  const SchemePolicy none = with("sa", [](SchemePolicy& p) { p.carried_errors = CarriedErrors::nothing; });
  CHECK(by_line(longer.marks(none, {first, second})) == "0/1 0/1");
}

TEST_CASE("errors are carried no further than an angle that cannot be", "[marking][marks]") {
  const Work work;
  const JudgedLine wrong = line(LineStatus::false_line, "∠LKQ = 190°");
  const JudgedLine carried = line(LineStatus::follows_from_error, "∠KLQ = −5°");
  CHECK(by_line(work.marks("friendly", {wrong, base_angles(), carried})) == "0/1 1/1 0/1");
  CHECK(impossible_angle("∠KLQ = −5°"));
  CHECK(impossible_angle("∠KLQ = 180 − 190 = -10"));
  CHECK(impossible_angle("∠KLQ = 0°"));
  CHECK(impossible_angle("∠KLQ = 190°"));
  CHECK_FALSE(impossible_angle("reflex ∠KLQ = 190°"));
  CHECK_FALSE(impossible_angle("∠KLQ + ∠LQP = 180°"));
  CHECK_FALSE(impossible_angle("∠KLQ = 64°"));
  CHECK_FALSE(impossible_angle("KL = 200"));
}

TEST_CASE("a slip in the arithmetic costs the accuracy mark, not the method", "[marking][marks]") {
  const Work work;
  const JudgedLine slip = line(LineStatus::arithmetic_slip, "∠KLQ = (180 − 52) ÷ 2 = 63°");
  CHECK(by_line(work.marks("sa", {alternate(), base_angles(), slip})) == "1/1 1/1 0/1");
  Work alone;
  alone.way = one_sum();
  const JudgedLine sum = line(LineStatus::arithmetic_slip, "∠LKM = 180° − 50° − 60° = 80°");
  CHECK(by_line(alone.marks("uk", {sum})) == "1/3");  // M1 A0 C0: the reason was not named
  const SchemePolicy whole = with("uk", [](SchemePolicy& p) { p.arithmetic_slip = Slip::whole_line; });
  CHECK(by_line(alone.marks(whole, {sum})) == "0/3");
}

TEST_CASE("the right answer and no way to it", "[marking][marks]") {
  Work work;
  CHECK(work.marks("sa", {bare_answer()}).awarded == 1);
  CHECK(work.marks("sa", {bare_answer()}).missing.size() == 2);
  CHECK(work.marks("strict", {bare_answer()}).awarded == 0);
  CHECK(work.marks("uk", {bare_answer()}).awarded == 3);  // its method is implied; the reasons are not
  work.request.reasons_asked = true;
  CHECK(work.marks("uk", {bare_answer()}).awarded == 1);
  JudgedLine other = bare_answer();
  other.read_as = other.text = "∠KLQ = 60°";
  CHECK(work.marks("sa", {other}).awarded == 0);
  other.status = LineStatus::false_line;
  CHECK(work.marks("uk", {other}).awarded == 0);
}

TEST_CASE("to show a claim by the claim alone earns nothing", "[marking][marks]") {
  Work work;
  work.request.finds = false;
  for (const SchemePolicy& policy : standard_schemes()) {
    INFO(policy.id);
    CHECK(work.marks(policy, {bare_answer(1)}).awarded == 0);
    CHECK(work.marks(policy, {bare_answer(3)}).awarded == 0);
  }
}

TEST_CASE("a gap keeps the statement's mark as far as the scheme allows", "[marking][marks]") {
  const Work work;
  CHECK(by_line(work.marks("sa", {alternate(), bare_answer(1)})) == "1/1 1/1");
  CHECK(work.marks("sa", {alternate(), bare_answer(1)}).awarded == 2);  // the step left out stays unpaid
  CHECK(work.marks("uk", {alternate(), bare_answer(1)}).lines[1].awarded == 2);  // its method is implied: B and A
  JudgedLine middle = line(LineStatus::unsupported, "∠KLQ = ∠KQL");
  middle.gap = 2;
  CHECK(work.marks("sa", {alternate(), middle}).awarded == 1);
  CHECK(by_line(work.marks("us", {alternate(), middle})) == "2/2 0/2");
}

TEST_CASE("what a scheme forgives in the words of a reason", "[marking][marks]") {
  const Work work;
  const auto first = [&](const char* scheme, ReasonLack lacks) {
    return work.marks(scheme, {refused(alternate(), lacks), base_angles(), answer()}).lines[0].awarded;
  };
  CHECK(first("sa", ReasonLack::lines) == 0);      // ZA7: without the lines the mark is lost
  CHECK(first("plain", ReasonLack::lines) == 1);
  CHECK(first("sa", ReasonLack::nickname) == 0);
  CHECK(first("friendly", ReasonLack::nickname) == 1);
  CHECK(first("sa", ReasonLack::relation) == 1);
  CHECK(first("strict", ReasonLack::relation) == 1);  // S stands, R does not
  for (const char* scheme : {"sa", "plain", "friendly"}) {
    CHECK(first(scheme, ReasonLack::absent) == 0);
    CHECK(first(scheme, ReasonLack::vague) == 0);
    CHECK(first(scheme, ReasonLack::other) == 0);
  }
}

TEST_CASE("a theorem that was not taught", "[marking][marks]") {
  const Work work;
  JudgedLine untaught = alternate();
  untaught.status = LineStatus::not_taught;
  const auto first = [&](const char* scheme) { return by_line(work.marks(scheme, {untaught, base_angles(), answer()})).substr(0, 3); };
  CHECK(first("friendly") == "1/1");
  CHECK(first("sa") == "0/1");
  CHECK(first("strict") == "0/2");
}

TEST_CASE("a given with another number: what follows from it is carried", "[marking][marks]") {
  const Work work;
  const JudgedLine miscopied = line(LineStatus::false_line, "∠PQK = 25°");
  const JudgedLine carried = line(LineStatus::follows_from_error, "∠LKQ = 25°", {1}, {1}), end = line(LineStatus::follows_from_error, "∠KLQ = 77.5°");
  CHECK(by_line(work.marks("sa", {miscopied, carried, base_angles(), end})) == "0/0 1/1 1/1 1/1");
  CHECK(by_line(work.marks("strict", {miscopied, carried, base_angles(), end})) == "0/0 2/2 2/2 0/2");
}

TEST_CASE("the sign of degrees, and letters that do not correspond", "[marking][marks]") {
  Work work;
  JudgedLine end = answer();
  end.text = "∠KLQ = 64";
  CHECK(work.marks("sa", {alternate(), base_angles(), end}).awarded == 3);
  CHECK(by_line(work.marks("strict", {alternate(), base_angles(), end})) == "2/2 2/2 0/2");
  work.way = way_of({way_step(1, "△ABC ≅ △BAD", "congruent-sas", "SAS"), way_step(2, "AC = BD", "congruent-parts", "corresponding parts", {1}, true)});
  work.request.finds = false;
  const JudgedLine crossed = line(LineStatus::false_line, "△ABC ≅ △ABD", {}, {1}), parts = line(LineStatus::right, "AC = BD", {2}, {2});
  CHECK(by_line(work.marks("sa", {crossed, parts})) == "0/1 1/1");
  CHECK(by_line(work.marks("friendly", {crossed, parts})) == "1/1 1/1");
  JudgedLine others = crossed;
  others.read_as = "△ABC ≅ △ACD";
  CHECK(work.marks("friendly", {others, parts}).lines[0].awarded == 0);
}

TEST_CASE("what earns nothing takes nothing: remarks, givens, what is crossed out, unread or not needed", "[marking][marks]") {
  const Work work;
  std::vector<JudgedLine> lines;
  for (const LineStatus status : {LineStatus::remark, LineStatus::given, LineStatus::crossed_out, LineStatus::unread, LineStatus::not_needed})
    lines.push_back(line(status, "∠KQP = 52°"));
  lines.insert(lines.end(), {alternate(), base_angles(), answer()});
  CHECK(by_line(work.marks("sa", lines)) == "0/0 0/0 0/0 0/0 0/0 1/1 1/1 1/1");
  // Crossed out and nothing in its place: some schemes have it looked at.
  CHECK(work.marks("sa", {line(LineStatus::crossed_out, "~~∠KLQ = 64°~~")}).notes.size() == 1);
  CHECK(work.marks("plain", {line(LineStatus::crossed_out, "~~∠KLQ = 64°~~")}).notes.empty());
}

TEST_CASE("a wrong line that is put right later costs nothing", "[marking][marks]") {
  const Work work;
  CHECK(by_line(work.marks("sa", {line(LineStatus::false_line, "∠LKQ = 53°"), alternate(), base_angles(), answer()})) == "0/0 1/1 1/1 1/1");
}

TEST_CASE("a way of one's own: when each line follows and the end is reached, the marks are full", "[marking][marks]") {
  Work work;
  const JudgedLine own = line(LineStatus::right, "∠KQL = ∠KLQ and ∠KQL + ∠KLQ = 128°", {3}, {3});
  CHECK(work.marks("sa", {own}).awarded < 3);  // the end was not reached
  work.complete = true;
  CHECK(work.marks("sa", {own}).awarded == 3);
  CHECK(by_line(work.marks("sa", {alternate(), line(LineStatus::right_no_reason, "∠KLQ = 64°", {3})})) == "1/1 1/2");  // and a reason short
}

TEST_CASE("what rests on what is to be shown earns nothing", "[marking][marks]") {
  // ZA5: to assume an answer in order to solve is not acceptable.
  const Work work;
  JudgedLine assumed = line(LineStatus::assumes_the_claim, "∠KLQ = 64°"), after = base_angles();
  after.uses = {1};
  CHECK(work.marks("sa", {assumed, after}).awarded == 0);
  after.uses.clear();
  CHECK(work.marks("sa", {assumed, after}).awarded == 1);
}

TEST_CASE("a line drawn earns its mark where the way needs it", "[marking][marks]") {
  Work work;
  work.way.steps.insert(work.way.steps.begin(), way_step(1, "Join KQ", "construction", "join two points"));
  for (std::size_t i = 1; i < 4; ++i) work.way.steps[i].n = static_cast<int>(i) + 1;
  CHECK(by_line(work.marks("sa", {line(LineStatus::construction, "Join KQ")})) == "1/1");
  CHECK(Work().marks("sa", {line(LineStatus::construction, "Join LP")}).lines[0].possible == 0);
}

TEST_CASE("where nothing is proved there is no scheme, and no mark", "[marking][marks]") {
  Judgement judgement = Work().judged({alternate()});
  judgement.way.reset();
  const Marks marks = marks_of(judgement, Scheme());
  CHECK(marks.possible == 0);
  CHECK(marks.lines.size() == 1);
  CHECK(marks.notes.size() == 1);
}

TEST_CASE("two hundred lines of anything never earn more than the total", "[marking][marks]") {
  // A fixed mixture of all that can be said of a line, each line for some step; `marks` checks the sums.
  const Work work;
  for (unsigned start = 1; start <= 40; ++start) {
    std::vector<JudgedLine> lines;
    unsigned next = start * 2654435761U;
    for (int i = 0; i < 200; ++i) {
      next = next * 1664525U + 1013904223U;
      const int step = static_cast<int>((next >> 9) % 4);
      JudgedLine one = line(static_cast<LineStatus>((next >> 16) % 19), "∠KLQ = 64°", step == 0 ? std::vector<int>{} : std::vector<int>{step},
                            (next >> 5) % 2 == 0 || step == 0 ? std::vector<int>{} : std::vector<int>{step});
      one.gap = static_cast<int>((next >> 3) % 4);
      one.lacks = static_cast<ReasonLack>((next >> 11) % 7);
      lines.push_back(std::move(one));
    }
    for (const SchemePolicy& policy : standard_schemes()) {
      const Marks marks = work.marks(policy, lines);
      CHECK(marks.awarded <= marks.possible);
    }
  }
}

TEST_CASE("which step a wrong line was meant for", "[marking][marks]") {
  const std::vector<AnswerStep> steps = laths().steps;
  CHECK(step_meant("∠QKL = 53°", steps, {1, 2, 3}) == 1);  // an angle is read from either end
  CHECK(step_meant("∠KLQ = 60°", steps, {1, 2, 3}) == 3);
  CHECK(step_meant("∠KQL = ∠KLQ", steps, {1, 2, 3}) == 2);
  CHECK_FALSE(step_meant("∠LPQ = 60°", steps, {1, 2, 3}));
  CHECK_FALSE(step_meant("KL = 60", steps, {1, 2, 3}));
  CHECK_FALSE(step_meant("∠QKL = 53°", steps, {2, 3}));
}

TEST_CASE("a class: who reached which step, and which wrong ideas appeared", "[marking][marks]") {
  const Work work;
  const Scheme scheme = work.scheme(*find_scheme("sa"));
  JudgedLine mistaken = line(LineStatus::false_line, "∠LKQ = 128°");
  mistaken.mistake = "alternate-supplementary", mistaken.mistake_name = "alternate angles taken to make 180°";
  const Judgement own = work.judged({}), full = work.judged({alternate(), base_angles(), answer()}),
                  half = work.judged({line(LineStatus::right_no_reason, "∠LKQ = 52°", {1})}), wrong = work.judged({mistaken, mistaken});
  const Tally tally = tally_of({{"1", &full, &scheme}, {"2", &half, &scheme}, {"3", &wrong, &scheme}, {"4", &wrong, &scheme}}, {"", &own, &scheme});
  REQUIRE(tally.steps.size() == 3);
  CHECK(tally.steps[0].statement == "∠LKQ = 52°");
  CHECK(tally.steps[0].reached == 2);
  CHECK(tally.steps[0].reasoned == 1);
  CHECK(tally.steps[1].reached == 1);
  CHECK_FALSE(tally.steps[2].needs_reason);
  REQUIRE(tally.ideas.size() == 1);
  CHECK(tally.ideas[0].pupils == std::vector<std::string>{"3", "4"});
}
