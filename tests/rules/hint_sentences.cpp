// The sentences by which a pupil is asked before a step: every rule that a step can cite has its three, they ask, they stand
// at this figure's places, and none of them, read by the language of problems, states what the rule concludes.
// Rulings: CLASSROOM.md section 4 (no rung below the last writes the partner beside the asked one; one thing; ask first).
#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "prover/rule/mistakes.hpp"
#include "prover/rule/wording.hpp"
#include "tests/rules/sentences.hpp"

using namespace prover;
using namespace rule_tests;

namespace {

constexpr HintRung rungs[] = {HintRung::where, HintRung::kind, HintRung::places};
constexpr Register registers[] = {Register::plain, Register::us, Register::uk, Register::sa};

bool has_sentences(const Rule& rule) { return !rule.meaning && rule.builtin != Builtin::given; }

// With its own letters for a figure's, and such as a figure has for the places of a built-in shape.
std::string filled(const Rule& rule, Register wording, HintRung rung) {
  std::vector<std::string> place;
  for (const std::string& name : rule.variables.points)
    place.push_back(name == "angle" ? "∠KLM" : name == "line" ? "KLM" : name == "point" ? "L" : name == "polygon" ? "KLMN" : name);
  return fill_hint(rule, wording, rung, place);
}

bool states_a_conclusion(const Rule& rule, std::string_view sentence) { return states_one_of(rule.then, rule.variables, sentence); }

// A question, or what to do: "Name its partner; its corner is Q."
bool asks(const std::string& sentence) {
  if (sentence.ends_with("?")) return true;
  if (!sentence.ends_with(".")) return false;
  static const std::set<std::string> to_do = {"Name", "name", "Find", "Go", "Look", "Put", "Choose", "Walk"};
  const std::vector<std::string> words = words_of(sentence);
  bool begins = true;
  std::size_t clause = 0;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const std::string word = words[i].substr(0, words[i].find('\n'));
    if (begins && to_do.contains(word)) clause = i + 1;
    begins = words[i].find('\n') != std::string::npos;
  }
  return clause > 0;
}

bool contains(std::string_view text, std::string_view part) { return text.find(part) != std::string_view::npos; }

template <class Each>
void each_sentence(const Rule& rule, Each each) {
  for (const Register wording : registers)
    if (const auto found = rule.hints.find(wording); found != rule.hints.end())
      for (const HintRung rung : rungs)
        if (const std::string& text = sentence_of(found->second, rung); !text.empty()) each(wording, rung, text);
}

std::vector<const Rule*> rules_and_mistakes() {
  std::vector<const Rule*> all;
  for (const Rule& rule : standard_mistakes().catalogue.rules) all.push_back(&rule);
  return all;
}

}  // namespace

TEST_CASE("every rule that a step can cite has its three sentences, and the others have none", "[hints]") {
  for (const Rule& rule : standard_catalogue().rules) {
    INFO(rule.id);
    const bool has_plain = rule.hints.contains(Register::plain);
    CHECK(has_plain == has_sentences(rule));
    bool names_a_place = false;
    if (has_plain)
      for (const HintRung rung : rungs) {
        const std::string& sentence = sentence_of(rule.hints.at(Register::plain), rung);
        CHECK_FALSE(sentence.empty());
        names_a_place = names_a_place || contains(sentence, "{");
      }
    CHECK(names_a_place == has_sentences(rule));  // a question is asked about this figure
  }
}

TEST_CASE("every classic mistake has one question, at its places", "[hints][mistakes]") {
  const MistakeBook& book = standard_mistakes();
  for (const Mistake& mistake : book.mistakes) {
    const Rule& rule = book.catalogue[mistake.rule];
    INFO(rule.id);
    REQUIRE(rule.hints.contains(Register::plain));
    CHECK(contains(rule.hints.at(Register::plain).where, "{"));
    CHECK(filled(rule, Register::plain, HintRung::where).ends_with("?"));
    CHECK(fill_hint(rule, Register::plain, HintRung::kind, std::vector<std::string>()).empty());
  }
}

