#include "output/paint_fonts.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstring>
#include <iterator>
#include <stdexcept>
#include <string>

#include "output/paint_text.h"

namespace output {
namespace {

constexpr HPDF_INT16 italic_angle = -12;  // [degrees], of the italic face compiled in
constexpr HPDF_UINT16 stem_regular = 80;  // [1/1000 em], libharu's own estimate for any face
constexpr HPDF_UINT16 stem_bold = 140;    // [1/1000 em], for viewers that draw without the face

/// Six letters that differ when the characters differ (FNV-1a), as ISO 32000-1, 9.6.4 asks.
std::array<char, HPDF_TTF_FONT_TAG_LEN + 1> subset_tag(std::u32string_view characters) {
  std::uint64_t hash = 0xCBF29CE484222325U;
  for (const char32_t character : characters) hash = (hash ^ character) * 0x100000001B3U;
  std::array<char, HPDF_TTF_FONT_TAG_LEN + 1> tag{};
  for (std::size_t i = 0; i < HPDF_TTF_FONT_TAG_LEN; ++i, hash /= 26) {
    tag.at(i) = static_cast<char>('A' + static_cast<char>(hash % 26));
  }
  return tag;
}

/// Names the subset: tag and PostScript name. libharu adds the style behind a comma, which already
/// is part of that name.
void name_subset(HPDF_FontDef definition, std::u32string_view characters) {
  auto tag = subset_tag(characters);
  HPDF_TTFontDef_SetTagName(definition, tag.data());
  auto* attributes = static_cast<HPDF_TTFontDefAttr>(definition->attr);
  auto* const end = std::end(attributes->base_font);
  std::fill(std::find(std::begin(attributes->base_font), end, ','), end, '\0');
}

void describe(HPDF_FontDef definition, Face face) {
  const bool bold = face == Face::text_bold || face == Face::symbol_bold;
  definition->stemv = bold ? stem_bold : stem_regular;
  if (bold) definition->flags |= HPDF_FONT_FOURCE_BOLD;
  if (face == Face::mono) definition->flags |= HPDF_FONT_FIXED_WIDTH;
  if (face == Face::text_italic) {
    definition->flags |= HPDF_FONT_ITALIC;
    definition->italic_angle = italic_angle;
  }
}

HPDF_FontDef load_definition(const Pdf& pdf, std::string_view file) {
  HPDF_Stream stream =
      pdf.made(HPDF_MemStream_New(pdf.memory(), static_cast<HPDF_UINT>(file.size())));
  pdf.ok(HPDF_Stream_Write(stream, as_bytes(file), static_cast<HPDF_UINT>(file.size())));
  HPDF_FontDef definition = pdf.made(HPDF_TTFontDef_Load(pdf.memory(), stream, HPDF_TRUE));
  pdf.ok(HPDF_List_Add(pdf.doc()->fontdef_list, definition));
  auto* attributes = static_cast<HPDF_TTFontDefAttr>(definition->attr);
  // libharu follows composite glyphs one level down only. The file holds nothing but what is
  // needed, so everything in it is kept.
  std::fill_n(attributes->glyph_tbl.flgs, attributes->num_glyphs, HPDF_BYTE{1});
  return definition;
}

/// libharu's font over the definition. Its tables for all of Unicode cost 4 ms and are replaced
/// afterwards: an encoder that knows one code only while the font is made (none is a fault) keeps
/// them small.
HPDF_Font make_font(const Pdf& pdf, HPDF_FontDef definition) {
  HPDF_Encoder encoder = pdf.made(HPDF_GetEncoder(pdf.doc(), "UTF-8"));
  auto* attributes = static_cast<HPDF_CMapEncoderAttr>(encoder->attr);
  std::memset(static_cast<void*>(attributes->cid_map), 0, sizeof attributes->cid_map);
  attributes->cid_map[0][1] = 1;
  const HPDF_Encoder_ToUnicode_Func to_unicode = encoder->to_unicode_fn;
  encoder->to_unicode_fn = &HPDF_CMapEncoder_ToUnicode;
  HPDF_Font font = HPDF_GetFont(pdf.doc(), definition->base_font, "UTF-8");
  encoder->to_unicode_fn = to_unicode;
  attributes->cid_map[0][1] = 0;  // the encoder keeps its reading state here
  pdf.made(font);
  if (static_cast<HPDF_FontAttr>(font->attr)->fontdef != definition) {
    throw std::runtime_error("two faces of one name in a document");
  }
  return font;
}

/// Widths in runs of consecutive characters: [first [width ...] ...].
HPDF_Array widths(const Pdf& pdf, const Fonts& fonts, Face face, std::u32string_view characters) {
  HPDF_Array all = pdf.array();
  HPDF_Array run = nullptr;
  for (std::size_t i = 0; i < characters.size(); ++i) {
    if (i == 0 || characters[i] != characters[i - 1] + 1) {
      pdf.append_number(all, static_cast<int>(characters[i]));
      run = pdf.array();
      pdf.append(all, run);
    }
    pdf.append_number(run, fonts.advance(face, characters[i]));
  }
  return all;
}

/// Two bytes a code from 0 to the last character: the number of its glyph in the subset.
std::string glyph_map(HPDF_FontDef definition, std::u32string_view characters) {
  std::string map(2 * (static_cast<std::size_t>(characters.back()) + 1), '\0');
  for (const char32_t character : characters) {
    const auto code = static_cast<HPDF_UINT16>(character);
    const HPDF_UINT16 glyph = HPDF_TTFontDef_GetGlyphid(definition, code);
    if (glyph == 0) throw std::runtime_error("character lost from a subset");
    const std::size_t place = 2 * static_cast<std::size_t>(code);
    map[place] = static_cast<char>(static_cast<std::uint8_t>(glyph >> 8U));
    map[place + 1] = static_cast<char>(static_cast<std::uint8_t>(glyph & 0xFFU));
  }
  return map;
}

/// One bit a code, the highest bit of a byte first; code 0, the missing glyph, is always there.
std::string code_set(std::u32string_view characters) {
  std::string bits(static_cast<std::size_t>(characters.back()) / 8 + 1, '\0');
  const auto set = [&](char32_t code) {
    auto& byte = bits[code / 8];
    byte = static_cast<char>(static_cast<std::uint8_t>(byte) | (0x80U >> (code % 8)));
  };
  set(0);
  for (const char32_t character : characters) set(character);
  return bits;
}

/// The map from codes back to Unicode, in blocks of at most 100 as the format demands.
std::string unicode_map(std::u32string_view characters) {
  std::string map =
      "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
      "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
      "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
      "1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n";
  constexpr std::size_t block = 100;
  for (std::size_t begin = 0; begin < characters.size(); begin += block) {
    const std::u32string_view part = characters.substr(begin, block);
    map += std::to_string(part.size()) + " beginbfchar\n";
    for (const char32_t c : part) map += '<' + hex4(c) + "> <" + hex4(c) + ">\n";
    map += "endbfchar\n";
  }
  return map + "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n";
}

/// Replaces the content of a stream libharu began.
void rewrite(const Pdf& pdf, HPDF_Dict stream, std::string_view bytes) {
  HPDF_MemStream_FreeData(stream->stream);
  pdf.write_packed(stream, bytes);
}

/// Compresses the content of a stream libharu wrote plainly.
void pack(const Pdf& pdf, HPDF_Dict stream) {
  std::string bytes;
  for (HPDF_UINT i = 0; i < HPDF_MemStream_GetBufCount(stream->stream); ++i) {
    HPDF_UINT size = 0;
    const HPDF_BYTE* part = HPDF_MemStream_GetBufPtr(stream->stream, i, &size);
    bytes.append(part, part + size);
  }
  rewrite(pdf, stream, bytes);
}

/// Puts a stream at the key: libharu's own when it made one, else a new one.
void put_stream(const Pdf& pdf, HPDF_Dict owner, const char* key, HPDF_Dict existing,
                std::string_view bytes) {
  if (existing != nullptr) {
    rewrite(pdf, existing, bytes);
  } else {
    pdf.add(owner, key, pdf.stream(bytes, true));
  }
}

/// The collection for codes without an order of their own is Adobe-Identity. libharu names the
/// predefined CMap in its place, which is no collection.
void correct_collection(const Pdf& pdf, HPDF_Dict owner) {
  auto* info = HPDF_Dict_GetItem(owner, "CIDSystemInfo", HPDF_OCLASS_DICT);
  pdf.add_text(static_cast<HPDF_Dict>(pdf.made(info)), "Ordering", "Identity");
}

}  // namespace

HPDF_Font embed_font(const Pdf& pdf, const Fonts& fonts, Face face,
                     std::u32string_view characters) {
  HPDF_FontDef definition = load_definition(pdf, fonts.subset(face, characters));
  name_subset(definition, characters);
  describe(definition, face);
  HPDF_Font font = make_font(pdf, definition);
  auto* attributes = static_cast<HPDF_FontAttr>(font->attr);
  HPDF_Dict descendant = attributes->descendant_font;
  correct_collection(pdf, descendant);
  pdf.add(descendant, "W", widths(pdf, fonts, face, characters));
  put_stream(pdf, descendant, "CIDToGIDMap", attributes->map_stream,
             glyph_map(definition, characters));
  put_stream(pdf, font, "ToUnicode", attributes->cmap_stream, unicode_map(characters));
  // Builds descriptor and font file now; libharu calls it again when saving, to no effect.
  pdf.ok(font->before_write_fn(font));
  HPDF_Dict descriptor = pdf.made(definition->descriptor);
  void* file = HPDF_Dict_GetItem(descriptor, "FontFile2", HPDF_OCLASS_DICT);
  pack(pdf, static_cast<HPDF_Dict>(pdf.made(file)));
  pdf.add_number(descriptor, "CapHeight", definition->cap_height);
  pdf.add(descriptor, "CIDSet", pdf.stream(code_set(characters), true));
  return font;
}

}  // namespace output
