#include "prover/base/source.hpp"

#include <catch2/catch.hpp>

using namespace prover;

TEST_CASE("a diagnostic shows its place, the line, a caret and a way out") {
  const std::string text = "triangle: ABC\n\n  angle A D C = 40\n";
  const Diagnostic d{Severity::error,
                     {text.find('D'), text.find('D') + 1},
                     "D is not on the figure yet",
                     "say where D is, for example \"D is on line AB\""};
  CHECK(render(d, "kite.aw", text) ==
        "kite.aw:3:11: error: D is not on the figure yet\n"
        "      angle A D C = 40\n"
        "              ^\n"
        "  try: say where D is, for example \"D is on line AB\"\n");
}

TEST_CASE("columns count characters as a person does") {
  const std::string text = "∠KLM = 40°, ∠PQR";
  CHECK(line_column(text, text.find("PQR")).column == 14);
  const Diagnostic d{Severity::warning, {text.find("PQR"), text.size()}, "odd", ""};
  CHECK(render(d, "f", text) == "f:1:14: warning: odd\n    ∠KLM = 40°, ∠PQR\n                 ^\n");
}

TEST_CASE("an accent takes no column on the screen") {
  const std::string text = "KL̂M = ?";
  const Diagnostic d{Severity::error, {text.find('?'), text.size()}, "no", ""};
  CHECK(render(d, "f", text) == "f:1:8: error: no\n    KL̂M = ?\n          ^\n");
}

TEST_CASE("a very long line is shortened round the mistake") {
  const std::string text = std::string(5000, 'a') + "?" + std::string(5000, 'b');
  const std::string shown = render({Severity::error, {5000, 5001}, "here", ""}, "f", text);
  CHECK(shown.size() < 400);
  CHECK(shown.find("… aaa") != std::string::npos);
  CHECK(shown.find("?bbb") != std::string::npos);
}

TEST_CASE("a place at the end of the text, or of an empty one, is a place") {
  CHECK(render({Severity::error, {0, 0}, "the file is empty", ""}, "f", "") ==
        "f:1:1: error: the file is empty\n");
  CHECK(line_column("ab\n", 99).line == 2);
  CHECK(line_column("ab\r\ncd", 4).column == 1);
}

TEST_CASE("a note or a warning is no error") {
  CHECK_FALSE(has_error({}));
  CHECK_FALSE(has_error({{Severity::warning, {}, "w", ""}, {Severity::note, {}, "n", ""}}));
  CHECK(has_error({{Severity::note, {}, "n", ""}, {Severity::error, {}, "e", ""}}));
}
