/// Text in, Request or Catalogue out, with every fault of the text at once.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "calc/catalogue.h"
#include "calc/request.h"
#include "intake/diagnostic.h"

namespace intake {

enum class TextKind { xml, ini };

/// By extension (.xml, .ini in any case), else by the first non-blank byte: `<` is XML.
TextKind kind_of(std::string_view name, std::string_view text);

/// One request of a file (a file may hold many), with what was found in it. `usable` when there was
/// no error.
struct ReadRequest {
  calc::Request request;
  Diagnostics findings;
  bool usable = false;
  /// The request's own text: its element in a file of many, else the whole file as it was given.
  std::string source;
  int source_line = 1;  ///< of the file, at which that text begins
};

/// Every request of a file, in order; never throws on bad text. A file that cannot be parsed at all
/// yields one unusable entry. `is_catalogue` reports a root <catalogue>, which a folder walk passes
/// over.
struct ReadFile {
  std::vector<ReadRequest> requests;
  bool is_catalogue = false;
};
ReadFile read_requests(std::string_view name, std::string_view text);

struct ReadCatalogue {
  calc::Catalogue catalogue;
  Diagnostics findings;
  bool usable = false;
};
ReadCatalogue read_catalogue(std::string_view name, std::string_view text);

}  // namespace intake
