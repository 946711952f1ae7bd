#include "prover/hints/route.hpp"

#include <algorithm>
#include <set>

#include "prover/hints/telling.hpp"

namespace prover {

namespace {

constexpr std::size_t most_givens = 2;

std::string name(const Climb& climb, PointId p) { return climb.statement.names.of(p); }
std::string name(const Climb& climb, PointId p, PointId q) { return name(climb, p) + name(climb, q); }
std::string polygon(const Climb& climb, const std::vector<PointId>& corners) {
  std::string text;
  for (const PointId p : corners) text += name(climb, p);
  return text;
}

std::string named(const Climb& climb, const Quantity& quantity) {
  if (const auto* angle = std::get_if<Angle>(&quantity))
    return angle->arm1.valid() ? describe(*angle, climb.statement.names) : std::string();
  if (const auto* segment = std::get_if<Segment>(&quantity)) return name(climb, segment->a, segment->b);
  if (const auto* number = std::get_if<Number>(&quantity)) return number->name;
  return {};
}

std::vector<std::string> quantities(const Climb& climb, const Phrase& phrase) {
  std::vector<std::string> all;
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms)
      if (const std::string text = named(climb, term.quantity); !text.empty() && std::find(all.begin(), all.end(), text) == all.end())
        all.push_back(text);
  return all;
}

std::string listed(const std::vector<std::string>& parts) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) text += (i == 0 ? "" : i + 1 == parts.size() ? " and " : ", ") + parts[i];
  return text;
}

// The theorem of the last step: what is asked is looked at as it will be used.
const Rule* last_rule(const Climb& climb) {
  for (auto step = climb.way.steps.rbegin(); step != climb.way.steps.rend(); ++step)
    if (!is_mere_working(*step))
      if (const auto id = climb.catalogue.find(step->rule)) return &climb.catalogue[*id];
  return nullptr;
}

bool speaks_of_circle(const Climb& climb) {
  return std::any_of(climb.statement.givens.begin(), climb.statement.givens.end(), [](const Given& given) {
    const Predicate kind = given.phrase.predicate;
    return kind == Predicate::circle || kind == Predicate::circle_cyclic || kind == Predicate::concyclic || kind == Predicate::concyclic_cyclic ||
           kind == Predicate::diameter || kind == Predicate::tangent || kind == Predicate::tangent_circumcircle;
  });
}

// Words in which the registers differ.
const char* centre(const Climb& climb) { return climb.wording == Register::us ? "center" : "centre"; }
std::string make_equal(const Climb& climb, bool angles) {
  const bool us = climb.wording == Register::us;
  return std::string("What kinds of fact make ") + (angles ? "angles " : us ? "segments " : "lengths ") + (us ? "congruent?" : "equal?");
}

std::string asking_for_angle(const Climb& climb, const std::string& angle) {
  const Rule* rule = last_rule(climb);
  const std::string topic = rule ? rule->topic : "";
  if (topic == "triangle" || topic == "congruence" || topic == "similarity")
    return "You want " + angle + ". Name the triangles it belongs to.";
  if (topic == "parallel") return "You want " + angle + ". Is one of its arms parallel to another line?";
  if (topic == "quadrilateral" || topic == "polygon") return "You want " + angle + ". Name the figure whose corner it is.";
  if (topic == "point" || topic == "general") return "You want " + angle + ". Which angles lie beside it?";
  if (speaks_of_circle(climb))
    return "You want " + angle + ". Where is its corner: at the " + centre(climb) + ", on the circle, inside or outside?";
  return "You want " + angle + ". Which figures have it as an angle?";
}

std::string asking_to_find(const Climb& climb) {
  const Expression& asked = climb.goal.claims[0].relation.expressions[0];
  const std::vector<std::string> all = quantities(climb, climb.goal.claims[0]);
  if (all.empty()) return "Read again what is asked. Mark it in the figure.";
  if (!climb.goal.in_terms_of.empty()) {
    std::vector<std::string> terms;
    for (const Quantity& quantity : climb.goal.in_terms_of) terms.push_back(named(climb, quantity));
    return "In your last line " + listed(terms) + " may stand, and nothing else that is not known. What else would you have to do away with?";
  }
  if (all.size() > 1) return "You want " + listed(all) + " taken together, and need not know each by itself. Where do they meet in one fact?";
  const Quantity& quantity = asked.terms[0].quantity;
  if (std::holds_alternative<Number>(quantity)) return "You want " + all[0] + ". Where in the figure does it stand?";
  if (std::holds_alternative<Segment>(quantity)) return "You want " + all[0] + ". Of which triangles is it a side?";
  if (std::get<Angle>(quantity).reflex) return "You want a reflex angle. Which smaller angle goes with it?";
  return asking_for_angle(climb, all[0]);
}

