// The grammar of the language, from outside: a sentence in, a tree out. The grammar itself is in the headers
// grammar_*.hpp, from words up to sentences; grammar.cpp alone includes them, because they are slow to
// compile.
#pragma once
#include <cstddef>
#include <optional>
#include <string_view>

#include "prover/language/syntax.hpp"
#include "prover/language/trail.hpp"

namespace prover {

enum class Start { sentence, find, prove, taught, figure };

struct Parsed {
  std::optional<Node> tree;
  Trail trail;  // where it stopped, when there is no tree
};

// Spans in the tree are offset by `offset`: places in the whole text.
Parsed parse_tree(Start start, std::string_view text, std::size_t offset);

}  // namespace prover
