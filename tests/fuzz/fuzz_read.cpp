/// libFuzzer target: any bytes as a request and as a catalogue. Build with clang and
/// -fsanitize=fuzzer,address,undefined; start from tests/fuzz/corpus/read and tests/faults.
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

#include "read_invariants.h"

// NOLINTNEXTLINE(readability-identifier-naming): the name libFuzzer calls
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  // NOLINTNEXTLINE(cppcoreguidelines-pro-type-reinterpret-cast): bytes as text
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const std::string broken = tests::broken_invariant(text);
  if (broken.empty()) return 0;
  std::fputs(broken.c_str(), stderr);
  std::abort();
}
