/// The lexical look at an XML text that pugixml does not take: faults it passes over in silence,
/// the places of attributes and the ends of elements.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "intake/sink.h"
#include "intake/text.h"

namespace intake {

struct ScannedAttribute {
  std::string_view name;
  Place name_place;
  Place value_place;  ///< between the quotes
};

/// Start and end of an element at depth 1 or 2, tags included; and the attributes of any element.
struct ScannedElement {
  std::size_t start = 0;  ///< of its `<`
  std::size_t end = 0;    ///< behind its end tag; 0 at greater depth
  std::vector<ScannedAttribute> attributes;
};

struct XmlScan {
  /// The root and its children, and every element with attributes, in order of start.
  std::vector<ScannedElement> elements;
  /// Whether the text can be handed to the parser: tags match, depth and size are bounded.
  bool parsable = true;
  const ScannedElement* find(std::size_t start) const;
};

/// A fault of the file's text, not yet given to one of its requests.
struct LexicalFault {
  std::string_view code;
  Place place;
  std::string message;
  std::string note;
  std::string hint;
};

/// Scans the whole text. Linear in its length; nesting deeper than 12 and more than 16 attributes
/// on an element are faults.
XmlScan scan_xml(std::string_view text, std::vector<LexicalFault>& faults);

}  // namespace intake
