/// Figures: drawings given in millimetres, set to scale or scaled down to their column.
#pragma once

#include "output/layout_context.h"

namespace output {

/// Sets a figure and its caption in one piece. Throws MarkupError on a malformed drawing.
void set_figure(LayoutContext& context, const Column& column, const Node& figure);

}  // namespace output
