#include <z3++.h>

#include <algorithm>
#include <chrono>

#include "benchmarks/search/child.hpp"
#include "benchmarks/search/peers.hpp"

namespace prover {

namespace {

class Watch {
 public:
  double seconds() const { return std::chrono::duration<double>(std::chrono::steady_clock::now() - start_).count(); }

 private:
  std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
};

// `work` gets a fresh context and answers with a number, or nothing when Z3 gave up.
template <class Work>
PeerRun in_child(const PeerTask& task, Work work) {
  return peer_run_of(run_in_child(
      [&]() -> std::string {
        try {
          const Watch watch;
          z3::context context;
          const std::optional<std::int64_t> answer = work(context);
          return answer ? child_result(watch.seconds(), *answer) : "";
        } catch (const z3::exception&) {
          return "";
        }
      },
      task.limit_seconds));
}

z3::expr integer(z3::context& context, std::int64_t value) { return context.real_val(value); }

std::vector<z3::expr> reals(z3::context& context, const char* prefix, std::size_t count) {
  std::vector<z3::expr> result;
  for (std::size_t i = 0; i < count; ++i) result.push_back(context.real_const((prefix + std::to_string(i)).c_str()));
  return result;
}

std::vector<z3::expr> booleans(z3::context& context, std::size_t count) {
  std::vector<z3::expr> result;
  for (std::size_t i = 0; i < count; ++i) result.push_back(context.bool_const(("u" + std::to_string(i)).c_str()));
  return result;
}

// A form over the angles themselves, its constant included.
z3::expr equation(z3::context& context, const std::vector<z3::expr>& angles, const Form& form) {
  z3::expr_vector sum(context);
  sum.push_back(context.real_val(form.constant.to_string().c_str()));
  for (const auto& [unknown, c] : form.terms)
    sum.push_back(c.is_one() ? angles[unknown.index()]
                             : context.real_val(c.to_string().c_str()) * angles[unknown.index()]);
  return z3::sum(sum) == 0;
}

// Minimal sets by a map of what has been seen: each model of the map is a set not yet judged; it is shrunk to a minimal
// set that gives the goal, or grown to a largest one that does not, and the map learns either. (Liffiton, Previti, Malik,
// Marques-Silva, "Fast, flexible MUS enumeration", Constraints 2016; from memory.)
class Enumeration {
 public:
  Enumeration(z3::context& context, const PeerTask& task)
      : context_(context), count_(task.instance.problem.candidates.size()), used_(booleans(context, count_)),
        solver_(context), map_(context) {
    z3::params prefer_true(context);
    prefer_true.set("phase_selection", 1U);
    map_.set(prefer_true);
    const auto angles = reals(context, "x", task.instance.unknowns);
    const SearchProblem& problem = task.instance.problem;
    for (std::size_t i = 0; i < count_; ++i) {
      for (const Form& form : problem.candidates[i].conclusions)
        solver_.add(z3::implies(used_[i], equation(context, angles, form)));
      map_.add(used_[i] || !used_[i]);  // so that the map knows it
    }
    z3::expr_vector goals(context);
    for (const Form& goal : problem.goal) goals.push_back(equation(context, angles, goal));
    solver_.add(!z3::mk_and(goals));
  }

  std::size_t find(std::size_t wanted) {
    std::size_t found = 0;
    while (found < wanted && map_.check() == z3::sat) {
      const z3::model model = map_.get_model();
      std::vector<std::size_t> seed;
      for (std::size_t i = 0; i < count_; ++i)
        if (!model.eval(used_[i], false).is_false()) seed.push_back(i);
      if (gives_goal(seed)) {
        block(shrunk(), true);
        ++found;
      } else {
        block(complement_of(grown(seed)), false);
      }
    }
    return found;
  }

