#pragma once
#include "frontend/command/command.hpp"

namespace frontend {

Run declare_batch(CLI::App& app);

}  // namespace frontend
