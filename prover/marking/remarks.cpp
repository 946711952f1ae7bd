#include "prover/marking/remarks.hpp"

#include <fmt/format.h>

#include <map>

#include "prover/reading/number_text.hpp"

namespace prover {

namespace {

std::string lines_text(const std::vector<int>& numbers) {
  std::vector<std::string> words;
  for (const int n : numbers) words.push_back(std::to_string(n));
  return (numbers.size() == 1 ? "line " : "lines ") + enumerated(words);
}

std::string why_not_accepted(const JudgedLine& line) {
  switch (line.lacks) {
    case ReasonLack::absent: return "Right. Why? Give the reason.";
    case ReasonLack::lines: return "Right. Say also which lines are parallel.";
    case ReasonLack::relation: return "Right. Say what the reason states: equal, or what the sum is.";
    case ReasonLack::vague: return "Right, but the reason does not say enough: another fact is used here, too.";
    case ReasonLack::nickname:
    case ReasonLack::other:
    case ReasonLack::nothing: return "Right, but the reason needs to be given.";
  }
  return {};
}

}  // namespace

std::string remark_for(const JudgedLine& line) {
  switch (line.status) {
    case LineStatus::right:
      if (line.lacks == ReasonLack::lines) return "Right. It is better to say which lines are parallel.";
      return "Right.";
    case LineStatus::right_no_reason: return why_not_accepted(line);
    case LineStatus::wrong_reason:
      if (line.mistake == "judged-by-eye") return "A figure may not be drawn exactly, so “it looks so” is no reason. Which fact shows it?";
      if (line.mistake == "measured") return "Measuring is no reason, and figures are not drawn exactly. Which fact shows it?";
      if (!line.mistake_name.empty()) return fmt::format("The statement is right, but look at the reason again: {}.", line.mistake_name);
      return "The statement is right, but this reason does not give it.";
    case LineStatus::reason_not_accepted:
      return line.would_do.empty() ? "Right, but these words are not accepted as a reason."
                                   : fmt::format("Right, but these words are not accepted as a reason; write “{}”.", line.would_do.front());
    case LineStatus::unsupported:
      if (line.gap == 1) return "One step is missing before this line.";
      if (line.gap > 1) return fmt::format("This does not follow in one step from what stands before: {} steps are missing.", line.gap);
      return "Nothing that stands before shows this.";
    case LineStatus::false_line:
      if (line.mistake == "judged-by-eye") return "This is not so, though it may look so in a drawing.";
      if (line.mistake == "measured") return "This is not so; a measured value may come from an inexact drawing.";
      if (!line.mistake_name.empty()) return fmt::format("This is not so. Look out: {}.", line.mistake_name);
      return "There is a figure that meets every given and breaks this.";
    case LineStatus::arithmetic_slip: return "Check the arithmetic.";
    case LineStatus::follows_from_error:
      return fmt::format("This step is right in itself, but it rests on {}.", lines_text(line.uses));
    case LineStatus::circular: return fmt::format("This goes round in a circle: it rests on {}, which {} on this.", lines_text(line.uses), line.uses.size() == 1 ? "rests" : "rest");
    case LineStatus::assumes_the_claim: return "This is what is to be shown; it cannot be where the argument starts.";
    case LineStatus::given: return "Given.";
    case LineStatus::construction: return "This line can be drawn.";
    case LineStatus::not_needed: return "Right, but nothing needs it.";
    case LineStatus::not_taught: return "Right, by a theorem that this class has not had yet.";
    case LineStatus::one_example: return "This is one example; the claim is about every such figure.";
    case LineStatus::ambiguous_name: return "This name can mean more than one angle here; use three letters.";
    case LineStatus::remark: return {};
    case LineStatus::crossed_out: return "Crossed out; not marked.";
    case LineStatus::unread: return "This line could not be read.";
  }
  return {};
}

std::string slip_remark(const Rational& left, const Rational& right) {
  return fmt::format("Check the arithmetic: the left side makes {}, not {}.", number_text(left), number_text(right));
}

std::string circular_course_remark(RuleId cited, RuleId stated, const Catalogue& catalogue) {
  // The shortest chain by the files' word, breadth first.
  std::map<std::string, std::string> above{{catalogue[cited].id, ""}};
  std::vector<std::string> open{catalogue[cited].id};
  for (std::size_t i = 0; i < open.size() && !above.contains(catalogue[stated].id); ++i)
    if (const auto rule = catalogue.find(open[i]))
      for (const std::string& id : catalogue[*rule].rests)
        if (above.emplace(id, open[i]).second) open.push_back(id);
  std::string chain;
  if (above.contains(catalogue[stated].id))
    for (std::string id = catalogue[stated].id; !id.empty(); id = above[id]) {
      const std::string title = catalogue[*catalogue.find(id)].title;
      chain = chain.empty() ? title : title + ", which rests on " + chain;
    }
  return "This goes round in a circle. What is to be shown stands behind the reason: " + chain + ".";
}

}  // namespace prover
