// Courses as pages and as JSON: what a class is taken to know, what it proves, and in which order.
#include <fmt/format.h>

#include <algorithm>

#include "frontend/command/answer_json.hpp"
#include "frontend/command/catalogue.hpp"
#include "frontend/command/choices.hpp"
#include "frontend/command/command.hpp"
#include "frontend/command/output.hpp"
#include "frontend/command/rule_page.hpp"
#include "frontend/command/rules_arguments.hpp"

namespace frontend {

namespace {

using prover::Course;

std::size_t taken_in(const Course& course) {
  return static_cast<std::size_t>(std::count_if(course.entries.begin(), course.entries.end(),
                                                [](const prover::CourseEntry& entry) { return entry.taken; }));
}

Document list_page(const prover::Catalogue& catalogue) {
  Table table{{"Course", "Taken", "Taught", "For"}, {}};
  for (const Course& course : catalogue.courses) {
    table.rows.push_back({course.id, std::to_string(taken_in(course)),
                          std::to_string(course.entries.size() - taken_in(course)), course.says});
  }
  Document page;
  page.blocks.push_back(std::move(table));
  page.blocks.push_back(Note{"A problem says \"taught: COURSE\" or \"taught: COURSE up to RULE\"."});
  return page;
}

Document one_page(const Course& course, const prover::Catalogue& catalogue, prover::Register wording) {
  Document page;
  page.blocks.push_back(Heading{1, course.id});
  page.blocks.push_back(Paragraph{course.says});
  Table table{{"", "Rule", "Standing", "Reason"}, {}};
  for (std::size_t i = 0; i < course.entries.size(); ++i) {
    const prover::Rule& rule = catalogue[course.entries[i].rule];
    table.rows.push_back({std::to_string(i + 1), rule.id, course.entries[i].taken ? "taken" : "taught",
                          reason_pattern(rule, wording)});
  }
  page.blocks.push_back(std::move(table));
  page.blocks.push_back(Items{"Sources", course.sources, true});
  return page;
}

Json course_json(const Course& course, const prover::Catalogue& catalogue) {
  Json json;
  json["id"] = course.id;
  json["title"] = course.title;
  json["says"] = course.says;
  json["sources"] = course.sources;
  json["rules"] = Json::array();
  for (const prover::CourseEntry& entry : course.entries) {
    json["rules"].push_back({{"id", catalogue[entry.rule].id}, {"taken", entry.taken}});
  }
  return json;
}

}  // namespace

int show_courses(const RulesArguments& arguments, const prover::Catalogue& catalogue) {
  const Course* course = nullptr;
  if (!arguments.course.empty()) {
    course = course_named(catalogue, arguments.course);
    if (!course) return status_mistake;
  }
  std::string text;
  if (arguments.json) {
    Json json = course ? course_json(*course, catalogue) : Json::array();
    if (!course) {
      for (const Course& each : catalogue.courses) json.push_back(course_json(each, catalogue));
    }
    text = json_page(json);
  } else {
    const prover::Register wording = register_named(arguments.wording);
    text = renderer_named(arguments.format)
               ->render(course ? one_page(*course, catalogue, wording) : list_page(catalogue), {});
  }
  return write_answer(text) ? status_proved : status_mistake;
}

}  // namespace frontend
