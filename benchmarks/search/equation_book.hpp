// Collects the angles of a drawn figure and the equations that a class would write between them, each for its reason
// and once. Every angle must have the size that its lines' directions say, and every equation must hold in the
// figure: a generator that writes nonsense stops here (std::logic_error).
#pragma once
#include <string>
#include <unordered_set>
#include <utility>
#include <vector>

#include "benchmarks/search/instance.hpp"

namespace prover {

enum class Reason {
  vertical, linear_pair, corresponding, alternate, cointerior, triangle_sum, exterior_angle, given, lemma, addition,
  straight_angle, isosceles
};
enum class Weighting { unit, by_reason };

class EquationBook {
 public:
  using Terms = std::vector<std::pair<int, UnknownId>>;

  explicit EquationBook(Weighting weighting) : weighting_(weighting) {}

  // A line as drawn, in degrees from the horizontal; the answer is its direction, an unknown of the lines' own numbering.
  UnknownId line(double degrees);
  void parallel(UnknownId line, UnknownId other);  // given
  // An angle as drawn, and how it follows from the directions of its lines.
  UnknownId angle(double degrees, Form directions);
  // "The sum of the terms is this constant"; false when it was said before.
  bool equation(Reason reason, const Terms& terms, int constant);
  void goal(const Terms& terms, int constant);

  double size_of(UnknownId angle) const { return angles_[angle.index()].degrees; }
  std::size_t angle_count() const { return angles_.size(); }
  const std::vector<Candidate>& candidates() const { return instance_.problem.candidates; }
  void shuffle(std::uint64_t seed);
  SearchInstance finish(std::string name);

 private:
  struct Angle {
    double degrees;
    Form directions;
  };
  Form checked(const Terms& terms, int constant) const;
  Form in_directions(const Form& form) const;

  Weighting weighting_;
  std::vector<double> lines_;
  std::vector<Angle> angles_;
  std::unordered_set<Form> said_;
  SearchInstance instance_;
};

}  // namespace prover
