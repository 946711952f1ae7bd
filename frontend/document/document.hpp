// The one tree from which everything printed is made. A command builds it, a renderer writes it: so a new
// format knows nothing of the prover, and a new verdict nothing of formats. Texts are plain UTF-8 in the
// notation of a geometry class ("∠KLM = 40°"); marking up is the renderer's business.
#pragma once
#include <string>
#include <variant>
#include <vector>

namespace frontend {

struct Heading {
  int level = 1;
  std::string text;
};

struct Paragraph {
  std::string text;
};

struct Items {
  std::string lead;  // "Understood", without the colon
  std::vector<std::string> items;
  bool one_below_the_other = true;  // else run on, separated by semicolons
};

// One step: a claim, in rows where it is a chain of equal things, and what makes it true.
struct ProofLine {
  int number = 0;                 // from 1
  std::string claim;              // the whole claim on one line
  std::vector<std::string> rows;  // never empty; a row that goes on with the one before starts with "="
  std::string reason;
  std::vector<int> uses;          // numbers of earlier lines
  bool closing = false;           // the claim that was asked for
};
struct ProofLines {
  std::vector<ProofLine> lines;
};

struct Table {
  std::vector<std::string> header;  // may be empty
  std::vector<std::vector<std::string>> rows;
  bool prose = false;               // cells of sentences: on a narrow page every column may be broken, not the last alone
};

struct Note {  // small print
  std::string text;
};

using Block = std::variant<Heading, Paragraph, Items, ProofLines, Table, Note>;

struct Document {
  std::vector<Block> blocks;
};

}  // namespace frontend
