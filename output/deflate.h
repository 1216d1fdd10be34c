/// Compression, by libdeflate, which is included in deflate.cpp and nowhere else.
#pragma once

#include <string>
#include <string_view>

namespace output {

/// The bytes packed as FlateDecode takes them (RFC 1950); equal bytes give equal results.
std::string deflated(std::string_view bytes);

}  // namespace output
