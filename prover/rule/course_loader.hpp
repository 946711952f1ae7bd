// The course files among the files of a catalogue, whose rules are loaded already. `broken` holds the names of rules
// whose files have a mistake: a course that names one of them is kept without it, since the mistake is told there.
#pragma once
#include <set>
#include <string>
#include <vector>

#include "prover/rule/rule.hpp"

namespace prover {

bool holds_course(const RuleFile& file);
void load_courses(const std::vector<RuleFile>& files, std::set<std::string> broken, LoadedCatalogue& loaded);

}  // namespace prover
