#include "output/layout_text.h"

#include <algorithm>
#include <array>

#include "output/drawing_shapes.h"
#include "output/layout_keys.h"

namespace output {
namespace {

/// Look of a heading by its level; sizes as parts of the body size, room in pt.
struct HeadingLook {
  double size;
  double before, after;
  bool accent;
};
constexpr std::array<HeadingLook, 3> heading_looks{
    {{1.46, 21, 5, true}, {1.16, 14, 3.5, false}, {1.0, 10, 2.5, false}}};

constexpr std::size_t short_text = 6;  // lines

/// Widows and orphans: whether line `i` of `count` stands with the next.
bool stands_with_next(std::size_t i, std::size_t count) {
  return i + 1 < count && (i == 0 || i + 2 == count);
}

/// All lines of a text as one slice; yields its height.
double emit_block(LayoutContext& context, Range text, double x, double width, double size,
                  double pitch) {
  context.lines.clear();
  break_lines(context.flow, text, width, width, context.lines);
  double y = baseline(context.measurer.fonts(), size, pitch);
  for (const Line& line : context.lines) {
    emit_line(context.flow, line, x, y, context.story.items);
    y += pitch;
  }
  return pitch * static_cast<double>(context.lines.size());
}

/// The logo at the right end of the column, at the top of the slice that is open; yields its
/// height.
double emit_logo(LayoutContext& context, const Column& column, double width) {
  if (width <= 0) return 0;
  const double height = context.style.logo_height;
  context.story.items.emplace_back(
      Image{column.x + column.width - width, 0, width, height, context.style.logo});
  return height;
}

double logo_width(const PageStyle& style) {
  if (style.logo == nullptr) return 0;
  return style.logo_height * style.logo->width / style.logo->height;
}

void set_title_line(LayoutContext& context, std::string_view text, double size, Face face,
                    double logo) {
  constexpr double logo_gap = 12;  // pt
  if (text.empty()) return;
  const Column column = context.wide_column();
  context.flow.clear();
  context.flow.open();
  context.flow.append(text, {face, size, 0, {}, nullptr});
  const Range range = context.flow.close();
  context.begin_slice(Box::Kind::text, column).keep = true;
  const double width = column.width - (logo > 0 ? std::min(logo + logo_gap, column.width / 2) : 0);
  const double height = emit_block(context, range, column.x, width, size, size * 1.22);
  context.end_slice(std::max(height, emit_logo(context, column, logo)));
}

}  // namespace

InlineStyle body_style(const LayoutContext& context) {
  return {Face::text, context.sizes().body, 0, {}, nullptr};
}

void set_lines(LayoutContext& context, const Column& column, Range text, double size,
               const TextOptions& options) {
  const double pitch = context.pitch(size);
  const double base = baseline(context.measurer.fonts(), size, pitch);
  std::vector<Line>& lines = context.lines;
  lines.clear();
  break_lines(context.flow, text, column.width, column.width, lines);
  if (lines.empty()) return;
  const int keys = set_keys(context, options.keys, base);
  context.anchor_next(options.id);
  const bool whole = options.whole && lines.size() <= short_text;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    Slice& slice = context.begin_slice(Box::Kind::text, column);
    const bool last = i + 1 == lines.size();
    slice.keep = last ? options.keep : whole || stands_with_next(i, lines.size());
    if (i == 0) {
      slice.keys = keys;
      const Range marker = options.marker;
      emit_line(context.flow, {marker.first, marker.last, 0, false},
                column.x - options.marker_indent, base, context.story.items);
    }
    emit_line(context.flow, lines[i], column.x, base, context.story.items);
    context.end_slice(pitch);
  }
}

void set_paragraph(LayoutContext& context, const Column& column, std::span<const Node> content,
                   const InlineStyle& style, TextOptions options) {
  context.flow.open();
  context.flow.append(content, style, context.style.accent);
  const Range text = context.flow.close();
  if (text.first == text.last) {
    context.anchor_next(options.id);
    return;
  }
  // A text ending in a colon announces what follows.
  if (context.flow.glyphs()[text.last - 1].character == ':') options.keep = true;
  set_lines(context, column, text, style.size, options);
}

void set_heading(LayoutContext& context, const Column& column, const SectionEntry& entry) {
  const HeadingLook& look = heading_looks.at(static_cast<std::size_t>(entry.level - 1));
  const double size = look.size * context.style.body_size;
  const Colour colour = look.accent ? context.style.accent : Colour{};
  const InlineStyle style{Face::text_bold, size, 0, colour, nullptr};
  context.flow.clear();
  context.flow.open();
  context.flow.append(entry.number, style);
  const Range number = context.flow.close();
  context.flow.open();
  context.flow.append(entry.title, style);
  const Range title = context.flow.close();
  const double indent = std::max(context.flow.width(number) + 0.65 * size, 1.9 * size);
  const double pitch = size * 1.22;

  context.leave(look.before);
  context.anchor_next(entry.id);
  context.begin_slice(Box::Kind::heading, column).keep = true;
  emit_line(context.flow, {number.first, number.last, 0, false}, column.x,
            baseline(context.measurer.fonts(), size, pitch), context.story.items);
  const double height =
      emit_block(context, title, column.x + indent, column.width - indent, size, pitch);
  context.end_slice(std::max(height, pitch));
  context.leave(look.after);
  context.story.bookmarks.push_back({entry.level, entry.number + " " + entry.title, entry.id});
}

void set_title(LayoutContext& context, const Node& document) {
  const double body = context.style.body_size;
  set_title_line(context, document.get("title"), body * 2.1, Face::text_bold,
                 logo_width(context.style));
  context.leave(2);
  set_title_line(context, document.get("customer"), body * 1.15, Face::text, 0);
  if (context.story.slices.empty()) return;
  const Column column = context.wide_column();
  context.leave(6);
  context.begin_slice(Box::Kind::text, column).keep = true;
  context.story.items.emplace_back(filled(column.x, 0, column.width, 1.6, context.style.accent));
  context.end_slice(1.6);
  context.leave(12);
}

}  // namespace output
