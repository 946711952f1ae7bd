// What is said of lines.
#include <algorithm>

#include "prover/language/reader.hpp"

namespace prover {

std::vector<Placed> Reader::points_in(const Node& node) {
  std::vector<Placed> row;
  for (const Node& child : node.children) {
    if (child.part == Part::point) row.push_back(point(child));
  }
  return row;
}

void Reader::line_clause(const Node& node) {
  const Line subject = line(node.children.front());
  for (std::size_t i = 1; i < node.children.size(); ++i) line_verb(node.children[i], subject, node.span);
}

void Reader::lines_clause(const Node& node) {
  const bool inner = node.child(Part::noun) != nullptr;
  const std::vector<Line> subjects = lines(node);
  for (const Node& child : node.children) {
    if (child.part != Part::noun && child.part != Part::line && child.part != Part::lettered_line) {
      several_lines_verb(child, subjects, inner, node.span);
    }
  }
}

void Reader::pairwise(Predicate predicate, const std::vector<Line>& lines, Span span) {
  for (std::size_t i = 0; i + 1 < lines.size(); ++i) {
    add(predicate, {lines[i].a, lines[i].b, lines[i + 1].a, lines[i + 1].b}, span);
  }
}

// Where one of the lines is named with the point itself, the last pass reduces this to "on line".
void Reader::meet(Placed point, const Line& one, const Line& other, Span span) {
  add(Predicate::meet, {point, one.a, one.b, other.a, other.b}, span);
}

// A point where a line is met: strictly between the ends when the line is called a side or a segment.
void Reader::on_line(Placed point, const Node& node, Span span) {
  const std::string written = words(node);
  const bool inner =
      written.find("side") != std::string::npos || written.find("segment") != std::string::npos;
  const Line where = line(node);
  if (point.id == where.a.id || point.id == where.b.id) return;
  add(inner ? Predicate::on_segment : Predicate::on_line, {point, where.a, where.b}, span);
}

void Reader::bisects(const Line& subject, const ReadAngle& angle, Span span) {
  if (arms_of(angle, span).size() != 3) return;  // a mistake, told
  const Placed corner = angle.letters[1];
  if (subject.a.id != corner.id && subject.b.id != corner.id) {
    draft_.error(span,
                 "the bisector of an angle at " + draft_.names.of(corner.id) + " starts at " +
                     draft_.names.of(corner.id),
                 "name the bisector by " + draft_.names.of(corner.id) + " and a point on it");
    return;
  }
  const Placed on = subject.a.id == corner.id ? subject.b : subject.a;
  add(Predicate::bisects, {on, angle.letters[0], corner, angle.letters[2]}, span);
}

void Reader::line_verb(const Node& verb, const Line& subject, Span span) {
  const Part said = verb.part;
  const std::vector<Placed> at = points_in(verb);
  const Node* circle_node = verb.child(Part::circle);
  if (said == Part::says) {
    says(verb, {subject.a, subject.b}, span);
  } else if (said == Part::parallel_to) {
    std::vector<Line> row = {subject};
    for (const Line& other : lines(verb)) row.push_back(other);
    pairwise(Predicate::parallel, row, span);
  } else if (said == Part::perpendicular_to) {
    const Line other = line(*line_node(verb));
    pairwise(Predicate::perpendicular, {subject, other}, span);
    if (!at.empty()) meet(at[0], subject, other, span);
  } else if (said == Part::bisector) {
    bisects(subject, angle(verb.children.front()), span);
  } else if (said == Part::bisects_segment) {
    const Line whole = line(*line_node(verb));
    if (at.empty()) {
      draft_.error(span, "where does " + source(span) + "? The point needs a letter",
                   "write \"" + source(span) + " at P\"");
      return;
    }
    add(Predicate::midpoint, {at[0], whole.a, whole.b}, span);
    add(Predicate::on_line, {at[0], subject.a, subject.b}, span);
  } else if (said == Part::median || said == Part::altitude) {
    cevian(subject, verb, span);
  } else if (said == Part::diameter) {
    add(Predicate::diameter, {subject.a, subject.b, centre(circle(*circle_node), span)}, span);
  } else if (said == Part::chord) {
    if (circle_node != nullptr) on_circle({subject.a, subject.b}, verb, span);
  } else if (said == Part::radius) {
    const Placed middle = centre(circle(*circle_node), span);
    const bool second = middle.id == subject.b.id;
    add(Predicate::circle, {second ? subject.b : subject.a, second ? subject.a : subject.b}, span);
    draft_.name_circle((second ? subject.b : subject.a).id, {second ? subject.a : subject.b});
  } else if (said == Part::tangent) {
    const ReadCircle touched =
        circle_node != nullptr ? circle(*circle_node) : ReadCircle{{stand_in::the_circle, verb.span}, {}};
    tangent(subject, touched, at.empty() ? nullptr : &at[0], span);
  } else if (said == Part::produced) {
    const bool back = at.size() == 2 && at[0].id == subject.a.id;
    add(Predicate::line_order, {back ? subject.b : subject.a, back ? subject.a : subject.b, at.back()}, span);
  } else if (said == Part::meets) {
    const std::vector<Line> others = lines(verb);
    for (std::size_t i = 0; i < others.size() && i < at.size(); ++i) {
      const Node& other = *line_node(verb, i);
      const bool own = at[i].id == subject.a.id || at[i].id == subject.b.id;
      if (own) {
        on_line(at[i], other, span);
      } else {
        meet(at[i], subject, others[i], span);
      }
    }
  } else if (said == Part::meets_circle) {
    on_circle(at, verb, span);
    for (const Placed& point : at) {
      if (point.id != subject.a.id && point.id != subject.b.id)
        add(Predicate::on_line, {point, subject.a, subject.b}, span);
    }
  } else if (said == Part::contains) {
    add(Predicate::on_line, {at[0], subject.a, subject.b}, span);
  } else {  // "is drawn"
    add(Predicate::line_order, {subject.a, subject.b}, span);
  }
}

void Reader::several_lines_verb(const Node& verb, const std::vector<Line>& subjects, bool inner, Span span) {
  const Part said = verb.part;
  const std::vector<Placed> at = points_in(verb);
  if (said == Part::are_parallel) {
    pairwise(Predicate::parallel, subjects, span);
  } else if (said == Part::are_perpendicular) {
    if (subjects.size() > 2)
      draft_.error(span, "only two lines can be perpendicular to each other",
                   "say it for two lines at a time");
    pairwise(Predicate::perpendicular, subjects, span);
    if (!at.empty()) meet(at[0], subjects[0], subjects[1], span);
  } else if (said == Part::meet_at || said == Part::cross_at) {
    if (const Node* transversal = line_node(verb)) {
      const Line cut = line(*transversal);
      if (at.size() != subjects.size())
        draft_.error(span, "each line is cut at one point",
                     "name as many points as lines, in the same order");
      for (std::size_t i = 0; i < subjects.size() && i < at.size(); ++i) meet(at[i], subjects[i], cut, span);
      return;
    }
    const bool cross = inner || said == Part::cross_at;
    for (std::size_t i = 0; i + 1 < subjects.size(); ++i) {
      add(cross ? Predicate::cross : Predicate::meet,
          {at[0], subjects[i].a, subjects[i].b, subjects[i + 1].a, subjects[i + 1].b}, span);
    }
  } else if (said == Part::produced_to_meet) {
    for (const Line& subject : subjects) add(Predicate::line_order, {subject.a, subject.b, at[0]}, span);
  } else if (said == Part::bisect_each_other) {
    if (at.empty()) {
      draft_.error(span, "the point where they bisect each other needs a letter",
                   "write \"… bisect each other at P\"");
      return;
    }
    for (const Line& subject : subjects) add(Predicate::midpoint, {at[0], subject.a, subject.b}, span);
  } else if (said == Part::tangents) {
    const Node* circle_node = verb.child(Part::circle);
    const ReadCircle touched =
        circle_node != nullptr ? circle(*circle_node) : ReadCircle{{stand_in::the_circle, verb.span}, {}};
    // "from P" names where they start, "at S and T" where they touch. Two lines with a letter in common start
    // there.
    const Node* from = verb.child(Part::from);
    const PointId start = from != nullptr ? points_in(*from).front().id : PointId{};
    for (std::size_t i = 0; i < subjects.size(); ++i) {
      const Line& one = subjects[i];
      const Line& next = subjects[(i + 1) % subjects.size()];
      const auto listed = [&](Placed p) {
        return std::any_of(at.begin(), at.end(), [&](Placed q) { return q.id == p.id; });
      };
      const bool first_shared = one.a.id == next.a.id || one.a.id == next.b.id;
      const bool touch_a = !at.empty()       ? listed(one.a) && !listed(one.b)
                           : from != nullptr ? one.b.id == start
                                             : !first_shared;
      tangent(one, touched, touch_a ? &one.a : &one.b, span);
    }
  } else {
    for (const Line& subject : subjects) line_verb(verb, subject, span);
  }
}

// The triangle in which a median or altitude is drawn: the last one named that has an end of it as a corner.
const std::vector<PointId>* Reader::triangle_at(const Line& subject) const {
  const auto has = [](const std::vector<PointId>& corners, PointId p) {
    return std::find(corners.begin(), corners.end(), p) != corners.end();
  };
  for (auto it = draft_.polygons.rbegin(); it != draft_.polygons.rend(); ++it) {
    if (it->size() == 3 && (has(*it, subject.a.id) || has(*it, subject.b.id))) return &*it;
  }
  return nullptr;
}

void Reader::cevian(const Line& subject, const Node& verb, Span span) {
  const std::vector<Placed> from = points_in(verb);
  if (const Node* side = line_node(verb)) {  // "KP is the perpendicular from K to LM"
    const Line base = line(*side);
    const bool second = !from.empty() && from[0].id == subject.b.id;
    add(Predicate::foot, {second ? subject.a : subject.b, second ? subject.b : subject.a, base.a, base.b},
        span);
    return;
  }
  const char* what = verb.part == Part::median ? "median" : "altitude";
  if (verb.child(Part::letters) != nullptr) {
    const std::vector<Placed> corners = letters(verb);
    draft_.name_polygon(corners);
    if (corners.size() == 3) add(Predicate::triangle, corners, span);
  }
  const std::vector<PointId>* triangle = triangle_at(subject);
  if (triangle == nullptr) {
    draft_.error(span, std::string("of which triangle is this the ") + what + "?",
                 std::string("write \"… is ") + (verb.part == Part::median ? "a " : "an ") + what +
                     " of triangle KLM\"");
    return;
  }
  const auto corner = [&](PointId p) {
    return std::find(triangle->begin(), triangle->end(), p) != triangle->end();
  };
  const bool from_first = corner(subject.a.id);
  const Placed top = from_first ? subject.a : subject.b, foot = from_first ? subject.b : subject.a;
  std::vector<Placed> row = {foot};
  if (verb.part == Part::altitude) row.push_back(top);
  for (const PointId p : *triangle) {
    if (p != top.id) row.push_back({p, verb.span});
  }
  add(verb.part == Part::median ? Predicate::midpoint : Predicate::foot, row, span);
}

}  // namespace prover
