#include "output/drawing.h"

#include <algorithm>

#include "output/drawing_elements.h"
#include "output/layout_keys.h"
#include "output/layout_text.h"

namespace output {
namespace {

constexpr double points_per_mm = 72 / 25.4;
constexpr double caption_room = 5;  // pt, between drawing and caption
constexpr double room = 10;         // above and below the figure

const Node& drawing_of(const Node& figure) {
  if (figure.children.size() != 1) throw MarkupError("markup: <figure> wants one <drawing>");
  return figure.children.front();
}

/// The caption's lines, in the context's flow and lines.
void break_caption(LayoutContext& context, const Column& column, const Node& figure) {
  context.flow.clear();
  context.flow.open();
  const InlineStyle style{Face::text, context.sizes().caption, 0, {}, nullptr};
  context.flow.append(figure.get("caption"), style);
  if (column.wide) append_keys(context, figure.get("key"));
  context.lines.clear();
  break_lines(context.flow, context.flow.close(), column.width, column.width, context.lines);
}

/// Emits the caption below `top`; yields the whole height.
double emit_caption(LayoutContext& context, const Column& column, double top) {
  if (context.lines.empty()) return top;
  const double size = context.sizes().caption;
  const double pitch = context.pitch(size);
  double y = top + caption_room + baseline(context.measurer.fonts(), size, pitch);
  for (const Line& line : context.lines) {
    emit_line(context.flow, line, column.x, y, context.story.items);
    y += pitch;
  }
  return top + caption_room + pitch * static_cast<double>(context.lines.size());
}

}  // namespace

void set_figure(LayoutContext& context, const Column& column, const Node& figure) {
  const bool wide = column.wide || flag_of(figure, "wide");
  const Column own = wide ? context.wide_column() : column;
  const Node& drawing = drawing_of(figure);
  const double width = number_of(drawing, "width") * points_per_mm;
  const double height = number_of(drawing, "height") * points_per_mm;
  if (width <= 0 || height <= 0) throw MarkupError("markup: <drawing> without extent");

  context.leave(room);
  const double size = context.sizes().caption;
  const double base = baseline(context.measurer.fonts(), size, context.pitch(size));
  context.flow.clear();
  const int keys = wide ? -1 : set_keys(context, figure.get("key"), base);
  break_caption(context, own, figure);
  const double caption =
      caption_room + context.pitch(size) * static_cast<double>(context.lines.size());
  const double most = context.room_beside_kept() - caption;
  const double scale = std::min({1.0, own.width / width, most / height});
  context.anchor_next(figure.get("id"));
  context.begin_slice(Box::Kind::figure, own).keys = keys;
  const double bottom = emit_caption(context, own, height * scale);
  emit_drawing(context, drawing, {own.x, own.width, points_per_mm * scale, scale});
  context.end_slice(bottom);
  context.leave(room);
}

}  // namespace output
