/// What the parts of the layout share: the story they write to and the column they write in.
///
/// The layout works in three steps. Blocks are set into a story, a long strip of slices that no
/// page break cuts (lines, table rows, figures). The plan distributes the slices over pages. The
/// pages are then made up from story and plan.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "output/layout.h"
#include "output/text_line.h"

namespace output {

/// An unbreakable part of the story. Its items have y from its top, x on the page.
struct Slice {
  Box::Kind kind = Box::Kind::text;
  double x = 0, width = 0;  ///< the claimed box [pt]
  double before = 0;        ///< room above, dropped at the top of a page [pt]
  double height = 0;        ///< [pt]
  bool keep = false;        ///< stands on the same page as the next slice
  bool new_page = false;    ///< begins a page
  bool wide = false;        ///< reaches into the margin column
  bool landscape = false;   ///< stands on a page turned on its side
  bool repeats = false;     ///< a table head, set again after a page break
  int head = -1;            ///< slice to repeat when a page begins with this one
  int frame = -1;           ///< in Story::frames
  int keys = -1;            ///< in Story::keys
  Range items;              ///< in Story::items
};

/// The keys of a block, as lines of the margin column, all of one height.
struct KeyGroup {
  int first_line = 0;  ///< in Story::key_lines
  int count = 0;
  double offset = 0;  ///< of the first line's top from the slice's top [pt]
};

/// A note's coloured ground, drawn once a page under all its slices there.
struct Frame {
  double x = 0, width = 0;
  double bar = 3;  ///< width of the bar at the left [pt]
  Colour bar_colour, ground;
};

struct SliceAnchor {
  std::string name;
  int slice = 0;
};

/// A page number to be written when the pages are known.
struct PageReference {
  std::size_t item = 0;  ///< a TextRun in Story::items
  double right = 0;      ///< its right end [pt]
  std::string anchor;
};

struct Story {
  std::vector<Item> items;
  std::vector<Slice> slices;
  std::vector<KeyGroup> keys;
  std::vector<Range> key_lines;  ///< items of each line, y from the line's top
  std::vector<Frame> frames;
  std::vector<SliceAnchor> anchors;
  std::vector<PageReference> references;
  std::vector<Bookmark> bookmarks;
};

/// Where blocks are set.
struct Column {
  double x = 0, width = 0;  ///< [pt]
  int frame = -1;           ///< note they stand in
  bool wide = false;        ///< tables and figures take the margin column too
};

/// A section as heading, contents and bookmark show it.
struct SectionEntry {
  int level = 1;
  std::string number, title, id;
};

/// Type sizes derived from the body size [pt].
struct Sizes {
  double body, table, caption, key;
};

class LayoutContext {
 public:
  LayoutContext(const Fonts& fonts, const PageStyle& page_style, std::vector<char32_t>& unprintable)
      : style(page_style), measurer(fonts, unprintable), flow(measurer) {}

  const PageStyle& style;
  Measurer measurer;
  TextFlow flow;
  std::vector<Line> lines;
  Story story;
  std::set<std::string, std::less<>> ids;  ///< every anchor of the document
  std::vector<SectionEntry> sections;      ///< in the order of the document
  std::size_t next_section = 0;            ///< the one whose heading comes next
  bool landscape = false;                  ///< what is set now stands on turned pages
  double body_bottom = 0;                  ///< lower end of the text on an upright page [pt]
  double landscape_bottom = 0;             ///< the same on a turned one

  Sizes sizes() const {
    const double body = style.body_size;
    return {body, body * 0.90, body * 0.88, body * 0.70};
  }
  double pitch(double size) const { return size * style.leading; }
  double page_width() const { return landscape ? style.page_height : style.page_width; }
  double page_height() const { return landscape ? style.page_width : style.page_height; }
  double body_height() const {
    return (landscape ? landscape_bottom : body_bottom) - style.margin_top;
  }
  Column text_column() const;
  Column wide_column() const;
  double key_left() const { return page_width() - style.margin_right - style.key_column; }

  /// Asks for room between the last block and the next; the larger wish counts.
  void leave(double room) { room_ = room > room_ ? room : room_; }
  /// The next slice begins a page, together with headings right before it.
  void break_page() { break_ = true; }
  /// Begins a slice; its items are appended to the story until `end_slice`.
  Slice& begin_slice(Box::Kind kind, const Column& column);
  void end_slice(double height);
  /// What a page has left beside the headings and the like that stand with the next slice; at least
  /// half a page [pt].
  double room_beside_kept() const;
  /// Makes an anchor at the next slice; an empty id makes none.
  void anchor_next(std::string_view id);

 private:
  bool break_before_headings();

  double room_ = 0;
  bool break_ = false;
};

/// Baseline below the top of a line of the given pitch [pt]: ascent and descent centred in it.
double baseline(const Fonts& fonts, double size, double pitch);

/// A number out of an attribute; the whole of it, finite. Throws MarkupError naming the element.
double number_of(const Node& node, const std::string& attribute);
/// The same, or the fallback when the attribute is absent.
double number_of(const Node& node, const std::string& attribute, double fallback);
/// A number out of text, else MarkupError saying `what` it stands for.
double parse_number(std::string_view text, std::string_view what);
/// "yes" or "no", else MarkupError; absent is no.
bool flag_of(const Node& node, const std::string& attribute);

}  // namespace output
