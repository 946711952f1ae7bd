// A rule as data: a theorem, definition or postulate that a class may cite, read from a file that a teacher
// can judge without reading C++. Its givens, side conditions and conclusions are phrases of the problem
// language over variables (capital letters); `rules/README.md` has the grammar of the files.
//
// What the parts mean:
//   given   facts that must be known: parallels, equalities, kinds of polygon … ; `triangle: ABC` also asks
//   that
//           the three sides are drawn
//   where   position only: order on a line, sides, inside, convex. Never a size.
//   then    what follows. Also phrases; a conclusion may be an equation or a fact.
//   builtin shapes with any number of parts (angles on a line, polygon sum …), which no finite pattern can
//   say;
//           the places are found by code with that name, and the file gives wording, cost and examples.
#pragma once
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "prover/language/problem_text.hpp"
#include "prover/rule/course.hpp"

namespace prover {

enum class RuleKind { hypothesis, construction, postulate, definition, theorem, converse, corollary };
enum class Register { plain, us, uk, sa };

enum class Builtin {
  given,                      // a hypothesis of the problem
  join,                       // join two named points: a construction
  angle_addition,             // neighbouring angles make the larger one
  segment_addition,           // neighbouring segments make the longer one
  angles_on_a_straight_line,  // rays on one side of a line: the angles from end to end make 180°
  angles_at_a_point,          // rays once round a point make 360°
  polygon_interior_sum,     // (n − 2)·180°, simple polygon with n ≥ 4 sides drawn; quadrilaterals have
  quadrilateral_angle_sum,  // their own name
  polygon_exterior_sum,     // 360°, where sides are produced one way round
  regular_polygon_angles,   // each interior angle of a regular n-gon
  regular_polygon_sides,    // its sides are equal
  regular_polygon_equal_angles,  // its angles are equal, whatever their size
  similar_sas,              // two pairs of sides in one known ratio, included angles equal
  similar_sss,              // three pairs of sides in one known ratio
  similar_parts_sides,      // a known ratio passes to the other sides of similar triangles
};
std::optional<Builtin> builtin_from(std::string_view name);  // "angles-on-a-straight-line"
std::vector<std::string> builtin_names();                    // in the order of the enum
// What the wording of a builtin may name, in the order in which `fill_wording` takes the printed names:
// {line}, {point}, {angle}, {polygon} as a whole ("KLM", "∠KLM"), or single points as in {AC} and {ABC}.
std::vector<std::string> places_of(Builtin builtin);

std::string_view name_of(RuleKind kind);     // "theorem"
std::string_view name_of(Register wording);  // "plain", "us", "uk", "sa"
std::optional<RuleKind> kind_from(std::string_view name);
std::optional<Register> register_from(std::string_view name);

// An example in a rule file: a small problem and what must follow (fires) or must not (silent) by this rule
// alone, with definitions.
struct RuleExample {
  bool fires = true;
  std::string givens;      // sentences joined by ';'
  std::string conclusion;  // a phrase
  int line = 0;            // in the rule file
};

// How the rule is proved from earlier ones: the auxiliary lines that its proof needs, case by case. A rule without such
// fields is proved from its own figure. Texts over the rule's letters and further ones; read by the library room.
struct ProofCase {
  std::string when;                // what makes the case, joined by ';'; empty: there is only one
  std::string claim;               // for a built-in shape, `case … gives …`: a problem that stands for the rule
  std::vector<std::string> added;  // sentences as in `add:`, drawn in this case
};

// What to ask a pupil who is about to use the rule, from less to more; with places in braces, like the wording of its
// reason. No conclusion of the rule stands in them, nor a pair of angles that it makes equal side by side.
struct HintSentences {
  std::string where;   // where in the figure to look: "{PQ} crosses both {PA} and {QD}. On which sides of it do the angles lie?"
  std::string kind;    // which kind of relation: "Which angles are equal because of the parallels?"
  std::string places;  // the exact places: "One of the pair is {angle APQ}. Its partner has its corner at {Q}; name it."
};

struct Rule {
  std::string id;     // as in the published table of reasons
  std::string topic;  // the folder: "parallel", "triangle" …
  std::string title;  // a short noun for titles: "alternate angles"
  RuleKind kind = RuleKind::theorem;
  Rational cost = 1;   // under the measure `classroom`
  bool free_step = false;  // `step free`: a reader does not count it (adding neighbouring angles)
  std::string says;    // the statement, a sentence for people
  std::string why;     // where it comes from: proof idea, or why a postulate
  std::string family;  // the rule of which this is a further case ("rhombus-converse"); naming that
                       // one in `taught:` names this one too
  std::vector<std::string> sources;
  // Wording of the reason per register, with places in braces: {AB} a line or segment, {angle ABC},
  // {triangle ABC}. A register without accepted phrase has no entry.
  std::map<Register, std::string> wording;
  std::map<Register, bool> recalled;  // the wording is from memory only
  std::map<Register, bool> unworded;  // no phrase is accepted for this case, though one is for its family
  std::map<Register, HintSentences> hints;  // what a register lacks is taken from the plain ones
  std::vector<std::string> synonyms;  // other accepted words, for `taught:` and for marking
  // Wording for what a phrase means (midpoint, complementary …) or for plain arithmetic: such a rule has no
  // pattern, because every room expands the phrase by its meaning; only its words are cited.
  bool meaning = false;
  Names variables;  // for a builtin: its placeholders, `places_of(builtin)`
  std::vector<Phrase> given, where, then;
  std::optional<Builtin> builtin;
  std::vector<RuleExample> examples;
  bool assumed = false;  // a teacher's own: neither we nor our tests have proved it, and each proof that uses it says so
  std::vector<std::string> rests;      // the rules that its proof cites in the default course (rules --prove-all), by id
  std::vector<ProofCase> proof_cases;  // at least one when the file says anything about its proof
  std::size_t drawn_in_all = 0;        // so many of each case's added sentences stand before the first case
};

// All rules, in a fixed order (topic order, then file name). The order is used to break ties.
struct Catalogue {
  std::vector<Rule> rules;
  std::vector<Course> courses;  // by file name, those of the program first
  std::uint64_t serial = 0;  // another one for every catalogue loaded, so that what is worked out from its rules can be kept
  std::optional<RuleId> find(std::string_view id) const;
  const Rule& operator[](RuleId id) const { return rules[id.index()]; }
  std::vector<std::string> ids() const;
};

// A rule file or, when the name ends so, a course file.
// What cannot be proved without the rule: those that rest on it, near or far, and the rule itself. By RuleId.
std::vector<bool> resting_on(const Catalogue& catalogue, RuleId rule);

struct RuleFile {
  std::string name;  // "parallel/alternate-interior-angles.rule", "courses/school.course"
  std::string text;
};
struct LoadedCatalogue {
  Catalogue catalogue;
  // Mistakes per file; a broken file is left out, all others still load.
  std::vector<std::pair<RuleFile, std::vector<Diagnostic>>> mistakes;
};

// The rules and courses compiled into the program (a generated source holds their text).
const std::vector<RuleFile>& builtin_rule_files();
// Examples are most of a rule file's text. `checked` reads them for mistakes; `kept` keeps their text only, for the
// rules compiled into the program, whose examples the tests have read.
enum class Examples { checked, kept };
LoadedCatalogue load_catalogue(const std::vector<RuleFile>& files, Examples examples = Examples::checked);
const Catalogue& standard_catalogue();  // loaded once

// A reason with its places filled in: braces replaced through `place`, which maps a variable to the printed
// name of a point: {AB} "KL", {angle ABC} "∠KLM", {triangle ABC} "triangle KLM" ("△KLM" in `sa`). Falls back
// to plain, in square brackets, where the register has no phrase.
std::string fill_wording(const Rule& rule, Register wording, const std::vector<std::string>& place);

// Where the words of a reason come from: the key of a source of the published table ("US3"), "secondary notes", "from
// memory", or nothing where the rule file does not say.
std::string wording_source(const Rule& rule, Register wording);

// `taught:` — which rules a class may cite. Names are rule ids, topics ("parallel"), courses (whole, or "school up
// to midsegment"), or words that people use for them: titles, synonyms, the wording of any register. With no
// names, or with `not` only, all rules are allowed but those. Hypotheses, additions and meanings need not be named;
// constructions and definitions neither, unless a course is named, which says which of them the class has met. Unknown names get the nearest known one as way out.
struct TaughtRules {
  std::vector<bool> allowed;  // by RuleId
  std::vector<Diagnostic> diagnostics;
};
TaughtRules taught_rules(const Catalogue& catalogue, const std::vector<Taught>& taught);

}  // namespace prover
