#include "prover/statement/meaning.hpp"

#include <algorithm>
#include <iterator>
#include <set>

#include "prover/statement/canonical_fact.hpp"

namespace prover {

namespace {

using Points = std::vector<PointId>;

void add_convex(const Points& p, std::size_t from, std::vector<Position>& positions) {
  const std::size_t n = p.size() - from;
  if (n == 3) positions.push_back({PositionKind::not_collinear, p[from], p[from + 1], p[from + 2], {}});
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t k = 3; k < n; ++k)
      positions.push_back({PositionKind::same_side, p[from + (i + 2) % n], p[from + (i + k) % n], p[from + i],
                           p[from + (i + 1) % n]});
}

// The points of the circle other than the one where the line touches it (of a tangent_circumcircle).
Points without(PointId touching, const Points& p) {
  Points others;
  std::copy_if(p.begin() + 2, p.end(), std::back_inserter(others), [&](PointId q) { return q != touching; });
  return others;
}

class Reader {
 public:
  Reader(const Arrangement& arrangement, UnknownTable& unknowns, Meaning& meaning)
      : arrangement_(arrangement), unknowns_(unknowns), meaning_(meaning) {}

  Form length(PointId a, PointId b) {
    if (a == b || !arrangement_.line(a, b).valid()) {
      meaning_.degenerate = true;
      return {};
    }
    return Form::of(unknowns_.length(a, b));
  }

  Form angle(PointId a, PointId v, PointId b) {
    if (a == v || b == v || !arrangement_.line(v, a).valid() || !arrangement_.line(v, b).valid()) {
      meaning_.degenerate = true;
      return {};
    }
    const PointId p = arrangement_.ray(v, a), q = arrangement_.ray(v, b);
    if (p == q) {
      meaning_.degenerate = true;
      return {};
    }
    if (arrangement_.opposite_rays(v, p, q)) {
      meaning_.degenerate = true;
      return Form::number(180);
    }
    return Form::of(unknowns_.angle(v, p, q));
  }

  Form quantity(const Quantity& quantity, const Points& place) {
    if (const auto* a = std::get_if<Angle>(&quantity)) {
      Form form = angle(place[a->arm1.index()], place[a->vertex.index()], place[a->arm2.index()]);
      if (a->exterior) return Form::number(180).add(form, -1);
      if (a->reflex) return Form::number(360).add(form, -1);
      return form;
    }
    if (const auto* s = std::get_if<Segment>(&quantity)) return length(place[s->a.index()], place[s->b.index()]);
    if (const auto* n = std::get_if<Number>(&quantity))
      return Form::of(unknowns_.intern({UnknownKind::number, {}, {}, n->name}));
    return Form::number(1);
  }

  Form expression(const Expression& expression, const Points& place) {
    Form sum;
    for (const Term& term : expression.terms) sum.add(quantity(term.quantity, place), term.coefficient);
    return sum;
  }

  void equal_lengths(PointId a, PointId b, PointId c, PointId d) { add(length(a, b).add(length(c, d), -1)); }

  void lines(FactKind kind, PointId a, PointId b, PointId c, PointId d) {
    const UnknownId fact = line_fact(kind, a, b, c, d, arrangement_, unknowns_);
    if (fact.valid())
      add(Form::of(fact));
    else
      meaning_.degenerate = true;
  }

  // Right angles at the named point where the lines meet, or the fact about the lines where they have none.
  void perpendicular(PointId a, PointId b, PointId c, PointId d) {
    const LineId first = arrangement_.line(a, b), second = arrangement_.line(c, d);
    if (!first.valid() || !second.valid() || first == second) {
      meaning_.degenerate = true;
      return;
    }
    const PointId corner = arrangement_.common_point(first, second);
    if (!corner.valid()) return lines(FactKind::perpendicular, a, b, c, d);
    meaning_.one_is_enough = true;
    for (PointId p : arrangement_.rays_at(corner)) {
      if (arrangement_.line(corner, p) != first) continue;
      for (PointId q : arrangement_.rays_at(corner))
        if (arrangement_.line(corner, q) == second) add(angle(p, corner, q).add(Form::number(-90)));
    }
  }

  void fact(FactKind kind, const Points& points) { add(Form::of(point_fact(kind, points, unknowns_))); }

