/// Curing and drying of a station: how many lamps and dryers, of which row, at which power.
#pragma once

#include <optional>

#include "calc/bom_prices.h"
#include "calc/station_load.h"

namespace calc {

/// The final ultraviolet stage. `needed` without `dose`: no ink says its dose, nothing is sized.
struct Curing {
  bool needed = false;
  std::optional<Dose> dose;            ///< largest over the channels, never the sum
  const Priced<Lamp>* lamp = nullptr;  ///< cheapest fitting; null: none in the catalogue
  int rows = 0, lamps = 0;
  std::optional<Power> electrical;  ///< of all lamps; none where the row does not state it
  Length along;                     ///< along the line
};
Curing size_curing(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                   const std::vector<ChannelLoad>& loads);

/// Drying of aqueous inks.
struct Drying {
  bool needed = false;
  MassFlow water;       ///< at peak cover and highest speed
  MassFlow water_mean;  ///< over running time
  Power heat, electrical;
  Power electrical_mean;
  Length length;                         ///< by the drying rate, along the line
  const Priced<Dryer>* dryer = nullptr;  ///< cheapest fitting; null: none in the catalogue
  int units = 0;
};
Drying size_drying(const Job& job, const PriceBook& book, const std::vector<ChannelLoad>& loads);

}  // namespace calc
