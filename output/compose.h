/// From the specification to the markup of the whole document.
#pragma once

#include <string>

#include "calc/specification.h"
#include "output/matter.h"
#include "output/templates.h"

namespace output {

/// The document in block markup (markup.h), in the language of the specification where there are
/// templates for it, else in English. The request gives what only the page shows: customer,
/// remarks; `matter` the request's text and what the issue replaces. Throws std::out_of_range for a
/// code without words and std::runtime_error for a template's fault.
std::string compose(const calc::Specification& specification, const calc::Request& request,
                    const Templates& templates, const Matter& matter = {});

/// Page one alone, without links, as a document of its own.
std::string compose_summary(const calc::Specification& specification, const calc::Request& request,
                            const Templates& templates, const Matter& matter = {});

/// A letter to the customer with the open questions, most weighty first, as plain text of lines at
/// most 78 characters long; empty when nothing is open.
std::string compose_letter(const calc::Specification& specification, const calc::Request& request,
                           const Templates& templates, const Matter& matter = {});

}  // namespace output
