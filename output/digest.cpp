#include "output/digest.h"

#include <openssl/evp.h>

#include <array>
#include <stdexcept>

namespace output {

std::string sha256(std::string_view bytes) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned int size = 0;
  if (EVP_Digest(bytes.data(), bytes.size(), digest.data(), &size, EVP_sha256(), nullptr) != 1) {
    throw std::runtime_error("the digest cannot be computed");
  }
  constexpr std::string_view digits = "0123456789abcdef";
  std::string text;
  for (unsigned int i = 0; i < size; ++i) {
    text += digits[digest.at(i) >> 4U];
    text += digits[digest.at(i) & 15U];
  }
  return text;
}

}  // namespace output
