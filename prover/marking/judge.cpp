#include "prover/marking/judge.hpp"

#include <algorithm>

#include "prover/marking/argument.hpp"
#include "prover/marking/bridge.hpp"
#include "prover/marking/falsity.hpp"
#include "prover/marking/finding.hpp"
#include "prover/marking/pupils_way.hpp"
#include "prover/marking/remarks.hpp"
#include "prover/verdict/answer_of.hpp"

namespace prover {

namespace {

class Judge {
 public:
  Judge(const JudgeTask& task, Grounds& grounds, const AttemptOptions& options, Judgement& judgement)
      : task_(task), grounds_(grounds), options_(options), judgement_(judgement), finder_(task, grounds, options, claims_, judgement) {}

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
      findings.push_back(finder_.find(std::move(link), named));
      const Finding& found = findings.back();
      // The next link may rest on this one.
      if (found.support) note(i, found, true);
    }
    settle(i, named, findings);
    if (takes_the_claim(i, named)) settle_assumed(i);
  }

  // A reason that names what is to be shown, before it is shown: "base angles, KL = KM" on the way to KL = KM.
  bool takes_the_claim(std::size_t i, const NamedRules& named) {
    const Ground& ground = grounds_.at(0);
    for (std::size_t k = 0; k < task_.goals; ++k) {
      const Goal& goal = task_.statement.goals[k];
      if (goal.kind != GoalKind::prove || goal.claims.size() != 1) continue;
      const std::vector<Form> wanted = ground.claim(goal.claims[0]).forms;
      const auto is_goal = [&](const Phrase& phrase) {
        const std::vector<Form> forms = ground.claim(phrase).forms;
        return forms.size() == 1 && wanted.size() == 1 && forms[0].normalised() == wanted[0].normalised();
      };
      const auto& claims = task_.work.lines[i].claims;
      if (std::any_of(claims.begin(), claims.end(), is_goal)) continue;
      if (std::any_of(claims_.begin(), claims_.end(), [&](const LineClaim& c) { return c.line != i && c.shown && !c.wrong && is_goal(c.phrase); })) continue;
      for (const ReadReason& reason : named.reasons)
        if (std::any_of(reason.places.begin(), reason.places.end(), is_goal)) return true;
    }
    return false;
  }

