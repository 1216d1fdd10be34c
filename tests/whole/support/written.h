/// Requests and catalogues written as text from entries "section.key = value", so that a test can
/// say what it changes in one line. Everything in them is invented.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "calc/catalogue.h"
#include "intake/read.h"

namespace whole {

/// Key with the names of its sections ("ink.black.viscosity", "head.A.mode.grey.drops") and value.
using Entry = std::pair<std::string, std::string>;
using Entries = std::vector<Entry>;

/// A flat UV label line of two process colours, all it needs given; feasible with plain_catalogue.
const Entries& plain_request();
/// Two heads and what stands around them, every field of every element given once.
const Entries& plain_catalogue();

/// Entries with changes, one a line: "key = value" sets, "-prefix" takes out the key itself and all
/// keys below it. Throws std::invalid_argument for any other line.
Entries changed(Entries entries, std::string_view changes);

std::string as_ini(const Entries& request);
std::string as_xml(const Entries& entries, const std::string& root);

/// The request or catalogue as the program reads it. Throws std::runtime_error with the findings
/// when it has an error.
intake::ReadRequest read_request(const Entries& entries);
calc::Catalogue read_catalogue(const Entries& entries);

}  // namespace whole
