// Ladders for machines; the shape is promised in `frontend/render/hints.schema.json`. The value of the problem stands in it
// only where the last rung does.
#pragma once
#include <string_view>

#include "frontend/command/answer_json.hpp"
#include "prover/hint.hpp"

namespace frontend {

// `step`: only this rung of each ladder; 0: all of them.
Json hints_json(const prover::Hints& hints, std::string_view text, int step, bool times);

}  // namespace frontend
