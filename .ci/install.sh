# Sourced. install_packages GROUP...: installs what dpkg misses of these groups of .ci/packages.
# Neither root nor sudo: prints the line to run and exits 69.
install_packages() {
  local list missing= package as=
  list=$(dirname "${BASH_SOURCE[0]}")/packages
  for package in $(awk -v groups=" $* " 'index(groups, " " $1 " ") {print $2}' "$list"); do
    [ "$(dpkg-query -W -f '${Status}' "$package" 2>/dev/null)" = "install ok installed" ] ||
      missing="$missing $package"
  done
  [ -n "$missing" ] || return 0
  if [ "$(id -u)" != 0 ]; then
    if command -v sudo >/dev/null 2>&1 && sudo -n true 2>/dev/null; then
      as=sudo
    else
      echo "These packages are missing; run this as root, then start again:" >&2
      echo "apt-get install -y --no-install-recommends$missing" >&2
      exit 69
    fi
  fi
  echo "installing:$missing"
  export DEBIAN_FRONTEND=noninteractive
  $as apt-get update -q >/dev/null
  $as apt-get install -y -q --no-install-recommends $missing >/dev/null
}

# configure_and_build FOLDER TARGETS CMAKE-ARGUMENTS...: quick when nothing changed.
configure_and_build() {
  local folder=$1 targets=$2
  shift 2
  export CCACHE_BASEDIR=$PWD CCACHE_NOHASHDIR=1
  cmake -S . -B "$folder" -G Ninja "$@" >"$folder.configure.log" 2>&1 ||
    { cat "$folder.configure.log"; exit 1; }
  ninja -C "$folder" --quiet $targets
}
