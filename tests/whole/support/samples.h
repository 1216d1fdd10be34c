/// The sample requests and their catalogue, read as the program reads them.
#pragma once

#include <string>
#include <vector>

#include "calc/catalogue.h"
#include "intake/read.h"

namespace whole {

/// Contents of a file below the source folder. Throws std::runtime_error when it cannot be read.
std::string read_source(const std::string& path);

/// The catalogue of sample_requests/. Throws when it has an error.
const calc::Catalogue& sample_catalogue();

/// Every request of sample_requests/ in order of path; all usable, or it throws.
const std::vector<intake::ReadRequest>& sample_requests();

}  // namespace whole
