// Lines that have no name but what they do ("the bisector of angle K meets LM at P"), and what is drawn in
// addition ("join LN", "draw through K the line PQ parallel to LM").
#include "prover/language/reader.hpp"

namespace prover {

namespace {

bool has_end(const Line& line, PointId p) {
  return line.a.id == p || line.b.id == p;
}

std::size_t count(const std::string& text, std::string_view word) {
  std::size_t found = 0;
  for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) ++found;
  return found;
}

}  // namespace

void Reader::bisector_meets(const Node& node) {
  const ReadAngle whole = angle(node.children.front());
  const Placed foot = points_in(node).back();
  if (whole.letters.size() != 3) return;
  bisects({whole.letters[1], foot}, whole, node.span);
  on_line(foot, *line_node(node), node.span);
}

void Reader::tangent_meets(const Node& node) {
  const std::vector<Placed> at = points_in(node);
  const Node* circle_node = node.child(Part::circle);
  const ReadCircle touched =
      circle_node != nullptr ? circle(*circle_node) : ReadCircle{{stand_in::the_circle, node.span}, {}};
  const Line other = line(*line_node(node));
  tangent({at[1], at[0]}, touched, &at[0], node.span);
  if (words(node).find("produced") != std::string::npos) {
    add(Predicate::line_order, {other.a, other.b, at[1]}, node.span);
  } else {
    on_line(at[1], *line_node(node), node.span);
  }
}

void Reader::line_through(const Node& node) {
  const std::vector<Placed> at = points_in(node);
  const Node* direction = node.child(Part::parallel_to);
  const bool parallel = direction != nullptr || (node.child(Part::perpendicular_to) == nullptr &&
                                                 words(node).find("perpendicular") == std::string::npos);
  if (direction == nullptr) direction = node.child(Part::perpendicular_to);
  const Line guide = direction != nullptr ? line(*line_node(*direction)) : line(*line_node(node));
  const Predicate said = parallel ? Predicate::parallel : Predicate::perpendicular;
  if (at.size() == 2) {  // "the line through K parallel to LM meets NP at Q"
    const Node& met = *line_node(node, direction != nullptr ? 0 : 1);
    add(said, {at[0], at[1], guide.a, guide.b}, node.span);
    on_line(at[1], met, node.span);
    return;
  }
  const Line drawn = line(*line_node(node));  // "the line PQ through K parallel to LM"
  if (!has_end(drawn, at[0].id)) {
    add(Predicate::line_order, {drawn.a, at[0], drawn.b}, node.span);
    draft_.assumptions.push_back(draft_.names.of(at[0].id) + " lies between " + draft_.names.of(drawn.a.id) +
                                 " and " + draft_.names.of(drawn.b.id) +
                                 "; if it does not, write their order on the line");
  }
  add(said, {drawn.a, drawn.b, guide.a, guide.b}, node.span);
}

void Reader::produced_meets(const Node& node) {
  const std::vector<Line> both = lines(node);
  const Placed at = points_in(node).back();
  add(Predicate::line_order, {both[0].a, both[0].b, at}, node.span);
  const std::string written = words(node);
  if (count(written, "produced") + count(written, "extended") > 1) {
    add(Predicate::line_order, {both[1].a, both[1].b, at}, node.span);
  } else {
    on_line(at, *line_node(node, 1), node.span);
  }
}

void Reader::diagonals_meet(const Node& node) {
  const std::vector<Placed> corners = letters(*node.child(Part::letters));
  if (corners.size() != 4) {
    draft_.error(node.span, "only a quadrilateral has two diagonals that can meet in one point",
                 "name four corners, in order round it");
    return;
  }
  draft_.name_polygon(corners);
  add(Predicate::cross, {points_in(node).front(), corners[0], corners[2], corners[1], corners[3]}, node.span);
}

// One point on the perpendicular bisector of LM says PL = PM; two points name the line itself.
void Reader::perpendicular_bisector_meets(const Node& node) {
  const Line whole = line(*line_node(node));
  const std::vector<Placed> at = points_in(node);
  for (std::size_t i = 0; i < at.size(); ++i) on_line(at[i], *line_node(node, i + 1), node.span);
  if (at.size() > 1) {
    add(Predicate::perpendicular_bisector, {at[0], at[1], whole.a, whole.b}, node.span);
    return;
  }
  const auto length = [&](Placed end) {
    return Expression{{Term{1, Segment{at[0].id, end.id}, node.span}}, node.span};
  };
  compare({length(whole.a), length(whole.b)}, {Comparison::equal}, node.span);
}

void Reader::draw_perpendicular(const Node& node) {
  const std::vector<Placed> at = points_in(node);
  const std::vector<Line> both = lines(node);
  if (both.size() == 2) {  // "draw the perpendicular KP from K to LM"
    const bool second = both[0].b.id == at[0].id;
    add(Predicate::foot,
        {second ? both[0].a : both[0].b, second ? both[0].b : both[0].a, both[1].a, both[1].b}, node.span);
  } else {  // "drop a perpendicular from K to LM, meeting it at P"
    add(Predicate::foot, {at[1], at[0], both[0].a, both[0].b}, node.span);
  }
}

void Reader::produce(const Node& node) {
  const Line subject = line(*line_node(node));
  line_verb(node, subject, node.span);
}

void Reader::join(const Node& node) {
  for (const Line& one : lines(node)) add(Predicate::line_order, {one.a, one.b}, node.span);
}

}  // namespace prover
