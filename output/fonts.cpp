#include "output/fonts.h"

#include <hb-ot.h>
#include <hb-subset.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <mutex>
#include <new>
#include <stdexcept>
#include <vector>

#include "output/embedded.h"
#include "output/hb_pointers.h"

namespace output {
namespace {

/// Marks a character without a glyph in the table of widths.
constexpr std::uint16_t absent = 0xFFFF;
/// Two-byte codes of the PDF's fonts reach no further.
constexpr std::size_t plane_size = 0x10000;

using InputPointer = std::unique_ptr<hb_subset_input_t, Destroy<hb_subset_input_destroy>>;

/// Scripts that need neither shaping, reordering nor a direction of their own.
constexpr std::array plain_scripts{
    HB_SCRIPT_COMMON,   HB_SCRIPT_LATIN,    HB_SCRIPT_GREEK,    HB_SCRIPT_CYRILLIC,
    HB_SCRIPT_ARMENIAN, HB_SCRIPT_GEORGIAN, HB_SCRIPT_HAN,      HB_SCRIPT_HIRAGANA,
    HB_SCRIPT_KATAKANA, HB_SCRIPT_BOPOMOFO, HB_SCRIPT_HANGUL,   HB_SCRIPT_BRAILLE,
    HB_SCRIPT_CHEROKEE, HB_SCRIPT_ETHIOPIC, HB_SCRIPT_TIFINAGH, HB_SCRIPT_YI};

/// Tables the painter never uses: without them the subset is smaller and made faster, and no
/// glyph is pulled in by substitution rules.
constexpr std::array unused_tables{
    HB_TAG('G', 'S', 'U', 'B'), HB_TAG('G', 'P', 'O', 'S'), HB_TAG('G', 'D', 'E', 'F'),
    HB_TAG('k', 'e', 'r', 'n'), HB_TAG('M', 'A', 'T', 'H'), HB_TAG('V', 'D', 'M', 'X'),
    HB_TAG('h', 'd', 'm', 'x'), HB_TAG('L', 'T', 'S', 'H'), HB_TAG('g', 'a', 's', 'p'),
    HB_TAG('v', 'h', 'e', 'a'), HB_TAG('v', 'm', 't', 'x'), HB_TAG('B', 'A', 'S', 'E')};

/// Whether the character stands by itself: an assigned, visible letter, digit, sign or space of a
/// plain script. Marks that combine and conjoining jamo would need positioning.
bool stands_alone(char32_t character) {
  hb_unicode_funcs_t* unicode = hb_unicode_funcs_get_default();
  switch (hb_unicode_general_category(unicode, character)) {
    case HB_UNICODE_GENERAL_CATEGORY_CONTROL:
    case HB_UNICODE_GENERAL_CATEGORY_FORMAT:
    case HB_UNICODE_GENERAL_CATEGORY_UNASSIGNED:
    case HB_UNICODE_GENERAL_CATEGORY_PRIVATE_USE:
    case HB_UNICODE_GENERAL_CATEGORY_SURROGATE:
    case HB_UNICODE_GENERAL_CATEGORY_NON_SPACING_MARK:
    case HB_UNICODE_GENERAL_CATEGORY_SPACING_MARK:
    case HB_UNICODE_GENERAL_CATEGORY_ENCLOSING_MARK:
    case HB_UNICODE_GENERAL_CATEGORY_LINE_SEPARATOR:
    case HB_UNICODE_GENERAL_CATEGORY_PARAGRAPH_SEPARATOR:
      return false;
    default:
      break;
  }
  const hb_script_t script = hb_unicode_script(unicode, character);
  if (std::find(plain_scripts.begin(), plain_scripts.end(), script) == plain_scripts.end()) {
    return false;
  }
  const bool jamo = (character >= 0x1100 && character <= 0x11FF) ||
                    (character >= 0xA960 && character <= 0xA97F) ||
                    (character >= 0xD7B0 && character <= 0xD7FF);
  return !jamo;
}

std::string_view embedded_name(Face face) {
  switch (face) {
    case Face::text:
      return "fonts/text.ttf";
    case Face::text_bold:
      return "fonts/text_bold.ttf";
    case Face::text_italic:
      return "fonts/text_italic.ttf";
    case Face::mono:
      return "fonts/mono.ttf";
    case Face::symbol:
      return "fonts/symbol.ttf";
    case Face::symbol_bold:
      return "fonts/symbol_bold.ttf";
    case Face::cjk:
      break;
  }
  throw std::invalid_argument("face without embedded file");
}

std::vector<std::uint16_t> read_widths(hb_face_t* face) {
  std::vector<std::uint16_t> widths(plane_size, absent);
  const FontPointer font(hb_font_create(face));  // its scale is the font's own units
  const SetPointer characters(hb_set_create());
  hb_face_collect_unicodes(face, characters.get());
  const auto per_em = static_cast<std::int64_t>(hb_face_get_upem(face));
  hb_codepoint_t character = HB_SET_VALUE_INVALID;
  while (hb_set_next(characters.get(), &character) != 0 && character < plane_size) {
    hb_codepoint_t glyph = 0;
    if (hb_font_get_nominal_glyph(font.get(), character, &glyph) == 0 || glyph == 0) continue;
    const int width = per_mille(hb_font_get_glyph_h_advance(font.get(), glyph), per_em);
    widths[character] = static_cast<std::uint16_t>(std::clamp(width, 0, absent - 1));
  }
  return widths;
}

bool has_table(hb_face_t* face, hb_tag_t tag) {
  const BlobPointer blob(hb_face_reference_table(face, tag));
  return hb_blob_get_length(blob.get()) > 0;
}

/// One face. The two costly tables are made at their first use, once for all threads: a document
/// seldom needs every face, and they would double the time to the first page.
class LoadedFace {
 public:
  void load(std::string_view bytes) {
    bytes_ = bytes;
    face_ = open_face(bytes);
    if (!has_table(face_.get(), HB_TAG('g', 'l', 'y', 'f')) ||
        !has_table(face_.get(), HB_TAG('c', 'm', 'a', 'p'))) {
      throw std::invalid_argument("not a TrueType font with glyf outlines and a cmap");
    }
    hb_face_make_immutable(face_.get());
    const FontPointer font(hb_font_create(face_.get()));
    hb_font_extents_t extents{};
    hb_font_get_h_extents(font.get(), &extents);
    const auto per_em = static_cast<std::int64_t>(hb_face_get_upem(face_.get()));
    ascent_ = per_mille(extents.ascender, per_em);
    descent_ = -per_mille(extents.descender, per_em);
  }

