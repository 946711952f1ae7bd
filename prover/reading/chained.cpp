#include "prover/reading/chained.hpp"

#include <algorithm>
#include <optional>

namespace prover {

namespace {

constexpr int kMostEquals = 3;
const std::string kEquals = " = ";

struct Equality {
  std::string left, right;
};

// A line that says no more than that two things are equal.
std::optional<Equality> equality(const ReadingLine& line) {
  if (line.rows.size() != 1 || line.rule == "substitution" || line.rule == "let" || line.rule == "construction") return std::nullopt;
  const std::string& row = line.rows[0];
  const std::size_t at = row.find(kEquals);
  if (at == row.npos || row.find(kEquals, at + 1) != row.npos) return std::nullopt;
  Equality found{row.substr(0, at), row.substr(at + kEquals.size())};
  const auto single = [](const std::string& side) { 
    return side.find(' ') == side.npos && !side.empty() && (side[0] < '0' || side[0] > '9');
  };
  if (!single(found.left) || !single(found.right)) return std::nullopt;
  return found;
}

// The chain from one side of the claim to the other is the proof: its last line closes it, and nothing is left to
// substitute. Told from the other end when the claim has it so and no line of it rests on another.
bool ends_with_claim(Reading& reading, const Goal& goal, const Names& names, const Equality& whole, std::size_t length) {
  std::vector<ReadingLine>& lines = reading.lines;
  if (goal.kind != GoalKind::prove || goal.claims.size() != 1) return false;
  const ReadingLine& last = lines.back();
  const std::string claim = describe(goal.claims[0], names);
  if (last.rule != "substitution" || last.rows.size() != 1 || last.rows[0] != claim) return false;
  const std::size_t first = lines.size() - 1 - length;
  std::vector<std::string> things{whole.left};
  for (std::size_t k = first; k < first + length; ++k) {
    const std::string& row = lines[k].rows[0];
    things.push_back(row.substr(row.rfind("= ") + 2));
  }
  if (claim == whole.right + kEquals + whole.left) {
    for (std::size_t k = first; k < first + length; ++k)
      for (const int use : lines[k].uses)
        if (use > static_cast<int>(first)) return false;
    std::reverse(things.begin(), things.end());
    std::reverse(lines.begin() + static_cast<std::ptrdiff_t>(first), lines.end() - 1);
  } else if (claim != whole.left + kEquals + whole.right) {
    return false;
  }
  lines.pop_back();
  std::string full = things[0];
  for (std::size_t k = 0; k < length; ++k) {
    ReadingLine& line = lines[first + k];
    line.rows = {k == 0 ? things[0] + kEquals + things[1] : "= " + things[k + 1]};
    line.claim = k == 0 ? "" : things[k] + kEquals + things[k + 1];
    full += kEquals + things[k + 1];
  }
  ReadingLine& closing = lines.back();
  closing.claim = full;
  closing.closing = true;
  for (std::size_t k = first; k + 1 < lines.size(); ++k) closing.uses.push_back(static_cast<int>(k) + 1);
  return true;
}

}  // namespace

void chain_lines(Reading& reading, const Goal& goal, const Names& names) {
  std::vector<ReadingLine>& lines = reading.lines;
  int length = 1;  // equals signs in the chain so far
  std::optional<Equality> whole;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    auto here = equality(lines[i]);
    if (!here || !whole) {
      whole = here;
      length = 1;
      continue;
    }
    // Either end of a first pair may go on; the chain itself goes on at its right end only.
    if (length == 1 && (whole->left == here->left || whole->left == here->right) && !lines[i].closing) {
      std::swap(whole->left, whole->right);
      lines[i - 1].rows[0] = whole->left + kEquals + whole->right;
    }
    if (here->right == whole->right) std::swap(here->left, here->right);
    if (here->left != whole->right || length == kMostEquals || here->right == whole->left) {
      whole = here;
      length = 1;
      continue;
    }
    ++length;
    lines[i].claim = here->left + kEquals + here->right;
    lines[i].rows = {"= " + here->right};
    whole->right = here->right;
    if (i + 2 == lines.size() && ends_with_claim(reading, goal, names, *whole, static_cast<std::size_t>(length))) return;
  }
}

}  // namespace prover
