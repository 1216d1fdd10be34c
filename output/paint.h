/// The painter: display list in, PDF/A-1b bytes out. The only consumer of display lists.
#pragma once

#include <string>

#include "output/display_list.h"
#include "output/fonts.h"

namespace output {

/// The whole PDF file, version 1.4, PDF/A-1b: faces embedded as subsets, compressed, XMP equal to
/// the information dictionary, sRGB output intent, document identifier from the content, so that
/// equal display lists give equal bytes. Throws std::runtime_error when libharu reports a fault and
/// std::invalid_argument when a coordinate is not finite or out of the format's reach.
std::string paint(const DisplayList& list, const Fonts& fonts);

}  // namespace output
