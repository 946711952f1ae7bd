// Documents as text and as Markdown, and answers as JSON.
#include <catch2/catch.hpp>

#include "frontend/command/answer_json.hpp"
#include "frontend/command/catalogue.hpp"
#include "frontend/command/choices.hpp"
#include "frontend/command/input.hpp"
#include "frontend/command/status.hpp"

using namespace frontend;

TEST_CASE("a document as text: blocks set off by empty lines, small print together") {
  const Document document{{Paragraph{"Proved."}, Items{"Understood", {"KL = KM", "∠K = 40°"}, true}, Note{"Cost 1."}, Note{"Checked."}}};
  CHECK(renderer_named("text")->render(document, Layout::two_column) == "Proved.\n\nUnderstood:\n  KL = KM\n  ∠K = 40°\n\nCost 1.\nChecked.\n");
}

TEST_CASE("a document as Markdown: what Markdown would read is escaped") {
  const Document document{{Paragraph{"a < b * c_1"}, Table{{"A", "B"}, {{"x|y", "z"}}}}};
  CHECK(renderer_named("markdown")->render(document, Layout::two_column) ==
        "a \\< b \\* c\\_1\n\n| A | B |\n|---|---|\n| x\\|y | z |\n");
}

TEST_CASE("an answer as JSON keeps its keys in order, lists even when empty, and leaves out what there is not") {
  prover::Answer answer;
  answer.summary = "Nothing.";
  answer.stop = "saturated";
  CHECK(json_line(answer_json(answer, "", false)) ==
        R"({"verdict":"unknown","summary":"Nothing.","read_as":[],"proofs":[],"figures":[],"conflict":[],"missing":[],)"
        R"("settled_by":[],"in_terms_of":[],"unlock":[],"cases":[],"stop":"saturated","checks_disagree":false,"diagnostics":[]})");
  answer.summary = "stray \xFF byte";
  CHECK(json_line(answer_json(answer, "", false)).find("stray \xEF\xBF\xBD byte") != std::string::npos);
}

TEST_CASE("the status says the worst that is known") {
  prover::Answer answer;
  CHECK(status_of(answer) == 1);
  answer.verdict = prover::Verdict::proved;
  CHECK(status_of(answer) == 0);
  answer.diagnostics.push_back({prover::Severity::warning, {}, "odd", ""});
  CHECK(status_of(answer) == 0);
  answer.diagnostics.push_back({prover::Severity::error, {}, "wrong", ""});
  CHECK(status_of(answer) == 2);
  answer.checks_disagree = true;
  CHECK(status_of(answer) == 3);
}

TEST_CASE("lists of options are parted at commas") {
  CHECK(parts_of_list("a, b ,,c ") == std::vector<std::string>{"a", "b", "c"});
  CHECK(parts_of_list(" ").empty());
  CHECK(parts_of_list("angles on a line") == std::vector<std::string>{"angles on a line"});
}

TEST_CASE("what is no text is said before anybody reads it") {
  CHECK(not_a_text("triangle: KLM").empty());
  CHECK(not_a_text(" \n\t").starts_with("is empty"));
  CHECK(not_a_text(std::string("a\0b", 3)) == "is not a text file");
  CHECK(not_a_text("\xFF\xFEt").starts_with("is UTF-16"));
}
