#include "prover/chain/triangle_pairs.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <unordered_map>

#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

// Which triangle an expression speaks of: 0, 1, 2 for both, nothing for a constant.
std::optional<int> side_of(const Expression& e, const std::array<std::size_t, 3>& first) {
  std::optional<int> side;
  auto see = [&](PointId p) {
    const int s = std::find(first.begin(), first.end(), p.index()) != first.end() ? 0 : 1;
    side = side && *side != s ? 2 : s;
  };
  for (const Term& term : e.terms) {
    if (const auto* a = std::get_if<Angle>(&term.quantity)) {
      see(a->vertex);
      see(a->arm1);
      see(a->arm2);
    } else if (const auto* s = std::get_if<Segment>(&term.quantity)) {
      see(s->a);
      see(s->b);
    }
  }
  return side;
}

}  // namespace

std::vector<std::array<PointId, 3>> drawn_triangles(const Arrangement& figure) {
  std::vector<std::array<PointId, 3>> all;
  for (std::size_t i = 0; i < figure.point_count(); ++i) {
    const PointId a(static_cast<std::int64_t>(i));
    for (PointId b : figure.joined_to(a)) {
      if (!(a < b)) continue;
      const LineId ab = figure.line(a, b);
      for (PointId c : figure.joined_to(b)) {
        if (!(b < c) || !figure.line(a, c).valid() || figure.line(a, c) == ab || figure.line(b, c) == ab) continue;
        if (!figure.known({PositionKind::not_collinear, a, b, c, {}})) continue;
        all.insert(all.end(), {{a, b, c}, {a, c, b}, {b, a, c}, {b, c, a}, {c, a, b}, {c, b, a}});
      }
    }
  }
  return all;
}

TrianglePairs::TrianglePairs(const Rule& rule, Matcher& matcher, Knowledge& knowledge)
    : matcher_(matcher), knowledge_(knowledge), variables_(rule.variables.points.size()) {
  bool have_first = false;
  for (const Phrase& phrase : rule.given)
    if (phrase.predicate == Predicate::triangle) {
      auto& group = have_first ? second_ : first_;
      for (std::size_t i = 0; i < 3; ++i) group[i] = phrase.points[i].index();
      have_first = true;
    }
  for (const Phrase& phrase : rule.given) {
    if (phrase.predicate != Predicate::relation) continue;
    const auto& e = phrase.relation.expressions;
    for (std::size_t i = 0; i + 1 < e.size(); ++i) {
      const auto a = side_of(e[i], first_), b = side_of(e[i + 1], first_);
      if (a && b && *a == 0 && *b == 1) {
        ties_.push_back({e[i], e[i + 1]});
      } else if (a && b && *a == 1 && *b == 0) {
        ties_.push_back({e[i + 1], e[i]});
      } else if ((!a || *a == 0) && (!b || *b == 0)) {
        first_only_.push_back(phrase);
      } else if ((!a || *a == 1) && (!b || *b == 1)) {
        second_only_.push_back(phrase);
      } else {
        usable_ = false;
      }
    }
  }
  usable_ = usable_ && !ties_.empty();
}

void TrianglePairs::match(const std::vector<std::array<PointId, 3>>& triangles) {
  if (!usable_ || knowledge_.version() == last_version_) return;
  last_version_ = knowledge_.version();
  const Arrangement& figure = knowledge_.arrangement;
  std::vector<PointId> places(variables_);
  auto holds = [&](const std::vector<Phrase>& conditions) {
    return std::all_of(conditions.begin(), conditions.end(), [&](const Phrase& phrase) {
      const Meaning meaning = meaning_of(phrase, places, figure, knowledge_.unknowns);
      return !meaning.degenerate && std::all_of(meaning.forms.begin(), meaning.forms.end(),
                                                [&](const Form& f) { return knowledge_.entails(f); });
    });
  };
  using Key = std::vector<Form>;
  auto hash = [](const Key& key) {
    std::size_t h = 7;
    for (const Form& f : key) h = h * 1000003 + f.hash();
    return h;
  };
  auto key_of = [&](bool second) {
    Key key;
    for (const Tie& tie : ties_) {
      bool degenerate = false;
      const Form form =
          form_of(second ? tie.second : tie.first, places, figure, knowledge_.unknowns, degenerate);
      if (degenerate) return Key();
      key.push_back(knowledge_.normal_form(form));
    }
    return key;
  };
  std::unordered_map<Key, std::vector<std::size_t>, decltype(hash)> table(triangles.size(), hash);
  for (std::size_t t = 0; t < triangles.size(); ++t) {
    for (std::size_t i = 0; i < 3; ++i) places[first_[i]] = triangles[t][i];
    if (!holds(first_only_)) continue;
    Key key = key_of(false);
    if (!key.empty()) table[std::move(key)].push_back(t);
  }
  for (std::size_t t = 0; t < triangles.size() && !knowledge_.full() && !knowledge_.budget.exhausted(); ++t) {
    for (std::size_t i = 0; i < 3; ++i) places[second_[i]] = triangles[t][i];
    if (!holds(second_only_)) continue;
    const auto found = table.find(key_of(true));
    if (found == table.end()) continue;
    for (const std::size_t other : found->second) {
      if (other == t) continue;
      std::vector<PointId> both = places;
      for (std::size_t i = 0; i < 3; ++i) both[first_[i]] = triangles[other][i];
      matcher_.offer_at(both);
    }
  }
}

}  // namespace prover
