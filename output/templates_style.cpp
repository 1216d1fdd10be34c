#include "output/templates_style.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <optional>
#include <stdexcept>
#include <utility>
#include <vector>

#include "output/section_names.h"

namespace output {
namespace {

constexpr std::string_view blanks = " \t\r";

struct Number {
  std::string_view key;
  double PageStyle::*member;
};
constexpr std::array<Number, 11> numbers{{
    {"page.width", &PageStyle::page_width},
    {"page.height", &PageStyle::page_height},
    {"page.margin_left", &PageStyle::margin_left},
    {"page.margin_right", &PageStyle::margin_right},
    {"page.margin_top", &PageStyle::margin_top},
    {"page.margin_bottom", &PageStyle::margin_bottom},
    {"page.key_column", &PageStyle::key_column},
    {"page.key_gap", &PageStyle::key_gap},
    {"page.body_size", &PageStyle::body_size},
    {"page.leading", &PageStyle::leading},
    {"page.logo_height", &PageStyle::logo_height},
}};

/// Sizes of paper after ISO 216 and ANSI/ASME Y14.1 [pt].
struct Paper {
  std::string_view key;
  double width, height;
};
constexpr std::array<Paper, 2> paper{{{"A4", 595.276, 841.890}, {"Letter", 612, 792}}};

struct Tint {
  std::string_view key;
  Colour PageStyle::*member;
};
constexpr std::array<Tint, 3> tints{{
    {"colours.accent", &PageStyle::accent},
    {"colours.rule", &PageStyle::rule},
    {"colours.shade", &PageStyle::shade},
}};

constexpr std::array<std::string_view, 9> texts{
    "house.owner",      "house.creator", "house.approval",    "house.confidential", "house.legal",
    "house.price_days", "house.logo",    "document.sections", "numbers.decimal"};
/// Of them those that may be empty, and those that are a whole number.
constexpr std::array<std::string_view, 3> may_be_empty{"house.confidential", "house.legal",
                                                       "house.logo"};
constexpr std::size_t language_length = 2;  ///< "house.owner.de" is the owner's name in German
constexpr std::string_view days_key = "house.price_days";
constexpr int most_days = 3650;
/// Colours of drawings.
constexpr std::array<std::string_view, 17> drawing{
    "drawing.bar",          "drawing.outline", "drawing.dimension", "drawing.travel",
    "drawing.body",         "drawing.black",   "drawing.cyan",      "drawing.magenta",
    "drawing.yellow",       "drawing.white",   "drawing.red",       "drawing.green",
    "drawing.blue",         "drawing.orange",  "drawing.grey",      "drawing.light-cyan",
    "drawing.light-magenta"};

[[noreturn]] void fail(const std::string& file, int line, const std::string& message) {
  throw std::runtime_error(file + ":" + std::to_string(line) + ": " + message);
}

std::string_view trimmed(std::string_view text) {
  const std::size_t start = text.find_first_not_of(blanks);
  if (start == std::string_view::npos) return {};
  return text.substr(start, text.find_last_not_of(blanks) - start + 1);
}

std::optional<double> positive_number(std::string_view text) {
  double value = 0;
  const auto done = std::from_chars(text.data(), text.data() + text.size(), value);
  if (done.ec != std::errc{} || done.ptr != text.data() + text.size()) return std::nullopt;
  if (!std::isfinite(value) || value <= 0) return std::nullopt;
  return value;
}

bool is_days(std::string_view text) {
  int value = 0;
  const auto done = std::from_chars(text.data(), text.data() + text.size(), value);
  return done.ec == std::errc{} && done.ptr == text.data() + text.size() && value > 0 &&
         value <= most_days;
}

std::optional<Colour> colour(std::string_view text) {
  unsigned value = 0;
  const auto done = std::from_chars(text.data(), text.data() + text.size(), value, 16);
  if (text.size() != 6 || done.ec != std::errc{} || done.ptr != text.data() + text.size()) {
    return std::nullopt;
  }
  return Colour{static_cast<std::uint8_t>(value >> 16U),
                static_cast<std::uint8_t>((value >> 8U) & 0xFFU),
                static_cast<std::uint8_t>(value & 0xFFU)};
}

std::string single_blanks(std::string_view list) {
  std::string text;
  for (const char byte : list) {
    if (byte != ' ' || text.back() != ' ') text += byte;
  }
  return text;
}

template <class Table, class Key>
auto find_row(const Table& table, Key key) {
  return std::find_if(table.begin(), table.end(), [&](const auto& row) { return row.key == key; });
}

template <class List>
bool has(const List& list, std::string_view key) {
  return std::find(list.begin(), list.end(), key) != list.end();
}

class StyleReader {
 public:
  explicit StyleReader(const std::string& file) : file_(file) {}

