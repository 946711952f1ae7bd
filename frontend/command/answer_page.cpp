#include "frontend/command/answer_page.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "frontend/command/certificate_page.hpp"
#include "frontend/command/similarly.hpp"
#include "frontend/command/ways_page.hpp"

namespace frontend {

namespace {

using prover::Answer;
using prover::AnswerProof;
using prover::Verdict;

std::string heading_of(const AnswerProof& proof, bool says_goal) {
  std::string text = "Proof";
  if (says_goal && !proof.goal.empty()) text += " of " + proof.goal;
  if (!proof.case_name.empty()) text += ", in the case " + proof.case_name + (proof.title.starts_with("by ") ? "," : "");
  if (!proof.title.empty()) text += (proof.title.starts_with("by ") ? " " : ": ") + proof.title;
  return text;
}

std::string cost_sentence(const AnswerProof& proof) {
  return fmt::format("Cost {} by the measure \"{}\": {}.", decimal(proof.cost), proof.measure, how_short(proof));
}

std::string joined(const std::vector<std::string>& parts, const char* between) {
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : between) + part;
  return text;
}

// "∠KML = 70°, from KL = KM and ∠KLM = 70°: ∠KML = ∠KLM = 70° (angles opposite equal sides, …)"
std::string consequence_sentence(const prover::AnswerConsequence& one) {
  std::string text = one.given;
  for (std::size_t i = 0; i < one.from.size(); ++i)
    text += (i == 0 ? ", from " : i + 1 == one.from.size() ? " and " : ", ") + one.from[i];
  if (!one.proof) return text + ": order and sides say it";
  std::string lines;
  for (const prover::AnswerStep& step : one.proof->steps)
    lines += (lines.empty() ? "" : "; ") + step.claim + (step.reason.empty() ? "" : " (" + step.reason + ")");
  return text + ": " + lines;
}

struct Page {
  const prover::Catalogue& catalogue;
  const PageOptions& options;
  Document document;

  void add(Block block) { document.blocks.push_back(std::move(block)); }
  void add_items(const char* lead, const std::vector<std::string>& items, bool one_below_the_other = true) {
    if (!items.empty()) add(Items{lead, items, one_below_the_other});
  }

  void add_proofs(const Answer& answer) {
    const bool says_goal = std::any_of(answer.proofs.begin(), answer.proofs.end(), [&](const AnswerProof& proof) {
      return proof.goal != answer.proofs.front().goal;
    });
    for (const AnswerProof& proof : answer.proofs) {
      const bool conflict = answer.verdict == Verdict::contradictory;
      add_proof(proof, {2, conflict ? "Why they exclude each other" : heading_of(proof, says_goal)}, catalogue, options,
                document);
      if (!answer.superfluous) add_items("Given but not needed", proof.givens_not_needed, false);
      add(Note{cost_sentence(proof)});
      add(Note{check_sentence(proof)});
    }
  }

  // For a report: what the proofs are and need, not their lines. A contradiction is evidence, and read in full.
  void add_outlines(const Answer& answer) {
    for (const AnswerProof& proof : answer.proofs) {
      const auto lines = std::count_if(proof.steps.begin(), proof.steps.end(), [](const prover::AnswerStep& s) { return !s.rule.empty(); });
      std::string text = heading_of(proof, answer.proofs.size() > 1);
      text += fmt::format(": {} {}, cost {} ({}).", lines, lines == 1 ? "step" : "steps", decimal(proof.cost), how_short(proof));
      add(Paragraph{std::move(text)});
      if (answer.superfluous && (answer.superfluous->sufficient.size() > 1 || !answer.superfluous->not_needed.empty()))
        add_items("Givens it uses", proof.givens_used, false);
      if (!proof.constructions.empty()) add_items("Lines to draw", proof.constructions, false);
      if (options.for_teacher && !proof.seen_in_figure.empty()) add_items("Seen in the figure", proof.seen_in_figure, false);
    }
  }

