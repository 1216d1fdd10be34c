/// The layout engine: markup tree and faces in, display list out.
#pragma once

#include <memory>

#include "output/display_list.h"
#include "output/fonts.h"
#include "output/markup.h"

namespace output {

/// Sizes and colours of the page, read from the templates' style file; these are the defaults. The
/// text ends above `margin_bottom`, or higher where the title block reaches beyond it.
struct PageStyle {
  double page_width = 595.276, page_height = 841.890;                               ///< A4 [pt]
  double margin_left = 54, margin_right = 36, margin_top = 48, margin_bottom = 62;  ///< [pt]
  double key_column = 104;             ///< width of the margin column for keys, at the right [pt]
  double key_gap = 12;                 ///< between text column and key column [pt]
  double body_size = 9.6;              ///< [pt]
  double leading = 1.32;               ///< line pitch / size
  std::shared_ptr<const Raster> logo;  ///< at the head of page one, or null
  double logo_height = 34;             ///< [pt]
  Colour accent{0x00, 0x72, 0xB2};
  Colour rule{0x66, 0x66, 0x66};
  Colour shade{0xF2, 0xF2, 0xF2};
};

/// Pages, anchors and bookmarks. `unprintable` collects each character no face can draw (it is
/// printed as its code point, [U+2603]), so that the caller can warn. Throws MarkupError on a table
/// whose rows do not fit its columns or a link without its anchor.
DisplayList lay_out(const Node& document, const Fonts& fonts, const PageStyle& style,
                    std::vector<char32_t>& unprintable);

}  // namespace output
