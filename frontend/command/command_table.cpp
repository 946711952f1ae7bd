#include "frontend/command/batch.hpp"
#include "frontend/command/command.hpp"
#include "frontend/command/completion.hpp"
#include "frontend/command/draw.hpp"
#include "frontend/command/hints.hpp"
#include "frontend/command/mark.hpp"
#include "frontend/command/prove.hpp"
#include "frontend/command/rules.hpp"
#include "frontend/command/solvable.hpp"
#include "frontend/command/ways.hpp"

namespace frontend {

const std::vector<Command>& commands() {
  static const std::vector<Command> table = {
      {"prove", "The verdict on a problem, with the shortest proof that was found",
       "  anglewright prove frontend/examples/trellis-angle-sum.aw\n"
       "  anglewright prove --json --without triangle-angle-sum problem.aw",
       declare_prove},
      {"ways", "The different ways to prove a claim: one proof for each idea, compared side by side",
       "  anglewright ways frontend/examples/trellis-angle-sum.aw\n"
       "  anglewright ways --with congruent-sas --at-most 4 problem.aw",
       declare_ways},
      {"solvable", "Can it be solved with what is given and taught? What is missing, superfluous or contradictory",
       "  anglewright solvable frontend/examples/trellis-isosceles-chain.aw\n"
       "  anglewright solvable --taught angles problem.aw",
       declare_solvable},
      {"hints", "The next hint, or the whole ladder of hints; also from where a pupil already is",
       "  anglewright hints frontend/examples/trellis-laths.aw\n"
       "  anglewright hints --step 3 --done \"∠KLQ = ∠KQL (base angles)\" frontend/examples/trellis-laths.aw",
       declare_hints},
      {"mark", "A pupil's work, line by line: what follows, what is missing, and the marks it would earn; or the work of a class",
       "  anglewright mark --wording sa --scheme sa problem-with-work.aw\n"
       "  anglewright mark problem.aw --work lines.txt --copy pupil\n"
       "  anglewright mark problem.aw --class folder-of-work",
       declare_mark},
      {"draw", "The figure of a problem as SVG; where the answer is open, the figures that show it, side by side",
       "  anglewright draw --out figure.svg frontend/examples/trellis-laths.aw",
       declare_draw},
      {"rules", "The catalogue of rules: what a class may cite, and how each reason is worded",
       "  anglewright rules --topic parallel --wording uk\n"
       "  anglewright rules alternate-interior-angles",
       declare_rules},
      {"batch", "Many problems: JSON lines {\"id\", \"problem\"} in, one answer a line out; or a table for a folder of them",
       "  echo '{\"id\": 1, \"problem\": \"triangle: KLM\\nangle KLM = 50\\nangle LMK = 60\\nfind: angle MKL\"}' |\n"
       "    anglewright batch -\n"
       "  anglewright batch frontend/examples",
       declare_batch},
      {"completion", "A script with which the shell completes commands and options",
       "  source <(anglewright completion bash)", declare_completion},
  };
  return table;
}

}  // namespace frontend
