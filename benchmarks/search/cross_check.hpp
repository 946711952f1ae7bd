// Random small problems, as many with premises that must be derived as without: the search must find what brute force
// finds – the least weight and every minimal set – and, where there are no premises, what CBC finds.
#pragma once

namespace prover {

// `problems` of either kind. Prints what differs and a summary; the number of problems on which something differs.
int cross_check(int problems);

}  // namespace prover
