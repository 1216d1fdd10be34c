/// Values for the templates, and text made safe for markup.
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>

#include "output/templates.h"

namespace output {
namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD";  // U+FFFD

std::uint8_t byte_at(std::string_view text, std::size_t at) {
  return static_cast<std::uint8_t>(text[at]);
}

/// Bytes a sequence has by its first byte, 0 when none starts so.
std::size_t sequence_length(std::uint8_t lead) {
  if (lead < 0x80) return 1;
  if (lead >= 0xC2 && lead <= 0xDF) return 2;
  if (lead >= 0xE0 && lead <= 0xEF) return 3;
  if (lead >= 0xF0 && lead <= 0xF4) return 4;
  return 0;
}

/// Whether the second byte keeps the sequence out of overlong forms, surrogates and beyond
/// U+10FFFF.
bool second_fits(std::uint8_t lead, std::uint8_t second) {
  if (lead == 0xE0) return second >= 0xA0;
  if (lead == 0xED) return second < 0xA0;
  if (lead == 0xF0) return second >= 0x90;
  if (lead == 0xF4) return second < 0x90;
  return true;
}

/// Length of the well-formed UTF-8 sequence at `at`, 0 when there is none.
std::size_t well_formed(std::string_view text, std::size_t at) {
  const std::size_t length = sequence_length(byte_at(text, at));
  if (length == 0 || at + length > text.size()) return 0;
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte_at(text, at + i) & 0xC0U) != 0x80U) return 0;
  }
  return length == 1 || second_fits(byte_at(text, at), byte_at(text, at + 1)) ? length : 0;
}

bool is_control(std::uint8_t byte) {
  return (byte < 0x20 && byte != '\t' && byte != '\n' && byte != '\r') || byte == 0x7F;
}

std::string hexadecimal(std::uint8_t byte) {
  constexpr std::string_view digits = "0123456789abcdef";
  return {'\\', 'x', digits[byte >> 4U], digits[byte & 0x0FU]};
}

std::string_view reference(char byte) {
  switch (byte) {
    case '&':
      return "&amp;";
    case '<':
      return "&lt;";
    case '>':
      return "&gt;";
    case '"':
      return "&quot;";
    case '\'':
      return "&#39;";
    default:
      return {};
  }
}

}  // namespace

std::string printable(std::string_view text) {
  std::string safe;
  safe.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = well_formed(text, at);
    if (length == 0) {
      safe += replacement;
    } else if (is_control(byte_at(text, at))) {
      safe += hexadecimal(byte_at(text, at));
    } else {
      safe += text.substr(at, length);
    }
    at += length == 0 ? 1 : length;
  }
  return safe;
}

std::string escaped(std::string_view text) {
  std::string safe;
  for (const char byte : printable(text)) {
    const std::string_view name = reference(byte);
    if (name.empty()) {
      safe += byte;
    } else {
      safe += name;
    }
  }
  return safe;
}

void Values::set(std::string_view name, std::string_view text) {
  texts_.insert_or_assign(std::string(name), printable(text));
}

void Values::set_markup(std::string_view name, std::string markup) {
  markups_.insert_or_assign(std::string(name), std::move(markup));
}

Values& Values::add(std::string_view name) {
  auto& repetitions = sections_[std::string(name)];
  repetitions.push_back(std::make_unique<Values>());
  return *repetitions.back();
}

}  // namespace output
