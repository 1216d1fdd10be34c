/// Curing and drying of a station: how many lamps and dryers, of which row, at which power.
#pragma once

#include <optional>

#include "calc/bom_prices.h"
#include "calc/cure.h"
#include "calc/station_load.h"

namespace calc {

/// The final ultraviolet stage. `needed` without `dose`: no ink says its dose, nothing is sized.
struct Curing {
  bool needed = false;
  std::optional<Dose> dose;            ///< largest over the channels, never the sum
  const Priced<Lamp>* lamp = nullptr;  ///< least cost over the years; null: none that fits
  int rows = 0, lamps = 0;
  std::optional<Power> electrical;  ///< of all lamps; none where the row does not state it
  Length along;                     ///< along the line; zero on a carriage
  std::optional<Dose> given;        ///< by the rows chosen at the highest speed
  std::optional<Dose> stroke;       ///< on a carriage: of one lamp in one stroke
  double strokes = 0;  ///< on a carriage: over a point, window along the feed / advance
};

/// The carriage whose advance and speed give the least dose; null where none scans.
const Scan* fastest_scan(const std::vector<Group>& groups);

/// What counts of a lamp in this job. irradiance and both windows stated.
LampWindow window_of(const Job& job, const Lamp& lamp);

/// The lamp of the fewest unpriced lines, then of the least sum of price, the exhaust that an arc
/// lamp adds, and energy over the years at present value. Ties go by the catalogue.
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
  Length along;                          ///< of the units in line, at least `length`
  const Priced<Dryer>* dryer = nullptr;  ///< cheapest fitting; null: none in the catalogue
  int units = 0;
};
Drying size_drying(const Job& job, const PriceBook& book, const std::vector<ChannelLoad>& loads);

}  // namespace calc
