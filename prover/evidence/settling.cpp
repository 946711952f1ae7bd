#include "prover/evidence/settling.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

#include "prover/evidence/settling_candidates.hpp"
#include "prover/motion/mechanism.hpp"
#include "prover/reading/number_text.hpp"
#include "prover/statement/meaning.hpp"

namespace prover {

namespace {

using motion::Mechanism;
using Kind = SettlingCandidate::Kind;

constexpr std::size_t most_sets = 6;
constexpr std::size_t most_confirmed = 10;    // sets that are really tried
constexpr std::size_t most_proof_attempts = 3;
constexpr std::size_t most_special = 48;      // candidates for which a figure must be moved first
constexpr std::size_t most_in_pairs = 12;
constexpr double agrees = 1e-6;

// How many sets of each kind are listed, so that a list is not all angles.
std::size_t most_of(Kind kind) { return kind == Kind::angle ? 3 : 2; }

const Expression& asked_of(const Goal& goal) { return goal.claims[0].relation.expressions[0]; }

std::string candidate_verb(const SettlingCandidate& candidate) { return candidate.size_is_open() ? "give " : "say that "; }

// A candidate in a figure where it holds.
struct Placed {
  const SettlingCandidate* candidate;
  std::optional<Mechanism> at;      // of the givens and the candidate; none for an open size, which holds as it is
  Eigen::VectorXd free;             // open size: the part of its gradient that is free
};

// `vector` lies in the span of `others`, with the tolerance of the ranks.
bool in_span(const Eigen::VectorXd& vector, const std::vector<const Eigen::VectorXd*>& others) {
  Eigen::MatrixXd matrix(vector.size(), static_cast<Eigen::Index>(others.size()));
  for (std::size_t k = 0; k < others.size(); ++k) matrix.col(static_cast<Eigen::Index>(k)) = *others[k] / others[k]->norm();
  const Eigen::VectorXd rest = vector - matrix * matrix.colPivHouseholderQr().solve(vector);
  return rest.norm() < motion::free_by_whole * vector.norm();
}

class Settling {
 public:
  Settling(const Statement& statement, std::size_t goal, Workings& workings, const Sketch& figure,
           const AttemptOptions& options, const Budget& budget)
      : statement_(statement), workings_(workings), goal_(statement.goals[goal]), asked_(asked_of(goal_)), givens_(phrases_of(statement)),
        figure_(figure), options_(options), budget_(budget),
        candidates_(settling_candidates(statement, workings.arrangement, figure, asked_)) {}

  std::vector<SettlingSet> sets() {
    base_ = Mechanism::at(givens_, figure_);
    if (!base_ || !base_->moves(asked_)) return {};
    asked_free_ = free_gradient(*base_, asked_);
    place_candidates();
    for (const Placed& one : placed_)
      if (settles(one)) try_set({one.candidate});
    if (found_.size() < 2 && base_->freedom() > 1) pairs();
    return chosen();
  }

 private:
  struct Found {
    SettlingSet set;
    double cost;
    Kind kind;
  };

  const Statement& statement_;
  Workings& workings_;
  const Goal& goal_;
  const Expression& asked_;
  std::vector<Phrase> givens_;
  const Sketch& figure_;
  const AttemptOptions& options_;
  const Budget& budget_;
  std::vector<SettlingCandidate> candidates_;
  std::optional<Mechanism> base_;
  Eigen::VectorXd asked_free_;
  std::vector<Placed> placed_;
  std::vector<Found> found_;
  std::map<Kind, std::size_t> listed_;
  std::size_t tried_ = 0, attempts_ = 0;

  static Eigen::VectorXd free_gradient(const Mechanism& mechanism, const Expression& quantity) {
    return mechanism.free_part(motion::gradient_of(quantity, mechanism.units().layout, mechanism.x().data()));
  }
  std::vector<Phrase> with(const std::vector<Phrase>& more) const {
    std::vector<Phrase> all = givens_;
    all.insert(all.end(), more.begin(), more.end());
    return all;
  }

