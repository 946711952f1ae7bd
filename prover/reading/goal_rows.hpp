// The closing line: what was asked, with its value, or the claim.
#pragma once
#include <string>
#include <vector>

#include "prover/reading/known.hpp"
#include "prover/reading/name_book.hpp"

namespace prover {

// `given`: what the givens say, for an angle that they tie to an unknown number ("∠KLM = 7x° = 84°").
std::vector<std::string> goal_rows(const Goal& goal, const std::vector<Form>& forms, const Known& known,
                                   const LinearSystem& given, const NameBook& names, const Names& points);

}  // namespace prover
