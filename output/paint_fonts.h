/// A face as a font of one PDF document.
#pragma once

#include <string_view>

#include "output/fonts.h"
#include "output/paint_pdf.h"

namespace output {

/// The face embedded as a font whose subset draws these characters, which are its character codes
/// too; complete with widths, glyph map, CIDSet and a map back to Unicode for exactly these
/// characters. Precondition: `characters` ascending, not empty, all in the face. Throws
/// std::runtime_error on libharu's faults.
HPDF_Dict embed_font(const Pdf& pdf, const Fonts& fonts, Face face, std::u32string_view characters);

}  // namespace output
