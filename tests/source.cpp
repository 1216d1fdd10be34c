#include "tests/source.h"

namespace tests {

// Only this file knows the place, so that a compiler cache serves the others in any place.
std::string source(std::string_view path) { return std::string(SOURCE_DIR "/").append(path); }

}  // namespace tests
