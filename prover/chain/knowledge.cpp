#include "prover/chain/knowledge.hpp"

#include <algorithm>

namespace prover {

namespace {

// The same rule from the same premises to the same conclusions is one instance, whatever the letters were.
std::size_t instance_hash(const Instance& instance) {
  std::vector<std::size_t> parts;
  for (const Form& f : instance.premises) parts.push_back(f.normalised().hash() * 3);
  for (const Form& f : instance.conclusions) parts.push_back(f.normalised().hash() * 3 + 1);
  std::sort(parts.begin(), parts.end());
  std::size_t h = static_cast<std::size_t>(instance.rule.value) * 7919 +
                  static_cast<std::size_t>(instance.hypothesis + 1);
  for (const std::size_t p : parts) h = (h ^ p) * 1099511628211ULL + (h >> 29);
  if (instance.conclusions.empty())
    for (PointId p : instance.places) h = h * 31 + static_cast<std::size_t>(p.value);
  return h;
}

}  // namespace

void Knowledge::offer(Instance instance) {
  ++offered_;
  auto drop_trivial = [](std::vector<Form>& forms) {
    for (std::size_t i = 0; i < forms.size();) {
      const bool trivial = forms[i].is_zero() || std::find(forms.begin(), forms.begin() + static_cast<std::ptrdiff_t>(i),
                                                           forms[i]) != forms.begin() + static_cast<std::ptrdiff_t>(i);
      if (trivial)
        forms.erase(forms.begin() + static_cast<std::ptrdiff_t>(i));
      else
        ++i;
    }
  };
  drop_trivial(instance.premises);
  drop_trivial(instance.conclusions);
  if (instance.conclusions.empty()) return;
  if (instance.hypothesis >= 0) {
    for (const Form& f : instance.conclusions) given_.insert(f.normalised());
  } else {
    // A step that concludes only what the problem says, or what it assumes, is of no use.
    const bool idle = std::all_of(instance.conclusions.begin(), instance.conclusions.end(), [&](const Form& f) {
      const Form n = f.normalised();
      return given_.contains(n) || std::any_of(instance.premises.begin(), instance.premises.end(),
                                               [&](const Form& p) { return p.normalised() == n; });
    });
    if (idle) return;
  }
  if (!seen_.insert(instance_hash(instance)).second) return;
  Waiting waiting{std::move(instance), {}};
  waiting.open = waiting.instance.premises;
  if (ready(waiting))
    fire(std::move(waiting.instance));
  else
    waiting_.push_back(std::move(waiting));
}

bool Knowledge::ready(Waiting& waiting) const {
  for (std::size_t i = 0; i < waiting.open.size();) {
    Form& form = waiting.open[i];
    const bool changed = std::any_of(form.terms.begin(), form.terms.end(),
                                     [&](const auto& term) { return system_.is_pivot(term.first); });
    if (changed) form = system_.reduce(form);
    if (!form.is_zero()) {
      std::swap(waiting.open[0], waiting.open[i]);  // ask the one that failed first next time
      return false;
    }
    waiting.open.erase(waiting.open.begin() + static_cast<std::ptrdiff_t>(i));
  }
  return true;
}

void Knowledge::fire(Instance instance) {
  for (const Form& form : instance.conclusions) system_.add(form);
  fired_.push_back(std::move(instance));
}

bool Knowledge::settle() {
  const std::size_t fired_before = fired_.size(), facts_before = facts_.size();
  for (bool changed = true; changed && !contradictory() && !budget.exhausted();) {
    changed = false;
    std::vector<Waiting> still;
    still.reserve(waiting_.size());
    for (Waiting& w : waiting_) {
      if (ready(w)) {
        fire(std::move(w.instance));
        changed = true;
      } else {
        still.push_back(std::move(w));
      }
    }
    waiting_ = std::move(still);
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
    if (!entails(Form::of(id))) return false;
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
        const UnknownId angle = unknowns.find({UnknownKind::angle, {}, {vertex, std::min(p, q), std::max(p, q)}, {}});
        if (!angle.valid() || !entails(Form::of(angle).add(Form::number(-90)))) continue;
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

void Knowledge::note(KnownFact fact) {
  by_kind_[static_cast<std::size_t>(fact.kind)].push_back(facts_.size());
  facts_.push_back(std::move(fact));
}

}  // namespace prover
