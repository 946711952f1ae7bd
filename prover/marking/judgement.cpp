#include "prover/marking/judgement.hpp"

#include <array>

namespace prover {

const char* name_of(LineStatus status) {
  static constexpr std::array<const char*, 19> names = {
      "right", "right-no-reason", "wrong-reason", "reason-not-accepted", "unsupported", "false", "arithmetic-slip",
      "follows-from-error", "circular", "assumes-the-claim", "given", "construction", "not-needed", "not-taught",
      "one-example", "ambiguous-name", "remark", "crossed-out", "unread"};
  static_assert(static_cast<std::size_t>(LineStatus::unread) + 1 == names.size());
  return names[static_cast<std::size_t>(status)];
}

}  // namespace prover
