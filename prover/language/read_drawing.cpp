// Lines that have no name but what they do: "the bisector of angle K meets LM at P".
#include "prover/language/reader.hpp"

namespace prover {

namespace {

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
  // "the line through K parallel to LM meets NP at Q"
  const Node& met = *line_node(node, direction != nullptr ? 0 : 1);
  add(said, {at[0], at[1], guide.a, guide.b}, node.span);
  on_line(at[1], met, node.span);
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

}  // namespace prover
