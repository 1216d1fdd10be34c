#include "output/digest.h"

#include <openssl/evp.h>

#include <stdexcept>

namespace output {
namespace {

constexpr std::string_view digits = "0123456789abcdef";

void check(bool done) {
  if (!done) throw std::runtime_error("the digest cannot be computed");
}

}  // namespace

struct Hasher::State {
  std::unique_ptr<EVP_MD_CTX, void (*)(EVP_MD_CTX*)> context{EVP_MD_CTX_new(), &EVP_MD_CTX_free};
};

Hasher::Hasher() : state_(std::make_unique<State>()) {
  check(state_->context && EVP_DigestInit_ex(state_->context.get(), EVP_sha256(), nullptr) == 1);
}
Hasher::~Hasher() = default;

void Hasher::add(std::string_view bytes) {
  check(EVP_DigestUpdate(state_->context.get(), bytes.data(), bytes.size()) == 1);
}

Digest Hasher::finish() {
  Digest digest{};
  check(EVP_DigestFinal_ex(state_->context.get(), digest.data(), nullptr) == 1);
  return digest;
}

Digest digest_of(std::string_view bytes) {
  Digest digest{};
  unsigned int size = 0;
  check(EVP_Digest(bytes.data(), bytes.size(), digest.data(), &size, EVP_sha256(), nullptr) == 1);
  check(size == digest.size());
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
