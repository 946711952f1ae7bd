// What a rung would give away, found by reading it back: the mathematics in a sentence is parsed like a pupil's and asked
// by linear algebra. The rulings (a rung below the last):
//   - holds no number that is not in the question or in a step already told (a step itself may bring new ones)
//   - names neither the asked value nor one from which it follows by one subtraction, from 90, 180, 360, a number of the
//     question or one told before
//   - states no relation that is the goal, or that gives the asked size with the sizes known so far
//   - never writes the asked size beside another one of its kind, unless it is a step
#pragma once
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "prover/algebra/linear_system.hpp"
#include "prover/hints/claim_reader.hpp"
#include "prover/hints/sentence_maths.hpp"

namespace prover {

enum class Told { hint, step };  // a sentence that asks or points, or the claim of a step

class LeakGuard {
 public:
  LeakGuard(const Statement& statement, const Goal& goal, const std::string& value, const std::vector<AnswerFigure>& figures);

  // Why the sentence may not be said below the last rung; nothing when it may.
  std::optional<std::string> leak(std::string_view sentence, Told told);
  // From now on its numbers and sizes are known.
  void told(std::string_view step);

 private:
  std::optional<Form> form_of_quantity(const std::string& text);
  bool is_goal(const Form& form) const;
  bool settles_asked(const std::vector<Form>& forms) const;
  std::optional<std::string> leak_by_number(const SentenceMaths& maths, Told told, const std::set<Rational>& sizes) const;

  const Statement& statement() const { return reader_.statement(); }
  const Arrangement& arrangement() const { return reader_.arrangement(); }
  UnknownTable& unknowns() { return reader_.unknowns(); }

  ClaimReader reader_;
  std::vector<Form> goal_;           // of `prove`
  std::optional<Form> asked_;        // of `find`
  std::optional<Rational> value_;
  LinearSystem known_;               // sizes given or told, one by one; no relations
  std::set<Rational> question_, told_;
};

}  // namespace prover
