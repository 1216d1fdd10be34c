/// What a PDF says of a font file it embeds, read from the file with HarfBuzz.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace output {

struct FontProgram {
  std::string name;                          ///< PostScript name
  int ascent = 0, descent = 0, capital = 0;  ///< [1/1000 em], descent negative; height of capitals
  std::array<int, 4> box{};           ///< of all glyphs of the face: left, bottom, right, top
  std::vector<std::uint16_t> glyphs;  ///< number of each character's glyph, in their order
};

/// Reads a TrueType file. Throws std::runtime_error when it lacks its name, its head table or the
/// glyph of one of the characters.
FontProgram read_font_program(std::string_view file, std::u32string_view characters);

}  // namespace output
