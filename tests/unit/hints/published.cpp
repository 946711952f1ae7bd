// The ladders of all published problems (tests/published, with their sources): nothing below the last rung gives the answer
// away. The numbers are looked at here without the guard that the builder asks; relations are read back by it. (That what is
// told is right to the judge, line by line, is asked by tests/marking/check_ladders.py, which shares no code with either.)
#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>

#include "prover/hint.hpp"
#include "prover/hints/leak.hpp"

using namespace prover;

namespace {

struct Published {
  std::string id, text;
};

std::vector<Published> published() {
  std::vector<Published> all;
  for (const char* file : {"classroom", "theorems", "euclid"}) {
    std::ifstream in(std::string(TESTS_DIR) + "/published/" + file + ".json");
    for (const auto& item : nlohmann::json::parse(in)) {
      const auto& answer = item["answer"];
      if (answer.is_string() || (answer.is_boolean() && !answer.get<bool>())) continue;
      Published one{item["id"], ""};
      for (const std::string fact : item["facts"]) one.text += fact + "\n";
      if (item.contains("add") && item["add"].is_string()) one.text += "add: " + item["add"].get<std::string>() + "\n";
      if (item.contains("without") && !item["without"].empty()) {
        std::string names;
        for (const std::string name : item["without"]) names += (names.empty() ? "" : ", ") + name;
        one.text += "taught: not " + names + "\n";
      }
      one.text += (answer.is_boolean() ? "prove: " : "find: ") + item["ask"].get<std::string>() + "\n";
      all.push_back(std::move(one));
    }
  }
  return all;
}

HintOptions options() {
  HintOptions options;
  options.prove.budget = Budget::seconds(10, {});
  return options;
}

}  // namespace

TEST_CASE("no rung of a published problem gives the answer away", "[hints][published]") {
  int ladders = 0;
  for (const Published& problem : published()) {
    const Hints hints = hint(problem.text, standard_catalogue(), options());
    if (hints.answer.verdict != Verdict::proved) continue;
    INFO(problem.id);
    CHECK_FALSE(hints.ladders.empty());
    const std::vector<Statement> statements = statements_of(parse_problem(problem.text));
    for (const Ladder& ladder : hints.ladders) {
      ++ladders;
      const Goal& goal = *std::find_if(statements[0].goals.begin(), statements[0].goals.end(), [&](const Goal& g) { return g.text == ladder.goal; });
      LeakGuard guard(statements[0], goal, hints.answer.value, hints.answer.figures);
      REQUIRE_FALSE(ladder.rungs.empty());
      for (const Rung& rung : ladder.rungs) {
        INFO(rung.level << " " << name_of(rung.kind) << ": " << rung.text);
        CHECK((rung.kind == RungKind::answer) == (rung.level == static_cast<int>(ladder.rungs.size())));
        CHECK(rung.text.find_first_of("{}") == std::string::npos);
        if (rung.kind == RungKind::answer) break;
        const bool step = rung.kind == RungKind::step;
        const auto leak = guard.leak(rung.text, step ? Told::step : Told::hint);
        INFO(leak.value_or(""));
        CHECK_FALSE(leak);
        if (!step) CHECK(rung.text.find("°") == std::string::npos);
        if (!hints.answer.value.empty() && goal.kind == GoalKind::find)
          CHECK(rung.text.find(" " + hints.answer.value + "°") == std::string::npos);
        if (step) guard.told(rung.claim);
      }
    }
  }
  CHECK(ladders >= 160);
}
