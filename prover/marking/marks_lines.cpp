#include "prover/marking/marks_lines.hpp"

#include <algorithm>
#include <cctype>
#include <cstdlib>

#include "prover/marking/scheme_words.hpp"

namespace prover {

namespace {

bool upper(char c) { return c >= 'A' && c <= 'Z'; }
bool digit(char c) { return std::isdigit(static_cast<unsigned char>(c)) != 0; }

struct Sign {
  const char* written;
  const char* means;
};
// "<" is not among them: it is how some write an angle.
constexpr Sign signs[] = {{"=", "="},  {"∥", "∥"}, {"//", "∥"}, {"||", "∥"}, {"⟂", "⟂"}, {"⊥", "⟂"},
                          {"≅", "≅"}, {"≡", "≅"}, {"~", "~"},  {"∼", "~"},  {"⦀", "~"}, {"|||", "~"}};

// The names of points from `at` on: "KLQ", "A1B2".
std::vector<std::string> points_at(const std::string& text, std::size_t& at) {
  std::vector<std::string> points;
  while (at < text.size() && upper(text[at])) {
    std::string name(1, text[at++]);
    while (at < text.size() && digit(text[at])) name += text[at++];
    points.push_back(std::move(name));
  }
  return points;
}

std::string joined(const std::vector<std::string>& points) {
  std::string text;
  for (const std::string& point : points) text += point;
  return text;
}

// An angle and a segment may be read from either end; a triangle's letters correspond and keep their order.
std::string one_spelling(const std::string& sign, std::vector<std::string> points) {
  if (sign != "△" && points.size() <= 3 && points.size() > 1 && points.back() < points.front()) std::reverse(points.begin(), points.end());
  return (sign == "∠" || points.size() == 3 ? (sign.empty() ? "∠" : sign) : sign) + joined(points);
}

std::string letters_of(const std::string& thing) {
  std::string letters;
  for (const char c : thing)
    if (upper(c)) letters += c;
  std::sort(letters.begin(), letters.end());
  return letters;
}

}  // namespace

Spoken spoken(const std::string& text) {
  Spoken result;
  std::string sign;
  std::size_t before_sign = 0;
  bool alone = true, sign_seen = false;
  for (std::size_t at = 0; at < text.size();) {
    const auto starts = [&](const char* word) { return text.compare(at, std::string_view(word).size(), word) == 0; };
    const Sign* found = nullptr;
    for (const Sign& one : signs)
      if (starts(one.written) && (found == nullptr || std::string_view(one.written).size() > std::string_view(found->written).size()))
        found = &one;
    if (found != nullptr) {
      if (!sign_seen) result.relation = found->means, before_sign = result.things.size();
      sign_seen = true;
      at += std::string_view(found->written).size();
    } else if (starts("∠") || starts("△")) {
      sign = text.substr(at, std::string_view("∠").size());
      at += sign.size();
    } else if (upper(text[at])) {
      const auto points = points_at(text, at);
      if (at < text.size() && std::islower(static_cast<unsigned char>(text[at])) != 0) {  // a word: "Join"
        while (at < text.size() && std::isalpha(static_cast<unsigned char>(text[at])) != 0) ++at;
      } else {
        result.things.push_back(one_spelling(sign, points));
      }
      sign.clear();
    } else if (digit(text[at])) {
      std::size_t end = at;
      while (end < text.size() && (digit(text[end]) || text[end] == '.')) ++end;
      result.number = text.substr(at, end - at);
      if (!sign_seen) alone = false;
      at = end;
    } else if (std::islower(static_cast<unsigned char>(text[at])) != 0) {
      std::size_t end = at;
      while (end < text.size() && std::isalpha(static_cast<unsigned char>(text[end])) != 0) ++end;
      const std::string word = text.substr(at, end - at);
      if (word.size() == 1 && word != "m") result.things.push_back(word);
      if (word == "angle") sign = "∠";
      if (word == "triangle") sign = "△";
      at = end;
    } else {
      if (!sign_seen && (text[at] == '+' || starts("−"))) alone = false;
      ++at;
    }
  }
  if (sign_seen && alone && before_sign == 1) result.first = result.things.front();
  // The number counts where the text ends in it.
  std::string end = text;
  while (!end.empty() && (end.back() == '.' || end.back() == ' ')) end.pop_back();
  if (end.ends_with("°")) end.resize(end.size() - std::string_view("°").size());
  if (result.number.empty() || !end.ends_with(result.number)) result.number.clear();
  return result;
}

std::optional<int> step_meant(const std::string& text, const std::vector<AnswerStep>& steps, const std::vector<int>& among) {
  const Spoken line = spoken(text);
  if (line.things.empty()) return std::nullopt;
  const auto all = [](std::vector<std::string> things) {
    std::sort(things.begin(), things.end());
    things.erase(std::unique(things.begin(), things.end()), things.end());
    return things;
  };
  for (const int n : among) {
    const Spoken step = spoken(short_statement(steps[static_cast<std::size_t>(n) - 1]));
    if (!line.relation.empty() && line.relation == step.relation && all(line.things) == all(step.things)) return n;
  }
  for (const int n : among) {
    const Spoken step = spoken(short_statement(steps[static_cast<std::size_t>(n) - 1]));
    if (!line.first.empty() && line.first == step.first && line.relation == step.relation) return n;
  }
  return std::nullopt;
}

bool same_triangles_otherwise(const Spoken& a, const Spoken& b) {
  if (a.relation != b.relation || (a.relation != "≅" && a.relation != "~") || a.things.size() != 2 || b.things.size() != 2) return false;
  std::vector<std::string> one = {letters_of(a.things[0]), letters_of(a.things[1])};
  std::vector<std::string> other = {letters_of(b.things[0]), letters_of(b.things[1])};
  std::sort(one.begin(), one.end());
  std::sort(other.begin(), other.end());
  return one == other;
}

bool same_but_number(const Spoken& a, const Spoken& b) {
  return a.relation == "=" && a.relation == b.relation && !a.things.empty() && a.things == b.things && !a.number.empty() &&
         !b.number.empty() && a.number != b.number;
}

bool impossible_angle(const std::string& text) {
  if (text.find("∠") == std::string::npos && text.find("angle") == std::string::npos) return false;
  const std::size_t equals = text.rfind('=');
  if (equals == std::string::npos) return false;
  std::string value = text.substr(equals + 1);
  const bool negative = value.find("−") < value.find_first_of("0123456789") || value.find('-') < value.find_first_of("0123456789");
  value.erase(0, std::min(value.find_first_of("0123456789"), value.size()));
  if (value.empty() || spoken(text).number.empty()) return false;
  const double number = std::strtod(value.c_str(), nullptr);
  const bool reflex = text.find("reflex") != std::string::npos, sum = text.find('+') != std::string::npos;
  return negative || number <= 0 || (!sum && number >= (reflex ? 360 : 180));
}

}  // namespace prover
