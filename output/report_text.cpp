#include "output/report_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>
#include <utility>

namespace output {
namespace {

bool is_continuation(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; }

std::string hex_escape(unsigned value) {
  constexpr std::string_view digits = "0123456789ABCDEF";
  return {'\\', 'x', digits[value >> 4U], digits[value & 15U]};
}

/// The character a reference like `amp` or `#x41` stands for (ASCII ones); empty when unknown.
std::string referenced(std::string_view name) {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 5> names{
      {{"amp", "&"}, {"lt", "<"}, {"gt", ">"}, {"quot", "\""}, {"apos", "'"}}};
  for (const auto& [key, text] : names) {
    if (key == name) return std::string(text);
  }
  if (name.empty() || name.front() != '#') return {};
  const bool hex = name.size() > 1 && name[1] == 'x';
  const std::string_view digits = name.substr(hex ? 2 : 1);
  unsigned value = 0;
  std::from_chars(digits.data(), digits.data() + digits.size(), value, hex ? 16 : 10);
  return value > 0 && value < 0x80 ? std::string(1, static_cast<char>(value)) : std::string();
}

/// How much of a word to set on a line with `room`: all of it where it fits, else up to the last
/// sign after which it may break, else as much as fits. Bytes; `room` at least 1.
std::size_t piece_of(std::string_view word, std::size_t room) {
  std::size_t bytes = 0, breakable = 0, used = 0;
  while (bytes < word.size() && used < room) {
    const char c = word[bytes++];
    while (bytes < word.size() && is_continuation(word[bytes])) ++bytes;
    ++used;
    if (std::string_view(",;+/)").find(c) != std::string_view::npos) breakable = bytes;
  }
  return bytes == word.size() || breakable == 0 ? bytes : breakable;
}

std::string padded(std::string text, std::size_t width, bool right) {
  const std::size_t own = width_of(text);
  return own < width ? text.insert(right ? 0 : text.size(), width - own, ' ') : text;
}

std::vector<std::size_t> column_widths(const std::vector<std::vector<std::string>>& rows) {
  std::vector<std::size_t> widths;
  for (const auto& row : rows) {
    widths.resize(std::max(widths.size(), row.size()));
    for (std::size_t i = 0; i < row.size(); ++i) {
      widths[i] = std::max(widths[i], width_of(row[i]));
    }
  }
  return widths;
}

}  // namespace

std::size_t width_of(std::string_view text) {
  return text.size() -
         static_cast<std::size_t>(std::count_if(text.begin(), text.end(), is_continuation));
}

std::string terminal_safe(std::string_view text) {
  std::string shown;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    const bool c1 =
        byte == 0xC2 && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) < 0xA0;
    if (byte < 0x20 || byte == 0x7F) {
      shown += hex_escape(byte);
    } else if (c1) {
      shown += hex_escape(static_cast<unsigned char>(text[++i]));
    } else {
      shown += text[i];
    }
  }
  return shown;
}

std::string without_markup(std::string_view markup) {
  std::string text;
  for (std::size_t i = 0; i < markup.size(); ++i) {
    const char c = markup[i];
    const bool marked = c == '<' || c == '&';
    const std::size_t end = marked ? markup.find(c == '<' ? '>' : ';', i) : std::string_view::npos;
    if (end == std::string_view::npos) {
      text += c;
      continue;
    }
    if (c == '&') text += referenced(markup.substr(i + 1, end - i - 1));
    i = end;
  }
  return text;
}

std::string wrapped(std::string_view text, std::size_t indent, std::size_t width) {
  const std::string margin(indent, ' ');
  const std::size_t line = std::max(width, indent + 1) - indent;
  std::string result = margin;
  std::size_t used = 0;
  while (true) {
    text.remove_prefix(std::min(text.find_first_not_of(" \n"), text.size()));
    if (text.empty()) return result + "\n";
    const std::string_view word = text.substr(0, text.find_first_of(" \n"));
    if (used != 0 && used + 1 + width_of(word) > line) {
      result += "\n" + margin;
      used = 0;
    }
    const std::string_view piece = word.substr(0, piece_of(word, line));
    result.append(used == 0 ? "" : " ").append(piece);
    used += width_of(piece) + (used == 0 ? 0 : 1);
    if (piece.size() < word.size()) used = line;  // the rest goes on the next line
    text.remove_prefix(piece.size());
  }
}

std::string columns(const std::vector<std::vector<std::string>>& rows,
                    const std::vector<std::size_t>& right) {
  const std::vector<std::size_t> widths = column_widths(rows);
  std::string text;
  for (const auto& row : rows) {
    std::string line;
    for (std::size_t i = 0; i + 1 < row.size(); ++i) {
      const bool to_right = std::find(right.begin(), right.end(), i) != right.end();
      line += padded(row[i], widths[i], to_right) + "  ";
    }
    const std::string last = wrapped(row.empty() ? "" : row.back(), width_of(line));
    line += last.substr(std::min(width_of(line), last.size()));
    while (line.size() > 1 && line[line.size() - 2] == ' ') line.erase(line.size() - 2, 1);
    text += line;
  }
  return text;
}

}  // namespace output
