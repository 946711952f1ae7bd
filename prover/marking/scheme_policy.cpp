#include "prover/marking/scheme_policy.hpp"

#include <algorithm>
#include <cassert>
#include <functional>

#include "prover/rule/fields.hpp"
#include "prover/rule/schemes.hpp"

namespace prover {

namespace {

// A row of the file: its name, what it may say, and where that is kept.
struct Setting {
  std::string name;
  std::vector<std::string> choices;  // empty: a code with its marks, or a number
  std::function<void(SchemePolicy&, std::size_t)> choose;
  MarkCode SchemePolicy::*code = nullptr;
  int SchemePolicy::*number = nullptr;
  bool optional = false;
};

template <class Choice>
Setting choice(std::string name, Choice SchemePolicy::*where, std::vector<std::string> words) {
  // The words stand in the order of the enum.
  return {std::move(name), std::move(words), [where](SchemePolicy& p, std::size_t i) { p.*where = static_cast<Choice>(i); }};
}
Setting code(std::string name, MarkCode SchemePolicy::*where, bool optional = false) {
  return {std::move(name), {}, {}, where, nullptr, optional};
}

const std::vector<Setting>& settings() {
  using P = SchemePolicy;
  static const std::vector<Setting> table = {
      code("statement", &P::statement),
      code("fact", &P::fact, true),
      code("reason", &P::reason),
      code("both", &P::both, true),
      code("answer", &P::answer),
      code("conclusion", &P::conclusion),
      code("construction", &P::construction),
      choice("award", &P::award, {"together", "apart"}),
      choice("reasons", &P::reasons, {"each", "overall"}),
      choice("answer-reason", &P::answer_reason, {"asked", "not-for-sums"}),
      choice("algebra-reason", &P::algebra_reason, {"needed", "not-needed"}),
      choice("definitions", &P::definitions, {"marked", "unmarked"}),
      choice("repeated-reason", &P::repeated_reason, {"once", "each-time"}),
      choice("bare-answer", &P::bare_answer, {"answer-only", "full-unless-reasons-asked", "nothing"}),
      choice("carried-errors", &P::carried_errors, {"all", "method", "nothing"}),
      choice("arithmetic-slip", &P::arithmetic_slip, {"accuracy-only", "whole-line"}),
      choice("miscopied-number", &P::miscopied_number, {"carried", "method", "nothing"}),
      choice("replaced-work", &P::replaced_work, {"ignored", "looked-at"}),
      choice("missing-degree", &P::missing_degree, {"ignored", "loses-answer"}),
      choice("letter-order", &P::letter_order, {"strict", "lenient"}),
      choice("untaught-theorem", &P::untaught_theorem, {"accepted", "statement-only", "nothing"}),
      choice("nickname", &P::nickname, {"accepted", "refused"}),
      choice("lines-not-named", &P::lines_not_named, {"accepted", "refused"}),
      choice("bare-name", &P::bare_name, {"accepted", "refused"}),
      {"largest-gap", {}, {}, nullptr, &P::largest_gap},
  };
  return table;
}

std::string listed(const std::vector<std::string>& words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) text += (i == 0 ? "" : i + 1 == words.size() ? " or " : ", ") + words[i];
  return text;
}

class SchemeParser {
 public:
  explicit SchemeParser(const RuleFile& file) : file_(file) {}

  ParsedScheme run() {
    const std::vector<Field> fields = split_fields(file_.text);
    if (file_.text.find('\0') != std::string::npos || fields.empty() || fields.front().name != "scheme") {
      error(fields.empty() ? Span{0, 0} : fields.front().name_span, "a file of a mark scheme begins with `scheme` and a name",
            "write for example `scheme year-9`");
      return std::move(result_);
    }
    const Field& head = fields.front();
    id_span_ = head.value.empty() ? head.name_span : head.span();
    if (is_rule_name(head.value))
      result_.policy.id = head.value;
    else
      error(id_span_, "a scheme is named in small letters, digits and hyphens", "for example `scheme year-9`");
    for (std::size_t i = 1; i < fields.size(); ++i) read(fields[i]);
    for (const char* name : {"title", "says"}) missing(name, " \"…\"");
    for (const Setting& setting : settings())
      if (!setting.optional) missing(setting.name, " … from \"…\"");
    if (result_.policy.award == Award::together && !seen("both"))
      error(id_span_, "no `both`, though statement and reason earn one mark together", "add a line `both S/R 1 from \"…\"`");
    return std::move(result_);
  }

 private:
  void error(Span span, std::string message, std::string way_out) {
    result_.diagnostics.push_back({Severity::error, span, std::move(message), std::move(way_out)});
  }
  bool seen(std::string_view name) const { return std::count(seen_.begin(), seen_.end(), name) > 0; }
  void missing(const std::string& name, const char* rest) {
    if (!seen(name)) error(id_span_, "no `" + name + "`", "add a line `" + name + rest + "`");
  }

