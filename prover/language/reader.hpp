// From the tree of a sentence to phrases. One reader reads a whole text; what it cannot decide yet it leaves
// to the last pass (draft.hpp). A clause with a mistake in it gives a diagnostic and no phrase.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "prover/language/draft.hpp"
#include "prover/language/syntax.hpp"

namespace prover {

struct Line {
  Placed a, b;
};
struct ReadAngle {
  Angle angle;
  std::vector<Placed> letters;  // arm, corner, arm; the arms not valid for a bare corner
};
struct ReadCircle {
  Placed centre;  // `the_circle` when it has no name here; not valid when named by its points
  std::vector<Placed> points;
};

class Reader {
 public:
  Reader(std::string_view text, Draft& draft) : text_(text), draft_(draft) {}

  // A pupil leaves out the sign of an angle: "KLM = 70", "L = 70".
  void take_letters_for_angles() { letters_are_angles_ = true; }

  // The clauses of a sentence, and the goals in it.
  void sentence(const Node& node, std::vector<Phrase>& phrases, std::vector<Goal>& goals);

 private:
  // read_names.cpp
  std::string words(const Node& node) const;  // the text of the node, lower case
  std::string source(Span span) const { return std::string(text_.substr(span.begin, span.end - span.begin)); }
  Placed point(const Node& node);
  std::vector<Placed> letters(const Node& node);  // the points directly under it
  std::vector<Placed> points(const Node& node);   // all under it, lines and angles spelled out
  Line line(const Node& node);
  std::vector<Placed> arms_of(const ReadAngle& angle, Span span);
  ReadAngle angle(const Node& node);
  Angle corner_of(const std::vector<Placed>& polygon, Placed corner, Span span);
  ReadCircle circle(const Node& node);
  const Node* line_node(const Node& node,
                        std::size_t which = 0) const;  // the which-th line among the children
  std::vector<Line> lines(const Node& node);

  // read_quantities.cpp
  struct Sum {
    std::vector<Term> terms;
    bool degrees = false, lengths = false;
  };
  Sum sum(const Node& expression);
  Sum product(const Node& node);
  Sum factor(const Node& node);
  Sum times(const Sum& a, const Sum& b, Span span);
  Sum side(const Node& node);
  std::vector<Term> quantities(const Node& node);
  Expression expression(const Node& node);
  void relation(const Node& node);
  void ratio(const std::vector<Term>& terms, const Node& node);
  void compare(std::vector<Expression> expressions, std::vector<Comparison> comparisons, Span span);
  void check_kinds(const std::vector<Sum>& sides, Span span);

  // read_groups.cpp
  void group(const Node& node);

  // read_clauses.cpp
  void clause(const Node& node);
  void add(Predicate predicate, const std::vector<Placed>& points, Span span);
  void says(const Node& node, std::vector<Placed> subject, Span span);
  void says_alone(const Node& node);
  void line_order_row(const Node& node);
  void angle_bisected(const Node& node);
  void loose_letters(const Node& node);
  void points_clause(const Node& node);
  void point_verb(const Node& verb, const std::vector<Placed>& subjects, Span span);
  void midpoints(const std::vector<Placed>& subjects, const std::vector<Line>& sides, Span span);
  void sides(const std::vector<Placed>& subjects, const Line& wall, bool same, Span span);
  void call(const Node& node);
  void numbered_angles(const Node& node);

  // read_lines.cpp
  void line_clause(const Node& node);
  void lines_clause(const Node& node);
  void line_verb(const Node& verb, const Line& subject, Span span);
  void several_lines_verb(const Node& verb, const std::vector<Line>& subjects, bool inner, Span span);
  void pairwise(Predicate predicate, const std::vector<Line>& lines, Span span);
  void meet(Placed point, const Line& one, const Line& other, Span span);
  void on_line(Placed point, const Node& line, Span span);
  void bisects(const Line& subject, const ReadAngle& angle, Span span);
  void cevian(const Line& subject, const Node& verb, Span span);
  const std::vector<PointId>* triangle_at(const Line& subject) const;

  // read_drawing.cpp: lines without a name of their own
  void bisector_meets(const Node& node);
  void tangent_meets(const Node& node);
  void line_through(const Node& node);
  void produced_meets(const Node& node);
  void diagonals_meet(const Node& node);
  void perpendicular_bisector_meets(const Node& node);

  // read_auxiliary.cpp: lines drawn in addition
  void drawn_line(const Node& node);
  void named_line(const Node& node, Predicate said, const Line& guide, const std::vector<Placed>& through);
  void drawn_ray(const Node& node);
  void drawn_angle(const Node& node);
  void drawn_produced(const Node& node);
  void join(const Node& node);
  void join_to(const Node& node);
  Placed fresh(Span span);
  Placed named_or_fresh(const std::vector<Placed>& named, std::size_t i, Span span);
  bool as_many(std::size_t names, std::size_t wanted, Span span);
  void meets_there(Placed point, const Node& meeting, Span span);
  void on_sides(Placed point, const Line* wall, const Node& node, Span span);
  bool says_side(const Node& node) const;
  std::vector<std::vector<PointId>> triangles_with(const std::vector<PointId>& corners) const;

  // read_constructions.cpp: points and figures constructed in addition
  void drawn_foot(const Node& node);
  void drawn_cevian(const Node& node);
  void drawn_bisector(const Node& node);
  void drawn_midpoint(const Node& node);
  void drawn_centre(const Node& node);
  void drawn_perpendicular_bisector(const Node& node);
  void drawn_diameter(const Node& node);
  void drawn_tangent(const Node& node);
  void drawn_tangents_from(const Node& node);
  void build(const Node& node);
  void mirror(const Node& node);
  void drawn_vaguely(const Node& node);

  // read_circles.cpp
  void circle_clause(const Node& node);
  void on_circle(const std::vector<Placed>& subjects, const Node& verb, Span span);
  void tangent(const Line& line, const ReadCircle& circle, const Placed* at, Span span);
  void tangents_from(const Node& node);
  void centre_of(const std::vector<Placed>& subject, const Node& verb, Span span);
  Placed centre(const ReadCircle& circle, Span span);  // of a circle known by its points: a hidden one

  // read_shapes.cpp
  void shape(const Node& node);

  // read_goals.cpp
  void find(const Node& node, std::vector<Goal>& goals);
  void prove(const Node& node, std::vector<Goal>& goals);

  std::vector<Placed> points_in(const Node& node);  // only those directly among the children

  std::string_view text_;
  Draft& draft_;
  std::vector<Phrase>* phrases_ = nullptr;
  bool letters_are_angles_ = false;
};

// The name of a point or letter in one spelling: K₁ is K1, L̂ is L.
std::string canonical_name(std::string_view written);

}  // namespace prover
