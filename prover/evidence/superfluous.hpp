// Givens too many: which ones the answer does without, which follow from the others, and every smallest set of givens
// that settles the answer. "Not needed" and "follows from the others" are two things: a given that no proof needs may
// still say something new, and of two givens that follow from each other one is needed.
//
// Sentences about positions count like the others: one is needed when the answer cannot be proved without it.
#pragma once
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

// The givens that a checked proof stands on, sentences about positions among them: without any one of these its replay
// fails. Indices into the statement's givens, rising.
std::vector<int> sentences_read(const CheckedProof& checked, const Statement& statement, const Goal& goal,
                                const SolvedCase& one, const AttemptOptions& options);

// Every goal is proved in every case. `solved`: one for each of `statements`.
AnswerSuperfluous superfluous_givens(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                                     const AttemptOptions& options, const Budget& budget);

}  // namespace prover
