#include "prover/rule/course_parser.hpp"

#include <algorithm>
#include <optional>

#include "prover/rule/fields.hpp"

namespace prover {
namespace {

class CourseParser {
 public:
  explicit CourseParser(const RuleFile& file) : file_(file) {}

  ParsedCourse run() {
    if (file_.text.find('\0') != std::string::npos) {
      error({0, 0}, "this is not a text file", "a course file is UTF-8 text");
      return std::move(result_);
    }
    const std::vector<Field> fields = split_fields(file_.text);
    if (fields.empty() || fields.front().name != "course") {
      error(fields.empty() ? Span{0, 0} : fields.front().name_span, "a course file begins with `course` and a name",
            "write for example `course year-9`");
      return std::move(result_);
    }
    read_header(fields.front());
    for (std::size_t i = 1; i < fields.size(); ++i) read_field(fields[i]);
    for (const std::string_view name : {"title", "says", "source"})
      if (!std::count(seen_.begin(), seen_.end(), name))
        error(result_.id_span, "no `" + std::string(name) + "`", "add a line `" + std::string(name) + " \"…\"`");
    if (result_.entries.empty() && !has_error(result_.diagnostics))
      error(result_.id_span, "this course names no rule", "add a line `takes …` or `teaches …` with names of rules");
    return std::move(result_);
  }

 private:
  void error(Span span, std::string message, std::string way_out) {
    result_.diagnostics.push_back({Severity::error, span, std::move(message), std::move(way_out)});
  }

  void read_header(const Field& field) {
    result_.id_span = field.value.empty() ? field.name_span : field.span();
    if (is_rule_name(field.value))
      result_.course.id = field.value;
    else
      error(result_.id_span, "a course is named in small letters, digits and hyphens", "for example `course year-9`");
  }

  void read_field(const Field& field) {
    static const std::vector<std::string> known = {"title", "says", "source", "chapter", "takes", "teaches", "course"};
    const std::string name(field.name);
    if (!std::count(known.begin(), known.end(), name)) {
      const auto near = nearest_word(name, known);
      error(field.name_span, "unknown field `" + name + "`",
            near ? "did you mean `" + *near + "`?" : "a course has title, says, source, chapter, takes and teaches");
      return;
    }
    if (name == "course") {
      error(field.name_span, "a file holds one course", "put this course into a file of its own");
      return;
    }
    const bool repeats = name == "source" || name == "chapter" || name == "takes" || name == "teaches";
    if (!repeats && std::count(seen_.begin(), seen_.end(), name)) {
      error(field.name_span, "`" + name + "` is here twice", "keep one of them");
      return;
    }
    seen_.push_back(name);
    if (field.value.empty())
      error(field.name_span, "`" + name + "` says nothing", "write its value behind it, or leave it out");
    else if (name == "title")
      result_.course.title = quoted_text(field, result_.diagnostics);
    else if (name == "says")
      result_.course.says = quoted_text(field, result_.diagnostics);
    else if (name == "source")
      result_.course.sources.push_back(quoted_text(field, result_.diagnostics));
    else if (name == "chapter")
      chapter_ = quoted_text(field, result_.diagnostics);
    else
      read_names(field, name == "takes");
  }

  void read_names(const Field& field, bool taken) {
    const std::string_view value = field.value;
    for (std::size_t at = 0; at < value.size();) {
      const std::size_t end = std::min(value.find(' ', at), value.size());
      if (end > at) read_name(value.substr(at, end - at), {field.begin + at, field.begin + end}, taken);
      at = end + 1;
    }
  }
  void read_name(std::string_view word, Span span, bool taken) {
    if (is_rule_name(word))
      result_.entries.push_back({std::string(word), span, taken, chapter_});
    else
      error(span, "\"" + std::string(word) + "\" is no name of a rule",
            "names of rules stand here with blanks between them, for example `teaches vertical-angles angles-at-a-point`");
  }

  const RuleFile& file_;
  ParsedCourse result_;
  std::vector<std::string> seen_;
  std::string chapter_;  // in which the next names stand
};

}  // namespace

ParsedCourse parse_course(const RuleFile& file) {
  return CourseParser(file).run();
}

RuleNames::RuleNames(const Catalogue& catalogue) {
  for (std::size_t i = 0; i < catalogue.rules.size(); ++i) {
    const Rule& rule = catalogue.rules[i];
    ids.emplace(rule.id, RuleId(i));
    if (!rule.family.empty()) families[rule.family].emplace_back(i);
  }
}

namespace {

class Placing {
 public:
  Placing(ParsedCourse& parsed, const Catalogue& catalogue, const RuleNames& names, std::string_view text)
      : parsed_(parsed), catalogue_(catalogue), names_(names), text_(text), first_place_(catalogue.rules.size()) {
    for (const NamedEntry& entry : parsed.entries) named_.insert(entry.id);
  }

  void place(const CourseEntry& entry, Span span) {
    std::optional<Span>& first = first_place_[entry.rule.index()];
    if (first) {
      error(span,
            "`" + catalogue_[entry.rule].id + "` has its place in this course already, on line " +
                std::to_string(line_column(text_, first->begin).line),
            "keep one of the two");
      return;
    }
    first = span;
    parsed_.course.entries.push_back(entry);
  }
  // The members of a family that have no place of their own stand behind its head.
  void place_with_family(const CourseEntry& head, Span span) {
    place(head, span);
    const auto family = names_.families.find(catalogue_[head.rule].id);
    if (family == names_.families.end()) return;
    for (const RuleId member : family->second)
      if (!named_.contains(catalogue_[member].id)) place({member, head.taken, head.chapter}, span);
  }
  void place_course(const Course& course, const NamedEntry& named) {
    for (const CourseEntry& entry : course.entries) place({entry.rule, named.taken || entry.taken, entry.chapter.empty() ? named.chapter : entry.chapter}, named.span);
  }

  void error(Span span, std::string message, std::string way_out) {
    parsed_.diagnostics.push_back({Severity::error, span, std::move(message), std::move(way_out)});
  }
  void refuse(const NamedEntry& entry) {
    std::vector<std::string> known = catalogue_.ids();
    for (const Course& course : catalogue_.courses) known.push_back(course.id);
    const auto near = nearest_word(entry.id, known);
    error(entry.span, "there is no rule or course `" + entry.id + "`",
          near ? "did you mean `" + *near + "`?" : "`anglewright rules` lists all rules");
  }

 private:
  ParsedCourse& parsed_;
  const Catalogue& catalogue_;
  const RuleNames& names_;
  std::string_view text_;
  std::vector<std::optional<Span>> first_place_;  // by rule
  std::set<std::string> named_;
};

}  // namespace

void place_rules(ParsedCourse& parsed, const Catalogue& catalogue, const RuleNames& names,
                 const std::set<std::string>& broken, std::string_view text) {
  Placing placing(parsed, catalogue, names, text);
  if (names.ids.contains(parsed.course.id))
    placing.error(parsed.id_span, "`" + parsed.course.id + "` is the name of a rule", "give the course another name");
  for (const NamedEntry& entry : parsed.entries) {
    if (const auto rule = names.ids.find(entry.id); rule != names.ids.end())
      placing.place_with_family({rule->second, entry.taken, entry.chapter}, entry.span);
    else if (const Course* other = find_course(catalogue, entry.id))
      placing.place_course(*other, entry);
    else if (!broken.contains(entry.id))
      placing.refuse(entry);
  }
}

}  // namespace prover
