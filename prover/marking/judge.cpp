#include "prover/marking/judge.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "prover/marking/argument.hpp"
#include "prover/marking/bridge.hpp"
#include "prover/marking/falsity.hpp"
#include "prover/marking/links.hpp"
#include "prover/marking/named_rules.hpp"
#include "prover/marking/pupils_way.hpp"
#include "prover/marking/remarks.hpp"
#include "prover/verdict/answer_of.hpp"

namespace prover {

namespace {

// What was found about one link of a line.
struct Finding {
  Link link;
  std::optional<Support> support;  // true, and by what
  std::size_t ground = 0;
  bool not_taught = false;
  std::optional<Support> carried;  // false, but it follows from an earlier wrong line
  bool broken = false;             // false in a figure, or against what follows
  std::size_t figure = 0;          // which
};

class Judge {
 public:
  Judge(const JudgeTask& task, Grounds& grounds, const AttemptOptions& options, Judgement& judgement)
      : task_(task), grounds_(grounds), options_(options), judgement_(judgement), said_(grounds.count()) {}

  void run() {
    for (std::size_t i = 0; i < task_.work.lines.size(); ++i) {
      judgement_.lines.emplace_back();
      judge_line(i);
    }
    judge_argument(task_, grounds_, options_, claims_, judgement_);
    add_pupils_way(task_, grounds_, options_, claims_, judgement_);
  }

 private:
  const Catalogue& catalogue() const { return options_.catalogue; }

  void judge_line(std::size_t i) {
    const WorkLine& line = task_.work.lines[i];
    JudgedLine& judged = judgement_.lines[i];
    judged.number = line.number;
    judged.text = line.text;
    for (const Phrase& claim : line.claims)
      judged.read_as += (judged.read_as.empty() ? "" : "; ") + describe(claim, task_.statement.names);
    if (line.ambiguous || line.kind == WorkKind::crossed_out || line.kind == WorkKind::unread ||
        (line.claims.empty() && (line.kind == WorkKind::remark || line.kind == WorkKind::naming))) {
      judged.status = line.ambiguous                           ? LineStatus::ambiguous_name
                      : line.kind == WorkKind::crossed_out     ? LineStatus::crossed_out
                      : line.kind == WorkKind::unread          ? LineStatus::unread
                                                               : LineStatus::remark;
      judged.remark = line.trouble.empty() ? remark_for(judged) : line.trouble;
      return;
    }
    if (!task_.refused[i].empty()) {
      judged.status = LineStatus::unsupported;
      judged.remark = task_.refused[i];
      return;
    }
    if (line.kind == WorkKind::construction) {
      judged.status = LineStatus::construction;
      judged.stated = judged.reasoned = true;
      for (const Phrase& claim : line.claims) claims_.push_back({i, claim, true, false, 0, {}, {}});
      return;
    }
    // "Similarly": the reason of the line before, at other places.
    std::vector<WorkReason> reasons = line.reasons;
    if (reasons.empty() && line.similarly && i > 0) reasons = task_.work.lines[i - 1].reasons;
    judge_claims(i, named_rules(reasons, task_.statement.names, catalogue(), options_.wording));
  }

  void judge_claims(std::size_t i, const NamedRules& named) {
    std::vector<Finding> findings;
    for (Link& link : links_of(task_.work.lines[i].claims, grounds_.at(0).arrangement())) {
      findings.push_back(find(std::move(link), named));
      const Finding& found = findings.back();
      // The next link may rest on this one.
      if (found.support) note(i, found, true);
    }
    settle(i, named, findings);
  }

