// A pupil's line taken apart: what stands around the claims (labels, columns, brackets with reasons, "so" and "because"),
// and the parts between the small words. Which part is a claim and which a reason is decided by reading them (work.cpp).
#pragma once
#include <string>
#include <vector>

#include "prover/language/rewritten.hpp"

namespace prover {

// What stands before a part: how it hangs together with the one before it.
enum class Link { start, comma, semicolon, conjunction, because, by, so, stop, dash };  // by: "as", "from" …, also inside a claim

struct WorkPart {
  Link link = Link::start;
  std::size_t begin = 0, end = 0;
};

struct Around {            // a line without what stands around its statement
  std::size_t begin = 0;   // where the statement begins
  bool concludes = false;  // "so", "∴"
  bool similarly = false;
  bool since = false;      // "since", "because", "if": a reason comes first
  bool says_given = false; // "given:"
  bool answers = false;    // "answer:"
  bool lets = false;       // "let"
  bool asks = false;       // "to prove:", "we want": nothing is claimed
  std::vector<std::pair<std::size_t, std::size_t>> places;  // "In △KLM"
};

// What comes before the statement that begins at `from` or later.
Around look_around(const Rewritten& line, std::size_t from);
// Takes the reasons in brackets and columns out of the line; returns where they stand in it.
std::vector<std::pair<std::size_t, std::size_t>> take_out_reasons(Rewritten& line);
// Crossed out parts become blanks; true when nothing else is left.
bool blank_crossed_out(Rewritten& line);
// "QED", "as required".
void blank_ending(Rewritten& line);

std::vector<WorkPart> cut_parts(const Rewritten& line, std::size_t begin);

}  // namespace prover
