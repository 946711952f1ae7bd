// The words of reasons: which spellings mean the same, and which accepted word a misspelt one was meant to be. A meaning
// is a bit, and what a reason says is a set of them: pupils' word order tells nothing, and neither do articles.
#pragma once
#include <array>
#include <bitset>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace prover {

constexpr std::size_t most_meanings = 512;
using Meanings = std::bitset<most_meanings>;
using Meaning = std::size_t;

enum class WordRole { word, relation, weak, turn, filler };

struct Form {                     // what one spelling means
  std::vector<Meaning> meanings;  // none: it says nothing
  bool misspelt = false;
};

class ReasonVocabulary {
 public:
  explicit ReasonVocabulary(std::string_view table);

  // The meaning with this name; made when there is none, as far as there is room (then an existing catch-all).
  Meaning meaning(std::string_view name, WordRole role = WordRole::word);
  std::optional<Meaning> known(std::string_view name) const;
  const std::string& name(Meaning m) const { return names_[m]; }
  WordRole role(Meaning m) const { return roles_[m]; }
  const Meanings& all(WordRole role) const { return by_role_[static_cast<std::size_t>(role)]; }

  // The meaning of "X" where it is what follows ("so the lines are parallel"), or none where words of this kind are never told apart so.
  std::optional<Meaning> concluded(Meaning m) const;

  // The longest form at the beginning of `words` (small letters) and how many of them it takes; null when there is none.
  const Form* longest(const std::vector<std::string>& words, std::size_t from, std::size_t& taken) const;
  const Form* find(std::string_view word) const;  // a single word, also in the plural
  void add_form(std::string_view form, Form means);

  // The only accepted word that is nearest, where it is near enough; never asked for an accepted word.
  const Form* corrected(std::string_view word) const;
  // Accepted words written without blanks between them: "altangles"; empty when it is not.
  std::vector<std::string> unglued(std::string_view word) const;

  const std::vector<std::string>& mistakes() const { return mistakes_; }

 private:
  struct Spelling {
    std::string word;
    std::uint32_t letters;  // a bit for each letter that occurs
  };
  std::vector<std::string> names_;
  std::vector<WordRole> roles_;
  std::array<Meanings, 5> by_role_;
  std::map<std::string, Meaning, std::less<>> by_name_;
  std::unordered_map<std::string, Form> forms_;     // of one word or more, words joined by one blank
  std::unordered_map<std::string, int> longest_at_;  // first word of forms of several words: how many words the longest has
  std::vector<std::vector<Spelling>> by_length_;    // single words that misspelt ones may be corrected to
  std::vector<std::string> mistakes_;
};

}  // namespace prover
