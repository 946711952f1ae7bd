#include "prover/rule/rule_parser.hpp"

#include <algorithm>
#include <array>

#include "prover/rule/fields.hpp"
#include "prover/rule/lint.hpp"

namespace prover {
namespace {

std::string_view topic_of(std::string_view file_name) {
  const std::size_t slash = file_name.find_last_of('/');
  if (slash == file_name.npos) return "own";
  const std::string_view folders = file_name.substr(0, slash);
  const std::size_t before = folders.find_last_of('/');
  return before == folders.npos ? folders : folders.substr(before + 1);
}

class RuleParser {
 public:
  RuleParser(const RuleFile& file, Examples examples) : file_(file), examples_(examples) {
    result_.rule.topic = std::string(topic_of(file.name));
  }

  ParsedRule run() {
    const std::string_view text = file_.text;
    if (text.find('\0') != text.npos) {
      error({0, 0}, "this is not a text file", "a rule file is UTF-8 text");
      return std::move(result_);
    }
    std::vector<Field> fields = split_fields(text);
    if (fields.empty() || fields.front().name != "rule") {
      error(fields.empty() ? Span{0, 0} : fields.front().name_span,
            "a rule file begins with `rule` and a name", "write for example `rule alternate-angles`");
      return std::move(result_);
    }
    read_header(fields.front());
    for (std::size_t i = 1; i < fields.size(); ++i) read_field(fields[i]);
    for (const std::string_view name : {"title", "kind", "says", "why", "source"})
      if (!seen(name))
        error(result_.id_span, "no `" + std::string(name) + "`", "add a line `" + std::string(name) + " …`");
    if (!has_error(result_.diagnostics)) {
      places_.header = result_.id_span;
      if (examples_ == Examples::kept) places_.hints.clear();  // the tests have read the program's own
      std::vector<Diagnostic> found = lint(result_.rule, places_);
      result_.diagnostics.insert(result_.diagnostics.end(), found.begin(), found.end());
    }
    return std::move(result_);
  }

 private:
  using Read = void (RuleParser::*)(const Field&);
  struct Row {
    std::string_view name;
    bool repeats;
    Read read;
  };
  static constexpr int highest_cost = 1000;  // sums of weights stay far from the range of their type
  // One row a field; the order is that of a well-written file.
  static constexpr std::size_t row_count = 26;
  static const std::array<Row, row_count>& rows() {
    static const std::array<Row, row_count> table = {{
        {"title", false, &RuleParser::read_title},     {"kind", false, &RuleParser::read_kind},
        {"cost", false, &RuleParser::read_cost},       {"family", false, &RuleParser::read_family},
        {"says", false, &RuleParser::read_says},       {"builtin", false, &RuleParser::read_builtin},
        {"meaning", false, &RuleParser::read_meaning}, {"given", true, &RuleParser::read_given},
        {"where", true, &RuleParser::read_where},      {"then", true, &RuleParser::read_then},
        {"plain", false, &RuleParser::read_wording},   {"us", false, &RuleParser::read_wording},
        {"uk", false, &RuleParser::read_wording},      {"sa", false, &RuleParser::read_wording},
        {"also", true, &RuleParser::read_also},        {"recalled", false, &RuleParser::read_recalled},
        {"unworded", false, &RuleParser::read_unworded}, {"rests", false, &RuleParser::read_rests},
        {"why", true, &RuleParser::read_why},          {"source", true, &RuleParser::read_source},
        {"case", true, &RuleParser::read_case},        {"add", true, &RuleParser::read_add},
        {"example", true, &RuleParser::read_example},  {"rule", false, &RuleParser::read_second_header},
        {"step", false, &RuleParser::read_step},       {"hint", true, &RuleParser::read_hint_field},
    }};
    return table;
  }

  void error(Span span, std::string message, std::string way_out) {
    result_.diagnostics.push_back({Severity::error, span, std::move(message), std::move(way_out)});
  }
  bool seen(std::string_view name) const {
    return std::find(seen_.begin(), seen_.end(), name) != seen_.end();
  }

  void read_header(const Field& field) {
    result_.id_span = field.value.empty() ? field.name_span : field.span();
    if (!is_rule_name(field.value)) {
      error(result_.id_span, "a rule is named in small letters, digits and hyphens",
            "for example `rule alternate-angles`");
      return;
    }
    result_.rule.id = field.value;
  }

