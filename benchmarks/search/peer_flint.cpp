// Exact rank over the integers: the goal follows exactly if adding it does not raise the rank. FLINT's matrices are dense.
#include "benchmarks/search/child.hpp"
#include "benchmarks/search/peers.hpp"

#ifdef ANGLEWRIGHT_HAS_FLINT
#include <flint/fmpz_mat.h>

#include <chrono>
#endif

namespace prover {

PeerRun flint_entailment(const PeerTask& task) {
#ifdef ANGLEWRIGHT_HAS_FLINT
  const Columns& columns = task.columns;
  constexpr std::size_t most_cells = 20'000'000;
  if (columns.columns() * columns.rows.size() > most_cells) {
    PeerRun result;
    result.state = PeerState::not_suited;
    return result;
  }
  return peer_run_of(run_in_child(
      [&] {
        const auto begin = std::chrono::steady_clock::now();
        fmpz_mat_t matrix;
        const auto last = static_cast<slong>(columns.columns());
        fmpz_mat_init(matrix, last + 1, static_cast<slong>(columns.rows.size()));
        for (std::size_t u = 0; u < columns.rows.size(); ++u)
          for (const auto& [column, c] : columns.rows[u])
            fmpz_set_si(fmpz_mat_entry(matrix, static_cast<slong>(column), static_cast<slong>(u)), c);
        const slong without = fmpz_mat_rank(matrix);
        for (std::size_t u = 0; u < columns.rows.size(); ++u)
          fmpz_set_si(fmpz_mat_entry(matrix, last, static_cast<slong>(u)), columns.goal[u]);
        const slong with = fmpz_mat_rank(matrix);
        const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
        return child_result(seconds, with == without ? 1 : 0);
      },
      task.limit_seconds));
#else
  (void)task;
  PeerRun result;
  result.state = PeerState::not_installed;
  return result;
#endif
}

}  // namespace prover