  // P and Q are on one circle round O.
  void one_circle(PointId o, PointId p, PointId q) {
    meaning_.degenerate = meaning_.degenerate || o == p || o == q || p == q;
    Form difference = Form::of(point_fact(FactKind::circle, {o, p}, unknowns_));
    add(difference.add(Form::of(point_fact(FactKind::circle, {o, q}, unknowns_)), -1));
  }

  void concyclic(const Points& p, std::size_t from) {
    for (std::size_t i = from; i < p.size(); ++i)
      for (std::size_t j = i + 1; j < p.size(); ++j)
        for (std::size_t k = j + 1; k < p.size(); ++k)
          for (std::size_t l = k + 1; l < p.size(); ++l) fact(FactKind::concyclic, {p[i], p[j], p[k], p[l]});
  }

  void tangent(PointId p, PointId touching, const Points& circle) {
    const UnknownId fact = tangent_fact(p, touching, circle, arrangement_, unknowns_);
    if (fact.valid())
      add(Form::of(fact));
    else
      meaning_.degenerate = true;
  }

  void add(Form form) { meaning_.forms.push_back(std::move(form)); }

 private:
  const Arrangement& arrangement_;
  UnknownTable& unknowns_;
  Meaning& meaning_;
};

void relation_forms(const Relation& relation, const Points& place, Reader& reader, Meaning& meaning) {
  for (std::size_t i = 0; i < relation.comparisons.size(); ++i) {
    if (relation.comparisons[i] != Comparison::equal) {
      meaning.unsupported = true;
      continue;
    }
    Form form = reader.expression(relation.expressions[i], place);
    reader.add(form.add(reader.expression(relation.expressions[i + 1], place), -1));
  }
}

}  // namespace

std::vector<Position> positions_of(const Phrase& phrase, const std::vector<PointId>& place) {
  Points p;
  p.reserve(phrase.points.size());
  for (PointId q : phrase.points) p.push_back(place[q.index()]);
  std::vector<Position> positions;
  auto not_collinear = [&](PointId a, PointId b, PointId c) {
    positions.push_back({PositionKind::not_collinear, a, b, c, {}});
  };
  auto two_lines = [&](const Points& q) {  // lines that meet in a point are different lines
    not_collinear(q[1] == q[0] ? q[2] : q[1], q[0], q[3] == q[0] ? q[4] : q[3]);
  };
  auto inside_angle = [&](PointId q, PointId a, PointId b, PointId c) {
    positions.push_back({PositionKind::same_side, q, a, b, c});
    positions.push_back({PositionKind::same_side, q, c, b, a});
  };
  switch (phrase.predicate) {
    case Predicate::relation:
    case Predicate::collinear:
    case Predicate::on_line:
    case Predicate::perpendicular:
    case Predicate::perpendicular_bisector:
    case Predicate::foot:
    case Predicate::circle:
    case Predicate::concyclic:
    case Predicate::simple_polygon:
    case Predicate::kite:
    case Predicate::inside_circle:
    case Predicate::outside_circle:
    case Predicate::outside_polygon:
    case Predicate::on_ray:  // order on the line: kept as a ray, not as one betweenness
      break;
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::isosceles:
    case Predicate::isosceles_at:
    case Predicate::equilateral:
    case Predicate::right_angled:
      not_collinear(p[0], p[1], p[2]);
      break;
    case Predicate::congruent:
    case Predicate::similar:
      not_collinear(p[0], p[1], p[2]);
      not_collinear(p[3], p[4], p[5]);
      break;
    case Predicate::line_order:
      for (std::size_t i = 0; i < p.size(); ++i)
        for (std::size_t j = i + 1; j < p.size(); ++j)
          for (std::size_t k = j + 1; k < p.size(); ++k)
            if (p.size() <= 40 || (j == i + 1 && k == j + 1))
              positions.push_back({PositionKind::between, p[i], p[j], p[k], {}});
      break;
    case Predicate::on_segment:
    case Predicate::midpoint:
      positions.push_back({PositionKind::between, p[1], p[0], p[2], {}});
      break;
    case Predicate::diameter:
      positions.push_back({PositionKind::between, p[0], p[2], p[1], {}});
      break;
    case Predicate::meet:
      two_lines(p);
      break;
    case Predicate::cross:
      two_lines(p);
      positions.push_back({PositionKind::between, p[1], p[0], p[2], {}});
      positions.push_back({PositionKind::between, p[3], p[0], p[4], {}});
      break;
    case Predicate::parallel:
      positions.push_back({PositionKind::same_side, p[0], p[1], p[2], p[3]});
      positions.push_back({PositionKind::same_side, p[2], p[3], p[0], p[1]});
      break;
    case Predicate::bisects:
    case Predicate::inside_angle:
      inside_angle(p[0], p[1], p[2], p[3]);
      break;
    case Predicate::regular_polygon:
    case Predicate::convex:
    case Predicate::parallelogram:
    case Predicate::rectangle:
    case Predicate::rhombus:
    case Predicate::square:
    case Predicate::trapezium:
    case Predicate::concyclic_cyclic:
      add_convex(p, 0, positions);
      break;
    case Predicate::circle_cyclic:
      add_convex(p, 1, positions);
      break;
    case Predicate::tangent:
      not_collinear(p[0], p[1], p[2]);
      break;
    case Predicate::tangent_circumcircle: {  // a circle lies on one side of its tangent
      not_collinear(p[2], p[3], p[4]);
      const Points others = without(p[1], p);
      for (std::size_t i = 1; i < others.size(); ++i)
        positions.push_back({PositionKind::same_side, others[0], others[i], p[0], p[1]});
      break;
    }
    case Predicate::inside_polygon:
      if (p.size() == 4)
        for (std::size_t i = 0; i < 3; ++i)
          positions.push_back(
              {PositionKind::same_side, p[0], p[1 + (i + 2) % 3], p[1 + i], p[1 + (i + 1) % 3]});
      break;
    case Predicate::same_side:
      positions.push_back({PositionKind::same_side, p[0], p[1], p[2], p[3]});
      break;
    case Predicate::opposite_sides:
      positions.push_back({PositionKind::opposite_sides, p[0], p[1], p[2], p[3]});
      break;
  }
  return positions;
}

