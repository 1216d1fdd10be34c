#include "output/paint_content.h"

#include <array>
#include <charconv>
#include <cmath>

#include "output/paint_text.h"

namespace output {
namespace {

constexpr std::int64_t thousand = 1000, million = 1000000;

std::int64_t rounded(double value, std::int64_t scale) {
  return std::llround(value * static_cast<double>(scale));
}

}  // namespace

/// Decimal, without zeros at the end.
void Content::put(std::int64_t units, std::int64_t scale) {
  if (units < 0) bytes_ += '-';
  const std::int64_t size = units < 0 ? -units : units;
  std::array<char, 24> digits{};
  char* const end = std::to_chars(digits.data(), digits.data() + digits.size(), size / scale).ptr;
  bytes_.append(digits.data(), end);
  std::int64_t rest = size % scale;
  if (rest != 0) bytes_ += '.';
  while (rest != 0) {
    rest *= 10;
    bytes_ += static_cast<char>('0' + rest / scale);
    rest %= scale;
  }
  bytes_ += ' ';
}

Content& Content::number(double value) {
  put(rounded(value, thousand), thousand);
  return *this;
}

Content& Content::fine_number(double value) {
  put(rounded(value, million), million);
  return *this;
}

Content& Content::name(std::string_view name) {
  bytes_.append("/").append(name).append(" ");
  return *this;
}

/// A bare carriage return would be read as a line feed; brackets and backslash need their escape.
void Content::put_code_byte(std::uint8_t byte) {
  const auto sign = static_cast<char>(byte);
  if (sign == '\r') {
    bytes_ += "\\r";
    return;
  }
  if (sign == '(' || sign == ')' || sign == '\\') bytes_ += '\\';
  bytes_ += sign;
}

Content& Content::text(std::string_view utf8) {
  bytes_ += '(';
  while (!utf8.empty()) {
    const char32_t character = take_valid_character(utf8);
    put_code_byte(static_cast<std::uint8_t>(character >> 8U));
    put_code_byte(static_cast<std::uint8_t>(character & 0xFFU));
  }
  bytes_ += ") ";
  return *this;
}

Content& Content::lengths(const std::vector<double>& values) {
  bytes_ += '[';
  for (const double value : values) number(value);
  bytes_ += "] ";
  return *this;
}

void Content::operate(std::string_view operation) { bytes_.append(operation).append("\n"); }

}  // namespace output
