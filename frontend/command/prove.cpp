#include "frontend/command/prove.hpp"

#include <memory>

#include "frontend/command/answering.hpp"

namespace frontend {

Run declare_prove(CLI::App& app) {
  auto arguments = std::make_shared<AnswerArguments>();
  declare(app, *arguments);
  return [arguments](Session& session) { return answer_problem(*arguments, std::nullopt, session); };
}

}  // namespace frontend
