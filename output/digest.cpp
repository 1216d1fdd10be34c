#include "output/digest.h"

#include <openssl/evp.h>

#include <stdexcept>

namespace output {
namespace {

constexpr std::string_view digits = "0123456789abcdef";

}  // namespace

Digest digest_of(std::string_view bytes) {
  Digest digest{};
  unsigned int size = 0;
  if (EVP_Digest(bytes.data(), bytes.size(), digest.data(), &size, EVP_sha256(), nullptr) != 1 ||
      size != digest.size()) {
    throw std::runtime_error("the digest cannot be computed");
  }
  return digest;
}

std::string hex(const Digest& digest) {
  std::string text;
  text.reserve(2 * digest.size());
  for (const unsigned char byte : digest) {
    text += digits[byte >> 4U];
    text += digits[byte & 15U];
  }
  return text;
}

std::optional<Digest> digest_from(std::string_view text) {
  Digest digest{};
  if (text.size() != 2 * digest.size()) return std::nullopt;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const std::size_t value = digits.find(text[i]);
    if (value == std::string_view::npos) return std::nullopt;
    unsigned char& byte = digest.at(i / 2);
    byte = static_cast<unsigned char>(unsigned{byte} * 16 + static_cast<unsigned>(value));
  }
  return digest;
}

std::string sha256(std::string_view bytes) { return hex(digest_of(bytes)); }

}  // namespace output
