#include "prover/hints/your_line.hpp"

#include <array>

namespace prover {

namespace {

// In words: a hint holds no numbers that are not of the question.
std::string which(const JudgedLine& line) {
  constexpr std::array<const char*, 12> ordinals = {"first", "second", "third", "fourth", "fifth", "sixth",
                                                    "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"};
  if (line.number < 1 || line.number > static_cast<int>(ordinals.size())) return "line that begins “" + line.text.substr(0, line.text.find(' ')) + "”";
  return std::string(ordinals[static_cast<std::size_t>(line.number) - 1]) + " line";
}

std::string about_missing_reason(const JudgedLine& line) {
  const std::string right = "Your " + which(line) + " is right. ";
  switch (line.lacks) {
    case ReasonLack::lines:
      return right + "Which lines must be parallel for it? Say so in the reason.";
    case ReasonLack::relation:
      return right + "What does the fact say of these angles: that they are equal, or what they make together?";
    case ReasonLack::vague:
      return right + "Which fact do you mean exactly?";
    case ReasonLack::nickname:
      return right + "What is the reason called in class?";
    case ReasonLack::nothing:
    case ReasonLack::absent:
    case ReasonLack::other:
      return right + "Why is it so? Write the reason beside it.";
  }
  return {};
}

std::string about_wrong_reason(const JudgedLine& line) {
  const std::string yours = "Your " + which(line) + " is right. ";
  if (line.mistake == "judged-by-eye") return yours + "A drawing may mislead: which fact shows it?";
  if (line.mistake == "measured") return yours + "A measured size shows nothing for certain: which fact does?";
  if (line.mistake_name.find("converse") != std::string::npos)
    return yours + "Does its reason start from what you know, or from what you want to show?";
  return yours + "Read its reason again: does all hold that this fact needs?";
}

}  // namespace

std::string plain_question_about(const JudgedLine& line) {
  const std::string yours = "your " + which(line);
  switch (line.status) {
    case LineStatus::right_no_reason:
      return about_missing_reason(line);
    case LineStatus::wrong_reason:
      return about_wrong_reason(line);
    case LineStatus::reason_not_accepted:
      return "Your " + which(line) + " is right. What is its reason called in class?";
    case LineStatus::unsupported:
      return line.gap == 1 ? "One thing is missing before " + yours + ". What must stand there first?"
                           : "What would have to be known for " + yours + "? It does not follow yet from what stands before it.";
    case LineStatus::false_line:
      return "Look at " + yours + " again. Which fact did you use there, and does all hold that it needs?";
    case LineStatus::arithmetic_slip:
      return "Work out " + yours + " once more. Do both sides come to the same?";
    case LineStatus::circular:
      return "Look at " + yours + " again. What does it rest on that you have not shown yet?";
    case LineStatus::assumes_the_claim:
      return "Look at " + yours + " again: it says what is to be shown. What do you know without it?";
    case LineStatus::not_taught:
      return "Look at " + yours + " again. Can you do it with the facts that you have had in class?";
    case LineStatus::one_example:
      return "Look at " + yours + " again: it speaks of one figure. How could you say it for every such figure?";
    case LineStatus::ambiguous_name:
      return "Which angle do you mean in " + yours + "? Name it with three letters.";
    case LineStatus::unread:
      return "What does " + yours + " say? Write it with the letters of the figure.";
    case LineStatus::right:
    case LineStatus::follows_from_error:  // the line with the error is met
    case LineStatus::given:
    case LineStatus::construction:
    case LineStatus::not_needed:
    case LineStatus::remark:
    case LineStatus::crossed_out:
      return {};
  }
  return {};
}

std::string question_about(const JudgedLine& line) {
  if (line.ask.empty() || line.status == LineStatus::right) return plain_question_about(line);
  return "Look at your " + which(line) + " again. " + line.ask;
}

}  // namespace prover
