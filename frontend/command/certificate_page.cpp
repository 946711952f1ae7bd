#include "frontend/command/certificate_page.hpp"

#include <fmt/format.h>

#include "prover/reading/number_text.hpp"

namespace frontend {

namespace {

std::string listed(const std::vector<std::string>& items) {
  std::string text;
  for (std::size_t i = 0; i < items.size(); ++i) text += (i == 0 ? "" : i + 1 == items.size() ? " and " : ", ") + items[i];
  return text;
}

std::string degrees(const std::string& exact) {
  const auto value = prover::Rational::parse(exact);
  return value ? prover::degrees_text(*value) : exact + "°";
}

}  // namespace

void add_certificate(const prover::AnswerCertificate& certificate, Document& document) {
  auto& blocks = document.blocks;
  blocks.push_back(Heading{2, "Exact, by trigonometry (no school proof)" +
                                  (certificate.case_name.empty() ? "" : ", in the case " + certificate.case_name)});
  std::vector<std::string> lets;
  for (const auto& step : certificate.steps)
    if (step.letter != step.angle) lets.push_back(step.letter + " = " + step.angle);
  if (!lets.empty()) blocks.push_back(Paragraph{"Let " + listed(lets) + "."});
  if (!certificate.relations.empty()) blocks.push_back(Items{"The rules show", certificate.relations, false});
  ProofLines lines;
  int n = 0;
  const auto line = [&](std::string claim, std::string reason, std::vector<int> uses, bool closing = false) {
    std::vector<std::string> rows{claim};
    lines.lines.push_back({++n, std::move(claim), std::move(rows), std::move(reason), std::move(uses), closing});
  };
  std::vector<int> values;
  for (const auto& step : certificate.steps) {
    line(step.condition, fmt::format("law of sines, {} {}", step.triangles.size() == 1 ? "triangle" : "triangles", listed(step.triangles)), {});
    const int condition = n;
    if (step.value.empty()) {
      line(fmt::format("{} ≈ {:.6g}°", step.letter, step.measured), step.only_one, {condition});
    } else {
      line(step.with_value, fmt::format("exact arithmetic: {} = {} meets the condition", step.letter, degrees(step.value)), {condition});
      line(fmt::format("{} = {}", step.letter, degrees(step.value)), step.only_one, {condition, n});
    }
    values.push_back(n);
  }
  for (const std::string& identity : certificate.identities) {
    line(identity, "law of sines, exact arithmetic", values);
    values.push_back(n);
  }
  if (!certificate.conclusion.empty()) line(certificate.conclusion, "", values, true);
  blocks.push_back(std::move(lines));
  if (!certificate.seen_in_figure.empty()) blocks.push_back(Items{"Seen in the figure", certificate.seen_in_figure, false});
}

}  // namespace frontend
