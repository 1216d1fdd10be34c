/// The program's version, set by the build.
#pragma once

#include <string_view>

namespace output {

inline constexpr std::string_view version = SWATHSPEC_VERSION;

}  // namespace output
