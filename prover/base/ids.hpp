// Numbers with a meaning. A point is not a line and neither is an int: each kind of thing has an index
// type of its own, so that the compiler refuses to mix them. An id is only valid within the value (figure,
// unknown table, rule catalogue) that handed it out; -1 means "none".
#pragma once
#include <compare>
#include <cstdint>
#include <functional>

namespace prover {

template <class Tag>
struct Id {
  std::int32_t value = -1;

  constexpr Id() = default;
  constexpr explicit Id(std::int64_t v) : value(static_cast<std::int32_t>(v)) {}
  constexpr bool valid() const { return value >= 0; }
  constexpr std::size_t index() const { return static_cast<std::size_t>(value); }
  friend constexpr auto operator<=>(Id, Id) = default;
};

using PointId = Id<struct PointTag>;        // a point of a figure; in a rule, a variable that stands for one
using LineId = Id<struct LineTag>;          // a straight line through two or more points of a figure
using UnknownId = Id<struct UnknownTag>;    // an angle, a length, an unknown number or a fact, as a variable
using RuleId = Id<struct RuleTag>;          // a rule of the loaded catalogue
using InstanceId = Id<struct InstanceTag>;  // a rule at given places

}  // namespace prover

template <class Tag>
struct std::hash<prover::Id<Tag>> {
  std::size_t operator()(prover::Id<Tag> id) const noexcept { return std::hash<std::int32_t>{}(id.value); }
};