  void read(const Field& field) {
    const std::string name(field.name);
    std::vector<std::string> known = {"title", "says", "default-for"};
    for (const Setting& setting : settings()) known.push_back(setting.name);
    if (!std::count(known.begin(), known.end(), name)) {
      const auto near = nearest_word(name, known);
      error(field.name_span, name == "scheme" ? "a file holds one scheme" : "unknown field `" + name + "`",
            near ? "did you mean `" + *near + "`?" : "rules/README.md lists what a scheme says");
      return;
    }
    if (seen(name)) {
      error(field.name_span, "`" + name + "` is here twice", "keep one of them");
      return;
    }
    seen_.push_back(name);
    if (field.value.empty())
      error(field.name_span, "`" + name + "` says nothing", "write its value behind it");
    else if (name == "title")
      result_.policy.title = quoted_text(field, result_.diagnostics);
    else if (name == "says")
      result_.policy.says = quoted_text(field, result_.diagnostics);
    else if (name == "default-for")
      read_registers(field);
    else
      read_setting(field, *std::find_if(settings().begin(), settings().end(), [&](const Setting& s) { return s.name == name; }));
  }

  void read_registers(const Field& field) {
    for (std::size_t at = 0; at < field.value.size();) {
      const std::size_t end = std::min(field.value.find(' ', at), field.value.size());
      const std::string word = field.value.substr(at, end - at);
      if (const auto wording = register_from(word))
        result_.policy.default_for.push_back(*wording);
      else if (!word.empty())
        error({field.begin + at, field.begin + end}, "\"" + word + "\" is no register", "plain, us, uk or sa");
      at = end + 1;
    }
  }

  // `VALUE from "SOURCE"`
  void read_setting(const Field& field, const Setting& setting) {
    std::size_t from = field.value.find(" from \"");
    if (from == std::string::npos) {
      error(field.span(), "`" + setting.name + "` does not say from where it is",
            "add its source: from \"ZA5\", from \"common practice\" or from \"from memory\"");
      from = field.value.size();
    } else {
      Field source = field;
      source.value = field.value.substr(from + 6);
      source.begin = field.begin + from + 6;
      result_.policy.rows.push_back({setting.name, one_line(std::string_view(field.value).substr(0, from)),
                                     quoted_text(source, result_.diagnostics)});
    }
    const std::string value = one_line(std::string_view(field.value).substr(0, from));
    const Span span{field.begin, field.begin + std::max<std::size_t>(1, value.size())};
    if (!setting.choices.empty()) {
      const auto at = std::find(setting.choices.begin(), setting.choices.end(), value);
      if (at == setting.choices.end())
        error(span, "`" + setting.name + "` is not \"" + value + "\"", "write " + listed(setting.choices));
      else
        setting.choose(result_.policy, static_cast<std::size_t>(at - setting.choices.begin()));
    } else if (setting.code != nullptr) {
      read_code(value, span, result_.policy.*setting.code);
    } else if (value.size() == 1 && value[0] >= '0' && value[0] <= '9') {
      result_.policy.*setting.number = value[0] - '0';
    } else {
      error(span, "`" + setting.name + "` is a number from 0 to 9, not \"" + value + "\"", "for example 1");
    }
  }

  void read_code(const std::string& value, Span span, MarkCode& code) {
    const std::size_t blank = value.find(' ');
    const auto letter = [](char c) { return (c >= 'A' && c <= 'Z') || c == '/'; };
    const std::string name = value.substr(0, blank), marks = blank == std::string::npos ? "1" : value.substr(blank + 1);
    if (name.empty() || name.size() > 4 || !std::all_of(name.begin(), name.end(), letter))
      error(span, "a mark has a code of capital letters, not \"" + name + "\"", "for example `S 1`, `S/R 1` or `M 2`");
    else if (marks.size() != 1 || marks[0] < '1' || marks[0] > '9')
      error(span, "a code stands for 1 to 9 marks, not \"" + marks + "\"", "for example `" + name + " 1`");
    else
      code = {name, marks[0] - '0'};
  }

  const RuleFile& file_;
  ParsedScheme result_;
  Span id_span_;
  std::vector<std::string> seen_;
};

}  // namespace

ParsedScheme parse_scheme(const RuleFile& file) { return SchemeParser(file).run(); }

const std::vector<SchemePolicy>& standard_schemes() {
  static const std::vector<SchemePolicy> schemes = [] {
    std::vector<SchemePolicy> all;
    for (const RuleFile& file : builtin_scheme_files()) {
      ParsedScheme parsed = parse_scheme(file);
      assert(!has_error(parsed.diagnostics));  // tests/unit/marking/schemes.cpp reads them all
      all.push_back(std::move(parsed.policy));
    }
    return all;
  }();
  return schemes;
}

const SchemePolicy* find_scheme(std::string_view id) {
  for (const SchemePolicy& scheme : standard_schemes())
    if (scheme.id == id) return &scheme;
  return nullptr;
}

const SchemePolicy& default_scheme(Register wording) {
  for (const SchemePolicy& scheme : standard_schemes())
    if (std::count(scheme.default_for.begin(), scheme.default_for.end(), wording)) return scheme;
  return standard_schemes().front();
}

}  // namespace prover
