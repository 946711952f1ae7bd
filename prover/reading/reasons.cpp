#include "prover/reading/reasons.hpp"

#include <algorithm>

#include "prover/rule/wording.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

bool is_about_two_triangles(const Phrase& phrase) {
  return (phrase.predicate == Predicate::congruent || phrase.predicate == Predicate::similar) && phrase.points.size() == 6;
}

std::vector<PointId> at(const std::vector<PointId>& variables, const std::vector<PointId>& places) {
  std::vector<PointId> points;
  for (const PointId v : variables) points.push_back(places[v.index()]);
  return points;
}

// Whether two of the rule's letters stand for a whole line, one of its parallels, and for nothing shorter: then any name
// of the line will do. Not where sides, chords or lengths are meant.
bool is_parallel_line(const Rule& rule, const std::vector<PointId>& pair) {
  const auto names_pair = [&](PointId a, PointId b) {
    return (a == pair[0] && b == pair[1]) || (a == pair[1] && b == pair[0]);
  };
  bool parallel = false;
  for (const auto* phrases : {&rule.given, &rule.then})
    for (const Phrase& phrase : *phrases) {
      if (phrase.predicate == Predicate::parallel)
        parallel = parallel || names_pair(phrase.points[0], phrase.points[1]) || names_pair(phrase.points[2], phrase.points[3]);
      else if (phrase.predicate != Predicate::relation && phrase.predicate != Predicate::perpendicular && phrase.predicate != Predicate::collinear)
        return false;
      for (const Expression& side : phrase.relation.expressions)
        for (const Term& term : side.terms)
          if (const auto* segment = std::get_if<Segment>(&term.quantity); segment && names_pair(segment->a, segment->b)) return false;
    }
  return parallel;
}

}  // namespace

Reasons::Reasons(const Statement& statement, const Catalogue& catalogue, UnknownTable& unknowns,
                 const Arrangement& arrangement, const NameBook& names, Register wording)
    : statement_(statement), catalogue_(catalogue), unknowns_(unknowns), arrangement_(arrangement), names_(names), wording_(wording) {
  for (const Given& given : statement.givens)
    if (is_about_two_triangles(given.phrase)) note_triangles(given.phrase, given.phrase.points);
}

void Reasons::note_triangles(const Phrase& phrase, const std::vector<PointId>& corners) {
  Phrase said = phrase;
  said.points = corners;
  const Meaning meaning = meaning_of(said, arrangement_, unknowns_);
  if (meaning.forms.size() == 1 && meaning.forms[0].terms.size() == 1)
    triangles_.try_emplace(meaning.forms[0].terms[0].first, corners);
}

std::vector<PointId> Reasons::places_as_said(const Rule& rule, std::vector<PointId> places) const {
  for (const Phrase& phrase : rule.given) {
    if (!is_about_two_triangles(phrase)) continue;
    Phrase here = phrase;
    here.points = at(phrase.points, places);
    const Meaning meaning = meaning_of(here, arrangement_, unknowns_);
    if (meaning.forms.size() != 1 || meaning.forms[0].terms.size() != 1) continue;
    const auto said = triangles_.find(meaning.forms[0].terms[0].first);
    if (said == triangles_.end()) continue;
    for (std::size_t k = 0; k < 6; ++k) places[phrase.points[k].index()] = said->second[k];
  }
  return places;
}

std::string Reasons::reason(const Instance& instance) const {
  const Rule& rule = catalogue_[instance.rule];
  if (rule.builtin) {
    std::vector<std::string> places;
    for (std::size_t i = 0; i < rule.variables.points.size(); ++i) places.push_back(shape_part(rule, i, instance.places));
    return fill_wording(rule, wording_, places);
  }
  const std::vector<PointId> places = places_as_said(rule, instance.places);
  return fill_wording(rule, wording_, [&](const std::vector<WordingPiece>& pieces, std::size_t i, Register used) {
    return place_text(rule, places, pieces, i, used);
  });
}

HintSentences Reasons::hints(const Instance& instance) const {
  const Rule& rule = catalogue_[instance.rule];
  if (rule.hints.empty()) return {};
  HintSentences filled;
  if (rule.builtin) {
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < rule.variables.points.size(); ++i) parts.push_back(shape_part(rule, i, instance.places));
    filled.where = fill_hint(rule, wording_, HintRung::where, parts);
    filled.kind = fill_hint(rule, wording_, HintRung::kind, parts);
    filled.places = fill_hint(rule, wording_, HintRung::places, parts);
    return filled;
  }
  const std::vector<PointId> places = places_as_said(rule, instance.places);
  const PrintPlace print = [&](const std::vector<WordingPiece>& pieces, std::size_t i, Register used) {
    if (pieces[i].points.size() == 2 && is_parallel_line(rule, pieces[i].points)) {
      const std::vector<PointId> ends = at(pieces[i].points, places);
      if (ends[0].valid() && ends[1].valid())
        if (const std::string line = names_.line(arrangement_.line(ends[0], ends[1])); !line.empty()) return line;
    }
    return place_text(rule, places, pieces, i, used);
  };
  filled.where = fill_hint(rule, wording_, HintRung::where, print);
  filled.kind = fill_hint(rule, wording_, HintRung::kind, print);
  filled.places = fill_hint(rule, wording_, HintRung::places, print);
  return filled;
}

bool Reasons::names_places(const Rule& rule) const {
  const auto found = rule.wording.find(Register::plain);
  if (found == rule.wording.end()) return false;
  const auto pieces = wording_pieces(found->second, rule.variables);
  return std::any_of(pieces.begin(), pieces.end(), [](const WordingPiece& p) { return p.is_place; });
}

