// Classic mistakes are no rules. Each is refuted by a random figure of its premises; each fires where its example says;
// and wherever one might slip into a proof the checker refuses it.
#include "prover/rule/mistakes.hpp"

#include <catch2/catch.hpp>

#include "prover/measure/trial.hpp"
#include "prover/prove.hpp"
#include "prover/rule/wording.hpp"

using namespace prover;

namespace {

std::string problem(const RuleExample& example) { return example.givens + "\nprove: " + example.conclusion + "\n"; }

std::string told(const std::vector<Diagnostic>& mistakes, const RuleFile& file) {
  std::string text;
  for (const Diagnostic& one : mistakes) text += render(one, file.name, file.text);
  return text;
}

}  // namespace

TEST_CASE("the files of mistakes load, and name the rules they are taken for", "[mistakes]") {
  const LoadedMistakes loaded = load_mistakes(standard_catalogue(), builtin_mistake_files());
  for (const auto& [file, errors] : loaded.errors) FAIL_CHECK(told(errors, file));
  CHECK(loaded.book.mistakes.size() == builtin_mistake_files().size());
  CHECK(loaded.book.mistakes.size() > 40);
  CHECK(loaded.book.true_rules == standard_catalogue().rules.size());
  for (std::size_t i = 0; i < loaded.book.true_rules; ++i)  // rules keep their ids
    CHECK(loaded.book.catalogue.rules[i].id == standard_catalogue().rules[i].id);
  for (const Mistake& mistake : loaded.book.mistakes) {
    const Rule& rule = loaded.book.catalogue[mistake.rule];
    INFO(rule.id);
    CHECK(is_mistake(rule));
    std::vector<Diagnostic> wrong;
    wording_pieces(mistake.missing, rule.variables, &wrong);
    CHECK(wrong.empty());
  }
}

TEST_CASE("a file of a mistake that says too little, or a rule's name, is refused", "[mistakes]") {
  const std::string good = builtin_mistake_files()[0].text;
  const auto load = [](std::string text) {
    return load_mistakes(standard_catalogue(), {{"mistakes/one.mistake", std::move(text)}});
  };
  CHECK(load(good).errors.empty());
  const auto without = [&](const std::string& field) {
    std::string text = good;
    const std::size_t at = text.find("\n  " + field);
    REQUIRE(at != std::string::npos);
    return text.erase(at, text.find("\n  ", at + 3) - at);
  };
  for (const char* field : {"instead", "missing", "title", "why", "source"}) CHECK(load(without(field)).book.mistakes.empty());
  std::string rule = good;
  CHECK(load(rule.replace(rule.find("mistake"), 7, "rule")).book.mistakes.empty());
}

TEST_CASE("no mistake is a rule of any catalogue that proves", "[mistakes]") {
  for (const Rule& rule : standard_catalogue().rules) CHECK_FALSE(is_mistake(rule));
  for (const Mistake& mistake : standard_mistakes().mistakes) {
    const std::string& id = standard_mistakes().catalogue[mistake.rule].id;
    INFO(id);
    CHECK_FALSE(standard_catalogue().find(id));
    for (const Course& course : standard_catalogue().courses)
      for (const CourseEntry& entry : course.entries) CHECK(standard_catalogue()[entry.rule].id != id);
  }
  // Neither as a file of the rules nor as one of a teacher's own.
  for (const RuleFile& file : builtin_rule_files()) CHECK(file.name.find(".mistake") == std::string::npos);
  CHECK(load_catalogue(builtin_mistake_files()).catalogue.rules.empty());
}

TEST_CASE("a random figure refutes every mistake", "[mistakes]") {
  for (const Mistake& mistake : standard_mistakes().mistakes) {
    const Rule& rule = standard_mistakes().catalogue[mistake.rule];
    INFO(rule.id);
    TrialOptions options;
    options.figures = 60;
    options.most_shared = 0;
    CHECK(try_rule(rule, options).refutation);
  }
}

TEST_CASE("a mistake never enters a proof, not even where it is taught as a rule", "[mistakes]") {
  for (const RuleFile& file : builtin_mistake_files()) {
    const MistakeBook book = load_mistakes(standard_catalogue(), {file}).book;
    const Catalogue& poisoned = book.catalogue;  // one wrong rule among the true ones
    REQUIRE(book.mistakes.size() == 1);
    const Rule& rule = poisoned[book.mistakes[0].rule];
    for (const RuleExample& example : rule.examples) {
      INFO(rule.id << ": " << problem(example));
      const Answer honest = prove(problem(example), standard_catalogue());
      CHECK(honest.verdict != Verdict::proved);
      ProveOptions options;
      options.budget = Budget::seconds(0.5);
      options.budget.max_instances = 3'000;
      const Answer answer = prove(problem(example), poisoned, options);
      CHECK(answer.verdict != Verdict::proved);
      for (const AnswerProof& proof : answer.proofs) {
        CHECK((proof.replay && proof.z3));
        for (const std::string& id : proof.rules) CHECK(id != rule.id);
      }
    }
  }
}

TEST_CASE("where its example fires a mistake leads to the claim; where it stays silent it does not", "[mistakes]") {
  for (const Mistake& mistake : standard_mistakes().mistakes) {
    const Rule& rule = standard_mistakes().catalogue[mistake.rule];
    for (const RuleExample& example : rule.examples) {
      INFO(rule.id << ": " << problem(example));
      const Answer answer = prove(problem(example), standard_catalogue());
      if (example.fires) {
        CHECK(answer.verdict == Verdict::false_claim);
        CHECK(answer.plausible);
      } else if (answer.plausible && answer.plausible->mistake == rule.id) {
        CHECK(answer.plausible->steps.size() > 1);  // by a detour, not at once
      }
    }
  }
}
