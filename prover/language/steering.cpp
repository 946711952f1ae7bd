#include "prover/language/steering.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "prover/language/reader.hpp"

namespace prover {

namespace {

std::string source(std::string_view text, Span span) {
  return std::string(text.substr(span.begin, span.end - span.begin));
}

double coordinate(std::string written) {
  if (const std::size_t minus = written.find("−"); minus != std::string::npos)
    written.replace(minus, std::string_view("−").size(), "-");
  return std::strtod(written.c_str(), nullptr);
}

}  // namespace

Taught read_taught(const Node& line, std::string_view text) {
  Taught taught;
  taught.span = line.span;
  const auto read = [&](const Node& node, std::vector<TaughtName>& names) {
    if (node.part == Part::up_to) {
      names.back().up_to = source(text, node.span);
      names.back().up_to_span = node.span;
    } else {
      names.push_back({source(text, node.span), node.span, "", {}});
    }
  };
  for (const Node& child : line.children) {
    if (child.part != Part::excluded)
      read(child, taught.names);
    else
      for (const Node& part : child.children) read(part, taught.excluded);
  }
  return taught;
}

void read_figure(const Node& line, std::string_view text, Draft& draft, ProblemText& problem) {
  for (const Node& child : line.children) {
    if (child.part == Part::positions_count) problem.positions_count = true;
    if (child.part == Part::not_to_scale)
      problem.other_lines.push_back({"figure", source(text, child.span), child.span});
    if (child.part != Part::drawn_point) continue;
    DrawnPoint drawn;
    drawn.point = draft.point(canonical_name(source(text, child.children[0].span)));
    drawn.x = coordinate(source(text, child.children[1].span));
    drawn.y = coordinate(source(text, child.children[2].span));
    if (!std::isfinite(drawn.x) || !std::isfinite(drawn.y)) {
      draft.error(child.span, "this coordinate is too large", "write a smaller number");
      continue;
    }
    const auto known = std::find_if(problem.drawn.begin(), problem.drawn.end(),
                                    [&](const DrawnPoint& other) { return other.point == drawn.point; });
    if (known != problem.drawn.end()) {
      draft.error(child.span, draft.names.of(drawn.point) + " has coordinates already",
                  "keep one of the two");
      continue;
    }
    problem.drawn.push_back(drawn);
  }
}

}  // namespace prover
