#include "frontend/render/prose.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include "frontend/document/references.hpp"

namespace frontend {

namespace {

// Reasons are noun phrases. "Angle sum of triangle KLM" wants an article inside a sentence, "alternate angles" none.
bool wants_article(std::string_view reason) {
  static constexpr std::array<std::string_view, 8> singular = {"angle sum",  "exterior angle", "definition", "midpoint",
                                                               "side oppos", "median",         "altitude",   "bisector"};
  if (reason.starts_with("both ") || reason.starts_with("two ")) return false;
  return reason.find(" of ") != std::string_view::npos ||
         std::any_of(singular.begin(), singular.end(),
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
    if (!is_word || rest.starts_with("cut by") || rest.starts_with("given ") || rest.starts_with("triangle ")) return comma;
  }
  return std::string_view::npos;
}

// "alternate angles, KL ∥ PQ, cut by KQ" → "because of alternate angles (KL ∥ PQ, cut by KQ)".
std::string because(const std::string& reason) {
  const std::size_t comma = start_of_places(reason);
  std::string head = reason.substr(0, comma);
  std::string link = is_clause(head) ? "because " : "because of ";
  if (head.starts_with("adding ")) link = "by ";
  if (link == "because of " && wants_article(head)) link += "the ";
  if (comma != std::string::npos) head += " (" + reason.substr(comma + 2) + ")";
  return link + head;
}

// The relations of a claim: a row that starts with "=" goes on with the one before.
std::vector<std::string> relations(const ProofLine& line) {
  std::vector<std::string> result;
  for (const std::string& row : line.rows) {
    if (row.starts_with('=') && !result.empty()) {
      result.back() += " " + row;
    } else {
      result.push_back(row.starts_with("so ") ? row.substr(3) : row);
    }
  }
  return result;
}

// "…, so this, and therefore that": what the first relation of a line leads to.
std::string consequences(const std::vector<std::string>& relations, bool closing) {
  std::string text;
  for (std::size_t i = 1; i < relations.size(); ++i) {
    text += (closing && i + 1 == relations.size() ? ", and therefore " : ", so ") + relations[i];
  }
  return text;
}

// "Join KM", "Let ∠K = x": claims nothing.
bool is_preparation(const ProofLine& line) { return line.reason == "construction" || line.reason == "for short"; }

// What a line says first; a chain that goes on from the line before is said whole.
std::string relation_of(const ProofLine& line, const std::vector<std::string>& said) {
  return said[0].starts_with('=') ? line.claim : said[0];
}

std::string sentence(const ProofLines& proof, std::size_t i, const References& references) {
  const ProofLine& line = proof.lines[i];
  const std::vector<int>& named = references.named[i];
  const std::vector<std::string> said = relations(line);
  const std::string rest = consequences(said, line.closing) + ".";
  const bool first = i == 0, concludes = line.closing && said.size() == 1;
  if (is_preparation(line)) return said[0] + ".";
  if (line.reason.starts_with("similarly")) {
    const std::size_t comma = line.reason.find(", ");
    const std::string places = comma == std::string::npos ? "" : " (" + line.reason.substr(comma + 2) + ")";
    return (concludes ? "Therefore, in the same way, " : "Similarly, ") + relation_of(line, said) + places + rest;
  }
  if (line.reason == "given") return (first ? "We are given that " : "We are also given that ") + relation_of(line, said) + rest;
  if (line.reason.starts_with("substitut")) {
    return (concludes ? "Therefore, substituting, " : "So, substituting, ") + relation_of(line, said) + rest;
  }
  if (line.reason == "as shown") return "Therefore " + line.claim + ", as shown.";
  if (line.reason.empty()) return (concludes ? "Therefore " : "So ") + relation_of(line, said) + rest;
  if (!named.empty()) {
    std::vector<std::string> claims;
    for (const int number : named) {
      const auto used = std::find_if(proof.lines.begin(), proof.lines.end(),
                                     [&](const ProofLine& other) { return other.number == number; });
      if (used != proof.lines.end()) claims.push_back(relations(*used).back());
    }
    return "Because " + enumerate(claims) + ", it follows that " + relation_of(line, said) + ", " + because(line.reason) + rest;
  }
  std::string lead = "So ";
  if (line.uses.empty()) lead = first ? "First, " : i % 2 == 1 ? "Also, " : "Moreover, ";
  const bool prepared = !first && std::all_of(proof.lines.begin(), proof.lines.begin() + static_cast<std::ptrdiff_t>(i), is_preparation);
  if (prepared) lead = "Then ";
  if (concludes) lead = "Therefore ";
  return lead + relation_of(line, said) + ", " + because(line.reason) + rest;
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
