#include "prover/ways/symmetry.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <unordered_set>

#include "prover/statement/canonical_fact.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

constexpr std::size_t kMostSymmetries = 240;
constexpr std::size_t kMostTries = 100'000;
constexpr std::size_t kMostPoints = 40;

UnknownId image_of(UnknownId id, const Exchange& exchange, const Arrangement& arrangement, UnknownTable& unknowns) {
  const Unknown u = unknowns[id];
  std::vector<PointId> p;
  for (const PointId q : u.points) p.push_back(exchange[q.index()]);
  switch (u.kind) {
    case UnknownKind::number:
      return id;
    case UnknownKind::excess: {
      const Form difference = unknowns.difference(id);
      Form image = Form::number(difference.constant);
      for (const auto& [part, factor] : difference.terms) {
        const UnknownId other = image_of(part, exchange, arrangement, unknowns);
        if (!other.valid()) return {};
        image.add(Form::of(other), factor);
      }
      return unknowns.excess(image);
    }
    case UnknownKind::length:
      return unknowns.intern({UnknownKind::length, {}, {std::min(p[0], p[1]), std::max(p[0], p[1])}, {}});
    case UnknownKind::angle: {
      if (!arrangement.line(p[0], p[1]).valid() || !arrangement.line(p[0], p[2]).valid()) return {};
      const PointId a = arrangement.ray(p[0], p[1]), b = arrangement.ray(p[0], p[2]);
      return a == b ? UnknownId() : unknowns.intern({UnknownKind::angle, {}, {p[0], std::min(a, b), std::max(a, b)}, {}});
    }
    case UnknownKind::fact:
      break;
  }
  if (u.fact == FactKind::parallel || u.fact == FactKind::perpendicular)
    return line_fact(u.fact, p[0], p[1], p[2], p[3], arrangement, unknowns);
  if (u.fact == FactKind::tangent || u.fact == FactKind::tangent_through)
    return tangent_fact(p[0] == p[2] ? p[1] : p[0], p[2], {p.begin() + 3, p.end()}, arrangement, unknowns);
  return point_fact(u.fact, std::move(p), unknowns);
}

class Search {
 public:
  Search(const Statement& statement, const std::vector<Form>& goal, const Arrangement& arrangement,
         UnknownTable& unknowns)
      : statement_(statement), arrangement_(arrangement), unknowns_(unknowns), count_(arrangement.point_count()) {
    for (const Given& given : statement.givens) {
      for (const Form& form : given_forms(given.phrase, arrangement, unknowns)) givens_.insert(form.normalised());
      for (const Position& p : meaning_of(given.phrase, arrangement, unknowns).positions) positions_.push_back(p);
    }
    for (const Form& form : goal) goal_.insert(form.normalised());
  }

  std::vector<Exchange> run() {
    Exchange identity;
    for (std::size_t i = 0; i < count_; ++i) identity.emplace_back(static_cast<std::int64_t>(i));
    found_ = {identity};
    if (count_ <= kMostPoints) {
      refine();
      exchange_.resize(count_);
      taken_.resize(count_);
      extend(0);
    }
    return std::move(found_);
  }

 private:
  PointId point(std::size_t i) const { return PointId(static_cast<std::int64_t>(i)); }

  // Points that play a part in an unknown, with the part: all points of a ray are alike, as is every point of a line.
  std::vector<std::pair<char, std::vector<PointId>>> parts(const Unknown& u) const {
    const auto on_ray = [&](PointId vertex, PointId toward) {
      std::vector<PointId> on;
      for (const PointId q : arrangement_.points_on(arrangement_.line(vertex, toward)))
        if (q != vertex && arrangement_.ray(vertex, q) == arrangement_.ray(vertex, toward)) on.push_back(q);
      return on;
    };
    const auto on_line = [&](PointId a, PointId b) { return arrangement_.points_on(arrangement_.line(a, b)); };
    const auto& p = u.points;
    switch (u.kind) {
      case UnknownKind::number:
      case UnknownKind::excess:
        return {};
      case UnknownKind::length:
        return {{'e', p}};
      case UnknownKind::angle:
        return {{'v', {p[0]}}, {'r', on_ray(p[0], p[1])}, {'r', on_ray(p[0], p[2])}};
      case UnknownKind::fact:
        break;
    }
    if (u.fact == FactKind::parallel || u.fact == FactKind::perpendicular)
      return {{'l', on_line(p[0], p[1])}, {'l', on_line(p[2], p[3])}};
    if (u.fact == FactKind::tangent || u.fact == FactKind::tangent_through)
      return {{'l', on_line(p[0], p[1])}, {'t', {p[2]}}, {'c', {p.begin() + 3, p.end()}}};
    if (u.fact == FactKind::circle) return {{'c', {p[0]}}, {'p', {p[1]}}};
    return {{'f', p}};
  }

  std::string colours_of(const std::vector<PointId>& points) const {
    std::vector<int> all;
    for (const PointId p : points) all.push_back(colour_[p.index()]);
    std::sort(all.begin(), all.end());
    std::string text;
    for (const int c : all) text += std::to_string(c) + ",";
    return text;
  }

