#include "prover/marking/reason_vocabulary.hpp"

#include <algorithm>
#include <array>

#include "prover/marking/reason_lexer.hpp"
#include "prover/marking/reason_tables.hpp"

namespace prover {
namespace {

constexpr std::size_t longest_word = 24;  // longer ones are no words, and cost time

// What a converse concludes, and a theorem supposes: here it matters on which side of "so" it stands.
constexpr std::array<std::string_view, 19> concludable = {
    "parallel", "cyclic",    "concyclic", "straight", "isosceles", "equilateral", "parallelogram", "rectangle", "rhombus",  "square",
    "kite",     "trapezium", "tangent",   "diameter", "congruent", "similar",     "perpendicular", "bisector",  "semicircle"};

std::uint32_t letters_of(std::string_view word) {
  std::uint32_t bits = 0;
  for (const char c : word)
    if (c >= 'a' && c <= 'z') bits |= 1U << (c - 'a');
  return bits;
}

bool only_letters(std::string_view word) {
  return std::all_of(word.begin(), word.end(), [](char c) { return c >= 'a' && c <= 'z'; });
}

// Damerau's distance (letters more, less, other, or two neighbours swapped), or `limit + 1` when it is larger.
std::size_t edits(std::string_view a, std::string_view b, std::size_t limit) {
  std::array<std::array<std::size_t, longest_word + 1>, 3> rows;
  for (std::size_t j = 0; j <= b.size(); ++j) rows[0][j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    auto& row = rows[i % 3];
    const auto& above = rows[(i + 2) % 3];
    const auto& higher = rows[(i + 1) % 3];
    row[0] = i;
    std::size_t least = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      row[j] = std::min({above[j] + 1, row[j - 1] + 1, above[j - 1] + (a[i - 1] == b[j - 1] ? 0U : 1U)});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) row[j] = std::min(row[j], higher[j - 2] + 1);
      least = std::min(least, row[j]);
    }
    if (least > limit) return limit + 1;
  }
  return rows[a.size() % 3][b.size()];
}

// So many slips a word of this length may have and still be taken for it.
std::size_t slips_for(std::size_t length) {
  return length <= 3 ? 0 : length <= 6 ? 1 : length <= 9 ? 2 : 3;
}

std::vector<std::string> blanks_parted(std::string_view text) {
  std::vector<std::string> words;
  for (std::string& word : parts_of(text, ' ')) words.push_back(std::move(word));
  return words;
}

std::string joined(const std::vector<std::string>& words, std::size_t from, std::size_t count) {
  std::string out;
  for (std::size_t i = 0; i < count; ++i) out += (i == 0 ? "" : " ") + words[from + i];
  return out;
}

}  // namespace

ReasonVocabulary::ReasonVocabulary(std::string_view table) : by_length_(longest_word + 1) {
  for (const TableRow& row : table_rows(table)) {
    const std::vector<std::string> head = blanks_parted(row.columns[0]);
    static const std::map<std::string, WordRole, std::less<>> roles = {
        {"word", WordRole::word}, {"relation", WordRole::relation}, {"weak", WordRole::weak}, {"turn", WordRole::turn}, {"filler", WordRole::filler}};
    const auto role = roles.find(head[0]);
    if (role == roles.end() || (head.size() < 2) != (role->second == WordRole::filler)) {
      mistakes_.push_back("words.table:" + std::to_string(row.line) + ": not understood");
      continue;
    }
    Form form;
    for (std::size_t i = 1; i < head.size(); ++i)
      if (head[i] != "+") form.meanings.push_back(meaning(head[i], role->second));
    if (head.size() > 1) add_form(head[1], form);
    if (row.columns.size() < 2) continue;
    for (std::string spelt : parts_of(row.columns[1], ',')) {
      form.misspelt = spelt.starts_with('~') && spelt.size() > 1;
      add_form(form.misspelt ? spelt.substr(1) : spelt, form);
    }
  }
  for (const std::string_view name : concludable) meaning("so_" + std::string(name));
}

Meaning ReasonVocabulary::meaning(std::string_view name, WordRole role) {
  if (const auto known = by_name_.find(name); known != by_name_.end()) return known->second;
  if (names_.size() + 1 >= most_meanings) name = "other";  // a catalogue with very many new words: they are one
  const auto [at, is_new] = by_name_.emplace(name, names_.size());
  if (is_new) {
    names_.emplace_back(name);
    roles_.push_back(role);
    by_role_[static_cast<std::size_t>(role)].set(at->second);
  }
  return at->second;
}

std::optional<Meaning> ReasonVocabulary::known(std::string_view name) const {
  const auto at = by_name_.find(name);
  return at == by_name_.end() ? std::nullopt : std::optional(at->second);
}

std::optional<Meaning> ReasonVocabulary::concluded(Meaning m) const {
  return known("so_" + names_[m]);
}

