/// What the reader of a document sees of its markup: blocks of text, their figures and links.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "calc/specification.h"
#include "intake/read.h"
#include "output/markup.h"

namespace whole {

/// A number as printed.
struct Figure {
  double value = 0;
  double slack = 0;  ///< what rounding may have changed: one of its last decimal
};

/// The numbers of a text that stand by themselves, groups of digits joined: not that of "HK-600W".
std::vector<Figure> figures(std::string text);

/// Whether one of the figures is that value in some unit of the document.
bool shows(const std::vector<Figure>& figures, double value);

/// A link inside a text.
struct TextLink {
  std::string to, text;
};

/// A paragraph, item, row or note without blocks of its own.
struct Block {
  std::string section;          ///< anchor, "front" on page one
  std::string name;             ///< of the element
  std::string text;             ///< its cells apart; without drawings
  std::string keys;             ///< of the margin, its own or those of what it stands in
  std::vector<TextLink> links;  ///< in the text
};

/// The texts of a row's cells.
std::vector<std::string> cells(const Block& row);

struct Document {
  calc::Specification made;
  std::vector<Block> blocks;
  std::vector<TextLink> links;
  std::map<std::string, std::string> anchors;  ///< with the text of a row, empty of a section
};

/// The document of a request with the samples' catalogue, issued on one date.
Document document(const intake::ReadRequest& request);

}  // namespace whole
