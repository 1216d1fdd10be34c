/// Curing and drying of a station: how many lamps and dryers, of which row, at which power.
#pragma once

#include <optional>

#include "calc/bom_prices.h"
#include "calc/cure.h"
#include "calc/drying.h"
#include "calc/station_load.h"
#include "calc/station_web.h"

namespace calc {

/// A stage of ultraviolet lamps, the final one or pinning before it. `needed` without `dose`: no
/// ink says its dose, nothing is sized.
struct Curing {
  bool needed = false;
  std::optional<Dose> dose;            ///< largest over the channels, never the sum
  const Priced<Lamp>* lamp = nullptr;  ///< least cost over the years; null: none that fits
  int rows = 0, lamps = 0;
  std::optional<Power> electrical;  ///< of all lamps; none where the row does not state it
  std::optional<Power> drawn;       ///< of the lamps lit
  Length along;                     ///< along the line; zero on a carriage
  Length feed;                      ///< on a carriage: windows lit side by side along the feed
  std::optional<Dose> given;        ///< by the rows chosen at the highest speed
  std::optional<Dose> stroke;       ///< on a carriage: of one lamp in one stroke
  double strokes = 0;  ///< on a carriage: whole ones that light the ink of a point's last
  Time after;          ///< on a carriage: of the strokes that must follow the last that prints
  std::optional<Irradiance> least;  ///< the inks ask for, of aged lamps
  int sets = 1;                     ///< of rows, of pinning in several places
  std::vector<int> places;          ///< of pinning on a line: sets behind each group's positions
  int lit = 0;                      ///< lamps lit at a time
  Power optical;                    ///< of the lamps lit, new
  std::optional<Power> heat;  ///< left in them for their coolant; none where power is not known
  std::optional<Temperature>
      web;  ///< hottest, at the least speed; none where its mass is not known
  std::optional<StageFailure>
      failure;  ///< why no lamp of the catalogue fits; none without usable ones
};

/// The carriage whose advance and speed give the least dose; null where none scans.
const Scan* fastest_scan(const std::vector<Group>& groups);

/// What counts of a lamp in this job. irradiance and both windows stated.
LampWindow window_of(const Job& job, const Lamp& lamp);

/// Dose of one row of new lamps at the least speed [J/m2], which warms the web; on a carriage that
/// of one stroke, for the web cools until the next.
Dose heating_dose(const Job& job, const Lamp& lamp, const Scan* scan);
/// Strokes that lay down the ink of a point [1].
double prints_over_point(const Scan& scan);

/// The lamp of the fewest unpriced lines, then of the least sum of price, the exhaust that an arc
/// lamp adds, and energy over the years at present value. Ties go by the catalogue.
/// Lamps too dim for an ink, or that would overheat the substrate at the least speed, are passed
/// over. Pinning gives no credit to the dose, but its heat counts.
Curing size_curing(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                   const std::vector<ChannelLoad>& loads, const Curing& pinning);
/// What the lamps of the final cure of these channels cost at least [money], price and energy over
/// the years as ownership() has it, where any are chosen; zero where none serves. Of a carriage one
/// on either side. A figure that is not known counts nothing. Of the loads only the channel is
/// read.
Money least_of_lamps(const Job& job, const PriceBook& book, const std::vector<ChannelLoad>& loads,
                     bool scanning);
/// Pinning where an ink states a dose for it: lamps that can be dimmed, behind every colour
/// position but the last. `given` is the dose of one place.
Curing size_pinning(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                    const std::vector<ChannelLoad>& loads);

/// Tells the groups where their pinning stands.
void stand_pinning(const Curing& pinning, std::vector<Group>& groups);

/// Depth of a lamp along the motion [m]; its window where the row states none.
Length lamp_depth(const Lamp& lamp);

/// What the lamps of a carriage hang on beside its speed and advance.
struct CarriageInks {
  std::vector<ChannelLoad> loads;  ///< channel and laydown alone, of all groups
  std::size_t head = 0;            ///< of the first group, its index in the catalogue
  bool exhausted = false;          ///< an ink asks for exhaust anyway
};

/// Length on a carriage [m] of the lamps that size_pinning() and size_curing() choose for it: one
/// of each stage on either side of the heads, for what is lit together stands side by side along
/// the feed. Where a stage is needed and none can be chosen, the deepest of the catalogue counts.
/// Of the scan only speed, advance, steps and passes are read.
Length carriage_lamps(const Job& job, const PriceBook& book, const CarriageInks& inks,
                      const Scan& scan);

/// Drying of aqueous inks.
struct Drying {
  bool needed = false;
  MassFlow wet;         ///< at peak cover and highest speed, within an image
  MassFlow water;       ///< the same over images and the gaps between them
  MassFlow water_mean;  ///< over running time
  Power heat, electrical;
  bool at_least = false;  ///< both without what warms the substrate, whose mass is not known
  Power electrical_mean;
  Length length;                         ///< that dries the film of an image, along the line
  Length along;                          ///< of the units in line, at least `length`
  const Priced<Dryer>* dryer = nullptr;  ///< cheapest fitting; null: none in the catalogue
  int units = 0;
  Temperature air;                       ///< in the dryer and leaving it
  std::optional<double> humidity_in;     ///< of the room's air [kg/kg]
  double humidity_out = 0;               ///< of the air leaving [kg/kg]
  std::optional<Temperature> dew_point;  ///< of the air leaving
  /// The same at the moistest end of what the air may leave with.
  std::optional<Temperature> dew_point_most;
  MassFlow dry_air;
  std::optional<VolumeFlow> exhaust;    ///< as hot as it leaves
  std::optional<StageFailure> failure;  ///< why air cannot carry the water off
};
/// A dryer holds the heat and air of several products: power, heat and air follow the water of
/// images and gaps together. A film must dry on its way through, so the length follows the film.
Drying size_drying(const Job& job, const PriceBook& book, const std::vector<ChannelLoad>& loads);
/// What the dryers and their energy cost over the years [money], as ownership() has it; zero where
/// nothing dries. A dryer without a price counts its energy alone.
Money cost_of_dryers(const Job& job, const PriceBook& book, const std::vector<ChannelLoad>& loads);

}  // namespace calc