  void take_line(int line, std::string_view text) {
    if (text.empty() || text.front() == '#') return;
    if (text.front() == '[') {
      if (text.back() != ']') fail(file_, line, "section without ]");
      section_ = text.substr(1, text.size() - 2);
      return;
    }
    const std::size_t equals = text.find('=');
    if (equals == std::string_view::npos) fail(file_, line, "no = after the key");
    const std::string key = section_ + "." + std::string(trimmed(text.substr(0, equals)));
    const std::string_view value = trimmed(text.substr(equals + 1));
    if (!seen_.emplace(key, line).second) fail(file_, line, key + " stands twice");
    if (!take_number(line, key, value) && !take_tint(line, key, value) &&
        !take_size(line, key, value) && !take_text(line, key, value)) {
      fail(file_, line, "unknown key " + key);
    }
  }

  Style finish(int lines) {
    for (const std::string_view key : drawing) require(key, lines);
    for (const std::string_view key : texts) require(key, lines);
    return std::move(style_);
  }

 private:
  void require(std::string_view key, int line) const {
    if (!style_.settings.contains(key)) fail(file_, line, std::string(key) + " is missing");
  }

  bool take_number(int line, std::string_view key, std::string_view value) {
    const auto* const row = find_row(numbers, key);
    if (row == numbers.end()) return false;
    const std::optional<double> read = positive_number(value);
    if (!read) fail(file_, line, std::string(key) + " wants a number above 0");
    style_.page.*(row->member) = *read;
    return true;
  }

  bool take_tint(int line, std::string_view key, std::string_view value) {
    const auto* const row = find_row(tints, key);
    if (row == tints.end()) return false;
    const std::optional<Colour> read = colour(value);
    if (!read) fail(file_, line, std::string(key) + " wants a colour RRGGBB");
    style_.page.*(row->member) = *read;
    return true;
  }

  bool take_size(int line, std::string_view key, std::string_view value) {
    if (key != "page.size") return false;
    const auto* const row = find_row(paper, value);
    if (row == paper.end()) fail(file_, line, "page.size wants A4 or Letter");
    style_.page.page_width = row->width;
    style_.page.page_height = row->height;
    return true;
  }

  /// What only one text wants.
  void check_text(int line, std::string_view key, std::string_view value) const {
    if (key == days_key && !is_days(value)) {
      fail(file_, line, std::string(key) + " wants a whole number of days from 1 to 3650");
    }
    if (key == "numbers.decimal" && value != "point" && value != "comma") {
      fail(file_, line, "numbers.decimal wants point or comma");
    }
    if (key == "document.sections") check_sections(line, value);
  }

  /// Every section once: an order leaves nothing out.
  void check_sections(int line, std::string_view list) const {
    std::vector<std::string_view> left(section_names.begin(), section_names.end());
    while (!list.empty()) {
      const std::size_t end = std::min(list.find(' '), list.size());
      const std::string_view name = list.substr(0, end);
      const auto found = std::find(left.begin(), left.end(), name);
      if (found == left.end()) {
        const bool known = has(section_names, name);
        fail(file_, line, (known ? "section twice: " : "unknown section: ") + std::string(name));
      }
      left.erase(found);
      list = trimmed(list.substr(end));
    }
    if (!left.empty()) fail(file_, line, "section left out: " + std::string(left.front()));
  }

  bool take_text(int line, const std::string& key, std::string_view value) {
    const bool is_drawing = has(drawing, key);
    const std::size_t last = key.rfind('.');
    const bool of_language = key.size() - last - 1 == language_length && key.find('.') != last;
    const std::string base = of_language ? key.substr(0, last) : key;
    if (!is_drawing && !has(texts, base)) return false;
    if (value.empty() && !has(may_be_empty, base)) fail(file_, line, key + " has no value");
    check_text(line, base, value);
    if (is_drawing && !colour(value)) fail(file_, line, key + " wants a colour RRGGBB");
    const bool is_list = base == "document.sections";
    style_.settings.emplace(key, is_list ? single_blanks(value) : std::string(value));
    return true;
  }

  const std::string& file_;
  std::string section_;
  std::map<std::string, int> seen_;
  Style style_;
};

}  // namespace

Style parse_style(const std::string& file, std::string_view text) {
  StyleReader reader(file);
  int line = 0;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    reader.take_line(++line, trimmed(text.substr(0, end)));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return reader.finish(line);
}

}  // namespace output
