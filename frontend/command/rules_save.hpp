// `rules --save NAME FILE`: a problem becomes a rule of the teacher's own.
#pragma once
#include <string>
#include <vector>

#include "frontend/command/command.hpp"

namespace frontend {

struct SaveArguments {
  std::string name, problem;
  bool assume = false;   // also when it is not proved
  bool force = false;    // over a file that is there
};
int save_rule(const SaveArguments& arguments, const std::vector<std::string>& folders, Session& session);

}  // namespace frontend
