// The answer to a problem: the verdict with its evidence, in words and numbers ready to show. This is what the
// commands print, what `--json` writes (DESIGN.md sections 8 and 9), and the last value of the walk.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "prover/base/source.hpp"
#include "prover/rule/rule.hpp"
#include "prover/statement/figure_marks.hpp"

namespace prover {

enum class Verdict { proved, false_claim, undetermined, contradictory, depends_on_figure, beyond_rules, unknown };
const char* name_of(Verdict verdict);  // "proved", "false", "undetermined", "contradictory", …

struct AnswerStep {
  int n = 0;                   // from 1
  std::string claim;           // "∠LKQ = ∠PQK = 52°"
  std::vector<std::string> rows;  // the claim in rows where it is a chain: "∠KLQ = (180° − 52°) ÷ 2", "= 64°"
  std::string rule;            // id
  std::string reason;          // "alternate angles, KL ∥ PQ, cut by KQ"
  std::vector<int> uses;       // earlier steps
  bool closing = false;        // the answer line; also substitution
  std::vector<std::string> places;  // of a rule with letters: the point for each letter
  std::vector<int> made_of;         // the instances that it tells, by their place in the checked proof
  HintSentences ask = {};           // what to ask a pupil before this step (prover/hints); empty where its rule has no sentences
  std::string relation = {};        // what its rule says here in letters alone: "∠KLM + ∠LMK = ∠KMP"; empty for a fact
  std::vector<std::string> givens = {};  // that it rests on directly, as they were understood
};

struct AnswerProof {
  std::string goal;            // what was asked, as written
  std::string title;           // "by alternate angles"
  std::string case_name;       // when it holds in one case only
  std::string cost;            // exact, as a string
  std::string measure;         // "classroom", "fewest-steps" or "early"
  std::string shortest;        // "proved" or "best found"
  std::string lower_bound;     // exact, as a string
  std::vector<std::string> rules;          // ids cited, each once, in order of first use
  std::vector<std::string> constructions;  // "Join LN"
  std::vector<std::string> set_aside;      // rules not used because the claim says no more than they do
  std::vector<std::string> assumed;        // rules cited that nobody proved: a teacher's own
  std::vector<AnswerStep> steps;
  std::vector<std::string> seen_in_figure;
  std::vector<std::string> givens_used;
  std::vector<std::string> givens_not_needed;
  int idea = 0;                // ways: proofs of one claim with the same number rest on one idea; 1 is the lightest; else 0
  bool in_full = true;         // ways: to be shown without being asked for; other variants of an idea are only mentioned
  int cited = 0;               // ways: theorems, definitions and added lines cited
  std::string deepest;         // ways: the theorem cited that a course reaches last, by id
  std::vector<std::string> to_be_taught;  // ways: the theorems cited, by id, in the order of the course
  bool replay = false;         // the replay checker accepted it
  bool z3 = false;             // Z3 confirmed it
};

struct AnswerFigure {
  std::string name;
  std::map<std::string, std::pair<double, double>> points;
  std::optional<double> value;  // of what was asked, measured
  bool exists = false;          // proved by intervals: an exact figure lies within rounding of these coordinates
  std::string words;            // how far a claim fails in it: "KP = 3.1, KQ = 5.2"
};

// A value that the law of sines certifies exactly: no school proof, and never shown as one.
struct AnswerCertificateStep {
  std::string letter;          // "x"
  std::string angle;           // "∠LUV"
  std::string value;           // degrees, exact; empty where it is not rational
  double measured = 0;
  std::vector<std::string> triangles;  // in which the law of sines is used
  std::string condition;       // "sin x · sin 50° = sin (80° − x) · sin 30°"
  std::string with_value;      // the same with the value put in; empty without one
  std::string only_one;        // why no other value fits, a sentence
  std::string low, high;       // the limits of the angle, degrees
};

struct AnswerCertificate {
  std::string goal, case_name, value;
  std::vector<std::string> relations;   // what is used of angles and lengths, proved from the rules: "∠KUV = 160° − x"
  std::vector<AnswerCertificateStep> steps;
  std::vector<std::string> identities;  // for equal lengths: "sin 20° · sin 80° = …"
  std::string conclusion;               // "∠LUV = 30°"
  std::vector<std::string> seen_in_figure;
};

// One thing that would bring the goal within what is taught: rules to be taught, or lines to be drawn.
struct AnswerUnlock {
  std::vector<std::string> rules;   // not taught; ids; all of them together
  std::string course, chapter;      // the first chapter after which the course reaches it, and that chapter's last rule needed
  std::string up_to;                // "taught: COURSE up to RULE" would do
  std::vector<std::string> lines;   // sentences to be put behind `add:`, all of them together
  std::string text;                 // the same as a plain sentence
};

struct AnswerCase {
  std::string name;             // "K and M on the same side of LN", or "KL = KM"
  Verdict verdict = Verdict::unknown;
  std::string value;
  std::string selects;          // to be added to the problem: it leaves this arrangement alone; empty: none was found
};

// An argument to a false claim, with the step at which it goes wrong. No proof, and checked by nobody.
struct AnswerPlausible {
  std::string goal;
  std::string mistake;            // id of the classic mistake
  std::string name;               // "two sides and an angle that is not between them"
  std::string instead;            // id of the rule that it is taken for
  std::string missing;            // what would have to be known
  std::string why;                // why it is wrong
  std::vector<AnswerStep> steps;
  int wrong_step = 0;             // its number in `steps`
};

struct AnswerConsequence {      // a given that follows from the others
  std::string given;
  std::vector<std::string> from;     // the givens it follows from
  std::optional<AnswerProof> proof;  // checked; none where the order and sides that the sentences state say it at once
};

struct AnswerSuperfluous {
  std::vector<std::string> not_needed;                // for the answer: in no set of `sufficient`
  std::vector<AnswerConsequence> consequences;
  std::vector<std::vector<std::string>> sufficient;   // sets of givens that prove the same answer, none with one to spare
  std::string stop;                                   // "saturated": these are all, with these rules and the lines drawn
};

// One change to contradictory givens after which a figure can be drawn.
struct AnswerRepair {
  std::string given;      // the given that is changed, as in `conflict`
  std::string instead;    // the sentence in its place: "∠KLM = 44°"; empty: it is to be left out
  std::string text;       // in words: "∠KLM = 44°, not 54°"
  bool exact = false;     // the number follows from the other givens; else it was measured
  std::string low, high;  // where any number above and below these would do; measured
};

// How far the list of ways to one claim, in one case, goes.
struct AnswerWays {
  std::string goal, case_name;
  std::size_t proofs = 0;      // how many of Answer::proofs are its own; they stand in the order of the lists
  int ideas = 0;               // listed
  int more = 0;                // found, but beyond the number asked for
  int elsewhere = 0;           // found, but citing the theorems of two listed ones, at other places of the figure
  int left_out = 0;            // found, but without a proof as asked for
  std::string complete_below;  // exact: every idea that has a proof of smaller cost is listed or `elsewhere`; empty: there are no others
  std::string stop;            // why there may be others: a limit, "time-limit" …; "saturated" when there are none
  bool joined_tried = false;   // points that nobody had joined were joined, too; and how far that went:
  std::string joined_complete_below, joined_stop;
};

// What a theorem that is cited contributes.
struct AnswerContribution {
  std::string rule;     // id
  bool needed = true;   // without it, with all other rules taught, the claim is not reached
  std::string more;     // not needed: what the lightest proof without it costs more; exact
};

// The answer that the answer book gives (`answer:`), beside what was found.
struct AnswerBookEntry {
  std::string goal;
  std::string given;    // as written
  std::string outcome;  // "agrees", "differs", "one-case", "only-if", "possible", "no-figure", "not-decided", "unread"
  std::string text;     // a sentence
  std::vector<std::string> only_if;  // sentences of which each would make it right
};

struct Answer {
  std::string id;                      // batch: echoed
  Verdict verdict = Verdict::unknown;
  std::string summary;                 // the verdict in one plain sentence
  std::string value;                   // exact: "62", "37/2", or an expression; empty when none
  std::string evidence;                // what certifies the value where nothing is proved: "trigonometry"
  std::vector<AnswerCertificate> certificates;
  std::vector<std::string> read_as;    // what was understood, a sentence each; assumptions say so
  std::vector<AnswerProof> proofs;
  std::vector<AnswerWays> ways;        // by claim and case, when ways were asked for
  std::vector<AnswerFigure> figures;
  FigureMarks marks;                   // what a drawing of any of them shows
  std::vector<std::string> conflict;   // givens that cannot all hold; without any one of them the others can
  std::string conflict_shown_by;       // "proof", "positions" or "figures" (numerical); empty: only suspected
  std::vector<AnswerRepair> repair;
  std::vector<std::string> missing;    // what would settle it, the more natural first
  std::vector<std::vector<std::string>> settled_by;  // the same as sentences that can be pasted into the problem
  std::vector<std::string> in_terms_of;  // undetermined: what is asked by what is left free, "∠KML = 90° + ½∠KPL"
  std::vector<std::string> unlock;
  std::vector<AnswerUnlock> unlocked_by;  // each by itself would do; what stands in `unlock` as plain sentences
  std::vector<AnswerCase> cases;
  std::vector<AnswerContribution> contributions;  // solvable: of the rules cited, in the order of citation
  std::vector<AnswerBookEntry> answer_book;       // by goal, where the problem has lines `answer:`
  std::optional<AnswerPlausible> plausible;      // of a false claim, where a known mistake leads to it
  std::optional<AnswerSuperfluous> superfluous;  // only in a full answer (`solvable`) to what is proved
  std::string stop;                    // why the work ended: "goal-reached", "saturated", "time-limit" …
  std::map<std::string, double> time_ms;  // by stage
  bool checks_disagree = false;        // exit status 3
  std::vector<Diagnostic> diagnostics; // mistakes in the input: exit status 2 when any is an error
};

}  // namespace prover
