#include "output/paint_text.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <stdexcept>

namespace output {
namespace {

[[noreturn]] void malformed() { throw std::invalid_argument("text is not well-formed UTF-8"); }

/// Length of a sequence by its first byte, and the bits that byte carries.
struct Lead {
  std::size_t length = 0;
  char32_t bits = 0;
};

Lead read_lead(std::uint8_t byte) {
  if (byte < 0x80) return {1, byte};
  if (byte >= 0xC2 && byte <= 0xDF) return {2, byte & 0x1FU};
  if (byte >= 0xE0 && byte <= 0xEF) return {3, byte & 0x0FU};
  if (byte >= 0xF0 && byte <= 0xF4) return {4, byte & 0x07U};
  malformed();
}

void append_utf16(std::string& bytes, char32_t unit) {
  bytes += static_cast<char>(static_cast<std::uint8_t>(unit >> 8U));
  bytes += static_cast<char>(static_cast<std::uint8_t>(unit & 0xFFU));
}

}  // namespace

char32_t take_valid_character(std::string_view& text) {
  constexpr std::array<char32_t, 5> least{0, 0, 0x80, 0x800, 0x10000};
  const Lead lead = read_lead(static_cast<std::uint8_t>(text.front()));
  if (lead.length > text.size()) malformed();
  char32_t character = lead.bits;
  for (const char part : text.substr(1, lead.length - 1)) {
    const auto byte = static_cast<std::uint8_t>(part);
    if ((byte & 0xC0U) != 0x80U) malformed();
    character = (character << 6U) | (byte & 0x3FU);
  }
  const bool surrogate = character >= 0xD800 && character <= 0xDFFF;
  if (character < least.at(lead.length) || character > 0x10FFFF || surrogate) malformed();
  text.remove_prefix(lead.length);
  return character;
}

std::u32string decode_utf8(std::string_view text) {
  std::u32string characters;
  characters.reserve(text.size());
  while (!text.empty()) characters += take_valid_character(text);
  return characters;
}

std::string text_string(std::string_view text) {
  const std::u32string characters = decode_utf8(text);
  const auto forbidden = [](char32_t c) {
    return c < 0x20 || c == 0x7F || (c & 0xFFFEU) == 0xFFFE;
  };
  if (std::any_of(characters.begin(), characters.end(), forbidden)) {
    throw std::invalid_argument("control character in a title or other information text");
  }
  if (std::all_of(characters.begin(), characters.end(), [](char32_t c) { return c < 0x7F; })) {
    return std::string(text);
  }
  std::string bytes = "\xFE\xFF";
  for (const char32_t character : characters) {
    if (character < 0x10000) {
      append_utf16(bytes, character);
    } else {
      append_utf16(bytes, 0xD800 + ((character - 0x10000) >> 10U));
      append_utf16(bytes, 0xDC00 + ((character - 0x10000) & 0x3FFU));
    }
  }
  return bytes;
}

std::string hex4(char32_t value) {
  constexpr std::string_view digits = "0123456789ABCDEF";
  std::string text(4, '0');
  for (std::size_t i = 0; i < text.size(); ++i) {
    text[i] = digits[(value >> (12U - 4U * i)) & 0xFU];
  }
  return text;
}

}  // namespace output
