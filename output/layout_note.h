/// Notes: a coloured ground with a bar and a sign at the left.
#pragma once

#include "output/layout_context.h"

namespace output {

/// Sets a note. Its kinds differ in sign, width of the bar and colour, so that they can be told
/// apart in grey too. Throws MarkupError on an unknown kind.
void set_note(LayoutContext& context, const Column& column, const Node& note);

}  // namespace output
