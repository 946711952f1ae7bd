// The mark scheme of one way to the answer: what earns a mark, in the codes of a policy, with the words that are accepted
// for each reason. It follows the way it is given, so a pupil with another valid way has a scheme of her own.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "prover/marking/scheme_policy.hpp"
#include "prover/verdict/answer.hpp"

namespace prover {

enum class MarkFor { statement, reason, both, fact, answer, conclusion, construction };

// Steps are the way's, by number from 1.
struct SchemeMark {
  std::string code;
  int marks = 1;
  MarkFor earned_by = MarkFor::statement;
  std::vector<int> states;                // all of these must be stated …
  std::vector<std::vector<int>> reasons;  // … and of each group one step's reason be named: one is enough for its like
  bool any_reason = false;                // of any group
  std::vector<std::size_t> needs;         // marks without which this one is not given: an A its M, an R its S
};

struct SchemeRow {
  std::vector<int> steps;               // more than one where marks were put together to fit a total
  std::string statement, reason;        // the reason is empty where none is asked for
  std::vector<std::string> other_words; // accepted for the reason as well
  std::string other_routes;             // "or by corresponding angles, in two lines"; empty where there is none
  std::vector<std::size_t> marks;       // of `Scheme::marks`; none where the step earns nothing by itself
};

struct Scheme {
  SchemePolicy policy;
  std::vector<SchemeRow> rows;
  std::vector<SchemeMark> marks;
  int total = 0;
  bool finds = true;           // a value is asked for, not a proof
  bool reasons_asked = false;  // by the question
  std::string note;            // why the total is not the one that the question gives
};

// What the question says about marks.
struct SchemeRequest {
  std::optional<int> total;    // "(4 marks)", "[4]"; of several parts their sum
  bool finds = true;
  bool reasons_asked = false;  // "Give reasons"
};
SchemeRequest scheme_request(std::string_view problem);

Scheme scheme_of(const AnswerProof& way, const Catalogue& catalogue, const SchemePolicy& policy, const SchemeRequest& request = {});

std::string codes_of(const SchemeRow& row, const Scheme& scheme);  // "S/R", "M1 A1"
std::string text_of(const SchemeRow& row, const Scheme& scheme);   // "S/R ∠LKQ = 52° (alternate angles, KL ∥ PQ)"

}  // namespace prover
