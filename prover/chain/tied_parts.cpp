#include "prover/chain/tied_parts.hpp"

#include <algorithm>
#include <array>
#include <unordered_map>

#include "prover/statement/canonical_fact.hpp"

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
  if (tied.shared_.size() > most_shared) return {};
  return tied;
}

// Every place of the part's variables in the figure, and the unknown that stands there.
template <class Act>
void TiedParts::enumerate(const Part& part, Knowledge& knowledge, Act&& act) const {
  const Arrangement& figure = knowledge.arrangement;
  for (std::size_t i = 0; i < figure.point_count(); ++i) {
    const PointId first(static_cast<std::int64_t>(i));
    for (const PointId second : figure.joined_to(first)) {
      if (part.own.size() == 2) {
        act(Own{first, second, {}}, knowledge.unknowns.length(first, second));
        continue;
      }
      const PointId ray = figure.ray(first, second);
      for (const PointId third : figure.joined_to(first))
        if (figure.line(first, second) != figure.line(first, third))
          act(Own{first, second, third}, knowledge.unknowns.angle(first, ray, figure.ray(first, third)));
    }
  }
}

void TiedParts::match(Matcher& matcher, Knowledge& knowledge) {
  if (knowledge.version() == last_version_) return;
  last_version_ = knowledge.version();
  // Sizes that are known to be equal have one number; many places speak of the same unknown.
  std::unordered_map<Form, std::int32_t> number_of_form;
  struct Key {
    std::array<PointId, most_shared> shared;
    std::int32_t size = 0;
    bool operator==(const Key&) const = default;
  };
  const auto hash = [](const Key& key) {
    std::uint64_t h = static_cast<std::uint64_t>(key.size);
    for (const PointId p : key.shared) h = (h ^ static_cast<std::uint32_t>(p.value)) * 0x9e3779b97f4a7c15U + (h >> 32);
    return static_cast<std::size_t>(h ^ h >> 32);
  };
  // By key: for each part the places that have it, in the order of the figure.
  std::unordered_map<Key, std::size_t, decltype(hash)> index(64, hash);
  std::vector<std::vector<std::vector<Own>>> classes;
  for (std::size_t p = 0; p < parts_.size(); ++p) {
    const Part& part = parts_[p];
    std::unordered_map<UnknownId, std::int32_t> number_of;
    const auto size_of = [&](UnknownId unknown) {
      const auto [at, fresh] = number_of.try_emplace(unknown, -1);
      if (fresh) {
        Form size = Form::of(unknown);
        if (part.turned) size = Form::number(total_).add(size, -1);
        at->second = number_of_form.try_emplace(knowledge.normal_form(size), static_cast<std::int32_t>(number_of_form.size()))
                         .first->second;
      }
      return at->second;
    };
    enumerate(part, knowledge, [&](const Own& own, UnknownId unknown) {
      Key key;
      key.size = size_of(unknown);
      for (std::size_t i = 0; i < shared_.size(); ++i)
        for (std::size_t k = 0; k < part.own.size(); ++k)
          if (part.own[k] == shared_[i]) key.shared[i] = own[k];
      auto at = index.find(key);
      if (at == index.end()) {
        if (p > 0) return;  // nothing to go with
        at = index.emplace(key, classes.size()).first;
        classes.emplace_back(parts_.size());
      }
      classes[at->second][p].push_back(own);
    });
    if (knowledge.budget.exhausted()) return;
  }
  Places places(variables_);
  const auto combine = [&](const auto& self, const std::vector<std::vector<Own>>& found, std::size_t part) -> void {
    if (knowledge.full()) return;
    if (part == parts_.size()) {
      matcher.offer_where_known(places);
      return;
    }
    for (const Own& one : found[part]) {
      for (std::size_t k = 0; k < parts_[part].own.size(); ++k) places[parts_[part].own[k]] = one[k];
      self(self, found, part + 1);
    }
  };
  for (const auto& found : classes) {
    if (knowledge.budget.exhausted()) return;
    combine(combine, found, 0);
  }
}

}  // namespace prover
