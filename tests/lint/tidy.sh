#!/usr/bin/env bash
# clang-tidy on the C++ files of the last commit and of the working tree, or on all with
# SWATHSPEC_TIDY=all. Usage: tidy.sh BUILD
set -eu
build=$(realpath "$1")
cd "$(dirname "$0")/../.."
if [ "${SWATHSPEC_TIDY:-}" = all ]; then
  exec python3 tests/lint/compiled.py tidy "$build"
fi
base=$(git rev-parse -q --verify HEAD~1 || git hash-object -t tree /dev/null)
changed=$(git diff --name-only --diff-filter=d "$base" -- '*.cpp')
if [ -z "$changed" ]; then
  echo "tidy: no C++ source changed since $base"
  exit 0
fi
exec python3 tests/lint/compiled.py tidy "$build" $changed
