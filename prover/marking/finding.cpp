#include "prover/marking/finding.hpp"

#include <algorithm>

#include "prover/marking/falsity.hpp"

namespace prover {

const std::vector<SaidBefore>& Finder::said(std::size_t g, bool with_wrong) {
  std::vector<SaidBefore>& lines = said_[g].lines;
  const Ground& ground = grounds_.at(g);
  for (std::size_t& k = said_[g].read; k < claims_.size(); ++k) {
    GroundClaim claim = ground.claim(claims_[k].phrase);
    lines.push_back({judgement_.lines[claims_[k].line].number, claim.meant ? std::move(claim.forms) : std::vector<Form>(), claims_[k].shown});
  }
  chosen_.clear();
  for (std::size_t k = 0; k < lines.size(); ++k)
    if (!lines[k].forms.empty() && (with_wrong || !claims_[k].wrong)) chosen_.push_back(lines[k]);
  return chosen_;
}

bool Finder::speaks_of_refused(const Phrase& phrase) const {
  const auto refused = [&](PointId p) { return p.valid() && p.index() < task_.refused_points.size() && task_.refused_points[p.index()]; };
  if (std::any_of(phrase.points.begin(), phrase.points.end(), refused)) return true;
  for (const Expression& expression : phrase.relation.expressions)
    for (const Term& term : expression.terms) {
      if (const auto* angle = std::get_if<Angle>(&term.quantity))
        if (refused(angle->arm1) || refused(angle->vertex) || refused(angle->arm2)) return true;
      if (const auto* segment = std::get_if<Segment>(&term.quantity))
        if (refused(segment->a) || refused(segment->b)) return true;
    }
  return false;
}

Finding Finder::find(Link link, const NamedRules& named) {
  Finding found;
  found.link = std::move(link);
  if (found.link.kind != LinkKind::claim || speaks_of_refused(found.link.phrase)) return found;
  seek_support(found, named);
  if (found.support) return found;
  const InFigures shown = in_figures(found.link.phrase, grounds_.figures());
  const auto impossible = right_value(found.link.phrase, grounds_.at(0));
  if (shown.breaks.empty() && !impossible) return found;
  // It holds in some arrangements of the figure only: perhaps the pupil has one of these before her.
  if (!shown.holds.empty())
    for (std::size_t g = 3; g < grounds_.count() && !found.support; ++g) try_ground(found, named, g, options_.allowed);
  if (found.support) return found;
  found.broken = true;
  if (!shown.breaks.empty()) found.figure = shown.breaks[0];
  seek_carried(found, named);
  return found;
}

bool Finder::try_ground(Finding& found, const NamedRules& named, std::size_t g, const std::vector<bool>& allowed) {
  const Ground& ground = grounds_.at(g);
  const GroundClaim claim = ground.claim(found.link.phrase);
  if (!claim.meant || !claim.follows) return false;
  SupportQuestion question{claim.forms, named.named, said(g, false), allowed, false, false, false};
  auto one = claim.forms.empty() ? std::optional<Support>(Support()) : support(ground, question, grounds_.budget());
  if (!one || (found.support && one->missing.size() >= found.support->missing.size())) return false;
  found.support = std::move(one);
  found.ground = g;
  return true;
}

void Finder::seek_support(Finding& found, const NamedRules& named) {
  // With a reason that leaves something open the next ground may show that it gives the line all the same.
  const auto good = [&] { return found.support && (found.support->missing.empty() || (!named.any && found.support->missing_theorems <= 1)); };
  for (const std::size_t g : {0, 1}) {
    try_ground(found, named, g, options_.allowed);
    if (good()) return;
  }
  try_ground(found, named, 2, options_.allowed);
  if (good()) return;
  // By theorems that the class has not been taught: only those that the pupil names.
  std::vector<bool> further = options_.allowed;
  for (std::size_t r = 0; r < named.named.size(); ++r) further[r] = further[r] || named.named[r];
  if (further == options_.allowed) return;
  if (try_ground(found, named, 2, further)) {
    const Ground& ground = grounds_.at(2);
    for (const int i : found.support->named) found.not_taught = found.not_taught || !options_.allowed[ground.instance(i).rule.index()];
  }
}

void Finder::seek_carried(Finding& found, const NamedRules& named) {
  if (std::none_of(claims_.begin(), claims_.end(), [](const LineClaim& c) { return c.wrong; })) return;
  for (const std::size_t g : {0, 1}) {
    const Ground& ground = grounds_.at(g);
    const GroundClaim claim = ground.claim(found.link.phrase);
    if (!claim.meant || claim.forms.empty()) continue;
    // With all lines; then with the wrong ones alone, in case she has contradicted herself.
    for (const bool wrong_only : {false, true}) {
      std::vector<SaidBefore> lines = said(g, true);
      if (wrong_only)
        std::erase_if(lines, [&](const SaidBefore& s) { return !is_wrong(s.number); });
      SupportQuestion question{claim.forms, named.named, std::move(lines), options_.allowed, named.any, true, true};
      auto one = support(ground, question, grounds_.budget());
      if (!one || one->missing_theorems > (named.any ? 0 : 1)) continue;
      if (std::none_of(one->lines.begin(), one->lines.end(), [&](int n) { return is_wrong(n); })) continue;
      found.carried = std::move(one);
      found.ground = g;
      return;
    }
  }
  seek_by_wrong_facts(found, named);
}

// Sides that are not equal, lines that are not parallel: with them rules fire that never fire in this figure. The chain runs
// once more with what the pupil believes among the givens, and no rules but those of her reason.
void Finder::seek_by_wrong_facts(Finding& found, const NamedRules& named) {
  if (!named.any) return;
  Statement believed = task_.statement;
  std::vector<int> line_of_given(believed.givens.size(), 0);
  for (const LineClaim& claim : claims_)
    if (claim.wrong) {
      believed.givens.push_back({claim.phrase, {}, false});
      line_of_given.push_back(judgement_.lines[claim.line].number);
    }
  AttemptOptions options = options_;
  for (std::size_t r = 0; r < options.allowed.size(); ++r)
    options.allowed[r] = named.named[r] || !is_cited(options_.catalogue.rules[r]);
  const Ground ground(believed, grounds_.figures(), options, grounds_.budget().share(0.2));
  const GroundClaim claim = ground.claim(found.link.phrase);
  if (!claim.meant || claim.forms.empty()) return;
  std::vector<SaidBefore> lines;
  for (const LineClaim& c : claims_)
    if (GroundClaim said = ground.claim(c.phrase); !c.wrong && said.meant && !said.forms.empty())
      lines.push_back({judgement_.lines[c.line].number, std::move(said.forms), c.shown});
  auto one = support(ground, {claim.forms, named.named, std::move(lines), options.allowed, true, true, true}, grounds_.budget());
  if (!one || one->named.empty()) return;
  bool wrong = false;
  for (const int i : one->instances)
    if (const int given = ground.instance(i).hypothesis; given >= 0 && line_of_given[static_cast<std::size_t>(given)] > 0) {
      one->lines.push_back(line_of_given[static_cast<std::size_t>(given)]);
      wrong = true;
    }
  if (!wrong) return;
  std::sort(one->lines.begin(), one->lines.end());
  one->lines.erase(std::unique(one->lines.begin(), one->lines.end()), one->lines.end());
  found.carried = std::move(one);
  found.ground = 0;
}

bool Finder::is_wrong(int number) const {
  return std::any_of(claims_.begin(), claims_.end(), [&](const LineClaim& c) { return c.wrong && judgement_.lines[c.line].number == number; });
}

}  // namespace prover
