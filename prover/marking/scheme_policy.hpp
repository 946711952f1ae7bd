// How a school gives marks, as data: which codes (S, R, S/R; M, A, B, C), what earns one, and what is forgiven. Policies are
// files, `rules/schemes/<id>.scheme`, compiled into the program; a teacher's own is read the same way. Every row of a file
// says from where it is: a source of the published table, "common practice" or "from memory". `rules/README.md` has the
// grammar.
#pragma once
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "prover/rule/rule.hpp"

namespace prover {

struct MarkCode {
  std::string code;  // "S/R"; empty: this scheme has no such mark
  int marks = 1;
};

enum class Award { together, apart };                // a statement and its reason: one mark for both, or one each
enum class ReasonMarks { each, overall };            // a mark for each reason; or one for a reason and one more for all
enum class AnswerReason { asked, not_for_sums };     // whether the line with the answer needs a reason when it only adds up
enum class Need { needed, not_needed };
enum class Rows { marked, unmarked };                // steps that only unfold a definition or add neighbours
enum class Repeated { once, each_time };             // the same reason at a second place
enum class BareAnswer { answer_only, full_unless_reasons_asked, nothing };  // the right value and no way to it
enum class CarriedErrors { all, method, nothing };   // lines that follow from an earlier wrong one
enum class Slip { accuracy_only, whole_line };       // wrong arithmetic in a right line
enum class Miscopied { carried, method, nothing };   // lines that follow from a given with another number
enum class Replaced { ignored, looked_at };          // crossed out and nothing written instead
enum class Degree { ignored, loses_answer };         // the sign ° missing at the answer
enum class LetterOrder { strict, lenient };          // triangles whose letters do not correspond
enum class Untaught { accepted, statement_only, nothing };
enum class Acceptance { accepted, refused };

struct SchemePolicy {
  std::string id, title, says;
  std::vector<Register> default_for;  // the registers in which it is taken where none is named
  MarkCode statement, fact, reason, both, answer, conclusion, construction;
  Award award = Award::together;
  ReasonMarks reasons = ReasonMarks::each;
  AnswerReason answer_reason = AnswerReason::asked;
  Need algebra_reason = Need::not_needed;
  Rows definitions = Rows::unmarked;
  Repeated repeated_reason = Repeated::once;
  BareAnswer bare_answer = BareAnswer::answer_only;
  CarriedErrors carried_errors = CarriedErrors::method;
  Slip arithmetic_slip = Slip::accuracy_only;
  Miscopied miscopied_number = Miscopied::carried;
  Replaced replaced_work = Replaced::ignored;
  Degree missing_degree = Degree::ignored;
  LetterOrder letter_order = LetterOrder::strict;
  Untaught untaught_theorem = Untaught::statement_only;
  Acceptance nickname = Acceptance::refused;
  Acceptance lines_not_named = Acceptance::accepted;
  Acceptance bare_name = Acceptance::accepted;
  int largest_gap = 0;  // a line may skip so many steps and keep the mark for its own statement

  struct Row {
    std::string name, value, source;
  };
  std::vector<Row> rows;  // as written, to be printed beside the marks

  // M, A and B: a method earns its mark though its numbers slip, and a right later line implies it.
  bool marks_methods() const { return !fact.code.empty(); }
};

struct ParsedScheme {
  SchemePolicy policy;
  std::vector<Diagnostic> diagnostics;  // all mistakes of the file, each in its place and with a way out
};
ParsedScheme parse_scheme(const RuleFile& file);

const std::vector<SchemePolicy>& standard_schemes();  // those of the program, by file name
const SchemePolicy* find_scheme(std::string_view id);  // among them; null when there is none of that name
const SchemePolicy& default_scheme(Register wording);

}  // namespace prover
