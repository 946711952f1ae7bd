// A text cut into lines and sentences. A line may begin with a keyword and a colon that says what it is for;
// what follows is cut at full stops and semicolons. Comments and labels such as "(a)" or "3." fall away here.
// A line that ends in a comma or in the middle of a phrase goes on in the next.
#pragma once
#include <string_view>
#include <vector>

#include "prover/base/source.hpp"

namespace prover {

enum class LineKind { sentence, find, prove, taught, figure, add, story, other };

struct Piece {
  LineKind kind = LineKind::sentence;
  Span span;                 // trimmed
  std::string_view keyword;  // for `other`
  bool joined = false;       // stands after a semicolon on the same line
};

std::vector<Piece> cut_into_pieces(std::string_view text);

}  // namespace prover
