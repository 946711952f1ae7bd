#include "prover/verdict/case_names.hpp"

#include <algorithm>
#include <tuple>

namespace prover {

namespace {

// The answers that a question about a position can have, degenerate figures apart.
std::vector<Position> answers_to(const Position& p) {
  switch (p.kind) {
    case PositionKind::same_side:
    case PositionKind::opposite_sides:
      return {{PositionKind::same_side, p.a, p.b, p.c, p.d}, {PositionKind::opposite_sides, p.a, p.b, p.c, p.d}};
    case PositionKind::between:
      return {canonical({PositionKind::between, p.a, p.b, p.c, {}}), canonical({PositionKind::between, p.b, p.a, p.c, {}}),
              canonical({PositionKind::between, p.a, p.c, p.b, {}})};
    case PositionKind::not_collinear:
      break;
  }
  return {p};
}

// A line by points that the text names early is the one a reader knows best.
PointId latest_of_line(const Position& p) {
  return p.kind == PositionKind::between ? PointId(-1) : std::max(p.c, p.d);
}

}  // namespace

bool shows(const Sketch& figure, const Position& p) {
  switch (p.kind) {
    case PositionKind::between:
      return between(figure, p.a, p.b, p.c);
    case PositionKind::not_collinear:
      return orientation(figure, p.a, p.b, p.c) != 0;
    case PositionKind::same_side:
      return orientation(figure, p.c, p.d, p.a) * orientation(figure, p.c, p.d, p.b) > 0;
    case PositionKind::opposite_sides:
      return orientation(figure, p.c, p.d, p.a) * orientation(figure, p.c, p.d, p.b) < 0;
  }
  return false;
}

std::vector<std::vector<Position>> told_apart(const std::vector<CaseOfFigures>& cases, const std::vector<Sketch>& figures) {
  const auto in_all = [&](const CaseOfFigures& one, const Position& p) {
    return std::all_of(one.views.begin(), one.views.end(), [&](std::size_t v) { return shows(figures[v], p); });
  };
  std::set<Position> questions;  // each by its first answer
  for (const CaseOfFigures& one : cases)
    for (const Position& p : one.read) questions.insert(answers_to(p).front());
  struct Asked {
    std::vector<Position> answers;
    std::size_t decided = 0;  // cases in which all figures give one answer
  };
  std::vector<Asked> asked;
  for (const Position& question : questions) {
    Asked entry{answers_to(question), 0};
    for (const CaseOfFigures& one : cases)
      for (const Position& answer : entry.answers) entry.decided += in_all(one, answer);
    asked.push_back(std::move(entry));
  }
  std::vector<std::vector<Position>> result;
  for (const CaseOfFigures& one : cases) {
    std::vector<std::size_t> others;
    for (std::size_t i = 0; i < figures.size(); ++i)
      if (std::find(one.views.begin(), one.views.end(), i) == one.views.end()) others.push_back(i);
    std::vector<Position> name;
    while (!others.empty()) {
      const Position* best = nullptr;
      std::tuple<std::size_t, std::size_t, int, bool> best_rank;
      for (const Asked& question : asked)
        for (const Position& p : question.answers) {
          const auto excluded = static_cast<std::size_t>(
              std::count_if(others.begin(), others.end(), [&](std::size_t i) { return !shows(figures[i], p); }));
          const std::tuple rank{excluded, question.decided, -latest_of_line(p).value, one.read.contains(p)};
          if (excluded == 0 || (best && rank <= best_rank) || !in_all(one, p)) continue;
          best = &p;
          best_rank = rank;
        }
      if (!best) break;
      name.push_back(*best);
      std::erase_if(others, [&](std::size_t i) { return !shows(figures[i], *best); });
    }
    result.push_back(std::move(name));
  }
  return result;
}

std::string describe(const std::vector<Position>& positions, const Names& names) {
  std::string text;
  for (const Position& p : positions) text += (text.empty() ? "" : ", and ") + describe(p, names);
  return text;
}

}  // namespace prover