  void settle_assumed(std::size_t i) {
    JudgedLine& judged = judgement_.lines[i];
    if (judged.status == LineStatus::false_line || judged.status == LineStatus::given) return;
    judged.status = LineStatus::assumes_the_claim;
    judged.stated = judged.reasoned = false;
    judged.remark = remark_for(judged);
    judgement_.assumed = task_.statement.goals[0].text;
    for (LineClaim& claim : claims_)
      if (claim.line == i) claim.shown = false;
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
      carried = carried && f.carried.has_value() && !is_impossible(f.link.phrase);
      if (!first || (first->carried && !f.carried)) first = &f;
      note_wrong(i, f.link.phrase, f.ground);
    }
    if (carried) {
      judged.status = LineStatus::follows_from_error;
      judged.stated = true;
      judged.reasoned = first->carried->missing_theorems == 0;
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
      if (const auto made = mistake_behind(first->link.phrase, before, named.named, task_.statement, figures, options_, grounds_.budget(), trials_)) {
        judged.mistake = made->id;
        judged.mistake_name = made->name;
        judged.ask = made->hint;
      }
    }
    judged.remark = remark_for(judged);
  }

  // "∠KLP = −40°": where an error leads so far it is carried no further.
  static bool is_impossible(const Phrase& phrase) {
    if (phrase.predicate != Predicate::relation || phrase.relation.expressions.size() != 2) return false;
    const auto& left = phrase.relation.expressions[0].terms;
    if (left.size() != 1 || !left[0].coefficient.is_one() || !std::holds_alternative<Angle>(left[0].quantity)) return false;
    Rational size;
    for (const Term& term : phrase.relation.expressions[1].terms) {
      if (!std::holds_alternative<One>(term.quantity)) return false;
      size = size + term.coefficient;
    }
    return !(Rational(0) < size) || !(size < Rational(180));
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
    } else if (theorems == 0 && (definitions == 0 || used || is_honest(named, grounds_.at(findings[0].ground)))) {
      judged.gap = 0;
      judged.would_do.clear();
      judged.bridge.clear();
      settle_cited(judged, named, findings, {used, fits, lines, given && !arithmetic_only, arithmetic_only, i});
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
    bool used, fits, lines, given, arithmetic;
    std::size_t line;
  };

  // Nothing is missing: by what the reason names, or by arithmetic alone.
  void settle_cited(JudgedLine& judged, const NamedRules& named, const std::vector<Finding>& findings, const Cited& how) {
    judged.reasoned = true;
    judged.status = LineStatus::right;
    if (how.used) {
      if (!how.fits) return refuse_reason(judged, LineStatus::wrong_reason, ReasonLack::other);
      if (names_what_follows(how.line, named)) {
        judged.mistake_name = "the theorem named where its converse is used";
        judged.mistake = "theorem-for-converse";
        return refuse_reason(judged, LineStatus::wrong_reason, ReasonLack::other);
      }
      if (named.nickname) {
        judged.would_do = accepted_of(named);
        return refuse_reason(judged, LineStatus::reason_not_accepted, ReasonLack::nickname);
      }
      if (!how.lines) {
        judged.lacks = ReasonLack::lines;
        if (options_.wording == Register::sa) return refuse_reason(judged, LineStatus::right_no_reason, ReasonLack::lines);
      }
      // Only there do examiners ask for the whole phrase; elsewhere the name is the phrase.
      if (options_.wording == Register::uk &&
          std::any_of(named.reasons.begin(), named.reasons.end(), [](const ReadReason& r) { return r.kind == ReasonKind::rule && !r.names_relation; }) &&
          judged.lacks == ReasonLack::nothing)
        judged.lacks = ReasonLack::relation;
      return;
    }
    if (how.given) {
      judged.status = LineStatus::given;
      return;
    }
    if (how.arithmetic) return;
    // It follows without the rule that is named: by what stands before alone. Does the rule give it, too?
    if (named.any && !is_honest(named, grounds_.at(findings[0].ground)) && !named_gives(named, findings)) {
      refuse_reason(judged, LineStatus::wrong_reason, ReasonLack::other);
      judged.would_do = {"from what stands before"};
    }
    if (named.sight || named.measured) {
      refuse_reason(judged, LineStatus::wrong_reason, ReasonLack::other);
      name_sight(judged, named);
    }
  }

  // "alt ∠s; KQ ∥ LM" for KQ ∥ LM itself: a converse names the angles, never the lines.
  bool names_what_follows(std::size_t i, const NamedRules& named) const {
    const Ground& ground = grounds_.at(0);
    for (const Phrase& claim : task_.work.lines[i].claims) {
      if (claim.predicate != Predicate::parallel) continue;
      const std::vector<Form> forms = ground.claim(claim).forms;
      for (const ReadReason& reason : named.reasons)
        for (const Phrase& place : reason.places)
          if (place.predicate == Predicate::parallel && ground.claim(place).forms == forms) return true;
    }
    return false;
  }

  // The rules named give the line from the givens and those earlier lines that do not say it already.
  bool named_gives(const NamedRules& named, const std::vector<Finding>& findings) {
    for (const Finding& f : findings) {
      if (!f.support) continue;
      const Ground& ground = grounds_.at(f.ground);
      const GroundClaim claim = ground.claim(f.link.phrase);
      if (claim.forms.empty()) continue;
      // Earlier lines cost more than the rules named: what says the same already is passed over.
      std::vector<SaidBefore> lines = finder_.said(f.ground, false);
      std::erase_if(lines, [&](const SaidBefore& s) { return s.number == judgement_.lines.back().number; });
      for (SaidBefore& line : lines) line.shown = false;
      SupportQuestion question{claim.forms, named.named, std::move(lines), options_.allowed, true, true, false};
      const auto one = support(ground, question, grounds_.budget());
      if (one && !one->named.empty()) return true;
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
  int trials_ = 60;  // of classic mistakes, for the whole piece of work: each is a chain of its own
  Finder finder_;
};

}  // namespace

void judge(const JudgeTask& task, Grounds& grounds, const AttemptOptions& options, Judgement& judgement) {
  Judge(task, grounds, options, judgement).run();
}

}  // namespace prover
