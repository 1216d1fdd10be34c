/// The title block on every sheet, after ISO 7200.
#pragma once

#include "output/layout_context.h"

namespace output {

/// The title block, set once and stamped on each page. Without a <titleblock> only the sheet's
/// number stands at the foot.
class TitleBlock {
 public:
  /// For the pages that stand as the context does, whose lower end of the text it sets. Throws
  /// MarkupError on a cell without a name or with a malformed span.
  TitleBlock(LayoutContext& context, const Node& document);

  /// Upper edge on the page [pt].
  double top() const { return top_; }
  /// Draws it on a page; `sheet` counts from 1.
  void stamp(Page& page, int sheet, int sheets) const;

 private:
  struct Cell;
  using Row = std::vector<Cell>;
  std::vector<Row> read_rows(const Node& document) const;
  static Cell read_cell(const Node& node);
  void stretch(Row& row) const;
  void set_cell(const Cell& cell, double y);
  void set_label(const Cell& cell, double y);
  void set_value(const Cell& cell, double y);
  void set_note(std::string_view note);
  void emit_cut(Range text, const InlineStyle& style, double x, double y, double width);
  void draw_grid(const std::vector<Row>& rows);

  LayoutContext& context_;
  double top_ = 0;
  double left_ = 0, width_ = 0, height_ = 0, note_room_ = 0;
  std::vector<Item> items_;
  TextRun sheet_;            ///< its place and style; without text
  double sheet_right_ = -1;  ///< right end when it is set to the right, else negative
};

}  // namespace output