Meaning meaning_of(const Phrase& phrase, const std::vector<PointId>& place, const Arrangement& arrangement,
                   UnknownTable& unknowns) {
  Meaning meaning;
  meaning.positions = positions_of(phrase, place);
  Reader reader(arrangement, unknowns, meaning);
  Points p;
  p.reserve(phrase.points.size());
  for (PointId q : phrase.points) p.push_back(place[q.index()]);
  switch (phrase.predicate) {
    case Predicate::relation:
      relation_forms(phrase.relation, place, reader, meaning);
      break;
    case Predicate::triangle:
    case Predicate::acute:
    case Predicate::isosceles:
    case Predicate::line_order:
    case Predicate::on_ray:
    case Predicate::on_segment:
    case Predicate::meet:
    case Predicate::cross:
    case Predicate::convex:
    case Predicate::simple_polygon:
    case Predicate::inside_polygon:
    case Predicate::inside_angle:
    case Predicate::inside_circle:
    case Predicate::outside_polygon:
    case Predicate::outside_circle:
    case Predicate::same_side:
    case Predicate::opposite_sides:
      break;
    case Predicate::collinear:
    case Predicate::on_line:
      // Three names of two points say nothing; a rule that is read so must not fire.
      meaning.degenerate = meaning.degenerate || std::set<PointId>(p.begin(), p.end()).size() != p.size();
      for (std::size_t i = 2; i < p.size(); ++i)
        if (!arrangement.line(p[0], p[1]).valid() || arrangement.line(p[0], p[1]) != arrangement.line(p[0], p[i]))
          reader.fact(FactKind::collinear, {p[0], p[1], p[i]});
      break;
    case Predicate::parallel:
      reader.lines(FactKind::parallel, p[0], p[1], p[2], p[3]);
      break;
    case Predicate::perpendicular:
      reader.perpendicular(p[0], p[1], p[2], p[3]);
      break;
    case Predicate::foot:
      reader.perpendicular(p[0], p[1], p[2], p[3]);
      break;
    case Predicate::perpendicular_bisector: {
      reader.perpendicular(p[0], p[1], p[2], p[3]);
      const LineId axis = arrangement.line(p[0], p[1]), base = arrangement.line(p[2], p[3]);
      if (axis.valid() && base.valid() && axis != base) {
        const PointId foot = arrangement.common_point(axis, base);
        if (foot.valid() && foot != p[2] && foot != p[3]) reader.equal_lengths(foot, p[2], foot, p[3]);
      }
      break;
    }
    case Predicate::midpoint:
      reader.equal_lengths(p[0], p[1], p[0], p[2]);
      break;
    case Predicate::isosceles_at:
      reader.equal_lengths(p[0], p[1], p[0], p[2]);
      break;
    case Predicate::equilateral:
      reader.equal_lengths(p[0], p[1], p[1], p[2]);
      reader.equal_lengths(p[1], p[2], p[2], p[0]);
      break;
    case Predicate::right_angled:
      reader.add(reader.angle(p[1], p[0], p[2]).add(Form::number(-90)));
      break;
    case Predicate::bisects:
      reader.add(reader.angle(p[1], p[2], p[0]).add(reader.angle(p[0], p[2], p[3]), -1));
      break;
    case Predicate::regular_polygon:
      if (p.size() == 3) {
        reader.equal_lengths(p[0], p[1], p[1], p[2]);
        reader.equal_lengths(p[1], p[2], p[2], p[0]);
      } else {
        reader.fact(p.size() == 4 ? FactKind::square : FactKind::regular_polygon, p);
      }
      break;
    case Predicate::parallelogram:
      reader.fact(FactKind::parallelogram, p);
      break;
    case Predicate::rectangle:
      reader.fact(FactKind::rectangle, p);
      break;
    case Predicate::rhombus:
      reader.fact(FactKind::rhombus, p);
      break;
    case Predicate::square:
      reader.fact(FactKind::square, p);
      break;
    case Predicate::kite:
      reader.fact(FactKind::kite, p);
      break;
    case Predicate::trapezium:
      reader.fact(FactKind::trapezium, p);
      break;
    case Predicate::congruent:
      reader.fact(FactKind::congruent, p);
      break;
    case Predicate::similar:
      reader.fact(FactKind::similar, p);
      break;
    case Predicate::diameter:
      reader.equal_lengths(p[2], p[0], p[2], p[1]);
      reader.one_circle(p[2], p[0], p[1]);
      break;
    case Predicate::circle:
    case Predicate::circle_cyclic:
      meaning.degenerate = meaning.degenerate || std::set<PointId>(p.begin(), p.end()).size() != p.size();
      for (std::size_t i = 2; i < p.size(); ++i) reader.one_circle(p[0], p[1], p[i]);
      break;
    case Predicate::concyclic:
    case Predicate::concyclic_cyclic:
      meaning.degenerate = meaning.degenerate || std::set<PointId>(p.begin(), p.end()).size() != p.size();
      reader.concyclic(p, 0);
      break;
    case Predicate::tangent:
      reader.tangent(p[0], p[1], {p[2]});
      meaning.degenerate = meaning.degenerate || p[1] == p[2];
      break;
    case Predicate::tangent_circumcircle: {
      const Points others = without(p[1], p);
      meaning.degenerate = meaning.degenerate || std::set<PointId>(p.begin() + 2, p.end()).size() != 3;
      for (std::size_t i = 0; i < others.size(); ++i)
        for (std::size_t j = i + 1; j < others.size(); ++j) reader.tangent(p[0], p[1], {others[i], others[j]});
      if (others.size() == 3) reader.fact(FactKind::concyclic, {p[1], p[2], p[3], p[4]});
      break;
    }
  }
  return meaning;
}

