// The words by which rule files call the members of our enums: one table each, in the order of the enum.
#include <array>

#include "prover/rule/rule.hpp"

namespace prover {
namespace {

struct BuiltinRow {
  std::string_view name;
  std::vector<std::string> places;
};
const std::array<BuiltinRow, 15>& builtin_table() {
  static const std::vector<std::string> two_triangles = {"A", "B", "C", "D", "E", "F"};
  static const std::array<BuiltinRow, 15> table = {{
      {"given", {}},
      {"join", {"A", "B"}},
      {"angle-addition", {"angle"}},
      {"segment-addition", {"A", "C"}},
      {"angles-on-a-straight-line", {"line"}},
      {"angles-at-a-point", {"point"}},
      {"polygon-interior-sum", {"polygon"}},
      {"quadrilateral-angle-sum", {"polygon"}},
      {"polygon-exterior-sum", {"polygon"}},
      {"regular-polygon-angles", {"polygon"}},
      {"regular-polygon-sides", {"polygon"}},
      {"regular-polygon-equal-angles", {"polygon"}},
      {"similar-sas", two_triangles},
      {"similar-sss", two_triangles},
      {"similar-parts-sides", two_triangles},
  }};
  static_assert(static_cast<std::size_t>(Builtin::similar_parts_sides) + 1 == 15);
  return table;
}

constexpr std::array<std::string_view, 7> kinds = {"hypothesis", "construction", "postulate", "definition",
                                                   "theorem",    "converse",     "corollary"};
static_assert(static_cast<std::size_t>(RuleKind::corollary) + 1 == kinds.size());
constexpr std::array<std::string_view, 4> registers = {"plain", "us", "uk", "sa"};
static_assert(static_cast<std::size_t>(Register::sa) + 1 == registers.size());

template <class Enum, std::size_t size>
std::optional<Enum> position_in(const std::array<std::string_view, size>& names, std::string_view name) {
  for (std::size_t i = 0; i < size; ++i)
    if (names[i] == name) return static_cast<Enum>(i);
  return std::nullopt;
}

}  // namespace

std::optional<Builtin> builtin_from(std::string_view name) {
  const auto& table = builtin_table();
  for (std::size_t i = 0; i < table.size(); ++i)
    if (table[i].name == name) return static_cast<Builtin>(i);
  return std::nullopt;
}

std::vector<std::string> builtin_names() {
  std::vector<std::string> names;
  for (const BuiltinRow& row : builtin_table()) names.emplace_back(row.name);
  return names;
}

std::vector<std::string> places_of(Builtin builtin) {
  return builtin_table()[static_cast<std::size_t>(builtin)].places;
}

std::string_view name_of(RuleKind kind) {
  return kinds[static_cast<std::size_t>(kind)];
}
std::string_view name_of(Register wording) {
  return registers[static_cast<std::size_t>(wording)];
}
std::optional<RuleKind> kind_from(std::string_view name) {
  return position_in<RuleKind>(kinds, name);
}
std::optional<Register> register_from(std::string_view name) {
  return position_in<Register>(registers, name);
}

}  // namespace prover
