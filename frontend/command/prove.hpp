#pragma once
#include "frontend/command/command.hpp"

namespace frontend {

Run declare_prove(CLI::App& app);

}  // namespace frontend
