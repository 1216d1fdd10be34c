#include <doctest/doctest.h>

#include <string>

#include "../fuzz/read_invariants.h"
#include "files.h"

TEST_CASE("every text of the fuzz corpus is read within the invariants") {
  int replayed = 0;
  for (const char* folder : {"fuzz/corpus/read", "faults", "faults/catalogues"}) {
    for (const auto& path : tests::files_in(folder)) {
      CAPTURE(path.filename().string());
      CHECK(tests::broken_invariant(tests::read_file(path)).empty());
      ++replayed;
    }
  }
  CHECK(replayed >= 90);
}
