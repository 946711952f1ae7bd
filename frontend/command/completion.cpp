// The script is written from the same declarations that parse the command line, so it cannot fall behind them.
#include "frontend/command/completion.hpp"

#include <memory>

#include "frontend/command/choices.hpp"
#include "frontend/command/output.hpp"
#include "prover/rule/rule.hpp"

namespace frontend {

namespace {

std::string joined(const std::vector<std::string>& words) {
  std::string text;
  for (const std::string& word : words) text += (text.empty() ? "" : " ") + word;
  return text;
}

std::string long_options(const CLI::App& app) {
  std::vector<std::string> words;
  for (const CLI::Option* option : app.get_options()) {
    for (const std::string& name : option->get_lnames()) words.push_back("--" + name);
  }
  return joined(words);
}

std::vector<std::string> course_ids() {
  std::vector<std::string> ids;
  for (const prover::Course& course : prover::standard_catalogue().courses) ids.push_back(course.id);
  return ids;
}

// What may follow each option that takes a word, as branches of a shell `case`.
std::string option_branches(const CLI::App& app) {
  std::string text;
  for (const CLI::Option* option : app.get_options()) {
    for (const std::string& name : option->get_lnames()) {
      std::vector<std::string> words = choices_of(name);
      if (name == "course") words = course_ids();
      if (name == "with" || name == "without" || name == "without-only") words = prover::standard_catalogue().ids();
      if (name == "taught") {
        words = course_ids();
        for (const std::string& id : prover::standard_catalogue().ids()) words.push_back(id);
      }
      const std::string reply = name == "rules" ? "compgen -d -- \"$word\""
                                                : "compgen -W \"" + joined(words) + "\" -- \"$word\"";
      if (option->get_items_expected_max() == 0) continue;  // a flag
      text += "        --" + name + ") mapfile -t COMPREPLY < <(" + reply + "); return ;;\n";
    }
  }
  return text;
}

// What may stand where no option does.
std::string words_of(const std::string& command) {
  if (command == "completion") return "compgen -W \"bash\" -- \"$word\"";
  if (command == "rules") return "compgen -W \"" + joined(prover::standard_catalogue().ids()) + "\" -- \"$word\"";
  return "compgen -f -- \"$word\"";
}

std::string bash_script(const CLI::App& root) {
  std::vector<std::string> names;
  std::string branches;
  for (const CLI::App* command : root.get_subcommands({})) {
    names.push_back(command->get_name());
    branches += "    " + command->get_name() + ")\n      case \"$before\" in\n" + option_branches(*command) +
                "      esac\n      if [[ $word == -* ]]; then\n        mapfile -t COMPREPLY < <(compgen -W \"" +
                long_options(*command) + "\" -- \"$word\")\n      else\n        mapfile -t COMPREPLY < <(" +
                words_of(command->get_name()) + ")\n      fi ;;\n";
  }
  return "# Completion of anglewright for bash. To use it: source <(anglewright completion bash)\n"
         "_anglewright() {\n"
         "  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command= i\n"
         "  COMPREPLY=()\n"
         "  for ((i = 1; i < COMP_CWORD; ++i)); do\n"
         "    [[ ${COMP_WORDS[i]} != -* ]] && { command=${COMP_WORDS[i]}; break; }\n"
         "  done\n"
         "  case \"$command\" in\n"
         "    '') mapfile -t COMPREPLY < <(compgen -W \"" + joined(names) + " " + long_options(root) +
         "\" -- \"$word\") ;;\n" + branches +
         "  esac\n"
         "}\n"
         "complete -o filenames -F _anglewright anglewright\n";
}

}  // namespace

Run declare_completion(CLI::App& app) {
  auto shell = std::make_shared<std::string>("bash");
  app.add_option("SHELL", *shell, "The shell; bash is known")->required()->type_name("")->check(one_of({"bash"}));
  return [shell, root = app.get_parent()](Session&) {
    return write_answer(bash_script(*root)) ? status_proved : status_mistake;
  };
}

}  // namespace frontend
