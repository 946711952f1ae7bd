#include "prover/chain/match_program.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "prover/language/phrase_points.hpp"
#include "prover/statement/canonical_fact.hpp"
#include "prover/statement/figure_text.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

Variable variable_of(PointId p) { return static_cast<Variable>(p.value); }

class Compiler {
 public:
  Compiler(const MatchPlan& plan, const Rule& rule)
      : plan_(plan), rule_(rule), placed_(plan.arm_of.size(), false), prefix_(plan.symmetries.size(), 0) {
    for (std::size_t i = 0; i < plan.given_count; ++i) must_exist(plan.conditions[i]);
    for (const Phrase& phrase : rule.then) must_exist(phrase);
  }

  MatchProgram run() {
    for (const MatchStep& step : plan_.steps) compile(step);
    if (program_.moves.empty()) add({});
    find_free_tail();
    return std::move(program_);
  }

 private:
  // An equation between angles and lengths that are not drawn says nothing: such places are given up.
  void must_exist(const Phrase& phrase) {
    if (phrase.predicate != Predicate::relation) return;
    const auto& comparisons = phrase.relation.comparisons;
    for (std::size_t e = 0; e < phrase.relation.expressions.size(); ++e) {
      const bool stated = (e > 0 && comparisons[e - 1] == Comparison::equal) ||
                          (e < comparisons.size() && comparisons[e] == Comparison::equal);
      if (!stated) continue;
      for (const Term& term : phrase.relation.expressions[e].terms) {
        if (const auto* angle = std::get_if<Angle>(&term.quantity)) {
          later_drawn(angle->vertex, angle->arm1);
          later_drawn(angle->vertex, angle->arm2);
          MatchTest test;
          test.kind = MatchTest::Kind::angle;
          test.a = variable_of(angle->arm1);
          test.b = variable_of(angle->vertex);
          test.c = variable_of(angle->arm2);
          later(test, {test.a, test.b, test.c});
        } else if (const auto* segment = std::get_if<Segment>(&term.quantity)) {
          later_drawn(segment->a, segment->b);
        }
      }
    }
  }

  void must_hold(const Position& position) {
    MatchTest test;
    test.position = position;
    std::vector<Variable> points{variable_of(position.a), variable_of(position.b), variable_of(position.c)};
    if (position.d.valid()) points.push_back(variable_of(position.d));
    later(test, points);
    if (position.kind != PositionKind::between) return;
    later_drawn(position.a, position.b);
    later_drawn(position.b, position.c);
    later_drawn(position.a, position.c);
  }

  void later_drawn(PointId a, PointId b) {
    if (!drawn_.insert(std::minmax(variable_of(a), variable_of(b))).second) return;
    MatchTest test;
    test.kind = MatchTest::Kind::drawn;
    test.a = variable_of(a);
    test.b = variable_of(b);
    later(test, {test.a, test.b});
  }
  void later(MatchTest test, std::vector<Variable> points) { waiting_.push_back({std::move(test), std::move(points)}); }

  void add(MatchMove move) {
    // The cheap tests first, those of positions after them.
    std::vector<MatchTest> of_positions;
    std::erase_if(waiting_, [&](const Waiting& w) {
      if (!std::all_of(w.points.begin(), w.points.end(), [&](Variable v) { return placed_[v]; })) return false;
      (w.test.kind == MatchTest::Kind::position ? of_positions : move.tests).push_back(w.test);
      return true;
    });
    for (std::size_t s = 0; s < plan_.symmetries.size(); ++s) {
      const auto& image = plan_.symmetries[s];
      std::size_t known = 0;
      while (known < image.size() && placed_[known] && placed_[static_cast<std::size_t>(image[known])]) ++known;
      if (known == prefix_[s]) continue;
      prefix_[s] = known;
      MatchTest test;
      test.kind = MatchTest::Kind::image;
      test.index = s;
      test.size = known;
      move.tests.push_back(test);
    }
    move.tests.insert(move.tests.end(), of_positions.begin(), of_positions.end());
    program_.moves.push_back(std::move(move));
  }

