// The machine-readable answer; its shape is promised in `frontend/render/answer.schema.json`. Keys come in a fixed
// order, lists are present even when empty, and what there is none of is left out. Times only on request, so that
// answers stay the same bytes.
#pragma once
#include <nlohmann/json.hpp>

#include <string_view>

#include "prover/verdict/answer.hpp"

namespace frontend {

using Json = nlohmann::ordered_json;

// `text` is the problem as it was read, to give diagnostics their line and column.
Json proof_json(const prover::AnswerProof& proof);
Json figure_json(const prover::AnswerFigure& figure);
Json diagnostic_json(const prover::Diagnostic& diagnostic, std::string_view text);
Json answer_json(const prover::Answer& answer, std::string_view text, bool times);

// One line of text without a line end, whatever bytes the strings hold.
std::string json_line(const Json& json);
std::string json_page(const Json& json);

}  // namespace frontend