  void place_candidates() {
    std::size_t special = 0;
    for (const SettlingCandidate& candidate : candidates_) {
      if (budget_.exhausted()) return;
      Placed placed{&candidate, std::nullopt, {}};
      if (candidate.size_is_open()) {
        const Eigen::VectorXd gradient = motion::gradient_of(candidate.quantity, base_->units().layout, base_->x().data());
        placed.free = base_->free_part(gradient);
        if (placed.free.norm() <= motion::free_by_whole * gradient.norm()) continue;  // known already
      } else {
        if (++special > most_special) continue;
        placed.at = Mechanism::at(with({candidate.phrase}), figure_);
        if (!placed.at || placed.at->freedom() >= base_->freedom()) continue;  // no figure near, or nothing new
      }
      placed_.push_back(std::move(placed));
    }
  }

  bool settles(const Placed& one) const {
    return one.at ? !one.at->moves(asked_) : in_span(asked_free_, {&one.free});
  }
  bool settle(const Placed& one, const Placed& other) const {
    if (!one.at && !other.at) return in_span(asked_free_, {&one.free, &other.free});
    if (one.at && other.at) {
      const auto both = Mechanism::at(with({one.candidate->phrase, other.candidate->phrase}), one.at->figure());
      return both && !both->moves(asked_);
    }
    const Mechanism& special = one.at ? *one.at : *other.at;
    const Eigen::VectorXd open = free_gradient(special, one.at ? other.candidate->quantity : one.candidate->quantity);
    return open.norm() > motion::free_by_whole && in_span(free_gradient(special, asked_), {&open});
  }

  void pairs() {
    std::vector<const Placed*> pool;
    for (const Placed& one : placed_)
      if (pool.size() < most_in_pairs && !settles(one)) pool.push_back(&one);
    struct Pair {
      double cost;
      const Placed *a, *b;
    };
    std::vector<Pair> all;
    for (std::size_t i = 0; i < pool.size(); ++i)
      for (std::size_t k = i + 1; k < pool.size(); ++k) all.push_back({pool[i]->candidate->cost + pool[k]->candidate->cost, pool[i], pool[k]});
    std::stable_sort(all.begin(), all.end(), [](const Pair& a, const Pair& b) { return a.cost < b.cost; });
    for (const Pair& pair : all) {
      if (tried_ == most_confirmed || budget_.exhausted()) return;
      if (settle(*pair.a, *pair.b)) try_set({pair.a->candidate, pair.b->candidate});
    }
  }

  // The givens with the set: sizes as they are in some figure, rounded to whole degrees where such a figure exists.
  std::optional<std::vector<Phrase>> with_sizes(const std::vector<const SettlingCandidate*>& set) const {
    std::vector<Phrase> added;
    Sketch near = figure_;
    // First what holds only in special figures; sizes are read off there.
    for (const SettlingCandidate* candidate : set)
      if (!candidate->size_is_open()) added.push_back(candidate->phrase);
    if (!added.empty()) {
      const auto special = Mechanism::at(with(added), near);
      if (!special) return std::nullopt;
      near = special->figure();
    }
    for (const SettlingCandidate* candidate : set) {
      if (!candidate->size_is_open()) continue;
      const double size = measure(candidate->quantity, near);
      bool given = false;
      for (const double whole : {std::round(size), std::round(size) + 1, std::round(size) - 1}) {
        if (given || whole < 1 || !(whole < 1e6)) continue;
        added.push_back(with_size(*candidate, Rational(static_cast<std::int64_t>(whole))));
        if (const auto exact = Mechanism::at(with(added), near)) {
          near = exact->figure();
          given = true;
        } else {
          added.pop_back();
        }
      }
      if (!given) return std::nullopt;
    }
    return added;
  }

  void try_set(const std::vector<const SettlingCandidate*>& set) {
    if (tried_ == most_confirmed || budget_.exhausted()) return;
    const Kind kind = set[0]->kind;
    if (listed_[kind] >= most_of(kind)) return;
    ++tried_;
    const auto added = with_sizes(set);
    if (!added) return;
    SketchOptions sketching;
    sketching.starts = 60;
    sketching.patience = 12;
    const SketchReport figures = sketch(with(*added), statement_.names.points.size(), budget_.share(0.3), sketching);
    if (figures.sketches.empty()) return;
    const double value = measure(asked_, figures.sketches[0]);
    for (const Sketch& figure : figures.sketches)
      if (!(std::fabs(measure(asked_, figure) - value) < agrees * (1 + std::fabs(value)))) return;
    Found found{{}, 0, kind};
    std::string proved_value;
    found.set.proved = follows(*added, proved_value) ||
                       (attempts_++ < most_proof_attempts && is_proved(*added, figures.sketches, proved_value));
    for (const SettlingCandidate* candidate : set) found.cost += candidate->cost;
    if (set.size() > 1) found.cost += 10;
    for (const Phrase& phrase : *added) found.set.sentences.push_back(describe(phrase, statement_.names));
    found.set.says = words(set, found.set.sentences, value, proved_value);
    ++listed_[kind];
    found_.push_back(std::move(found));
  }

