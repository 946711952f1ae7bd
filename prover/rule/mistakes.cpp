#include "prover/rule/mistakes.hpp"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <atomic>
#include <cassert>
#include <limits>

#include "prover/rule/fields.hpp"
#include "prover/rule/rule_parser.hpp"

namespace prover {

namespace {

struct ParsedMistake {
  ParsedRule parsed;
  std::string instead, missing;
};

// A mistake is written like a rule, with two fields more and without a kind. These are blanked, so that every other
// mistake in the file is told in its place.
ParsedMistake parse_mistake(const RuleFile& file, Examples examples) {
  constexpr std::string_view header = "mistake";
  ParsedMistake out;
  RuleFile rule{file.name, file.text};
  const std::size_t at = rule.text.find_first_not_of(" \t\r\n");
  if (at == std::string::npos || rule.text.compare(at, header.size(), header) != 0) {
    out.parsed.diagnostics.push_back({Severity::error, {0, 0}, "a file of a mistake begins with `mistake` and a name",
                                      "write for example `mistake two-sides-and-an-angle`"});
    return out;
  }
  rule.text.replace(at, header.size(), "rule   ");
  std::vector<Diagnostic> mistakes;
  const std::string text = rule.text;
  for (const Field& field : split_fields(text)) {
    if (field.name != "instead" && field.name != "missing") continue;
    if (field.name == "instead")
      out.instead = one_line(field.value);
    else
      out.missing = quoted_text(field, mistakes);
    for (std::size_t i = field.name_span.begin; i < field.span().end && i < rule.text.size(); ++i)
      if (rule.text[i] != '\n') rule.text[i] = ' ';
  }
  rule.text += "\n  kind theorem\n";
  out.parsed = parse_rule(rule, examples);
  auto& found = out.parsed.diagnostics;
  found.insert(found.end(), mistakes.begin(), mistakes.end());
  for (const auto& [value, name] : {std::pair{&out.instead, "instead"}, {&out.missing, "missing"}})
    if (value->empty())
      found.push_back({Severity::error, out.parsed.id_span, std::string("no `") + name + "`", std::string("add a line `") + name + " …`"});
  out.parsed.rule.topic = mistakes_topic;
  return out;
}

}  // namespace

const Mistake* MistakeBook::find(RuleId rule) const {
  const auto at = std::find_if(mistakes.begin(), mistakes.end(), [&](const Mistake& m) { return m.rule == rule; });
  return at == mistakes.end() ? nullptr : &*at;
}

LoadedMistakes load_mistakes(const Catalogue& rules, const std::vector<RuleFile>& files, Examples examples) {
  LoadedMistakes loaded;
  loaded.book.catalogue = rules;
  loaded.book.true_rules = rules.rules.size();
  // Far from the serials of catalogues that prove, so that nothing worked out for one of these is taken for the other's.
  static std::atomic<std::uint64_t> loads{std::numeric_limits<std::uint64_t>::max() / 2};
  loaded.book.catalogue.serial = ++loads;
  std::vector<ParsedMistake> parsed(files.size());
  tbb::parallel_for(std::size_t{0}, files.size(), [&](std::size_t i) { parsed[i] = parse_mistake(files[i], examples); });
  for (std::size_t i = 0; i < files.size(); ++i) {
    const RuleFile& file = files[i];
    ParsedMistake& one = parsed[i];
    auto& found = one.parsed.diagnostics;
    if (loaded.book.catalogue.find(one.parsed.rule.id))
      found.push_back({Severity::error, one.parsed.id_span, "there is a rule or mistake of this name already", "give it another name"});
    if (!one.instead.empty() && !rules.find(one.instead))
      found.push_back({Severity::error, one.parsed.id_span, "`instead` names no rule: " + one.instead, "name the rule that it is taken for"});
    if (!found.empty()) loaded.errors.emplace_back(file, found);
    if (has_error(found)) continue;
    loaded.book.mistakes.push_back(
        {RuleId(static_cast<std::int64_t>(loaded.book.catalogue.rules.size())), one.instead, one.missing});
    loaded.book.catalogue.rules.push_back(std::move(one.parsed.rule));
  }
  return loaded;
}

const MistakeBook& standard_mistakes() {
  static const MistakeBook book = [] {
    LoadedMistakes loaded = load_mistakes(standard_catalogue(), builtin_mistake_files(), Examples::kept);
    assert(loaded.errors.empty() && "the mistakes compiled into the program must load; tests/rules says what is wrong");
    return std::move(loaded.book);
  }();
  return book;
}

std::string fill_missing(const MistakeBook& book, const Mistake& mistake, const std::vector<std::string>& place) {
  Rule words = book.catalogue[mistake.rule];
  words.wording = {{Register::plain, mistake.missing}};
  return fill_wording(words, Register::plain, place);
}

}  // namespace prover
