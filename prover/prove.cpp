// Start reading here. The walk through the house, on one page:
//
//   text → language → statement → (chain ⇄ figures) → light proof → check, Z3 → answer
//
// Every step is a function from a value to a value; each room's header says what its step is for. `walk.cpp` has the part
// up to the verdict, which marking and hints share.
#include "prover/prove.hpp"

#include <chrono>

#include "prover/base/log.hpp"
#include "prover/evidence/evidence.hpp"
#include "prover/library/own_rules.hpp"
#include "prover/walk.hpp"
#include "prover/ways/answer_ways.hpp"

namespace prover {

Answer prove(std::string_view source, const Catalogue& catalogue, const ProveOptions& options) {
  Walked way = walk(source, catalogue, options);
  Answer& answer = way.answer;
  if (way.ended) return std::move(answer);
  const auto start = Budget::Clock::now();
  std::vector<std::string> answer_book;
  for (const OtherLine& line : way.text.other_lines)
    if (line.keyword == "answer") answer_book.push_back(line.text);
  add_evidence(way.statements, way.solved, way.options, options.solvable, answer_book, options.budget, answer);
  answer.time_ms["evidence"] = std::chrono::duration<double, std::milli>(Budget::Clock::now() - start).count();
  if (options.ways) {
    WaysAsked asked;
    asked.most = options.ways->most;
    asked.most_alike = options.ways->most_alike;
    asked.most_steps = options.ways->most_steps;
    for (const std::string& id : options.ways->with) asked.with.push_back(*catalogue.find(id));
    add_ways(way.statements, way.solved, way.options, asked, options.budget, way.times, way.sketch_ms, answer);
  }
  for (AnswerProof& proof : answer.proofs) proof.set_aside = way.set_aside;
  for (AnswerProof& proof : answer.proofs)
    settle_own_rules(catalogue, options.unfold, options.wording, options.budget, proof);

  answer.time_ms["sketch"] = way.sketch_ms;
  answer.time_ms["chain"] = way.times.chain;
  answer.time_ms["search"] = way.times.search;
  answer.time_ms["check"] = way.times.check;
  answer.time_ms["z3"] = way.times.z3;
  answer.time_ms["layout"] = way.times.layout;
  log::info("verdict: {}", name_of(answer.verdict));
  return std::move(answer);
}

}  // namespace prover
