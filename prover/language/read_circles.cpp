// Circles: what is on them, what touches them, and where their centres are.
#include <algorithm>

#include "prover/language/reader.hpp"

namespace prover {

// The centre of a circle that was named by its points only is a point without a name.
Placed Reader::centre(const ReadCircle& circle, Span span) {
  if (circle.centre.id.valid()) return circle.centre;
  for (NamedCircle& known : draft_.circles) {
    const bool same = circle.points.size() == known.points.size() &&
                      std::equal(circle.points.begin(), circle.points.end(), known.points.begin(),
                                 [](Placed a, PointId b) { return a.id == b; });
    if (same && known.centre.valid()) return {known.centre, span};
  }
  const Placed made{draft_.hidden_point("o"), span};
  std::vector<Placed> row = {made};
  row.insert(row.end(), circle.points.begin(), circle.points.end());
  add(Predicate::circle, row, span);
  draft_.name_circle(made.id, circle.points);
  return made;
}

void Reader::circle_clause(const Node& node) {
  ReadCircle read;
  if (const Node* named = node.child(Part::circle)) read = circle(*named);
  if (const Node* middle = node.child(Part::centre)) read.centre = point(middle->children.front());
  if (const Node* row = node.child(Part::through)) {
    for (const Placed& one : letters(*row)) read.points.push_back(one);
  }
  const bool ordered = node.child(Part::cyclic_order) != nullptr || node.child(Part::in_order) != nullptr;
  if (read.centre.id == stand_in::the_circle && !read.points.empty()) read.centre = {};
  draft_.name_circle(read.centre.id == stand_in::the_circle ? PointId{} : read.centre.id, read.points);
  if (!read.centre.id.valid()) {
    if (read.points.size() > 3)
      add(ordered ? Predicate::concyclic_cyclic : Predicate::concyclic, read.points, node.span);
    return;
  }
  if (read.points.empty()) return;
  std::vector<Placed> all = {read.centre};
  all.insert(all.end(), read.points.begin(), read.points.end());
  add(ordered ? Predicate::circle_cyclic : Predicate::circle, all, node.span);
}

// Points that lie on a circle, which may be named by its centre, by other points, or not at all.
void Reader::on_circle(const std::vector<Placed>& subjects, const Node& verb, Span span) {
  const Node* named = verb.child(Part::circle);
  const bool ordered = verb.child(Part::cyclic_order) != nullptr || verb.child(Part::in_order) != nullptr;
  ReadCircle read = named != nullptr ? circle(*named) : ReadCircle{};
  const bool indefinite = named == nullptr || words(*named).starts_with("a ");
  if (read.centre.id == stand_in::the_circle && indefinite && subjects.size() >= 3) read.centre = {};
  std::vector<Placed> all = read.points;
  all.insert(all.end(), subjects.begin(), subjects.end());
  if (!read.centre.id.valid()) {
    draft_.name_circle({}, subjects);
    if (all.size() > 3) add(ordered ? Predicate::concyclic_cyclic : Predicate::concyclic, all, span);
    return;
  }
  if (read.centre.id != stand_in::the_circle) draft_.name_circle(read.centre.id, subjects);
  all.insert(all.begin(), read.centre);
  add(ordered ? Predicate::circle_cyclic : Predicate::circle, all, span);
}

void Reader::tangent(const Line& line, const ReadCircle& circle, const Placed* at, Span span) {
  if (at == nullptr) {
    draft_.error(span, "at which point does " + draft_.letters({line.a, line.b}) + " touch the circle?",
                 "write \"" + draft_.letters({line.a, line.b}) + " touches the circle at " +
                     draft_.names.of(line.b.id) + "\"");
    return;
  }
  const bool at_first = line.a.id == at->id, at_second = line.b.id == at->id;
  const Placed other = at_first ? line.b : line.a;
  if (!at_first && !at_second) add(Predicate::on_line, {*at, line.a, line.b}, span);
  if (circle.centre.id.valid()) {
    if (circle.centre.id != stand_in::the_circle) draft_.name_circle(circle.centre.id, {*at});
    add(Predicate::tangent, {other, *at, circle.centre}, span);
    return;
  }
  std::vector<Placed> row = {other, *at};
  row.insert(
      row.end(), circle.points.begin(),
      circle.points.begin() + std::min<std::ptrdiff_t>(3, static_cast<std::ptrdiff_t>(circle.points.size())));
  add(Predicate::tangent_circumcircle, row, span);
}

void Reader::tangents_from(const Node& node) {
  const std::vector<Placed> at = points_in(node);  // from P, at S and T
  const Node* named = node.child(Part::circle);
  const ReadCircle touched =
      named != nullptr ? circle(*named) : ReadCircle{{stand_in::the_circle, node.span}, {}};
  tangent({at[0], at[1]}, touched, &at[1], node.span);
  tangent({at[0], at[2]}, touched, &at[2], node.span);
}

void Reader::centre_of(const std::vector<Placed>& subjects, const Node& verb, Span span) {
  const Placed subject = subjects.front();
  if (subjects.size() > 1) {
    draft_.error(span, "a circle or triangle has one centre", "name one point");
    return;
  }
  if (verb.part == Part::is_centre) {
    ReadCircle read = circle(*verb.child(Part::circle));
    const bool ordered = verb.child(Part::cyclic_order) != nullptr || verb.child(Part::in_order) != nullptr;
    draft_.name_circle(subject.id, read.points);
    if (read.points.empty()) {  // which circle, the last pass finds out
      add(Predicate::circle, {subject, {stand_in::the_circle, verb.span}}, span);
      return;
    }
    std::vector<Placed> all = {subject};
    all.insert(all.end(), read.points.begin(), read.points.end());
    add(ordered ? Predicate::circle_cyclic : Predicate::circle, all, span);
    return;
  }
  const std::vector<Placed> t = letters(verb);
  if (t.size() != 3) {
    draft_.error(verb.span, "a triangle has three letters",
                 "for example \"I is the incentre of triangle KLM\"");
    return;
  }
  draft_.name_polygon(t);
  add(Predicate::triangle, t, span);
  if (verb.part == Part::circumcentre) {
    draft_.name_circle(subject.id, t);
    add(Predicate::circle, {subject, t[0], t[1], t[2]}, span);
    return;
  }
  for (std::size_t i = 0; i < 3; ++i) {
    const Placed a = t[i], b = t[(i + 1) % 3], c = t[(i + 2) % 3];
    if (verb.part == Part::incentre) {
      add(Predicate::bisects, {subject, c, a, b}, span);
    } else {
      add(Predicate::perpendicular, {subject, a, b, c}, span);
    }
  }
}

}  // namespace prover
