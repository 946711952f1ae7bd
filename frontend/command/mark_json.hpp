// Marked work for programs; the shape is promised in `frontend/render/mark.schema.json`.
#pragma once
#include "frontend/command/answer_json.hpp"
#include "frontend/command/marked.hpp"

namespace frontend {

// A pupil's copy has no scheme and nothing that bridges a gap.
Json mark_json(const Marked& marked, std::string_view problem, bool for_teacher);

}  // namespace frontend
