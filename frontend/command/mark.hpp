#pragma once
#include "frontend/command/command.hpp"

namespace frontend {

Run declare_mark(CLI::App& app);

}  // namespace frontend
