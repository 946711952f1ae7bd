# The packages of Debian 12 that Anglewright is built from, and installing what is missing of them. Sourced by
# frontend/try.sh and tests/run.sh, so that the list stands in one place. Nothing else is ever fetched.

packages_to_build=(
  g++ cmake ninja-build
  libboost-dev libboost-graph-dev libfmt-dev libspdlog-dev tao-pegtl-dev libeigen3-dev libz3-dev libgmp-dev
  libutf8proc-dev libtbb-dev nlohmann-json3-dev libcli11-dev libgraphviz-dev libflint-dev libflint-arb-dev
)
packages_to_test=(catch2 python3 python3-jsonschema)
# General solvers that the benchmarks measure beside Anglewright. Nothing is built from them.
packages_to_compare=(coinor-cbc glpk-utils gringo)

say() { printf '\n== %s\n' "$*"; }

is_installed() { [ "$(dpkg-query -W -f='${db:Status-Status}' "$1" 2>/dev/null)" = installed ]; }

# install_missing PACKAGE…: on Debian and its kin what is missing is installed; elsewhere it is named, and the build
# is tried with what is there.
install_missing() {
  if ! command -v apt-get >/dev/null || ! command -v dpkg-query >/dev/null; then
    say "This is not a Debian system. Needed, by their Debian names: $*"
    echo "Install these by hand if the build does not find them; going on with what is there."
    return 0
  fi
  local missing=() package
  for package in "$@"; do
    is_installed "$package" || missing+=("$package")
  done
  if [ ${#missing[@]} -eq 0 ]; then
    say "All needed packages are installed."
    return 0
  fi
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    if ! command -v sudo >/dev/null; then
      say "Missing, and only root may install them: ${missing[*]}"
      echo "As root: apt-get install ${missing[*]}. Going on with what is there."
      return 0
    fi
    as_root=(sudo)
  fi
  say "Installing: ${missing[*]}"
  "${as_root[@]}" apt-get update -q
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "${missing[@]}"
}

# configure FOLDER OPTION…: cmake, with ninja and ccache where they are present. A folder that was made with another
# generator keeps it.
configure() {
  local folder=$1
  shift
  local options=("$@")
  if [ ! -f "$folder/CMakeCache.txt" ] && command -v ninja >/dev/null; then options+=(-G Ninja); fi
  if command -v ccache >/dev/null; then options+=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache); fi
  cmake -S . -B "$folder" "${options[@]}"
}

# A Python that has what Debian's package python3-jsonschema brings; another one may come first in PATH.
python_with_jsonschema() {
  local python
  for python in /usr/bin/python3 python3; do
    if "$python" -c 'import jsonschema' 2>/dev/null; then
      echo "$python"
      return 0
    fi
  done
  echo python3
}

cores() { nproc 2>/dev/null || getconf _NPROCESSORS_ONLN 2>/dev/null || echo 2; }
