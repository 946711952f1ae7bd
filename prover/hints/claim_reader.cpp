#include "prover/hints/claim_reader.hpp"

#include <algorithm>

#include "prover/hints/sentence_maths.hpp"
#include "prover/statement/figure_text.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

constexpr std::size_t most_points_to_join = 14;

Coordinates coordinates_of(const AnswerFigure& figure, const Names& names) {
  Coordinates points(names.points.size());
  for (std::size_t i = 0; i < points.size(); ++i)
    if (const auto found = figure.points.find(names.points[i]); found != figure.points.end())
      points[i] = {found->second.first, found->second.second};
  return points;
}

// Every two points may be joined by a proof, and a sentence may then speak of angles there.
Arrangement arranged(const Statement& statement, const std::vector<AnswerFigure>& figures) {
  const bool all_placed = std::none_of(statement.hidden.begin(), statement.hidden.end(), [](bool hidden) { return hidden; });
  std::vector<Coordinates> views;
  if (all_placed)
    for (const AnswerFigure& figure : figures)
      if (figure.points.size() == statement.names.points.size()) views.push_back(coordinates_of(figure, statement.names));
  Arrangement arrangement(figure_text(statement), std::move(views));
  if (statement.names.points.size() <= most_points_to_join)
    for (std::size_t i = 0; i < arrangement.point_count(); ++i)
      for (std::size_t j = i + 1; j < arrangement.point_count(); ++j)
        arrangement.join(PointId(static_cast<std::int64_t>(i)), PointId(static_cast<std::int64_t>(j)));
  arrangement.freeze();
  return arrangement;
}

}  // namespace

ClaimReader::ClaimReader(const Statement& statement, const std::vector<AnswerFigure>& figures)
    : statement_(statement), arrangement_(arranged(statement, figures)) {}

std::vector<Form> ClaimReader::forms_of(const std::string& relation) {
  Names names = statement_.names;
  std::vector<Diagnostic> diagnostics;
  std::vector<Form> forms;
  for (const Phrase& phrase : parse_phrases(relation, names, diagnostics)) {
    if (has_error(diagnostics) || names.points.size() != statement_.names.points.size()) return {};
    const Meaning meaning = meaning_of(phrase, arrangement_, unknowns_);
    for (const Form& form : meaning.forms)
      if (!form.terms.empty()) forms.push_back(form);
  }
  return forms;
}

std::vector<Form> ClaimReader::forms_in(std::string_view sentence) {
  std::vector<Form> forms;
  for (const std::string& relation : maths_of(sentence, statement_.names).relations)
    for (Form& form : forms_of(relation)) forms.push_back(std::move(form));
  return forms;
}

std::set<UnknownId> ClaimReader::spoken_of(std::string_view claim) {
  std::set<UnknownId> all;
  for (const Form& form : forms_in(claim))
    for (const auto& [unknown, c] : form.terms) all.insert(unknown);
  return all;
}

}  // namespace prover
