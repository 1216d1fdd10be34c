/// Solvents that inks are made of: what their vapour and flash points are known by.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "calc/quantity.h"
#include "calc/region.h"
#include "calc/step.h"
#include "calc/ventilation.h"

namespace calc {

/// A figure in the unit of its column and how its source was seen.
struct Sourced {
  double value;
  SourceTag tag;
};

/// A row of the table of solvents. Absent: nothing is known, or no limit is set.
struct SolventRow {
  std::string_view name, cas;
  std::array<std::string_view, 4> also;  ///< other names it goes by
  double molar_g;                        ///< [g/mol]
  Sourced relative_density;              ///< to water [1]
  Atoms atoms;
  bool alcohol;
  std::optional<Sourced> flash;        ///< closed cup [degC]
  std::optional<Sourced> other_flash;  ///< another figure for it where sources disagree [degC]
  std::optional<Sourced> boiling;      ///< [degC]
  std::optional<Sourced> lel;          ///< [%]
  std::optional<double> lel_at;        ///< temperature the limit was measured at, if hot [degC]
  std::optional<Sourced> us_recommended, us_permissible, eu_indicative;  ///< 8 h [ppm]
  std::string_view source;
  std::optional<Sourced> us_short = {}, eu_short = {};  ///< 15 min [ppm]
  bool skin = false;  ///< a list of limits notes that it goes through the skin
};

std::span<const SolventRow> solvents();  ///< solvent_data.cpp
std::string_view solvents_edition();
std::string_view solvents_validity();

/// The row of a name or CAS number, without regard to case; null when the table has none.
const SolventRow* find_solvent(std::string_view name);

/// Flash point: the lower of the figures where they disagree; nullopt when none is known.
std::optional<Temperature> lower_flash(const SolventRow& row);
/// Whether sources disagree on the flash point.
bool flash_conflict(const SolventRow& row);

MolarMass molar_mass(const SolventRow& row);
Density density(const SolventRow& row);

/// Lower explosive limit [1] to reckon with: as stated, else the estimate less its error.
struct LowerLimit {
  double value = 0;
  bool estimated = false;
  bool measured_hot = false;
};
LowerLimit lower_limit(const SolventRow& row);

/// Lowest 8 h limit [1] of the region: recommended and permissible in the United States, indicative
/// in the European Union, of all elsewhere; nullopt where the table has none, then ask.
std::optional<double> exposure_limit(const SolventRow& row, Region region);
/// Lowest limit over 15 min [1] of the region, as above.
std::optional<double> short_term_limit(const SolventRow& row, Region region);

}  // namespace calc
