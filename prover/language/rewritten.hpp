// A stretch of text that is being rewritten for the grammar (a label taken away, "x" between numbers made a sign of
// multiplication) and still knows where each of its bytes was written.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "prover/base/source.hpp"
#include "prover/language/phrase.hpp"

namespace prover {

class Rewritten {
 public:
  Rewritten(std::string_view source, Span line) : text_(source.substr(line.begin, line.end - line.begin)) {
    for (std::size_t i = line.begin; i <= line.end; ++i) from_.push_back(i);
  }

  const std::string& text() const { return text_; }
  std::size_t size() const { return text_.size(); }

  void replace(std::size_t begin, std::size_t end, std::string_view with) {
    const std::size_t place = from_[begin];
    text_.replace(begin, end - begin, with);
    const auto first = from_.begin() + static_cast<std::ptrdiff_t>(begin);
    from_.insert(from_.erase(first, from_.begin() + static_cast<std::ptrdiff_t>(end)), with.size(), place);
  }
  void blank(std::size_t begin, std::size_t end) {
    for (std::size_t i = begin; i < end; ++i) text_[i] = ' ';
  }
  Rewritten part(std::size_t begin, std::size_t end) const {
    Rewritten piece;
    piece.text_ = text_.substr(begin, end - begin);
    piece.from_.assign(from_.begin() + static_cast<std::ptrdiff_t>(begin),
                       from_.begin() + static_cast<std::ptrdiff_t>(end + 1));
    return piece;
  }

  // Where it was written.
  Span source(Span span) const {
    const auto at = [&](std::size_t i) { return from_[i < from_.size() ? i : from_.size() - 1]; };
    return {at(span.begin), at(span.end)};
  }
  void to_source(Phrase& phrase) const {
    phrase.span = source(phrase.span);
    for (Span& span : phrase.point_spans) span = source(span);
    for (Expression& expression : phrase.relation.expressions) {
      expression.span = source(expression.span);
      for (Term& term : expression.terms) term.span = source(term.span);
    }
  }

 private:
  Rewritten() = default;
  std::string text_;
  std::vector<std::size_t> from_;  // of each byte, and of the end
};

}  // namespace prover
