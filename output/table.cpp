#include "output/table.h"

#include <algorithm>

#include "output/drawing_shapes.h"
#include "output/layout_keys.h"
#include "output/layout_text.h"
#include "output/table_columns.h"

namespace output {
namespace {

constexpr double usual_pad = 2.1;  // pt, above and below a row's text
constexpr double dense_pad = 0.15;
constexpr double points_per_mm = 72 / 25.4;
constexpr double strong_rule = 0.9;                  // above and below the table
constexpr double fine_rule = 0.45;                   // under the head, over a total
constexpr double room = 8;                           // above and below the table
constexpr double longest_kept = 42 * points_per_mm;  // words up to this are kept whole
constexpr std::size_t lines_of_low_row = 4;

struct Cell {
  Range text;
  std::size_t column = 0, span = 1;
  Range lines;         ///< in the setter's lines
  DecimalParts parts;  ///< of a decimal column's body
};

struct Row {
  const Node* node = nullptr;
  std::vector<Cell> cells;
  std::size_t line_count = 1;
  double least_height = 0;  ///< [pt]
  bool is_head = false, is_total = false;
};

class TableSetter {
 public:
  TableSetter(LayoutContext& context, const Column& column, const Node& table)
      : context_(context),
        column_(column),
        table_(table),
        columns_(parse_columns(table.get("columns"), column.x, column.width)),
        pad_(flag_of(table, "dense") ? dense_pad : usual_pad),
        lined_(flag_of(table, "lines")),
        size_(context.sizes().table),
        pitch_(context.pitch(size_) * 0.97),
        base_(baseline(context.measurer.fonts(), size_, pitch_)) {}

  void run() {
    context_.flow.clear();
    measure();
    context_.leave(room);
    context_.anchor_next(table_.get("id"));
    set_caption();
    for (std::size_t i = 0; i < rows_.size(); ++i) set_row(i);
    context_.leave(room);
  }

 private:
  void measure() {
    for (const Node& child : table_.children) {
      Row row;
      row.node = &child;
      row.is_head = child.name == "head";
      row.is_total = !row.is_head && flag_of(child, "total");
      if (row.is_head && !rows_.empty()) throw fault("the head is not first");
      row.least_height = number_of(child, "height", 0) * points_per_mm;
      read_cells(row);
      rows_.push_back(std::move(row));
    }
    make_room(columns_, widest_words());
    make_room(columns_, easy_widths());
    for (Row& row : rows_) break_cells(row);
  }

  /// By column, of the cells that stand in it alone; what is very long is broken at its seams.
  std::vector<double> widest_words() const {
    std::vector<double> widest(columns_.size(), 0);
    for (const Row& row : rows_) {
      for (const Cell& cell : row.cells) {
        const double word = cell.span == 1 ? widest_word(context_.flow, cell.text) : 0;
        if (word <= longest_kept) widest[cell.column] = std::max(widest[cell.column], word);
      }
    }
    return widest;
  }

  /// By column the width it may be narrowed to without another line, or wants where its longest
  /// text takes more than two.
  std::vector<double> easy_widths() const {
    constexpr double half = 0.55;  // of a text that breaks into two lines, about
    std::vector<double> widths(columns_.size(), 0);
    for (const Row& row : rows_) {
      for (const Cell& cell : row.cells) {
        if (cell.span > 1) continue;
        const TableColumn& column = columns_[cell.column];
        const double width = column.right - column.left;
        const double line = context_.flow.width(cell.text);
        const double two = std::max(line * half, widest_word(context_.flow, cell.text));
        const double own = line <= width ? line : row.is_head ? width : std::max(two, width);
        widths[cell.column] = std::max({widths[cell.column], own, column.before + column.after});
      }
    }
    for (std::size_t i = 0; i < widths.size(); ++i) {
      if (columns_[i].kind != ColumnKind::left) {
        widths[i] = std::min(widths[i], columns_[i].right - columns_[i].left);
      }
    }
    return widths;
  }

