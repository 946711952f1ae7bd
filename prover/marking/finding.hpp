// What is found about one link of a pupil's line: that it stands, and on what; or that it is false, and whether it follows
// from an earlier wrong line.
#pragma once
#include <optional>
#include <vector>

#include "prover/marking/argument.hpp"
#include "prover/marking/links.hpp"
#include "prover/marking/named_rules.hpp"

namespace prover {

struct Finding {
  Link link;
  std::optional<Support> support;  // true, and by what
  std::size_t ground = 0;          // of `support` or `carried`
  bool not_taught = false;         // by a theorem that the class has not been taught
  std::optional<Support> carried;  // false, but it follows from an earlier wrong line
  bool broken = false;             // false in a figure, or against what follows
  std::size_t figure = 0;          // which
};

class Finder {
 public:
  // `claims`: of the lines so far; the caller adds to them as lines are judged.
  Finder(const JudgeTask& task, Grounds& grounds, const AttemptOptions& options, const std::vector<LineClaim>& claims,
         const Judgement& judgement)
      : task_(task), grounds_(grounds), options_(options), claims_(claims), judgement_(judgement), said_(grounds.count()) {}

  Finding find(Link link, const NamedRules& named);
  // The claims so far as the ground sees them; valid until the next call.
  const std::vector<SaidBefore>& said(std::size_t ground, bool with_wrong);

 private:
  bool speaks_of_refused(const Phrase& phrase) const;
  bool try_ground(Finding& found, const NamedRules& named, std::size_t ground, const std::vector<bool>& allowed);
  void seek_support(Finding& found, const NamedRules& named);
  void seek_carried(Finding& found, const NamedRules& named);
  void seek_by_wrong_facts(Finding& found, const NamedRules& named);
  bool is_wrong(int line) const;

  const JudgeTask& task_;
  Grounds& grounds_;
  const AttemptOptions& options_;
  const std::vector<LineClaim>& claims_;
  const Judgement& judgement_;
  struct Said {
    std::vector<SaidBefore> lines;  // by claim
    std::size_t read = 0;
  };
  std::vector<Said> said_;          // by ground
  std::vector<SaidBefore> chosen_;
};

}  // namespace prover
