/// The faces: their bytes, which characters they have, and how wide each is.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "output/display_list.h"

namespace output {

/// Immutable after construction; safe to share between threads.
class Fonts {
 public:
  /// The faces compiled into the program. `cjk_bytes` (may be empty) is a TrueType file for Han
  /// and kana, read by the caller from the system at run time; it is copied. Throws
  /// std::invalid_argument when they are not TrueType with glyf outlines.
  explicit Fonts(std::string_view cjk_bytes = {});
  ~Fonts();
  Fonts(const Fonts&) = delete;
  Fonts& operator=(const Fonts&) = delete;
  Fonts(Fonts&&) = delete;
  Fonts& operator=(Fonts&&) = delete;

  /// Width [1/1000 em], rounded to a whole number as the PDF's own width table has it.
  int advance(Face face, char32_t character) const;
  /// Whether the face has a glyph for the character.
  bool has(Face face, char32_t character) const;
  /// The face that draws the character when `wanted` is asked for: wanted itself, else the symbol
  /// face of the same weight, else cjk; nullopt when no face has it or it needs shaping (Arabic,
  /// Hebrew, Indic and the like), control characters included.
  std::optional<Face> pick(Face wanted, char32_t character) const;
  /// Ascent and descent (both positive) of a face [1/1000 em].
  int ascent(Face face) const;
  int descent(Face face) const;
  /// The whole TrueType file of a face (empty for cjk when none was given).
  std::string_view bytes(Face face) const;
  /// A TrueType file with the glyphs of these characters only, numbered afresh, without layout
  /// tables and hints. Throws std::invalid_argument when the face lacks one of the characters.
  std::string subset(Face face, std::u32string_view characters) const;

 private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace output