  MarkupError fault(const std::string& what) const {
    std::string message = "markup: <table id=\"";
    message.append(table_.get("id")).append("\"> row ").append(std::to_string(rows_.size() + 1));
    return MarkupError{message.append(": ").append(what)};
  }

  void read_cells(Row& row) {
    std::size_t at = 0;
    for (const Node& node : row.node->children) {
      Cell cell;
      cell.column = at;
      cell.span = read_span(node);
      at += cell.span;
      if (at > columns_.size()) throw fault("more cells than columns");
      const bool is_last = at == columns_.size();
      cell.text = read_text(row, node, is_last);
      note_parts(row, cell);
      row.cells.push_back(cell);
    }
    if (at != columns_.size()) throw fault("fewer cells than columns");
  }

  std::size_t read_span(const Node& node) const {
    const double span = number_of(node, "span", 1);
    for (std::size_t whole = 1; whole <= columns_.size(); ++whole) {
      if (static_cast<double>(whole) == span) return whole;
    }
    throw fault("span is not a count of columns");
  }

  Range read_text(const Row& row, const Node& node, bool is_last) {
    InlineStyle style{Face::text, size_, 0, {}, nullptr};
    if (row.is_head || row.is_total) style.face = Face::text_bold;
    context_.flow.open();
    context_.flow.append(node.children, style, context_.style.accent);
    if (is_last && column_.wide && !row.is_head) append_keys(context_, row.node->get("key"));
    return context_.flow.close();
  }

  void note_parts(const Row& row, Cell& cell) {
    TableColumn& column = columns_[cell.column];
    if (row.is_head || column.kind != ColumnKind::decimal || cell.span > 1) return;
    cell.parts = split_at_point(context_.flow, cell.text);
    if (!cell.parts.is_number) return;
    column.before = std::max(column.before, cell.parts.before);
    column.after = std::max(column.after, cell.parts.after);
  }

  double cell_left(const Cell& cell) const { return columns_[cell.column].left; }
  double cell_right(const Cell& cell) const { return columns_[cell.column + cell.span - 1].right; }

  void break_cells(Row& row) {
    for (Cell& cell : row.cells) {
      const double width = cell_right(cell) - cell_left(cell);
      cell.lines.first = lines_.size();
      break_lines(context_.flow, cell.text, width, width, lines_);
      cell.lines.last = lines_.size();
      row.line_count = std::max(row.line_count, cell.lines.last - cell.lines.first);
    }
  }

  void set_caption() {
    context_.flow.open();
    context_.flow.append(table_.get("caption"),
                         {Face::text_bold, context_.sizes().caption, 0, {}, nullptr});
    const Range text = context_.flow.close();
    TextOptions options;
    options.keep = true;
    set_lines(context_, column_, text, context_.sizes().caption, options);
    if (text.first != text.last) context_.leave(3);
  }

  void set_row(std::size_t index) {
    const Row& row = rows_[index];
    context_.anchor_next(row.node->get("id"));
    std::string_view also = row.node->get("also");
    for (std::string_view id = take_key(also); !id.empty(); id = take_key(also)) {
      context_.anchor_next(id);
    }
    const double height =
        std::max(row.least_height, 2 * pad_ + pitch_ * static_cast<double>(row.line_count));
    const double most =
        std::min(context_.room_beside_kept(), context_.body_height() - head_height());
    if (height <= most || row.is_head) {
      set_part(index, 0, row.line_count);
    } else {
      for (std::size_t line = 0; line < row.line_count; ++line) set_part(index, line, line + 1);
    }
  }

  double head_height() const {
    if (rows_.empty() || !rows_.front().is_head) return 0;
    return 2 * pad_ + pitch_ * static_cast<double>(rows_.front().line_count);
  }

