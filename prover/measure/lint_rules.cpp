#include "prover/measure/lint_rules.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "prover/chain/match_plan.hpp"
#include "prover/chain/saturate.hpp"
#include "prover/measure/trial.hpp"
#include "prover/rule/fields.hpp"
#include "prover/statement/figure_text.hpp"

namespace prover {

namespace {

// Where a rule stands, found again in the text of its file.
struct Place {
  const RuleFile* file = nullptr;
  Span header;
};

std::map<std::string, Place> places_of_rules(const std::vector<RuleFile>& files) {
  std::map<std::string, Place> places;
  for (const RuleFile& file : files) {
    const std::vector<Field> fields = split_fields(file.text);
    if (!fields.empty() && fields.front().name == "rule")
      places.try_emplace(fields.front().value, Place{&file, fields.front().span()});
  }
  return places;
}

class Linter {
 public:
  Linter(const Catalogue& catalogue, const LintOptions& options, const Budget& budget)
      : catalogue_(catalogue), options_(options), budget_(budget) {}

  std::vector<Diagnostic> lint(RuleId id, Span header) {
    const Rule& rule = catalogue_[id];
    std::vector<Diagnostic> findings;
    const auto find = [&](Severity severity, Span place, std::string message, std::string way_out) {
      findings.push_back({severity, place, std::move(message), std::move(way_out)});
    };
    if (!rule.then.empty()) {
      const Trial trial = try_rule(rule, {.figures = options_.figures, .most_shared = 1, .seed = options_.seed}, budget_);
      if (const auto& broken = trial.refutation) {
        Span place = header;
        for (const Phrase& claim : rule.then)
          if (describe(claim, rule.variables) == describe(broken->claim, broken->names)) place = claim.span;
        find(Severity::error, place,
             fmt::format("{} does not follow: it is wrong in the figure {}", describe(broken->claim, broken->names),
                         coordinates_of(broken->figure, broken->names)),
             "add the condition that this figure does not meet, or conclude less");
      } else if (trial.figures == 0 && !budget_.exhausted()) {
        find(Severity::error, header, "no figure meets the conditions of this rule",
             "draw one by hand; if there is none, two conditions exclude each other");
      }
      const std::size_t cost = matching_cost(rule, options_.most_steps);
      if (cost >= options_.most_steps)
        find(Severity::warning, header,
             fmt::format("too general to join cheaply: {} steps of matching on a figure of sixteen points, and not at an end",
                         cost),
             "tie its letters to each other: by a fact, a drawn triangle or an order on a line");
    }
    for (std::size_t other = 0; other < id.index(); ++other)
      if (say_the_same(catalogue_.rules[other], rule)) {
        find(Severity::warning, header, fmt::format("this rule says the same as `{}`", catalogue_.rules[other].id),
             "keep one of them, and give it the words of the other as `also`");
        break;
      }
    if (const auto family = catalogue_.find(rule.family); family && !rule.family.empty())
      for (const auto& [wording, words] : catalogue_[*family].wording)
        if (!rule.wording.contains(wording) && !rule.unworded.contains(wording))
          find(Severity::warning, header,
               fmt::format("no `{}` wording, though its family `{}` has one", name_of(wording), rule.family),
               fmt::format("add `{} \"…\"`, or `unworded {}` where no phrase is accepted for this case", name_of(wording),
                           name_of(wording)));
    return findings;
  }

 private:
  const Catalogue& catalogue_;
  const LintOptions& options_;
  const Budget& budget_;
};

// Four times four points, named so that every kind of line through them is said.
Statement crowded_figure() {
  std::string text;
  const auto at = [](int row, int column) { return fmt::format("K{}", 4 * row + column); };
  for (int i = 0; i < 4; ++i) {
    text += fmt::format("line: {}, {}, {}, {} in this order\n", at(i, 0), at(i, 1), at(i, 2), at(i, 3));
    text += fmt::format("line: {}, {}, {}, {} in this order\n", at(0, i), at(1, i), at(2, i), at(3, i));
    if (i > 0) text += fmt::format("parallel: {}{}, {}{}\n", at(0, 0), at(0, 1), at(i, 0), at(i, 1));
    if (i > 0) text += fmt::format("parallel: {}{}, {}{}\n", at(0, 0), at(1, 0), at(0, i), at(1, i));
  }
  text += fmt::format("line: {}, {}, {}, {} in this order\n", at(0, 0), at(1, 1), at(2, 2), at(3, 3));
  text += fmt::format("line: {}, {}, {}, {} in this order\n", at(0, 3), at(1, 2), at(2, 1), at(3, 0));
  text += fmt::format("triangle: {}{}{}\nperpendicular: {}{}, {}{}\nfind: angle {}{}{}\n", at(0, 0), at(0, 1), at(1, 0), at(0, 0),
                      at(0, 1), at(0, 0), at(1, 0), at(0, 1), at(0, 0), at(1, 1));
  return statements_of(parse_problem(text)).front();
}

// The same points as numbers, for the positions.
Coordinates crowded_coordinates(const Statement& statement) {
  Coordinates points(statement.names.points.size());
  for (std::size_t p = 0; p < points.size(); ++p) {
    const int k = std::stoi(statement.names.points[p].substr(1));
    points[p] = {static_cast<double>(k % 4), static_cast<double>(-(k / 4))};
  }
  return points;
}

}  // namespace

std::size_t matching_cost(const Rule& rule, std::size_t most_steps) {
  static const Statement statement = crowded_figure();
  Arrangement arrangement(figure_text(statement), {crowded_coordinates(statement)});
  arrangement.freeze();
  const Catalogue& standard = standard_catalogue();
  Catalogue alone;  // beside what takes in the figure's sentences
  for (const Rule& other : standard.rules)
    if (other.builtin == Builtin::given) alone.rules.push_back(other);
  alone.rules.push_back(rule);
  UnknownTable unknowns;
  ChainOptions options;
  options.allowed.assign(alone.rules.size(), true);
  options.most_tried = most_steps;
  return std::min(most_steps, saturate(statement, arrangement, alone, unknowns, {}, options, {}).tried);
}

std::vector<LintedRule> lint_rules(const Catalogue& catalogue, const std::vector<RuleFile>& files, const LintOptions& options,
                                   const Budget& budget) {
  const auto places = places_of_rules(files);
  Linter linter(catalogue, options, budget);
  std::vector<LintedRule> linted;
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) {
    const std::string& id = catalogue.rules[i].id;
    if (!options.ids.empty() && std::find(options.ids.begin(), options.ids.end(), id) == options.ids.end()) continue;
    const auto place = places.find(id);
    if (place == places.end()) continue;
    const RuleId rule(static_cast<std::int64_t>(i));
    std::vector<Diagnostic> findings = linter.lint(rule, place->second.header);
    if (!findings.empty()) linted.push_back({rule, *place->second.file, std::move(findings)});
  }
  return linted;
}

}  // namespace prover
