// Instances from a text file, to compare with figures measured elsewhere:
//   var NAME
//   eq WEIGHT C NAME C NAME … = CONSTANT
//   goal C NAME … = CONSTANT
// with whole numbers; "#" begins a comment line. A mistake is a std::runtime_error with its line.
#pragma once
#include <istream>
#include <string>

#include "benchmarks/search/instance.hpp"

namespace prover {

SearchInstance read_instance(std::istream& stream, std::string name);

}  // namespace prover
