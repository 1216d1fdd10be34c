#include "output/layout_note.h"

#include <array>

#include "output/drawing_shapes.h"
#include "output/layout_blocks.h"

namespace output {
namespace {

constexpr double pad = 6;         // pt, above and below the text
constexpr double sign_left = 10;  // of the sign's left edge from the note's
constexpr double sign_size = 12;
constexpr double text_left = 30;
constexpr double text_right = 8;
constexpr double room = 8;           // above and below the note
constexpr double whole_share = 0.4;  // of a page; a lower note is kept in one piece

enum class Sign : std::uint8_t { letter_in_circle, open_triangle, full_triangle };

struct NoteLook {
  std::string_view kind;
  double bar;
  Colour colour;
  Sign sign;
};
constexpr std::array<NoteLook, 3> looks{{{"info", 2, {0x00, 0x72, 0xB2}, Sign::letter_in_circle},
                                         {"caution", 3.5, {0xE6, 0x9F, 0x00}, Sign::open_triangle},
                                         {"warning", 5, {0xD5, 0x5E, 0x00}, Sign::full_triangle}}};

const NoteLook& look_of(const Node& note) {
  const std::string_view kind = note.get("kind", "info");
  for (const NoteLook& look : looks) {
    if (look.kind == kind) return look;
  }
  throw MarkupError("markup: unknown kind of <note>: " + std::string(kind));
}

/// An upright stroke and a dot: the dot above makes an i, below an exclamation mark.
void add_mark(std::vector<Item>& items, double x, double top, double height, bool dot_above,
              Colour colour) {
  const double dot = height * 0.16;
  const double stroke = height - 3.2 * dot;
  const double stroke_top = dot_above ? top + height - stroke : top;
  const double dot_centre = dot_above ? top + dot : top + height - dot;
  items.emplace_back(filled(x - 0.8 * dot, stroke_top, 1.6 * dot, stroke, colour));
  Path point = circle({x, dot_centre}, dot);
  point.fill = colour;
  items.emplace_back(point);
}

void add_circle_sign(std::vector<Item>& items, double x, double y, Colour colour) {
  Path disc = circle({x + sign_size / 2, y + sign_size / 2}, sign_size / 2 - 0.5);
  disc.fill = Colour{0xFF, 0xFF, 0xFF};
  disc.stroke = Stroke{colour, 1, {}};
  items.emplace_back(disc);
  add_mark(items, x + sign_size / 2, y + 0.22 * sign_size, 0.56 * sign_size, true, colour);
}

void add_triangle_sign(std::vector<Item>& items, double x, double y, const NoteLook& look) {
  const bool full = look.sign == Sign::full_triangle;
  const Colour dark{};
  Path triangle = outline({{x + sign_size / 2, y + 0.6},
                           {x + sign_size, y + sign_size - 0.6},
                           {x, y + sign_size - 0.6}},
                          true);
  triangle.fill = full ? look.colour : Colour{0xFF, 0xFF, 0xFF};
  triangle.stroke = Stroke{full ? look.colour : dark, 0.9, {}};
  items.emplace_back(triangle);
  add_mark(items, x + sign_size / 2, y + 0.36 * sign_size, 0.48 * sign_size, false,
           full ? Colour{0xFF, 0xFF, 0xFF} : dark);
}

void add_sign(LayoutContext& context, double x, double y, const NoteLook& look) {
  std::vector<Item>& items = context.story.items;
  if (look.sign == Sign::letter_in_circle) {
    add_circle_sign(items, x, y, look.colour);
  } else {
    add_triangle_sign(items, x, y, look);
  }
}

/// The room within the ground above the first and below the last line.
void set_pad(LayoutContext& context, const Column& column, const NoteLook* sign) {
  Slice& slice = context.begin_slice(Box::Kind::text, column);
  if (sign == nullptr) slice.before = 0;
  slice.keep = sign != nullptr;
  if (sign != nullptr) add_sign(context, column.x + sign_left, pad - 0.5, *sign);
  context.end_slice(pad);
}

void set_head_word(LayoutContext& context, const Column& column, std::string_view title,
                   TextOptions& options) {
  context.flow.open();
  InlineStyle style = body_style(context);
  style.face = Face::text_bold;
  context.flow.append(title, style);
  const Range text = context.flow.close();
  options.keep = true;
  set_lines(context, column, text, style.size, options);
  if (text.first != text.last) options = {};
  options.keep = false;
}

/// Keeps the slices from `first` on together, unless they are too high.
void hold_together(LayoutContext& context, std::size_t first) {
  std::vector<Slice>& slices = context.story.slices;
  double height = 0;
  for (std::size_t i = first; i < slices.size(); ++i) height += slices[i].before + slices[i].height;
  const bool whole = height <= whole_share * context.body_height();
  for (std::size_t i = first; i + 1 < slices.size(); ++i) {
    slices[i].keep = slices[i].keep || whole || i + 2 == slices.size();
  }
}

}  // namespace

void set_note(LayoutContext& context, const Column& column, const Node& note) {
  const NoteLook& look = look_of(note);
  Column outer = column;
  outer.frame = static_cast<int>(context.story.frames.size());
  context.story.frames.push_back(
      {column.x, column.width, look.bar, look.colour, context.style.shade});
  Column inner = outer;
  inner.x += text_left;
  inner.width -= text_left + text_right;

  context.leave(room);
  context.anchor_next(note.get("id"));
  const std::size_t first = context.story.slices.size();
  set_pad(context, outer, &look);
  TextOptions options;
  options.keys = note.get("key");
  set_head_word(context, inner, note.get("title"), options);
  set_mixed(context, inner, note, options);
  set_pad(context, outer, nullptr);
  hold_together(context, first);
  context.leave(room);
}

}  // namespace output
