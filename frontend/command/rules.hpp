#pragma once
#include "frontend/command/command.hpp"

namespace frontend {

Run declare_rules(CLI::App& app);

}  // namespace frontend
