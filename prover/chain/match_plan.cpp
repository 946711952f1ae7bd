#include "prover/chain/match_plan.hpp"

#include <algorithm>
#include <set>

#include "prover/statement/canonical_fact.hpp"
#include "prover/statement/figure_text.hpp"

namespace prover {

namespace {

// Every variable pair used in a phrase, by how it is used.
struct Use {
  std::set<int> arms_at;       // corners at which the variable is an arm
  bool as_point = false;       // used in a way that depends on which point it is
  bool in_line = false;        // used to name a line
};

void note_quantity(const Quantity& quantity, std::vector<Use>& uses) {
  if (const auto* a = std::get_if<Angle>(&quantity)) {
    uses[a->vertex.index()].as_point = true;
    uses[a->arm1.index()].arms_at.insert(a->vertex.value);
    uses[a->arm2.index()].arms_at.insert(a->vertex.value);
  } else if (const auto* s = std::get_if<Segment>(&quantity)) {
    uses[s->a.index()].as_point = true;
    uses[s->b.index()].as_point = true;
  }
}

void note_phrase(const Phrase& phrase, std::vector<Use>& uses) {
  const auto& p = phrase.points;
  auto line = [&](PointId a, PointId b) {
    uses[a.index()].in_line = true;
    uses[b.index()].in_line = true;
  };
  if (phrase.predicate == Predicate::relation) {
    for (const Expression& e : phrase.relation.expressions)
      for (const Term& t : e.terms) note_quantity(t.quantity, uses);
  } else if (phrase.predicate == Predicate::parallel || phrase.predicate == Predicate::perpendicular) {
    line(p[0], p[1]);
    line(p[2], p[3]);
  } else if (phrase.predicate == Predicate::same_side || phrase.predicate == Predicate::opposite_sides) {
    // A side is that of a ray's point only where the line runs through the ray's corner: checked later.
    line(p[2], p[3]);
  } else if (phrase.predicate == Predicate::line_order && p.size() == 3) {
    uses[p[1].index()].as_point = true;
    uses[p[0].index()].arms_at.insert(p[1].value);
    uses[p[2].index()].arms_at.insert(p[1].value);
  } else if (phrase.predicate == Predicate::tangent || phrase.predicate == Predicate::tangent_circumcircle) {
    uses[p[0].index()].arms_at.insert(p[1].value);  // any other point of the line would do
    for (std::size_t i = 1; i < p.size(); ++i) uses[p[i].index()].as_point = true;
  } else if (phrase.predicate == Predicate::inside_angle || phrase.predicate == Predicate::bisects) {
    uses[p[2].index()].as_point = true;
    for (const std::size_t i : {0u, 1u, 3u}) uses[p[i].index()].arms_at.insert(p[2].value);
  } else {
    for (PointId q : p) uses[q.index()].as_point = true;
  }
}

void find_roles(const Rule& rule, MatchPlan& plan) {
  const std::size_t n = rule.variables.points.size();
  std::vector<Use> uses(n);
  for (const auto* phrases : {&rule.given, &rule.where, &rule.then})
    for (const Phrase& phrase : *phrases) note_phrase(phrase, uses);
  plan.arm_of.assign(n, -1);
  plan.names_line.assign(n, false);
  for (std::size_t v = 0; v < n; ++v) {
    if (uses[v].as_point) continue;
    if (uses[v].arms_at.size() == 1) plan.arm_of[v] = *uses[v].arms_at.begin();
    plan.names_line[v] = uses[v].arms_at.empty() && uses[v].in_line;
  }
  // A side of a line that misses the corner depends on the point itself.
  for (const auto* phrases : {&rule.given, &rule.where, &rule.then})
    for (const Phrase& phrase : *phrases) {
      if (phrase.predicate != Predicate::same_side && phrase.predicate != Predicate::opposite_sides) continue;
      for (const std::size_t i : {0u, 1u}) {
        const std::size_t v = phrase.points[i].index();
        const int corner = plan.arm_of[v];
        if (corner >= 0 && corner != phrase.points[2].value && corner != phrase.points[3].value) plan.arm_of[v] = -1;
        plan.names_line[v] = false;
      }
    }
  // A line named by a ray must be named from the ray's corner.
  for (const auto* phrases : {&rule.given, &rule.where, &rule.then})
    for (const Phrase& phrase : *phrases)
      for (const auto& [a, b] : drawn_pairs(phrase)) {
        if (phrase.predicate == Predicate::relation) continue;
        const int corner_a = plan.arm_of[a.index()], corner_b = plan.arm_of[b.index()];
        auto on_same_line = [&](int corner, PointId other) {
          return corner == other.value || plan.arm_of[other.index()] == corner;
        };
        if (corner_a >= 0 && !on_same_line(corner_a, b)) plan.arm_of[a.index()] = -1;
        if (corner_b >= 0 && !on_same_line(corner_b, a)) plan.arm_of[b.index()] = -1;
      }
}

bool is_two_triangles(const Rule& rule) {
  std::vector<int> group(rule.variables.points.size(), -1);
  int triangles = 0;
  for (const Phrase& phrase : rule.given)
    if (phrase.predicate == Predicate::triangle) {
      for (PointId p : phrase.points) {
        if (group[p.index()] >= 0) return false;
        group[p.index()] = triangles;
      }
      ++triangles;
    } else if (phrase.predicate != Predicate::relation) {
      return false;
    }
  return triangles == 2 && std::none_of(group.begin(), group.end(), [](int g) { return g < 0; }) && rule.where.empty();
}

}  // namespace

bool is_fact_phrase(const Phrase& phrase) { return fact_kind_of(phrase).has_value(); }

MatchPlan make_plan(const Rule& rule, int first_fact) {
  MatchPlan plan;
  for (const Phrase& phrase : rule.given) {
    if (phrase.predicate != Predicate::circle || phrase.points.size() <= 3) {
      plan.conditions.push_back(phrase);
      continue;
    }
    for (std::size_t i = 1; i < phrase.points.size(); ++i)  // every two of the points are on one circle
      for (std::size_t j = i + 1; j < phrase.points.size(); ++j) {
        Phrase pair = phrase;
        pair.points = {phrase.points[0], phrase.points[i], phrase.points[j]};
        pair.point_spans = {phrase.span, phrase.span, phrase.span};
        plan.conditions.push_back(std::move(pair));
      }
  }
  plan.given_count = plan.conditions.size();
  plan.conditions.insert(plan.conditions.end(), rule.where.begin(), rule.where.end());
  find_roles(rule, plan);
  plan.two_triangles = is_two_triangles(rule);
  if (!plan.two_triangles) plan.symmetries = symmetries_of(rule);
  // A variable that only names a line is tried with one point of the line: exchanging it could lose that one.
  std::erase_if(plan.symmetries, [&](const std::vector<int>& to) {
    for (std::size_t v = 0; v < to.size(); ++v)
      if (plan.names_line[v] && to[v] != static_cast<int>(v)) return true;
    return false;
  });
  for (const auto* phrases : {&rule.given, &rule.then})
    for (const Phrase& phrase : *phrases)
      for (const auto& pair : drawn_pairs(phrase)) plan.lines_used.push_back(pair);
  for (std::size_t i = 0; i < plan.conditions.size(); ++i)
    if (is_fact_phrase(plan.conditions[i])) plan.fact_phrases.push_back(static_cast<int>(i));

  const std::size_t n = rule.variables.points.size();
  std::vector<bool> placed(n, false), used(plan.conditions.size(), false);
  auto count_placed = [&](const Phrase& phrase) {
    return std::count_if(phrase.points.begin(), phrase.points.end(), [&](PointId p) { return placed[p.index()]; });
  };
  auto all_placed = [&](const Phrase& phrase) {
    return count_placed(phrase) == static_cast<std::ptrdiff_t>(phrase.points.size());
  };
  auto place_all = [&](const Phrase& phrase) {
    for (PointId p : phrase.points) placed[p.index()] = true;
  };
  auto add_tests = [&] {
    for (std::size_t i = 0; i < plan.conditions.size(); ++i) {
      const Phrase& phrase = plan.conditions[i];
      if (used[i] || phrase.predicate == Predicate::relation || !all_placed(phrase)) continue;
      used[i] = true;
      plan.steps.push_back({is_fact_phrase(phrase) ? MatchAction::test_fact : MatchAction::test_position,
                            static_cast<int>(i), -1, -1});
    }
  };
  auto generates_order = [](const Phrase& phrase) {
    return (phrase.predicate == Predicate::line_order && phrase.points.size() == 3) ||
           phrase.predicate == Predicate::on_segment || phrase.predicate == Predicate::midpoint;
  };
  if (first_fact >= 0) {
    plan.steps.push_back({MatchAction::known_fact, first_fact, -1, -1});
    used[static_cast<std::size_t>(first_fact)] = true;
    place_all(plan.conditions[static_cast<std::size_t>(first_fact)]);
  }
  while (std::find(placed.begin(), placed.end(), false) != placed.end()) {
    add_tests();
    // The condition that ties most to what is placed: facts first, then triangles and orders.
    int best = -1;
    std::ptrdiff_t best_score = 0;
    MatchAction action = MatchAction::any_point;
    for (std::size_t i = 0; i < plan.conditions.size(); ++i) {
      const Phrase& phrase = plan.conditions[i];
      if (used[i] || all_placed(phrase)) continue;
      const std::ptrdiff_t tied = count_placed(phrase);
      std::ptrdiff_t score = 0;
      MatchAction how = MatchAction::any_point;
      if (is_fact_phrase(phrase)) {
        score = 100 + tied;
        how = MatchAction::known_fact;
      } else if (phrase.predicate == Predicate::triangle && i < plan.given_count) {
        score = 10 + 3 * tied;
        how = MatchAction::drawn_triangle;
      } else if (generates_order(phrase)) {
        score = 8 + 4 * tied;
        how = MatchAction::on_line_order;
      }
      if (score > best_score) {
        best = static_cast<int>(i);
        best_score = score;
        action = how;
      }
    }
    // A ray at a placed corner is cheaper than anything that is not tied to two placed points.
    int ray = -1;
    for (std::size_t v = 0; v < n && ray < 0; ++v)
      if (!placed[v] && plan.arm_of[v] >= 0 && placed[static_cast<std::size_t>(plan.arm_of[v])]) ray = static_cast<int>(v);
    if (ray >= 0 && best_score < 15) {
      plan.steps.push_back({MatchAction::ray_at, -1, ray, plan.arm_of[static_cast<std::size_t>(ray)]});
      placed[static_cast<std::size_t>(ray)] = true;
      continue;
    }
    if (best >= 0) {
      plan.steps.push_back({action, best, -1, -1});
      used[static_cast<std::size_t>(best)] = action == MatchAction::known_fact || action == MatchAction::drawn_triangle;
      place_all(plan.conditions[static_cast<std::size_t>(best)]);
      continue;
    }
    // A point joined to a placed one by a segment or an arm.
    int variable = -1, via = -1;
    for (const auto& [a, b] : plan.lines_used) {
      if (placed[a.index()] != placed[b.index()]) {
        variable = placed[a.index()] ? b.value : a.value;
        via = placed[a.index()] ? a.value : b.value;
        break;
      }
    }
    if (variable < 0)
      for (std::size_t v = 0; v < n && variable < 0; ++v)
        if (!placed[v] && plan.arm_of[v] < 0) variable = static_cast<int>(v);
    if (variable < 0)
      for (std::size_t v = 0; v < n && variable < 0; ++v)
        if (!placed[v]) variable = static_cast<int>(v);
    plan.steps.push_back({via >= 0 ? MatchAction::joined_to : MatchAction::any_point, -1, variable, via});
    placed[static_cast<std::size_t>(variable)] = true;
  }
  add_tests();
  return plan;
}

}  // namespace prover