std::string asking_to_prove_relation(const Climb& climb, const Phrase& claim) {
  std::vector<std::string> all = quantities(climb, claim);
  if (std::any_of(claim.relation.comparisons.begin(), claim.relation.comparisons.end(), [](Comparison c) { return c != Comparison::equal; }))
    return "Your last line will compare " + listed(all) + ". Which facts tell what is larger?";
  if (all.empty()) return "Read again what is to be shown. What kind of fact allows such a last line?";
  const bool angles = all[0].starts_with("∠");
  std::size_t terms = 0, plain = 0;
  for (const Expression& expression : claim.relation.expressions)
    for (const Term& term : expression.terms) {
      ++terms;
      plain += term.coefficient.is_one() && !std::holds_alternative<One>(term.quantity);
    }
  if (terms == plain && plain == all.size() && claim.relation.expressions.size() == all.size())
    return "Your last line will be about " + listed(all) + ". " + make_equal(climb, angles);
  if (all.size() == 1) return "Your last line will be about " + all[0] + ". What kinds of fact tell the size of such " + (angles ? "an angle?" : "a length?");
  return "Your last line will tie " + listed(all) + " together. Which facts speak of several " + (angles ? "angles" : "lengths") + " at once?";
}

std::string asking_to_prove(const Climb& climb, const Phrase& claim) {
  const auto& p = claim.points;
  const std::string last = "Your last line will be about ";
  switch (claim.predicate) {
    case Predicate::relation:
      return asking_to_prove_relation(climb, claim);
    case Predicate::parallel:
      return last + name(climb, p[0], p[1]) + " and " + name(climb, p[2], p[3]) + ". What kinds of fact make lines parallel?";
    case Predicate::perpendicular:
    case Predicate::foot:
    case Predicate::perpendicular_bisector:
      return "Your last line will speak of a right angle. Where is it, and what kinds of fact make one?";
    case Predicate::right_angled:
      return last + "the angle at " + name(climb, p[0]) + ". What kinds of fact make a right angle?";
    case Predicate::congruent:
      return last + "two triangles. Which of their sides and angles go together, in which order?";
    case Predicate::similar:
      return last + "two triangles. Which angles go together? How many pairs do you need?";
    case Predicate::isosceles:
    case Predicate::isosceles_at:
    case Predicate::equilateral:
      return last + "triangle " + polygon(climb, p) + ". Is it easier to compare sides or angles?";
    case Predicate::concyclic:
    case Predicate::concyclic_cyclic:
    case Predicate::circle:
    case Predicate::circle_cyclic:
      return "Your last line will speak of a circle. What tells you that points lie on one?";
    case Predicate::tangent:
    case Predicate::tangent_circumcircle:
      return last + name(climb, p[0], p[1]) + " and a circle. What must you know of a line that touches a circle?";
    case Predicate::collinear:
    case Predicate::on_line:
    case Predicate::line_order:
      return "Your last line will say that points stand in one line. Which angles would have to fit together there?";
    case Predicate::bisects:
      return last + "the two parts of " + "∠" + name(climb, p[1]) + name(climb, p[2]) + name(climb, p[3]) + ". " + make_equal(climb, true);
    case Predicate::midpoint:
      return last + "the two parts of " + name(climb, p[1], p[2]) + ". " + make_equal(climb, false);
    case Predicate::parallelogram:
    case Predicate::rectangle:
    case Predicate::rhombus:
    case Predicate::square:
    case Predicate::kite:
    case Predicate::trapezium:
    case Predicate::regular_polygon:
      return last + polygon(climb, p) + ". What must be known of its sides, its angles or its diagonals?";
    default:
      return "Read again what is to be shown. What kind of fact allows such a last line?";
  }
}

bool uses_radii(const Climb& climb) {
  const auto& rules = climb.way.rules;
  return std::find(rules.begin(), rules.end(), "radii-equal") != rules.end();
}

