#include "prover/chain/knowledge.hpp"

#include <algorithm>
#include <boost/container/small_vector.hpp>
#include <functional>
#include <queue>
#include <utility>

namespace prover {

namespace {

// The same rule from the same premises to the same conclusions is one instance, whatever the letters were. The parts
// are put in order before they are mixed.
std::size_t instance_hash(const Instance& instance) {
  boost::container::small_vector<std::size_t, 16> parts;
  for (const Form& f : instance.premises) parts.push_back(f.normalised_hash() * 3);
  for (const Form& f : instance.conclusions) parts.push_back(f.normalised_hash() * 3 + 1);
  std::sort(parts.begin(), parts.end());
  std::size_t h = static_cast<std::size_t>(instance.rule.value) * 7919 +
                  static_cast<std::size_t>(instance.hypothesis + 1);
  for (const std::size_t p : parts) h = (h ^ p) * 1099511628211ULL + (h >> 29);
  return h;
}

void drop_trivial(std::vector<Form>& forms) {
  for (std::size_t i = 0; i < forms.size();) {
    const auto here = forms.begin() + static_cast<std::ptrdiff_t>(i);
    if (here->is_zero() || std::find(forms.begin(), here, *here) != here)
      forms.erase(here);
    else
      ++i;
  }
}

}  // namespace

// A step that concludes only what the problem says, or what it assumes, is of no use.
bool Knowledge::is_idle(const Instance& instance) const {
  return std::all_of(instance.conclusions.begin(), instance.conclusions.end(), [&](const Form& f) {
    const std::size_t hash = f.normalised_hash();
    return (given_hashes_.contains(hash) && given_.contains(f.normalised())) ||
           std::any_of(instance.premises.begin(), instance.premises.end(), [&](const Form& p) {
             return p.terms.size() == f.terms.size() && p.normalised_hash() == hash && p.normalised() == f.normalised();
           });
  });
}

bool Knowledge::is_new(Instance& instance) {
  ++offered_;
  drop_trivial(instance.premises);
  drop_trivial(instance.conclusions);
  if (instance.conclusions.empty()) return false;
  if (instance.hypothesis >= 0) {
    for (const Form& f : instance.conclusions) {
      given_.insert(f.normalised());
      given_hashes_.insert(f.normalised_hash());
    }
  } else if (is_idle(instance)) {
    return false;
  }
  return seen_.insert(instance_hash(instance));
}

void Knowledge::take(const Instance& instance) {
  const auto& premises = instance.premises;
  const auto open = std::find_if(premises.begin(), premises.end(), [&](const Form& f) { return !entails(f); });
  if (open == premises.end()) return fire(instance);
  ++waiting_count_;
  waiting_.push_back({instance, {open, premises.end()}, false});
  waiting_.back().open[0] = system_.reduce(*open);
  wait(waiting_.size() - 1);
}

bool Knowledge::ready(Waiting& waiting) const {
  auto& open = waiting.open;
  while (!open.empty()) {
    Form& form = open[0];
    const bool changed = std::any_of(form.terms.begin(), form.terms.end(),
                                     [&](const auto& term) { return system_.is_pivot(term.first); });
    if (changed) form = system_.reduce(form);
    if (!form.is_zero()) return false;
    open.erase(open.begin());
  }
  return true;
}

void Knowledge::wait(std::size_t waiting) {
  for (const auto& [unknown, coefficient] : waiting_[waiting].open[0].terms) {
    if (woken_by_.size() <= unknown.index()) woken_by_.resize(unknowns.size());
    woken_by_[unknown.index()].push_back(static_cast<std::int32_t>(waiting));
  }
}

void Knowledge::wake(UnknownId pivot) {
  if (pivot.index() >= woken_by_.size()) return;
  for (const std::int32_t w : std::exchange(woken_by_[pivot.index()], {})) {
    Waiting& waiting = waiting_[static_cast<std::size_t>(w)];
    if (waiting.woken || waiting.open.empty()) continue;
    waiting.woken = true;
    woken_.push_back(w);
  }
}

void Knowledge::fire(Instance instance) {
  for (const Form& form : instance.conclusions)
    if (system_.add(form) == LinearSystem::Added::new_row) wake(system_.pivot(system_.rank() - 1));
  fired_.push_back(std::move(instance));
}

// In rounds, and in each in the order of offers: who is woken by one that stands before him fires in the same round.
bool Knowledge::settle() {
  const std::size_t fired_before = fired_.size(), facts_before = facts_.size();
  std::priority_queue<std::int32_t, std::vector<std::int32_t>, std::greater<>> round;
  std::vector<std::int32_t> later;
  for (bool changed = true; changed && !contradictory() && !budget.exhausted();) {
    changed = false;
    later.clear();
    for (std::int32_t here = -1;;) {
      for (const std::int32_t w : woken_) {
        if (w > here)
          round.push(w);
        else
          later.push_back(w);
      }
      woken_.clear();
      if (round.empty()) break;
      here = round.top();
      round.pop();
      Waiting& waiting = waiting_[static_cast<std::size_t>(here)];
      waiting.woken = false;
      if (ready(waiting)) {
        --waiting_count_;
        fire(std::move(waiting.instance));
        changed = true;
      } else {
        wait(static_cast<std::size_t>(here));
      }
    }
    woken_ = later;
  }
  note_facts();
  return fired_.size() != fired_before || facts_.size() != facts_before;
}

void Knowledge::note_facts() {
  for (; facts_checked_ < unknowns.size(); ++facts_checked_) {
    const UnknownId id(static_cast<std::int64_t>(facts_checked_));
    if (unknowns[id].kind != UnknownKind::fact) continue;
    if (unknowns[id].fact != FactKind::circle) {
      open_facts_.push_back(id);
      continue;
    }
    const std::size_t centre = unknowns[id].points[0].index();
    if (circles_.size() <= centre) circles_.resize(centre + 1);
    circles_[centre].push_back(id);
  }
  note_circles();
  std::erase_if(open_facts_, [&](UnknownId id) {
    if (!system_.is_zero(id)) return false;
    const Unknown& u = unknowns[id];
    KnownFact fact{u.fact, {}, {}, u.points};
    if (u.fact == FactKind::parallel || u.fact == FactKind::perpendicular) {
      fact.first = arrangement.line(u.points[0], u.points[1]);
      fact.second = arrangement.line(u.points[2], u.points[3]);
    }
    if (u.fact == FactKind::tangent || u.fact == FactKind::tangent_through) {
      fact.first = arrangement.line(u.points[0], u.points[1]);
      fact.points.erase(fact.points.begin(), fact.points.begin() + 2);
    }
    note(std::move(fact));
    return true;
  });
  // Lines that meet at a named point are perpendicular when an angle there is known to be 90°.
  if (!corners_listed_) {
    corners_listed_ = true;
    for (std::size_t v = 0; v < arrangement.point_count(); ++v) {
      const PointId vertex(static_cast<std::int64_t>(v));
      const auto& through = arrangement.lines_through(vertex);
      for (std::size_t i = 0; i < through.size(); ++i)
        for (std::size_t j = i + 1; j < through.size(); ++j)
          open_corners_.push_back({vertex, PointId(through[i].value), PointId(through[j].value)});
    }
  }
  std::erase_if(open_corners_, [&](const std::array<PointId, 3>& corner) {
    const PointId vertex = corner[0];
    const LineId first(corner[1].value), second(corner[2].value);
    for (PointId p : arrangement.rays_at(vertex)) {
      if (arrangement.line(vertex, p) != first) continue;
      for (PointId q : arrangement.rays_at(vertex)) {
        if (arrangement.line(vertex, q) != second) continue;
        const UnknownId angle = unknowns.find_angle(vertex, p, q);
        if (!angle.valid() || system_.value(angle) != Rational(90)) continue;
        note({FactKind::perpendicular, first, second, {}});
        return true;
      }
    }
    return false;
  });
}

// Points round one centre are on one circle when their unknowns have become the same.
void Knowledge::note_circles() {
  one_circle_.resize(circles_.size());
  for (std::size_t centre = 0; centre < circles_.size(); ++centre) {
    const std::vector<UnknownId>& round = circles_[centre];
    if (round.size() < 2) continue;
    std::vector<bool>& noted = one_circle_[centre];  // (i, j) with i < j at j (j − 1) / 2 + i
    noted.resize(round.size() * (round.size() - 1) / 2);
    std::vector<Form> normal;
    for (const UnknownId id : round) normal.push_back(normal_form(Form::of(id)));
    for (std::size_t j = 1; j < round.size(); ++j)
      for (std::size_t i = 0; i < j; ++i) {
        const std::size_t pair = j * (j - 1) / 2 + i;
        if (noted[pair] || !(normal[i] == normal[j])) continue;
        noted[pair] = true;
        const PointId p = unknowns[round[i]].points[1], q = unknowns[round[j]].points[1];
        note({FactKind::circle, {}, {}, {PointId(static_cast<std::int64_t>(centre)), std::min(p, q), std::max(p, q)}});
      }
  }
}

const std::vector<std::size_t>& Knowledge::facts_about(FactKind kind, LineId line) const {
  static const std::vector<std::size_t> none;
  const auto& facts = by_line_[kind == FactKind::parallel ? 0 : 1];
  return line.index() < facts.size() ? facts[line.index()] : none;
}

void Knowledge::note(KnownFact fact) {
  if (fact.kind == FactKind::parallel || fact.kind == FactKind::perpendicular) {
    auto& facts = by_line_[fact.kind == FactKind::parallel ? 0 : 1];
    facts.resize(arrangement.line_count());
    for (const LineId line : {fact.first, fact.second}) facts[line.index()].push_back(facts_.size());
  }
  by_kind_[static_cast<std::size_t>(fact.kind)].push_back(facts_.size());
  facts_.push_back(std::move(fact));
}

}  // namespace prover
