#include <algorithm>
#include <cmath>
#include <map>
#include <stdexcept>

#include "benchmarks/search/families.hpp"
#include "prover/sketch/random.hpp"

namespace prover {

namespace {

using sketching::Random;

// Sums of equations that share unknowns: true statements at some distance, for lemmas and the goal.
class Walks {
 public:
  Walks(const EquationBook& book, Random& random)
      : book_(book), random_(random), equations_with_(book.angle_count()) {}

  // Begins with an equation and `steps` − 1 times adds one that cancels an unknown. Walks that end in more terms
  // than `most_terms`, or in fewer than two, are tried again.
  Form walk(int steps, std::size_t most_terms) {
    note_new_equations();
    for (int attempt = 0; attempt < 1000; ++attempt) {
      std::vector<std::size_t> used{random_.below(equation_count())};
      Form sum = equation(used[0]);
      while (static_cast<int>(used.size()) < steps && extend(sum, used)) {
      }
      if (static_cast<int>(used.size()) == steps && sum.terms.size() >= 2 && sum.terms.size() <= most_terms) return sum;
    }
    throw std::logic_error("no walk leads to a short equation");
  }

 private:
  std::size_t equation_count() const { return book_.candidates().size(); }
  const Form& equation(std::size_t i) const { return book_.candidates()[i].conclusions[0]; }

  void note_new_equations() {
    for (; noted_ < equation_count(); ++noted_)
      for (const auto& [unknown, c] : equation(noted_).terms) equations_with_[unknown.index()].push_back(noted_);
  }

  bool extend(Form& sum, std::vector<std::size_t>& used) {
    if (sum.terms.empty()) return false;
    const auto [unknown, c] = sum.terms[random_.below(sum.terms.size())];
    std::vector<std::size_t> others;
    for (const std::size_t e : equations_with_[unknown.index()])
      if (std::find(used.begin(), used.end(), e) == used.end()) others.push_back(e);
    if (others.empty()) return false;
    const std::size_t chosen = others[random_.below(others.size())];
    const Rational multiplier = c / equation(chosen).coefficient(unknown);
    if (!multiplier.is_integer()) return false;
    sum.add(equation(chosen), -multiplier);
    used.push_back(chosen);
    return true;
  }

  const EquationBook& book_;
  Random& random_;
  std::size_t noted_ = 0;
  std::vector<std::vector<std::size_t>> equations_with_;  // by unknown
};

std::pair<EquationBook::Terms, int> as_terms(const Form& form) {
  EquationBook::Terms terms;
  for (const auto& [unknown, c] : form.terms) terms.emplace_back(static_cast<int>(*c.to_int64()), unknown);
  return {terms, static_cast<int>(-*form.constant.to_int64())};
}

// Pairs of equal angles, as a figure's isosceles triangles would give them: from the sizes that occur often.
void give_equal_angles(EquationBook& book, Random& random, int wanted) {
  std::map<long, std::vector<UnknownId>> by_size;
  for (std::size_t i = 0; i < book.angle_count(); ++i) {
    const UnknownId angle(static_cast<std::int64_t>(i));
    by_size[std::lround(book.size_of(angle))].push_back(angle);
  }
  std::vector<const std::vector<UnknownId>*> often, twice;
  for (const auto& [size, angles] : by_size) {
    if (angles.size() >= 8) often.push_back(&angles);
    if (angles.size() >= 2) twice.push_back(&angles);
  }
  const auto& groups = often.empty() ? twice : often;
  for (int i = 0; i < wanted; ++i) {
    const auto& angles = *groups[random.below(groups.size())];
    const std::size_t a = random.below(angles.size());
    const std::size_t b = (a + 1 + random.below(angles.size() - 1)) % angles.size();
    book.equation(Reason::given, {{1, angles[a]}, {-1, angles[b]}}, 0);
  }
}

}  // namespace

// Whole degrees, so that some angles are equal; about a third of the lines take the direction of an earlier one.
void draw_random_lines(EquationBook& book, const RandomShape& shape) {
  Random random(shape.seed);
  std::vector<DrawnLines::Line> lines;
  for (int i = 0; i < shape.lines; ++i) {
    const bool parallel = i > 0 && random.chance(0.35);
    const double degrees = parallel ? lines[random.below(lines.size())].degrees
                                    : 5 + static_cast<double>(random.below(170));
    lines.push_back({random.between(-100, 100), random.between(-100, 100), degrees});
  }
  DrawnLines drawn(book, std::move(lines));
  drawn.write_crossings();
  drawn.write_parallels();
  drawn.write_triangles();
  give_equal_angles(book, random, 3 * shape.lines);
  Walks walks(book, random);
  const std::size_t lemmas = book.candidates().size() / 20;
  for (std::size_t i = 0; i < lemmas; ++i) {
    const auto [terms, constant] = as_terms(walks.walk(2 + static_cast<int>(random.below(2)), 4));
    book.equation(Reason::lemma, terms, constant);
  }
  const auto [terms, constant] = as_terms(walks.walk(shape.goal_steps, 5));
  book.goal(terms, constant);
  book.shuffle(random.next());
}

}  // namespace prover
