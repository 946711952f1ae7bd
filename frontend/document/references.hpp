// Which earlier lines a proof line has to name. A reader takes a line to follow from the lines just above it;
// so numbers are printed only where that is not so, and only on lines that are then named.
#pragma once
#include <string>
#include <vector>

#include "frontend/document/document.hpp"

namespace frontend {

struct References {
  std::vector<std::vector<int>> named;  // for each line: the numbers that stand in its reason; often none
  std::vector<bool> numbered;           // for each line: whether its number is printed
  bool any = false;
};

References references_of(const ProofLines& proof);

// The reason with the named lines: "side, angle, side, from (1), (2) and (4)".
std::string with_references(const std::string& reason, const std::vector<int>& named);

// The rows of a line's claim; in the closing line "∴" stands before the last relation, what is above is its working.
std::vector<std::string> rows_of_claim(const ProofLine& line);

// "A", "A and B", "A, B and C".
std::string enumerate(const std::vector<std::string>& parts);

}  // namespace frontend
