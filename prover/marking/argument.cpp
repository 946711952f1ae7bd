#include "prover/marking/argument.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "prover/marking/remarks.hpp"
#include "prover/marking/support.hpp"

namespace prover {

namespace {

class Argument {
 public:
  Argument(const JudgeTask& task, Grounds& grounds, const AttemptOptions& options, std::vector<LineClaim>& claims, Judgement& judgement)
      : task_(task), grounds_(grounds), options_(options), claims_(claims), lines_(judgement.lines), judgement_(judgement) {}

  void judge() {
    find_circles();
    find_assumptions();
    find_end();
    tell();
  }

 private:
  JudgedLine& line_of(const LineClaim& claim) { return lines_[claim.line]; }

  bool cites(const LineClaim& claim) {
    const Ground& ground = grounds_.at(claim.ground);
    return std::any_of(claim.instances.begin(), claim.instances.end(), [&](int i) { return is_cited(ground.rule_of(i)); });
  }

  // All that a line rests on, near or far.
  std::set<int> behind(int number) const {
    std::set<int> found;
    std::vector<int> open{number};
    while (!open.empty()) {
      const int n = open.back();
      open.pop_back();
      for (const JudgedLine& line : lines_)
        if (line.number == n)
          for (const int use : line.uses)
            if (found.insert(use).second) open.push_back(use);
    }
    return found;
  }

  std::vector<SaidBefore> said(std::size_t g, const std::vector<const LineClaim*>& claims) {
    std::vector<SaidBefore> said;
    for (const LineClaim* c : claims) {
      GroundClaim claim = grounds_.at(g).claim(c->phrase);
      if (claim.meant && !claim.forms.empty()) said.push_back({line_of(*c).number, std::move(claim.forms), c->shown});
    }
    return said;
  }

  // The forms follow from these lines and the givens with nothing cited.
  std::optional<Support> plainly(std::size_t g, const std::vector<Form>& forms, const std::vector<const LineClaim*>& claims) {
    if (forms.empty()) return std::nullopt;
    SupportQuestion question{forms, {}, said(g, claims), options_.allowed, true, false, false};
    return support(grounds_.at(g), question, grounds_.budget());
  }

  // Two claims say the same when each follows plainly from the other.
  bool same(const LineClaim& a, const LineClaim& b) {
    const GroundClaim one = grounds_.at(0).claim(a.phrase), other = grounds_.at(0).claim(b.phrase);
    if (!one.meant || !other.meant || one.forms.empty() || other.forms.empty()) return false;
    if (one.forms == other.forms) return true;
    return plainly(0, one.forms, {&b}) && plainly(0, other.forms, {&a});
  }

  // A line says again what an earlier one took without showing it, and rests on that.
  void find_circles() {
    for (std::size_t j = 0; j < claims_.size(); ++j) {
      if (claims_[j].wrong || !claims_[j].shown) continue;
      for (std::size_t i = 0; i < j; ++i) {
        if (claims_[i].wrong || claims_[i].shown || claims_[i].line == claims_[j].line || !same(claims_[i], claims_[j])) continue;
        const std::set<int> rests = behind(line_of(claims_[j]).number);
        const int first = line_of(claims_[i]).number;
        if (!rests.contains(first)) continue;
        JudgedLine& line = line_of(claims_[j]);
        line.status = LineStatus::circular;
        line.stated = line.reasoned = false;
        line.remark = remark_for(line);
        break;
      }
    }
  }

  // The problem's goals, as claims; of a `find` nothing before its value is known.
  std::vector<Form> goal_of(std::size_t g) {
    std::vector<Form> forms;
    const Ground& ground = grounds_.at(g);
    for (std::size_t k = 0; k < task_.goals; ++k) {
      const GoalForms one = goal_forms(task_.statement.goals[k], ground.saturation().closure, ground.arrangement(), ground.unknowns(), task_.statement.names);
      if (!one.reached && task_.statement.goals[k].kind == GoalKind::find) return {};
      forms.insert(forms.end(), one.forms.begin(), one.forms.end());
    }
    return forms;
  }

