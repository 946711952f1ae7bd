#include "prover/rule/name_index.hpp"

#include <array>

#include "prover/rule/wording.hpp"

namespace prover {
namespace {

struct GroupName {
  std::string_view said;
  std::string_view topic;
};
constexpr std::array<GroupName, 33> group_names = {{
    {"angle facts", "point"},
    {"angles at a point", "point"},
    {"basic angle facts", "point"},
    {"parallels", "parallel"},
    {"parallel lines", "parallel"},
    {"angles on parallel lines", "parallel"},
    {"angles and parallel lines", "parallel"},
    {"triangles", "triangle"},
    {"triangle facts", "triangle"},
    {"congruence", "congruence"},
    {"congruent triangles", "congruence"},
    {"similarity", "similarity"},
    {"similar triangles", "similarity"},
    {"quadrilaterals", "quadrilateral"},
    {"quads", "quadrilateral"},
    {"quad", "quadrilateral"},
    {"parallelograms", "quadrilateral"},
    {"special quadrilaterals", "quadrilateral"},
    {"polygons", "polygon"},
    {"loci", "locus"},
    {"locus facts", "locus"},
    {"circles", "chord"},
    {"circles", "inscribed"},
    {"circles", "tangent"},
    {"circles", "secant"},
    {"circle theorems", "chord"},
    {"circle theorems", "inscribed"},
    {"circle theorems", "tangent"},
    {"circle theorems", "secant"},
    {"chords", "chord"},
    {"tangents", "tangent"},
    {"secants", "secant"},
    {"definitions", "general"},
}};

// Names are compared in small letters, with hyphens, commas and semicolons as blanks and no full stop or article: "The
// Isosceles-Triangle Theorem." is "isosceles triangle theorem".
std::string plain_name(std::string_view name) {
  std::string out;
  for (const char c : name) {
    const bool blank = std::string_view(" -\t\n\r,;").find(c) != std::string_view::npos;
    if (blank && (out.empty() || out.back() == ' ')) continue;
    out += blank ? ' ' : (c >= 'A' && c <= 'Z') ? static_cast<char>(c - 'A' + 'a') : c;
  }
  while (!out.empty() && (out.back() == ' ' || out.back() == '.')) out.pop_back();
  for (const std::string_view article : {"the ", "a ", "an "})
    if (out.size() > article.size() && out.compare(0, article.size(), article) == 0)
      return out.substr(article.size());
  return out;
}

}  // namespace

NameIndex::NameIndex(const Catalogue& catalogue) {
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) {
    const Rule& rule = catalogue.rules[i];
    add(rule.id, i);
    add(rule.family, i);
    add(rule.title, i);
    add(rule.topic, i);
    for (const std::string& synonym : rule.synonyms) add(synonym, i);
    for (const auto& [wording, text] : rule.wording) add(wording_without_places(text), i);
    for (const GroupName& group : group_names)
      if (group.topic == rule.topic) add(group.said, i);
    add("all", i);
    add("everything", i);
  }
  for (const Course& course : catalogue.courses)
    for (const std::string& name : {course.id, course.title})
      if (Called* called = called_by(name)) called->course = &course;
}

const Called* NameIndex::find(std::string_view name) const {
  const auto at = called_.find(plain_name(name));
  return at == called_.end() ? nullptr : &at->second;
}

std::string NameIndex::nearest(std::string_view name) const {
  const auto near = nearest_word(plain_name(name), names_);
  return near ? *near : std::string();
}

Called* NameIndex::called_by(std::string_view said) {
  const std::string name = plain_name(said);
  if (name.empty()) return nullptr;
  const auto [at, is_new] = called_.try_emplace(name);
  if (is_new) names_.push_back(name);
  return &at->second;
}

void NameIndex::add(std::string_view said, std::size_t rule) {
  if (Called* called = called_by(said)) called->rules.insert(rule);
}

}  // namespace prover
