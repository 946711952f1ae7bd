// Hints as pages: for the pupil the sentence that was asked for and nothing else, for the teacher the whole ladder with
// what each rung is worth.
#pragma once
#include "frontend/document/document.hpp"
#include "prover/hint.hpp"

namespace frontend {

Document rung_page(const prover::Hints& hints, int step);  // of each ladder; its last rung where it is shorter
Document ladder_page(const prover::Hints& hints);

}  // namespace frontend
