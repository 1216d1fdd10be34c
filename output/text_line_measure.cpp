#include "output/text_line_measure.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace output {
namespace {

constexpr std::size_t near_count = 0x400;  // Latin to Greek: nearly all text
constexpr char32_t replacement = 0xFFFD;

/// Length of a sequence from its first byte; 0 when no sequence begins so.
std::size_t sequence_length(unsigned char first) {
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first <= 0xDF) return 2;
  if (first >= 0xE0 && first <= 0xEF) return 3;
  if (first >= 0xF0 && first <= 0xF4) return 4;
  return 0;
}

/// Shortest form only, no surrogates, nothing beyond Unicode.
bool is_scalar(char32_t character, std::size_t length) {
  constexpr std::array<char32_t, 5> least{0, 0, 0x80, 0x800, 0x10000};
  const bool surrogate = character >= 0xD800 && character <= 0xDFFF;
  return character >= least.at(length) && character <= 0x10FFFF && !surrogate;
}

}  // namespace

Measurer::Measurer(const Fonts& fonts, std::vector<char32_t>& unprintable)
    : fonts_(fonts),
      unprintable_(unprintable),
      near_(near_count * face_count),
      near_known_(near_count * face_count) {}

Metrics Measurer::of(Face wanted, char32_t character) {
  const auto row = static_cast<std::size_t>(wanted);
  if (character < near_count) {
    const std::size_t at = row * near_count + character;
    if (!near_known_[at]) {
      near_[at] = look_up(wanted, character);
      near_known_[at] = true;
    }
    return near_[at];
  }
  const auto key = static_cast<std::uint32_t>(character) << 3U | static_cast<std::uint32_t>(row);
  const auto found = far_.find(key);
  if (found != far_.end()) return found->second;
  return far_.emplace(key, look_up(wanted, character)).first->second;
}

Metrics Measurer::look_up(Face wanted, char32_t character) const {
  const std::optional<Face> face = fonts_.pick(wanted, character);
  if (!face) return {};
  return {fonts_.advance(*face, character), *face, true};
}

void Measurer::report(char32_t character) {
  if (reported_.insert(character).second) unprintable_.push_back(character);
}

char32_t take_character(std::string_view& utf8) {
  const auto first = static_cast<unsigned char>(utf8.front());
  const std::size_t length = sequence_length(first);
  if (length == 1 || length == 0 || utf8.size() < length) {
    utf8.remove_prefix(1);
    return length == 1 ? first : replacement;
  }
  char32_t character = first & (0xFFU >> (length + 1));
  for (std::size_t i = 1; i < length; ++i) {
    const auto byte = static_cast<unsigned char>(utf8[i]);
    if ((byte & 0xC0U) != 0x80U) {
      utf8.remove_prefix(1);
      return replacement;
    }
    character = character << 6U | (byte & 0x3FU);
  }
  if (!is_scalar(character, length)) {
    utf8.remove_prefix(1);
    return replacement;
  }
  utf8.remove_prefix(length);
  return character;
}

void append_utf8(std::string& text, char32_t character) {
  const auto put = [&text](char32_t byte) { text.push_back(static_cast<char>(byte)); };
  if (character < 0x80) {
    put(character);
    return;
  }
  if (character < 0x800) {
    put(0xC0U | character >> 6U);
  } else {
    if (character < 0x10000) {
      put(0xE0U | character >> 12U);
    } else {
      put(0xF0U | character >> 18U);
      put(0x80U | (character >> 12U & 0x3FU));
    }
    put(0x80U | (character >> 6U & 0x3FU));
  }
  put(0x80U | (character & 0x3FU));
}

std::string code_point_mark(char32_t character) {
  std::array<char, 8> digits{};
  char* const end = std::to_chars(digits.data(), digits.data() + digits.size(),
                                  static_cast<std::uint32_t>(character), 16)
                        .ptr;
  std::string hex(digits.data(), end);
  std::transform(hex.begin(), hex.end(), hex.begin(), [](char digit) {
    return digit >= 'a' ? static_cast<char>(digit - 'a' + 'A') : digit;
  });
  std::string mark("[U+");
  if (hex.size() < 4) mark.append(4 - hex.size(), '0');
  return mark.append(hex).append("]");
}

}  // namespace output
