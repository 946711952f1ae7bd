#include "frontend/render/prose.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include "frontend/document/references.hpp"

namespace frontend {

namespace {

// Reasons are noun phrases. Those in the singular want an article inside a sentence.
bool wants_article(std::string_view reason) {
  static constexpr std::array<std::string_view, 9> singular = {
      "angle sum", "exterior angle", "definition", "midpoint", "sum of", "converse", "base angles theorem",
      "straight line", "symmetry"};
  return std::any_of(singular.begin(), singular.end(),
                     [&](std::string_view start) { return reason.starts_with(start); });
}

// "alternate angles are equal" is a clause, "alternate angles" is not.
bool is_clause(std::string_view reason) {
  static constexpr std::array<std::string_view, 9> verbs = {" is ", " are ", " bisect ", " bisects ", " cross ", " add up ",
                                                            " adds up ", " have ", " has "};
  return std::any_of(verbs.begin(), verbs.end(),
                     [&](std::string_view verb) { return reason.find(verb) != std::string_view::npos; });
}

// Where the places begin: after the first comma that a sign, a capital letter or "cut by" follows. A comma between
// plain words belongs to the reason ("right angle, hypotenuse and a side equal").
std::size_t start_of_places(std::string_view reason) {
  for (std::size_t comma = reason.find(", "); comma != std::string_view::npos; comma = reason.find(", ", comma + 2)) {
    const std::string_view rest = reason.substr(comma + 2);
    const bool is_word = !rest.empty() && rest.front() >= 'a' && rest.front() <= 'z';
    if (!is_word || rest.starts_with("cut by") || rest.starts_with("triangle ")) return comma;
  }
  return std::string_view::npos;
}

// "alternate angles, KL ∥ PQ, cut by KQ" → "because of alternate angles (KL ∥ PQ, cut by KQ)".
std::string because(const std::string& reason) {
  if (reason.starts_with("adding ")) return "by " + reason;
  const std::size_t comma = start_of_places(reason);
  std::string head = reason.substr(0, comma);
  if (wants_article(head)) head.insert(0, "the ");
  if (comma != std::string::npos) head += " (" + reason.substr(comma + 2) + ")";
  return (is_clause(head) ? "because " : "because of ") + head;
}

std::string sentence(const ProofLines& proof, std::size_t i, const References& references) {
  const ProofLine& line = proof.lines[i];
  const std::vector<int>& named = references.named[i];
  const bool first = i == 0;
  if (line.reason == "given") return (first ? "We are given that " : "We are also given that ") + line.claim + ".";
  if (line.reason.starts_with("substitut")) {
    return (line.closing ? "Therefore, substituting, " : "So, substituting, ") + line.claim + ".";
  }
  if (line.reason.empty()) return (line.closing ? "Therefore " : "So ") + line.claim + ".";
  if (!named.empty()) {
    std::vector<std::string> claims;
    for (const int number : named) {
      const auto used = std::find_if(proof.lines.begin(), proof.lines.end(),
                                     [&](const ProofLine& other) { return other.number == number; });
      if (used != proof.lines.end()) claims.push_back(used->claim);
    }
    return "Because " + enumerate(claims) + ", it follows that " + line.claim + ", " + because(line.reason) + ".";
  }
  std::string lead = "So ";
  if (line.uses.empty()) lead = first ? "First, " : "Also, ";
  if (line.closing) lead = "Therefore ";
  return lead + line.claim + ", " + because(line.reason) + ".";
}

}  // namespace

std::string prose(const ProofLines& proof) {
  const References references = references_of(proof);
  std::string text;
  for (std::size_t i = 0; i < proof.lines.size(); ++i) {
    if (i > 0) text += ' ';
    text += sentence(proof, i, references);
  }
  return text;
}

}  // namespace frontend
