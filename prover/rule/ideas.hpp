// What counts as an idea of its own when proofs are compared, as data: `rules/ideas.table`, compiled into the program
// like the rules. The rooms that compare proofs and that give them titles read it here.
#pragma once
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "prover/rule/rule.hpp"

namespace prover {

enum class IdeaRole {
  carries,       // makes a proof different from one that does without
  quiet,         // likewise, but a title names it only when there is nothing else
  small_change,  // makes no difference
};

class IdeaTable {
 public:
  // Mistakes (unknown words, a rule with two roles) are kept for the test that reads the table.
  explicit IdeaTable(std::string_view text);

  IdeaRole role(const Rule& rule) const;
  // Rules of one fact say the same at the same places: its name; else the rule's family, or the rule itself.
  const std::string& fact(const Rule& rule) const;

  // Citing `rule` once is no other idea than citing all of `parts`.
  struct Composition {
    std::string rule;
    std::vector<std::string> parts;
  };
  const std::vector<Composition>& compositions() const { return compositions_; }
  const std::vector<std::string>& mistakes() const { return mistakes_; }
  std::vector<std::string> names() const;  // every rule that the table speaks of

 private:
  template <typename Value>
  static const Value* of(const std::map<std::string, Value>& map, const Rule& rule);

  std::map<std::string, IdeaRole> roles_;
  std::map<std::string, std::string> facts_;
  std::vector<Composition> compositions_;
  std::vector<std::string> mistakes_;
};

std::string_view builtin_idea_text();
const IdeaTable& idea_table();  // read once

}  // namespace prover
