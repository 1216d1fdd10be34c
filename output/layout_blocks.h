/// Blocks and sections, one after the other into the story.
#pragma once

#include "output/layout_text.h"

namespace output {

/// Sets a node's children: paragraphs, lists, notes, tables, figures, sections, contents.
void set_blocks(LayoutContext& context, const Column& column, const Node& parent);

/// Inline content, paragraphs and lists inside an item or a note; the options go to its first text.
void set_mixed(LayoutContext& context, const Column& column, const Node& node, TextOptions options);

void set_list(LayoutContext& context, const Column& column, const Node& list);

}  // namespace output
