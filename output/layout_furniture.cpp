#include "output/layout_furniture.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "output/drawing_shapes.h"

namespace output {

/// One cell with its place in its row.
struct TitleBlock::Cell {
  std::string name, label;
  const Node* node = nullptr;
  double span = 1;
  double x = 0, width = 0;  ///< [pt]
};

namespace {

constexpr double row_span = 24;      // shares of a whole row
constexpr double row_height = 19.5;  // pt
constexpr double foot = 22;          // between block and lower edge of the sheet
constexpr double pad = 3;            // left and right within a cell
constexpr double label_size = 5.2;
constexpr double note_size = 6;
constexpr double note_base = 7.5;  // below the block
constexpr double note_room = 10;
constexpr std::array<double, 4> value_sizes{7.8, 7.2, 6.6, 5.8};  // the first that fits one line

constexpr double label_base = 6.6;  // baselines from the cell's upper edge
constexpr double value_base = 15.6;
constexpr double two_line_rise = 3.4;  // of the first of two lines
constexpr double slack = 0.01;         // of a row's shares
constexpr double room = 14;            // above the block

struct Span {
  std::string_view name;
  double span;
};
constexpr std::array<Span, 11> spans{{{"owner", 5},
                                      {"title", 10},
                                      {"status", 4},
                                      {"number", 5},
                                      {"type", 6},
                                      {"creator", 4},
                                      {"approval", 4},
                                      {"date", 3},
                                      {"revision", 3},
                                      {"language", 2},
                                      {"sheet", 2}}};

double default_span(std::string_view name) {
  const auto* const found =
      std::find_if(spans.begin(), spans.end(), [name](const Span& s) { return s.name == name; });
  return found == spans.end() ? 4 : found->span;
}

const Node* find_block(const Node& document) {
  const auto found = std::find_if(document.children.begin(), document.children.end(),
                                  [](const Node& child) { return child.name == "titleblock"; });
  return found == document.children.end() ? nullptr : &*found;
}

double text_width(Measurer& measurer, std::string_view text, Face face, double size) {
  double width = 0;
  while (!text.empty()) {
    width += measurer.of(face, take_character(text)).advance * size / 1000;
  }
  return width;
}

}  // namespace

/// The cells in rows, each as wide as its share of the row.
std::vector<TitleBlock::Row> TitleBlock::read_rows(const Node& document) const {
  std::vector<Row> rows;
  const Node* const block = find_block(document);
  if (block == nullptr) return rows;
  double used = row_span;
  for (const Node& node : block->children) {
    Cell cell = read_cell(node);
    if (used + cell.span > row_span + slack) {
      rows.emplace_back();
      used = 0;
    }
    used += cell.span;
    rows.back().push_back(std::move(cell));
  }
  for (Row& row : rows) stretch(row);
  return rows;
}

TitleBlock::Cell TitleBlock::read_cell(const Node& node) {
  Cell cell;
  cell.name = node.get("name");
  if (cell.name.empty()) throw MarkupError("markup: <cell> of <titleblock> without a name");
  cell.label = node.get("label");
  cell.node = &node;
  cell.span = number_of(node, "span", default_span(cell.name));
  if (cell.span < 1 || cell.span > row_span) {
    throw MarkupError("markup: span of a <titleblock> cell is not within 1 and 24");
  }
  return cell;
}

void TitleBlock::stretch(Row& row) const {
  double sum = 0;
  for (const Cell& cell : row) sum += cell.span;
  double x = left_;
  for (Cell& cell : row) {
    cell.x = x;
    cell.width = width_ * cell.span / sum;
    x += cell.width;
  }
}

TitleBlock::TitleBlock(LayoutContext& context, const Node& document) : context_(context) {
  const PageStyle& style = context.style;
  left_ = style.margin_left;
  width_ = context.page_width() - style.margin_left - style.margin_right;
  sheet_.face = Face::text;
  sheet_.size = value_sizes[0];
  const std::vector<Row> rows = read_rows(document);
  height_ = row_height * static_cast<double>(std::max<std::size_t>(rows.size(), 1));
  const Node* const node = find_block(document);
  const std::string_view note = node == nullptr ? std::string_view() : node->get("note");
  note_room_ = note.empty() ? 0 : note_room;
  top_ = context.page_height() - foot - note_room_ - height_;
  (context.landscape ? context.landscape_bottom : context.body_bottom) =
      std::min(context.page_height() - style.margin_bottom, top_ - room);
  double y = top_;
  for (const Row& row : rows) {
    for (const Cell& cell : row) set_cell(cell, y);
    y += row_height;
  }
  set_note(note);
  if (!rows.empty()) {
    draw_grid(rows);
  } else {
    sheet_.y = top_ + value_base;
    sheet_right_ = left_ + width_;
  }
}

void TitleBlock::set_cell(const Cell& cell, double y) {
  set_label(cell, y);
  if (cell.name == "sheet") {
    sheet_.x = cell.x + pad;
    sheet_.y = y + value_base;
  } else {
    set_value(cell, y);
  }
}

/// On one line in the largest size that fits, else on two in the smallest, the second cut short
/// when that is not enough.
void TitleBlock::set_value(const Cell& cell, double y) {
  const bool bold = cell.name == "status" || cell.name == "title";
  InlineStyle style{bold ? Face::text_bold : Face::text, 0, 0, {}, nullptr};
  TextFlow& flow = context_.flow;
  std::vector<Line>& lines = context_.lines;
  const double width = cell.width - 2 * pad;
  for (const double size : value_sizes) {
    style.size = size;
    flow.clear();
    flow.open();
    flow.append(cell.node->children, style, style.colour);
    lines.clear();
    break_lines(flow, flow.close(), width, width, lines);
    if (lines.size() <= 1) break;
  }
  if (lines.empty()) return;
  const double x = cell.x + pad;
  const double rise = lines.size() > 1 ? two_line_rise : 0;
  emit_line(flow, lines[0], x, y + value_base - rise, items_);
  if (lines.size() == 1) return;
  const double second = y + value_base - rise + style.size;
  if (lines.size() == 2) {
    emit_line(flow, lines[1], x, second, items_);
  } else {
    emit_cut({lines[1].first, lines.back().last}, style, x, second, width);
  }
}

/// As much of the text as fits before an ellipsis.
void TitleBlock::emit_cut(Range text, const InlineStyle& style, double x, double y, double width) {
  TextFlow& flow = context_.flow;
  const double dots = text_width(context_.measurer, "…", style.face, style.size);
  Line line{text.first, text.first, 0, false};
  while (line.last < text.last && line.width + flow.glyphs()[line.last].width + dots <= width) {
    line.width += flow.glyphs()[line.last++].width;
  }
  emit_line(flow, line, x, y, items_);
  flow.open();
  flow.append("…", style);
  const Range mark = flow.close();
  emit_line(flow, {mark.first, mark.last, 0, false}, x + line.width, y, items_);
}

/// The small word over a value: its first line.
void TitleBlock::set_label(const Cell& cell, double y) {
  TextFlow& flow = context_.flow;
  const double width = cell.width - 2 * pad;
  flow.clear();
  flow.open();
  flow.append(cell.label, {Face::text, label_size, 0, {}, nullptr});
  context_.lines.clear();
  break_lines(flow, flow.close(), width, width, context_.lines);
  if (context_.lines.empty()) return;
  emit_line(flow, context_.lines[0], cell.x + pad, y + label_base, items_);
}

/// The line below the block.
void TitleBlock::set_note(std::string_view note) {
  if (note.empty()) return;
  const InlineStyle style{Face::text, note_size, 0, {}, nullptr};
  TextFlow& flow = context_.flow;
  flow.clear();
  flow.open();
  flow.append(note, style);
  const Range text = flow.close();
  const double y = top_ + height_ + note_base;
  if (flow.width(text) > width_) {
    emit_cut(text, style, left_, y, width_);
  } else {
    emit_line(flow, {text.first, text.last, 0, false}, left_, y, items_);
  }
}

void TitleBlock::draw_grid(const std::vector<Row>& rows) {
  const Colour colour = context_.style.rule;
  double y = top_;
  for (const Row& row : rows) {
    for (std::size_t i = 1; i < row.size(); ++i) {
      items_.emplace_back(ruled({row[i].x, y}, {row[i].x, y + row_height}, colour, 0.35));
    }
    if (y > top_) items_.emplace_back(ruled({left_, y}, {left_ + width_, y}, colour, 0.35));
    y += row_height;
  }
  Path border = rectangle(left_, top_, width_, height_);
  border.stroke = Stroke{colour, 0.8, {}};
  items_.emplace_back(border);
}

void TitleBlock::stamp(Page& page, int sheet, int sheets) const {
  page.boxes.push_back({Box::Kind::furniture, left_, top_, width_, height_ + note_room_});
  page.items.insert(page.items.end(), items_.begin(), items_.end());
  if (sheet_.y == 0) return;
  TextRun run = sheet_;
  run.text = std::to_string(sheet) + " / " + std::to_string(sheets);
  run.width = text_width(context_.measurer, run.text, run.face, run.size);
  if (sheet_right_ >= 0) run.x = sheet_right_ - run.width;
  page.items.emplace_back(std::move(run));
}

}  // namespace output
