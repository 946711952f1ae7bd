#include "prover/statement/figure_marks.hpp"

#include <algorithm>
#include <map>
#include <numeric>

#include "prover/statement/figure_text.hpp"

namespace prover {

namespace {

// Classes of equal things, numbered in the order in which they were first named.
class Classes {
 public:
  int of(int member) {
    while (parent_[static_cast<std::size_t>(member)] != member) member = parent_[static_cast<std::size_t>(member)];
    return member;
  }
  int add() {
    parent_.push_back(static_cast<int>(parent_.size()));
    return static_cast<int>(parent_.size()) - 1;
  }
  void unite(int a, int b) {
    const int p = of(a), q = of(b);
    parent_[static_cast<std::size_t>(std::max(p, q))] = std::min(p, q);
  }
  // By member, from 1; 0 for those that are alone.
  std::vector<int> numbers() {
    std::map<int, int> size, number;
    for (std::size_t i = 0; i < parent_.size(); ++i) ++size[of(static_cast<int>(i))];
    std::vector<int> result;
    for (std::size_t i = 0; i < parent_.size(); ++i) {
      const int root = of(static_cast<int>(i));
      if (size[root] > 1 && !number.contains(root)) {
        const int next = static_cast<int>(number.size()) + 1;
        number[root] = next;
      }
      result.push_back(size[root] > 1 ? number[root] : 0);
    }
    return result;
  }

 private:
  std::vector<int> parent_;
};

struct Collector {
  const Statement& statement;
  FigureMarks marks;
  Classes equal_angles, equal_lengths, parallels;

  const std::string& name(PointId p) const { return statement.names.of(p); }
  bool hidden(PointId p) const { return statement.hidden[p.index()]; }

  void line(const std::vector<PointId>& points, bool added, bool beyond = false) {
    FigureMarks::Line one{{}, added, beyond};
    for (const PointId p : points)
      if (!hidden(p)) one.points.push_back(name(p));
    if (one.points.size() > 1) marks.lines.push_back(std::move(one));
  }

  int angle(PointId arm1, PointId vertex, PointId arm2, bool reflex = false) {
    std::string a = name(arm1), b = name(arm2);
    if (b < a) std::swap(a, b);
    for (std::size_t i = 0; i < marks.angles.size(); ++i) {
      const auto& one = marks.angles[i];
      if (one.vertex == name(vertex) && one.arm1 == a && one.arm2 == b && one.reflex == reflex) return static_cast<int>(i);
    }
    FigureMarks::Angle one;
    one.arm1 = a, one.vertex = name(vertex), one.arm2 = b, one.reflex = reflex;
    marks.angles.push_back(std::move(one));
    return equal_angles.add();
  }
  int length(PointId p, PointId q) {
    std::string a = name(p), b = name(q);
    if (b < a) std::swap(a, b);
    for (std::size_t i = 0; i < marks.lengths.size(); ++i)
      if (marks.lengths[i].a == a && marks.lengths[i].b == b) return static_cast<int>(i);
    FigureMarks::Length one;
    one.a = a, one.b = b;
    marks.lengths.push_back(std::move(one));
    return equal_lengths.add();
  }
  int parallel(PointId p, PointId q) {
    const std::array<std::string, 2> line{name(p), name(q)};
    for (std::size_t i = 0; i < marks.parallels.size(); ++i)
      if (marks.parallels[i].line == line) return static_cast<int>(i);
    marks.parallels.push_back({line, 0});
    return parallels.add();
  }

  void right(PointId arm1, PointId vertex, PointId arm2) {
    if (arm1 != vertex && arm2 != vertex && arm1 != arm2) marks.angles[static_cast<std::size_t>(angle(arm1, vertex, arm2))].right = true;
  }
  void equal(PointId a, PointId b, PointId c, PointId d) {
    const int first = length(a, b);  // named first, numbered first
    equal_lengths.unite(first, length(c, d));
  }
  void along(PointId a, PointId b, PointId c, PointId d) {
    const int first = parallel(a, b);
    parallels.unite(first, parallel(c, d));
  }
  void bisected(PointId arm1, PointId vertex, PointId arm2, PointId bisector) {
    const int first = angle(arm1, vertex, bisector);
    equal_angles.unite(first, angle(bisector, vertex, arm2));
  }
  void all_sides_equal(const std::vector<PointId>& p) {
    for (std::size_t i = 1; i < p.size(); ++i) equal(p[0], p[1], p[i], p[(i + 1) % p.size()]);
  }
  void all_angles_right(const std::vector<PointId>& p) {
    for (std::size_t i = 0; i < p.size(); ++i) right(p[i], p[(i + 1) % p.size()], p[(i + 2) % p.size()]);
  }
  // Where two perpendicular lines meet in a point of both.
  void right_where_met(PointId a, PointId b, PointId c, PointId d) {
    for (const auto& [corner, arm] : {std::pair{a, b}, std::pair{b, a}})
      for (const auto& [other, end] : {std::pair{c, d}, std::pair{d, c}})
        if (corner == other) return right(arm, corner, end);
  }

