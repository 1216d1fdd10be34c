/// The display list: what the layout yields and the painter consumes, page by page.
/// Lengths in points (1/72 inch), origin at the top left corner of the page, y downwards.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "output/raster.h"

namespace output {

/// The faces a document is set in. `symbol` faces take over, character by character, what the
/// text faces lack (Greek, Cyrillic, arrows, subscripts); `cjk` is opened at run time.
enum class Face : std::uint8_t { text, text_bold, text_italic, mono, symbol, symbol_bold, cjk };
inline constexpr int face_count = 7;

/// An opaque colour, 8 bits a channel, sRGB.
struct Colour {
  std::uint8_t red = 0;
  std::uint8_t green = 0;
  std::uint8_t blue = 0;
  friend bool operator==(const Colour&, const Colour&) = default;
};

/// UTF-8 text on a baseline, of one face, size and colour; every character exists in the face.
struct TextRun {
  double x = 0;         ///< left end of the baseline [pt]
  double y = 0;         ///< baseline [pt]
  double width = 0;     ///< sum of advances [pt]
  double size = 10;     ///< type size [pt]
  double rotation = 0;  ///< counter-clockwise about (x, y) [degrees]
  Face face = Face::text;
  Colour colour;
  std::string text;
};

struct Stroke {
  Colour colour;
  double width = 0.5;        ///< [pt]
  std::vector<double> dash;  ///< on, off lengths [pt], an even count, whole numbers; empty = solid
};

struct Point {
  double x = 0;
  double y = 0;
};

/// One piece of an outline: the count of points follows from the verb (1, 1, 3, 0).
struct PathStep {
  enum class Verb : std::uint8_t { move, line, curve, close } verb = Verb::move;
  Point a, b, c;
};

/// A filled and/or stroked outline; lines, rectangles and circles are outlines too.
struct Path {
  std::vector<PathStep> steps;
  std::optional<Colour> fill;
  std::optional<Stroke> stroke;
};

/// A rectangle that leads to a named anchor of the same document.
struct Link {
  double x = 0, y = 0, width = 0, height = 0;  ///< [pt]
  std::string anchor;
};

/// A picture in a rectangle.
struct Image {
  double x = 0, y = 0, width = 0, height = 0;  ///< [pt]
  std::shared_ptr<const Raster> raster;        ///< not null
};

using Item = std::variant<TextRun, Path, Link, Image>;

/// A box the layout claims for one block, for the invariants tested on every page.
struct Box {
  enum class Kind : std::uint8_t { text, heading, row, figure, furniture } kind = Kind::text;
  double x = 0, y = 0, width = 0, height = 0;  ///< [pt]
};

struct Page {
  double width = 595.276;   ///< A4 [pt]
  double height = 841.890;  ///< A4 [pt]
  std::vector<Item> items;
  std::vector<Box> boxes;
};

/// A place links and bookmarks lead to.
struct Anchor {
  std::string name;
  int page = 0;  ///< from 0
  double y = 0;  ///< top of the place [pt]
};

struct Bookmark {
  int level = 1;  ///< from 1
  std::string title;
  std::string anchor;
};

/// What stands in the information dictionary and, equal to it, in the XMP packet.
struct Info {
  std::string title, author, subject, keywords, creator;
  std::string date;      ///< YYYY-MM-DD; creation and modification date at 00:00:00 UTC
  std::string language;  ///< BCP 47, for example "en"
};

struct DisplayList {
  Info info;
  std::vector<Page> pages;
  std::vector<Anchor> anchors;
  std::vector<Bookmark> bookmarks;
};

}  // namespace output
