/// The table of contents.
#pragma once

#include "output/layout_context.h"

namespace output {

/// One linked line a section down to the wished depth, with room for its page number, which
/// `write_page_numbers` fills in when the pages are known.
void set_contents(LayoutContext& context, const Column& column, const Node& contents);

/// Writes the page of each reference's anchor, from 1, into the story. `pages` gives the page from
/// 0 of every anchor the references name.
void write_page_numbers(LayoutContext& context, const std::vector<Anchor>& anchors);

}  // namespace output
