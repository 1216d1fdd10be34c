/// The block markup the templates expand to: about twenty-five XML elements, parsed into a tree.
///
/// <document title customer id language date author creator subject keywords>  the root; title and
///     customer (a line of text) head page one, the rest goes to the PDF's information
/// <titleblock>  cells of the block on every sheet: <cell name label span>text</cell>. `label` is
///     the small word over the value; `span` its share of a row of 24 (by default after the name:
///     owner 5, title 10, status 4, number 5, type 6, creator 4, approval 4, date 3, revision 3,
///     language 2, sheet 2, any other 4); cells fill rows in their order. The layout writes n / m
///     into the cell named `sheet`; `status` and `title` are set in bold. `note` is one small line
///     below the block, cut short where it is wider.
/// <front>  page-one blocks, set before the table of contents
/// <contents title depth="2"/>  table of contents from the sections, linked, with page numbers
/// <section title id wide="yes" landscape="yes">  numbered heading, may nest up to level 3, gives a
///     bookmark; wide makes its tables and figures wide: they take the margin column too;
///     landscape, at level 1, sets it on pages of its own that are turned on their side
/// <p key>  paragraph. `key` (also on item, row, note, figure): keys set in the margin column at
///     the height of the block's first line, blank separated; a key equal to an anchor id is a link
///     to it; in a wide table or figure they follow the last cell or the caption in small type;
///     after="yes" on a paragraph keeps it on the page of what stands before it (a note to a table)
/// <list ordered="yes"> of <item>, whose content is inline, or p and list
/// <note kind="info|caution|warning" title key>  framed; content inline, or p and list
/// <table columns="l:30 r:15 d:20 l:*" caption wide="yes" dense="yes" lines="yes"> of
///     <head><cell/>..</head> and <row key total="yes" height><cell span/>..</row>. Kinds of
///     column: l left, r right, c centred, d decimal point aligned; width in mm or a share * of the
///     rest (2* = two shares). The head is repeated after a page break; a row is never split unless
///     it is higher than a page beside its headings; a total row has a rule above and is bold; a
///     cell with span covers so many columns; a row is at least `height` high [mm]. dense: rows
///     without room between them; lines: a fine rule under every row.
/// <figure caption wide="yes" key> of one <drawing width height> [mm], origin top left, y down,
///     scaled down when wider than its column:
///     <line x1 y1 x2 y2 stroke weight dash/> <rect x y width height stroke weight fill dash/>
///     <circle x y radius stroke weight fill dash/>
///     <poly points="x,y x,y" closed="yes" stroke weight fill dash/>
///     <label x y anchor="start|middle|end" size weight="bold" rotate colour>text, sub, sup</label>
///     colours as RRGGBB or none, weights and sizes in pt, dash "on off" in whole pt, rotate in
///     degrees counter-clockwise
/// <newpage/>
/// inline, inside p, item, cell, note: <b> <i> <sub> <sup> <code> <a to="anchor id">
///
/// `id` (on section, p, item, note, table, row, figure) makes an anchor and stands once; `also` (on
/// row): further anchors of the row, blank separated. A run of white space is one blank. U+00A0,
/// U+2009 and U+202F never break; the last two are drawn as a gap. U+00AD and U+200B allow a break.
/// A label's y is its baseline; labels are kept within the figure's column. A page break right
/// behind headings comes before them.
#pragma once

#include <map>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace output {

/// One element, or a piece of text (empty name).
struct Node {
  std::string name;
  std::map<std::string, std::string> attributes;
  std::string text;  ///< only when name is empty
  std::vector<Node> children;

  /// The attribute's value, or the fallback.
  std::string_view get(const std::string& key, std::string_view fallback = "") const;
};

/// A fault of the markup itself, which is the program's or a template's, never the request's.
struct MarkupError : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// The tree of a whole document. Throws MarkupError with line and column on malformed XML and on an
/// element or attribute that the list above does not have.
Node parse_markup(std::string_view xml);

}  // namespace output
