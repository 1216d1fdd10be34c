/// Specifications built by hand, for tests of the document alone. Every figure is invented.
#pragma once

#include <string>

#include "calc/request.h"
#include "calc/specification.h"
#include "output/compose_context.h"
#include "output/templates.h"

namespace hand_made {

struct Case {
  calc::Specification spec;
  calc::Request request;
};

Case feasible();     ///< four process colours and white, single pass, UV, everything filled
Case conditional();  ///< the same under conditions, with unpriced lines and warnings
Case scanning();     ///< one colour from a carriage, aqueous, with a dryer
Case infeasible();   ///< every head rejected
Case incomplete();   ///< nothing but a title and questions
Case hostile();      ///< names full of markup, control characters and broken UTF-8

/// The words compiled in.
const output::Templates& templates();
/// The case must outlive it.
output::Context context(const Case& made);
/// Whether a text has a part in it.
bool holds(const std::string& text, const std::string& part);

}  // namespace hand_made