  void find_assumptions() {
    const std::vector<Form> goal = goal_of(0).empty() ? goal_of(1) : goal_of(0);
    if (goal.empty()) return;
    for (LineClaim& claim : claims_) {
      JudgedLine& line = line_of(claim);
      if (claim.wrong || claim.shown || line.status != LineStatus::unsupported || !plainly(0, goal, {&claim})) continue;
      const bool used = std::any_of(lines_.begin(), lines_.end(), [&](const JudgedLine& other) {
        return other.number > line.number && behind(other.number).contains(line.number);
      });
      if (!used) continue;
      line.status = LineStatus::assumes_the_claim;
      line.stated = line.reasoned = false;
      line.remark = remark_for(line);
      judgement_.assumed = line.read_as;
    }
    // What is to be shown comes out at the end, since it went in at the start.
    for (const LineClaim& claim : claims_) {
      JudgedLine& line = line_of(claim);
      if (claim.wrong || line.status != LineStatus::right || !plainly(0, goal, {&claim})) continue;
      const std::set<int> rests = behind(line.number);
      if (std::none_of(lines_.begin(), lines_.end(), [&](const JudgedLine& other) {
            return rests.contains(other.number) && other.status == LineStatus::assumes_the_claim;
          }))
        continue;
      line.status = LineStatus::circular;
      line.stated = line.reasoned = false;
      line.remark = remark_for(line);
    }
  }

  void find_end() {
    std::vector<const LineClaim*> standing;
    for (const LineClaim& claim : claims_) {
      const LineStatus status = line_of(claim).status;
      if (!claim.wrong && claim.shown && status != LineStatus::circular && status != LineStatus::assumes_the_claim) standing.push_back(&claim);
    }
    // A line that rests on what was assumed shows nothing.
    std::erase_if(standing, [&](const LineClaim* c) {
      const std::set<int> rests = behind(line_of(*c).number);
      return std::any_of(lines_.begin(), lines_.end(), [&](const JudgedLine& l) {
        return rests.contains(l.number) && (l.status == LineStatus::assumes_the_claim || l.status == LineStatus::circular || l.status == LineStatus::unsupported);
      });
    });
    for (std::size_t g = 0; g < grounds_.count() && !judgement_.complete; ++g) {
      if (g == 2 && std::none_of(claims_.begin(), claims_.end(), [](const LineClaim& c) { return c.ground == 2; })) continue;
      const auto end = plainly(g, goal_of(g), standing);
      if (!end || end->lines.empty()) continue;
      judgement_.complete = true;
      std::set<int> needed(end->lines.begin(), end->lines.end());
      for (const int n : end->lines) needed.merge(behind(n));
      // A line that cites nothing says what stands there already in another form; it leads on, whatever algebra could do without.
      std::set<int> citing;
      for (const LineClaim& claim : claims_)
        if (cites(claim)) citing.insert(line_of(claim).number);
      for (const LineClaim& claim : claims_)
        if (line_of(claim).status == LineStatus::right && !cites(claim)) {
          needed.insert(line_of(claim).number);
          needed.merge(behind(line_of(claim).number));
        }
      for (JudgedLine& line : lines_)
        if (line.status == LineStatus::right && citing.contains(line.number) && !needed.contains(line.number)) {
          line.status = LineStatus::not_needed;
          line.remark = remark_for(line);
        }
    }
  }

  void tell() {
    for (const JudgedLine& line : lines_) {
      const bool breaks = line.status == LineStatus::unsupported || line.status == LineStatus::false_line || line.status == LineStatus::arithmetic_slip ||
                          line.status == LineStatus::circular || line.status == LineStatus::assumes_the_claim || line.status == LineStatus::one_example;
      if (!breaks) continue;
      judgement_.first_break = fmt::format("The argument breaks at line {}.", line.number);
      break;
    }
    if (judgement_.complete) return;
    for (std::size_t k = claims_.size(); k-- > 0;) {
      const LineClaim& claim = claims_[k];
      const LineStatus status = line_of(claim).status;
      if (claim.wrong || !claim.shown || status == LineStatus::circular) continue;
      const std::string last = describe(claim.phrase, task_.statement.names);
      if (!judgement_.assumed.empty() && behind(line_of(claim).number).size() > 0)
        judgement_.proves = fmt::format("This proves: if {} then {}. The question asks the other way.", judgement_.assumed, last);
      else
        judgement_.proves = fmt::format("This shows that {}; that is not yet what is asked.", last);
      break;
    }
  }

  const JudgeTask& task_;
  Grounds& grounds_;
  const AttemptOptions& options_;
  std::vector<LineClaim>& claims_;
  std::vector<JudgedLine>& lines_;
  Judgement& judgement_;
};

}  // namespace

void judge_argument(const JudgeTask& task, Grounds& grounds, const AttemptOptions& options, std::vector<LineClaim>& claims,
                    Judgement& judgement) {
  Argument(task, grounds, options, claims, judgement).judge();
}

}  // namespace prover
