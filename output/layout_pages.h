/// Pages made up from story and plan.
#pragma once

#include "output/layout_furniture.h"
#include "output/layout_plan.h"

namespace output {

/// Where each anchor of the story stands.
std::vector<Anchor> place_anchors(const Story& story, const Plan& plan);

/// The pages with text, keys, note grounds and title block. Moves the items out of the story.
std::vector<Page> make_pages(LayoutContext& context, const Plan& plan, const TitleBlock& upright,
                             const TitleBlock& turned);

}  // namespace output