  void place(MatchMove::Kind kind, std::size_t variable, int near = -1, std::size_t line = 0, int far = -1) {
    MatchMove move;
    move.kind = kind;
    move.variable = static_cast<Variable>(variable);
    move.near = near;
    move.far = far;
    move.line = line;
    placed_[variable] = true;
    add(std::move(move));
  }
  void check_line(MatchMove::Kind kind, std::size_t variable, std::size_t line, int near = -1, int far = -1) {
    place(kind, variable, near, line, far);
  }

  // The pair of variables, placed so that together they name the line.
  void name_line(PointId a, PointId b, std::size_t line) {
    named_by_[line] = std::minmax(variable_of(a), variable_of(b));
    const std::size_t va = a.index(), vb = b.index();
    if (placed_[va] && placed_[vb]) return place(MatchMove::Kind::is_line, va, a.value, line, b.value);
    if (!placed_[va] && !placed_[vb] && plan_.names_line[va] && plan_.names_line[vb]) {
      placed_[vb] = true;
      return place(MatchMove::Kind::name_line, va, b.value, line);
    }
    const bool b_first = placed_[vb] || (!placed_[va] && plan_.arm_of[va] == b.value);
    const std::size_t first = b_first ? vb : va, second = b_first ? va : vb;
    place(placed_[first] ? MatchMove::Kind::stands_on : MatchMove::Kind::on_line, first, -1, line);
    const auto corner = static_cast<int>(first);
    const MatchMove::Kind how = plan_.names_line[second]          ? MatchMove::Kind::one_ray_on_line
                                : plan_.arm_of[second] == corner ? MatchMove::Kind::ray_on_line
                                                                  : MatchMove::Kind::other_on_line;
    place(how, second, corner, line);
  }

  void read_fact(const MatchStep& step, const Phrase& phrase) {
    const auto kind = fact_kind_of(phrase);
    MatchMove move;
    move.fact = *kind;
    move.new_facts = program_.moves.empty();
    move.line = program_.lines;
    const auto& p = phrase.points;
    static_cast<void>(step);
    if (kind == FactKind::parallel || kind == FactKind::perpendicular) {
      move.kind = MatchMove::Kind::fact_of_lines;
      program_.lines += 2;
      const std::size_t first = move.line;
      const auto stand_already = [&](PointId a, PointId b) {
        const bool has_a = placed_[a.index()], has_b = placed_[b.index()];
        return std::pair(has_a ? a.value : has_b ? b.value : -1, has_a && has_b ? b.value : -1);
      };
      move.first_named = stand_already(p[0], p[1]);
      move.second_named = stand_already(p[2], p[3]);
      add(std::move(move));
      name_line(p[0], p[1], first);
      name_line(p[2], p[3], first + 1);
      return;
    }
    std::vector<PointId> points;
    if (kind == FactKind::tangent) {
      points = {p[1], p[2]};
      move.readings = {{0, 1}};
    } else if (kind == FactKind::tangent_through) {
      // A circle that is known by three points is named by them, in any order.
      points = {p[1]};
      std::copy_if(p.begin() + 2, p.end(), std::back_inserter(points), [&](PointId q) { return q != p[1]; });
      if (points.size() == 3) move.readings = {{0, 1, 2}, {0, 2, 1}};
    } else {
      points = p;
      std::vector<PointId> in_order;
      for (std::size_t i = 0; i < p.size(); ++i) in_order.emplace_back(static_cast<std::int64_t>(i));
      for (const std::vector<PointId>& reading : readings(*kind, in_order)) {
        auto& order = move.readings.emplace_back();
        for (const PointId q : reading) order.push_back(static_cast<std::uint8_t>(q.value));
      }
    }
    const bool tangent = kind == FactKind::tangent || kind == FactKind::tangent_through;
    move.kind = tangent ? MatchMove::Kind::fact_of_tangent : MatchMove::Kind::fact_of_points;
    for (const PointId q : points) {
      move.points.push_back(variable_of(q));
      move.placed.push_back(placed_[q.index()]);
      placed_[q.index()] = true;
    }
    const std::size_t line = move.line;
    program_.lines += tangent ? 1 : 0;
    add(std::move(move));
    if (tangent) name_line(p[0], p[1], line);
  }