  void read_field(const Field& field) {
    for (const Row& row : rows()) {
      if (row.name != field.name) continue;
      if (!row.repeats && seen(field.name)) {
        error(field.name_span, "`" + std::string(field.name) + "` is here twice", "keep one of them");
        return;
      }
      seen_.emplace_back(field.name);
      if (field.value.empty())
        error(field.name_span, "`" + std::string(field.name) + "` says nothing",
              "write its value behind it, or leave it out");
      else
        (this->*row.read)(field);
      return;
    }
    std::vector<std::string> known;
    for (const Row& row : rows()) known.emplace_back(row.name);
    const auto near = nearest_word(field.name, known);
    error(field.name_span, "unknown field `" + std::string(field.name) + "`",
          near ? "did you mean `" + *near + "`?" : "rules/README.md lists the fields");
  }

  std::string quoted(const Field& field, std::size_t* begin = nullptr) {
    return quoted_text(field, result_.diagnostics, begin);
  }

  void read_title(const Field& f) { result_.rule.title = quoted(f); }
  void read_says(const Field& f) { result_.rule.says = quoted(f); }
  void read_also(const Field& f) { result_.rule.synonyms.push_back(quoted(f)); }
  void read_source(const Field& f) { result_.rule.sources.push_back(quoted(f)); }
  void read_why(const Field& f) {
    std::string& why = result_.rule.why;
    why += (why.empty() ? "" : " ") + one_line(f.value);
  }
  void read_family(const Field& f) {
    if (is_rule_name(f.value))
      result_.rule.family = f.value;
    else
      error(f.span(), "`family` names another rule", "write the name of one rule");
  }
  void read_second_header(const Field& f) {
    error(f.name_span, "a file holds one rule", "put this rule into a file of its own");
  }

  void read_kind(const Field& f) {
    if (const auto kind = kind_from(f.value)) {
      result_.rule.kind = *kind;
      return;
    }
    error(f.span(), "unknown kind \"" + f.value + "\"",
          "write hypothesis, construction, postulate, definition, theorem, converse or corollary");
  }
  void read_cost(const Field& f) {
    const auto cost = Rational::parse(f.value);
    if (!cost || cost->sign() < 0)
      error(f.span(), "a cost is a number, not below 0", "for example `cost 1` or `cost 0.25`");
    else if (*cost > Rational(highest_cost))
      error(f.span(), "no cost is above " + std::to_string(highest_cost), "to forbid a rule, leave it out: `--without`");
    else
      result_.rule.cost = *cost;
  }
  void read_step(const Field& f) {
    result_.rule.free_step = f.value == "free";
    if (!result_.rule.free_step)
      error(f.span(), "a step is counted, or it is `free`", "write `step free`, or leave the field out");
  }
  void read_builtin(const Field& f) {
    result_.rule.builtin = builtin_from(f.value);
    if (result_.rule.builtin) {
      result_.rule.variables.points = places_of(*result_.rule.builtin);
      return;
    }
    const auto near = nearest_word(f.value, builtin_names());
    error(f.span(), "unknown builtin \"" + f.value + "\"",
          near ? "did you mean `" + *near + "`?" : "rules/README.md lists the builtins");
  }
  void read_meaning(const Field& f) {
    result_.rule.meaning = f.value == "yes";
    if (f.value != "yes" && f.value != "no") error(f.span(), "`meaning` is yes or no", "write `meaning yes`");
  }

  void read_phrases(const Field& f, std::vector<Phrase>& phrases) {
    std::vector<Phrase> found = parse_phrases(f.value, result_.rule.variables, result_.diagnostics, f.begin);
    phrases.insert(phrases.end(), std::make_move_iterator(found.begin()),
                   std::make_move_iterator(found.end()));
  }
  void read_given(const Field& f) { read_phrases(f, result_.rule.given); }
  void read_where(const Field& f) { read_phrases(f, result_.rule.where); }
  void read_then(const Field& f) { read_phrases(f, result_.rule.then); }

