/// The JSON of a specification as the tests compare it. nlohmann's header is heavy: figures.cpp
/// alone includes it.
#pragma once

#include <set>
#include <string>

#include "calc/specification.h"

namespace whole {

/// The JSON less the list of inputs, the digests and the files: what the calculation made of the
/// inputs, not the inputs themselves.
std::string figures(const calc::Specification& specification);

/// The JSON less the places of the inputs and the digest of the source: what two forms of one
/// request must have in common.
std::string without_places(const std::string& json);

/// The top-level keys whose values differ between two texts of JSON.
std::set<std::string> differing_keys(const std::string& a, const std::string& b);

/// Where two texts of JSON differ, at most `most` places, for the message of a failed test.
std::string differences(const std::string& a, const std::string& b, int most = 8);

}  // namespace whole
