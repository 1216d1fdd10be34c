/// Ultraviolet lamps, ozone, mercury, uncured ink.
#include <algorithm>

#include "calc/safety_parts.h"

namespace calc {
namespace {

// 2006/25/EC Annex I: UV-A on the eye, daily.
constexpr double uva_daily_j_per_m2 = 1e4;
// OSHA permissible exposure limit, 8 h.
constexpr double ozone_limit_ppm = 0.1;

const Lamp* chosen_lamp(const SafetyCase& c, int& lamps) {
  if (c.station == nullptr) return nullptr;
  for (const Stage& stage : c.station->stages) {
    if (stage.kind != "uv") continue;
    for (const Lamp& lamp : c.catalogue.lamps) {
      if (lamp.name != stage.equipment) continue;
      lamps = stage.units.value_or(0);
      return &lamp;
    }
  }
  return nullptr;
}

void lamp_notes(const Lamp& lamp, int lamps, std::vector<Notice>& to) {
  const bool arc = lamp.mercury && lamp.mercury->value;
  const std::string field = "lamp." + lamp.name;
  const double count = lamps;
  to.push_back({arc ? "uv_arc" : "uv_led",
                {words("lamp", lamp.name), number("lamps", count, "")},
                field,
                {}});
  if (arc) {
    to.push_back({"ozone",
                  {number("limit", ozone_limit_ppm, "ppm"), number("lamps", count, "")},
                  field + ".mercury",
                  {}});
    to.push_back({"mercury_waste", {number("lamps", count, "")}, field + ".mercury", {}});
  }
  // Without shielding the daily limit is reached in this time at the window.
  const double irradiance = lamp.irradiance ? lamp.irradiance->value.si() : 0;
  if (irradiance <= 0) return;
  to.push_back({"photobiological",
                {number("dose_limit", uva_daily_j_per_m2 / 1e3, "kJ/m2"),
                 number("irradiance", irradiance / 1e4, "W/cm2"),
                 number("time", uva_daily_j_per_m2 / irradiance, "s")},
                field + ".irradiance",
                {}});
}

void ink_notes(const SafetyCase& c, std::vector<Notice>& to) {
  for (const Ink* ink : inks_of(c.job, InkFamily::uv)) {
    const std::string field = "ink." + ink->name;
    to.push_back({"uncured_ink", {words("ink", ink->name)}, field + ".family", {}});
    if (ink->cure_dose) continue;
    to.push_back({"cure_dose_unknown", {words("ink", ink->name)}, field + ".cure_dose", {}});
  }
}

}  // namespace

void uv_notes(const SafetyCase& c, std::vector<Notice>& to) {
  if (!has_family(c.job, InkFamily::uv)) return;
  int lamps = 0;
  const Lamp* lamp = chosen_lamp(c, lamps);
  if (lamp != nullptr) lamp_notes(*lamp, lamps, to);
  if (lamp == nullptr) to.push_back({"uv_lamp_unknown", {}, "ink.cure_dose", {}});
  to.push_back({"lamp_interlock", {}, "line.speed", {}});
  ink_notes(c, to);
}

}  // namespace calc
