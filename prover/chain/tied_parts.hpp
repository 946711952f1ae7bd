// Rules that recognise a circle by equal quantities ("∠ACB = ∠ADB on one side of AB") would wait at every four points
// of a figure. Their parts are found by hashing instead: each quantity of the equation is enumerated alone, and those
// that agree in the variables they share and in the normal form of their size are brought together. So a rule costs
// the number of angles drawn, not its square, and offers only what holds now; it is asked again after news.
#pragma once
#include <array>
#include <optional>
#include <vector>

#include "prover/chain/matcher.hpp"

namespace prover {

class TiedParts {
 public:
  // Only for rules that conclude points on a circle or a tangent from one equation between angles or lengths, in
  // which every variable of the rule stands.
  static std::optional<TiedParts> of(const Rule& rule);

  void match(Matcher& matcher, Knowledge& knowledge);

 private:
  struct Part {
    Quantity quantity;
    std::vector<std::size_t> own;  // variables that stand in this part
    bool turned = false;           // its size is `total` less the quantity
  };
  using Places = std::vector<PointId>;
  using Own = std::array<PointId, 3>;  // the places of a part's own variables
  static constexpr std::size_t most_shared = 4;
  template <class Act>
  void enumerate(const Part& part, Knowledge& knowledge, Act&& act) const;

  std::vector<Part> parts_;
  std::vector<std::size_t> shared_;  // variables that stand in every part
  Rational total_;
  std::size_t variables_ = 0, last_version_ = static_cast<std::size_t>(-1);
};

}  // namespace prover
