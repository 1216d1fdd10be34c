/// Paragraphs and headings: text set into slices.
#pragma once

#include <span>
#include <string_view>

#include "output/layout_context.h"

namespace output {

/// What a text brings along.
struct TextOptions {
  std::string_view id;       ///< anchor at its first line
  std::string_view keys;     ///< in the margin at its first line
  Range marker;              ///< text before its first line: a bullet, a number
  double marker_indent = 0;  ///< of the marker, to the left of the column [pt]
  bool keep = false;         ///< its last line stands with what follows
  bool whole = false;        ///< a short one is not broken
};

/// Sets a text of the context's flow line by line, each line a slice. At least two lines of it
/// stand together at the foot and at the top of a page.
void set_lines(LayoutContext& context, const Column& column, Range text, double size,
               const TextOptions& options);

/// A paragraph of inline nodes in the given style; nothing when it is empty.
void set_paragraph(LayoutContext& context, const Column& column, std::span<const Node> content,
                   const InlineStyle& style, TextOptions options);

/// A section's heading with its number, anchor and bookmark; it stands with what follows.
void set_heading(LayoutContext& context, const Column& column, const SectionEntry& entry);

/// Title and customer of the document at the head of page one.
void set_title(LayoutContext& context, const Node& document);

/// The style of running text.
InlineStyle body_style(const LayoutContext& context);

}  // namespace output
