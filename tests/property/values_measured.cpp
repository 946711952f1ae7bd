// Random small problems, made by construction so that a figure exists: whatever `prove` calls a value is
// measured in figures drawn for the same givens, and what it calls contradictory has no figure.
#include <cmath>
#include <random>

#include "prover/sketch/sketch.hpp"
#include "prover/statement/statement.hpp"
#include "tests/problems/asked.hpp"

using namespace prover;

namespace {

// Grows a triangle KLM with known angles by points on sides, bisectors, altitudes, parallels and equal
// lengths. Every step can be carried out whatever the figure, so the givens have a figure, unless two points
// happen to fall together.
class Problem {
 public:
  explicit Problem(unsigned seed) : random_(seed) {
    const int first = 20 + below(60), second = 20 + below(60);
    say("triangle: KLM");
    switch (below(4)) {
      case 0:
        say("KL = KM");
        say("angle KLM = " + std::to_string(first));
        break;
      case 1:
        say("KL = KM");
        say("angle LKM = " + std::to_string(2 * first));
        break;
      default:
        say("angle KLM = " + std::to_string(first));
        say("angle KML = " + std::to_string(second));
    }
    triangles_ = {"KLM"};
    for (int steps = 1 + below(3); steps > 0; --steps) grow();
  }
  std::string text() const { return givens_ + "find: " + asked_; }
  // A drawn angle of one of the triangles, or between a side and what was added at its corner.
  void ask() {
    const std::string t = triangles_[static_cast<std::size_t>(below(static_cast<int>(triangles_.size())))];
    const int corner = below(3);
    asked_ = "angle " +
             std::string{t[static_cast<std::size_t>((corner + 1) % 3)], t[static_cast<std::size_t>(corner)],
                         t[static_cast<std::size_t>((corner + 2) % 3)]} +
             "\n";
    if (!extra_.empty() && below(3) == 0)
      asked_ = extra_[static_cast<std::size_t>(below(static_cast<int>(extra_.size())))];
  }

 private:
  int below(int bound) { return static_cast<int>(random_() % static_cast<unsigned>(bound)); }
  void say(const std::string& sentence) { givens_ += sentence + "\n"; }
  std::string fresh() { return std::string(1, letters_[next_++]); }

  void grow() {
    std::string t = triangles_[static_cast<std::size_t>(below(static_cast<int>(triangles_.size())))];
    std::rotate(t.begin(), t.begin() + below(3), t.end());
    const std::string a{t[0]}, b{t[1]}, c{t[2]}, p = fresh();
    switch (below(8)) {
      case 0:  // a point on a side, joined to the corner
        say("line: " + b + ", " + p + ", " + c + " in this order");
        split(a, b, c, p);
        break;
      case 1:
        say("line: " + b + ", " + p + ", " + c + " in this order");
        say("bisects: ray " + a + p + " bisects angle " + b + a + c);
        split(a, b, c, p);
        break;
      case 2:
        say(p + " is the midpoint of " + b + c);
        split(a, b, c, p);
        break;
      case 3:  // beyond a corner, as far as the third corner: an isosceles triangle outside
        say("line: " + b + ", " + c + ", " + p + " in this order");
        say(c + p + " = " + c + a);
        triangles_.push_back(a + c + p);
        triangles_.push_back(a + b + p);
        break;
      case 4: {  // a parallel to a side between the others
        const std::string q = fresh();
        say("line: " + a + ", " + p + ", " + b + " in this order");
        say("line: " + a + ", " + q + ", " + c + " in this order");
        say("parallel: " + p + q + ", " + b + c);
        triangles_.push_back(a + p + q);
        extra_.push_back("angle " + p + q + c + "\n");
        break;
      }
      case 5:  // the parallelogram on two sides
        say("polygon: " + a + b + p + c + " parallelogram");
        triangles_.push_back(p + b + c);
        extra_.push_back("angle " + a + b + p + "\n");
        break;
      case 6:  // an equilateral triangle outside
        say("polygon: " + b + c + p + " equilateral");
        say("sides: " + a + " and " + p + " on opposite sides of " + b + c);
        triangles_.push_back(b + c + p);
        extra_.push_back("angle " + a + b + p + "\n");
        break;
      default: {  // a parallel through a corner, to one side
        say("parallel: " + a + p + ", " + b + c);
        say("sides: " + p + " and " + b + (below(2) ? " on opposite sides of " : " on the same side of ") +
            a + c);
        extra_.push_back("angle " + p + a + c + "\n");
        extra_.push_back("angle " + p + a + b + "\n");
        break;
      }
    }
  }
  void split(const std::string& a, const std::string& b, const std::string& c, const std::string& p) {
    triangles_.push_back(a + b + p);
    triangles_.push_back(a + c + p);
  }

  std::mt19937 random_;
  std::string givens_, asked_;
  std::vector<std::string> triangles_, extra_;
  const std::string letters_ = "PQRSTUVWXYZABCD";
  std::size_t next_ = 0;
};

double number(const std::string& exact) {
  const std::size_t slash = exact.find('/');
  return std::stod(exact) / (slash == std::string::npos ? 1 : std::stod(exact.substr(slash + 1)));
}

}  // namespace

TEST_CASE("every value that is proved is measured in figures of the same givens") {
  const unsigned first_seed = 5000, problems = 200;
  int proved = 0, by_cases = 0;
  for (unsigned seed = first_seed; seed < first_seed + problems; ++seed) {
    Problem problem(seed);
    problem.ask();
    const std::string text = problem.text();
    INFO("seed " << seed << "\n" << text);
    const Answer answer = asked::ask(text);
    CHECK(answer.verdict != Verdict::false_claim);
    if (answer.verdict != Verdict::proved && answer.verdict != Verdict::depends_on_figure &&
        answer.verdict != Verdict::contradictory)
      continue;

    const ProblemText parsed = parse_problem(text);
    const Statement statement = statements_of(parsed).at(0);
    SketchOptions other;  // other figures than those that the prover saw
    other.seed = 1000 + seed;
    other.wanted = 4;
    other.starts = 60;
    const SketchReport figures =
        sketch(phrases_of(statement), statement.names.points.size(), Budget{}, other);
    CHECK(figures.sketches.empty() == (answer.verdict == Verdict::contradictory));
    for (const Sketch& figure : figures.sketches) {
      const double measured = measure(statement.goals.at(0).claims.at(0).relation.expressions.at(0), figure);
      if (answer.verdict == Verdict::contradictory) break;
      if (answer.verdict == Verdict::proved) {
        CHECK(measured == Approx(number(answer.value)).margin(1e-4));
      } else {
        bool among = false;
        for (const AnswerCase& one : answer.cases) among |= std::abs(measured - number(one.value)) < 1e-4;
        CHECK(among);
      }
    }
    proved += answer.verdict == Verdict::proved;
    by_cases += answer.verdict == Verdict::depends_on_figure;
  }
  // The generator must not have made only what nobody can prove.
  CHECK(proved > 80);
  SUCCEED("seeds from " << first_seed << ": " << proved << " proved, " << by_cases << " by cases, of "
                        << problems);
}