  const std::vector<SaidBefore>& said(std::size_t g, bool with_wrong) {
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

  bool speaks_of_refused(const Phrase& phrase) const {
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

  Finding find(Link link, const NamedRules& named) {
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

  bool try_ground(Finding& found, const NamedRules& named, std::size_t g, const std::vector<bool>& allowed) {
    const Ground& ground = grounds_.at(g);
    const GroundClaim claim = ground.claim(found.link.phrase);
    if (!claim.meant || !claim.follows) return false;
    SupportQuestion question{claim.forms, named.named, said(g, false), allowed, false};
    auto one = claim.forms.empty() ? std::optional<Support>(Support()) : support(ground, question, grounds_.budget());
    if (!one || (found.support && one->missing.size() >= found.support->missing.size())) return false;
    found.support = std::move(one);
    found.ground = g;
    return true;
  }

  void seek_support(Finding& found, const NamedRules& named) {
    const auto good = [&] { return found.support && (found.support->missing.empty() || !named.any || !found.support->named.empty()); };
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

  void seek_carried(Finding& found, const NamedRules& named) {
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
        SupportQuestion question{claim.forms, named.named, std::move(lines), options_.allowed, named.any};
        auto one = support(ground, question, grounds_.budget());
        if (!one || one->missing_theorems > (named.any ? 0 : 1)) continue;
        if (std::none_of(one->lines.begin(), one->lines.end(), [&](int n) { return is_wrong(n); })) continue;
        found.carried = std::move(one);
        found.ground = g;
        return;
      }
    }
  }

  bool is_wrong(int number) const {
    return std::any_of(claims_.begin(), claims_.end(), [&](const LineClaim& c) { return c.wrong && judgement_.lines[c.line].number == number; });
  }

  void note(std::size_t i, const Finding& found, bool shown) {
    LineClaim claim{i, found.link.phrase, shown, false, found.ground, found.support->instances, {}};
    claim.reasoned = found.support->named;
    claims_.push_back(std::move(claim));
    auto& uses = judgement_.lines[i].uses;
    for (const int n : found.support->lines)
      if (n != judgement_.lines[i].number && std::find(uses.begin(), uses.end(), n) == uses.end()) uses.push_back(n);
    std::sort(uses.begin(), uses.end());
  }

  void note_wrong(std::size_t i, const Phrase& phrase, std::size_t ground) { claims_.push_back({i, phrase, false, true, ground, {}, {}}); }

  // From the links to the line.
  void settle(std::size_t i, const NamedRules& named, const std::vector<Finding>& findings) {
    JudgedLine& judged = judgement_.lines[i];
    const auto slip = std::find_if(findings.begin(), findings.end(), [](const Finding& f) { return f.link.kind == LinkKind::slip; });
    const auto broken = std::find_if(findings.begin(), findings.end(), [](const Finding& f) { return f.broken; });
    if (slip != findings.end() && broken == findings.end()) return settle_slip(i, *slip);
    if (broken != findings.end()) return settle_broken(i, named, findings);
    if (std::any_of(findings.begin(), findings.end(), [](const Finding& f) { return f.link.kind == LinkKind::claim && !f.support; })) {
      judged.status = LineStatus::unsupported;
      judged.remark = remark_for(judged);
      for (const Finding& f : findings)
        if (f.link.kind == LinkKind::claim && !f.support) claims_.push_back({i, f.link.phrase, false, false, f.ground, {}, {}});
      return;
    }
    settle_supported(i, named, findings);
  }

  void settle_slip(std::size_t i, const Finding& slip) {
    JudgedLine& judged = judgement_.lines[i];
    judged.status = LineStatus::arithmetic_slip;
    judged.value = slip.link.left->to_string();
    judged.remark = slip_remark(*slip.link.left, *slip.link.right);
    for (const Phrase& claim : task_.work.lines[i].claims)
      if (const auto ends = ends_of_chain(claim)) {
        std::vector<Link> whole = links_of({*ends}, grounds_.at(0).arrangement());
        if (whole[0].kind == LinkKind::claim) note_wrong(i, whole[0].phrase, 0);
      }
  }

  void settle_broken(std::size_t i, const NamedRules& named, const std::vector<Finding>& findings) {
    JudgedLine& judged = judgement_.lines[i];
    bool carried = true;
    const Finding* first = nullptr;
    for (const Finding& f : findings) {
      if (!f.broken) continue;
      carried = carried && f.carried.has_value();
      if (!first || (first->carried && !f.carried)) first = &f;
      note_wrong(i, f.link.phrase, f.ground);
    }
    if (carried) {
      judged.status = LineStatus::follows_from_error;
      judged.stated = true;
      judged.reasoned = first->carried->missing.empty();
      judged.lacks = judged.reasoned ? ReasonLack::nothing : ReasonLack::absent;
      judged.uses = first->carried->lines;
      std::erase(judged.uses, judged.number);
      judged.remark = remark_for(judged);
      return;
    }
    judged.status = LineStatus::false_line;
    const auto value = right_value(first->link.phrase, grounds_.at(0));
    judged.value = value ? *value : right_value(first->link.phrase, grounds_.at(1)).value_or("");
    const auto& figures = grounds_.figures();
    if (first->figure < figures.size())
      judged.figure = answer_figure("the line fails here", figures[first->figure], task_.statement);
    if (judged.value.empty() && is_one_example(i, first->link.phrase)) {
      judged.status = LineStatus::one_example;
      judged.remark = remark_for(judged);
      return;
    }
    if (named.sight || named.measured) {
      judged.mistake = named.sight ? "judged-by-eye" : "measured";
      judged.mistake_name = named.sight ? "judged by eye" : "measured, not shown";
    } else {
      std::vector<Phrase> before;
      for (const LineClaim& c : claims_)
        if (!c.wrong && c.line != i) before.push_back(c.phrase);
      if (const auto made = mistake_behind(first->link.phrase, before, named.named, task_.statement, figures, options_, grounds_.budget())) {
        judged.mistake = made->id;
        judged.mistake_name = made->name;
        judged.ask = made->hint;
      }
    }
    judged.remark = remark_for(judged);
  }

  // A number put in for what the givens leave free, in a problem that asks for all.
  bool is_one_example(std::size_t, const Phrase& phrase) const {
    if (task_.statement.goals[0].kind != GoalKind::prove || phrase.predicate != Predicate::relation) return false;
    bool number = false;
    for (const Term& term : phrase.relation.expressions.back().terms) number = number || std::holds_alternative<One>(term.quantity);
    return number && phrase.relation.expressions[0].terms.size() == 1;
  }

  void settle_supported(std::size_t i, const NamedRules& named, const std::vector<Finding>& findings) {
    JudgedLine& judged = judgement_.lines[i];
    int theorems = 0, definitions = 0;
    bool used = false, premise = false, not_taught = false, given = true, fits = true, lines = true, arithmetic_only = true;
    for (const Finding& f : findings) {
      if (!f.support) continue;
      arithmetic_only = false;
      theorems += f.support->missing_theorems;
      definitions += f.support->missing_definitions;
      used = used || !f.support->named.empty();
      premise = premise || f.support->premise_missing;
      not_taught = not_taught || f.not_taught;
      given = given && f.support->only_givens && f.support->instances.size() == 1;
      fits = fits && places_fit(named, *f.support, grounds_.at(f.ground));
      lines = lines && parallels_named(named, *f.support, grounds_.at(f.ground));
      tell_missing(judged, f);
      if (grounds_.is_arrangement(f.ground)) judged.remark = "Right where " + grounds_.arrangement_name(f.ground) + ".";
    }
    judged.stated = true;
    judged.gap = theorems + (theorems == 0 ? 0 : definitions);
    const std::size_t links = findings.size();
    // In one line a reader follows one theorem that nobody names for each thing said, and a definition with it.
    const bool too_far = theorems > (used ? 1 : static_cast<int>(std::max<std::size_t>(1, links))) || premise;
    if (too_far) {
      judged.status = LineStatus::unsupported;
      judged.gap = std::max(judged.gap, 1);
      judged.stated = judged.gap <= 1;
      for (LineClaim& c : claims_)
        if (c.line == i) c.shown = false;
    } else if (not_taught) {
      settle_not_taught(judged, findings);
    } else if (theorems + definitions == 0) {
      settle_cited(judged, named, findings, {used, fits, lines, given && !arithmetic_only, i});
    } else {
      judged.gap = 0;
      settle_uncited(judged, named, used);
    }
    if (judged.remark.empty()) judged.remark = remark_for(judged);
  }

  void tell_missing(JudgedLine& judged, const Finding& f) {
    for (const std::string& text : reasons_of(grounds_.at(f.ground), f.support->missing))
      if (std::find(judged.would_do.begin(), judged.would_do.end(), text) == judged.would_do.end()) judged.would_do.push_back(text);
    for (const std::string& text : steps_of(grounds_.at(f.ground), f.support->missing))
      if (std::find(judged.bridge.begin(), judged.bridge.end(), text) == judged.bridge.end()) judged.bridge.push_back(text);
  }

  void settle_not_taught(JudgedLine& judged, const std::vector<Finding>& findings) {
    judged.status = LineStatus::not_taught;
    if (task_.set_aside.empty()) return;
    const auto stated = catalogue().find(task_.set_aside[0]);
    const std::vector<bool> resting = resting_on(catalogue(), *stated);
    for (const Finding& f : findings)
      if (f.support && f.not_taught)
        for (const int k : f.support->named)
          if (const Ground& ground = grounds_.at(f.ground); resting[ground.instance(k).rule.index()]) {
            judged.status = LineStatus::circular;
            judged.stated = false;
            judged.remark = circular_course_remark(ground.instance(k).rule, *stated, catalogue());
          }
  }

  struct Cited {
    bool used, fits, lines, given;
    std::size_t line;
  };

  // Nothing is missing: by what the reason names, or by arithmetic alone.
  void settle_cited(JudgedLine& judged, const NamedRules& named, const std::vector<Finding>& findings, const Cited& how) {
    judged.reasoned = true;
    judged.status = LineStatus::right;
    if (how.used) {
      if (!how.fits) return refuse_reason(judged, LineStatus::wrong_reason, ReasonLack::other);
      if (named.nickname) {
        judged.would_do = accepted_of(named);
        return refuse_reason(judged, LineStatus::reason_not_accepted, ReasonLack::nickname);
      }
      if (!how.lines) {
        judged.lacks = ReasonLack::lines;
        if (options_.wording == Register::sa) return refuse_reason(judged, LineStatus::right_no_reason, ReasonLack::lines);
      }
      if (std::any_of(named.reasons.begin(), named.reasons.end(), [](const ReadReason& r) { return r.kind == ReasonKind::rule && !r.names_relation; }) &&
          judged.lacks == ReasonLack::nothing)
        judged.lacks = ReasonLack::relation;
      return;
    }
    if (how.given) {
      judged.status = LineStatus::given;
      return;
    }
    // It follows without the rule that is named: by what stands before alone. Does the rule give it, too?
    if (named.any && !named_gives(named, findings)) {
      refuse_reason(judged, LineStatus::wrong_reason, ReasonLack::other);
      judged.would_do = {"from what stands before"};
    }
    if (named.sight || named.measured) {
      refuse_reason(judged, LineStatus::wrong_reason, ReasonLack::other);
      name_sight(judged, named);
    }
  }

  // The rules named give the line from the givens and those earlier lines that do not say it already.
  bool named_gives(const NamedRules& named, const std::vector<Finding>& findings) {
    for (const Finding& f : findings) {
      if (!f.support) continue;
      const Ground& ground = grounds_.at(f.ground);
      const GroundClaim claim = ground.claim(f.link.phrase);
      if (claim.forms.empty()) continue;
      std::vector<SaidBefore> lines = said(f.ground, false);
      for (const bool all : {true, false}) {
        std::vector<SaidBefore> some = lines;
        std::erase_if(some, [&](const SaidBefore& s) {
          return std::find(f.support->lines.begin(), f.support->lines.end(), s.number) != f.support->lines.end() && !all;
        });
        std::erase_if(some, [&](const SaidBefore& s) { return s.number == judgement_.lines.back().number; });
        SupportQuestion question{claim.forms, named.named, std::move(some), options_.allowed, true};
        const auto one = support(ground, question, grounds_.budget());
        if (one && !one->named.empty()) return true;
      }
    }
    return false;
  }

  // One theorem or a definition is used that nobody names.
  void settle_uncited(JudgedLine& judged, const NamedRules& named, bool used) {
    judged.status = LineStatus::right_no_reason;
    judged.lacks = named.absent() ? ReasonLack::absent : ReasonLack::vague;
    if (named.sight || named.measured) {
      refuse_reason(judged, LineStatus::wrong_reason, ReasonLack::other);
      return name_sight(judged, named);
    }
    if (named.given && !named.any) return refuse_reason(judged, LineStatus::wrong_reason, ReasonLack::other);
    if (!named.any || used) return;
    refuse_reason(judged, LineStatus::wrong_reason, ReasonLack::other);
    name_converse(judged, named);
  }

  void refuse_reason(JudgedLine& judged, LineStatus status, ReasonLack lacks) {
    judged.status = status;
    judged.reasoned = false;
    judged.lacks = lacks;
  }

  void name_sight(JudgedLine& judged, const NamedRules& named) {
    judged.mistake = named.sight ? "judged-by-eye" : "measured";
    judged.mistake_name = named.sight ? "judged by eye" : "measured, not shown";
  }

  // The theorem was named where its converse is needed, or the other way round.
  void name_converse(JudgedLine& judged, const NamedRules& named) {
    for (const LineClaim& c : claims_) {
      if (c.line + 1 != judgement_.lines.size()) continue;
      for (const int k : c.instances) {
        const Rule& needed = grounds_.at(c.ground).rule_of(k);
        if (!is_cited(needed)) continue;
        for (std::size_t r = 0; r < named.named.size(); ++r) {
          if (!named.named[r] || !are_converses(RuleId(static_cast<std::int64_t>(r)), grounds_.at(c.ground).instance(k).rule, catalogue())) continue;
          const bool theorem_named = needed.kind == RuleKind::converse;
          judged.mistake = catalogue().rules[r].id;
          judged.mistake_name = theorem_named ? "the theorem named where its converse is used" : "the converse named for the theorem";
        }
      }
    }
  }

  std::vector<std::string> accepted_of(const NamedRules& named) const {
    std::vector<std::string> words;
    for (const ReadReason& reason : named.reasons)
      if (!reason.accepted.empty()) words.push_back(reason.accepted);
    return words;
  }

  const JudgeTask& task_;
  Grounds& grounds_;
  const AttemptOptions& options_;
  Judgement& judgement_;
  std::vector<LineClaim> claims_;
  struct Said {
    std::vector<SaidBefore> lines;  // by claim
    std::size_t read = 0;
  };
  std::vector<Said> said_;          // by ground
  std::vector<SaidBefore> chosen_;
};

}  // namespace

void judge(const JudgeTask& task, Grounds& grounds, const AttemptOptions& options, Judgement& judgement) {
  Judge(task, grounds, options, judgement).run();
}

}  // namespace prover
