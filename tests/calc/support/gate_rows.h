/// One change to the plain job of catalogue_maker.h for each code of the gates.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "calc/catalogue.h"
#include "calc/request.h"

namespace gate_rows {

using Change = std::function<void(calc::Request&, calc::Catalogue&)>;

/// A code and the change that brings it out.
struct CodeRow {
  std::string code;
  Change change;
};

const std::vector<CodeRow>& reasons();
const std::vector<CodeRow>& conditions();
const std::vector<CodeRow>& warnings();

/// The catalogue's first head, and its first mode.
calc::Head& head(calc::Catalogue& catalogue);
calc::HeadMode& mode(calc::Catalogue& catalogue);

}  // namespace gate_rows
