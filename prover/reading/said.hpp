// What has been said so far, as equations with the line or the given that says each: on which lines does a further
// equation rest? Several answers may be right; the one with the fewest lines is given.
#pragma once
#include <optional>
#include <vector>

#include "prover/algebra/linear_system.hpp"

namespace prover {

class Said {
 public:
  void by_given(const Form& form, int hypothesis);
  void by_line(const Form& form, int line);
  // A line that follows from others: it is cited instead of them from now on.
  void derived_by_line(const Form& form, int line);

  struct Part {
    Form form;       // with its multiplier
    int line = 0;    // 0: a given
    int hypothesis = -1;
    bool plain = false;  // a value, or two things that are equal: needs no working out
  };
  // The equation as a sum; nothing when it does not follow.
  std::optional<std::vector<Part>> parts(const Form& form) const;
  // What the givens alone say.
  const LinearSystem& given() const { return given_; }

 private:
  struct Entry {
    Form form;
    int line = 0, hypothesis = -1;
  };
  std::optional<std::vector<Part>> parts_in(const LinearSystem& system, const Form& form) const;

  std::vector<Entry> entries_;
  std::vector<int> derived_;  // indices into entries_
  LinearSystem given_;
  LinearSystem in_order_{true}, derived_first_{true};
};

std::vector<int> lines_of(const std::vector<Said::Part>& parts);  // sorted, each once

}  // namespace prover
