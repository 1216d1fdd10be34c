#!/usr/bin/env bash
# Measures the built program: bash tests/bench/run.sh BUILD_DIR
# 400 copies of the sample requests under other ids, issued on two cores. A measurement, not a test:
# it passes or fails nothing, for the machine it runs on may be busy.
set -eu
build=${1:?usage: bash tests/bench/run.sh BUILD_DIR}
exec python3 "$(dirname "$0")/bench.py" "$(realpath "$build")/swathspec"
