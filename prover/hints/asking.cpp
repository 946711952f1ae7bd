#include "prover/hints/asking.hpp"

#include <algorithm>

#include "prover/hints/sentence_maths.hpp"
#include "prover/hints/telling.hpp"
#include "prover/rule/wording.hpp"

namespace prover {

namespace {

const AnswerStep* step_of(const AnswerProof& way, int n) {
  const auto found = std::find_if(way.steps.begin(), way.steps.end(), [&](const AnswerStep& s) { return s.n == n; });
  return found == way.steps.end() ? nullptr : &*found;
}

bool holds_digit(std::string_view text) { return text.find_first_of("0123456789") != text.npos; }

const Rule* rule_of(const Climb& climb, const AnswerStep& step) {
  const auto id = climb.catalogue.find(step.rule);
  return id ? &climb.catalogue[*id] : nullptr;
}

bool holds_both(const std::vector<std::string>& points, const std::string& a, const std::string& b) {
  return std::find(points.begin(), points.end(), a) != points.end() && std::find(points.begin(), points.end(), b) != points.end();
}

// What a new line is for: the first theorem at which both its ends have a part.
HintSentences asking_about_lines(const Climb& climb, const AnswerStep& step) {
  HintSentences ask;
  ask.where = "Not all the lines that you need are drawn. What could you draw?";
  const Names& names = climb.statement.names;
  std::vector<std::vector<std::string>> lines;
  for (const std::string& quantity : maths_of(step.claim, names).quantities)
    if (const auto ends = maths_of(quantity, names).points; ends.size() == 2) lines.push_back(ends);
  for (const AnswerStep& later : climb.way.steps) {
    if (later.n <= step.n || is_mere_working(later)) continue;
    const auto points = maths_of(later.claim + " " + later.reason, names).points;
    const bool uses = std::any_of(lines.begin(), lines.end(), [&](const auto& l) { return holds_both(points, l[0], l[1]); });
    const std::string fact = name_of_fact(climb, later);
    if (!uses || fact.empty()) continue;
    ask.kind = "You will want this fact: " + fact + ". Which points must be joined first?";
    break;
  }
  if (lines.empty()) return ask;
  std::string shared;
  for (const std::string& end : lines[0])
    if (std::all_of(lines.begin(), lines.end(), [&](const auto& l) { return l[0] == end || l[1] == end; })) shared = end;
  if (lines.size() == 1)
    ask.places = "One end of the new line is " + lines[0][0] + ". Which point is the other?";
  else if (!shared.empty())
    ask.places = "The new lines all begin at " + shared + ". Where does each of them end?";
  else
    ask.places = "One of the new lines begins at " + lines[0][0] + ", another at " + lines[1][0] + ". Where do they end?";
  return ask;
}

// Of the lines that are put together, what stands in several of them and no more in the result.
std::string eliminated(const Climb& climb, const AnswerStep& step) {
  const Names& names = climb.statement.names;
  const auto kept = maths_of(step.claim, names).quantities;
  std::vector<std::pair<std::string, int>> met;
  for (const int n : step.uses) {
    const AnswerStep* used = step_of(climb.way, n);
    if (!used) continue;
    std::vector<std::string> here = maths_of(used->claim, names).quantities;
    std::sort(here.begin(), here.end());
    here.erase(std::unique(here.begin(), here.end()), here.end());
    for (const std::string& quantity : here) {
      const auto found = std::find_if(met.begin(), met.end(), [&](const auto& m) { return m.first == quantity; });
      if (found == met.end()) met.emplace_back(quantity, 1);
      else ++found->second;
    }
  }
  for (const auto& [quantity, times] : met)
    if (times > 1 && std::find(kept.begin(), kept.end(), quantity) == kept.end()) return quantity;
  return {};
}

HintSentences asking_about_working(const Climb& climb, const AnswerStep& step) {
  HintSentences ask;
  if (step.rule == "let") {
    ask.where = "Several angles here depend on a single one. Which would you call by a letter?";
    return ask;
  }
  if (step.reason == "as shown") {
    ask.where = "Read once more what is to be shown. Which of your lines say it?";
    return ask;
  }
  if (step.uses.empty()) {
    ask.where = "No theorem is needed here. Which of the givens say it together?";
    return ask;
  }
  ask.where = step.closing ? "Nothing more is needed from the figure. Which of your lines can be put together?"
                           : "Which of your lines speak of the same sizes? Put them together.";
  if (const std::string out = eliminated(climb, step); !out.empty())
    ask.kind = out + " stands in more than one of your lines. What can you put in its place?";
  return ask;
}

// "HJ bisects ∠GHF" for a reason: what is added up hangs on a given, and the given is what to look for.
HintSentences asking_about_given_parts(const Climb& climb, const AnswerStep& step) {
  HintSentences ask = step.ask;
  const auto whole = maths_of(step.ask.where, climb.statement.names).quantities;
  ask.where = whole.size() == 1 ? "Which given tells you about the parts of " + whole.front() + "?" : "Which given tells you about parts of a whole?";
  ask.kind = "How do these parts compare with the whole?";
  ask.places.clear();
  return ask;
}

bool rests_on_given(const Rule& rule, const AnswerStep& step) {
  return rule.free_step && std::find(step.givens.begin(), step.givens.end(), step.reason.substr(0, step.reason.find(", "))) != step.givens.end();
}

// For a rule without sentences, a teacher's own perhaps: where it stands, as far as its reason says so.
std::string place_of(const Climb& climb, const AnswerStep& step) {
  const std::string triangle = "triangle ";
  if (const std::size_t at = step.reason.find(triangle); at != step.reason.npos) {
    const std::size_t end = step.reason.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789", at + triangle.size());
    return "Look at " + step.reason.substr(at, end == step.reason.npos ? end : end - at) + ". What do you know of it?";
  }
  std::string text;
  const std::vector<std::string> points = maths_of(step.reason, climb.statement.names).points;
  for (std::size_t i = 0; i < points.size(); ++i) text += (i == 0 ? "" : i + 1 == points.size() ? " and " : ", ") + points[i];
  return text.empty() ? "Look at the figure again. Which part of it have you not used?"
                      : "Look at the part of the figure with " + text + ". What do you know there?";
}

}  // namespace

bool is_printed(const Climb& climb, const AnswerStep& step) {
  return std::any_of(climb.statement.added.begin(), climb.statement.added.end(),
                     [&](const AddedSentence& added) { return added.text == step.claim; });
}

HintSentences asking_about(const Climb& climb, const AnswerStep& step) {
  if (is_mere_working(step)) return asking_about_working(climb, step);
  const Rule* rule = rule_of(climb, step);
  if (rule && rule->builtin == Builtin::join) return asking_about_lines(climb, step);
  if (rule && rests_on_given(*rule, step)) return asking_about_given_parts(climb, step);
  HintSentences ask = step.ask;
  if (ask.where.empty()) ask.where = place_of(climb, step);
  return ask;
}

std::string name_of_fact(const Climb& climb, const AnswerStep& step) {
  const Rule* rule = rule_of(climb, step);
  if (is_mere_working(step) || !rule || rule->free_step || rule->builtin == Builtin::join) return {};
  if (climb.wording != Register::plain)
    if (const auto found = rule->wording.find(climb.wording); found != rule->wording.end())
      if (std::string name = wording_without_places(found->second); !name.empty() && !holds_digit(name)) return name;
  std::string title = rule->title;
  if (holds_digit(title)) title = title.substr(0, title.find(" that "));
  return holds_digit(title) ? std::string() : title;
}

}  // namespace prover
