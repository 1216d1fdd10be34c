/// SHA-256, by OpenSSL.
#pragma once

#include <array>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace output {

using Digest = std::array<unsigned char, 32>;

Digest digest_of(std::string_view bytes);

/// The digest of what comes piece by piece.
class Hasher {
 public:
  Hasher();
  ~Hasher();
  Hasher(const Hasher&) = delete;
  Hasher& operator=(const Hasher&) = delete;
  Hasher(Hasher&&) = delete;
  Hasher& operator=(Hasher&&) = delete;
  void add(std::string_view bytes);
  /// Of all pieces; nothing may be added after it.
  Digest finish();

 private:
  struct State;
  std::unique_ptr<State> state_;
};

/// As 64 lower-case hexadecimal digits, and back; nullopt for any other text.
std::string hex(const Digest& digest);
std::optional<Digest> digest_from(std::string_view text);

/// The digest as 64 lower-case hexadecimal digits.
std::string sha256(std::string_view bytes);

}  // namespace output
