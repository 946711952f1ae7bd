// Times as a person reads them: "12.3 µs", "4.56 ms", "1.20 s".
#pragma once
#include <string>

namespace prover {

std::string time_text(double seconds);

}  // namespace prover