  // Corners already placed, or the points joined to them; every point only for the first.
  void read_triangle(const Phrase& phrase) {
    std::array<std::size_t, 3> v{phrase.points[0].index(), phrase.points[1].index(), phrase.points[2].index()};
    std::stable_partition(v.begin(), v.end(), [&](std::size_t i) { return placed_[i]; });
    const auto corner = [&](std::size_t i) { return PointId(static_cast<std::int64_t>(v[i])); };
    for (std::size_t i = 0; i < 3; ++i)
      for (std::size_t j = i + 1; j < 3; ++j) later_drawn(corner(i), corner(j));
    MatchTest test;
    test.kind = MatchTest::Kind::two_lines;
    test.a = static_cast<Variable>(v[0]);
    test.b = static_cast<Variable>(v[1]);
    test.c = static_cast<Variable>(v[2]);
    later(test, {test.a, test.b, test.c});
    must_hold({PositionKind::not_collinear, corner(0), corner(1), corner(2), {}});
    bool moved = false;
    for (std::size_t i = 0; i < 3; ++i) {
      if (placed_[v[i]]) continue;
      moved = true;
      if (i == 0)
        place(MatchMove::Kind::any_point, v[i]);
      else
        place(MatchMove::Kind::neighbour, v[i], static_cast<int>(v[i - 1]));
    }
    if (!moved) add({});
  }

  void read_order(const Phrase& phrase) {
    // points: ends and the point between them
    std::array<std::size_t, 3> v{phrase.points[0].index(), phrase.points[1].index(), phrase.points[2].index()};
    if (phrase.predicate != Predicate::line_order) std::swap(v[0], v[1]);  // midpoint M A B, on_segment P A B
    const auto middle = static_cast<int>(v[1]);
    const bool rays = plan_.arm_of[v[0]] == middle && plan_.arm_of[v[2]] == middle;
    MatchMove choice;
    choice.line = program_.lines++;
    std::vector<int> fixed;
    for (const std::size_t i : v)
      if (placed_[i]) fixed.push_back(static_cast<int>(i));
    choice.kind = fixed.empty()       ? MatchMove::Kind::lines_all
                  : fixed.size() == 1 ? MatchMove::Kind::lines_through
                                      : MatchMove::Kind::line_of_two;
    if (!fixed.empty()) choice.near = fixed[0];
    if (fixed.size() > 1) choice.far = fixed[1];
    const std::size_t line = choice.line;
    must_hold({PositionKind::between, PointId(static_cast<std::int64_t>(v[0])), PointId(static_cast<std::int64_t>(v[1])),
               PointId(static_cast<std::int64_t>(v[2])), {}});
    add(std::move(choice));
    check_line(placed_[v[1]] ? MatchMove::Kind::stands_on : MatchMove::Kind::on_line, v[1], line);
    const auto other = rays ? MatchMove::Kind::end_on_line : MatchMove::Kind::other_on_line;
    check_line(placed_[v[0]] ? MatchMove::Kind::stands_on : other, v[0], line, middle);
    check_line(placed_[v[2]] ? MatchMove::Kind::stands_on : other, v[2], line, middle, static_cast<int>(v[0]));
  }

  // Variables that stand in premises and conclusions otherwise than in the name of a line.
  std::vector<bool> told_apart() const {
    std::vector<bool> told(placed_.size(), false);
    for (const auto* phrases : {&rule_.given, &rule_.then})
      for (const Phrase& phrase : *phrases) {
        if (phrase.predicate == Predicate::parallel || phrase.predicate == Predicate::perpendicular ||
            phrase.predicate == Predicate::triangle)
          continue;
        for (const PointId p : points_named(phrase)) told[p.index()] = true;
      }
    return told;
  }

