// The command `ways`: the different ideas that prove a claim, ranked and compared.
#pragma once
#include "frontend/command/command.hpp"

namespace frontend {

Run declare_ways(CLI::App& app);

}  // namespace frontend
