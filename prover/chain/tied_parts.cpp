#include "prover/chain/tied_parts.hpp"

#include <algorithm>
#include <unordered_map>

#include "prover/statement/canonical_fact.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

std::vector<std::size_t> variables_of(const Quantity& quantity) {
  if (const auto* a = std::get_if<Angle>(&quantity))
    return {a->vertex.index(), a->arm1.index(), a->arm2.index()};  // the vertex first
  if (const auto* s = std::get_if<Segment>(&quantity)) return {s->a.index(), s->b.index()};
  return {};
}

bool is_plain(const Quantity& quantity) {
  const auto* angle = std::get_if<Angle>(&quantity);
  return std::holds_alternative<Segment>(quantity) || (angle && !angle->reflex && !angle->exterior);
}

bool recognises_a_circle(const Rule& rule) {
  return std::all_of(rule.then.begin(), rule.then.end(), [](const Phrase& phrase) {
    const auto kind = fact_kind_of(phrase);
    return kind == FactKind::circle || kind == FactKind::concyclic || kind == FactKind::tangent_through;
  });
}

bool has(const std::vector<std::size_t>& list, std::size_t v) {
  return std::find(list.begin(), list.end(), v) != list.end();
}

}  // namespace

std::optional<TiedParts> TiedParts::of(const Rule& rule) {
  if (rule.given.size() != 1 || rule.given[0].predicate != Predicate::relation || !recognises_a_circle(rule)) return {};
  const auto& sides = rule.given[0].relation.expressions;
  TiedParts tied;
  tied.variables_ = rule.variables.points.size();
  const auto add = [&](const Term& term, bool turned) {
    tied.parts_.push_back({term.quantity, variables_of(term.quantity), turned});
    return term.coefficient.is_one() && is_plain(term.quantity);
  };
  bool fits = true;
  if (sides.size() == 2 && sides[0].terms.size() == 2 && sides[1].terms.size() == 1 &&
      std::holds_alternative<One>(sides[1].terms[0].quantity)) {  // two angles that make a total
    tied.total_ = sides[1].terms[0].coefficient;
    fits = add(sides[0].terms[0], false) && add(sides[0].terms[1], true);
  } else {
    for (const Expression& side : sides) fits = fits && side.terms.size() == 1 && add(side.terms[0], false);
  }
  if (!fits || tied.parts_.size() < 2) return {};
  for (std::size_t v = 0; v < tied.variables_; ++v) {
    const auto in = std::count_if(tied.parts_.begin(), tied.parts_.end(), [&](const Part& p) { return has(p.own, v); });
    if (in == 0) return {};
    if (in == static_cast<std::ptrdiff_t>(tied.parts_.size()))
      tied.shared_.push_back(v);
    else if (in > 1)
      return {};
  }
  return tied;
}

// Every place of the part's variables in the figure.
void TiedParts::enumerate(const Part& part, const Knowledge& knowledge, Places places, std::vector<Places>& out) const {
  const Arrangement& figure = knowledge.arrangement;
  for (std::size_t i = 0; i < figure.point_count(); ++i) {
    const PointId first(static_cast<std::int64_t>(i));
    places[part.own[0]] = first;
    for (PointId second : figure.joined_to(first)) {
      places[part.own[1]] = second;
      if (part.own.size() == 2) {
        out.push_back(places);
        continue;
      }
      for (PointId third : figure.joined_to(first)) {
        if (figure.line(first, second) == figure.line(first, third)) continue;
        places[part.own[2]] = third;
        out.push_back(places);
      }
    }
  }
}

void TiedParts::match(Matcher& matcher, Knowledge& knowledge) {
  if (knowledge.version() == last_version_) return;
  last_version_ = knowledge.version();
  struct Key {
    std::vector<PointId> shared;
    Form size;
    bool operator==(const Key&) const = default;
  };
  const auto hash = [](const Key& key) {
    std::size_t h = key.size.hash();
    for (const PointId p : key.shared) h = h * 1000003 + static_cast<std::size_t>(p.value);
    return h;
  };
  // By key: for each part the places that have it, in the order of the figure.
  std::unordered_map<Key, std::size_t, decltype(hash)> index(64, hash);
  std::vector<std::vector<std::vector<Places>>> classes;
  for (std::size_t part = 0; part < parts_.size(); ++part) {
    std::vector<Places> all;
    enumerate(parts_[part], knowledge, Places(variables_), all);
    Expression alone;
    alone.terms.push_back({1, parts_[part].quantity, {}});
    for (Places& places : all) {
      if (knowledge.budget.exhausted()) return;
      bool degenerate = false;
      Form size = form_of(alone, places, knowledge.arrangement, knowledge.unknowns, degenerate);
      if (degenerate) continue;
      if (parts_[part].turned) size = Form::number(total_).add(size, -1);
      Key key{{}, knowledge.normal_form(size)};
      for (const std::size_t v : shared_) key.shared.push_back(places[v]);
      const auto [at, fresh] = index.try_emplace(std::move(key), classes.size());
      if (fresh) {
        if (part > 0) {  // nothing to go with
          index.erase(at);
          continue;
        }
        classes.emplace_back(parts_.size());
      }
      classes[at->second][part].push_back(std::move(places));
    }
  }
  Places places(variables_);
  const auto combine = [&](const auto& self, const std::vector<std::vector<Places>>& found, std::size_t part) -> void {
    if (knowledge.full()) return;
    if (part == parts_.size()) {
      matcher.offer_where_known(places);
      return;
    }
    for (const Places& one : found[part]) {
      for (const std::size_t v : parts_[part].own) places[v] = one[v];
      self(self, found, part + 1);
    }
  };
  for (const auto& found : classes) combine(combine, found, 0);
}

}  // namespace prover