  void refine() {
    colour_.assign(count_, 0);
    for (std::size_t classes = 0;;) {
      std::vector<std::vector<std::string>> seen(count_);
      for (std::size_t i = 0; i < count_; ++i) {
        seen[i].push_back(std::to_string(colour_[i]) + (statement_.hidden[i] ? "h" : ""));
        for (const LineId line : arrangement_.lines_through(point(i)))
          seen[i].push_back((arrangement_.is_joined(line) ? "j" : "d") + colours_of(arrangement_.points_on(line)));
      }
      for (const auto* forms : {&givens_, &goal_})
        for (const Form& form : *forms) note(form, forms == &givens_ ? 'g' : 'q', seen);
      std::map<std::vector<std::string>, int> names;
      for (auto& s : seen) {
        std::sort(s.begin(), s.end());
        names.emplace(s, 0);
      }
      int next = 0;
      for (auto& [s, name] : names) name = next++;
      for (std::size_t i = 0; i < count_; ++i) colour_[i] = names[seen[i]];
      if (names.size() == classes) return;
      classes = names.size();
    }
  }
  // Signs and the order of terms may change under an exchange: only the size of a coefficient, measured by the
  // largest, tells unknowns apart.
  void note(const Form& form, char tag, std::vector<std::vector<std::string>>& seen) const {
    const auto size = [](const Rational& r) { return r.sign() < 0 ? -r : r; };
    Rational largest;
    for (const auto& [u, c] : form.terms) largest = std::max(largest, size(c));
    for (const auto& [u, c] : form.terms) {
      const auto all = parts(unknowns_[u]);
      std::vector<std::string> kinds;
      for (const auto& [part, points] : all) kinds.push_back(part + colours_of(points));
      std::sort(kinds.begin(), kinds.end());
      std::string whole = tag + (size(c) / largest).to_string() + "/" + std::to_string(form.terms.size());
      for (const std::string& k : kinds) whole += k;
      for (const auto& [part, points] : all)
        for (const PointId p : points) seen[p.index()].push_back(whole + part);
    }
  }

  void extend(std::size_t next) {
    if (found_.size() >= kMostSymmetries || ++tries_ > kMostTries) return;
    if (next == count_) {
      if (exchange_ != found_[0] && is_symmetry()) found_.push_back(exchange_);
      return;
    }
    for (std::size_t to = 0; to < count_; ++to) {
      if (taken_[to] || colour_[to] != colour_[next]) continue;
      exchange_[next] = point(to);
      if (!fits(next)) continue;
      taken_[to] = true;
      extend(next + 1);
      taken_[to] = false;
    }
  }

  // Lines and the order on them, as far as points are matched.
  bool fits(std::size_t last) const {
    const PointId c = point(last), c2 = exchange_[last];
    for (std::size_t i = 0; i < last; ++i) {
      const PointId a = point(i), a2 = exchange_[i];
      const LineId line = arrangement_.line(a, c), line2 = arrangement_.line(a2, c2);
      if (line.valid() != line2.valid()) return false;
      if (!line.valid()) continue;
      if (arrangement_.is_joined(line) != arrangement_.is_joined(line2)) return false;
      for (std::size_t j = 0; j < i; ++j) {
        const PointId b = point(j), b2 = exchange_[j];
        const bool on = arrangement_.line(b, c) == line;
        if (on != (arrangement_.line(b2, c2) == line2)) return false;
        if (on && (between(a, b, c) != between(a2, b2, c2) || between(b, a, c) != between(b2, a2, c2) ||
                   between(a, c, b) != between(a2, c2, b2)))
          return false;
      }
    }
    return true;
  }
  bool between(PointId a, PointId b, PointId c) const {
    return arrangement_.known(canonical({PositionKind::between, a, b, c, {}}));
  }

  bool is_symmetry() {
    const auto goes_into = [&](const std::unordered_set<Form>& forms) {
      return std::all_of(forms.begin(), forms.end(), [&](const Form& f) {
        const auto image = prover::image_of(f, exchange_, arrangement_, unknowns_);
        return image && forms.contains(*image);
      });
    };
    const auto to = [&](PointId p) { return p.valid() ? exchange_[p.index()] : p; };
    return goes_into(givens_) && goes_into(goal_) &&
           std::all_of(positions_.begin(), positions_.end(), [&](const Position& p) {
             return arrangement_.known(canonical({p.kind, to(p.a), to(p.b), to(p.c), to(p.d)}));
           });
  }

  const Statement& statement_;
  const Arrangement& arrangement_;
  UnknownTable& unknowns_;
  std::size_t count_;
  std::unordered_set<Form> givens_, goal_;
  std::vector<Position> positions_;
  std::vector<int> colour_;
  Exchange exchange_;
  std::vector<bool> taken_;
  std::vector<Exchange> found_;
  std::size_t tries_ = 0;
};

}  // namespace

std::optional<Form> image_of(const Form& form, const Exchange& exchange, const Arrangement& arrangement,
                             UnknownTable& unknowns) {
  Form image = Form::number(form.constant);
  for (const auto& [u, c] : form.terms) {
    const UnknownId to = image_of(u, exchange, arrangement, unknowns);
    if (!to.valid()) return std::nullopt;
    image.add(Form::of(to, c));
  }
  return image.normalised();
}

std::vector<Exchange> symmetries(const Statement& statement, const std::vector<Form>& goal,
                                 const Arrangement& arrangement, UnknownTable& unknowns) {
  return Search(statement, goal, arrangement, unknowns).run();
}

}  // namespace prover
