/// A whole calculation as text for the terminal.
#pragma once

#include <string>

#include "calc/specification.h"
#include "output/templates.h"

namespace output {

/// Requirement, answer, conditions, heads left out, questions, and every step of the trace with its
/// formula, inputs and source; lines of at most 100 columns where words allow it.
std::string explanation(const calc::Specification& specification, const calc::Request& request,
                        const Templates& templates);

}  // namespace output