Meaning meaning_of(const Phrase& phrase, const Arrangement& arrangement, UnknownTable& unknowns) {
  Points identity;
  for (std::size_t i = 0; i < arrangement.point_count(); ++i) identity.emplace_back(static_cast<std::int64_t>(i));
  return meaning_of(phrase, identity, arrangement, unknowns);
}

std::vector<Form> given_forms(const Phrase& phrase, const Arrangement& arrangement, UnknownTable& unknowns) {
  Meaning meaning = meaning_of(phrase, arrangement, unknowns);
  const bool circle = phrase.predicate == Predicate::circle || phrase.predicate == Predicate::circle_cyclic;
  constexpr std::size_t most_points = 24;  // four of each: more would fill the memory with facts that no one needs
  if (circle && !meaning.degenerate && phrase.points.size() <= most_points)
    Reader(arrangement, unknowns, meaning).concyclic(phrase.points, 1);
  return std::move(meaning.forms);
}

Form form_of(const Expression& expression, const std::vector<PointId>& place, const Arrangement& arrangement,
             UnknownTable& unknowns, bool& degenerate) {
  Meaning meaning;
  Reader reader(arrangement, unknowns, meaning);
  Form form = reader.expression(expression, place);
  degenerate = meaning.degenerate;
  return form;
}

}  // namespace prover
