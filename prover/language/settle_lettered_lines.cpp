// A line called by a small letter becomes a line through two of the points that stand on it. Where fewer than
// two are named, a hidden point gives it its direction. "Meet" phrases are brought to their plain form here
// too, because a line may turn out to be named with the very point where it is met.
#include <algorithm>

#include "prover/language/draft.hpp"

namespace prover {

namespace {

void stand_on(Draft& draft, PointId line, PointId point) {
  if (!stand_in::is_lettered(line) || stand_in::is_lettered(point)) return;
  std::vector<PointId>& points = draft.lettered[stand_in::lettered_line(line)].points;
  if (std::find(points.begin(), points.end(), point) == points.end()) points.push_back(point);
}

// meet(P, AB, CD) where P is A or B says only that P is on CD.
bool reduce(Phrase& phrase) {
  const std::vector<PointId>& p = phrase.points;
  if (phrase.predicate == Predicate::on_line) return p[0] != p[1] && p[0] != p[2];
  if (phrase.predicate != Predicate::meet) return true;
  const bool first = p[0] == p[1] || p[0] == p[2], second = p[0] == p[3] || p[0] == p[4];
  if (!first && !second) return true;
  if (first && second) return false;
  const std::size_t other = first ? 3 : 1;
  phrase.predicate = Predicate::on_line;
  phrase.points = {p[0], p[other], p[other + 1]};
  phrase.point_spans = {phrase.point_spans[0], phrase.point_spans[other], phrase.point_spans[other + 1]};
  return true;
}

}  // namespace

void settle_lettered_lines(Draft& draft, const Units& units) {
  for (const Unit& unit : units) {
    for (const Phrase& phrase : *unit.phrases) {
      if (phrase.predicate != Predicate::on_line && phrase.predicate != Predicate::meet) continue;
      for (std::size_t i = 1; i < phrase.points.size(); ++i)
        stand_on(draft, phrase.points[i], phrase.points[0]);
    }
  }
  std::vector<std::size_t> named(draft.lettered.size());
  for (std::size_t i = 0; i < draft.lettered.size(); ++i) {
    LetteredLine& line = draft.lettered[i];
    named[i] = line.points.size();
    if (const auto number = draft.number_letters.find(line.name); number != draft.number_letters.end()) {
      draft.error(number->second, line.name + " is the name of a line here, and cannot be a number too",
                  "take another letter for the number");
    }
    while (line.points.size() < 2) line.points.push_back(draft.hidden_point(line.name));
  }
  for (const Unit& unit : units) {
    for (Phrase& phrase : *unit.phrases) {
      for (PointId& p : phrase.points) {
        if (stand_in::is_lettered(p))
          p = draft.lettered[stand_in::lettered_line(p)].points[static_cast<std::size_t>(p.value % 2)];
      }
    }
    std::erase_if(*unit.phrases, [](Phrase& phrase) { return !reduce(phrase); });
  }
}

}  // namespace prover
