// The command line as a whole: the table of commands, what all of them share, and help that ends with an example.
#include <fmt/format.h>

#include <cstdio>
#include <exception>

#include "frontend/command/command.hpp"
#include "frontend/command/output.hpp"
#include "prover/base/log.hpp"
#include "prover/language/problem_text.hpp"
#include "prover/smt/second_opinion.hpp"

namespace frontend {

namespace {

std::string version() {
  return fmt::format("anglewright {} (second opinion: Z3 {})", ANGLEWRIGHT_VERSION, prover::z3_version());
}

void set_log_level(int verbosity, bool quiet) {
  using prover::log::Level;
  const Level level = quiet              ? Level::quiet
                      : verbosity == 0   ? Level::warn
                      : verbosity == 1   ? Level::info
                      : verbosity == 2   ? Level::debug
                                         : Level::trace;
  prover::log::set_level(level);
}

// Without a command, or with a word in its place that is none.
std::string command_mistake(int argc, char** argv) {
  std::vector<std::string> names;
  for (const Command& command : commands()) names.emplace_back(command.name);
  for (int i = 1; i < argc; ++i) {
    const std::string word = argv[i];
    if (word.empty() || word.front() == '-') continue;
    const auto nearest = prover::nearest_word(word, names);
    return fmt::format("there is no command \"{}\"\n  try: anglewright {}", word, nearest ? *nearest : "--help");
  }
  return "name a command: prove, ways, rules, batch or completion\n  try: anglewright --help";
}

// Help and version go to standard output, mistakes to standard error with the status of a mistake.
int end_of_parsing(const CLI::App& app, const CLI::ParseError& end, int argc, char** argv) {
  if (end.get_exit_code() == static_cast<int>(CLI::ExitCodes::Success)) {
    if (dynamic_cast<const CLI::CallForVersion*>(&end) != nullptr) {
      return write_answer(version() + "\n") ? status_proved : status_mistake;
    }
    const auto parsed = app.get_subcommands();
    const std::string help = parsed.empty() ? app.help() : parsed.front()->help(app.get_name());
    return write_answer(help) ? status_proved : status_mistake;
  }
  if (app.get_subcommands().empty()) {
    write_message(command_mistake(argc, argv));
  } else {
    write_message(fmt::format("{}\n  try: anglewright {} --help", end.what(), app.get_subcommands().front()->get_name()));
  }
  return status_mistake;
}

}  // namespace

int run(int argc, char** argv) {
  ignore_broken_pipes();
  Session session;
  int verbosity = 0;
  Run chosen;

  CLI::App app("Proves statements about angles the way a geometry class writes them down", "anglewright");
  app.require_subcommand(1);
  app.fallthrough();
  app.set_version_flag("--version", version);
  app.add_flag("-v", verbosity, "Say on standard error what is done; -vv says more");
  app.add_flag("-q,--quiet", session.quiet, "Nothing on standard error but mistakes");
  app.footer("Examples:\n"
             "  anglewright prove frontend/examples/trellis-angle-sum.aw\n"
             "  anglewright prove --layout paragraph - < problem.aw\n"
             "  anglewright ways frontend/examples/trellis-angle-sum.aw\n"
             "  anglewright rules --topic parallel\n"
             "Exit status: 0 proved, 1 any other verdict, 2 a mistake in the input, 3 our own checks disagree.");
  for (const Command& command : commands()) {
    CLI::App* part = app.add_subcommand(command.name, command.summary);
    part->footer(std::string("Example:\n") + command.example);
    part->final_callback([&chosen, declared = command.declare(*part)] { chosen = declared; });
  }
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& end) {
    return end_of_parsing(app, end, argc, argv);
  }
  set_log_level(verbosity, session.quiet);
  try {
    return chosen(session);
  } catch (const std::exception& failure) {
    // Nothing in the walk throws on purpose: this is our own mistake, and is said to be one.
    write_message(fmt::format("a promise of the program was broken: {}", failure.what()));
    return status_disagreement;
  }
}

}  // namespace frontend
