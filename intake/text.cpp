#include "intake/text.h"

#include <algorithm>
#include <array>

namespace intake {
namespace {

constexpr std::size_t block = 1024;
constexpr std::size_t most_reported = 20;

unsigned char byte_at(std::string_view text, std::size_t i) {
  return static_cast<unsigned char>(text[i]);
}

bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

bool starts_code_point(char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }

std::string hex(unsigned value, int digits) {
  constexpr std::string_view figures = "0123456789ABCDEF";
  std::string out;
  for (int shift = 4 * (digits - 1); shift >= 0; shift -= 4) out += figures[(value >> shift) & 15U];
  return out;
}

bool turns_direction(char32_t c) {
  return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069) || c == 0x200E || c == 0x200F;
}

std::size_t length_of(unsigned char lead) {
  if (lead < 0x80) return 1;
  if (lead >= 0xC2 && lead < 0xE0) return 2;
  if (lead >= 0xE0 && lead < 0xF0) return 3;
  if (lead >= 0xF0 && lead < 0xF5) return 4;
  return 0;
}

}  // namespace

std::string_view trim(std::string_view text) {
  while (!text.empty() && is_blank(text.front())) text.remove_prefix(1);
  while (!text.empty() && is_blank(text.back())) text.remove_suffix(1);
  return text;
}

int code_points(std::string_view text) {
  return static_cast<int>(std::count_if(text.begin(), text.end(), starts_code_point));
}

CodePoint decode(std::string_view text, std::size_t offset) {
  const unsigned char lead = byte_at(text, offset);
  const std::size_t length = length_of(lead);
  if (length == 0 || offset + length > text.size()) return {};
  if (length == 1) return {lead, 1};
  char32_t value = lead & (0x7FU >> length);
  for (std::size_t i = 1; i < length; ++i) {
    if (starts_code_point(text[offset + i])) return {};
    value = (value << 6U) | (byte_at(text, offset + i) & 0x3FU);
  }
  constexpr std::array<char32_t, 5> least = {0, 0, 0x80, 0x800, 0x10000};
  const bool surrogate = value >= 0xD800 && value <= 0xDFFF;
  if (value < least[length] || value > 0x10FFFF || surrogate) return {};
  return {value, length};
}

bool is_control(char32_t c) {
  if (c == '\t' || c == '\n' || c == '\r') return false;
  return c < 0x20 || (c >= 0x7F && c <= 0x9F);
}

bool is_binary(std::string_view bytes) {
  // Text has no such bytes, packed data has them in one of ten; a stray few are named one by one.
  constexpr std::ptrdiff_t stray = 16, in_hundred = 50;
  const auto count = std::count_if(bytes.begin(), bytes.end(), [](char c) {
    return static_cast<unsigned char>(c) < 0x20 && c != '\t' && c != '\n' && c != '\r';
  });
  return count >= stray && count * in_hundred >= static_cast<std::ptrdiff_t>(bytes.size());
}

std::string shown(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const CodePoint c = decode(text, i);
    if (c.length == 0) {
      out += "\\x" + hex(byte_at(text, i), 2);
      ++i;
      continue;
    }
    if (is_control(c.value) || c.value == '\n' || c.value == '\r') {
      out += "\\x" + hex(static_cast<unsigned>(c.value), 2);
    } else if (turns_direction(c.value)) {
      out += "\\u{" + hex(static_cast<unsigned>(c.value), 4) + "}";
    } else {
      out += text.substr(i, c.length);
    }
    i += c.length;
  }
  return out;
}

SourceText::SourceText(std::string_view name, std::string_view text) : name_(name) {
  if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
  text_ = text;
  check_bytes(text);
  index();
}

void SourceText::check_bytes(std::string_view original) {
  for (std::size_t i = 0; i < original.size();) {
    const CodePoint c = decode(original, i);
    if (c.length == 0) {
      text_[i] = '?';
      const bool runs_on =
          !bad_bytes_.empty() && bad_bytes_.back().offset + bad_bytes_.back().length == i;
      if (runs_on) {
        ++bad_bytes_.back().length;
      } else if (bad_bytes_.size() < most_reported) {
        bad_bytes_.push_back({i, 1});
        bad_byte_texts_.push_back("\\x" + hex(byte_at(original, i), 2));
      }
      ++i;
      continue;
    }
    if (is_control(c.value) && controls_.size() < most_reported) controls_.push_back({i, c.length});
    i += c.length;
  }
  if (controls_.empty()) return;
  parsable_ = text_;
  for (std::size_t i = 0; i < text_.size();) {
    const CodePoint c = decode(text_, i);
    if (is_control(c.value)) std::fill_n(parsable_.begin() + static_cast<long>(i), c.length, '?');
    i += c.length;
  }
}

void SourceText::index() {
  line_starts_.push_back(0);
  std::size_t count = 0;
  for (std::size_t i = 0; i < text_.size(); ++i) {
    if (i % block == 0) counted_.push_back(count);
    if (starts_code_point(text_[i])) ++count;
    const bool lone_cr = text_[i] == '\r' && (i + 1 == text_.size() || text_[i + 1] != '\n');
    if (text_[i] == '\n' || lone_cr) line_starts_.push_back(i + 1);
  }
}

std::size_t SourceText::code_points_before(std::size_t offset) const {
  if (counted_.empty()) return 0;
  const std::size_t k = std::min(offset / block, counted_.size() - 1);
  const auto from = text_.begin() + static_cast<long>(k * block);
  const auto to = text_.begin() + static_cast<long>(std::min(offset, text_.size()));
  return counted_[k] + static_cast<std::size_t>(std::count_if(from, to, starts_code_point));
}

int SourceText::line_of(std::size_t offset) const {
  const auto next = std::upper_bound(line_starts_.begin(), line_starts_.end(), offset);
  return static_cast<int>(next - line_starts_.begin());
}

int SourceText::column_of(std::size_t offset) const {
  const std::size_t start = line_starts_[static_cast<std::size_t>(line_of(offset) - 1)];
  return static_cast<int>(code_points_before(offset) - code_points_before(start)) + 1;
}

std::size_t SourceText::offset_of(int line, int column) const {
  if (line < 1 || static_cast<std::size_t>(line) > line_starts_.size()) return text_.size();
  const std::size_t start = line_starts_[static_cast<std::size_t>(line - 1)];
  const std::size_t wanted = code_points_before(start) + static_cast<std::size_t>(column) - 1;
  const auto next = std::upper_bound(counted_.begin(), counted_.end(), wanted);
  const auto k = static_cast<std::size_t>(next - counted_.begin());
  std::size_t offset = std::max(start, k == 0 ? 0 : (k - 1) * block);
  std::size_t count = code_points_before(offset);
  for (; offset < text_.size(); ++offset) {
    if (starts_code_point(text_[offset]) && count++ == wanted) return offset;
  }
  return text_.size();
}

std::string_view SourceText::line(int number) const {
  if (number < 1 || static_cast<std::size_t>(number) > line_starts_.size()) return {};
  const auto k = static_cast<std::size_t>(number - 1);
  const std::size_t end = k + 1 < line_starts_.size() ? line_starts_[k + 1] : text_.size();
  std::string_view line = text().substr(line_starts_[k], end - line_starts_[k]);
  while (!line.empty() && (line.back() == '\n' || line.back() == '\r')) line.remove_suffix(1);
  return line;
}

}  // namespace intake
