// What a figure must meet, as numbers: every phrase becomes clauses, a clause is a choice of branches, a branch a
// few constraints, and a constraint one smooth function of the coordinates with its derivatives. An equation
// wants the value 0, a position wants it positive.
//
// All values are free of scale (directions in radians, sines, ratios of lengths), so that a figure cannot come
// nearer to the givens by shrinking, and 1e-9 means the same everywhere. Equations between directions are wrapped
// to the nearest multiple of their period: their square is then continuous and falls towards the solution from
// everywhere, which sin and determinants do not do.
#pragma once
#include <cstddef>
#include <string>
#include <vector>

#include "prover/language/phrase.hpp"

namespace prover::sketching {

// Variables: x and y of each point, then the unknown numbers.
struct Layout {
  std::size_t points = 0;
  std::vector<std::string> numbers;   // by number
  std::vector<double> units;          // by number: its value is unit · variable
  std::vector<PointId> on_circle;     // by point: a point of the circle with this centre, if one is given
  double length_unit = 1;             // how long, in the text's units, a length of 1 between the variables is
  std::size_t variables() const { return 2 * points + numbers.size(); }
  int number(const std::string& name) const;  // -1 when there is none
};

enum class Form {
  turn,         // sum of coefficient · direction(a→b) + constant, modulo period
  orientation,  // coefficient · sine of the turn from ab to ac
  opening,      // coefficient · cosine of the angle a b c, + constant
  angles,       // sum of coefficient · angle a b c (between 0 and pi) or · number, + constant
  lengths,      // sum of coefficient · |ab| or · number, + constant, by the sum of the same without signs
  numbers,      // the same for numbers alone, by 1 + that sum
  linear,       // sum of coefficient · variable a, by the distance of two points
  winding,      // coefficient · (+1 inside, -1 outside, 0 on a side) of point a and the polygon; no derivative
};

struct Summand {
  enum class Kind { points, number } kind = Kind::points;
  double coefficient = 1;
  int a = -1, b = -1, c = -1;
};

struct Constraint {
  Form form = Form::turn;
  bool equation = true;
  double constant = 0;
  double period = 0;               // turn
  int from = -1, to = -1;          // linear: the distance it is measured by
  std::vector<Summand> terms = {};
};

using Branch = std::vector<Constraint>;
struct Clause {
  std::vector<Branch> branches;  // one of them must hold; with none, nothing can
  bool steers = false;           // only shows the search the way: need not hold
};

// A sparse row of derivatives over a dense scratch space, reused from constraint to constraint.
class Gradient {
 public:
  explicit Gradient(std::size_t variables) : values_(variables, 0.0), seen_(variables, false) {}
  void clear();
  void add(int variable, double value);
  void add_point(int point, double x, double y) {
    add(2 * point, x);
    add(2 * point + 1, y);
  }
  void scale(double factor);
  const std::vector<int>& touched() const { return touched_; }
  double operator[](int variable) const { return values_[static_cast<std::size_t>(variable)]; }

 private:
  std::vector<double> values_;
  std::vector<bool> seen_;
  std::vector<int> touched_;
};

// The value at `x`; with `gradient`, its derivatives too.
double evaluate(const Constraint& constraint, const Layout& layout, const double* x, Gradient* gradient = nullptr);

// The clauses of one phrase.
std::vector<Clause> clauses_of(const Phrase& phrase, const Layout& layout);
std::vector<Clause> clauses_of(const Relation& relation, const Layout& layout);

}  // namespace prover::sketching
