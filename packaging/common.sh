# Shared by packaging/run and packaging/test: where we are, what to install, how to build. Sourced, not run.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cd "$root"

say() { printf '\n== %s\n' "$*"; }
fail() {
  printf '\n%s: %s\n' "$(basename "$0")" "$*" >&2
  exit 1
}

# install_packages KIND...: installs what is missing of these kinds from packaging/packages.txt.
install_packages() {
  command -v apt-get >/dev/null || fail "this script installs Debian packages with apt-get, which is not here; see packaging/packages.txt for what to install by hand."
  local wanted=() missing=() name kind
  for kind in "$@"; do
    while read -r name; do wanted+=("$name"); done < <(awk -v kind="$kind" '$1 == kind { print $2 }' packaging/packages.txt)
  done
  for name in "${wanted[@]}"; do
    [ "$(dpkg-query -W -f '${db:Status-Status}' "$name" 2>/dev/null || true)" = installed ] || missing+=("$name")
  done
  if [ ${#missing[@]} -eq 0 ]; then
    say "All ${#wanted[@]} Debian packages are there already"
    return
  fi
  say "Installing ${#missing[@]} Debian packages: ${missing[*]}"
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || fail "installing packages needs root; run it as root or install sudo."
    as_root=(sudo)
  fi
  "${as_root[@]}" apt-get update -qq || fail "apt-get update did not succeed; is the network up?"
  DEBIAN_FRONTEND=noninteractive "${as_root[@]}" apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null ||
    fail "apt-get could not install: ${missing[*]}"
}

# build PRESET TARGET...
build() {
  local preset=$1
  shift
  export CCACHE_SLOPPINESS=pch_defines,time_macros CCACHE_BASEDIR=$root CCACHE_NOHASHDIR=1
  say "Configuring ($preset)"
  cmake --preset "$preset" >"build-$preset.log" 2>&1 || { tail -n 20 "build-$preset.log" >&2; fail "cmake could not configure; the log is build-$preset.log."; }
  say "Building ($preset); a first build takes some minutes"
  cmake --build --preset "$preset" ${*:+--target "$@"} || fail "the build did not succeed; see above."
}
