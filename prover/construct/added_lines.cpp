#include "prover/construct/added_lines.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "prover/base/log.hpp"
#include "prover/language/phrase_points.hpp"
#include "prover/sketch/complete.hpp"

namespace prover {

namespace {

bool names_new_point(const Phrase& phrase, const std::vector<bool>& old) {
  const auto points = points_named(phrase);
  return std::any_of(points.begin(), points.end(), [&](PointId p) { return !old[p.index()]; });
}

bool only_joins(const Phrase& phrase) {
  return (phrase.predicate == Predicate::line_order || phrase.predicate == Predicate::collinear) &&
         phrase.points.size() == 2;
}

// A new point that no added sentence places.
std::optional<PointId> point_only_joined(const std::vector<Phrase>& added, const std::vector<bool>& old) {
  std::vector<bool> placed = old;
  for (const Phrase& phrase : added)
    if (!only_joins(phrase))
      for (const PointId p : points_named(phrase)) placed[p.index()] = true;
  for (const Phrase& phrase : added)
    for (const PointId p : phrase.points)
      if (p.valid() && !placed[p.index()]) return p;
  return std::nullopt;
}

// A line on which a new point lies, by its direction: that of old points a, b, or at right angles to it.
struct Locus {
  PointId point, a, b;
  bool right_angle = false;
};

std::vector<Locus> loci_of(const Phrase& phrase, const std::vector<bool>& old) {
  const auto& p = phrase.points;
  const auto is_old = [&](std::size_t i) { return old[p[i].index()]; };
  const auto says = [&](std::initializer_list<Predicate> kinds) {
    return std::find(kinds.begin(), kinds.end(), phrase.predicate) != kinds.end();
  };
  std::vector<Locus> loci;
  if (says({Predicate::line_order, Predicate::collinear, Predicate::on_line, Predicate::on_segment, Predicate::on_ray})) {
    std::vector<PointId> fixed;
    for (std::size_t i = 0; i < p.size(); ++i)
      if (is_old(i)) fixed.push_back(p[i]);
    for (std::size_t i = 0; i < p.size() && fixed.size() >= 2; ++i)
      if (!is_old(i)) loci.push_back({p[i], fixed[0], fixed[1], false});
  } else if (says({Predicate::meet}) && !is_old(0)) {
    for (const std::size_t at : {1u, 3u})
      if (is_old(at) && is_old(at + 1)) loci.push_back({p[0], p[at], p[at + 1], false});
  } else if (says({Predicate::parallel, Predicate::perpendicular})) {
    for (const std::size_t at : {0u, 2u}) {
      const std::size_t other = 2 - at;
      if (is_old(other) && is_old(other + 1) && is_old(at) != is_old(at + 1))
        loci.push_back({is_old(at) ? p[at + 1] : p[at], p[other], p[other + 1],
                        phrase.predicate == Predicate::perpendicular});
    }
  }
  return loci;  // where a new point lies on a circle or a bisector, the figures alone tell
}

// Two lines that a new point lies on need not meet: can the givens make them parallel?
std::vector<std::string> provisos(const Statement& statement, const std::vector<bool>& old,
                                  const std::vector<Phrase>& givens, const Budget& budget) {
  std::vector<Locus> loci;
  for (const Given& given : statement.givens)
    if (given.added)
      for (const Locus& locus : loci_of(given.phrase, old)) loci.push_back(locus);
  std::vector<std::string> found;
  for (std::size_t i = 0; i < loci.size(); ++i)
    for (std::size_t j = i + 1; j < loci.size(); ++j) {
      const Locus &s = loci[i], &t = loci[j];
      if (s.point != t.point || (std::minmax(s.a, s.b) == std::minmax(t.a, t.b) && s.right_angle != t.right_angle))
        continue;
      const bool right = s.right_angle != t.right_angle;
      const Phrase exception =
          phrase_of(right ? Predicate::perpendicular : Predicate::parallel, {s.a, s.b, t.a, t.b});
      std::vector<Phrase> with = givens;
      with.push_back(exception);
      SketchOptions quick;
      quick.wanted = 1;
      quick.starts = 40;
      quick.seek_arrangements = false;
      if (sketch(with, old.size(), budget, quick).sketches.empty()) continue;
      const auto name = [&](const Locus& l) { return statement.names.of(l.a) + statement.names.of(l.b); };
      found.push_back(fmt::format("{} and {} are not {}", name(s), name(t), right ? "perpendicular" : "parallel"));
    }
  return found;
}

// May the added sentences repeat this given? That a point is on a circle, or one right angle ("the rectangle KLMX"). Never
// more: givens that fix a figure's shape would let through whatever holds in it by numbers alone.
bool on_circle(const Phrase& phrase) {
  return phrase.predicate == Predicate::circle || phrase.predicate == Predicate::circle_cyclic ||
         phrase.predicate == Predicate::concyclic || phrase.predicate == Predicate::concyclic_cyclic;
}
bool right_angle(const Phrase& phrase) {
  if (phrase.predicate == Predicate::perpendicular || phrase.predicate == Predicate::right_angled) return true;
  const Relation& relation = phrase.relation;
  if (phrase.predicate != Predicate::relation || relation.comparisons != std::vector{Comparison::equal}) return false;
  const auto single = [](const Expression& e) { return e.terms.size() == 1; };
  return single(relation.expressions[0]) && single(relation.expressions[1]) &&
         std::holds_alternative<Angle>(relation.expressions[0].terms[0].quantity) &&
         std::holds_alternative<One>(relation.expressions[1].terms[0].quantity) &&
         relation.expressions[1].terms[0].coefficient == Rational(90);
}

// The equations of the added sentences restrict nothing old, apart from what they repeat.
bool asks_only_of_new_points(const Sketch& figure, const std::vector<bool>& old, const std::vector<Phrase>& givens,
                             const std::vector<Phrase>& added) {
  std::vector<Phrase> circles;
  std::copy_if(givens.begin(), givens.end(), std::back_inserter(circles), on_circle);
  const auto with = [&](std::vector<Phrase> background) {
    std::vector<Phrase> all = background;
    all.insert(all.end(), added.begin(), added.end());
    return restricts_only_new_points(figure, old, background, all);
  };
  if (with({}) || with(circles)) return true;
  return std::any_of(givens.begin(), givens.end(), [&](const Phrase& given) {
    if (!right_angle(given)) return false;
    std::vector<Phrase> background = circles;
    background.push_back(given);
    return with(background);
  });
}

std::vector<Sketch> figures_of(const std::vector<Phrase>& givens, std::size_t points, const Budget& budget) {
  SketchOptions some;
  some.wanted = 8;
  some.starts = 120;
  return sketch(givens, points, budget, some).sketches;
}

}  // namespace

AddedLines examine_added_lines(const Statement& statement, const Budget& budget) {
  AddedLines result;
  if (statement.added.empty()) return result;
  const std::vector<bool> old = points_of_problem(statement);
  std::vector<Phrase> givens, added;
  for (const Given& given : statement.givens) (given.added ? added : givens).push_back(given.phrase);
  for (const AddedSentence& sentence : statement.added)
    for (const std::size_t i : sentence.givens) {
      const Given& given = statement.givens[i];
      if (!given.added || names_new_point(given.phrase, old) || only_joins(given.phrase)) continue;
      result.objection = fmt::format("“{}” is about points that the problem has already: it would be a further given", given.text);
      result.way_out = "add a line through a new point, join two points, or write it as a given";
      result.span = sentence.span;
      return result;
    }
  if (const auto lost = point_only_joined(added, old)) {
    const std::string& name = statement.names.of(*lost);
    result.objection = fmt::format("where {} is, is not said: it is only joined", name);
    result.way_out = fmt::format("say what fixes {0}, for example \"{0} is the midpoint of\" a segment", name);
    for (const AddedSentence& sentence : statement.added)
      for (const std::size_t i : sentence.givens) {
        const auto named = points_named(statement.givens[i].phrase);
        if (std::find(named.begin(), named.end(), *lost) != named.end()) result.span = sentence.span;
      }
    return result;
  }
  if (std::all_of(added.begin(), added.end(), only_joins)) return result;  // also when there are none
  result.span = {statement.added.front().span.begin, statement.added.back().span.end};

  std::size_t last_old = 0;
  for (std::size_t p = 0; p < old.size(); ++p)
    if (old[p]) last_old = p + 1;
  // Where no figure meets the givens (they may exclude each other), all but one of them: a line that can be drawn in those
  // figures can be drawn in all that were left out, if there were any.
  std::vector<Phrase> kept = givens;
  std::vector<Sketch> base = figures_of(kept, last_old, budget);
  for (std::size_t i = 0; base.empty() && i < givens.size() && !budget.exhausted(); ++i) {
    kept = givens;
    kept.erase(kept.begin() + static_cast<std::ptrdiff_t>(i));
    base = figures_of(kept, last_old, budget);
  }
  std::vector<Phrase> all = kept;
  all.insert(all.end(), added.begin(), added.end());
  if (base.empty()) {
    result.objection = "no figure was found in which the added line could be tried";
    result.way_out = "leave the line out, or see whether the givens can all hold";
    return result;
  }
  bool examined = false;
  for (Sketch& figure : base) {
    figure.points.resize(old.size());
    const auto carried = complete(figure, old, all, budget);
    if (!carried) {
      const bool no_time = budget.exhausted();
      result.objection = no_time ? "there was no time to see whether the added line can be drawn"
                                 : "the added line cannot be drawn in every figure that meets the givens";
      result.way_out = no_time ? "give the problem more time (--limit)"
                               : "leave out what is not always so, such as the order or side of a new point, or add what makes it so to the givens";
      if (!no_time) result.figure = figure;
      return result;
    }
    if (!examined && !asks_only_of_new_points(*carried, old, givens, added)) {
      result.objection = "the added line asks more of the new points than can always be had";
      result.way_out = "a new point may have two conditions: a line and a line, or a line and a length";
      return result;
    }
    examined = true;
  }
  result.provided = provisos(statement, old, givens, budget);
  log::info("added lines: carried out in {} figures", base.size());
  return result;
}

}  // namespace prover
