// Points and figures constructed in addition: feet of perpendiculars, midpoints, ends of diameters, points of contact,
// figures put on a side.
#include <algorithm>

#include "prover/language/reader.hpp"

namespace prover {

namespace {

std::vector<const Node*> meetings_of(const Node& node) {
  std::vector<const Node*> found;
  for (const Node& child : node.children)
    if (child.part == Part::meeting) found.push_back(&child);
  return found;
}

}  // namespace

void Reader::drawn_foot(const Node& node) {
  const std::vector<Placed> from = points_in(node);
  const std::vector<Line> bases = lines(node);
  std::vector<Placed> feet;
  if (const Node* named = node.child(Part::at_feet)) feet = points_in(*named);
  Placed top{};
  if (const Node* subject = node.child(Part::subject)) {  // "the perpendicular KP from K to LM"
    const Line drawn = line(*line_node(*subject));
    const bool second = !from.empty() && drawn.b.id == from[0].id;
    top = second ? drawn.b : drawn.a;
    feet = {second ? drawn.a : drawn.b};
  } else {
    top = from.front();
  }
  if (!as_many(feet.size(), bases.size(), node.span)) return;
  for (std::size_t i = 0; i < bases.size(); ++i)
    add(Predicate::foot, {named_or_fresh(feet, i, node.span), top, bases[i].a, bases[i].b}, node.span);
}

// "The altitude from K": of the only triangle that has this corner, or of the one that is named.
void Reader::drawn_cevian(const Node& node) {
  const bool median = node.child(Part::median) != nullptr;
  const std::vector<Placed> from = points_in(node);
  const Node* subject = node.child(Part::subject);
  Line drawn{};
  if (subject != nullptr) drawn = line(*line_node(*subject));
  std::vector<std::vector<PointId>> triangles;
  if (const Node* base = line_node(node)) {
    const Line side = line(*base);
    const Placed corner = !from.empty() ? from[0] : drawn.a;
    triangles = {{corner.id, side.a.id, side.b.id}};
  } else if (node.child(Part::letters) != nullptr) {
    const std::vector<Placed> corners = letters(*node.child(Part::letters));
    triangles.emplace_back();
    for (const Placed& corner : corners) triangles[0].push_back(corner.id);
    draft_.name_polygon(corners);
  } else if (!from.empty()) {
    triangles = triangles_with({from[0].id});
  } else {
    triangles = triangles_with({drawn.a.id});
    if (triangles.empty()) triangles = triangles_with({drawn.b.id});
  }
  const auto corner = [&](PointId p) {
    return std::find(triangles[0].begin(), triangles[0].end(), p) != triangles[0].end();
  };
  const bool one = triangles.size() == 1 && triangles[0].size() == 3;
  const bool starts = one && (subject != nullptr ? corner(drawn.a.id) || corner(drawn.b.id) : corner(from[0].id));
  if (!starts) {
    draft_.error(node.span, std::string("of which triangle is this the ") + (median ? "median" : "altitude") + "?",
                 std::string("write \"") + (median ? "the median" : "the altitude") +
                     " from K of triangle KLM\", K being a corner");
    return;
  }
  const bool second = subject != nullptr && !corner(drawn.a.id);
  const Placed top = subject == nullptr ? from[0] : second ? drawn.b : drawn.a;
  std::vector<Placed> feet;
  if (const Node* named = node.child(Part::at_feet)) feet = points_in(*named);
  if (subject != nullptr) feet = {second ? drawn.a : drawn.b};
  std::vector<Placed> row = {named_or_fresh(feet, 0, node.span)};
  if (!median) row.push_back(top);
  for (const PointId p : triangles[0])
    if (p != top.id) row.push_back({p, node.span});
  add(median ? Predicate::midpoint : Predicate::foot, row, node.span);
}

void Reader::drawn_bisector(const Node& node) {
  const ReadAngle whole = angle(*node.child(Part::angle));
  if (arms_of(whole, node.span).size() != 3) return;
  const std::vector<const Node*> meetings = meetings_of(node);
  Placed end{};
  if (const Node* named = line_node(node)) {
    const Line drawn = line(*named);
    bisects(drawn, whole, node.span);
    end = drawn.a.id == whole.letters[1].id ? drawn.b : drawn.a;
  }
  for (const Node* meeting : meetings) {
    const std::vector<Placed> at = points_in(*meeting);
    Placed met = !at.empty() ? at[0] : end.id.valid() && meetings.size() == 1 ? end : fresh(node.span);
    if (!end.id.valid()) {
      end = met;
      add(Predicate::bisects, {end, whole.letters[0], whole.letters[1], whole.letters[2]}, node.span);
    } else if (met.id != end.id) {
      add(Predicate::on_line, {met, whole.letters[1], end}, node.span);
    }
    meets_there(met, *meeting, node.span);
  }
  if (end.id.valid()) return;
  add(Predicate::bisects, {fresh(node.span), whole.letters[0], whole.letters[1], whole.letters[2]}, node.span);
}

void Reader::drawn_midpoint(const Node& node) {
  const std::vector<Placed> named = points_in(node);
  const std::vector<Line> sides = lines(node);
  if (!as_many(named.size(), sides.size(), node.span)) return;
  for (std::size_t i = 0; i < sides.size(); ++i)
    add(Predicate::midpoint, {named_or_fresh(named, i, node.span), sides[i].a, sides[i].b}, node.span);
}

void Reader::drawn_centre(const Node& node) {
  const std::size_t before = phrases_->size();
  centre_of({fresh(node.span)}, node.children.front(), node.span);
  // That the triangle is one is not for the drawing to say.
  const auto said = phrases_->begin() + static_cast<std::ptrdiff_t>(before);
  phrases_->erase(std::remove_if(said, phrases_->end(), [](const Phrase& p) { return p.predicate == Predicate::triangle; }),
                  phrases_->end());
}

void Reader::drawn_perpendicular_bisector(const Node& node) {
  const Line whole = line(*line_node(node));
  const Placed middle = fresh(node.span);
  add(Predicate::midpoint, {middle, whole.a, whole.b}, node.span);
  const std::vector<const Node*> meetings = meetings_of(node);
  for (const Node* meeting : meetings) {
    const Placed met = named_or_fresh(points_in(*meeting), 0, node.span);
    add(Predicate::perpendicular, {middle, met, whole.a, whole.b}, node.span);
    meets_there(met, *meeting, node.span);
  }
  if (!meetings.empty()) return;
  const Placed end = fresh(node.span);
  add(Predicate::perpendicular, {middle, end, whole.a, whole.b}, node.span);
  on_sides(end, &whole, node, node.span);
}

void Reader::drawn_diameter(const Node& node) {
  const Node* named = node.child(Part::circle);
  const ReadCircle round = named != nullptr ? circle(*named) : ReadCircle{{stand_in::the_circle, node.span}, {}};
  if (const Node* whole = line_node(node)) {
    const Line ends = line(*whole);
    add(Predicate::diameter, {ends.a, ends.b, centre(round, node.span)}, node.span);
    return;
  }
  const Placed start = points_in(node).front();
  Placed end{};
  const std::vector<const Node*> meetings = meetings_of(node);
  for (const Node* meeting : meetings)
    if (meeting->child(Part::circle) != nullptr) end = named_or_fresh(points_in(*meeting), 0, node.span);
  if (!end.id.valid()) end = fresh(node.span);
  add(Predicate::diameter, {start, end, centre(round, node.span)}, node.span);
  for (const Node* meeting : meetings) {
    if (meeting->child(Part::circle) != nullptr) continue;
    const Placed met = named_or_fresh(points_in(*meeting), 0, node.span);
    add(Predicate::on_line, {met, start, end}, node.span);
    meets_there(met, *meeting, node.span);
  }
}

// Without a meeting point a tangent gets a point on either side of the point of contact.
void Reader::drawn_tangent(const Node& node) {
  const Node* named = node.child(Part::circle);
  const ReadCircle touched = named != nullptr ? circle(*named) : ReadCircle{{stand_in::the_circle, node.span}, {}};
  std::vector<Placed> at = points_in(node);
  if (const Node* subject = node.child(Part::subject)) {
    tangent(line(*line_node(*subject)), touched, at.empty() ? nullptr : &at[0], node.span);
    return;
  }
  const std::vector<const Node*> meetings = meetings_of(node);
  const Node* together = node.child(Part::meeting_together);
  const std::vector<Placed> met = meetings.empty() ? std::vector<Placed>() : points_in(*meetings[0]);
  if (!as_many(met.size(), at.size(), node.span)) return;
  Placed common{};
  if (together != nullptr) {
    if (at.size() < 2) {
      draft_.error(together->span, "one tangent alone meets nothing", "name the line that it meets");
      return;
    }
    common = named_or_fresh(points_in(*together), 0, node.span);
  }
  for (std::size_t i = 0; i < at.size(); ++i) {
    if (together != nullptr) {
      tangent({common, at[i]}, touched, &at[i], node.span);
      continue;
    }
    const Placed end = named_or_fresh(met, i, node.span);
    tangent({end, at[i]}, touched, &at[i], node.span);
    if (!meetings.empty()) {
      meets_there(end, *meetings[0], node.span);
      for (std::size_t k = 1; k < meetings.size(); ++k) {
        const Placed next = named_or_fresh(points_in(*meetings[k]), i, node.span);
        add(Predicate::on_line, {next, at[i], end}, node.span);
        meets_there(next, *meetings[k], node.span);
      }
    } else if (says_side(node)) {
      on_sides(end, nullptr, node, node.span);
    } else {
      add(Predicate::line_order, {end, at[i], fresh(node.span)}, node.span);
    }
  }
}

void Reader::drawn_tangents_from(const Node& node) {
  const std::vector<Placed> at = points_in(node);  // from P, at S and T
  const Node* named = node.child(Part::circle);
  const ReadCircle touched = named != nullptr ? circle(*named) : ReadCircle{{stand_in::the_circle, node.span}, {}};
  for (const std::size_t i : {1u, 2u}) {
    const Placed contact = at.size() > i ? at[i] : fresh(node.span);
    tangent({at[0], contact}, touched, &contact, node.span);
  }
}

// "Build the equilateral triangle KLX on KL, outside triangle KLM".
void Reader::build(const Node& node) {
  const bool square = node.child(Part::square) != nullptr;
  const std::size_t wanted = square ? 4 : 3;
  std::vector<Placed> corners;
  if (node.child(Part::letters) != nullptr) corners = letters(*node.child(Part::letters));
  const Node* base = line_node(node);
  Line side{};
  if (base != nullptr) side = line(*base);
  if (base == nullptr && corners.size() >= 2) side = {corners[0], corners[1]};
  if (!side.a.id.valid()) {
    draft_.error(node.span, std::string("on which side is the ") + (square ? "square" : "triangle") + " built?",
                 "write \"… on KL, on the other side from M\"");
    return;
  }
  if (!corners.empty() && corners.size() != wanted) {
    draft_.error(node.span, std::string(square ? "a square has four corners; " : "a triangle has three corners; ") +
                                draft_.letters(corners) + " has " + std::to_string(corners.size()),
                 "name each corner by one letter, in order round it");
    return;
  }
  if (corners.empty()) {
    corners = {side.a, side.b, fresh(node.span)};
    if (square) corners.push_back(fresh(node.span));
  }
  std::vector<Placed> built;
  for (const Placed& corner : corners)
    if (corner.id != side.a.id && corner.id != side.b.id) built.push_back(corner);
  if (built.size() + 2 != wanted) {
    draft_.error(node.span, draft_.letters(corners) + " does not stand on " + draft_.letters({side.a, side.b}),
                 "name the ends of the side among its corners");
    return;
  }
  if (!says_side(node)) {
    draft_.error(node.span, "on which side of " + draft_.letters({side.a, side.b}) + "?",
                 "write \"… on the side of M\", \"… on the other side from M\" or \"… outside triangle KLM\"");
    return;
  }
  add(square ? Predicate::square : Predicate::equilateral, corners, node.span);
  on_sides(built.front(), &side, node, node.span);
}

// "Draw the tangent", "join K", "draw a line through K": nothing fixes what is drawn.
void Reader::drawn_vaguely(const Node& node) {
  draft_.error(node.span, "what fixes this line is not said",
               "say where it starts and where it goes, for example \"draw through K the line parallel to LM\", "
               "\"draw the tangent at K\" or \"join KL\"");
}

// The mirror image: the line is the perpendicular bisector of the point and its image.
void Reader::mirror(const Node& node) {
  const std::vector<Placed> at = points_in(node);
  const Line axis = line(*line_node(node));
  if (axis.a.id == at[0].id || axis.b.id == at[0].id) {
    draft_.error(node.span, draft_.names.of(at[0].id) + " lies on " + draft_.letters({axis.a, axis.b}) +
                                ", so it is its own mirror image",
                 "mirror a point that is not on the line");
    return;
  }
  const Placed image = at.size() > 1 ? at[1] : fresh(node.span);
  add(Predicate::perpendicular_bisector, {axis.a, axis.b, at[0], image}, node.span);
}

}  // namespace prover