  void add_contributions(const Answer& answer) {
    if (answer.contributions.empty()) return;
    Table table{{"Theorem cited", "Without it"}, {}};
    for (const auto& one : answer.contributions)
      table.rows.push_back({rule_titles({one.rule}, catalogue),
                            one.needed ? "not reached" : one.more == "0" ? "a proof of the same cost"
                                                                         : "a proof that costs " + decimal(one.more) + " more"});
    add(std::move(table));
  }

  void add_answer_book(const Answer& answer) {
    for (const auto& entry : answer.answer_book) add(Paragraph{entry.text});
  }

  // Coordinates are evidence where nothing is proved; beside a proof they would only be in the way.
  void add_figures(const Answer& answer) {
    if (answer.verdict == Verdict::proved) return;
    std::vector<std::string> figures;
    for (const prover::AnswerFigure& figure : answer.figures) {
      std::string text = figure.name + ": ";
      bool first = true;
      for (const auto& [name, place] : figure.points) {
        text += fmt::format("{}{} ({:.2f}, {:.2f})", first ? "" : ", ", name, place.first, place.second);
        first = false;
      }
      if (figure.value) text += fmt::format("; what was asked measures {:.4g}", *figure.value);
      if (!figure.words.empty()) text += "; " + figure.words;
      figures.push_back(std::move(text));
    }
    add_items("Figures", figures);
  }

  void add_cases(const Answer& answer) {
    if (answer.cases.empty()) return;
    Table table{{"Case", "Verdict", "Value"}, {}};
    std::vector<std::string> selecting;
    for (const prover::AnswerCase& one : answer.cases) {
      table.rows.push_back({one.name, prover::name_of(one.verdict), one.value});
      if (!one.selects.empty()) selecting.push_back((one.value.empty() ? "" : one.value + ": ") + one.selects);
    }
    add(std::move(table));
    add_items("One of these sentences, added to the problem, settles it", selecting);
  }

  void add_plausible(const Answer& answer) {
    if (!answer.plausible) return;
    const prover::AnswerPlausible& argument = *answer.plausible;
    add(Heading{2, "How one might argue, wrongly"});
    AnswerProof lines;
    lines.steps = argument.steps;
    add(proof_lines(lines));
    const prover::AnswerStep& wrong = argument.steps[static_cast<std::size_t>(argument.wrong_step) - 1];
    add(Paragraph{"Wrong at “" + wrong.claim + "”: " + argument.name + ". " + argument.why});
    add(Paragraph{"Missing: " + argument.missing + "."});
  }

  void add_superfluous(const Answer& answer) {
    if (!answer.superfluous) return;
    const prover::AnswerSuperfluous& found = *answer.superfluous;
    std::vector<std::string> follow;
    for (const prover::AnswerConsequence& one : found.consequences) follow.push_back(consequence_sentence(one));
    if (found.not_needed.empty() && follow.empty() && found.sufficient.size() == 1 && found.stop == "saturated") {
      add(Note{"No given is too many."});
      return;
    }
    add_items("Not needed for the answer", found.not_needed);
    add_items("Follows from the other givens", follow);
    if (found.sufficient.size() > 1) {
      std::vector<std::string> sets;
      for (const std::vector<std::string>& set : found.sufficient) sets.push_back(joined(set, "; "));
      add_items("Each of these sets of givens is enough, and none has one to spare", sets);
    }
    if (found.stop != "saturated") add(Note{"The search for givens too many was ended by a limit (" + found.stop + "); there may be more."});
  }

  void add_times(const Answer& answer) {
    Table table{{"Stage", "Milliseconds"}, {}};
    for (const auto& [stage, time] : answer.time_ms) table.rows.push_back({stage, fmt::format("{:.2f}", time)});
    if (!table.rows.empty()) add(std::move(table));
  }
};

}  // namespace

std::string how_short(const AnswerProof& proof) {
  if (proof.shortest == "proved")
    return proof.constructions.empty() ? "no proof with these rules and the lines drawn is shorter"
                                       : "no proof with these rules is shorter";
  if (proof.lower_bound.empty() || proof.lower_bound == "0") return "the best found";
  return fmt::format("the best found; none is below {}", decimal(proof.lower_bound));
}

