/// Tables: rows set into slices.
#pragma once

#include "output/layout_context.h"

namespace output {

/// Sets a table with its caption, its head (repeated after a page break) and its rows. Throws
/// MarkupError when a row's cells do not fit the columns.
void set_table(LayoutContext& context, const Column& column, const Node& table);

}  // namespace output
