#include "output/font_program.h"

#include <hb-ot.h>

#include <stdexcept>

#include "output/hb_pointers.h"

namespace output {
namespace {

std::string postscript_name(hb_face_t* face) {
  std::array<char, 64> name{};
  unsigned size = name.size();
  hb_ot_name_get_utf8(face, HB_OT_NAME_ID_POSTSCRIPT_NAME, HB_LANGUAGE_INVALID, &size, name.data());
  if (size == 0) throw std::runtime_error("a face without a PostScript name");
  return {name.data(), size};
}

/// xMin, yMin, xMax, yMax of the head table (ISO/IEC 14496-22, 5.3.3).
std::array<int, 4> glyph_box(hb_face_t* face) {
  constexpr unsigned place = 36, least = 44;
  const BlobPointer table(hb_face_reference_table(face, HB_TAG('h', 'e', 'a', 'd')));
  unsigned size = 0;
  const char* bytes = hb_blob_get_data(table.get(), &size);
  if (size < least) throw std::runtime_error("a face without a head table");
  const std::string_view head(bytes, size);
  std::array<int, 4> box{};
  for (std::size_t i = 0; i < box.size(); ++i) {
    const auto high = static_cast<std::uint8_t>(head[place + 2 * i]);
    const auto low = static_cast<std::uint8_t>(head[place + 2 * i + 1]);
    box.at(i) = per_mille(static_cast<std::int16_t>(high << 8U | low), hb_face_get_upem(face));
  }
  return box;
}

int capital_height(hb_font_t* font, int ascent, std::int64_t per_em) {
  hb_position_t height = 0;
  const bool stated =
      hb_ot_metrics_get_position(font, HB_OT_METRICS_TAG_CAP_HEIGHT, &height) != 0 && height > 0;
  return stated ? per_mille(height, per_em) : ascent;
}

}  // namespace

FontProgram read_font_program(std::string_view file, std::u32string_view characters) {
  const FacePointer face = open_face(file);
  const FontPointer font(hb_font_create(face.get()));  // its scale is the font's own units
  const auto per_em = static_cast<std::int64_t>(hb_face_get_upem(face.get()));
  hb_font_extents_t extents{};
  hb_font_get_h_extents(font.get(), &extents);
  FontProgram program;
  program.name = postscript_name(face.get());
  program.ascent = per_mille(extents.ascender, per_em);
  program.descent = per_mille(extents.descender, per_em);
  program.capital = capital_height(font.get(), program.ascent, per_em);
  program.box = glyph_box(face.get());
  for (const char32_t character : characters) {
    hb_codepoint_t glyph = 0;
    hb_font_get_nominal_glyph(font.get(), character, &glyph);
    if (glyph == 0) throw std::runtime_error("character lost from a subset");
    program.glyphs.push_back(static_cast<std::uint16_t>(glyph));
  }
  return program;
}

}  // namespace output
