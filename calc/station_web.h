/// How warm the web gets under lamps and in a dryer.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "calc/laydown.h"
#include "calc/station_load.h"

namespace calc {

/// A stage that fits neither speed nor substrate: `value` against `limit`, as a Finding has it.
struct StageFailure {
  std::string_view subject;
  double value = 0, limit = 0;
  std::string_view unit;
  bool at_least = true;
};

/// What it takes to warm the web through its thickness.
struct WebHeat {
  AreaMass mass;
  SpecificHeat heat;
};
/// nullopt where the request states no mass per area: then ask.
std::optional<WebHeat> web_heat(const Job& job);

/// Width [m] over which a dryer warms what passes: that of the product, at least that of the image.
Length web_width(const Job& job);

/// Heat of reaction of all UV inks [J/m2] at peak cover, process colours at their limit. Of a load
/// only channel and laydown count.
Dose cure_reaction(const Job& job, const std::vector<ChannelLoad>& loads);

/// Rise of the web [K] under a dose, of an arc lamp with all its other radiation.
TemperatureDifference lamp_rise(const Job& job, const WebHeat& web, Dose dose, bool arc,
                                Dose reaction);

Density ink_density(const Job& job, const Channel& channel);

}  // namespace calc