std::string decimal(const std::string& exact) {
  const auto value = prover::Rational::parse(exact);
  if (!value) return exact;
  const auto hundredths = (*value * prover::Rational(100)).to_int64();
  if (!hundredths || *hundredths < 0) return exact;
  std::string text = fmt::format("{}.{:02}", *hundredths / 100, *hundredths % 100);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

std::string rule_titles(const std::vector<std::string>& ids, const prover::Catalogue& catalogue) {
  std::string text;
  for (const std::string& id : ids) {
    const auto rule = catalogue.find(id);
    text += (text.empty() ? "" : ", ") + (rule && !catalogue[*rule].title.empty() ? catalogue[*rule].title : id);
  }
  return text;
}

std::string check_sentence(const AnswerProof& proof) {
  if (proof.replay && proof.z3) return "Checked by replay and by Z3.";
  if (proof.replay) return "Checked by replay; not confirmed by Z3.";
  if (proof.z3) return "Confirmed by Z3; not accepted by replay.";
  return "Not checked.";
}

void add_proof(const AnswerProof& proof, Heading heading, const prover::Catalogue& catalogue, const PageOptions& options,
               Document& document) {
  auto& blocks = document.blocks;
  blocks.push_back(std::move(heading));
  for (const std::string& id : proof.assumed) {  // before all else: what follows holds only if this does
    const auto rule = catalogue.find(id);
    blocks.push_back(Paragraph{"Assumed without proof: " + id + (rule ? ". " + catalogue[*rule].says : ".")});
  }
  if (!proof.set_aside.empty()) {
    blocks.push_back(Paragraph{"Not used, since the claim says no more than it: " + rule_titles(proof.set_aside, catalogue) + "."});
  }
  for (const std::string& construction : proof.constructions) {
    const bool said = std::any_of(proof.steps.begin(), proof.steps.end(), [](const prover::AnswerStep& step) {
      return step.rule == "construction";  // one line for all
    });
    if (!said) blocks.push_back(Paragraph{construction + "."});
  }
  blocks.push_back(proof_lines(proof));
  if (options.for_teacher && !proof.seen_in_figure.empty())
    blocks.push_back(Items{"Seen in the figure", proof.seen_in_figure, false});
}

ProofLines proof_lines(const prover::AnswerProof& proof) {
  ProofLines result;
  for (const prover::AnswerStep& step : proof.steps) {
    std::vector<std::string> rows = step.rows;
    if (rows.empty()) rows.push_back(step.claim);
    const std::size_t i = result.lines.size();
    const std::string reason = i == 0 ? step.reason : reason_after(proof.steps[i - 1], step);
    result.lines.push_back({step.n, step.claim, std::move(rows), reason, step.uses, step.closing});
  }
  return result;
}

Document answer_page(const Answer& answer, const prover::Catalogue& catalogue, const PageOptions& options) {
  Page page{catalogue, options, {}};
  page.add(Paragraph{answer.summary.empty() ? std::string("Verdict: ") + prover::name_of(answer.verdict) + "."
                                            : answer.summary});
  page.add_answer_book(answer);
  page.add_items("Understood", answer.read_as);
  page.add_cases(answer);
  if (options.report && answer.verdict != Verdict::contradictory)
    page.add_outlines(answer);
  else if (answer.ways.empty())
    page.add_proofs(answer);
  else
    add_ways(answer, catalogue, options, page.document);
  for (const auto& certificate : answer.certificates) add_certificate(certificate, page.document);
  page.add_figures(answer);
  page.add_plausible(answer);
  page.add_superfluous(answer);
  page.add_items(answer.verdict == Verdict::contradictory ? "These givens cannot all hold" : "These givens may exclude each other",
                 answer.conflict);
  std::vector<std::string> repairs;
  for (const prover::AnswerRepair& repair : answer.repair) repairs.push_back(repair.text);
  page.add_items(repairs.size() == 1 ? "One change would do" : "Any one of these changes would do", repairs);
  page.add_items("In terms of what is free", answer.in_terms_of);
  page.add_items("What would settle it", answer.missing);
  page.add_items("What would help", answer.unlock);
  page.add_contributions(answer);
  if (options.times) page.add_times(answer);
  return std::move(page.document);
}

}  // namespace frontend
