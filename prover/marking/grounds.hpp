// The grounds of one piece of work, each made when it is first needed, and the figures to test with.
#pragma once
#include <memory>
#include <optional>
#include <vector>

#include "prover/marking/ground.hpp"
#include "prover/verdict/solve.hpp"

namespace prover {

class Grounds {
 public:
  // `solved`: the problem's own solution; its cases become grounds of their own.
  Grounds(const Statement& statement, const Solved& solved, bool drawn_more, const AttemptOptions& options, const Budget& budget);

  // 0: positions of the text. 1: positions that all figures show. 2: all points joined, every rule of the catalogue.
  // Then one for each arrangement of the figure that the problem's answer tells apart.
  std::size_t count() const { return 3 + cases_.size(); }
  const Ground& at(std::size_t i);
  bool is_arrangement(std::size_t i) const { return i >= 3; }
  const std::string& arrangement_name(std::size_t i) const { return cases_[i - 3].name; }
  // Figures that meet the givens; several where several can be drawn.
  const std::vector<Sketch>& figures();
  const Budget& budget() const { return budget_; }

 private:
  struct Case {
    std::string name;
    std::vector<Sketch> views;
  };
  const Statement& statement_;
  const AttemptOptions& options_;
  Budget budget_;
  std::vector<Case> cases_;
  std::optional<std::vector<Sketch>> figures_;
  std::vector<std::unique_ptr<Ground>> grounds_;
};

}  // namespace prover
