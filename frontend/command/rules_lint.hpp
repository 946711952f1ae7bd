// `rules --lint`: what is wrong with rules, or could be better, with places and ways out.
#pragma once
#include <string>
#include <vector>

namespace frontend {

// All rules, or those of the folders when some are given, or this one alone. A file that does not load is told with
// the others. Status: proved when there is nothing to say, another verdict for warnings alone, a mistake for errors.
int lint_command(const std::string& id, const std::vector<std::string>& folders, bool as_json);

}  // namespace frontend
