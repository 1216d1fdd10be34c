/// What the tests of the layout share: the faces, a document in a few words, and its pages read
/// back.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "output/layout.h"

namespace layout_test {

/// The faces of the program, read once.
const output::Fonts& fonts();

/// A document of the given blocks, laid out in the default style.
output::DisplayList set(std::string_view blocks, std::string_view attributes = "");

/// The text runs of a page in the order of painting.
std::vector<output::TextRun> runs(const output::Page& page);

/// The text of a page, runs of one baseline joined, lines by their height, separated by newlines.
std::string text(const output::Page& page);

/// Whether a run begins so.
bool has_run(const output::Page& page, std::string_view beginning);

/// The first run that begins so; fails the test when there is none.
output::TextRun run_of(const output::Page& page, std::string_view beginning);

/// Boxes of a page without furniture and without those of the margin column.
std::vector<output::Box> body_boxes(const output::Page& page);

/// What breaks the invariants of every page; empty when nothing does.
std::string faults(const output::DisplayList& list);

/// The pages before one that is turned the other way, and the last, with less than a quarter on
/// them, unless they begin after a break that was asked for or after a page with something on it
/// that is higher than half of it; empty when there is none.
std::string nearly_empty(const output::DisplayList& list);

/// `count` words of varying length, the same at each call.
std::string words(int count);
/// A paragraph of so many words.
std::string paragraph(int count);
/// So many lines of text, each a list of its own, that fill a page from its top.
std::string filling(int lines);

/// The page on which a run begins so, from 0; -1 when none does.
int page_of(const output::DisplayList& list, std::string_view beginning);

}  // namespace layout_test
