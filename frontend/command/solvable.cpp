#include "frontend/command/solvable.hpp"

#include <memory>

#include "frontend/command/answering.hpp"

namespace frontend {

Run declare_solvable(CLI::App& app) {
  auto arguments = std::make_shared<AnswerArguments>();
  declare(app, *arguments);
  arguments->report = true;
  return [arguments](Session& session) { return answer_problem(*arguments, std::nullopt, session); };
}

}  // namespace frontend
