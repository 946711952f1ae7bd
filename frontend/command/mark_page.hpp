// Marked work on a page: each line of the pupil's with its marks and a remark, the sum, what is missing, where the argument
// breaks; and, for the teacher alone, what would bridge the gaps and the scheme.
#pragma once
#include "frontend/command/marked.hpp"
#include "frontend/document/document.hpp"

namespace frontend {

struct MarkPageOptions {
  bool for_teacher = true;
  bool policies = false;  // the scheme's policies in full, with their sources
};

Document mark_page(const Marked& marked, const MarkPageOptions& options);

std::string in_words(const prover::JudgedLine& line);  // the status, as a teacher would write it beside the line

}  // namespace frontend
