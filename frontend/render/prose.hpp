// A proof as sentences in the order of its lines, with "because" and "so"; no sentence starts with a symbol.
#pragma once
#include <string>

#include "frontend/document/document.hpp"

namespace frontend {

std::string prose(const ProofLines& proof);

}  // namespace frontend
