#include "frontend/command/hints_page.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace frontend {

namespace {

using prover::Hints;
using prover::Ladder;
using prover::Rung;

bool is_proved(const Hints& hints) { return hints.answer.verdict == prover::Verdict::proved; }

// What tells a ladder from the others: its claim, its case, its way.
std::string heading_of(const Ladder& ladder, const Hints& hints, bool says_title) {
  std::vector<std::string> parts;
  const auto differs = [&](auto member) {
    return std::any_of(hints.ladders.begin(), hints.ladders.end(), [&](const Ladder& other) { return other.*member != ladder.*member; });
  };
  if (differs(&Ladder::goal)) parts.push_back("For " + ladder.goal);
  if (!ladder.case_name.empty()) parts.push_back((parts.empty() ? "In the case " : "in the case ") + ladder.case_name);
  if (differs(&Ladder::way)) parts.push_back(fmt::format("{} {}", parts.empty() ? "Way" : "way", ladder.way));
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : ", ") + part;
  if (says_title && !ladder.title.empty()) text += (text.empty() ? "Hints for the proof" : ", the proof") + std::string(ladder.title.starts_with("by ") ? " " : ": ") + ladder.title;
  return text;
}

void add_verdict(const Hints& hints, Document& document) {
  if (!is_proved(hints)) document.blocks.push_back(Paragraph{hints.answer.summary});
  else if (hints.complete) document.blocks.push_back(Paragraph{"Everything that is asked for is there."});
}

}  // namespace

Document rung_page(const Hints& hints, int step) {
  Document page;
  add_verdict(hints, page);
  for (const Ladder& ladder : hints.ladders) {
    if (ladder.rungs.empty()) continue;
    if (const std::string heading = heading_of(ladder, hints, false); !heading.empty()) page.blocks.push_back(Heading{2, heading});
    const std::size_t at = std::min(static_cast<std::size_t>(step), ladder.rungs.size()) - 1;
    page.blocks.push_back(Paragraph{ladder.rungs[at].text});
  }
  return page;
}

Document ladder_page(const Hints& hints) {
  Document page;
  add_verdict(hints, page);
  for (const Ladder& ladder : hints.ladders) {
    if (const std::string heading = heading_of(ladder, hints, true); !heading.empty()) page.blocks.push_back(Heading{2, heading});
    const bool counted = std::any_of(ladder.rungs.begin(), ladder.rungs.end(), [](const Rung& r) { return r.ways_open >= 0; });
    Table table{{"", "Hint", "Steps left"}, {}, true};
    if (counted) table.header.push_back("Ways open");
    for (const Rung& rung : ladder.rungs) {
      std::vector<std::string> row{std::to_string(rung.level), rung.text, std::to_string(rung.steps_left)};
      if (counted) row.push_back(std::to_string(rung.ways_open));
      table.rows.push_back(std::move(row));
    }
    page.blocks.push_back(std::move(table));
  }
  return page;
}

}  // namespace frontend
