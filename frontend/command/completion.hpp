#pragma once
#include "frontend/command/command.hpp"

namespace frontend {

Run declare_completion(CLI::App& app);

}  // namespace frontend
