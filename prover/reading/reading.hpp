// A proof as a class reads it: numbered lines, each one relation with its reason and the lines it rests on.
// Givens have no line of their own; arithmetic on known numbers is inside the step that it serves; equal things
// are chained; what follows by substitution alone is the last line, or several where it would be more than a reader
// follows at once; one unknown used three times or more gets a letter. Tone and grain: a class's board. All this is
// layout: what is checked is the proof.
#pragma once
#include <string>
#include <vector>

#include "prover/figure/arrangement.hpp"
#include "prover/proof/proof.hpp"
#include "prover/statement/statement.hpp"

namespace prover {

struct ReadingLine {
  std::vector<std::string> rows;  // the claim; a chain of equalities has a row for each, and goes on from the line before
                                  // where it starts with "="
  std::string claim;              // whole, where the rows go on from the line before; else empty
  std::string rule;               // id, or "substitution", "let", "contradiction"
  std::string reason;
  std::vector<int> uses;          // line numbers from 1
  bool closing = false;
  std::vector<std::string> places;  // of a rule with letters: the point for each letter, in the rule's order
  std::vector<int> made_of;         // the proof's steps that it tells, by index; none where it only puts lines together
  // For hints about the line:
  HintSentences ask = {};           // the sentences of its rule at these places; empty where it has none
  std::string relation = {};        // what the rule says here in letters alone, no number put in: "∠KLM + ∠LMK = ∠KMP"
  std::vector<int> givens = {};     // indices into Statement::givens that it rests on directly
};

struct Reading {
  std::vector<ReadingLine> lines;
  std::vector<std::string> constructions;  // "Join LN"
  std::vector<std::string> rules;          // ids cited, in order of first use
  std::string title;                       // "by alternate angles"
  std::vector<int> givens_used;            // indices into Statement::givens
};

Reading reading_of(const Proof& proof, const Statement& statement, const Goal& goal, const Catalogue& catalogue,
                   UnknownTable& unknowns, const Arrangement& arrangement, Register wording);

}  // namespace prover
