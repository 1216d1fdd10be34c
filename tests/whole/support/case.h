/// A plain request and catalogue with changes, taken through the program without its files.
#pragma once

#include <string>
#include <string_view>

#include "calc/specification.h"
#include "intake/read.h"
#include "output/issue.h"

namespace whole {

/// The templates, parsed once.
const output::Templates& templates();
/// The faces compiled into the program.
const output::Fonts& fonts();

/// A request with its catalogue and what was made of them.
struct Case {
  intake::ReadRequest request;
  calc::Catalogue catalogue;
  calc::Specification specification;
  std::string markup() const;  ///< of the document
};

/// The plain request and catalogue with changes as `changed` takes them: those whose key begins
/// with an element of the catalogue change the catalogue. Issued on the request's date.
Case case_of(std::string_view changes);

}  // namespace whole
