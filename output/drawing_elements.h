/// The elements of a drawing turned into outlines and text.
#pragma once

#include "output/layout_context.h"

namespace output {

/// Where a drawing stands on the page and how large.
struct Placing {
  double left = 0;        ///< of the drawing [pt]
  double width = 0;       ///< of the column; labels are kept within it [pt]
  double unit = 1;        ///< one mm of the drawing [pt]
  double text_scale = 1;  ///< of labels
};

/// Appends the drawing's items to the story, its upper edge at y = 0. Throws MarkupError on a
/// malformed number, colour, dash or list of points.
void emit_drawing(LayoutContext& context, const Node& drawing, const Placing& placing);

}  // namespace output