// What a given means, asked; nothing for what only says where points are.
std::string asking_about_given(const Climb& climb, const Phrase& given) {
  const auto& p = given.points;
  switch (given.predicate) {
    case Predicate::relation: {
      std::vector<std::string> all = quantities(climb, given);
      std::erase_if(all, [](const std::string& name) { return name[0] >= 'a' && name[0] <= 'z'; });
      if (all.size() < 2) return {};
      if (all[0].starts_with("∠")) return "One given is about " + listed(all) + ". Mark it in the figure.";
      return "One given is about " + listed(all) + ". Which triangles have them as sides?";
    }
    case Predicate::parallel: {
      return "One given is about " + name(climb, p[0], p[1]) + " and " + name(climb, p[2], p[3]) + ". Which drawn lines cut both?";
    }
    case Predicate::perpendicular:
      return "One given is about " + name(climb, p[0], p[1]) + " and " + name(climb, p[2], p[3]) + ". Which angles do you know from it?";
    case Predicate::foot:
      return "One given is about " + name(climb, p[1], p[0]) + ". Which angles at " + name(climb, p[0]) + " do you know from it?";
    case Predicate::perpendicular_bisector:
      return "One given is about the middle of " + name(climb, p[2], p[3]) + ". Which two things does it say?";
    case Predicate::bisects:
      return "One given is about " + name(climb, p[2], p[0]) + " and ∠" + name(climb, p[1]) + name(climb, p[2]) + name(climb, p[3]) + ". What does it say of the two parts?";
    case Predicate::midpoint:
      return "One given is about " + name(climb, p[0]) + ". Which lengths are equal because of it?";
    case Predicate::isosceles_at:
    case Predicate::isosceles:
      return "What is special about triangle " + polygon(climb, p) + "? Which of its angles does that concern?";
    case Predicate::equilateral:
      return "What do you know about the sides and about the angles of triangle " + polygon(climb, p) + "?";
    case Predicate::right_angled:
      return "What is special about triangle " + polygon(climb, p) + "? Mark it in the figure.";
    case Predicate::circle:
    case Predicate::circle_cyclic:
      return uses_radii(climb) ? "Which lengths from " + name(climb, p[0]) + " do you know to be equal?"
                               : "Which points stand on the circle round " + name(climb, p[0]) + ", and which chords do they make?";
    case Predicate::concyclic:
    case Predicate::concyclic_cyclic:
      return "Which points stand on the circle, and which chords do they make?";
    case Predicate::diameter:
      return "What is special about the chord " + name(climb, p[0], p[1]) + "?";
    case Predicate::tangent:
    case Predicate::tangent_circumcircle:
      return "A line touches the circle at " + name(climb, p[1]) + ". Which other lines through " + name(climb, p[1]) + " could matter?";
    case Predicate::regular_polygon:
    case Predicate::square:
    case Predicate::rectangle:
    case Predicate::rhombus:
    case Predicate::parallelogram:
    case Predicate::kite:
    case Predicate::trapezium:
      return "What do you know about the sides and about the angles of " + polygon(climb, p) + "?";
    case Predicate::congruent:
    case Predicate::similar:
      return "Two triangles are given to have the same shape. Which angles and sides go together?";
    default:
      return {};
  }
}

}  // namespace

std::vector<std::string> route_sentences(const Climb& climb) {
  std::vector<std::string> sentences;
  if (climb.goal.claims.empty()) return sentences;
  sentences.push_back(climb.goal.kind == GoalKind::find ? asking_to_find(climb) : asking_to_prove(climb, climb.goal.claims[0]));
  // The givens in the order in which the proof comes to them; of two that ask the same way, one.
  std::vector<std::string> in_order;
  for (const AnswerStep& step : climb.way.steps) in_order.insert(in_order.end(), step.givens.begin(), step.givens.end());
  in_order.insert(in_order.end(), climb.way.givens_used.begin(), climb.way.givens_used.end());
  std::set<Predicate> asked;
  for (const std::string& text : in_order) {
    const auto given = std::find_if(climb.statement.givens.begin(), climb.statement.givens.end(),
                                    [&](const Given& g) { return g.text == text && !g.added; });
    if (given == climb.statement.givens.end() || asked.contains(given->phrase.predicate)) continue;
    const std::string sentence = asking_about_given(climb, given->phrase);
    if (sentence.empty()) continue;
    asked.insert(given->phrase.predicate);
    sentences.push_back(sentence);
    if (asked.size() == most_givens) break;
  }
  return sentences;
}

}  // namespace prover