  void read_wording(const Field& f) {
    std::size_t begin = f.begin;
    const std::string text = quoted(f, &begin);
    if (text.empty()) return;
    const Register wording = *register_from(f.name);
    result_.rule.wording[wording] = text;
    places_.wording.emplace_back(wording, begin);
  }
  void read_hint_field(const Field& f) {
    auto hint = read_hint(f, result_.diagnostics);
    if (!hint) return;
    const auto same = [&](const HintField& other) { return other.wording == hint->wording && other.rung == hint->rung; };
    if (std::any_of(places_.hints.begin(), places_.hints.end(), same)) {
      error(f.name_span, "this sentence is here twice", "keep one of them");
      return;
    }
    set_hint(result_.rule, *hint);
    places_.hints.push_back(std::move(*hint));
  }
  void read_recalled(const Field& f) { read_registers(f, result_.rule.recalled); }
  void read_rests(const Field& f) {
    const std::string ids = one_line(f.value);
    for (std::size_t at = 0; at < ids.size();) {
      const std::size_t end = std::min(ids.find(' ', at), ids.size());
      if (end > at) result_.rule.rests.push_back(ids.substr(at, end - at));
      at = end + 1;
    }
  }
  void read_unworded(const Field& f) { read_registers(f, result_.rule.unworded); }
  void read_registers(const Field& f, std::map<Register, bool>& named) {
    for (std::size_t at = 0; at < f.value.size();) {
      const std::size_t end = std::min(f.value.find(' ', at), f.value.size());
      const std::string_view word = std::string_view(f.value).substr(at, end - at);
      if (const auto wording = register_from(word))
        named[*wording] = true;
      else if (!word.empty())
        error({f.begin + at, f.begin + end}, "unknown wording \"" + std::string(word) + "\"",
              "write plain, us, uk or sa");
      at = end + 1;
    }
  }

  // Lines drawn before the first `case` are drawn in every case.
  void read_case(const Field& f) {
    auto& cases = result_.rule.proof_cases;
    if (!seen("case ")) {
      if (!cases.empty()) drawn_in_all_ = std::move(cases.front().added);
      cases.clear();
      seen_.emplace_back("case ");
      result_.rule.drawn_in_all = drawn_in_all_.size();
    }
    const std::size_t gives = f.value.find("gives ");
    const std::string_view when = std::string_view(f.value).substr(0, gives);
    const std::string_view claim = gives == f.value.npos ? "" : std::string_view(f.value).substr(gives + 6);
    Names letters = result_.rule.builtin ? Names() : result_.rule.variables;
    check_proof_text(when, f.begin, letters);
    if (!claim.empty()) check_proof_text(claim, f.begin + gives + 6, letters);
    cases.push_back({one_line(when), one_line(claim), drawn_in_all_});
  }
  void read_add(const Field& f) {
    auto& cases = result_.rule.proof_cases;
    if (cases.empty()) cases.emplace_back();
    Names letters = result_.rule.builtin ? Names() : result_.rule.variables;
    check_proof_text(f.value, f.begin, letters);
    cases.back().added.push_back(one_line(f.value));
    if (!seen("case ")) result_.rule.drawn_in_all = cases.back().added.size();
  }
  void check_proof_text(std::string_view text, std::size_t begin, Names& letters) {
    if (examples_ == Examples::checked) parse_phrases(text, letters, result_.diagnostics, begin);
  }

  void read_example(const Field& f) {
    const std::string_view v = f.value;
    RuleExample example;
    const std::size_t word = std::min(v.find(' '), v.size());
    const std::string_view which = v.substr(0, word);
    const std::size_t gives = v.find(" gives ", word);
    if ((which != "fires" && which != "silent") || gives == v.npos) {
      error(f.span(), "an example reads `example fires … gives …` or `example silent … gives …`",
            "write the givens, then `gives`, then what follows or does not");
      return;
    }
    example.fires = which == "fires";
    const std::string_view givens = v.substr(word, gives - word), conclusion = v.substr(gives + 7);
    example.givens = one_line(givens);
    example.conclusion = one_line(conclusion);
    example.line = static_cast<int>(line_column(file_.text, f.begin).line);
    if (examples_ == Examples::checked) {
      Names names;
      parse_phrases(givens, names, result_.diagnostics, f.begin + word);
      parse_phrases(conclusion, names, result_.diagnostics, f.begin + gives + 7);
    }
    result_.rule.examples.push_back(std::move(example));
  }

  const RuleFile& file_;
  Examples examples_;
  ParsedRule result_;
  RulePlaces places_;
  std::vector<std::string> seen_;
  std::vector<std::string> drawn_in_all_;
};

}  // namespace

ParsedRule parse_rule(const RuleFile& file, Examples examples) {
  return RuleParser(file, examples).run();
}

}  // namespace prover
