// What a sentence says, read by the language of problems.
#pragma once
#include <algorithm>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "prover/language/phrase_points.hpp"
#include "prover/language/problem_text.hpp"

namespace rule_tests {

inline std::vector<std::string> words_of(std::string_view sentence) {
  std::vector<std::string> words(1);
  for (const char c : sentence) {
    if (c == ' ')
      words.emplace_back();
    else if (std::string_view(".;:?!").find(c) == std::string_view::npos)
      words.back() += c;
    else
      words.back() += '\n';  // no phrase goes on over such a mark
  }
  return words;
}

inline bool says_the_same(const prover::Phrase& a, const prover::Phrase& b) {
  if (a.predicate != b.predicate) return false;
  std::vector<prover::PointId> p = points_named(a), q = points_named(b);
  for (auto* points : {&p, &q}) {
    std::sort(points->begin(), points->end());
    points->erase(std::unique(points->begin(), points->end()), points->end());
  }
  return p == q;
}

// Every run of words that begins at a name is read as a sentence of a problem. What it says is compared with the conclusion
// by kind and points: "AB = CD" would be found in "AB and CD are equal" as well.
inline bool states_one_of(const std::vector<prover::Phrase>& claims, const prover::Names& known, std::string_view sentence) {
  const std::vector<std::string> words = words_of(sentence);
  for (std::size_t i = 0; i < words.size(); ++i) {
    static const std::set<std::string> nouns = {"angle", "line", "triangle", "triangles", "circle"};
    const bool signed_name = words[i].starts_with("∠") || words[i].starts_with("2∠") || words[i].starts_with("△");
    const bool capital = !words[i].empty() && words[i][0] >= 'A' && words[i][0] <= 'Z';
    if (!signed_name && !capital && !nouns.contains(words[i])) continue;
    std::string run;
    for (std::size_t j = i; j < words.size(); ++j) {
      run += (run.empty() ? "" : " ") + words[j].substr(0, words[j].find('\n'));
      prover::Names names = known;
      std::vector<prover::Diagnostic> mistakes;
      const std::string phrase_text = run.ends_with(",") ? run.substr(0, run.size() - 1) : run;
      const std::vector<prover::Phrase> read =
          j > i ? prover::parse_phrases(phrase_text, names, mistakes) : std::vector<prover::Phrase>();
      if (!has_error(mistakes))
        for (const prover::Phrase& phrase : read) {
          if (phrase.predicate == prover::Predicate::relation && phrase.relation.comparisons.empty()) continue;
          for (const prover::Phrase& conclusion : claims)
            if (says_the_same(phrase, conclusion)) return true;
        }
      if (words[j].find('\n') != std::string::npos) break;
    }
  }
  return false;
}

}  // namespace rule_tests
