#pragma once
#include "frontend/command/command.hpp"

namespace frontend {

Run declare_solvable(CLI::App& app);

}  // namespace frontend
