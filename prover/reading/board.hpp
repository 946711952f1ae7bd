// The walk through a proof's steps that writes a line for each: what it claims with what is known put in, why, and on
// which lines it rests. Equations that follow from several lines are worked out on lines of their own before they are
// used.
#pragma once
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "prover/reading/claim_rows.hpp"
#include "prover/reading/reading.hpp"
#include "prover/reading/reasons.hpp"
#include "prover/reading/said.hpp"

namespace prover {

struct Scene {  // what every part of the reading looks at
  const Proof& proof;
  const Statement& statement;
  const Goal& goal;
  const Catalogue& catalogue;
  UnknownTable& unknowns;
  const Arrangement& arrangement;
  Register wording;
};

struct Letter {
  UnknownId unknown;
  std::string name;  // "x"
};

class Board {
 public:
  explicit Board(const Scene& scene, std::optional<Letter> letter = std::nullopt);

  // `order`: indices into the proof's steps. Once only.
  Reading write(const std::vector<std::size_t>& order);
  // After `write`: an unknown in terms of which three or more were written, not a number of the problem's own.
  UnknownId worth_a_letter() const { return worth_a_letter_; }

 private:
  void say_given(const Instance& instance);
  void say_joins(const std::vector<std::size_t>& order);
  void say(const Instance& instance, const std::set<int>& used, int step);
  void say_letter();
  void close();

  void add_line(ReadingLine line, const std::vector<Form>& says);
  void work_out_first(const Form& form);
  void work_out(const std::vector<Said::Part>& parts, const Form& form);
  void say_worked_out(const Form& form, const std::vector<int>& from, const std::vector<Said::Part>& parts);
  void prefer_names();
  void note_letter(UnknownId solved_for);
  void rest_on(const Form& form, std::set<int>& uses, std::vector<std::string>* givens = nullptr,
               std::set<int>* hypotheses = nullptr) const;
  void note_givens(const std::vector<Said::Part>& parts, std::vector<std::string>& givens) const;
  bool ties_unknowns(int hypothesis) const;
  void show_givens(const Rule& rule, const std::vector<std::string>& texts, std::string& reason) const;
  void cite(RuleId rule);
  bool all_shown() const;
  bool goal_is_last() const;
  bool is_plain_goal() const;
  bool last_shows(const Form& goal) const;

  const Scene scene_;
  NameBook names_;
  Reasons reasons_;
  std::optional<Letter> letter_;
  bool letter_said_ = false;
  Reading reading_;
  Known known_;
  Said said_;
  std::set<UnknownId> wanted_;
  std::map<UnknownId, UnknownId> preferred_;  // of what the givens make equal: the one most spoken of
  std::vector<Form> last_, last_told_;  // what the last line says, and its last row
  std::vector<RuleId> cited_;
  UnknownId worth_a_letter_;
};

}  // namespace prover
