#!/usr/bin/env bash
# Installs the solvers to compare with, builds the benchmarks (optimised, in build/) and prints their tables. --quick
# takes about a minute. Times are printed, not judged; but the status is 1 when two solvers find different optima. How to read the
# numbers: benchmarks/README.md.
set -euo pipefail
cd "$(dirname "$0")/.."
. frontend/packages.sh
quick=("$@")

install_missing "${packages_to_build[@]}" "${packages_to_compare[@]}" || echo "Going on with the solvers that are there."
configure build -DANGLEWRIGHT_BENCHMARKS=ON >/dev/null
cmake --build build --parallel "$(cores)" --target anglewright benchmark_stages benchmark_rule_count benchmark_grids \
  benchmark_search benchmark_sketching benchmark_certificates benchmark_marking

say "The program as a whole, start to end (median of 21 runs)"
for example in frontend/examples/trellis-laths.aw frontend/examples/trellis-angle-sum.aw; do
  for _ in $(seq 21); do
    begin=$(date +%s%N)
    build/anglewright prove "$example" >/dev/null || true
    end=$(date +%s%N)
    echo $(((end - begin) / 1000))
  done | sort -n | sed -n 11p | awk -v name="$example" '{printf "  %-50s %.1f ms\n", name, $1 / 1000}'
done

say "The published set in one process, stage by stage"
build/benchmark_stages "${quick[@]}"

say "Exact values by trigonometry"
build/benchmark_certificates

say "Marking twenty lines, and Z3 alone beside"
build/benchmark_marking

say "Time against the number of loaded rules"
build/benchmark_rule_count "${quick[@]}"

say "Figures: how many arrangements are found, and how fast"
build/benchmark_sketching "$([ ${#quick[@]} -gt 0 ] && echo 300 || echo 5000)"

say "Growing grids, and Z3 alone beside"
build/benchmark_grids "${quick[@]}"

say "Small random problems: the search, brute force and CBC"
build/benchmark_search --check "$([ ${#quick[@]} -gt 0 ] && echo 25 || echo 500)"

say "The search beside general solvers, on the same equations"
build/benchmark_search --side-by-side "${quick[@]}"
