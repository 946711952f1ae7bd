// The smallest pieces of the grammar: words, signs and blanks, and how a rule becomes a node.
//
// Words are written as patterns, so that a sentence form reads like the sentence:
//     words<"is a midpoint of">
// where `a` stands for any article or none, `is` for is, are or be, `x|y` for one of both, and `x?` for a
// word that may be missing. Letters match in either case; a word ends where its letters end.
#pragma once
#include <cstddef>
#include <string_view>
#include <tao/pegtl.hpp>

#include "prover/language/syntax.hpp"
#include "prover/language/trail.hpp"

namespace prover::grammar {

namespace pegtl = tao::pegtl;
using pegtl::at;
using pegtl::eof;
using pegtl::list;
using pegtl::not_at;
using pegtl::one;
using pegtl::opt;
using pegtl::plus;
using pegtl::seq;
using pegtl::sor;
using pegtl::star;

template <std::size_t N>
struct Literal {
  char text[N] = {};
  constexpr Literal(const char (&source)[N]) {  // implicit: written as a template argument
    for (std::size_t i = 0; i < N; ++i) text[i] = source[i];
  }
  constexpr std::string_view view() const { return {text, N - 1}; }
};

// The end of the match, after the blanks that follow, or null.
const char* match_words(std::string_view pattern, const char* begin, const char* end, Trail& trail);
const char* match_bare(std::string_view choices, const char* begin,
                       const char* end);  // one word, no blanks after it
const char* match_sign(std::string_view sign, const char* begin, const char* end, Trail& trail);
const char* skip_blanks(const char* begin, const char* end);

// The letters with which a match of a pattern can begin, worked out at compile time: nearly every attempt of the
// grammar fails at its first letter, and need not look at the words at all.
struct FirstLetters {
  bool letter[256] = {};
  std::string_view required;  // the word that is missed when none of them is there; empty: nothing is required
};
constexpr FirstLetters first_letters(std::string_view pattern) {
  FirstLetters first;
  const auto begins = [&](std::string_view letters) {
    for (const char c : letters) {
      first.letter[static_cast<unsigned char>(c)] = true;
      if (c >= 'a' && c <= 'z') first.letter[static_cast<unsigned char>(c - 'a' + 'A')] = true;
    }
  };
  while (!pattern.empty() && first.required.empty()) {
    const std::size_t cut = pattern.find(' ');
    std::string_view word = pattern.substr(0, cut);
    pattern.remove_prefix(cut == std::string_view::npos ? pattern.size() : cut + 1);
    const bool optional = word == "a" || word.back() == '?';
    if (word.back() == '?') word.remove_suffix(1);
    if (!optional) first.required = word;
    for (std::string_view choices = word; !choices.empty();) {
      const std::size_t end = choices.find('|');
      const std::string_view choice = choices.substr(0, end);
      choices.remove_prefix(end == std::string_view::npos ? choices.size() : end + 1);
      begins(choice == "a" ? "at" : choice == "is" ? "iab" : choice.substr(0, 1));  // the articles, the copulas
    }
  }
  return first;
}

template <class State>
Trail& trail_of(State& state) {
  return state.trail;
}

template <Literal pattern>
struct words {
  using rule_t = words;
  using subs_t = pegtl::empty_list;
  template <pegtl::apply_mode, pegtl::rewind_mode, template <class...> class, template <class...> class,
            class Input, class State>
  static bool match(Input& in, State& state) {
    static constexpr FirstLetters first = first_letters(pattern.view());
    if constexpr (!first.required.empty())
      if (in.current() == in.end() || !first.letter[static_cast<unsigned char>(*in.current())]) {
        trail_of(state).note(in.current(), first.required);
        return false;
      }
    const char* after = match_words(pattern.view(), in.current(), in.end(), trail_of(state));
    if (after == nullptr) return false;
    in.bump(static_cast<std::size_t>(after - in.current()));
    return true;
  }
};

template <Literal choices>
struct bare_word {
  using rule_t = bare_word;
  using subs_t = pegtl::empty_list;
  template <class Input>
  static bool match(Input& in) {
    const char* after = match_bare(choices.view(), in.current(), in.end());
    if (after == nullptr) return false;
    in.bump(static_cast<std::size_t>(after - in.current()));
    return true;
  }
};

template <Literal text>
struct sign {
  using rule_t = sign;
  using subs_t = pegtl::empty_list;
  template <pegtl::apply_mode, pegtl::rewind_mode, template <class...> class, template <class...> class,
            class Input, class State>
  static bool match(Input& in, State& state) {
    const char* after = match_sign(text.view(), in.current(), in.end(), trail_of(state));
    if (after == nullptr) return false;
    in.bump(static_cast<std::size_t>(after - in.current()));
    return true;
  }
};

// Blanks of every width, and line ends: a sentence may go over several lines.
struct blanks {
  using rule_t = blanks;
  using subs_t = pegtl::empty_list;
  template <class Input>
  static bool match(Input& in) {
    in.bump(static_cast<std::size_t>(skip_blanks(in.current(), in.end()) - in.current()));
    return true;
  }
};
struct some_blanks {
  using rule_t = some_blanks;
  using subs_t = pegtl::empty_list;
  template <class Input>
  static bool match(Input& in) {
    const char* after = skip_blanks(in.current(), in.end());
    if (after == in.current()) return false;
    in.bump(static_cast<std::size_t>(after - in.current()));
    return true;
  }
};

// A rule that leaves a node of this part in the tree.
template <Part kind, class... Rules>
struct part : seq<Rules...> {
  static constexpr Part kept = kind;
};

// A sentence form that says one predicate of the points in it. `order` tells which of the points (those of
// the subject first) goes where, by digits; when empty they go as they come.
template <Predicate said, Literal arrangement, class... Rules>
struct says : seq<Rules...> {
  static constexpr Part kept = Part::says;
  static constexpr Predicate predicate = said;
  static constexpr std::string_view order() { return literal.view(); }
  static constexpr auto literal = arrangement;
};

// What a person would call this piece, for "expected …".
template <Literal text, class... Rules>
struct named : seq<Rules...> {
  static constexpr auto expected = text;
};

struct colon : sign<":"> {};
struct comma : sign<","> {};
struct conjunction : sor<seq<comma, opt<words<"and">>>, words<"and">, sign<"&">> {};
struct in_this_order
    : sor<part<Part::cyclic_order, opt<comma>, opt<sign<"(">>, words<"in this|that|the? cyclic order">,
               opt<sign<")">>>,
          part<Part::in_order, opt<comma>, opt<sign<"(">>, words<"in this|that|the? given? order|sequence">,
               opt<sign<")">>>,
          part<Part::any_order, opt<comma>, opt<sign<"(">>, words<"in any order">, opt<sign<")">>>> {};

}  // namespace prover::grammar
