// For each condition of a rule, side_conditions.txt keeps a figure that shows what goes wrong without it, or the reason
// why it stays though there is none. Each figure is judged again from its coordinates. `anglewright_tests
// "[conditions]"` searches anew for what is missing or no longer shows it, and writes the file; reasons stay.
#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include "prover/measure/condition.hpp"

using namespace prover;

namespace {

const std::string path = std::string(TESTS_DIR) + "/rules/side_conditions.txt";

struct Entry {
  std::string reason;  // "kept REASON"
  std::string points;  // "A (0, 0), B=C (10, 0)"
};
struct Kept {
  std::string head;                             // the comment on top and the reasons, as they are written
  std::set<std::string> reasons;
  std::map<std::string, Entry> entries;         // by "rule: condition"
};

Kept read_file() {
  Kept kept;
  std::ifstream in(path);
  REQUIRE(in);
  std::string rule, key;
  const auto rest = [](const std::string& line, std::size_t from) { return line.substr(from); };
  for (std::string line; std::getline(in, line);) {
    if (line.starts_with("#") || (line.empty() && rule.empty())) kept.head += line + "\n";
    if (line.starts_with("reason ")) {
      kept.head += line + "\n";
      kept.reasons.insert(line.substr(7, line.find(' ', 7) - 7));
    }
    if (line.starts_with("rule ")) rule = rest(line, 5);
    if (line.starts_with("  without ")) key = rule + ": " + rest(line, 10);
    if (line.starts_with("    kept ")) kept.entries[key].reason = rest(line, 9);
    if (line.starts_with("    figure ")) kept.entries[key].points = rest(line, 11);
  }
  return kept;
}

// The figure, and where the letters of the rule stand in it; nothing when a letter has no place.
bool read_points(const std::string& text, const Rule& rule, Sketch& figure, std::vector<int>& letter_at) {
  letter_at.assign(rule.variables.points.size(), -1);
  std::istringstream in(text);
  for (std::string names, x, y; in >> names >> x >> y;) {
    const int point = static_cast<int>(figure.points.size());
    figure.points.push_back({std::strtod(x.c_str() + 1, nullptr), std::strtod(y.c_str(), nullptr)});
    std::istringstream letters(names);
    for (std::string letter; std::getline(letters, letter, '=');)
      for (std::size_t v = 0; v < letter_at.size(); ++v)
        if (rule.variables.points[v] == letter) letter_at[v] = point;
  }
  figure.on_circle.assign(figure.points.size(), PointId());
  for (const Phrase& phrase : conditions_of(rule)) {  // a circle goes through the first point said to be on it
    const auto& p = phrase.points;
    const bool circle = phrase.predicate == Predicate::circle || phrase.predicate == Predicate::circle_cyclic;
    if (!circle || p.size() < 2) continue;
    const int centre = letter_at[p[0].index()], on = letter_at[p[1].index()];
    if (centre >= 0 && on >= 0 && !figure.on_circle[static_cast<std::size_t>(centre)].valid())
      figure.on_circle[static_cast<std::size_t>(centre)] = PointId(on);
  }
  for (const int at : letter_at)
    if (at < 0) return false;
  return true;
}

bool shows(const Entry& entry, const Rule& rule, std::size_t condition) {
  Sketch figure;
  std::vector<int> letter_at;
  return !entry.points.empty() && read_points(entry.points, rule, figure, letter_at) &&
         shows_need(rule, condition, figure, letter_at);
}

std::string key_of(const Rule& rule, const Phrase& condition) { return rule.id + ": " + describe(condition, rule.variables); }

std::string points_of(const CounterFigure& counter) {
  std::string text;
  for (std::size_t p = 0; p < counter.names.points.size(); ++p)
    text += fmt::format("{}{} ({:.8g}, {:.8g})", p == 0 ? "" : ", ", counter.names.points[p],
                        std::round(counter.figure.points[p][0] * 1e6) / 1e6, std::round(counter.figure.points[p][1] * 1e6) / 1e6);
  return text;
}

}  // namespace

TEST_CASE("each condition of a rule has a figure that goes wrong without it, or a reason to stay") {
  const Kept kept = read_file();
  std::size_t found = 0;
  for (const Rule& rule : standard_catalogue().rules) {
    if (rule.then.empty()) continue;
    const std::vector<Phrase> conditions = conditions_of(rule);
    for (std::size_t i = 0; i < conditions.size(); ++i) {
      const std::string key = key_of(rule, conditions[i]);
      INFO(key);
      const auto entry = kept.entries.find(key);
      if (entry == kept.entries.end()) {
        FAIL_CHECK(key << " has neither a figure nor a reason; run anglewright_tests \"[conditions]\"");
        continue;
      }
      ++found;
      if (entry->second.points.empty())
        CHECK(kept.reasons.contains(entry->second.reason));
      else
        CHECK(shows(entry->second, rule, i));
    }
  }
  CHECK(found == kept.entries.size());  // else it speaks of conditions that are gone
}

TEST_CASE("a figure that meets all conditions shows nothing") {
  // The angles are equal because the sides are opposite: no counter-figure, and neither is one that breaks another.
  const Catalogue& catalogue = standard_catalogue();
  const Rule& rule = catalogue[*catalogue.find("alternate-interior-angles")];  // PA ∥ QD; A and D opposite
  REQUIRE(rule.variables.points == std::vector<std::string>{"P", "A", "Q", "D"});
  CHECK_FALSE(shows({"", "P (0, 0), A (4, 0), Q (1, 3), D (-4, 3)"}, rule, 1));
  CHECK(shows({"", "P (0, 0), A (4, 0), Q (1, 3), D (5, 3)"}, rule, 1));        // the same side
  CHECK_FALSE(shows({"", "P (0, 0), A (4, 0), Q (1, 3), D (5, 4)"}, rule, 1));  // but not parallel
  CHECK(shows({"", "P (0, 0), A (4, 0), Q (1, 3), D (-4, 4)"}, rule, 0));
}

TEST_CASE("the figures without a condition are searched for anew", "[.][conditions]") {
  Kept kept = read_file();
  std::ofstream out(path);
  out << kept.head;
  std::size_t missing = 0;
  for (const Rule& rule : standard_catalogue().rules) {
    if (rule.then.empty()) continue;
    out << "\nrule " << rule.id << "\n";
    const std::vector<Phrase> conditions = conditions_of(rule);
    for (std::size_t i = 0; i < conditions.size(); ++i) {
      Entry& entry = kept.entries[key_of(rule, conditions[i])];
      if (!shows(entry, rule, i)) {
        entry.points.clear();
        for (std::uint64_t seed = 1; seed <= 3 && entry.points.empty(); ++seed)
          if (const auto counter = figure_without(rule, i, seed)) {
            entry.points = points_of(*counter);
            if (!shows(entry, rule, i)) entry.points.clear();
          }
      }
      out << "  without " << describe(conditions[i], rule.variables) << "\n    ";
      if (!entry.points.empty()) {
        out << "figure " << entry.points << "\n";
      } else {
        missing += entry.reason.empty() ? 1 : 0;
        out << "kept " << entry.reason << "\n";
      }
    }
  }
  CHECK(missing == 0);
}
