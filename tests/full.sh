#!/usr/bin/env bash
# What takes long, for `tests/run --full`: coverage of calc/, ThreadSanitizer, valgrind, fuzzing, random seeds,
# the independent search on 500 pairs, a bare root, the benchmark, killed runs, the overview in a browser, a
# Slurm job array, inboxes by the thousand. Each part prints its figures; any failure ends in exit status 1.
set -u
cd "$(dirname "$0")/.."
. .ci/install.sh
status=0
part() {
  echo "== $1"
  shift
  "$@" || { status=1; echo "FAILED: $*"; }
}

coverage() {
  configure_and_build .build/coverage "test_calc test_whole" -DCMAKE_BUILD_TYPE=None -DSWATHSPEC_TESTS=ON \
    -DSWATHSPEC_COVERAGE=ON || return 1
  find .build/coverage -name '*.gcda' -delete
  .build/coverage/tests/test_calc >/dev/null && .build/coverage/tests/test_whole >/dev/null || return 1
  gcovr --root . --filter 'calc/' --exclude-throw-branches --exclude-unreachable-branches \
    --object-directory .build/coverage --print-summary | tail -4
}

threads() {
  configure_and_build .build/threads swathspec -DCMAKE_BUILD_TYPE=None -DSWATHSPEC_THREAD_SANITIZE=ON || return 1
  local out
  out=$(mktemp -d)
  .build/threads/swathspec build sample_requests -o "$out" -j 4 >/dev/null
  local code=$?
  rm -rf "$out"
  return $code
}

memory() {
  local out
  out=$(mktemp -d)
  valgrind -q --error-exitcode=9 --leak-check=full .build/release/swathspec build sample_requests -o "$out" -j 1 \
    >/dev/null
  local code=$?
  rm -rf "$out"
  return $code
}

fuzz() {
  local seconds=60 target corpus
  for target in tests/fuzz/fuzz_*.cpp; do
    corpus=$(mktemp -d)
    clang++-14 -std=c++20 -O1 -g -I. -fsanitize=fuzzer,address,undefined -fno-sanitize-recover=all "$target" \
      intake/*.cpp calc/*.cpp -lpugixml -o "$corpus/fuzz" || return 1
    mkdir "$corpus/new"
    "$corpus/fuzz" -max_total_time=$seconds -print_final_stats=1 "$corpus/new" tests/fuzz/corpus/* 2>&1 |
      grep -E 'number_of_executed|ERROR|SUMMARY'
    local code=${PIPESTATUS[0]}
    rm -rf "$corpus"
    [ "$code" = 0 ] || return 1
  done
}

oracle() {
  SWATHSPEC_ORACLE=all ctest --test-dir .build/release -L oracle --output-on-failure --verbose |
    grep -E 'oracle:|FAIL|tests passed|seed '
  return "${PIPESTATUS[0]}"
}

part "coverage of calc/" coverage
part "ThreadSanitizer" threads
part "valgrind" memory
part "fuzz" fuzz
killer() { KILLS=50 SWATHSPEC=$PWD/.build/release/swathspec python3 -B tests/cli/killer_test.py; }
browser() { SWATHSPEC=$PWD/.build/release/swathspec /usr/bin/python3 -B tests/browser/overview_test.py; }

part "50 runs killed and completed" killer
part "overview in a browser" browser
part "Slurm job array" bash tests/slurm/run.sh .build/release/swathspec
part "independent search, 500 pairs" oracle
part "bare root" bash tests/bare_root.sh
part "benchmark" bash tests/bench/run.sh .build/release
part "inboxes of 1,000, 5,000 and 20,000" python3 -B tests/bench/inbox.py .build/release/swathspec
exit $status
