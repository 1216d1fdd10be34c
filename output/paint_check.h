/// The guards before painting: what libharu would write wrongly or refuse is refused here.
#pragma once

#include <array>
#include <map>
#include <string>

#include "output/display_list.h"
#include "output/fonts.h"

namespace output {

/// The characters each face has to draw, ascending, each once.
using UsedCharacters = std::array<std::u32string, face_count>;

/// Checks every item, anchor and bookmark, and gathers the characters. Throws
/// std::invalid_argument on: a document without pages; a number that is not finite or beyond the
/// reach of PDF 1.4; text that is not UTF-8, has control characters or one its face lacks; an
/// outline that does not start with a move; an impossible dash; a link or bookmark to an anchor
/// that is not there; an anchor that is there twice or on no page; a bookmark deeper than one
/// level below the one before it.
UsedCharacters check_list(const DisplayList& list, const Fonts& fonts);

}  // namespace output
