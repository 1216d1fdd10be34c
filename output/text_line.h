/// Text as a stream of measured characters, cut into lines and turned into runs.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "output/display_list.h"
#include "output/markup.h"
#include "output/text_line_measure.h"

namespace output {

/// How a stretch of characters is set.
struct InlineStyle {
  Face face = Face::text;
  double size = 10;  ///< [pt]
  double shift = 0;  ///< of the baseline, downwards [pt]
  Colour colour;
  const std::string* link = nullptr;  ///< name of the anchor it leads to; not owned
  friend bool operator==(const InlineStyle&, const InlineStyle&) = default;
};

/// What a character does at the end of a line.
enum class GlyphKind : std::uint8_t {
  ink,          ///< drawn; a line ends beside it only at a hyphen or an ideograph
  space,        ///< a line may end here, the blank is then dropped
  gap,          ///< room without ink, never breaks
  opportunity,  ///< no width, a line may end here
  soft_hyphen   ///< no width, unless a line ends here: then a hyphen
};

struct Glyph {
  char32_t character = 0;  ///< 0: room without ink
  double width = 0;        ///< [pt]
  std::uint32_t style = 0;
  Face face = Face::text;
  GlyphKind kind = GlyphKind::ink;
  bool joined = false;  ///< no line ends behind it, unless nothing else fits
};

/// A stretch of a flow: first to before last.
struct Range {
  std::size_t first = 0;
  std::size_t last = 0;
};

/// One line of a flow, blanks at its end left out.
struct Line {
  std::size_t first = 0;
  std::size_t last = 0;
  double width = 0;     ///< [pt]
  bool hyphen = false;  ///< a hyphen is drawn at the end
};

/// Measured characters of many texts behind one another; storage is reused from text to text.
class TextFlow {
 public:
  explicit TextFlow(Measurer& measurer) : measurer_(measurer) {}

  void clear();
  /// Starts a text; its blanks are folded against nothing before.
  void open();
  /// Ends the text: blanks at its end are dropped; yields where it stands.
  Range close();
  /// Appends text. White space of XML is folded into one blank.
  void append(std::string_view utf8, const InlineStyle& style);
  /// Appends inline markup; `accent` is the colour of links.
  void append(std::span<const Node> nodes, const InlineStyle& style, Colour accent);

  const std::vector<Glyph>& glyphs() const { return glyphs_; }
  const InlineStyle& style(const Glyph& glyph) const { return styles_[glyph.style]; }
  Measurer& measurer() const { return measurer_; }
  /// Sum of the widths [pt].
  double width(Range range) const;

 private:
  std::uint32_t add_style(const InlineStyle& style);
  void add(char32_t character, std::uint32_t index, const InlineStyle& style);
  void add_ink(char32_t character, std::uint32_t index, const InlineStyle& style);
  void add_space(std::uint32_t index, const InlineStyle& style);
  void add_room(double em, GlyphKind kind, std::uint32_t index, const InlineStyle& style);

  Measurer& measurer_;
  std::vector<Glyph> glyphs_;
  std::vector<InlineStyle> styles_;
  std::size_t start_ = 0;
};

/// Appends the lines of a text to `lines`: ragged right, each as full as `width` [pt] lets it be,
/// the first one `first_width` wide. A word wider than the line is broken within. An empty text has
/// no line.
void break_lines(const TextFlow& flow, Range text, double first_width, double width,
                 std::vector<Line>& lines);

/// Width [pt] of the widest piece of a text that is broken only by force.
double widest_word(const TextFlow& flow, Range text);

/// Appends a line's runs and links to `items`, beginning at x on the baseline y [pt].
void emit_line(const TextFlow& flow, const Line& line, double x, double y,
               std::vector<Item>& items);

}  // namespace output
