/// INI to the neutral tree.
#pragma once

#include <vector>

#include "intake/node.h"
#include "intake/text.h"
#include "intake/xml_scan.h"

namespace intake {

/// The request as a tree whose root holds the fields of [request] and all other sections, in order
/// of appearance. Every line that is neither a section, an entry nor a comment is added to
/// `faults`; the others are read all the same. Values are those Boost.PropertyTree reads; places
/// come from a scan of the lines, which PropertyTree does not keep.
Node read_ini_tree(const SourceText& text, std::vector<LexicalFault>& faults);

}  // namespace intake
