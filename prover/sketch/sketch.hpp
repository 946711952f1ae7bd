// Numbers to draw with and to test with, never to prove with: coordinates that meet every given of a problem.
// Found by Levenberg–Marquardt (see solve.hpp) from many deterministic starts; position givens (sides, order,
// inside) are constraints with a margin. A sketch is kept only when every given holds: equations to 1e-9 of the
// figure's size or of a radian, position facts strictly.
//
// Sketches that agree on a position do not prove it. Each side on which they agree was challenged, but a proof that
// cites one does well to ask once more: the same givens and the opposite position, one sketch wanted.
#pragma once
#include <array>
#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "prover/base/budget.hpp"
#include "prover/language/phrase.hpp"

namespace prover {

// Mirrored so that the first triple of points not on a line turns left, with points 0 and 1 level: what sketches say
// about sides can be compared directly. No two are the same figure, so a single sketch means that no other was found.
struct Sketch {
  std::vector<std::array<double, 2>> points;  // by PointId; 10 across, or in the units in which lengths are given
  std::map<std::string, double> numbers;      // unknown numbers x, y, …
  std::vector<PointId> on_circle;             // by PointId: a point of the given circle with this centre, or none
  double residual = 0;                        // largest violation of a given equation, relative
};

struct SketchOptions {
  int wanted = 8;             // so many sketches; with seek_arrangements, those that show most
  int starts = 300;           // give up after so many starts
  std::uint64_t seed = 1;     // same seed, same sketches, on every machine
  bool seek_arrangements = true;  // also start from mirrored, swapped and flipped parts of sketches found
                                  // before, so that different arrangements allowed by the givens turn up
  int patience = 100;         // stop after so many starts that bring nothing new
};

struct SketchReport {
  std::vector<Sketch> sketches;  // the clearest first, then what adds most sides, orders and equalities
  int starts_tried = 0;
  std::size_t arrangements = 0;  // found: figures that differ in a side or an order (there may be others)
  StopReason stop = StopReason::none;  // saturated: enough found or all starts used
  double best_residual = 0;            // of the best start when none was good enough
};

// `givens`: all phrases of the problem; `points`: how many points it has.
SketchReport sketch(const std::vector<Phrase>& givens, std::size_t points, const Budget& budget,
                    const SketchOptions& options = {});

// What a sketch says about a phrase (any predicate, goals too) and about a quantity. Angles in degrees.
// Numbers that do not occur in the sketch make `holds` false and `measure` not-a-number.
bool holds(const Phrase& phrase, const Sketch& sketch, double tolerance = 1e-6);
double measure(const Expression& expression, const Sketch& sketch);
double measure(const Angle& angle, const Sketch& sketch);

// Sign of the triple (a, b, c): +1 when c is left of the line from a to b, -1 right, 0 on it (to 1e-7, relative).
int orientation(const Sketch& sketch, PointId a, PointId b, PointId c);
// b strictly between a and c (all three on one line to 1e-7, relative).
bool between(const Sketch& sketch, PointId a, PointId b, PointId c);

}  // namespace prover
