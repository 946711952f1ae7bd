// The figures of a problem as SVG: one that meets the givens, or those that are the evidence of the verdict, side by side.
#include "frontend/command/draw.hpp"

#include <fmt/format.h>

#include <memory>

#include "frontend/command/answering.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/picture_of.hpp"
#include "frontend/command/status.hpp"
#include "frontend/drawing/draw.hpp"
#include "frontend/drawing/svg.hpp"

namespace frontend {

namespace {

struct DrawArguments {
  std::string file, out;
  double width = Paper().width, height = Paper().height;
  ProblemOptions problem;
};

int run_draw(const DrawArguments& arguments, Session& session) {
  const auto setting = setting_of(arguments.problem);
  if (!setting) return status_mistake;
  const auto solved = answered(arguments.file, *setting, session);
  if (!solved) return status_mistake;
  const prover::Answer& answer = solved->answer;
  if (prover::has_error(answer.diagnostics)) return status_mistake;
  if (answer.figures.empty()) {
    write_message("there is no figure to draw: " + answer.summary);
    return status_other;
  }
  std::vector<Drawing> drawings;
  for (const prover::AnswerFigure& figure : answer.figures)
    drawings.push_back(draw(picture_of(figure, answer.marks, answer.figures.size() > 1 || answer.verdict != prover::Verdict::proved),
                            {arguments.width, arguments.height}));
  const std::string svg = svg_of(drawings);
  const bool written = arguments.out.empty() ? write_answer(svg) : write_file(arguments.out, svg);
  return written ? status_of(answer) : status_mistake;
}

}  // namespace

Run declare_draw(CLI::App& app) {
  auto arguments = std::make_shared<DrawArguments>();
  app.add_option("FILE", arguments->file, "The problem; - reads standard input")->required()->type_name("");
  app.add_option("--out", arguments->out, "Write to this file instead of standard output")->type_name("FILE");
  app.add_option("--width", arguments->width, "Millimetres for each figure with its letters")
      ->type_name("MM")
      ->check(CLI::Range(30.0, 400.0));
  app.add_option("--height", arguments->height, "Millimetres for each figure with its letters")
      ->type_name("MM")
      ->check(CLI::Range(30.0, 400.0));
  declare(app, arguments->problem);
  return [arguments](Session& session) { return run_draw(*arguments, session); };
}

}  // namespace frontend
