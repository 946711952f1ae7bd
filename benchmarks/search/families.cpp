#include "benchmarks/search/families.hpp"

#include <regex>

namespace prover {

namespace {

int number(const std::ssub_match& match, int otherwise) { return match.matched ? std::stoi(match.str()) : otherwise; }

}  // namespace

std::optional<SearchInstance> instance_named(const std::string& name) {
  static const std::regex triangle("triangle(-weighted)?");
  static const std::regex grid(
      "grid-([1-9]\\d?)x([1-9]\\d?)(?:-chain([2-9]|[1-9]\\d))?(-neighbours)?(?:-seed(\\d{1,6}))?(-weighted)?");
  static const std::regex fan("(doubling-)?fan-([2-9]|[1-9]\\d{1,5})");
  static const std::regex random("random-([3-9]|[1-9]\\d)(?:-goal([1-9]\\d?))?(?:-seed(\\d{1,6}))?(-weighted)?");
  const auto book = [](const std::ssub_match& weighted) {
    return EquationBook(weighted.matched ? Weighting::by_reason : Weighting::unit);
  };
  std::smatch part;
  if (std::regex_match(name, part, triangle)) {
    EquationBook equations = book(part[1]);
    draw_triangle(equations);
    return equations.finish(name);
  }
  if (std::regex_match(name, part, grid)) {
    EquationBook equations = book(part[6]);
    GridShape shape{number(part[1], 0), number(part[2], 0)};
    shape.chain = number(part[3], 0);
    if (shape.chain > shape.transversals || (shape.chain == 0 && shape.transversals < 2)) return std::nullopt;
    if (part[4].matched) shape.pairs = DrawnLines::Pairs::neighbours;
    shape.seed = static_cast<std::uint64_t>(number(part[5], 1));
    draw_grid(equations, shape);
    return equations.finish(name);
  }
  if (std::regex_match(name, part, fan)) {
    EquationBook equations(Weighting::unit);
    const int size = number(part[2], 0);
    if (part[1].matched)
      draw_doubling_fan(equations, size);
    else
      draw_fan(equations, size);
    return equations.finish(name);
  }
  if (std::regex_match(name, part, random)) {
    EquationBook equations = book(part[4]);
    RandomShape shape{number(part[1], 0)};
    shape.goal_steps = number(part[2], 6);
    shape.seed = static_cast<std::uint64_t>(number(part[3], 1));
    draw_random_lines(equations, shape);
    return equations.finish(name);
  }
  return std::nullopt;
}

}  // namespace prover
