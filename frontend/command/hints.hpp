#pragma once
#include "frontend/command/command.hpp"

namespace frontend {

Run declare_hints(CLI::App& app);  // command: a ladder of hints, a rung at a time

}  // namespace frontend
