/// From the specification to the markup of the whole document.
#pragma once

#include <string>

#include "calc/specification.h"
#include "output/templates.h"

namespace output {

/// The document in block markup (markup.h), in the language of the specification where there are
/// templates for it, else in English. The request gives what only the page shows: customer,
/// remarks. Throws std::out_of_range for a code without words and std::runtime_error for a
/// template's fault.
std::string compose(const calc::Specification& specification, const calc::Request& request,
                    const Templates& templates);

}  // namespace output
