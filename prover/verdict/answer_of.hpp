// From what was solved to the answer: the verdict, its words and its evidence.
#pragma once
#include <vector>

#include "prover/verdict/answer.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

// A sketch to show, with what it measures for the first goal.
AnswerFigure answer_figure(const std::string& name, const Sketch& figure, const Statement& statement);

AnswerProof answer_proof(const CheckedProof& checked, const Statement& statement, const Goal& goal,
                         const std::string& case_name, const AttemptOptions& options);

// The name of a case, of the words and of the figure.
std::string case_name(const Statement& statement, const SolvedCase& one);

// `solved`: one for each of `statements` (the cases that the words leave open).
void fill_answer(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                 const AttemptOptions& options, Answer& answer);

}  // namespace prover
