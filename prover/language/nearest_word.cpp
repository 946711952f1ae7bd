#include <algorithm>

#include "prover/language/problem_text.hpp"

namespace prover {

namespace {

// Edits: a letter more, less or other, or two neighbours swapped (the optimal string alignment distance).
std::size_t distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> before(b.size() + 1), previous(b.size() + 1), current(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) previous[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    current[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      current[j] =
          std::min({previous[j] + 1, current[j - 1] + 1, previous[j - 1] + (a[i - 1] == b[j - 1] ? 0U : 1U)});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        current[j] = std::min(current[j], before[j - 2] + 1);
    }
    std::swap(before, previous);
    std::swap(previous, current);
  }
  return previous[b.size()];
}

std::string lower(std::string_view word) {
  std::string result(word);
  for (char& c : result) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return result;
}

}  // namespace

std::optional<std::string> nearest_word(std::string_view word, const std::vector<std::string>& candidates) {
  constexpr std::size_t longest = 60;
  if (word.empty() || word.size() > longest) return std::nullopt;
  const std::string wanted = lower(word);
  std::optional<std::string> best;
  std::size_t best_distance = std::max<std::size_t>(1, word.size() / 3) + 1;
  for (const std::string& candidate : candidates) {
    if (candidate.size() > longest || candidate.size() + best_distance <= word.size() ||
        word.size() + best_distance <= candidate.size())
      continue;
    const std::size_t edits = distance(wanted, lower(candidate));
    if (edits < best_distance && edits < candidate.size()) {
      best_distance = edits;
      best = candidate;
    }
  }
  return best;
}

}  // namespace prover