std::optional<Form> Reasons::angle_form(const std::vector<PointId>& corners) const {
  Angle angle;
  angle.vertex = corners[1];
  angle.arm1 = corners[0];
  angle.arm2 = corners[2];
  Expression one;
  one.terms.push_back({});
  one.terms[0].coefficient = 1;
  one.terms[0].quantity = angle;
  std::vector<PointId> identity;
  for (std::size_t i = 0; i < arrangement_.point_count(); ++i) identity.emplace_back(static_cast<std::int64_t>(i));
  bool degenerate = false;
  Form form = form_of(one, identity, arrangement_, unknowns_, degenerate);
  if (degenerate || form.terms.size() != 1) return std::nullopt;
  return form;
}

std::string Reasons::angle_text(const std::vector<PointId>& corners) const {
  Angle angle;
  angle.vertex = corners[1];
  angle.arm1 = corners[0];
  angle.arm2 = corners[2];
  const std::string here = describe(angle, statement_.names);
  const auto form = angle_form(corners);
  if (!form) return here;
  // By the same points: other points of its arms would hide which segment it stands over.
  const std::string called = names_.of(form->terms[0].first);
  std::string a = here, b = called;
  std::sort(a.begin(), a.end());
  std::sort(b.begin(), b.end());
  return a == b ? called : here;
}

std::string Reasons::whole_text(const std::vector<PointId>& corners) const {
  const auto form = angle_form(corners);
  return form ? names_.of(form->terms[0].first) : angle_text(corners);
}

std::string Reasons::place_text(const Rule& rule, const std::vector<PointId>& places, const std::vector<WordingPiece>& pieces,
                                std::size_t i, Register used) const {
  std::vector<PointId> points;
  for (const PointId v : pieces[i].points) points.push_back(places[v.index()]);
  const bool all = std::all_of(points.begin(), points.end(), [](PointId p) { return p.valid(); });
  if (all && pieces[i].kind == PlaceKind::angle && points.size() == 3) return angle_text(points);
  if (all && pieces[i].kind == PlaceKind::triangle && points.size() == 3)
    return (used == Register::sa ? "△" : "triangle ") + names_.triangle(points);
  // A line that the text calls by other points. Where two pairs are parallel, their letters tell the directions.
  const auto beside = [&](std::size_t k, const char* sign) {
    return k < pieces.size() && !pieces[k].is_place && pieces[k].text.find(sign) != std::string::npos && pieces[k].text.size() < 8;
  };
  const auto parallels = std::count_if(rule.given.begin(), rule.given.end(),
                                       [](const Phrase& p) { return p.predicate == Predicate::parallel; });
  if (all && points.size() == 2 && parallels == 1 &&
      (beside(i + 1, "∥") || beside(i - 1, "∥") || beside(i + 1, "⟂") || beside(i - 1, "⟂")))
    if (const std::string line = names_.line(arrangement_.line(points[0], points[1])); !line.empty()) return line;
  std::string text = pieces[i].kind == PlaceKind::angle ? "∠" : pieces[i].kind == PlaceKind::triangle ? "triangle " : "";
  for (const PointId p : points) text += p.valid() ? statement_.names.of(p) : "?";
  return text;
}

// The named parts of a built-in shape: {line}, {point}, {angle}, {polygon}, or single points.
std::string Reasons::shape_part(const Rule& rule, std::size_t variable, const std::vector<PointId>& places) const {
  const std::string& part = rule.variables.points[variable];
  auto name = [&](std::size_t i) { return statement_.names.of(places[i]); };
  if (places.empty()) return {};
  if (part == "point") return name(0);
  if (part == "line") return name(1) + name(0) + name(places.size() - 1);
  if (part == "angle") return whole_text({places[1], places[0], places.back()});
  if (part == "polygon") {
    const bool with_produced_sides = rule.builtin == Builtin::polygon_exterior_sum;
    std::string corners;
    for (std::size_t i = 0; i < places.size() / (with_produced_sides ? 2 : 1); ++i) corners += name(i);
    return corners;
  }
  // One by one, the last place by the last name: a segment of many points is named by its ends.
  return variable + 1 == rule.variables.points.size() ? name(places.size() - 1) : name(variable);
}

std::string Reasons::fact_text(const Instance& instance, const Form& claim) {
  const Rule& rule = catalogue_[instance.rule];
  for (const Phrase& phrase : rule.then) {
    const Meaning meaning = meaning_of(phrase, instance.places, arrangement_, unknowns_);
    if (std::find(meaning.forms.begin(), meaning.forms.end(), claim) == meaning.forms.end()) continue;
    if (phrase.predicate == Predicate::parallel) return names_.equation(claim);
    Phrase here = phrase;
    if (is_about_two_triangles(phrase)) {
      // Of the orders that say the same, the first by name.
      const std::vector<PointId> p = at(phrase.points, instance.places);
      std::vector<PointId> best = p;
      const auto names = [&](const std::vector<PointId>& six) {
        std::vector<std::string> text;
        for (const PointId point : six) text.push_back(statement_.names.of(point));
        return text;
      };
      std::vector<std::size_t> order{0, 1, 2};
      do {
        for (const std::size_t first : {0, 3}) {
          std::vector<PointId> six;
          for (const std::size_t k : order) six.push_back(p[first + k]);
          for (const std::size_t k : order) six.push_back(p[3 - first + k]);
          if (names(six) < names(best)) best = six;
        }
      } while (std::next_permutation(order.begin(), order.end()));
      note_triangles(phrase, best);
      here.points = triangles_.at(claim.terms[0].first);
      return describe(here, statement_.names);
    }
    Names places;
    for (const PointId p : instance.places) places.points.push_back(p.valid() ? statement_.names.of(p) : "?");
    return describe(here, places);
  }
  return names_.equation(claim);
}

}  // namespace prover