TEST_CASE("a hint is one short question, or one thing to do, about letters of this figure", "[hints]") {
  for (const Rule* rule : rules_and_mistakes())
    each_sentence(*rule, [&](Register wording, HintRung rung, const std::string& text) {
      const std::string said = filled(*rule, wording, rung);
      INFO(rule->id << ": " << said);
      CHECK(asks(said));
      CHECK(said.size() > 20);
      CHECK(said.size() < 160);
      CHECK(std::count(said.begin(), said.end(), '?') + std::count(said.begin(), said.end(), '.') <= 2);
      // Letters stand in braces, or they would not be this figure's.
      for (const WordingPiece& piece : wording_pieces(text, rule->variables))
        if (!piece.is_place)
          for (std::size_t i = 0; i + 1 < piece.text.size(); ++i)
            CHECK_FALSE((std::isupper(static_cast<unsigned char>(piece.text[i])) && !std::islower(static_cast<unsigned char>(piece.text[i + 1])) &&
                         piece.text.compare(i, 2, "A ") != 0));
    });
}

TEST_CASE("no hint states what its rule concludes", "[hints]") {
  for (const Rule* rule : rules_and_mistakes())
    each_sentence(*rule, [&](Register wording, HintRung rung, const std::string&) {
      const std::string said = filled(*rule, wording, rung);
      INFO(rule->id << ": " << said);
      CHECK_FALSE(states_a_conclusion(*rule, said));
    });
}

TEST_CASE("a hint that states the conclusion would be found, for every rule", "[hints]") {
  for (const Rule& rule : standard_catalogue().rules)
    for (const Phrase& conclusion : rule.then) {
      const std::string claim = describe(conclusion, rule.variables);
      INFO(rule.id << ": " << claim);
      CHECK(states_a_conclusion(rule, "Do you see that " + claim + "?"));
    }
  const Rule& alternate = standard_catalogue()[*standard_catalogue().find("alternate-interior-angles")];
  CHECK(states_a_conclusion(alternate, "As you know, ∠APQ equals ∠DQP; why?"));
  CHECK_FALSE(states_a_conclusion(alternate, "As you know, PA is parallel to QD; why?"));  // a premise
  const Rule& converse = standard_catalogue()[*standard_catalogue().find("alternate-interior-angles-converse")];
  CHECK(states_a_conclusion(converse, "So PA is parallel to QD, is it not?"));
}

// One angle a sentence: a ladder drops a sentence that writes any other angle beside the asked one.
TEST_CASE("no hint names two angles", "[hints]") {
  for (const Rule* rule : rules_and_mistakes())
    each_sentence(*rule, [&](Register, HintRung, const std::string& text) {
      INFO(rule->id << ": " << text);
      const std::vector<WordingPiece> pieces = wording_pieces(text, rule->variables);
      CHECK(std::count_if(pieces.begin(), pieces.end(), [](const WordingPiece& p) { return p.is_place && p.kind == PlaceKind::angle; }) <= 1);
    });
}

// Words of which the theorems' names are made, in all registers (the published table of reasons).
TEST_CASE("where to look and which kind of relation are asked without the theorem's name", "[hints]") {
  const std::vector<std::string> names = {
      "alternate", "corresponding", "co-interior", "co-exterior", "same-side", "consecutive", "vertically", "vertical",
      "linear pair", "midsegment", "mid-point theorem", "exterior angle", "angle sum", "base angle", "theorem", "postulate",
      "SAS", "SSS", "ASA", "AAS", "RHS", "CPCTC", "Thales", "segment", "semicircle", "cyclic", "concyclic", "incentre", "incenter",
      "excentre", "orthocentre", "centroid", "hinge", "supplementary", "complementary", "congruent", "similar", "transitive"};
  for (const Rule& rule : standard_catalogue().rules)
    each_sentence(rule, [&](Register wording, HintRung rung, const std::string&) {
      if (rung == HintRung::places) return;
      const std::string said = filled(rule, wording, rung);
      INFO(rule.id << ": " << said);
      for (const std::string& name : names) CHECK_FALSE(contains(said, name));
    });
}

// Common practice: the words of the two countries' textbooks (the published table of reasons has them side by side).
TEST_CASE("an American class reads no British word, and the others no American one", "[hints]") {
  const std::vector<std::string> british = {"centre", "trapezium", "neighbour", "right-angled", "circumference", "apex", "contact point", "colour"};
  const std::vector<std::string> american = {"center", "trapezoid", "neighbor", "right triangle", "inscribed", "vertex angle", "tangency", "color"};
  for (const Rule* rule : rules_and_mistakes())
    for (const HintRung rung : rungs) {
      const std::string plain = filled(*rule, Register::plain, rung), us = filled(*rule, Register::us, rung);
      INFO(rule->id << ": " << plain << " / " << us);
      for (const std::string& word : british) CHECK_FALSE(contains(us, word));
      for (const std::string& word : american) CHECK_FALSE(contains(plain, word));
    }
}
