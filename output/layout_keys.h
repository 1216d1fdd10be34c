/// Keys: short references set in the margin column beside the block they belong to.
#pragma once

#include <string_view>

#include "output/layout_context.h"

namespace output {

/// Takes the next word off a blank separated list of keys or anchors; empty at its end.
std::string_view take_key(std::string_view& keys);

/// Line pitch of the margin column [pt].
double key_pitch(const LayoutContext& context);

/// Sets the keys as lines of the margin column, the first on the baseline `first_baseline` below
/// the top of the slice they will be given to; yields their group, -1 when there is none. To be
/// called between slices.
int set_keys(LayoutContext& context, std::string_view keys, double first_baseline);

/// Appends the keys in small type to the text open in the context's flow.
void append_keys(LayoutContext& context, std::string_view keys);

}  // namespace output
