/// SHA-256, by OpenSSL.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace output {

using Digest = std::array<unsigned char, 32>;

Digest digest_of(std::string_view bytes);
/// As 64 lower-case hexadecimal digits, and back; nullopt for any other text.
std::string hex(const Digest& digest);
std::optional<Digest> digest_from(std::string_view text);

/// The digest as 64 lower-case hexadecimal digits.
std::string sha256(std::string_view bytes);

}  // namespace output
