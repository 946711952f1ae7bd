#include "prover/trigonometry/sine_graph.hpp"

#include <algorithm>
#include <deque>

namespace prover {

namespace {

constexpr std::size_t kMostConditions = 600;
constexpr std::size_t kMostSines = 14;  // in one product: its sum of cosines has 2^13 terms

bool is_angle_like(const Form& form, const UnknownTable& unknowns) {
  return std::all_of(form.terms.begin(), form.terms.end(), [&](const auto& term) {
    const UnknownKind kind = unknowns[term.first].kind;
    return kind == UnknownKind::angle || kind == UnknownKind::number;
  });
}

std::size_t size_of(const SineCondition& condition) {
  std::size_t size = 0;
  for (const SineProduct& term : condition.terms) size += 2 + term.sines.size();
  return size;
}

std::size_t moving_sines(const SineCondition& condition) {
  std::size_t count = 0;
  for (const SineProduct& term : condition.terms)
    count += static_cast<std::size_t>(
        std::count_if(term.sines.begin(), term.sines.end(), [](const Form& f) { return !f.terms.empty(); }));
  return count;
}

}  // namespace

void SineGraph::Ratio::multiply(int sine, int exponent) {
  int& e = sines[sine];
  e += exponent;
  if (e == 0) sines.erase(sine);
}

void SineGraph::Ratio::multiply(const Ratio& other, int sign) {
  factor = sign > 0 ? factor * other.factor : factor / other.factor;
  for (const auto& [sine, exponent] : other.sines) multiply(sine, sign * exponent);
}

Form SineGraph::moving_part(const Form& closed) const {
  Form direction;
  for (const auto& [unknown, c] : closed.terms)
    if (!known_.settled(unknown)) direction.terms.emplace_back(unknown, c);
  return direction.terms.empty() ? direction : direction.normalised();
}

int SineGraph::sine_class(const Form& angle) {
  const auto [at, fresh] = class_numbers_.try_emplace(same_sine(angle), static_cast<int>(sines_.size()));
  if (!fresh) return at->second;
  sines_.push_back(angle);
  const Form direction = moving_part(angle);
  int moves = kFixed;
  if (!direction.terms.empty()) {
    auto found = std::find(directions_.begin(), directions_.end(), direction);
    if (found == directions_.end()) found = directions_.insert(directions_.end(), direction);
    moves = static_cast<int>(found - directions_.begin());
  }
  moves_.push_back(moves);
  return at->second;
}

int SineGraph::node_of(const Form& normalised) {
  const auto [at, fresh] = node_numbers_.try_emplace(normalised, static_cast<int>(nodes_.size()));
  if (fresh) {
    nodes_.push_back(normalised);
    some_side_.emplace_back();
    at_.emplace_back();
  }
  return at->second;
}

SineGraph::Side SineGraph::side(PointId a, PointId b) {
  Side side;
  side.length = unknowns_.length(a, b);
  const Form form = known_.closed(Form::of(side.length));
  if (form.terms.empty()) {  // so many units
    side.factor = form.constant;
    side.node = node_of(Form::number(1));
  } else {
    side.factor = form.terms[0].second;
    side.node = node_of(form.normalised());
  }
  if (!some_side_[static_cast<std::size_t>(side.node)].length.valid()) some_side_[static_cast<std::size_t>(side.node)] = side;
  return side;
}

bool SineGraph::add_triangle(PointId a, PointId b, PointId c, const Workings& workings) {
  const Arrangement& figure = workings.arrangement;
  const LineId ab = figure.line(a, b), bc = figure.line(b, c), ac = figure.line(a, c);
  if (!ab.valid() || !bc.valid() || !ac.valid() || ab == bc) return false;
  if (!figure.known(canonical({PositionKind::not_collinear, a, b, c, {}}))) return false;
  Triangle triangle;
  triangle.points = {a, b, c};
  std::array<Form, 3> forms;
  for (std::size_t i = 0; i < 3; ++i) {
    const PointId v = triangle.points[i], p = triangle.points[(i + 1) % 3], q = triangle.points[(i + 2) % 3];
    triangle.angles[i] = unknowns_.angle(v, figure.ray(v, p), figure.ray(v, q));
    forms[i] = known_.closed(Form::of(triangle.angles[i]));
    if (!is_angle_like(forms[i], unknowns_)) return false;
  }
  for (std::size_t i = 0; i < 3; ++i) {
    triangle.sides[i] = side(triangle.points[(i + 1) % 3], triangle.points[(i + 2) % 3]);
    if (triangle.sides[i].factor.sign() <= 0 && nodes_[static_cast<std::size_t>(triangle.sides[i].node)].terms.size() <= 1) return false;
  }
  std::array<int, 3> classes{};
  for (std::size_t i = 0; i < 3; ++i) classes[i] = sine_class(forms[i]);
  const int number = static_cast<int>(triangles_.size());
  for (int from = 0; from < 3; ++from) {
    const int to = (from + 1) % 3;
    const Side& f = triangle.sides[static_cast<std::size_t>(from)];
    const Side& t = triangle.sides[static_cast<std::size_t>(to)];
    const int edge = static_cast<int>(edges_.size());
    edges_.push_back({f.node, t.node, classes[static_cast<std::size_t>(to)], classes[static_cast<std::size_t>(from)],
                      f.factor / t.factor, number, from, to});
    at_[static_cast<std::size_t>(f.node)].push_back(edge);
    if (t.node != f.node) at_[static_cast<std::size_t>(t.node)].push_back(edge);
  }
  triangles_.push_back(triangle);
  return true;
}

SineGraph::SineGraph(const Statement& statement, Workings& workings, const KnownAngles& known)
    : known_(known), unknowns_(workings.unknowns) {
  const auto n = static_cast<std::int64_t>(workings.arrangement.point_count());
  for (std::int64_t i = 0; i < n; ++i)
    for (std::int64_t j = i + 1; j < n; ++j)
      for (std::int64_t k = j + 1; k < n; ++k)
        if (!statement.hidden[static_cast<std::size_t>(i)] && !statement.hidden[static_cast<std::size_t>(j)] &&
            !statement.hidden[static_cast<std::size_t>(k)])
          add_triangle(PointId(i), PointId(j), PointId(k), workings);
}

SineGraph::Ratio SineGraph::along(const Edge& edge, bool forwards) const {
  Ratio ratio;
  const int sign = forwards ? 1 : -1;
  ratio.factor = forwards ? edge.factor : Rational(1) / edge.factor;
  ratio.multiply(edge.over, sign);
  ratio.multiply(edge.under, -sign);
  return ratio;
}

SineGraph::Tree SineGraph::tree(int root, const Allowed& allowed) const {
  Tree tree;
  tree.parent_edge.assign(nodes_.size(), -1);
  tree.reached.assign(nodes_.size(), false);
  tree.value.resize(nodes_.size());
  tree.reached[static_cast<std::size_t>(root)] = true;
  std::deque<int> open{root};
  while (!open.empty()) {
    const int node = open.front();
    open.pop_front();
    for (const int e : at_[static_cast<std::size_t>(node)]) {
      const Edge& edge = edges_[static_cast<std::size_t>(e)];
      if (!allowed(moves_[static_cast<std::size_t>(edge.over)]) || !allowed(moves_[static_cast<std::size_t>(edge.under)])) continue;
      const bool forwards = edge.from == node;
      const auto other = static_cast<std::size_t>(forwards ? edge.to : edge.from);
      if (tree.reached[other]) continue;
      tree.reached[other] = true;
      tree.parent_edge[other] = e;
      tree.value[other] = tree.value[static_cast<std::size_t>(node)];
      tree.value[other].multiply(along(edge, forwards), 1);
      open.push_back(static_cast<int>(other));
    }
  }
  return tree;
}

void SineGraph::toggle_path(const Tree& tree, int node, std::set<int>& edges) const {
  for (int e = tree.parent_edge[static_cast<std::size_t>(node)]; e >= 0;
       e = tree.parent_edge[static_cast<std::size_t>(node)]) {
    if (!edges.insert(e).second) edges.erase(e);
    const Edge& edge = edges_[static_cast<std::size_t>(e)];
    node = edge.from == node ? edge.to : edge.from;
  }
}

SineCondition SineGraph::condition(std::vector<Ratio> terms, const std::set<int>& edges, const std::vector<Side>& links,
                                   std::vector<Form> more) const {
  // Without denominators, and without the sines that all terms share: these are not 0.
  std::map<int, int> least;
  for (const Ratio& term : terms)
    for (const auto& [sine, exponent] : term.sines) least.try_emplace(sine, exponent);
  for (auto& [sine, exponent] : least)
    for (const Ratio& term : terms) {
      const auto found = term.sines.find(sine);
      exponent = std::min(exponent, found == term.sines.end() ? 0 : found->second);
    }
  SineCondition result;
  for (Ratio& term : terms) {
    for (const auto& [sine, exponent] : least) term.multiply(sine, -exponent);
    SineProduct product;
    product.factor = term.factor;
    for (const auto& [sine, exponent] : term.sines) {
      const Form& angle = sines_[static_cast<std::size_t>(sine)];
      if (angle.terms.empty() && angle.constant == Rational(90)) continue;
      for (int i = 0; i < exponent; ++i) product.sines.push_back(angle);
    }
    result.terms.push_back(std::move(product));
  }
  std::set<int> used;
  std::map<int, std::vector<Side>> lengths;
  const auto uses = [&](const Side& side) {
    auto& list = lengths[side.node];
    if (std::none_of(list.begin(), list.end(), [&](const Side& s) { return s.length == side.length; })) list.push_back(side);
  };
  std::set<UnknownId> angles;
  for (const int e : edges) {
    const Edge& edge = edges_[static_cast<std::size_t>(e)];
    const Triangle& triangle = triangles_[static_cast<std::size_t>(edge.triangle)];
    if (used.insert(edge.triangle).second) result.triangles.push_back(triangle.points);
    for (const int corner : {edge.from_corner, edge.to_corner}) {
      uses(triangle.sides[static_cast<std::size_t>(corner)]);
      angles.insert(triangle.angles[static_cast<std::size_t>(corner)]);
    }
  }
  result.angles.assign(angles.begin(), angles.end());
  for (const Side& side : links) uses(side);
  for (const auto& [node, list] : lengths)
    for (std::size_t i = 1; i < list.size(); ++i)
      result.lengths.push_back(Form::of(list[0].length, list[i].factor).add(Form::of(list[i].length, -list[0].factor)));
  result.lengths.insert(result.lengths.end(), more.begin(), more.end());
  return result;
}

void SineGraph::around(int root, const Allowed& allowed, std::vector<SineCondition>& out) const {
  const Tree paths = tree(root, allowed);
  for (std::size_t e = 0; e < edges_.size() && out.size() < kMostConditions; ++e) {
    const Edge& edge = edges_[e];
    const auto from = static_cast<std::size_t>(edge.from), to = static_cast<std::size_t>(edge.to);
    if (!paths.reached[from] || !paths.reached[to] || !allowed(moves_[static_cast<std::size_t>(edge.over)]) ||
        !allowed(moves_[static_cast<std::size_t>(edge.under)]))
      continue;
    if (paths.parent_edge[from] == static_cast<int>(e) || paths.parent_edge[to] == static_cast<int>(e)) continue;
    Ratio round = paths.value[from];
    round.multiply(along(edge, true), 1);
    round.multiply(paths.value[to], -1);
    if (round.sines.empty()) continue;
    std::set<int> edges{static_cast<int>(e)};
    toggle_path(paths, edge.from, edges);
    toggle_path(paths, edge.to, edges);
    Ratio one;
    one.factor = -1;
    out.push_back(condition({std::move(round), std::move(one)}, edges, {}, {}));
  }
  // Lengths that are sums.
  for (std::size_t node = 0; node < nodes_.size() && out.size() < kMostConditions; ++node) {
    const Form& sum = nodes_[node];
    const std::size_t parts = sum.terms.size() + (sum.constant.is_zero() || sum.terms.empty() ? 0 : 1);
    if (parts < 2 || !paths.reached[node]) continue;
    std::vector<Ratio> terms{paths.value[node]};
    terms[0].factor = -terms[0].factor;
    std::set<int> edges;
    toggle_path(paths, static_cast<int>(node), edges);
    const Side& whole = some_side_[node];
    std::vector<Side> links{whole};
    Form said = Form::of(whole.length, Rational(1) / whole.factor);
    bool complete = true;
    const auto part = [&](const Form& what, const Rational& factor) {
      const auto found = node_numbers_.find(what);
      if (found == node_numbers_.end() || !paths.reached[static_cast<std::size_t>(found->second)]) {
        complete = false;
        return;
      }
      const auto at = static_cast<std::size_t>(found->second);
      Ratio term = paths.value[at];
      term.factor *= factor;
      terms.push_back(std::move(term));
      std::set<int> its;
      toggle_path(paths, found->second, its);
      edges.insert(its.begin(), its.end());
      links.push_back(some_side_[at]);
      said.add(Form::of(some_side_[at].length, -factor / some_side_[at].factor));
    };
    for (const auto& [unknown, c] : sum.terms) part(Form::of(unknown), c);
    if (!sum.constant.is_zero()) part(Form::number(1), sum.constant);
    if (complete) out.push_back(condition(std::move(terms), edges, links, {said}));
  }
}

std::vector<SineCondition> SineGraph::only(std::size_t direction, std::vector<SineCondition> all) const {
  std::erase_if(all, [&](const SineCondition& condition) {
    bool moves = false, other = false, large = false;
    for (const SineProduct& term : condition.terms) {
      large = large || term.sines.size() > kMostSines;
      for (const Form& sine : term.sines) {
        const Form way = moving_part(sine);
        if (way.terms.empty()) continue;
        (way == directions_[direction] ? moves : other) = true;
      }
    }
    return !moves || other || large;
  });
  std::stable_sort(all.begin(), all.end(), [](const SineCondition& a, const SineCondition& b) {
    return std::pair(size_of(a), moving_sines(a)) < std::pair(size_of(b), moving_sines(b));
  });
  const auto key = [](const SineCondition& c) {
    std::string text;
    for (const SineProduct& term : c.terms) {
      text += term.factor.to_string() + ":";
      for (const Form& f : term.sines) {
        for (const auto& [u, r] : f.terms) text += std::to_string(u.value) + "*" + r.to_string() + "+";
        text += f.constant.to_string() + ",";
      }
      text += ";";
    }
    return text;
  };
  std::set<std::string> seen;
  std::erase_if(all, [&](const SineCondition& c) { return !seen.insert(key(c)).second; });
  return all;
}

std::vector<SineCondition> SineGraph::conditions(std::size_t direction, const Budget& budget) const {
  const auto fits = [&](int moves) { return moves == kFixed || moves == static_cast<int>(direction); };
  const auto any = [](int) { return true; };
  for (const Allowed& allowed : {Allowed(fits), Allowed(any)}) {
    std::vector<SineCondition> found;
    for (std::size_t root = 0; root < nodes_.size() && !budget.exhausted(); ++root) {
      std::vector<SineCondition> here;
      around(static_cast<int>(root), allowed, here);
      here = only(direction, std::move(here));
      found.insert(found.end(), std::make_move_iterator(here.begin()), std::make_move_iterator(here.end()));
      if (found.size() > kMostConditions) break;
    }
    found = only(direction, std::move(found));
    if (!found.empty()) return found;
  }
  return {};
}

std::optional<SineCondition> SineGraph::condition_for(const Form& lengths) const {
  const auto any = [](int) { return true; };
  std::vector<std::pair<int, Rational>> parts;
  std::vector<Side> links;
  for (const auto& [unknown, c] : lengths.terms) {
    const Form form = known_.closed(Form::of(unknown));
    if (form.terms.empty()) return std::nullopt;
    const auto found = node_numbers_.find(form.normalised());
    if (found == node_numbers_.end()) return std::nullopt;
    parts.emplace_back(found->second, c * form.terms[0].second);
    links.push_back({unknown, found->second, form.terms[0].second});
  }
  if (parts.empty() || !lengths.constant.is_zero()) return std::nullopt;
  const Tree paths = tree(parts[0].first, any);
  std::vector<Ratio> terms;
  std::set<int> edges;
  for (const auto& [node, c] : parts) {
    if (!paths.reached[static_cast<std::size_t>(node)]) return std::nullopt;
    terms.push_back(paths.value[static_cast<std::size_t>(node)]);
    terms.back().factor *= c;
    std::set<int> its;
    toggle_path(paths, node, its);
    edges.insert(its.begin(), its.end());
  }
  SineCondition result = condition(std::move(terms), edges, links, {});
  for (const SineProduct& term : result.terms)
    if (term.sines.size() > kMostSines) return std::nullopt;
  return result;
}

}  // namespace prover
