/// The columns of a table: kinds, widths, and where numbers stand in them.
#pragma once

#include <string_view>
#include <vector>

#include "output/text_line.h"

namespace output {

enum class ColumnKind : char { left = 'l', right = 'r', centred = 'c', decimal = 'd' };

struct TableColumn {
  ColumnKind kind = ColumnKind::left;
  double left = 0, right = 0;    ///< edges of the text on the page [pt]
  double before = 0, after = 0;  ///< widest text to each side of the decimal point [pt]
};

/// Columns out of a text such as "l:30 r:15 d:20 l:2*", set between x and x + width [pt]. Widths in
/// mm are narrowed together when they leave no room. Throws MarkupError on a malformed text.
std::vector<TableColumn> parse_columns(std::string_view text, double x, double width);

/// Moves the boundaries between columns so that each holds its widest word, `needs` [pt, one a
/// column], as far as other columns have room to give.
void make_room(std::vector<TableColumn>& columns, const std::vector<double>& needs);

/// A number cut at its decimal point, or behind its last digit when it has none; what follows the
/// number (a unit) belongs to the second part.
struct DecimalParts {
  double before = 0, after = 0;  ///< [pt]
  bool is_number = false;
};
DecimalParts split_at_point(const TextFlow& flow, Range text);

}  // namespace output
