// Whatever is written as a reason is read without harm: no text is too long, too odd or too empty.
#include <catch2/catch.hpp>
#include <random>

#include "prover/marking/reason.hpp"
#include "prover/marking/reason_index.hpp"

using namespace prover;

namespace {

Names knots() {
  Names names;
  for (const char* name : {"K", "L", "M", "N", "P", "Q", "O", "K1", "A'"}) names.points.emplace_back(name);
  return names;
}
std::vector<ReadReason> read(const std::string& text) {
  return read_reason(text, knots(), standard_catalogue(), Register::uk);
}

}  // namespace

TEST_CASE("an empty reason is none", "[reason]") {
  for (const char* text : {"", " ", "\n", ".", "()", " , ;"}) CHECK(read(text).empty());
  CHECK_FALSE(read("?!x").empty());
}

TEST_CASE("reasons of ten thousand letters are read, and so are bytes that are no text", "[reason]") {
  std::string words, letters(10000, 'a'), signs;
  while (words.size() < 10000) words += "alternate angles are equal and angels in a trinagle ";
  while (signs.size() < 10000) signs += "∠∥(";
  CHECK_FALSE(read(words).empty());
  CHECK(read(words)[0].kind == ReasonKind::rule);
  CHECK_FALSE(read(letters).empty());
  CHECK_FALSE(read(signs).empty());
  std::mt19937 random(1);
  const Names names = knots();
  for (int i = 0; i < 300; ++i) {
    std::string bytes;
    for (int k = 0; k < 200; ++k) bytes += static_cast<char>(random() % 256);
    for (const ReadReason& reason : read(bytes))
      for (const std::vector<PointId>& figure : reason.figures)
        for (const PointId point : figure) CHECK(point.index() < names.points.size());
  }
}

TEST_CASE("parts of good reasons in any order do no harm", "[reason]") {
  const std::vector<std::string> parts = {"∠",  "alt",   "KL",     "∥",   "(",   "3",  ")",      "so",      "because", ",",    "=",     "180°",    "triangle", "KLM",
                                          "of", "angle", "equal",  "Z",   "not", "and", "line",  "converse", "opp",     "1/2",  "|||",   "tan chord", "K1L",     "A'K",
                                          "÷",  "<",     "is",     "2",   "v.o.a.", "\n", "radii", "−",     "cyclic quad", "isos", "trinagle", "from"};
  std::mt19937 random(7);
  const Names names = knots();
  for (int i = 0; i < 4000; ++i) {
    std::string text;
    for (std::size_t k = random() % 14 + 1; k > 0; --k) text += parts[random() % parts.size()] + (random() % 4 == 0 ? "" : " ");
    INFO(text);
    for (const ReadReason& reason : read(text)) {
      for (const RuleId rule : reason.rules) CHECK(rule.index() < standard_catalogue().rules.size());
      for (const Phrase& place : reason.places) {
        CHECK(place.span.end <= text.size());
        for (const PointId point : place.points) CHECK(point.index() < names.points.size());
        CHECK_FALSE(describe(place, names).empty());
      }
      if (reason.kind == ReasonKind::nickname) CHECK_FALSE(reason.accepted.empty());
    }
  }
}
