// A figure of an answer as a picture: coordinates from the figure, lines and marks from what is given.
#pragma once
#include "frontend/drawing/picture.hpp"
#include "prover/verdict/answer.hpp"

namespace frontend {

// The caption says what the figure is for and what was asked measures in it; a figure of a proof has none.
Picture picture_of(const prover::AnswerFigure& figure, const prover::FigureMarks& marks, bool with_caption);

}  // namespace frontend
