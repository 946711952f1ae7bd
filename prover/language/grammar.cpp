#include "prover/language/grammar.hpp"

#include <utility>

#include "prover/language/grammar_steering.hpp"

namespace prover {

namespace {

namespace pegtl = tao::pegtl;

// PEGTL has a parse tree of its own; it allocates a node for every attempt, and a sentence is attempted in
// some hundred ways. Here finished nodes lie on one stack, and a failed attempt cuts the stack back.
//
// What failed at a place fails there again, whichever way the attempt comes back to it, so failures are kept: one bit
// for a rule and a place. A second attempt would leave the same words in the trail, which has them already.
struct Builder {
  struct Mark {
    std::size_t nodes;
    const char* begin;
  };
  std::vector<bool> failed;  // by rule and place; empty for texts too long to be worth it
  Trail trail;
  std::vector<Node> nodes;
  std::vector<Mark> open;
  const char* text = nullptr;
  std::size_t offset = 0;

  Span span(const char* begin, const char* end) const {
    while (end > begin && (end[-1] == ' ' || end[-1] == '\t' || end[-1] == '\n' || end[-1] == '\r')) --end;
    return {offset + static_cast<std::size_t>(begin - text), offset + static_cast<std::size_t>(end - text)};
  }
  void cut_back(const Mark& mark) {
    nodes.erase(nodes.begin() + static_cast<std::ptrdiff_t>(mark.nodes), nodes.end());
  }
  void close(Node node, const Mark& mark, const char* end) {
    node.span = span(mark.begin, end);
    const auto first = nodes.begin() + static_cast<std::ptrdiff_t>(mark.nodes);
    node.children.assign(std::make_move_iterator(first), std::make_move_iterator(nodes.end()));
    nodes.erase(first, nodes.end());
    nodes.push_back(std::move(node));
  }
};

// Looking ahead leaves nothing in the tree.
template <class Rule>
inline constexpr bool looks_ahead = false;
template <class... Rules>
inline constexpr bool looks_ahead<pegtl::at<Rules...>> = true;

// Only what keeps nodes, or can fail after a part of it has kept some, needs its mark on the stack: a word or sign
// has no parts, and a choice fails only after each of its ways has cut the stack back itself.
template <class Rule>
inline constexpr bool is_choice = false;
template <class... Rules>
inline constexpr bool is_choice<pegtl::internal::sor<Rules...>> = true;
template <class Rule>
inline constexpr bool needs_mark =
    requires { Rule::kept; } || requires { Rule::expected; } || looks_ahead<Rule> ||
    (!std::is_same_v<typename Rule::subs_t, pegtl::empty_list> && !is_choice<typename Rule::rule_t>);

// Numbers of the rules whose failures are kept.
std::size_t rules_numbered = 0;
template <class Rule>
inline const std::size_t number_of = rules_numbered++;
constexpr std::size_t longest_remembered = 500;

template <class Rule>
struct Build : pegtl::normal<Rule> {
  static constexpr bool enable = needs_mark<Rule>;

  template <pegtl::apply_mode A, pegtl::rewind_mode M, template <class...> class Action,
            template <class...> class Control, class Input>
  [[nodiscard]] static bool match(Input& in, Builder& builder) {
    if constexpr (!enable) {
      return pegtl::match<Rule, A, M, Action, Control>(in, builder);
    } else {
      if (builder.failed.empty()) return pegtl::match<Rule, A, M, Action, Control>(in, builder);
      const auto place = static_cast<std::size_t>(in.current() - builder.text);
      const std::size_t bit = place * rules_numbered + number_of<Rule>;
      if (builder.failed[bit]) return false;
      if (pegtl::match<Rule, A, M, Action, Control>(in, builder)) return true;
      builder.failed[bit] = true;
      return false;
    }
  }
  template <class Input>
  static void start(const Input& in, Builder& builder) {
    builder.open.push_back({builder.nodes.size(), in.current()});
  }
  template <class Input>
  static void success(const Input& in, Builder& builder) {
    const Builder::Mark mark = builder.open.back();
    builder.open.pop_back();
    if constexpr (looks_ahead<Rule>) {
      builder.cut_back(mark);
    } else if constexpr (requires { Rule::kept; }) {
      Node node;
      node.part = Rule::kept;
      if constexpr (requires { Rule::predicate; }) {
        node.predicate = Rule::predicate;
        node.order = Rule::order();
      }
      builder.close(std::move(node), mark, in.current());
    }
  }
  template <class Input>
  static void failure(const Input&, Builder& builder) {
    const Builder::Mark mark = builder.open.back();
    builder.open.pop_back();
    builder.cut_back(mark);
    if constexpr (requires { Rule::expected; }) builder.trail.note(mark.begin, Rule::expected.view());
  }
};

template <class Rule>
bool run(std::string_view text, Builder& builder) {
  pegtl::memory_input<pegtl::tracking_mode::lazy> input(text.data(), text.size(), "");
  return pegtl::parse<Rule, pegtl::nothing, Build>(input, builder);
}

bool run(Start start, std::string_view text, Builder& builder) {
  switch (start) {
    case Start::sentence:
      return run<grammar::sentence>(text, builder);
    case Start::find:
      return run<grammar::find_line>(text, builder);
    case Start::prove:
      return run<grammar::prove_line>(text, builder);
    case Start::taught:
      return run<grammar::taught_line>(text, builder);
    case Start::figure:
      return run<grammar::figure_line>(text, builder);
  }
  return false;
}

}  // namespace

Parsed parse_tree(Start start, std::string_view text, std::size_t offset) {
  Builder builder;
  builder.text = text.data();
  builder.offset = offset;
  if (text.size() <= longest_remembered) builder.failed.assign((text.size() + 1) * rules_numbered, false);
  Parsed parsed;
  if (run(start, text, builder) && !builder.nodes.empty()) parsed.tree = std::move(builder.nodes.front());
  parsed.trail = std::move(builder.trail);
  return parsed;
}

}  // namespace prover
