#!/usr/bin/env bash
# Every C++ file as clang-format would write it.
set -eu
cd "$(dirname "$0")/../.."
git ls-files -z '*.cpp' '*.h' | xargs -0 clang-format-14 --dry-run -Werror
echo "format: clean"
