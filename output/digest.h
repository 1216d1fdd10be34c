/// SHA-256, by OpenSSL.
#pragma once

#include <string>
#include <string_view>

namespace output {

/// The digest as 64 lower-case hexadecimal digits.
std::string sha256(std::string_view bytes);

}  // namespace output
