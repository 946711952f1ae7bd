// A pupil's work marked: judged, the scheme that fits its way, and the marks. The walk that `mark`, `mark --class` and
// `batch --mark` share.
#pragma once
#include <optional>
#include <stop_token>
#include <string>

#include "frontend/command/problem_options.hpp"
#include "prover/marking/marks.hpp"

namespace frontend {

struct Marked {
  prover::Judgement judgement;
  prover::Scheme scheme;  // without rows where the problem has no proof
  prover::Marks marks;
};

// `problem` may hold lines `work:`; `work` are further lines, one a line of text.
Marked mark_work(const std::string& problem, const std::string& work, const Setting& setting,
                 const prover::SchemePolicy& policy, std::stop_token stop);

// The scheme that `--scheme` names, a name or a file; that of the register when it names none. Nothing after a mistake, which
// it printed.
std::optional<prover::SchemePolicy> scheme_named(const std::string& name, prover::Register wording);

}  // namespace frontend
