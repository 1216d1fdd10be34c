/// What contradicts itself, once every field is read.
#pragma once

#include "calc/catalogue.h"
#include "calc/request.h"
#include "intake/sink.h"

namespace intake {

/// Contradictions within a request, each with both places.
void check_request(const calc::Request& request, Sink& sink);

/// Contradictions within a catalogue.
void check_catalogue(const calc::Catalogue& catalogue, Sink& sink);

}  // namespace intake
