// The work of a class on one problem: a file for each pupil, whose name is all that is known of her. What comes out is a
// tally: which steps were reached, which wrong ideas appeared, and the marks.
#pragma once
#include "frontend/command/command.hpp"
#include "frontend/command/marked.hpp"

namespace frontend {

struct ClassWork {
  std::string folder, problem_file, problem, format;
  bool json = false;
  unsigned threads = 0;
};

int mark_class(const ClassWork& work, const Setting& setting, const prover::SchemePolicy& policy, Session& session);

// A file of work may be empty: a pupil who wrote nothing has no marks, and that is no mistake.
struct Input;
Input read_work_file(const std::string& path, std::stop_token stop);

}  // namespace frontend
