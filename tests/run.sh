#!/usr/bin/env bash
# Installs what is missing (Debian 12), builds everything with warnings as errors, and runs every test: the units,
# rules and problems; the program as a user runs it; the published checks. Ends with how many passed and failed, and
# with a status that is not zero if any failed. Safe to repeat; changes nothing outside build/.
set -uo pipefail
cd "$(dirname "$0")/.." || exit 2
. frontend/packages.sh

say "Anglewright: installing what is missing, building into build/, running every test."
install_missing "${packages_to_build[@]}" "${packages_to_test[@]}" || exit 2
install_missing "${packages_to_compare[@]}" || echo "Going on with the solvers that are there."

say "Building, warnings are errors"
configure build -DANGLEWRIGHT_WERROR=ON -DANGLEWRIGHT_TESTS=ON -DANGLEWRIGHT_BENCHMARKS=ON || exit 2
cmake --build build --parallel "$(cores)" || exit 2

python=$(python_with_jsonschema)
passed=0
failed=0
log=build/tests.log

# part NAME COMMAND…: each part ends with a line "N passed, N failed".
part() {
  local name=$1 status line
  shift
  say "$name"
  "$@" 2>&1 | tee "$log"
  status=${PIPESTATUS[0]}
  line=$(grep -E '[0-9]+ passed, [0-9]+ failed' "$log" | tail -n 1)
  if ! [[ $line =~ ([0-9]+)\ passed,\ ([0-9]+)\ failed ]]; then
    echo "$name ended with status $status and did not say how many passed"
    failed=$((failed + 1))
    return
  fi
  passed=$((passed + BASH_REMATCH[1]))
  failed=$((failed + BASH_REMATCH[2]))
  if [ "$status" -ne 0 ] && [ "${BASH_REMATCH[2]}" -eq 0 ]; then
    echo "$name ended with status $status"
    failed=$((failed + 1))
  fi
}

# Optima of the same equations by other solvers; times are printed, not judged. Solvers that are missing are said.
optima() {
  local wrong=0
  build/benchmark_search --check 50 || wrong=$((wrong + 1))
  build/benchmark_search --side-by-side --quick --tables optimum || wrong=$((wrong + 1))
  echo "$((2 - wrong)) passed, $wrong failed"
  [ "$wrong" -eq 0 ]
}

part "Units, rules and problems" build/anglewright_tests
part "The program as a user runs it" "$python" tests/cli/check_program.py build/anglewright
part "Pages as they were approved" "$python" tests/golden/check_golden.py build/anglewright
part "Published checks" "$python" tests/published/check_published.py build/anglewright
part "Exact values by trigonometry, each certificate verified anew" "$python" tests/published/check_certificates.py build/anglewright
part "Published problems with a given left out or changed" "$python" tests/published/check_changed.py build/anglewright
part "Published theorems with a given left out or changed" "$python" tests/published/check_changed.py --of theorems build/anglewright
part "Hidden second cases" "$python" tests/published/check_hidden_cases.py build/anglewright
part "Pupils' work: the examiner's own reader" "$python" tests/marking/test_own.py
part "Pupils' work: marks by published conventions" "$python" tests/marking/check_pieces.py build/anglewright
part "Pupils' work: proofs with lines made wrong" "$python" tests/marking/check_mutations.py --lines 300 build/anglewright
part "Ladders of hints: nothing given away" "$python" tests/marking/check_ladders.py build/anglewright
part "Published proofs are not shorter" "$python" tests/published/check_lengths.py build/anglewright
part "Optima beside other solvers" optima

say "All together: $passed passed, $failed failed"
[ "$failed" -eq 0 ]
