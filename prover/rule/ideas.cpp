#include "prover/rule/ideas.hpp"

#include <algorithm>
#include <sstream>

namespace prover {

namespace {

// Entries begin at the margin; an indented line goes on with the one before.
std::vector<std::vector<std::string>> entries_of(std::string_view text) {
  std::vector<std::vector<std::string>> entries;
  std::istringstream lines{std::string(text)};
  for (std::string line; std::getline(lines, line);) {
    line.resize(std::min(line.find('#'), line.size()));
    std::istringstream words(line);
    std::vector<std::string> row;
    for (std::string word; words >> word;) row.push_back(word);
    if (row.empty()) continue;
    if (line.front() != ' ' || entries.empty())
      entries.push_back(std::move(row));
    else
      entries.back().insert(entries.back().end(), row.begin(), row.end());
  }
  return entries;
}

}  // namespace

IdeaTable::IdeaTable(std::string_view text) {
  for (const std::vector<std::string>& entry : entries_of(text)) {
    const std::string& kind = entry[0];
    if (kind == "small-change" || kind == "quiet") {
      const IdeaRole role = kind == "quiet" ? IdeaRole::quiet : IdeaRole::small_change;
      for (std::size_t i = 1; i < entry.size(); ++i)
        if (!roles_.emplace(entry[i], role).second) mistakes_.push_back(entry[i] + " has two roles");
    } else if (kind == "one-fact" && entry.size() > 2) {
      for (std::size_t i = 2; i < entry.size(); ++i)
        if (!facts_.emplace(entry[i], entry[1]).second) mistakes_.push_back(entry[i] + " is two facts");
    } else if (kind == "made-of" && entry.size() > 2) {
      compositions_.push_back({entry[1], {entry.begin() + 2, entry.end()}});
    } else {
      mistakes_.push_back("not understood: " + kind);
    }
  }
}

template <typename Value>
const Value* IdeaTable::of(const std::map<std::string, Value>& map, const Rule& rule) {
  auto found = map.find(rule.id);
  if (found == map.end() && !rule.family.empty()) found = map.find(rule.family);
  return found == map.end() ? nullptr : &found->second;
}

IdeaRole IdeaTable::role(const Rule& rule) const {
  if (const IdeaRole* named = of(roles_, rule)) return *named;
  const bool small = rule.kind == RuleKind::hypothesis || rule.kind == RuleKind::definition;
  return small ? IdeaRole::small_change : IdeaRole::carries;
}

const std::string& IdeaTable::fact(const Rule& rule) const {
  if (const std::string* named = of(facts_, rule)) return *named;
  return rule.family.empty() ? rule.id : rule.family;
}

std::vector<std::string> IdeaTable::names() const {
  std::vector<std::string> all;
  for (const auto& [rule, role] : roles_) all.push_back(rule);
  for (const auto& [rule, fact] : facts_) all.push_back(rule);
  for (const Composition& c : compositions_) {
    all.push_back(c.rule);
    all.insert(all.end(), c.parts.begin(), c.parts.end());
  }
  return all;
}

const IdeaTable& idea_table() {
  static const IdeaTable table(builtin_idea_text());
  return table;
}

}  // namespace prover
