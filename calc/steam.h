/// Latent heat of water by temperature, as printed.
#pragma once

#include <span>
#include <string_view>

#include "calc/quantity.h"
#include "calc/step.h"

namespace calc {

/// Latent heat of evaporation at a temperature.
struct SteamRow {
  double celsius, kj_per_kg;
  SourceTag tag;
};
struct SteamTable {
  std::span<const SteamRow> rows;  ///< in rising order
  std::string_view source, edition, validity;
};
const SteamTable& steam_table();  ///< steam_data.cpp

/// The two rows a temperature lies between; beyond the ends the two nearest.
struct SteamInterval {
  SteamRow low, high;
};
SteamInterval steam_interval(Temperature temperature);

}  // namespace calc
