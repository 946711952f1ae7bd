// The sentence that selects an arrangement: it reads back as the position it says, and it leaves that arrangement alone.
#include "prover/evidence/selecting.hpp"

#include "prover/statement/meaning.hpp"

#include "tests/problems/asked.hpp"

using namespace prover;

namespace {

const Names letters{{"K", "L", "M", "P"}};
const PointId k{0}, l{1}, m{2}, p{3};

std::vector<Position> said_by(const std::string& sentence) {
  Names names = letters;
  std::vector<Diagnostic> mistakes;
  std::vector<Position> positions;
  const std::vector<Phrase> phrases = parse_phrases(sentence, names, mistakes);
  CHECK_FALSE(has_error(mistakes));
  CHECK(names.points.size() == letters.points.size());
  for (const Phrase& phrase : phrases)
    for (const Position& position : positions_of(phrase, {k, l, m, p})) positions.push_back(canonical(position));
  return positions;
}

}  // namespace

TEST_CASE("every sentence for a position says that position", "[selecting]") {
  for (const Position& position :
       {Position{PositionKind::between, l, p, m, {}}, Position{PositionKind::between, l, m, p, {}},
        Position{PositionKind::between, p, l, m, {}}, Position{PositionKind::between, k, l, m, {}},
        Position{PositionKind::same_side, k, p, l, m}, Position{PositionKind::opposite_sides, k, p, l, m},
        Position{PositionKind::not_collinear, k, l, m, {}}}) {
    const std::vector<std::string> sentences = sentences_for(position, letters);
    CHECK_FALSE(sentences.empty());
    for (const std::string& sentence : sentences) {
      INFO(sentence);
      CHECK(said_by(sentence) == std::vector<Position>{canonical(position)});
    }
  }
}

TEST_CASE("each arrangement is selected by its sentence; with it there is one answer", "[selecting]") {
  for (const std::string givens :
       {"parallel: KL, MN\nangle LKM = 40\nfind: angle KMN\n", "isosceles: triangle KLM\nangle LKM = 40\nfind: angle KLM\n",
        "triangle: KLM\ncollinear: L, M, P\nKP ⊥ LM\nangle KLM = 50\nangle PKM = 20\nfind: angle LKM\n"}) {
    const Answer open = asked::ask(givens);
    CHECK(open.verdict == Verdict::depends_on_figure);
    CHECK(open.cases.size() > 1);
    for (const AnswerCase& one : open.cases) {
      INFO(givens << one.selects);
      REQUIRE_FALSE(one.selects.empty());
      const Answer closed = asked::ask(one.selects + "\n" + givens);
      CHECK(closed.verdict == Verdict::proved);
      CHECK(closed.value == one.value);
      for (const AnswerCase& other : closed.cases) CHECK(other.selects.empty());
    }
  }
}
