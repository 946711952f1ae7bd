// A proof in two columns of text: claims on the left, chains one row below the other with "=" under "=",
// reasons on the right.
#pragma once
#include <string>
#include <vector>

#include "frontend/document/document.hpp"

namespace frontend {

std::vector<std::string> two_column_lines(const ProofLines& proof, std::size_t width);

}  // namespace frontend