  void circle(PointId centre, const std::vector<PointId>& through) {
    FigureMarks::Circle one;
    if (centre.valid()) {
      one.centre = name(centre);
      for (const auto& known : marks.circles)
        if (known.centre == one.centre) return;
      one.through = {name(through[0])};
    } else {
      for (std::size_t i = 0; i < 3; ++i) one.through.push_back(name(through[i]));
    }
    marks.circles.push_back(std::move(one));
  }

  void relation(const Relation& relation);
  void phrase(const Phrase& phrase, bool added);
};

// The quantity of an expression that is nothing but one quantity.
template <typename T>
const T* alone(const Expression& expression) {
  if (expression.terms.size() != 1 || expression.terms[0].coefficient != Rational(1)) return nullptr;
  return std::get_if<T>(&expression.terms[0].quantity);
}

bool is_size(const Expression& expression) {
  return std::all_of(expression.terms.begin(), expression.terms.end(), [](const Term& term) {
    return std::holds_alternative<One>(term.quantity) || std::holds_alternative<Number>(term.quantity);
  });
}

bool is_number(const Expression& expression, const Rational& value) {
  return expression.terms.size() == 1 && std::holds_alternative<One>(expression.terms[0].quantity) &&
         expression.terms[0].coefficient == value;
}

void Collector::relation(const Relation& relation) {
  for (const Comparison c : relation.comparisons)
    if (c != Comparison::equal) return;
  const Expression* size = nullptr;
  std::vector<int> angles, lengths;
  for (const Expression& expression : relation.expressions) {
    if (is_size(expression)) size = &expression;
    if (const auto* a = alone<Angle>(expression); a && a->arm1.valid()) angles.push_back(angle(a->arm1, a->vertex, a->arm2, a->reflex));
    if (const auto* s = alone<Segment>(expression)) lengths.push_back(length(s->a, s->b));
  }
  for (const int i : angles) {
    FigureMarks::Angle& one = marks.angles[static_cast<std::size_t>(i)];
    if (size != nullptr && is_number(*size, Rational(90)) && !one.reflex) one.right = true;
    if (size != nullptr && one.size.empty()) one.size = describe(*size, statement.names) + "°";
    equal_angles.unite(i, angles[0]);
  }
  for (const int i : lengths) {
    FigureMarks::Length& one = marks.lengths[static_cast<std::size_t>(i)];
    if (size != nullptr && one.size.empty()) one.size = describe(*size, statement.names);
    equal_lengths.unite(i, lengths[0]);
  }
}

void Collector::phrase(const Phrase& phrase, bool added) {
  const std::vector<PointId>& p = phrase.points;
  const bool tangent = phrase.predicate == Predicate::tangent || phrase.predicate == Predicate::tangent_circumcircle;
  for (const auto& [a, b] : drawn_pairs(phrase)) {
    std::vector<PointId> points{a, b};
    line(points, added, tangent);
  }
  switch (phrase.predicate) {
    case Predicate::relation: relation(phrase.relation); break;
    case Predicate::line_order:
    case Predicate::collinear: line(p, added); break;
    case Predicate::on_ray:
    case Predicate::on_segment:
    case Predicate::on_line: line(p, added); break;
    case Predicate::meet:
    case Predicate::cross:
      line({p[0], p[1], p[2]}, added);
      line({p[0], p[3], p[4]}, added);
      break;
    case Predicate::midpoint:
      line(p, added);
      equal(p[1], p[0], p[0], p[2]);
      break;
    case Predicate::foot:
      line({p[0], p[2], p[3]}, added);
      right(p[1], p[0], p[0] == p[2] ? p[3] : p[2]);
      break;
    case Predicate::parallel: along(p[0], p[1], p[2], p[3]); break;
    case Predicate::perpendicular: right_where_met(p[0], p[1], p[2], p[3]); break;
    case Predicate::isosceles_at: equal(p[0], p[1], p[0], p[2]); break;
    case Predicate::right_angled: right(p[1], p[0], p[2]); break;
    case Predicate::bisects: bisected(p[1], p[2], p[3], p[0]); break;
    case Predicate::equilateral:
    case Predicate::rhombus:
    case Predicate::regular_polygon: all_sides_equal(p); break;
    case Predicate::square:
      all_sides_equal(p);
      all_angles_right(p);
      break;
    case Predicate::rectangle: all_angles_right(p); break;
    case Predicate::parallelogram:
      along(p[0], p[1], p[3], p[2]);
      along(p[1], p[2], p[0], p[3]);
      break;
    case Predicate::trapezium: along(p[0], p[1], p[3], p[2]); break;
    case Predicate::kite:
      equal(p[0], p[1], p[0], p[3]);
      equal(p[2], p[1], p[2], p[3]);
      break;
    case Predicate::circle:
    case Predicate::circle_cyclic:
      if (p.size() > 1) circle(p[0], {p[1]});
      break;
    case Predicate::concyclic:
    case Predicate::concyclic_cyclic:
      if (p.size() > 2) circle(PointId(), p);
      break;
    case Predicate::diameter:
      line(p, added);
      circle(p[2], {p[0]});
      break;
    case Predicate::tangent:
      circle(p[2], {p[1]});
      marks.contacts.push_back(name(p[1]));
      break;
    case Predicate::tangent_circumcircle:
      circle(PointId(), {p[2], p[3], p[4]});
      marks.contacts.push_back(name(p[1]));
      break;
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::isosceles:
    case Predicate::perpendicular_bisector:
    case Predicate::convex:
    case Predicate::simple_polygon:
    case Predicate::inside_polygon:
    case Predicate::inside_angle:
    case Predicate::inside_circle:
    case Predicate::outside_polygon:
    case Predicate::outside_circle:
    case Predicate::same_side:
    case Predicate::opposite_sides:
    case Predicate::congruent:
    case Predicate::similar: break;
  }
}

}  // namespace

FigureMarks figure_marks(const Statement& statement) {
  Collector collector{statement, {}, {}, {}, {}};
  for (std::size_t i = 0; i < statement.names.points.size(); ++i)
    if (!statement.hidden[i]) collector.marks.points.push_back(statement.names.points[i]);
  for (const Given& given : statement.givens) collector.phrase(given.phrase, given.added);
  for (std::size_t g = 0; g < statement.goals.size(); ++g) {
    const Goal& goal = statement.goals[g];
    for (const Phrase& claim : goal.claims)
      for (const auto& [a, b] : drawn_pairs(claim)) collector.line({a, b}, false);
    if (goal.kind != GoalKind::find) continue;
    if (g == 0) {
      const Expression& asked = goal.claims[0].relation.expressions[0];
      collector.marks.asked = describe(asked, statement.names);
      collector.marks.in_degrees = std::all_of(asked.terms.begin(), asked.terms.end(), [](const Term& term) {
        return std::holds_alternative<Angle>(term.quantity);
      });
    }
    for (const Term& term : goal.claims[0].relation.expressions[0].terms) {
      if (const auto* a = std::get_if<Angle>(&term.quantity); a && a->arm1.valid())
        collector.marks.angles[static_cast<std::size_t>(collector.angle(a->arm1, a->vertex, a->arm2, a->reflex))].asked = true;
      if (const auto* s = std::get_if<Segment>(&term.quantity))
        collector.marks.lengths[static_cast<std::size_t>(collector.length(s->a, s->b))].asked = true;
    }
  }
  FigureMarks& marks = collector.marks;
  const std::vector<int> angles = collector.equal_angles.numbers(), lengths = collector.equal_lengths.numbers(),
                         parallels = collector.parallels.numbers();
  for (std::size_t i = 0; i < angles.size(); ++i) marks.angles[i].group = angles[i];
  for (std::size_t i = 0; i < lengths.size(); ++i) marks.lengths[i].group = lengths[i];
  for (std::size_t i = 0; i < parallels.size(); ++i) marks.parallels[i].group = parallels[i];
  // What has neither a size nor a partner and is not asked has no mark: it was only part of a sum.
  std::erase_if(marks.angles, [](const auto& a) { return a.group == 0 && a.size.empty() && !a.right && !a.asked; });
  std::erase_if(marks.lengths, [](const auto& l) { return l.group == 0 && l.size.empty() && !l.asked; });
  return std::move(marks);
}

}  // namespace prover
