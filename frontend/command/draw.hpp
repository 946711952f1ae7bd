#pragma once
#include "frontend/command/command.hpp"

namespace frontend {

Run declare_draw(CLI::App& app);

}  // namespace frontend