void ReasonVocabulary::add_form(std::string_view form, Form means) {
  std::vector<std::string> words;
  for (RawToken& token : raw_tokens(form, 16)) words.push_back(std::move(token.lower));
  if (words.empty()) return;
  const std::string key = joined(words, 0, words.size());
  const bool may_correct_to = words.size() == 1 && !means.misspelt && key.size() > 3 && key.size() <= longest_word && only_letters(key);
  if (!forms_.emplace(key, std::move(means)).second) return;  // the first meaning stands
  if (words.size() > 1) {
    int& longest = longest_at_[words[0]];
    longest = std::max(longest, static_cast<int>(words.size()));
  }
  if (may_correct_to) by_length_[key.size()].push_back({key, letters_of(key)});
}

const Form* ReasonVocabulary::find(std::string_view word) const {
  const auto look = [&](std::string_view w) -> const Form* {
    const auto at = forms_.find(std::string(w));
    return at == forms_.end() ? nullptr : &at->second;
  };
  if (const Form* form = look(word)) return form;
  if (word.ends_with("'s")) return look(word.substr(0, word.size() - 2));
  if (word.size() > 2 && word.ends_with('s'))
    if (const Form* form = look(word.substr(0, word.size() - 1))) return form;
  if (word.size() > 4 && word.ends_with("es"))
    if (const Form* form = look(word.substr(0, word.size() - 2))) return form;
  if (word.size() > 4 && word.ends_with("ies")) return look(std::string(word.substr(0, word.size() - 3)) + "y");
  return nullptr;
}

const Form* ReasonVocabulary::longest(const std::vector<std::string>& words, std::size_t from, std::size_t& taken) const {
  std::string first = words[from];
  auto several = longest_at_.find(first);
  if (several == longest_at_.end() && first.size() > 2 && first.ends_with('s')) several = longest_at_.find(first = first.substr(0, first.size() - 1));
  if (several != longest_at_.end()) {
    const std::size_t most = std::min(static_cast<std::size_t>(several->second), words.size() - from);
    for (std::size_t count = most; count > 1; --count) {
      std::vector<std::string> run(words.begin() + static_cast<std::ptrdiff_t>(from), words.begin() + static_cast<std::ptrdiff_t>(from + count));
      for (const std::string& start : {words[from], first}) {
        run[0] = start;
        if (const Form* form = find(joined(run, 0, count))) {
          taken = count;
          return form;
        }
      }
    }
  }
  taken = 1;
  return find(words[from]);
}

const Form* ReasonVocabulary::corrected(std::string_view word) const {
  if (word.size() < 4 || word.size() > longest_word || !only_letters(word)) return nullptr;
  const std::uint32_t letters = letters_of(word);
  std::size_t best = slips_for(longest_word) + 1;
  const Spelling* found = nullptr;
  bool shared = false;
  const auto try_length = [&](std::size_t length) {
    const std::size_t allowed = slips_for(std::max(length, word.size()));
    for (const Spelling& known : by_length_[length]) {
      const std::size_t limit = std::min(allowed, best);
      if (static_cast<std::size_t>(__builtin_popcount(letters ^ known.letters)) > 2 * limit) continue;
      const std::size_t distance = edits(word, known.word, limit);
      // Two slips and another first letter is another word more often than this one.
      if (distance > limit || (distance > 1 && known.word[0] != word[0])) continue;
      const Form& form = forms_.find(known.word)->second;
      if (distance == best && found != nullptr) {
        shared = shared || forms_.find(found->word)->second.meanings != form.meanings;
        continue;
      }
      best = distance;
      found = &known;
      shared = false;
    }
  };
  for (std::size_t length = word.size() - std::min<std::size_t>(3, word.size() - 4); length <= std::min(word.size() + 3, longest_word); ++length)
    try_length(length);
  if (found == nullptr || shared) {
    if (found == nullptr && word.ends_with('s')) return corrected(word.substr(0, word.size() - 1));
    return nullptr;
  }
  return &forms_.find(found->word)->second;
}

std::vector<std::string> ReasonVocabulary::unglued(std::string_view word) const {
  if (word.size() < 6 || word.size() > 60 || !only_letters(word)) return {};
  // best[i]: the fewest words that make up the first i letters; 0 where none do.
  std::vector<std::size_t> fewest(word.size() + 1, 0), from(word.size() + 1, 0);
  for (std::size_t end = 1; end <= word.size(); ++end)
    for (std::size_t begin = end > longest_word ? end - longest_word : 0; begin < end; ++begin) {
      if ((begin > 0 && fewest[begin] == 0) || end - begin < 3) continue;
      const std::size_t count = fewest[begin] + 1;
      if ((fewest[end] == 0 || count < fewest[end]) && find(word.substr(begin, end - begin)) != nullptr) {
        fewest[end] = count;
        from[end] = begin;
      }
    }
  if (fewest[word.size()] < 2) return {};
  std::vector<std::string> parts;
  for (std::size_t end = word.size(); end > 0; end = from[end]) parts.emplace_back(word.substr(from[end], end - from[end]));
  std::reverse(parts.begin(), parts.end());
  return parts;
}

}  // namespace prover