  void find_free_tail() {
    const std::vector<bool> told = told_apart();
    std::vector<std::pair<PointId, PointId>> named;  // pairs that name a line in a premise or conclusion
    for (const auto* phrases : {&rule_.given, &rule_.then})
      for (const Phrase& phrase : *phrases)
        for (const auto& pair : drawn_pairs(phrase)) named.push_back(pair);
    const auto names_a_line = [&](Variable v) {
      return std::any_of(named.begin(), named.end(), [&](const auto& pair) {
        return variable_of(pair.first) == v || variable_of(pair.second) == v;
      });
    };
    const auto names_that_line_only = [&](const MatchMove& move) {
      const auto line = named_by_.find(move.line);
      return line != named_by_.end() && std::all_of(named.begin(), named.end(), [&](const auto& pair) {
               const std::pair<Variable, Variable> p = std::minmax(variable_of(pair.first), variable_of(pair.second));
               return (p.first != move.variable && p.second != move.variable) || p == line->second;
             });
    };
    const auto is_free = [&](const MatchMove& move) {
      switch (move.kind) {
        case MatchMove::Kind::tests_only:
        case MatchMove::Kind::stands_on:
        case MatchMove::Kind::is_line:
          return true;
        case MatchMove::Kind::on_line:
        case MatchMove::Kind::other_on_line:
        case MatchMove::Kind::ray_on_line:
        case MatchMove::Kind::one_ray_on_line:
          return !told[move.variable] && names_that_line_only(move);
        case MatchMove::Kind::name_line:
          return false;  // has one candidate only
        case MatchMove::Kind::end_on_line:
        case MatchMove::Kind::ray:
        case MatchMove::Kind::neighbour:
        case MatchMove::Kind::joined:
        case MatchMove::Kind::any_point:
          return !told[move.variable] && !names_a_line(move.variable);
        case MatchMove::Kind::fact_of_lines:
        case MatchMove::Kind::fact_of_points:
        case MatchMove::Kind::fact_of_tangent:
        case MatchMove::Kind::lines_all:
        case MatchMove::Kind::lines_through:
        case MatchMove::Kind::line_of_two:
          return false;
      }
      return false;
    };
    program_.free_from = program_.moves.size();
    while (program_.free_from > 0 && is_free(program_.moves[program_.free_from - 1])) --program_.free_from;
  }

  void compile(const MatchStep& step) {
    const auto phrase = [&]() -> const Phrase& { return plan_.conditions[static_cast<std::size_t>(step.phrase)]; };
    const auto variable = static_cast<std::size_t>(step.variable);
    switch (step.action) {
      case MatchAction::known_fact:
        return read_fact(step, phrase());
      case MatchAction::drawn_triangle:
        return read_triangle(phrase());
      case MatchAction::on_line_order:
        return read_order(phrase());
      case MatchAction::ray_at:
        return place(MatchMove::Kind::ray, variable, step.via);
      case MatchAction::joined_to:
        return place(MatchMove::Kind::joined, variable, step.via);
      case MatchAction::any_point:
        return place(MatchMove::Kind::any_point, variable);
      case MatchAction::test_position:
        return;  // each of its positions is tested when its points are placed
      case MatchAction::test_fact: {
        MatchTest test;
        test.kind = MatchTest::Kind::fact;
        test.index = static_cast<std::size_t>(step.phrase);
        MatchMove move;
        add(std::move(move));
        program_.moves.back().tests.push_back(test);
        return;
      }
    }
  }

 public:
  // Conditions that the plan tests, spread over the moves.
  void spread_tests() {
    std::vector<PointId> as_it_is;
    for (std::size_t v = 0; v < placed_.size(); ++v) as_it_is.emplace_back(static_cast<std::int64_t>(v));
    for (const MatchStep& step : plan_.steps)
      if (step.action == MatchAction::test_position)
        for (const Position& p : positions_of(plan_.conditions[static_cast<std::size_t>(step.phrase)], as_it_is))
          must_hold(p);
  }

 private:
  struct Waiting {
    MatchTest test;
    std::vector<Variable> points;
  };
  const MatchPlan& plan_;
  const Rule& rule_;
  std::vector<bool> placed_;
  std::vector<std::size_t> prefix_;  // by symmetry: how much of it is tested already
  std::vector<Waiting> waiting_;
  std::set<std::pair<Variable, Variable>> drawn_;
  std::map<std::size_t, std::pair<Variable, Variable>> named_by_;  // by register of a fact: the two that name its line
  MatchProgram program_;
};

}  // namespace

MatchProgram program_of(const MatchPlan& plan, const Rule& rule) {
  Compiler compiler(plan, rule);
  compiler.spread_tests();
  return compiler.run();
}

}  // namespace prover