  /// The lines from `first` to before `last` of a row as one slice.
  void set_part(std::size_t index, std::size_t first, std::size_t last) {
    const Row& row = rows_[index];
    const bool begins = first == 0, ends = last == row.line_count;
    const double top = begins ? pad_ : 0;
    const double text = top + pitch_ * static_cast<double>(last - first) + (ends ? pad_ : 0);
    const double height = begins && ends ? std::max(row.least_height, text) : text;
    int keys = -1;
    if (begins && !column_.wide && !row.is_head) {
      keys = set_keys(context_, row.node->get("key"), top + base_);
    }
    Slice& slice = context_.begin_slice(Box::Kind::row, column_);
    slice.keys = keys;
    slice.keep = stands_with_next(index, begins, ends);
    slice.repeats = row.is_head;
    slice.head = row.is_head ? -1 : head_slice_;
    if (row.is_head) head_slice_ = static_cast<int>(context_.story.slices.size()) - 1;
    emit_rules(index, begins, ends, height);
    for (const Cell& cell : row.cells) emit_cell(row, cell, first, last, top);
    context_.end_slice(height);
  }

  /// A head with its first row, a row that asks for it, a total with what it sums up, two lines of
  /// a row that is split; and no low row of several alone at the foot or the top of a page.
  bool stands_with_next(std::size_t index, bool begins, bool ends) const {
    if (rows_[index].is_head || (begins && !ends)) return true;
    if (!ends || index + 1 == rows_.size()) return false;
    if (flag_of(*rows_[index].node, "keep") || rows_[index + 1].is_total) return true;
    const bool is_first = index == 0 || rows_[index - 1].is_head;
    const bool is_last_but_one = index + 2 == rows_.size();
    return (is_first || is_last_but_one) && is_low(index) && is_low(index + 1);
  }

  bool is_low(std::size_t index) const { return rows_[index].line_count <= lines_of_low_row; }

  void emit_rules(std::size_t index, bool begins, bool ends, double height) {
    const Row& row = rows_[index];
    if (begins && index == 0) emit_rule(0, strong_rule);
    if (begins && row.is_total && index > 0) emit_rule(0, fine_rule);
    if (!ends) return;
    if (index + 1 == rows_.size()) {
      emit_rule(height, strong_rule);
    } else if (row.is_head || lined_) {
      emit_rule(height, fine_rule);
    }
  }

  void emit_rule(double y, double weight) {
    const double right = columns_.back().right;
    context_.story.items.emplace_back(ruled({column_.x, y}, {right, y}, {}, weight));
  }

  void emit_cell(const Row& row, const Cell& cell, std::size_t first, std::size_t last,
                 double top) {
    const std::size_t count = cell.lines.last - cell.lines.first;
    // Words of a head stand on its rule.
    const std::size_t skip = row.is_head ? row.line_count - count : 0;
    for (std::size_t i = first; i < last; ++i) {
      if (i < skip || i - skip >= count) continue;
      const Line& line = lines_[cell.lines.first + i - skip];
      const double y = top + base_ + pitch_ * static_cast<double>(i - first);
      emit_line(context_.flow, line, line_left(row, cell, line), y, context_.story.items);
    }
  }

  double line_left(const Row& row, const Cell& cell, const Line& line) const {
    const TableColumn& column = columns_[cell.column];
    const double left = cell_left(cell), right = cell_right(cell);
    switch (column.kind) {
      case ColumnKind::left:
        return left;
      case ColumnKind::centred:
        return (left + right - line.width) / 2;
      case ColumnKind::right:
        return right - line.width;
      case ColumnKind::decimal:
        break;
    }
    const bool aligns = !row.is_head && cell.span == 1 && cell.parts.is_number &&
                        cell.lines.last - cell.lines.first == 1 &&
                        column.before + column.after <= right - left;
    return aligns ? right - column.after - cell.parts.before : right - line.width;
  }

  LayoutContext& context_;
  Column column_;
  const Node& table_;
  std::vector<TableColumn> columns_;
  double pad_;
  bool lined_;
  double size_;
  double pitch_;
  double base_;
  std::vector<Row> rows_;
  std::vector<Line> lines_;
  int head_slice_ = -1;
};

}  // namespace

void set_table(LayoutContext& context, const Column& column, const Node& table) {
  const bool wide = column.wide || flag_of(table, "wide");
  TableSetter(context, wide ? context.wide_column() : column, table).run();
}

}  // namespace output
