/// The calculation's one entry: a request and a catalogue in, a specification out. Pure.
#pragma once

#include <string>

#include "calc/catalogue.h"
#include "calc/request.h"
#include "calc/specification.h"

namespace calc {

/// The whole specification for a date of issue (YYYY-MM-DD). Every request gets one, infeasible and
/// incomplete ones included. Throws only on a fault of the program (std::logic_error).
Specification calculate(const Request& request, const Catalogue& catalogue,
                        const std::string& date);

}  // namespace calc
