// A reason cut into words, numbers and signs; the many ways to write one sign (∠, <, ∡; ∥, ||, //) become one.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "prover/base/source.hpp"

namespace prover {

enum class RawKind {
  word,       // letters, digits behind them, primes
  number,     // digits
  sign,       // one of ∠ ∥ ⊥ Δ ≅ ⦀ = < > ≠ ° ½ ⊙ × ÷ − + ∴ ∵ & ( )
  separator,  // comma, semicolon, full stop, new line, dash
};

struct RawToken {
  RawKind kind = RawKind::word;
  std::string text;     // as written; a sign in its one form
  std::string lower;    // in small letters
  bool hat = false;     // an angle by the sign over its middle letter: KL̂M
  bool glued = false;   // nothing stands between it and the token before
  bool sentence = false;  // a separator that ends more than a part: semicolon, full stop, new line
  Span span;
};

// At most `most` tokens; what stands behind is left out.
std::vector<RawToken> raw_tokens(std::string_view text, std::size_t most);

}  // namespace prover
