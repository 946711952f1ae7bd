// Triangles, quadrilaterals and other polygons by name.
#include <algorithm>
#include <array>
#include <set>

#include "prover/language/reader.hpp"

namespace prover {

namespace {

struct Noun {
  std::string_view word;
  std::size_t corners;  // 0: any number
};
constexpr std::array<Noun, 19> nouns = {{{"triangle", 3},
                                         {"triangles", 3},
                                         {"quadrilateral", 4},
                                         {"parallelogram", 4},
                                         {"rectangle", 4},
                                         {"rhombus", 4},
                                         {"square", 4},
                                         {"kite", 4},
                                         {"trapezium", 4},
                                         {"trapezoid", 4},
                                         {"pentagon", 5},
                                         {"hexagon", 6},
                                         {"heptagon", 7},
                                         {"octagon", 8},
                                         {"nonagon", 9},
                                         {"decagon", 10},
                                         {"hendecagon", 11},
                                         {"dodecagon", 12},
                                         {"polygon", 0}}};

std::size_t corners_of(const std::string& noun) {
  for (const Noun& row : nouns) {
    if (noun == row.word) return row.corners;
  }
  if (noun.ends_with("-gon")) return static_cast<std::size_t>(std::strtoul(noun.c_str(), nullptr, 10));
  return 3;  // △
}

std::optional<Predicate> named_quadrilateral(const std::string& noun) {
  if (noun == "parallelogram") return Predicate::parallelogram;
  if (noun == "rectangle") return Predicate::rectangle;
  if (noun == "rhombus") return Predicate::rhombus;
  if (noun == "square") return Predicate::square;
  return std::nullopt;
}

std::string without_article(std::string word) {
  for (const std::string_view article : {"the ", "an ", "a "}) {
    if (word.starts_with(article)) return word.substr(article.size());
  }
  return word;
}

}  // namespace

void Reader::shape(const Node& node) {
  const std::vector<Placed> corners = letters(node);
  std::set<std::string> adjectives, said_nouns;
  for (const Node& child : node.children) {
    if (child.part == Part::adjective) {
      std::string word = words(child);
      if (const std::size_t cut = word.find("-angled"); cut != std::string::npos) word.resize(cut);
      adjectives.insert(word.ends_with("cross") ? "simple" : word);
    }
    if (child.part == Part::noun) {
      const std::string noun = without_article(words(child));
      said_nouns.insert(noun.empty() || static_cast<unsigned char>(noun[0]) >= 0x80U ? "triangle" : noun);
    }
  }
  const auto is = [&](const char* word) { return adjectives.contains(word) || said_nouns.contains(word); };
  for (const std::string& noun : said_nouns) {
    const std::size_t wanted = corners_of(noun);
    if (wanted == 0 ? corners.size() >= 3 : corners.size() == wanted) continue;
    draft_.error(node.span,
                 "a " + noun + " has " +
                     (wanted == 0 ? "three corners or more" : std::to_string(wanted) + " corners") + "; " +
                     draft_.letters(corners) + " has " + std::to_string(corners.size()),
                 "name each corner by one letter, in order round it");
    return;
  }
  std::set<PointId> different;
  for (const Placed& corner : corners) different.insert(corner.id);
  if (different.size() != corners.size() || corners.size() < 3) {
    draft_.error(node.span,
                 corners.size() < 3
                     ? draft_.letters(corners) + " is no figure: it has fewer than three corners"
                     : draft_.letters(corners) + " names a corner twice",
                 "name each corner by one letter, in order round it");
    return;
  }
  draft_.name_polygon(corners);
  const std::size_t before = phrases_->size();
  const auto vague = [&](VagueKind kind, bool equal_legs = false) {
    draft_.vague.push_back({kind, corners, node.span, equal_legs, draft_.unit()});
  };
  const auto from = [&](PointId first) {  // the corners, beginning with `first`
    std::vector<Placed> row = corners;
    const auto at = std::find_if(row.begin(), row.end(), [&](const Placed& p) { return p.id == first; });
    if (at == row.end()) {
      draft_.error(node.span, draft_.names.of(first) + " is not a corner of " + draft_.letters(corners),
                   "name one of its corners");
    } else {
      std::rotate(row.begin(), at, row.end());
    }
    return row;
  };
  const auto opposite = [&](const Line& side) {
    for (const Placed& corner : corners) {
      if (corner.id != side.a.id && corner.id != side.b.id) return corner.id;
    }
    return corners[0].id;
  };
  const bool many = corners.size() > 3;
  bool said = false;
  if (const Node* at = node.child(Part::right_at); at != nullptr && !many) {
    add(Predicate::right_angled, from(letters(*at).front().id), node.span);
    said = true;
  } else if (const Node* longest = node.child(Part::hypotenuse); longest != nullptr && !many) {
    add(Predicate::right_angled, from(opposite(line(*line_node(*longest)))), node.span);
    said = true;
  } else if (is("right") && !many) {
    vague(VagueKind::right_angled);
    said = true;
  }
  if (is("isosceles") && !many) {
    if (const Node* top = node.child(Part::apex)) {
      add(Predicate::isosceles_at, from(letters(*top).front().id), node.span);
    } else if (const Node* side = node.child(Part::base)) {
      add(Predicate::isosceles_at, from(opposite(line(*line_node(*side)))), node.span);
    } else {
      vague(VagueKind::isosceles);
    }
    said = true;
  }
  if (is("equilateral")) {
    if (many)
      draft_.error(node.span, "equilateral is said of a triangle",
                   "write \"regular\" if all sides and all angles are equal");
    add(Predicate::equilateral, corners, node.span);
    said = true;
  }
  if (is("acute")) {
    add(Predicate::acute, corners, node.span);
    said = true;
  }
  if (is("obtuse") || is("scalene")) {
    draft_.error(node.span,
                 is("obtuse") ? "which angle is obtuse is not said"
                              : "that no two sides are equal is nothing to prove with",
                 is("obtuse") ? "write \"angle KLM > 90\" for the angle that is" : "leave \"scalene\" out");
  }
  if (is("regular")) {
    add(is("triangle") ? Predicate::equilateral : Predicate::regular_polygon, corners, node.span);
    said = true;
  }
  for (const std::string& noun : said_nouns) {
    if (const auto predicate = named_quadrilateral(noun)) {
      add(*predicate, corners, node.span);
      said = true;
    }
  }
  if (is("kite")) {
    vague(VagueKind::kite);
    said = true;
  }
  if (is("trapezium") || is("trapezoid")) {
    vague(VagueKind::trapezium, is("isosceles"));
    said = true;
  }
  if (is("cyclic")) {
    draft_.name_circle({}, corners);
    add(Predicate::concyclic_cyclic, corners, node.span);
    said = true;
  }
  if (is("simple")) {
    add(Predicate::simple_polygon, corners, node.span);
    said = true;
  }
  if (is("convex")) {
    add(Predicate::convex, corners, node.span);
    said = true;
  }
  if (const Node* round = node.child(Part::on_circle)) {
    const ReadCircle read = circle(*round->child(Part::circle));
    std::vector<Placed> row = corners;
    if (read.centre.id.valid() && read.centre.id != stand_in::the_circle) {
      draft_.name_circle(read.centre.id, corners);
      row.insert(row.begin(), read.centre);
      add(many ? Predicate::circle_cyclic : Predicate::circle, row, node.span);
    } else {
      draft_.name_circle({}, corners);
      if (many) add(Predicate::concyclic_cyclic, row, node.span);
    }
    said = said || many;
  }
  if (!said && phrases_->size() == before) {
    add(many ? Predicate::convex : Predicate::triangle, corners, node.span);
    if (many) {
      draft_.assumptions.push_back(draft_.letters(corners) + " is convex; if it is not, write \"polygon: " +
                                   draft_.letters(corners) + " simple, in this order\"");
    }
  }
}

}  // namespace prover
