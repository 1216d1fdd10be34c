#include "output/paint_fonts.h"

#include <cstdint>
#include <string>

#include "output/font_program.h"
#include "output/paint_text.h"

namespace output {
namespace {

constexpr int italic_angle = -12;  // [degrees], of the italic face compiled in
constexpr int stem_regular = 80;   // [1/1000 em], a common estimate: the files do not state it
constexpr int stem_bold = 140;     // [1/1000 em], for viewers that draw without the face

// Flags of a font descriptor (ISO 32000-1, table 123).
constexpr int fixed_pitch = 1 << 0, nonsymbolic = 1 << 5, italic = 1 << 6, force_bold = 1 << 18;

/// Six letters that differ when the characters differ (FNV-1a), as ISO 32000-1, 9.6.4 asks.
std::string subset_tag(std::u32string_view characters) {
  std::uint64_t hash = 0xCBF29CE484222325U;
  for (const char32_t character : characters) hash = (hash ^ character) * 0x100000001B3U;
  std::string tag(6, 'A');
  for (char& letter : tag) {
    letter = static_cast<char>('A' + static_cast<char>(hash % 26));
    hash /= 26;
  }
  return tag;
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
std::string glyph_map(const FontProgram& program, std::u32string_view characters) {
  std::string map(2 * (static_cast<std::size_t>(characters.back()) + 1), '\0');
  for (std::size_t i = 0; i < characters.size(); ++i) {
    const std::uint16_t glyph = program.glyphs[i];
    const std::size_t place = 2 * static_cast<std::size_t>(characters[i]);
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

bool is_bold(Face face) { return face == Face::text_bold || face == Face::symbol_bold; }

int descriptor_flags(Face face) {
  int flags = nonsymbolic;
  if (is_bold(face)) flags |= force_bold;
  if (face == Face::mono) flags |= fixed_pitch;
  if (face == Face::text_italic) flags |= italic;
  return flags;
}

HPDF_Dict descriptor(const Pdf& pdf, Face face, const FontProgram& program, const std::string& name,
                     std::string_view file, std::u32string_view characters) {
  HPDF_Dict made = pdf.registered(pdf.dictionary());
  pdf.add_name(made, "Type", "FontDescriptor");
  pdf.add_name(made, "FontName", name.c_str());
  pdf.add_number(made, "Flags", descriptor_flags(face));
  HPDF_Array box = pdf.array();
  for (const int edge : program.box) pdf.append_number(box, edge);
  pdf.add(made, "FontBBox", box);
  pdf.add_number(made, "ItalicAngle", face == Face::text_italic ? italic_angle : 0);
  pdf.add_number(made, "Ascent", program.ascent);
  pdf.add_number(made, "Descent", program.descent);
  pdf.add_number(made, "CapHeight", program.capital);
  pdf.add_number(made, "StemV", is_bold(face) ? stem_bold : stem_regular);
  HPDF_Dict bytes = pdf.stream(file, true);
  pdf.add_number(bytes, "Length1", static_cast<int>(file.size()));
  pdf.add(made, "FontFile2", bytes);
  pdf.add(made, "CIDSet", pdf.stream(code_set(characters), true));
  return made;
}

/// The collection for codes without an order of their own.
HPDF_Dict collection(const Pdf& pdf) {
  HPDF_Dict made = pdf.dictionary();
  pdf.add_text(made, "Registry", "Adobe");
  pdf.add_text(made, "Ordering", "Identity");
  pdf.add_number(made, "Supplement", 0);
  return made;
}

}  // namespace

HPDF_Dict embed_font(const Pdf& pdf, const Fonts& fonts, Face face,
                     std::u32string_view characters) {
  const std::string file = fonts.subset(face, characters);
  const FontProgram program = read_font_program(file, characters);
  const std::string name = subset_tag(characters) + '+' + program.name;
  HPDF_Dict descendant = pdf.registered(pdf.dictionary());
  pdf.add_name(descendant, "Type", "Font");
  pdf.add_name(descendant, "Subtype", "CIDFontType2");
  pdf.add_name(descendant, "BaseFont", name.c_str());
  pdf.add(descendant, "CIDSystemInfo", collection(pdf));
  pdf.add(descendant, "FontDescriptor", descriptor(pdf, face, program, name, file, characters));
  pdf.add(descendant, "W", widths(pdf, fonts, face, characters));
  pdf.add(descendant, "CIDToGIDMap", pdf.stream(glyph_map(program, characters), true));
  HPDF_Array descendants = pdf.array();
  pdf.append(descendants, descendant);
  HPDF_Dict font = pdf.registered(pdf.dictionary());
  pdf.add_name(font, "Type", "Font");
  pdf.add_name(font, "Subtype", "Type0");
  pdf.add_name(font, "BaseFont", name.c_str());
  pdf.add_name(font, "Encoding", "Identity-H");
  pdf.add(font, "DescendantFonts", descendants);
  pdf.add(font, "ToUnicode", pdf.stream(unicode_map(characters), true));
  return font;
}

}  // namespace output