  /// Width by character, `absent` where there is no glyph; empty without a file.
  const std::vector<std::uint16_t>& widths() const {
    std::call_once(widths_once_, [this] {
      if (face_) widths_ = read_widths(face_.get());
    });
    return widths_;
  }

  /// The face made ready for repeated subsetting. Precondition: there is a file.
  hb_face_t* prepared() const {
    std::call_once(prepared_once_, [this] { prepared_.reset(hb_subset_preprocess(face_.get())); });
    return prepared_.get();
  }

  std::string_view bytes() const { return bytes_; }
  int ascent() const { return ascent_; }
  int descent() const { return descent_; }

 private:
  std::string_view bytes_;
  FacePointer face_;
  int ascent_ = 0;
  int descent_ = 0;
  mutable std::once_flag widths_once_, prepared_once_;
  mutable std::vector<std::uint16_t> widths_;
  mutable FacePointer prepared_;
};

}  // namespace

struct Fonts::Impl {
  std::string cjk_bytes;
  std::array<LoadedFace, face_count> faces;

  const LoadedFace& operator[](Face face) const { return faces.at(static_cast<std::size_t>(face)); }
};

Fonts::Fonts(std::string_view cjk_bytes) : impl_(std::make_unique<Impl>()) {
  impl_->cjk_bytes = cjk_bytes;
  for (std::size_t i = 0; i < impl_->faces.size(); ++i) {
    const auto face = static_cast<Face>(i);
    if (face != Face::cjk) {
      impl_->faces.at(i).load(embedded(embedded_name(face)));
    } else if (!cjk_bytes.empty()) {
      impl_->faces.at(i).load(impl_->cjk_bytes);
    }
  }
}

Fonts::~Fonts() = default;

bool Fonts::has(Face face, char32_t character) const {
  const auto& widths = (*impl_)[face].widths();
  return character < widths.size() && widths[character] != absent;
}

int Fonts::advance(Face face, char32_t character) const {
  if (!has(face, character)) throw std::out_of_range("the face lacks the character");
  return (*impl_)[face].widths()[character];
}

std::optional<Face> Fonts::pick(Face wanted, char32_t character) const {
  if (!stands_alone(character)) return std::nullopt;
  const bool bold = wanted == Face::text_bold || wanted == Face::symbol_bold;
  for (const Face face : {wanted, bold ? Face::symbol_bold : Face::symbol, Face::cjk}) {
    if (has(face, character)) return face;
  }
  return std::nullopt;
}

int Fonts::ascent(Face face) const { return (*impl_)[face].ascent(); }

int Fonts::descent(Face face) const { return (*impl_)[face].descent(); }

std::string_view Fonts::bytes(Face face) const { return (*impl_)[face].bytes(); }

std::string Fonts::subset(Face face, std::u32string_view characters) const {
  const InputPointer input(hb_subset_input_create_or_fail());
  if (!input) throw std::bad_alloc();
  for (const char32_t character : characters) {
    if (!has(face, character)) throw std::invalid_argument("the face lacks the character");
    hb_set_add(hb_subset_input_unicode_set(input.get()), character);
  }
  hb_set_t* dropped = hb_subset_input_set(input.get(), HB_SUBSET_SETS_DROP_TABLE_TAG);
  for (const hb_tag_t tag : unused_tables) hb_set_add(dropped, tag);
  hb_subset_input_set_flags(input.get(), HB_SUBSET_FLAGS_NO_HINTING);
  const FacePointer made(hb_subset_or_fail((*impl_)[face].prepared(), input.get()));
  if (!made) throw std::runtime_error("no subset of the face could be made");
  const BlobPointer blob(hb_face_reference_blob(made.get()));
  unsigned length = 0;
  const char* data = hb_blob_get_data(blob.get(), &length);
  return {data, length};
}

}  // namespace output
