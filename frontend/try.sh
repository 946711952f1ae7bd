#!/usr/bin/env bash
# From a fresh clone to a first proof: installs what is missing (Debian 12), builds the program into build/, and
# proves the angle sum of a triangle on a garden trellis, then again in two ways. Safe to repeat.
set -euo pipefail
cd "$(dirname "$0")/.."
. frontend/packages.sh

say "Anglewright: installing what is missing, building into build/, then a demonstration."
install_missing "${packages_to_build[@]}"

say "Building (a few minutes the first time)"
if [ -f build/CMakeCache.txt ]; then
  configure build  # with whatever it was configured for before
else
  configure build -DANGLEWRIGHT_TESTS=OFF -DANGLEWRIGHT_BENCHMARKS=OFF
fi
cmake --build build --parallel "$(cores)" --target anglewright

# show DESCRIPTION FILE OPTION…
show() {
  local description=$1
  shift
  say "$description"
  echo "\$ build/anglewright prove $*"
  echo
  build/anglewright prove "$@"
}

say "The problem: frontend/examples/trellis-angle-sum.aw"
cat frontend/examples/trellis-angle-sum.aw
show "The proof, in two columns" frontend/examples/trellis-angle-sum.aw
show "One way: a class that has been taught alternate angles" frontend/examples/trellis-angle-sum-alternate.aw
show "Another way: a class that has been taught corresponding and vertical angles" \
  frontend/examples/trellis-angle-sum-corresponding.aw
say "Done. Next: build/anglewright --help, and your own problem in a file."