  // From what the rules derived before, by arithmetic with what is added.
  bool follows(const std::vector<Phrase>& added, std::string& value) const {
    LinearSystem closure = workings_.saturation.closure;
    for (const Phrase& phrase : added)
      for (const Form& form : given_forms(phrase, workings_.arrangement, workings_.unknowns)) closure.add(form);
    const GoalForms forms = goal_forms(goal_, closure, workings_.arrangement, workings_.unknowns, statement_.names);
    if (closure.contradictory() || !forms.reached) return false;
    value = forms.value;
    return true;
  }

  bool is_proved(const std::vector<Phrase>& added, const std::vector<Sketch>& figures, std::string& value) const {
    Statement more = statement_;
    more.goals = {goal_};
    for (const Phrase& phrase : added) more.givens.push_back({phrase, describe(phrase, more.names), false});
    StageTimes times;
    const Attempt one = attempt(more, figures, options_, budget_.share(0.3), times);
    if (!one.all_reached || !one.goals[0] || !trusted(*one.goals[0])) return false;
    value = one.goals[0]->value;
    return true;
  }

  std::string words(const std::vector<const SettlingCandidate*>& set, const std::vector<std::string>& sentences,
                    double value, const std::string& proved_value) const {
    std::vector<std::string> parts, example;
    std::size_t special = 0;
    for (const SettlingCandidate* candidate : set) special += candidate->size_is_open() ? 0 : 1;
    std::size_t next_special = 0, next_open = special;
    for (const SettlingCandidate* candidate : set) {
      if (candidate->size_is_open()) {
        parts.push_back(candidate_verb(*candidate) + describe(candidate->quantity, statement_.names));
        example.push_back(sentences[next_open++]);
      } else {
        parts.push_back(candidate_verb(*candidate) + sentences[next_special++]);
      }
    }
    std::string text = parts[0];
    for (std::size_t k = 1; k < parts.size(); ++k) {  // "give … and …", not "give … and give …"
      const std::string verb = candidate_verb(*set[k - 1]), next = candidate_verb(*set[k]);
      text += " and " + (verb == next ? parts[k].substr(next.size()) : parts[k]);
    }
    const bool angle = !asked_.terms.empty() && std::holds_alternative<Angle>(asked_.terms[0].quantity);
    const auto exact = Rational::parse(proved_value);
    std::string result = describe(asked_, statement_.names) + (exact ? " = " : " measures ") +
                         (exact ? (angle ? degrees_text(*exact) : number_text(*exact)) : fmt::format("{:.4g}{}", value, angle ? "°" : ""));
    if (!exact && !proved_value.empty()) result = describe(asked_, statement_.names) + " = " + proved_value;
    std::string when;
    for (std::size_t k = 0; k < example.size(); ++k) when += (k == 0 ? "" : " and ") + example[k];
    return text + (when.empty() ? "; then " : "; with " + when + ", ") + result;
  }

  std::vector<SettlingSet> chosen() {
    std::stable_sort(found_.begin(), found_.end(), [](const Found& a, const Found& b) {
      return std::pair(!a.set.proved, a.cost) < std::pair(!b.set.proved, b.cost);
    });
    std::vector<SettlingSet> result;
    for (Found& one : found_)
      if (result.size() < most_sets) result.push_back(std::move(one.set));
    return result;
  }
};

}  // namespace

std::vector<SettlingSet> settling_sets(const Statement& statement, std::size_t goal, Workings& workings, const Sketch& figure,
                                       const AttemptOptions& options, const Budget& budget) {
  return Settling(statement, goal, workings, figure, options, budget).sets();
}

}  // namespace prover
