// A worksheet at a glance: a row for each problem, with its verdict in plain words, its answer, and what a teacher must
// know before handing it out.
#pragma once
#include <string>
#include <vector>

#include "frontend/document/document.hpp"
#include "prover/rule/rule.hpp"
#include "prover/verdict/answer.hpp"

namespace frontend {

struct WorksheetRow {
  std::string problem;  // its id
  prover::Verdict verdict = prover::Verdict::unknown;
  bool understood = true;
  bool fine = false;  // solvable as it stands, and the answer book agrees
  std::vector<std::string> cells;  // verdict, answer, steps, chapter, remarks
};

WorksheetRow worksheet_row(const std::string& problem, const prover::Answer& answer, const prover::Catalogue& catalogue);
Document worksheet_page(const std::vector<WorksheetRow>& rows);

}  // namespace frontend