 private:
  bool gives_goal(const std::vector<std::size_t>& members) {
    z3::expr_vector assumed(context_);
    for (const std::size_t i : members) assumed.push_back(used_[i]);
    return solver_.check(assumed) == z3::unsat;
  }
  std::vector<std::size_t> core() const {
    std::vector<std::size_t> members;
    const z3::expr_vector parts = solver_.unsat_core();
    for (unsigned i = 0; i < parts.size(); ++i)
      members.push_back(std::stoul(parts[static_cast<int>(i)].decl().name().str().substr(1)));
    std::sort(members.begin(), members.end());
    return members;
  }
  std::vector<std::size_t> shrunk() {
    std::vector<std::size_t> members = core();
    for (std::size_t i = 0; i < members.size();) {
      std::vector<std::size_t> fewer = members;
      fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
      if (gives_goal(fewer)) {
        const std::vector<std::size_t> smaller = core();
        std::erase_if(members, [&](std::size_t m) { return !std::binary_search(smaller.begin(), smaller.end(), m); });
      } else {
        ++i;
      }
    }
    return members;
  }
  std::vector<bool> grown(std::vector<std::size_t> members) {
    std::vector<bool> inside(count_, false);
    for (const std::size_t m : members) inside[m] = true;
    for (std::size_t i = 0; i < count_; ++i) {
      if (inside[i]) continue;
      members.push_back(i);
      if (gives_goal(members))
        members.pop_back();
      else
        inside[i] = true;
    }
    return inside;
  }
  std::vector<std::size_t> complement_of(const std::vector<bool>& inside) const {
    std::vector<std::size_t> outside;
    for (std::size_t i = 0; i < count_; ++i)
      if (!inside[i]) outside.push_back(i);
    return outside;
  }
  void block(const std::vector<std::size_t>& members, bool all_of_them) {
    z3::expr_vector clause(context_);
    for (const std::size_t m : members) clause.push_back(all_of_them ? !used_[m] : used_[m]);
    map_.add(z3::mk_or(clause));
  }

  z3::context& context_;
  std::size_t count_;
  std::vector<z3::expr> used_;
  z3::solver solver_, map_;
};

}  // namespace

PeerRun z3_optimum(const PeerTask& task) {
  return in_child(task, [&](z3::context& context) -> std::optional<std::int64_t> {
    const Columns& columns = task.columns;
    z3::optimize optimize(context);
    const auto multipliers = reals(context, "l", columns.columns());
    const auto used = booleans(context, columns.weights.size());
    for (std::size_t c = 0; c < columns.columns(); ++c) optimize.add(used[columns.candidate_of[c]] || multipliers[c] == 0);
    for (std::size_t i = 0; i < used.size(); ++i)
      if (columns.weights[i] > 0) optimize.add_soft(!used[i], static_cast<unsigned>(columns.weights[i]));
    for (std::size_t u = 0; u < columns.rows.size(); ++u) {
      z3::expr_vector sum(context);
      sum.push_back(integer(context, 0));
      for (const auto& [column, c] : columns.rows[u]) sum.push_back(integer(context, c) * multipliers[column]);
      optimize.add(z3::sum(sum) == integer(context, columns.goal[u]));
    }
    if (optimize.check() != z3::sat) return std::nullopt;
    const z3::model model = optimize.get_model();
    std::int64_t weight = 0;
    for (std::size_t i = 0; i < used.size(); ++i)
      if (model.eval(used[i], true).is_true()) weight += columns.weights[i];
    return weight;
  });
}

PeerRun z3_entailment(const PeerTask& task) {
  return in_child(task, [&](z3::context& context) -> std::optional<std::int64_t> {
    z3::solver solver(context, "QF_LRA");
    const auto angles = reals(context, "x", task.instance.unknowns);
    for (const Candidate& candidate : task.instance.problem.candidates)
      for (const Form& form : candidate.conclusions) solver.add(equation(context, angles, form));
    z3::expr_vector goals(context);
    for (const Form& goal : task.instance.problem.goal) goals.push_back(equation(context, angles, goal));
    solver.add(!z3::mk_and(goals));
    const auto answer = solver.check();
    if (answer == z3::unknown) return std::nullopt;
    return answer == z3::unsat ? 1 : 0;
  });
}

PeerRun z3_several(const PeerTask& task) {
  return in_child(task, [&](z3::context& context) -> std::optional<std::int64_t> {
    return static_cast<std::int64_t>(Enumeration(context, task).find(task.wanted));
  });
}

}  // namespace prover
