#include "prover/marking/scheme_words.hpp"

#include <algorithm>
#include <cctype>

#include "prover/rule/ideas.hpp"
#include "prover/rule/wording.hpp"

namespace prover {

namespace {

constexpr std::size_t most_words = 5, most_routes = 2;

std::vector<std::string> split(const std::string& text, const std::string& at) {
  std::vector<std::string> parts;
  std::size_t from = 0;
  for (std::size_t found; (found = text.find(at, from)) != std::string::npos; from = found + at.size())
    parts.push_back(text.substr(from, found - from));
  parts.push_back(text.substr(from));
  return parts;
}

// "52°", "18.5°", "23⅓°", "35"
bool is_number(const std::string& text) {
  return !text.empty() && std::isdigit(static_cast<unsigned char>(text[0])) != 0 &&
         std::none_of(text.begin(), text.end(), [](unsigned char c) { return std::isalpha(c) != 0 || c == '+' || c == '('; }) &&
         text.find("∠") == std::string::npos && text.find("−") == std::string::npos;
}

void cut_from(std::string& text, const std::string& words) {
  const std::size_t at = text.find(words);
  if (at == std::string::npos) return;
  const std::size_t end = text.find(',', at + words.size());
  text.erase(at, (end == std::string::npos ? text.size() : end) - at);
}

}  // namespace

std::string short_statement(const AnswerStep& step) {
  std::string claim = split(step.claim, ", so ").back();
  const std::vector<std::string> sides = split(claim, " = ");
  if (sides.size() > 2) claim = sides.front() + " = " + sides.back();
  return claim;
}

bool gives_value(const AnswerStep& step) {
  const std::vector<std::string> sides = split(short_statement(step), " = ");
  return sides.size() == 2 && is_number(sides[1]) && sides[0].find(" + ") == std::string::npos && sides[0].find(" − ") == std::string::npos;
}

std::string short_reason(const AnswerStep& step) {
  std::string reason = step.reason;
  for (const char* words : {", cut by ", ", triangle "}) cut_from(reason, words);
  return reason;
}

std::vector<std::string> other_words(const AnswerStep& step, const Rule& rule) {
  std::vector<std::string> words;
  const auto add = [&](const std::string& text) {
    const bool known = step.reason.starts_with(text) || std::count(words.begin(), words.end(), text) > 0;
    if (!text.empty() && !known && words.size() < most_words) words.push_back(text);
  };
  for (const auto& [wording, text] : rule.wording) add(wording_without_places(text));
  for (const std::string& text : rule.synonyms) add(text);
  return words;
}

std::string other_routes(const Rule& rule, const Catalogue& catalogue) {
  std::string text;
  const std::string& fact = idea_table().fact(rule);
  if (fact == rule.id || fact == rule.family) return text;  // nothing else says the same
  std::vector<RuleId> others;
  for (const std::string& id : idea_table().names())
    if (const auto other = catalogue.find(id); other && id != rule.id && idea_table().fact(catalogue[*other]) == fact) others.push_back(*other);
  // What a class meets first is what a pupil will have used.
  const Course& course = default_course(catalogue);
  std::stable_sort(others.begin(), others.end(), [&](RuleId a, RuleId b) { return course.place_of(a).value_or(course.entries.size()) < course.place_of(b).value_or(course.entries.size()); });
  if (others.size() > most_routes) others.resize(most_routes);
  for (const RuleId other : others) text += (text.empty() ? "or by " : " or ") + catalogue[other].title;
  return text.empty() ? text : text + ", in two lines";
}

}  // namespace prover
