// What the chain knows so far: instances that fired, those that wait, facts by kind in the order they became
// known, and the linear system. New conclusions go in here and nowhere else.
#pragma once
#include <array>
#include <unordered_set>
#include <vector>

#include "prover/algebra/linear_system.hpp"
#include "prover/base/budget.hpp"
#include "prover/base/hash_set.hpp"
#include "prover/fact/unknown.hpp"
#include "prover/figure/arrangement.hpp"
#include "prover/rule/instance.hpp"

namespace prover {

// Two lines known to be parallel or perpendicular, a line and what it touches, or the points of another fact.
struct KnownFact {
  FactKind kind = FactKind::parallel;
  LineId first, second;         // parallel, perpendicular; first: the line that touches
  std::vector<PointId> points;  // the others; circle: centre and two points; tangent: T, O; tangent_through: T, U, V
};

class Knowledge {
 public:
  Knowledge(const Arrangement& figure, UnknownTable& table, const Budget& limits)
      : arrangement(figure), unknowns(table), budget(limits) {}

  const Arrangement& arrangement;
  UnknownTable& unknowns;
  const Budget& budget;

  // Takes an instance: fires it when its premises follow, keeps it waiting otherwise, drops it when it is known
  // already or says nothing. What is kept is a copy; what says nothing is struck out of `instance` itself.
  void offer(Instance& instance) {
    if (is_new(instance)) take(instance);
  }
  // The two halves of it: most instances that matching comes upon were there before, and need no positions.
  bool is_new(Instance& instance);
  void take(const Instance& instance);
  // Fires what was waiting and now follows, and lists facts that became known. True when anything was new.
  bool settle();

  bool entails(const Form& form) const { return system_.entails(form); }
  Form normal_form(const Form& form) const { return system_.reduce(form); }
  const LinearSystem& system() const { return system_; }
  const std::vector<KnownFact>& facts() const { return facts_; }
  // Where the facts of one kind stand among `facts`, in order.
  const std::vector<std::size_t>& facts_of(FactKind kind) const { return by_kind_[static_cast<std::size_t>(kind)]; }
  // Those of two lines, one of which is this one; likewise in order.
  const std::vector<std::size_t>& facts_about(FactKind kind, LineId line) const;
  bool full() const { return fired_.size() + waiting_count_ >= budget.max_instances; }
  bool contradictory() const { return system_.contradictory(); }
  std::size_t offered() const { return offered_; }
  std::size_t version() const { return system_.rank(); }
  std::vector<Instance> take_fired() { return std::move(fired_); }
  LinearSystem take_system() { return std::move(system_); }

 private:
  // An instance waits for one of its open premises at a time. That premise, as last reduced, speaks of unknowns that
  // are not pivots of the system, and can only follow after one of them has become one: so each of them wakes it.
  struct Waiting {
    Instance instance;
    std::vector<Form> open;  // premises not yet known to follow; the first one, as last reduced, is waited for
    bool woken = false;      // since it was last looked at
  };
  void fire(Instance instance);
  bool ready(Waiting& waiting) const;
  void wait(std::size_t waiting);
  void wake(UnknownId pivot);
  bool is_idle(const Instance& instance) const;
  void note_facts();
  void note_circles();
  void note(KnownFact fact);

  LinearSystem system_;
  std::vector<Instance> fired_;
  std::vector<Waiting> waiting_;      // in the order of offers; without premises left once they have fired
  std::size_t waiting_count_ = 0;
  std::vector<std::vector<std::int32_t>> woken_by_;  // by unknown: who waits for it
  std::vector<std::int32_t> woken_;                  // who has been woken and was not looked at yet
  std::vector<KnownFact> facts_;
  std::array<std::vector<std::size_t>, 32> by_kind_;
  std::array<std::vector<std::vector<std::size_t>>, 2> by_line_;  // parallel, perpendicular; by line
  std::vector<std::vector<UnknownId>> circles_;     // the circle unknowns of each centre
  std::vector<std::vector<bool>> one_circle_;       // by centre: pairs of them known to be on one circle
  HashSet seen_;                                    // hashes of instances
  std::unordered_set<Form> given_;                  // what hypotheses say, normalised
  HashSet given_hashes_;
  std::size_t facts_checked_ = 0;                   // unknowns looked at
  std::vector<UnknownId> open_facts_;               // facts not yet known to hold
  std::vector<std::array<PointId, 3>> open_corners_;  // meeting lines not yet known to be perpendicular
  bool corners_listed_ = false;
  std::size_t offered_ = 0;
};

}  // namespace prover
