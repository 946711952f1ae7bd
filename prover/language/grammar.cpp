#include "prover/language/grammar.hpp"

#include <utility>

#include "prover/language/grammar_steering.hpp"

namespace prover {

namespace {

namespace pegtl = tao::pegtl;

// PEGTL has a parse tree of its own; it allocates a node for every attempt, and a sentence is attempted in
// some hundred ways. Here finished nodes lie on one stack, and a failed attempt cuts the stack back.
struct Builder {
  struct Mark {
    std::size_t nodes;
    const char* begin;
  };
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

template <class Rule>
struct Build : pegtl::normal<Rule> {
  static constexpr bool enable = true;

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
  Parsed parsed;
  if (run(start, text, builder) && !builder.nodes.empty()) parsed.tree = std::move(builder.nodes.front());
  parsed.trail = std::move(builder.trail);
  return parsed;
}

}  // namespace prover
