#!/usr/bin/env bash
# Measures the built program: bash tests/bench/run.sh BUILD_DIR
# 400 copies of the sample requests under other ids, issued on two cores; then the search by itself,
# with 1,000 heads made by number and with the samples. A measurement, not a test: it passes or fails
# nothing, for the machine it runs on may be busy. The search needs a build with SWATHSPEC_TESTS=ON.
set -eu
build=${1:?usage: bash tests/bench/run.sh BUILD_DIR}
here=$(realpath "$(dirname "$0")")
python3 "$here/bench.py" "$(realpath "$build")/swathspec"
"$build/tests/bench_search" "$here/../../sample_requests"
