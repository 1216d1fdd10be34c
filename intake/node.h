/// What both readers hand on: one neutral tree, so that everything after them is shared and the INI
/// and the XML form of a request give the same Request.
#pragma once

#include <string>
#include <vector>

#include "intake/text.h"

namespace intake {

/// An XML element, an INI section or an INI entry, in order of appearance.
struct Node {
  /// An element may turn out to be a section or a field; INI says which.
  enum class Form { element, section, field };

  Form form = Form::element;
  std::string key;    ///< "ink", "viscosity"
  std::string label;  ///< the name of a named section
  bool labelled = false;
  std::string value;  ///< of a field, without blanks at its ends
  Place place;        ///< of the tag's name, the INI header or the INI key
  Place label_place;
  Place value_place;
  std::vector<Node> children;
};

}  // namespace intake
