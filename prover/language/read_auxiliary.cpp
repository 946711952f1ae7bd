// Lines drawn in addition: which points they bring in, and what fixes them. A new point that has no name gets a letter
// that stands nowhere in the text.
#include <algorithm>

#include "prover/language/reader.hpp"

namespace prover {

namespace {

bool has_end(const Line& line, PointId p) {
  return line.a.id == p || line.b.id == p;
}

std::vector<const Node*> all_of(const Node& node, Part part) {
  std::vector<const Node*> found;
  for (const Node& child : node.children)
    if (child.part == part) found.push_back(&child);
  return found;
}

}  // namespace

Placed Reader::fresh(Span span) {
  return {draft_.fresh_point(), span};
}

// The i-th of the points named there, or a fresh one when none is named.
Placed Reader::named_or_fresh(const std::vector<Placed>& named, std::size_t i, Span span) {
  return named.empty() ? fresh(span) : named[std::min(i, named.size() - 1)];
}

bool Reader::as_many(std::size_t names, std::size_t wanted, Span span) {
  if (names == 0 || names == wanted) return true;
  draft_.error(span, std::to_string(names) + (names == 1 ? " point is" : " points are") + " named where " +
                         std::to_string(wanted) + (wanted == 1 ? " is drawn" : " are drawn"),
               "name as many points as are drawn, in the same order, or none");
  return false;
}

void Reader::meets_there(Placed point, const Node& meeting, Span span) {
  if (meeting.child(Part::circle) != nullptr) {
    on_circle({point}, meeting, span);
  } else {
    on_line(point, *line_node(meeting), span);
  }
}

// The triangles of the text that have all these corners.
std::vector<std::vector<PointId>> Reader::triangles_with(const std::vector<PointId>& corners) const {
  std::vector<std::vector<PointId>> found;
  for (const std::vector<PointId>& polygon : draft_.polygons) {
    const bool all = std::all_of(corners.begin(), corners.end(), [&](PointId p) {
      return std::find(polygon.begin(), polygon.end(), p) != polygon.end();
    });
    if (all && polygon.size() == 3) found.push_back(polygon);
  }
  return found;
}

// "On the side of FG where D lies", "outside triangle KLM": which of two places the new point has.
void Reader::on_sides(Placed point, const Line* wall, const Node& node, Span span) {
  for (const Node& child : node.children) {
    const bool by_triangle = child.part == Part::outer_side || child.part == Part::inner_side;
    if (!by_triangle && child.part != Part::near_side && child.part != Part::far_side) continue;
    const bool same = child.part == Part::near_side || child.part == Part::inner_side;
    const Node* named = line_node(child);
    if (named == nullptr && wall == nullptr) {
      draft_.error(child.span, "of which line is this the side?", "write \"on the side of KL where M lies\"");
      return;
    }
    const Line border = named != nullptr ? line(*named) : *wall;
    Placed other{{}, child.span};
    if (!by_triangle) {
      other = points_in(child).back();
    } else {
      std::vector<std::vector<PointId>> triangles = triangles_with({border.a.id, border.b.id});
      if (child.child(Part::letters) != nullptr) {
        const std::vector<Placed> corners = letters(child);
        triangles = {{}};
        for (const Placed& corner : corners) triangles[0].push_back(corner.id);
      }
      for (const PointId p : triangles.empty() ? std::vector<PointId>() : triangles[0])
        if (p != border.a.id && p != border.b.id) other.id = p;
      if (triangles.size() != 1 || triangles[0].size() != 3 || !other.id.valid()) {
        draft_.error(child.span, "of which triangle with the side " + draft_.letters({border.a, border.b}) + "?",
                     "write \"on the other side of " + draft_.letters({border.a, border.b}) + " from M\"");
        return;
      }
    }
    add(same ? Predicate::same_side : Predicate::opposite_sides, {point, other, border.a, border.b}, span);
  }
}

bool Reader::says_side(const Node& node) const {
  return node.child(Part::near_side) != nullptr || node.child(Part::far_side) != nullptr ||
         node.child(Part::outer_side) != nullptr || node.child(Part::inner_side) != nullptr;
}

void Reader::drawn_line(const Node& node) {
  const Node* direction = node.child(Part::parallel_to);
  const Predicate said = direction != nullptr ? Predicate::parallel : Predicate::perpendicular;
  if (direction == nullptr) direction = node.child(Part::perpendicular_to);
  const std::vector<Placed> through = points_in(node);
  const Node* named = line_node(node);
  if (named != nullptr) {
    named_line(node, said, line(*direction->children.begin()), through);
    return;
  }
  const Line guide = line(*line_node(*direction));
  const Placed start = through.front();
  if (said == Predicate::parallel && has_end(guide, start.id)) {
    draft_.error(node.span, draft_.names.of(start.id) + " lies on " + draft_.letters({guide.a, guide.b}) +
                                ", so the parallel through it is the same line",
                 "take a point that is not on the line");
    return;
  }
  const std::vector<const Node*> meetings = all_of(node, Part::meeting);
  if (meetings.empty() && !says_side(node)) {
    if (node.child(Part::ray) != nullptr) {
      draft_.error(node.span, "to which side does the ray go?",
                   "write \"… on the side of KL where M lies\", or draw the line");
      return;
    }
    const Placed one = fresh(node.span), other = fresh(node.span);
    add(Predicate::line_order, {one, start, other}, node.span);
    add(said, {one, other, guide.a, guide.b}, node.span);
    // Which of the two is which is ours to say: `one` to `other` as the line beside it is named.
    if (said == Predicate::parallel && !stand_in::is_lettered(guide.a.id))
      add(Predicate::same_side, {other, guide.b, start, guide.a}, node.span);
    return;
  }
  Placed end{};
  for (const Node* meeting : meetings) {
    const Placed met = named_or_fresh(points_in(*meeting), 0, node.span);
    if (end.id.valid()) {
      add(Predicate::on_line, {met, start, end}, node.span);
    } else {
      end = met;
      add(said, {start, end, guide.a, guide.b}, node.span);
    }
    meets_there(met, *meeting, node.span);
  }
  if (!end.id.valid()) {
    end = fresh(node.span);
    add(said, {start, end, guide.a, guide.b}, node.span);
  }
  on_sides(end, nullptr, node, node.span);
}

// "Draw KP parallel to LM", "draw the line PQ through K parallel to LM".
void Reader::named_line(const Node& node, Predicate said, const Line& guide, const std::vector<Placed>& through) {
  const Line drawn = line(*line_node(node));
  if (!through.empty() && !has_end(drawn, through[0].id)) {
    add(Predicate::line_order, {drawn.a, through[0], drawn.b}, node.span);
    draft_.assumptions.push_back(draft_.names.of(through[0].id) + " lies between " + draft_.names.of(drawn.a.id) +
                                 " and " + draft_.names.of(drawn.b.id) +
                                 "; if it does not, write their order on the line");
  }
  add(said, {drawn.a, drawn.b, guide.a, guide.b}, node.span);
  const Placed end = !through.empty() && through[0].id == drawn.b.id ? drawn.a : drawn.b;
  for (const Node* meeting : all_of(node, Part::meeting)) {
    const std::vector<Placed> at = points_in(*meeting);
    const Placed met = at.empty() ? end : at[0];
    if (!has_end(drawn, met.id)) add(Predicate::on_line, {met, drawn.a, drawn.b}, node.span);
    meets_there(met, *meeting, node.span);
  }
  on_sides(end, nullptr, node, node.span);
}

void Reader::drawn_ray(const Node& node) {
  const bool whole_line = line_node(node) != nullptr;  // "draw DO meeting EF": beyond O or not
  const std::vector<Placed> at = whole_line ? std::vector<Placed>() : points_in(node);
  const Line drawn = whole_line ? line(*line_node(node)) : Line{at[0], at[1]};
  if (!whole_line) draft_.name_segment(drawn.a.id, drawn.b.id);
  const std::vector<const Node*> meetings = all_of(node, Part::meeting);
  for (const Node* meeting : meetings) {
    const Placed met = named_or_fresh(points_in(*meeting), 0, node.span);
    if (!has_end(drawn, met.id))
      add(whole_line ? Predicate::on_line : Predicate::on_ray, {met, drawn.a, drawn.b}, node.span);
    meets_there(met, *meeting, node.span);
  }
  if (meetings.empty()) add(Predicate::line_order, {drawn.a, drawn.b, fresh(node.span)}, node.span);
}

void Reader::drawn_angle(const Node& node) {
  const Placed corner = points_in(node).front();
  const Line arm = line(*line_node(node));
  if (!has_end(arm, corner.id)) {
    draft_.error(node.span, "an angle at " + draft_.names.of(corner.id) + " has an arm that starts at " +
                                draft_.names.of(corner.id) + "; " + draft_.letters({arm.a, arm.b}) + " does not",
                 "name the arm by " + draft_.names.of(corner.id) + " and another point");
    return;
  }
  const Node* meeting = node.child(Part::meeting);
  if (meeting == nullptr && !says_side(node)) {
    draft_.error(node.span, "on which side of " + draft_.letters({arm.a, arm.b}) + " is the angle drawn?",
                 "write \"… on the side of M\", or which line the ray meets");
    return;
  }
  const Placed end = meeting != nullptr ? named_or_fresh(points_in(*meeting), 0, node.span) : fresh(node.span);
  const Expression size = expression(*node.child(Part::expression));
  for (const Term& term : size.terms)
    if (std::holds_alternative<Segment>(term.quantity)) {
      draft_.error(size.span, "an angle has no length", "write an angle or a number of degrees");
      return;
    }
  const Placed other = arm.a.id == corner.id ? arm.b : arm.a;
  const Angle drawn{other.id, corner.id, end.id};
  compare({Expression{{Term{1, drawn, node.span}}, node.span}, size}, {Comparison::equal}, node.span);
  // The ray to the other side of the arm would meet the same line again: the side of the figure is meant.
  if (meeting != nullptr && meeting->child(Part::circle) == nullptr && !says_side(node) &&
      !words(*line_node(*meeting)).starts_with("line") && !words(*line_node(*meeting)).starts_with("the line")) {
    const Line met = line(*line_node(*meeting));
    add(Predicate::on_segment, {end, met.a, met.b}, node.span);
  } else if (meeting != nullptr) {
    meets_there(end, *meeting, node.span);
  }
  on_sides(end, &arm, node, node.span);
}

void Reader::drawn_produced(const Node& node) {
  const std::vector<Line> produced = lines(node);
  const Node* meeting = node.child(Part::meeting);
  const Node* together = node.child(Part::meeting_together);
  const Node* beyond = node.child(Part::from);
  std::vector<Placed> named;
  if (meeting != nullptr) named = points_in(*meeting);
  if (const Node* ends = node.child(Part::at_feet)) named = points_in(*ends);
  if (together == nullptr && !as_many(named.size(), produced.size(), node.span)) return;
  if (together != nullptr) named = {named_or_fresh(points_in(*together), 0, node.span)};
  const bool own_length = node.child(Part::own_length) != nullptr;
  if (meeting == nullptr && together == nullptr && named.empty() && beyond == nullptr && !own_length) {
    const Line& first = produced.front();
    draft_.error(node.span, "how far is " + draft_.letters({first.a, first.b}) + " produced?",
                 "write \"produce " + draft_.letters({first.a, first.b}) + " beyond " + draft_.names.of(first.b.id) +
                     "\", or what it meets");
    return;
  }
  for (std::size_t i = 0; i < produced.size(); ++i) {
    Line one = produced[i];
    if (beyond != nullptr) {
      const Placed past = points_in(*beyond).front();
      if (!has_end(one, past.id)) {
        draft_.error(node.span, draft_.letters({one.a, one.b}) + " does not end in " + draft_.names.of(past.id),
                     "produce it beyond " + draft_.names.of(one.a.id) + " or " + draft_.names.of(one.b.id));
        return;
      }
      if (past.id == one.a.id) std::swap(one.a, one.b);
    }
    const Placed end = named_or_fresh(named, i, node.span);
    add(Predicate::line_order, {one.a, one.b, end}, node.span);
    if (meeting != nullptr) meets_there(end, *meeting, node.span);
    if (!own_length) continue;
    const auto length = [&](Placed a, Placed b) {
      return Expression{{Term{1, Segment{a.id, b.id}, node.span}}, node.span};
    };
    compare({length(one.b, end), length(one.a, one.b)}, {Comparison::equal}, node.span);
  }
}

void Reader::join(const Node& node) {
  for (const Line& one : lines(node)) add(Predicate::line_order, {one.a, one.b}, node.span);
}

// "Join O to W, L and N", "join U and V to K and to M": each of the first with each of the others.
void Reader::join_to(const Node& node) {
  const auto ends = [&](const Node& list) {
    std::vector<Placed> row;
    for (const Node& child : list.children) {
      if (child.part == Part::point) row.push_back(point(child));
      if (child.part != Part::the_centre) continue;
      const Node* of = child.child(Part::circle);
      row.push_back(of != nullptr ? centre(circle(*of), child.span) : Placed{stand_in::the_circle, child.span});
    }
    return row;
  };
  const std::vector<Placed> from = ends(*node.child(Part::from)), to = ends(*node.child(Part::subject));
  for (const Placed& one : from)
    for (const Placed& other : to) {
      if (one.id == other.id) {
        draft_.error(other.span, draft_.names.of(one.id) + " cannot be joined to itself", "name two different points");
        return;
      }
      add(Predicate::line_order, {one, other}, node.span);
      if (one.id != stand_in::the_circle && other.id != stand_in::the_circle) draft_.name_segment(one.id, other.id);
    }
}

}  // namespace prover
