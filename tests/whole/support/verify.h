/// The chosen arrangement checked once more with rules of the tests' own: nothing here calls the
/// calculation.
#pragma once

#include "calc/catalogue.h"
#include "calc/request.h"
#include "calc/specification.h"

namespace whole {

/// Every head of the catalogue is chosen or else rejected, once, with reasons that fail by their
/// own figures and agree with the catalogue; those of the alternatives too. Asserts.
void verify_rejected(const calc::Specification& specification, const calc::Catalogue& catalogue);

/// Counts, places, coverage of the width, bodies, frequency, resolution and limits of the chosen
/// arrangement, from the request, the catalogue and the group's own numbers. Asserts.
void verify_chosen(const calc::Specification& specification, const calc::Request& request,
                   const calc::Catalogue& catalogue);

}  // namespace whole
