/// The rows the unit table is made of.
#pragma once

#include <span>
#include <string_view>

#include "intake/unit.h"

namespace intake {

/// All units but those of money. Within a dimension the first is the customary one.
std::span<const Unit> physical_units();

/// ISO 4217 codes a price may be in.
std::span<const std::string_view> currencies();

}  // namespace intake
