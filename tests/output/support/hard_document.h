/// A document with everything that is hard to paint, for the painter's tests and the validators.
#pragma once

#include <string>

#include "output/display_list.h"
#include "output/fonts.h"

namespace support {

/// The bytes of a Han and kana face of the system; empty when it is not installed.
std::string cjk_face();

/// Two pages: every face the fonts have, Latin with double-decked accents, Greek, Cyrillic, Han;
/// rotated text; filled, stroked and dashed outlines; links; bookmarks of three levels.
output::DisplayList hard_document(const output::Fonts& fonts);

/// A made-up specification of so many pages of dense text, tables and a figure in three faces.
output::DisplayList long_document(const output::Fonts& fonts, int pages);

}  // namespace support
