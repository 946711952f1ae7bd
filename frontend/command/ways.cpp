#include "frontend/command/ways.hpp"

#include <memory>

#include "frontend/command/answering.hpp"

namespace frontend {

namespace {

constexpr std::size_t most_ways = 100, most_steps = 1000;

struct WaysArguments {
  AnswerArguments answer;
  prover::WaysOptions ways;
};

}  // namespace

Run declare_ways(CLI::App& app) {
  auto arguments = std::make_shared<WaysArguments>();
  declare(app, arguments->answer);
  app.add_option("--most", arguments->ways.most, "At most so many ideas for each claim; the default is 6")
      ->type_name("IDEAS")
      ->check(CLI::Range(std::size_t{1}, most_ways));
  app.add_option("--alike", arguments->ways.most_alike,
                 "At most so many ideas with the same theorems, at other places of the figure; the default is 2")
      ->type_name("IDEAS")
      ->check(CLI::Range(std::size_t{1}, most_ways));
  app.add_option("--at-most", arguments->ways.most_steps, "Only proofs of at most so many steps")
      ->type_name("STEPS")
      ->check(CLI::Range(std::size_t{1}, most_steps));
  app.add_option("--with", arguments->ways.with, "Only proofs that cite these rules (repeatable)")
      ->type_name("RULE")
      ->take_all()
      ->allow_extra_args(false);
  app.add_flag("--variants", arguments->answer.variants, "Every variant of an idea in full");
  return [arguments](Session& session) { return answer_problem(arguments->answer, arguments->ways, session); };
}

}  // namespace frontend
