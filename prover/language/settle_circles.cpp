// Which circle "the circle" is: the only one of the text. When no centre is named anywhere, a tangent needs
// three points of the circle, and whatever needs the centre itself gets a point without a name. "O is the
// centre of the circle" joins a centre to points that were said to lie on a circle before.
#include <algorithm>

#include "prover/language/draft.hpp"

namespace prover {

namespace {

constexpr std::size_t enough = 8;  // so many circles are too many for "the circle" in any case

void append(std::vector<PointId>& points, const std::vector<PointId>& more) {
  for (const PointId p : more) {
    if (std::find(points.begin(), points.end(), p) == points.end()) points.push_back(p);
  }
}

// Three common points make two names one circle.
bool same_circle(const NamedCircle& a, const NamedCircle& b) {
  if (a.centre.valid() && b.centre.valid()) return a.centre == b.centre;
  return std::count_if(b.points.begin(), b.points.end(), [&](PointId p) {
           return std::find(a.points.begin(), a.points.end(), p) != a.points.end();
         }) >= 3;
}

std::vector<NamedCircle> different_circles(const std::vector<NamedCircle>& named) {
  std::vector<NamedCircle> circles;
  for (const NamedCircle& one : named) {
    NamedCircle next{one.centre, {}};
    append(next.points, one.points);
    if (!next.centre.valid() && next.points.empty()) continue;
    const auto known = std::find_if(circles.begin(), circles.end(),
                                    [&](const NamedCircle& circle) { return same_circle(circle, next); });
    if (known == circles.end()) {
      circles.push_back(next);
      if (circles.size() == enough) break;
    } else {
      if (next.centre.valid()) known->centre = next.centre;
      append(known->points, next.points);
    }
  }
  return circles;
}

bool mentions_the_circle(const Phrase& phrase) {
  return std::find(phrase.points.begin(), phrase.points.end(), stand_in::the_circle) != phrase.points.end();
}

// circle(O, the circle): "O is the centre of the circle".
bool names_the_centre(const Phrase& phrase) {
  return phrase.predicate == Predicate::circle && phrase.points.size() == 2 &&
         phrase.points[1] == stand_in::the_circle;
}

Phrase circle_phrase(const NamedCircle& circle, Span span) {
  Phrase phrase;
  phrase.predicate = Predicate::circle;
  phrase.span = span;
  phrase.points = {circle.centre};
  phrase.points.insert(phrase.points.end(), circle.points.begin(), circle.points.end());
  phrase.point_spans.assign(phrase.points.size(), span);
  return phrase;
}

class Circles {
 public:
  explicit Circles(Draft& draft) : draft_(draft), circles_(different_circles(draft.circles)) {}

  bool none() const { return circles_.empty(); }
  // The phrases that stand for this one.
  std::vector<Phrase> settled(Phrase phrase) {
    if (names_the_centre(phrase)) return with_centre(phrase);
    if (circles_.size() > 1) return which(phrase);
    if (circles_.empty()) circles_.push_back({});
    NamedCircle& circle = circles_.front();
    std::vector<Phrase> result;
    if (!circle.centre.valid() && phrase.predicate == Predicate::tangent && circle.points.size() >= 3) {
      phrase.predicate = Predicate::tangent_circumcircle;
      phrase.points = {phrase.points[0], phrase.points[1], circle.points[0], circle.points[1],
                       circle.points[2]};
      phrase.point_spans.resize(5, phrase.span);
      return {phrase};
    }
    if (!circle.centre.valid()) {
      circle.centre = draft_.hidden_point("o");
      if (!circle.points.empty()) result.push_back(circle_phrase(circle, phrase.span));
    }
    std::replace(phrase.points.begin(), phrase.points.end(), stand_in::the_circle, circle.centre);
    // "M lies on the circle": that of the points named before, not another one round the same centre.
    const auto in_phrase = [&](PointId p) {
      return std::find(phrase.points.begin(), phrase.points.end(), p) != phrase.points.end();
    };
    if (phrase.predicate == Predicate::circle && !circle.points.empty() &&
        std::none_of(circle.points.begin(), circle.points.end(), in_phrase)) {
      phrase.points.insert(phrase.points.begin() + 1, circle.points.begin(), circle.points.end());
      phrase.point_spans.resize(phrase.points.size(), phrase.span);
    }
    result.push_back(std::move(phrase));
    return result;
  }

 private:
  std::vector<Phrase> with_centre(const Phrase& phrase) {
    const auto loose = [](const NamedCircle& circle) { return !circle.centre.valid(); };
    const auto meant = std::find_if(circles_.begin(), circles_.end(), loose);
    if (meant == circles_.end()) return {};  // its points, if any, were said together with the centre
    if (std::count_if(circles_.begin(), circles_.end(), loose) > 1) return which(phrase);
    meant->centre = phrase.points[0];
    const Phrase joined = circle_phrase(*meant, phrase.span);
    const NamedCircle whole = *meant;
    circles_.erase(meant);
    const auto own = std::find_if(circles_.begin(), circles_.end(),
                                  [&](const NamedCircle& circle) { return circle.centre == whole.centre; });
    if (own == circles_.end()) {
      circles_.push_back(whole);
    } else {
      append(own->points, whole.points);
    }
    return {joined};
  }

  std::vector<Phrase> which(const Phrase& phrase) {
    const NamedCircle& one = circles_.front();
    std::string name = "circle ";
    for (std::size_t i = 0; i < one.points.size() && i < 3; ++i) name += draft_.names.of(one.points[i]);
    if (one.centre.valid()) name = "the circle with centre " + draft_.names.of(one.centre);
    draft_.error(phrase.span, "there is more than one circle here; which one is meant?",
                 "write \"" + name + "\"");
    return {};
  }

  Draft& draft_;
  std::vector<NamedCircle> circles_;
};

}  // namespace

void settle_circles(Draft& draft, const Units& units) {
  Circles circles(draft);
  // Centres first: "the circle" may be spoken of before its centre has a name.
  for (const bool centres : {true, false}) {
    for (const Unit& unit : units) {
      const auto due = [&](const Phrase& phrase) {
        return mentions_the_circle(phrase) && names_the_centre(phrase) == centres;
      };
      if (std::none_of(unit.phrases->begin(), unit.phrases->end(), due)) continue;
      std::vector<Phrase> settled;
      for (Phrase& phrase : *unit.phrases) {
        if (!due(phrase)) {
          settled.push_back(std::move(phrase));
          continue;
        }
        if (unit.kind == UnitKind::added && circles.none()) {
          draft.error(phrase.span, "there is no circle in this problem", "name the circle that is meant");
          continue;
        }
        for (Phrase& one : circles.settled(std::move(phrase))) settled.push_back(std::move(one));
      }
      *unit.phrases = std::move(settled);
    }
  }
}

}  // namespace prover
