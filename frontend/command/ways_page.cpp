#include "frontend/command/ways_page.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace frontend {

namespace {

using prover::Answer;
using prover::AnswerProof;
using prover::AnswerWays;

std::string counted(int n, const char* one, const char* more) { return fmt::format("{} {}", n, n == 1 ? one : more); }

std::string lines_to_draw(const AnswerProof& proof) {
  std::string text;
  for (const std::string& line : proof.constructions) text += (text.empty() ? "" : "; ") + line;
  return text.empty() ? "none" : text;
}

struct WaysPage {
  const Answer& answer;
  const prover::Catalogue& catalogue;
  const PageOptions& options;
  Document& document;

  void add(Block block) { document.blocks.push_back(std::move(block)); }

  void add_group(const AnswerWays& ways, std::size_t first_proof) {
    std::vector<const AnswerProof*> proofs;
    for (std::size_t i = first_proof; i < first_proof + ways.proofs; ++i) proofs.push_back(&answer.proofs[i]);
    if (answer.ways.size() > 1) {
      std::string of = ways.goal;
      if (!ways.case_name.empty()) of += (of.empty() ? "" : ", ") + std::string("in the case ") + ways.case_name;
      add(Heading{1, "Ways to " + of});
    }
    if (proofs.empty()) add(Paragraph{"No way was found that is as asked for."});
    for (std::size_t first = 0, end = 0; first < proofs.size(); first = end) {
      while (end < proofs.size() && proofs[end]->idea == proofs[first]->idea) ++end;
      add_way({proofs.begin() + static_cast<std::ptrdiff_t>(first), proofs.begin() + static_cast<std::ptrdiff_t>(end)});
    }
    add_comparison(proofs);
    add(Note{extent(ways)});
    if (ways.joined_tried) add(Note{extent_with_lines(ways)});
    if (ways.elsewhere > 0)
      add(Note{counted(ways.elsewhere, "other idea cites", "other ideas cite") +
               " the theorems of two that are listed, at other places of the figure; --alike shows more of them."});
    if (ways.left_out > 0)
      add(Note{counted(ways.left_out, "idea is", "ideas are") + " left out: " +
               (ways.left_out == 1 ? "no proof of it is" : "none of their proofs is") + " as asked for."});
    if (ways.more > 0)
      add(Note{fmt::format("{} found that {} more; --most shows more of them.",
                           counted(ways.more, "other idea was", "other ideas were"), ways.more == 1 ? "costs" : "cost")});
    if (std::all_of(proofs.begin(), proofs.end(), [](const AnswerProof* p) { return p->replay && p->z3; }) && !proofs.empty())
      add(Note{proofs.size() == 1 ? "Checked by replay and by Z3." : "Each proof is checked by replay and by Z3."});
  }

  void add_way(const std::vector<const AnswerProof*>& variants) {
    int others = 0;
    for (const AnswerProof* proof : variants) {
      const bool first = proof == variants.front();
      if (!first && !proof->in_full && !options.variants) {
        ++others;
        continue;
      }
      const std::string title = fmt::format("Way {}{}", proof->idea, first ? "" : ", variant");
      AnswerProof shown = *proof;
      if (!first || proof->idea > 1) shown.set_aside.clear();  // said once
      add_proof(shown, {first ? 2 : 3, title + (proof->title.starts_with("by ") ? " " : ": ") + proof->title},
                catalogue, options, document);
      add(Note{cost_sentence(*proof, first && proof->idea == 1)});
    }
    if (others > 0) add(Note{counted(others, "more variant", "more variants") + "; --variants shows them."});
  }

  std::string cost_sentence(const AnswerProof& proof, bool lightest) const {
    std::string text = fmt::format("{}, cost {}", counted(proof.cited, "step", "steps"), decimal(proof.cost));
    if (!lightest) return text + ".";
    return text + fmt::format(" by the measure \"{}\": {}.", proof.measure, how_short(proof));
  }

  void add_comparison(const std::vector<const AnswerProof*>& proofs) {
    const bool draws = std::any_of(proofs.begin(), proofs.end(), [](const AnswerProof* p) { return !p->constructions.empty(); });
    Table table{{"Way", "Steps", "Cost", "Deepest theorem", "Must have been taught"}, {}};
    if (draws) table.header.insert(table.header.begin() + 3, "Lines to draw");
    int idea = 0;
    for (const AnswerProof* proof : proofs) {
      const bool first = proof->idea != idea;
      if (!first && !proof->in_full && !options.variants) continue;
      idea = proof->idea;
      table.rows.push_back({std::to_string(idea) + (first ? "" : ", variant"), std::to_string(proof->cited), decimal(proof->cost),
                            proof->deepest.empty() ? "none" : rule_titles({proof->deepest}, catalogue),
                            proof->to_be_taught.empty() ? "none" : rule_titles(proof->to_be_taught, catalogue)});
      if (draws) table.rows.back().insert(table.rows.back().begin() + 3, lines_to_draw(*proof));
    }
    if (table.rows.size() < 2) return;
    add(Heading{2, "Side by side"});
    add(std::move(table));
    if (!draws) add(Note{"No way needs a line that is not drawn."});
  }

  static std::string reason(const std::string& stop) {
    if (stop == "time-limit") return " The search ended at the time limit (--limit).";
    if (stop == "interrupted") return " The search was interrupted.";
    if (stop == "instance-limit") return " The search ended at the limit on what it keeps.";
    return "";
  }
  static std::string extent(const AnswerWays& ways) {
    if (ways.complete_below.empty()) return ways.elsewhere == 0 ? "Complete: with these rules and the lines drawn there is no other idea."
                                 : "Complete: with these rules and the lines drawn there is no idea that cites other theorems.";
    if (ways.complete_below == "0") return "There may be other ideas." + reason(ways.stop);
    return fmt::format("Complete up to cost {}: with these rules and the lines drawn no {} has a lighter proof.{}",
                       decimal(ways.complete_below), ways.elsewhere == 0 ? "other idea" : "idea that cites other theorems",
                       reason(ways.stop));
  }
  static std::string extent_with_lines(const AnswerWays& ways) {
    if (ways.joined_complete_below.empty()) return "Joining two points saves no theorem, beyond what is listed.";
    return fmt::format("Complete up to cost {} for ideas that join two points to save a theorem.{}", decimal(ways.joined_complete_below),
                       reason(ways.joined_stop));
  }
};

}  // namespace

void add_ways(const Answer& answer, const prover::Catalogue& catalogue, const PageOptions& options, Document& document) {
  WaysPage page{answer, catalogue, options, document};
  std::size_t first_proof = 0;
  for (const AnswerWays& ways : answer.ways) {
    page.add_group(ways, first_proof);
    first_proof += ways.proofs;
  }
}

}  // namespace frontend
