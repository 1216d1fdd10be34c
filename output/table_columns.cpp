#include "output/table_columns.h"

#include <algorithm>

#include "output/layout_context.h"

namespace output {
namespace {

constexpr double points_per_mm = 72 / 25.4;
constexpr double gutter = 5.5;      // pt, on both sides of a boundary between columns
constexpr double least_width = 18;  // pt, a narrower column holds no text
constexpr double least_share = 24;  // pt a share, before widths in mm are narrowed

struct Width {
  ColumnKind kind = ColumnKind::left;
  double fixed = 0;   ///< [pt]
  double shares = 0;  ///< of what the fixed ones leave
};

Width parse_width(std::string_view word) {
  constexpr std::string_view kinds = "lrcd";
  if (word.size() < 3 || word[1] != ':' || kinds.find(word[0]) == std::string_view::npos) {
    throw MarkupError("markup: malformed column of <table>: \"" + std::string(word) + "\"");
  }
  Width width;
  width.kind = static_cast<ColumnKind>(word[0]);
  std::string_view amount = word.substr(2);
  const bool star = amount.back() == '*';
  if (star) amount.remove_suffix(1);
  const double value = star && amount.empty() ? 1 : parse_number(amount, "width of a column");
  if (value <= 0) throw MarkupError("markup: width of a column is not positive");
  (star ? width.shares : width.fixed) = star ? value : value * points_per_mm;
  return width;
}

std::vector<Width> parse_widths(std::string_view text) {
  std::vector<Width> widths;
  while (true) {
    text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
    if (text.empty()) break;
    const std::size_t end = std::min(text.find(' '), text.size());
    widths.push_back(parse_width(text.substr(0, end)));
    text.remove_prefix(end);
  }
  if (widths.empty()) throw MarkupError("markup: <table> has no columns");
  return widths;
}

bool is_digit(char32_t c) { return c >= '0' && c <= '9'; }

/// Where the first number of the text is cut; `text.last` when it has no digit.
std::size_t find_cut(const std::vector<Glyph>& glyphs, Range text, bool& is_number) {
  is_number = false;
  for (std::size_t i = text.first; i < text.last; ++i) {
    const Glyph& glyph = glyphs[i];
    if (is_digit(glyph.character)) {
      is_number = true;
      continue;
    }
    const bool digit_follows = i + 1 < text.last && is_digit(glyphs[i + 1].character);
    const bool groups = digit_follows && (glyph.kind == GlyphKind::gap || glyph.character == ' ');
    if (is_number && !groups) return i;
  }
  return text.last;
}

}  // namespace

std::vector<TableColumn> parse_columns(std::string_view text, double x, double width) {
  const std::vector<Width> widths = parse_widths(text);
  double fixed = 0, shares = 0;
  for (const Width& one : widths) {
    fixed += one.fixed;
    shares += one.shares;
  }
  const double for_fixed = std::max(width - shares * least_share, width / 2);
  const double limit = shares > 0 ? for_fixed : width;
  const double scale = fixed > limit ? limit / fixed : 1;
  const double share = shares > 0 ? (width - fixed * scale) / shares : 0;
  std::vector<TableColumn> columns;
  for (const Width& one : widths) {
    const double wide = one.fixed * scale + one.shares * share;
    if (wide < least_width) throw MarkupError("markup: <table> has no room for its columns");
    const bool is_first = columns.empty(), is_last = columns.size() + 1 == widths.size();
    columns.push_back({one.kind, x + (is_first ? 0 : gutter), x + wide - (is_last ? 0 : gutter)});
    x += wide;
  }
  return columns;
}

void make_room(std::vector<TableColumn>& columns, const std::vector<double>& needs) {
  std::vector<double> spare;  // what a column has beyond its need; negative where it lacks
  for (std::size_t i = 0; i < columns.size(); ++i) {
    spare.push_back(columns[i].right - columns[i].left - needs[i]);
  }
  std::vector<double> moved(columns.size(), 0);
  for (std::size_t i = 0; i < columns.size(); ++i) {
    while (spare[i] < 0) {
      const auto giver = std::max_element(spare.begin(), spare.end());
      if (*giver <= 0) break;
      const double given = std::min(*giver, -spare[i]);
      *giver -= given;
      moved[static_cast<std::size_t>(giver - spare.begin())] -= given;
      spare[i] += given;
      moved[i] += given;
    }
  }
  double shift = 0;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    columns[i].left += shift;
    shift += moved[i];
    columns[i].right += shift;
  }
}

DecimalParts split_at_point(const TextFlow& flow, Range text) {
  DecimalParts parts;
  const std::size_t cut = find_cut(flow.glyphs(), text, parts.is_number);
  parts.before = flow.width({text.first, cut});
  parts.after = flow.width({cut, text.last});
  return parts;
}

}  // namespace output
