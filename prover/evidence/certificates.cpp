#include "prover/evidence/certificates.hpp"

#include <algorithm>

#include "prover/base/log.hpp"
#include "prover/reading/number_text.hpp"
#include "prover/trigonometry/certificate_text.hpp"

namespace prover {

namespace {

// Every case of the words must have the same value.
struct GoalCertificates {
  bool exact = true;
  std::string value;
  std::vector<AnswerCertificate> certificates;
  std::string obstacle;
  bool worth_saying = false;
};

bool is_angle(const Goal& goal) {
  const auto& terms = goal.claims[0].relation.expressions[0].terms;
  return std::any_of(terms.begin(), terms.end(), [](const Term& t) { return std::holds_alternative<Angle>(t.quantity); });
}

GoalCertificates certificates_of(std::size_t goal, const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                                 const AttemptOptions& options, const Budget& budget) {
  GoalCertificates out;
  for (std::size_t s = 0; s < statements.size(); ++s) {
    const bool impossible = !solved[s].cases.empty() && solved[s].cases[0].attempt.contradiction &&
                            trusted(*solved[s].cases[0].attempt.contradiction);
    if (impossible) continue;
    const Certified certified = certify(statements[s], goal, solved[s], options, budget);
    const std::string value = certified.value ? certified.value->to_string() : "";
    if (!certified.exact || (!out.certificates.empty() && value != out.value)) {
      out.exact = false;
      out.obstacle = certified.exact ? "The cases of the words have different exact values." : certified.obstacle;
      out.worth_saying = certified.exact || certified.worth_saying;
      return out;
    }
    out.value = value;
    for (const CertifiedCase& one : certified.cases) {
      AnswerCertificate text = certificate_text(one, statements[s]);
      const Goal& asked = statements[s].goals[goal];
      text.goal = asked.text;
      if (asked.kind == GoalKind::find)
        text.conclusion = describe(asked.claims[0].relation.expressions[0], statements[s].names) + " = " +
                          (is_angle(asked) ? degrees_text(*certified.value) : number_text(*certified.value));
      for (const Phrase& claim : asked.claims)
        if (asked.kind == GoalKind::prove) text.conclusion += (text.conclusion.empty() ? "" : "; ") + describe(claim, statements[s].names);
      if (!statements[s].case_name.empty())
        text.case_name = statements[s].case_name + (text.case_name.empty() ? "" : "; " + text.case_name);
      out.certificates.push_back(std::move(text));
    }
  }
  out.exact = !out.certificates.empty();
  return out;
}

}  // namespace

void add_certificates(const std::vector<Statement>& statements, const std::vector<Solved>& solved,
                      const AttemptOptions& options, const Budget& budget, Answer& answer) {
  if (answer.verdict != Verdict::beyond_rules) return;
  std::string values;
  std::vector<AnswerCertificate> all;
  for (std::size_t g = 0; g < statements[0].goals.size(); ++g) {
    GoalCertificates one = certificates_of(g, statements, solved, options, budget);
    if (!one.exact) {
      log::info("trigonometry: {}", one.obstacle);
      if (one.worth_saying) answer.unlock.push_back(one.obstacle);
      return;
    }
    if (!one.value.empty()) values += (values.empty() ? "" : "; ") + one.value;
    all.insert(all.end(), std::make_move_iterator(one.certificates.begin()), std::make_move_iterator(one.certificates.end()));
  }
  if (all.empty()) return;
  answer.value = values;
  answer.evidence = "trigonometry";
  answer.certificates = std::move(all);
  std::string conclusions;
  for (const AnswerCertificate& one : answer.certificates)
    if (conclusions.find(one.conclusion) == std::string::npos) conclusions += (conclusions.empty() ? "" : "; ") + one.conclusion;
  answer.summary = "These rules do not reach it, but trigonometry certifies it exactly: " + conclusions + ".";
}

}  // namespace prover
