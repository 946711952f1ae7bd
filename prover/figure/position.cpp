#include "prover/figure/position.hpp"

#include <fmt/format.h>

#include <utility>

namespace prover {

Position canonical(Position position) {
  switch (position.kind) {
    case PositionKind::between:
      if (position.c < position.a) std::swap(position.a, position.c);
      break;
    case PositionKind::same_side:
    case PositionKind::opposite_sides:
      if (position.b < position.a) std::swap(position.a, position.b);
      if (position.d < position.c) std::swap(position.c, position.d);
      break;
    case PositionKind::not_collinear:
      if (position.b < position.a) std::swap(position.a, position.b);
      if (position.c < position.b) std::swap(position.b, position.c);
      if (position.b < position.a) std::swap(position.a, position.b);
      break;
  }
  return position;
}

std::string describe(const Position& p, const Names& names) {
  switch (p.kind) {
    case PositionKind::between:
      return fmt::format("{} is between {} and {}", names.of(p.b), names.of(p.a), names.of(p.c));
    case PositionKind::same_side:
      return fmt::format("{} and {} are on the same side of {}{}", names.of(p.a), names.of(p.b), names.of(p.c),
                         names.of(p.d));
    case PositionKind::opposite_sides:
      return fmt::format("{} and {} are on opposite sides of {}{}", names.of(p.a), names.of(p.b), names.of(p.c),
                         names.of(p.d));
    case PositionKind::not_collinear:
      return fmt::format("{}, {} and {} are not on one line", names.of(p.a), names.of(p.b), names.of(p.c));
  }
  return {};
}

}  // namespace prover
