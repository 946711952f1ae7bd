// Sentences, their clauses, and what is said of points.
#include <algorithm>
#include <map>

#include "prover/language/reader.hpp"

namespace prover {

void Reader::add(Predicate predicate, const std::vector<Placed>& points, Span span) {
  Phrase phrase;
  phrase.predicate = predicate;
  phrase.span = span;
  for (const Placed& point : points) {
    phrase.points.push_back(point.id);
    phrase.point_spans.push_back(point.span);
  }
  phrases_->push_back(std::move(phrase));
}

void Reader::says(const Node& node, std::vector<Placed> subject, Span span) {
  for (const Node& child : node.children) {
    const std::vector<Placed> more = points(child);
    subject.insert(subject.end(), more.begin(), more.end());
    if (child.part == Part::letters && more.size() >= 3) draft_.name_polygon(more);
  }
  std::vector<Placed> ordered = subject;
  for (std::size_t i = 0; i < node.order.size(); ++i)
    ordered[i] = subject[static_cast<std::size_t>(node.order[i] - '0')];
  if ((node.predicate == Predicate::congruent || node.predicate == Predicate::similar) &&
      (ordered.size() != 6 || node.children.size() != 2 || node.children[0].children.size() != 3)) {
    draft_.error(span, "congruent and similar are said of two triangles here",
                 "name both by three letters, in corresponding order");
    return;
  }
  add(node.predicate, ordered, span);
}

void Reader::sentence(const Node& node, std::vector<Phrase>& phrases, std::vector<Goal>& goals) {
  for (const Node& child : node.children) {
    if (child.part == Part::find) {
      find(child, goals);
    } else if (child.part == Part::prove) {
      // "if KL = KM then …": the hypothesis is given, what follows is claimed.
      if (const Node* hypothesis = child.child(Part::hypothesis)) {
        phrases_ = &phrases;
        for (const Node& given : hypothesis->children) clause(given);
      }
      prove(child, goals);
    } else {
      phrases_ = &phrases;
      clause(child);
    }
  }
}

void Reader::clause(const Node& node) {
  using Read = void (Reader::*)(const Node&);
  static const std::map<Part, Read> table = {
      {Part::points_clause, &Reader::points_clause},
      {Part::line_clause, &Reader::line_clause},
      {Part::lines_clause, &Reader::lines_clause},
      {Part::shape, &Reader::shape},
      {Part::says, &Reader::says_alone},
      {Part::relation, &Reader::relation},
      {Part::group, &Reader::group},
      {Part::circle_clause, &Reader::circle_clause},
      {Part::tangents_from, &Reader::tangents_from},
      {Part::bisector_meets, &Reader::bisector_meets},
      {Part::tangent_meets, &Reader::tangent_meets},
      {Part::line_through, &Reader::line_through},
      {Part::produced_meets, &Reader::produced_meets},
      {Part::join, &Reader::join},
      {Part::join_to, &Reader::join_to},
      {Part::drawn_line, &Reader::drawn_line},
      {Part::drawn_ray, &Reader::drawn_ray},
      {Part::drawn_angle, &Reader::drawn_angle},
      {Part::drawn_produced, &Reader::drawn_produced},
      {Part::drawn_foot, &Reader::drawn_foot},
      {Part::drawn_cevian, &Reader::drawn_cevian},
      {Part::drawn_bisector, &Reader::drawn_bisector},
      {Part::drawn_midpoint, &Reader::drawn_midpoint},
      {Part::drawn_centre, &Reader::drawn_centre},
      {Part::drawn_perpendicular_bisector, &Reader::drawn_perpendicular_bisector},
      {Part::drawn_diameter, &Reader::drawn_diameter},
      {Part::drawn_tangent, &Reader::drawn_tangent},
      {Part::drawn_tangents_from, &Reader::drawn_tangents_from},
      {Part::build, &Reader::build},
      {Part::mirror, &Reader::mirror},
      {Part::drawn_vaguely, &Reader::drawn_vaguely},
      {Part::angle_bisected, &Reader::angle_bisected},
      {Part::line_order_row, &Reader::line_order_row},
      {Part::call, &Reader::call},
      {Part::numbered_angles, &Reader::numbered_angles},
      {Part::diagonals_meet, &Reader::diagonals_meet},
      {Part::perpendicular_bisector_meets, &Reader::perpendicular_bisector_meets},
      {Part::loose_letters, &Reader::loose_letters},
  };
  const auto row = table.find(node.part);
  if (row == table.end()) return;  // an order that was said in passing
  const std::size_t mistakes = draft_.diagnostics.size(), written = phrases_->size();
  (this->*row->second)(node);
  // A clause with a mistake says nothing: half a meaning would only bring more mistakes.
  if (draft_.diagnostics.size() > mistakes) phrases_->resize(std::min(phrases_->size(), written));
}

void Reader::says_alone(const Node& node) {
  says(node, {}, node.span);
}

void Reader::line_order_row(const Node& node) {
  add(Predicate::line_order, letters(node), node.span);
}

void Reader::angle_bisected(const Node& node) {
  const ReadAngle whole = angle(node.children.front());
  bisects(line(*line_node(node)), whole, node.span);
}

void Reader::loose_letters(const Node& node) {
  const std::string written = source(node.span);
  const std::size_t count = letters(node).size();
  draft_.error(node.span, "nothing is said of " + written,
               count == 3   ? "write \"triangle " + written + "\", or what the angle " + written + " is"
               : count == 2 ? "write \"join " + written + "\", or say what " + written + " does"
                            : "say what it is, for example \"" + written + " is a square\"");
}

void Reader::points_clause(const Node& node) {
  const std::vector<Placed> subjects = letters(node.children.front());
  for (std::size_t i = 1; i < node.children.size(); ++i) point_verb(node.children[i], subjects, node.span);
}

void Reader::point_verb(const Node& verb, const std::vector<Placed>& subjects, Span span) {
  const Part said = verb.part;
  if (said == Part::says) {
    for (const Placed& subject : subjects) says(verb, {subject}, span);
  } else if (said == Part::on_a_line) {
    if (subjects.size() < 3)
      draft_.error(span, "one or two points always lie on a line", "name three points or more");
    add(verb.child(Part::in_order) != nullptr ? Predicate::line_order : Predicate::collinear, subjects, span);
  } else if (said == Part::on_produced) {
    // "P lies on LM produced": beyond M; "on the extension of LM beyond L": beyond L.
    const Line base = line(*line_node(verb));
    const Node* beyond = verb.child(Part::point);
    const bool back = beyond != nullptr && point(*beyond).id == base.a.id;
    for (const Placed& subject : subjects) {
      add(Predicate::line_order, {back ? base.b : base.a, back ? base.a : base.b, subject}, span);
    }
  } else if (said == Part::on_circle) {
    on_circle(subjects, verb, span);
  } else if (said == Part::midpoints) {
    midpoints(subjects, lines(verb), span);
  } else if (said == Part::same_side || said == Part::opposite_sides) {
    sides(subjects, line(*line_node(verb)), said == Part::same_side, span);
  } else if (said == Part::inside || said == Part::outside) {
    const Placed middle = centre(circle(*verb.child(Part::circle)), span);
    for (const Placed& subject : subjects) {
      add(said == Part::inside ? Predicate::inside_circle : Predicate::outside_circle, {subject, middle},
          span);
    }
  } else {
    centre_of(subjects, verb, span);
  }
}

void Reader::midpoints(const std::vector<Placed>& subjects, const std::vector<Line>& sides, Span span) {
  if (sides.size() != subjects.size()) {
    draft_.error(
        span, std::to_string(subjects.size()) + " midpoints of " + std::to_string(sides.size()) + " segments",
        "name as many segments as points, in the same order");
    return;
  }
  for (std::size_t i = 0; i < sides.size(); ++i)
    add(Predicate::midpoint, {subjects[i], sides[i].a, sides[i].b}, span);
}

void Reader::sides(const std::vector<Placed>& subjects, const Line& wall, bool same, Span span) {
  if (subjects.size() < 2 || (!same && subjects.size() > 2)) {
    draft_.error(span, "a line has two sides: name two points to compare",
                 "for example \"A and D on opposite sides of BC\"");
    return;
  }
  for (std::size_t i = 1; i < subjects.size(); ++i) {
    add(same ? Predicate::same_side : Predicate::opposite_sides, {subjects[0], subjects[i], wall.a, wall.b},
        span);
  }
}

void Reader::call(const Node& node) {
  const Node* letter = node.child(Part::letter);
  const std::string name = canonical_name(source(letter->span));
  for (const Node& child : node.children) {
    if (child.part != Part::angle && child.part != Part::exterior && child.part != Part::angle_between)
      continue;
    const Angle meant = angle(child).angle;
    if (const Angle* known = draft_.find_called(name); known != nullptr && !(*known == meant)) {
      draft_.error(letter->span, name + " is already the name of another angle", "take another letter");
    } else {
      draft_.call(name, meant);
    }
  }
}

// "angles at K: 1 = LKP, 2 = PKM" names K1 and K2; "a = LKP" names a.
void Reader::numbered_angles(const Node& node) {
  const Placed corner = point(node.children.front());
  for (const Node& child : node.children) {
    if (child.part != Part::numbered_angle) continue;
    const std::string written = source(child.child(Part::name)->span);
    const bool number = written.front() >= '0' && written.front() <= '9';
    const std::string name = number ? draft_.names.of(corner.id) + written : canonical_name(written);
    const std::vector<Placed> row = letters(*child.child(Part::letters));
    if (row.size() != 3 || row[1].id != corner.id) {
      draft_.error(child.span,
                   "an angle at " + draft_.names.of(corner.id) + " has three letters with " +
                       draft_.names.of(corner.id) + " in the middle",
                   "for example \"1 = L" + draft_.names.of(corner.id) + "P\"");
      continue;
    }
    const Angle meant{row[0].id, row[1].id, row[2].id};
    if (const Angle* known = draft_.find_called(name); known != nullptr && !(*known == meant)) {
      draft_.error(child.span, name + " is already the name of another angle", "take another number");
    } else {
      draft_.call(name, meant);
    }
  }
}

}  // namespace prover
