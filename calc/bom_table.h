/// What each kind of line shows beside its row: reference designation, requirement, data.
#pragma once

#include <array>
#include <string_view>

#include "calc/bom.h"

namespace calc {

struct BomKind {
  PartCode code;
  std::string_view reference;                 ///< letters of the reference designation, or empty
  std::array<std::string_view, 3> serves;     ///< request keys; empty = none
  std::array<std::string_view, 4> technical;  ///< catalogue fields shown as technical data
};

/// The row of a code.
const BomKind& bom_kind(PartCode code);

}  // namespace calc
