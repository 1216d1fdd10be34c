#include "calc/station_stages.h"

#include <algorithm>
#include <array>

#include "calc/exposure.h"

namespace calc {
namespace {

constexpr double joules_per_m2_in_mj_per_cm2 = 10;
constexpr double ppm = 1e-6;
// Where people may stand; the guard is reckoned for the nearest.
constexpr std::array<double, 4> stray_distances_m{0.5, 1, 2, 5};
// Where a guard may stand nearer to the print than people do.
constexpr std::array<double, 2> near_guards_m{0.1, 0.2};
// Air that leaves 15 K warmer, common practice.
constexpr Density room_air = Density::from_si(1.2);
constexpr SpecificHeat air_heat = SpecificHeat::from_si(1006);
constexpr TemperatureDifference cooling_rise = TemperatureDifference::from_si(15);
// OSHA permissible exposure limit 0.1 ppm as printed by mass.
constexpr Density ozone_limit = Density::from_si(0.2e-6);

double per_hour(VolumeFlow flow) { return flow.si() * 3600; }
double per_hour(MassFlow flow) { return flow.si() * 3600; }
std::optional<double> per_hour(const std::optional<VolumeFlow>& flow) {
  return flow ? std::optional(per_hour(*flow)) : std::nullopt;
}

/// The one wavelength by which a lamp's light may be judged; none of an arc lamp, which has many.
std::optional<Length> judged_wavelength(const Lamp& lamp) {
  const bool arc = lamp.mercury && lamp.mercury->value;
  if (arc || !lamp.wavelength) return std::nullopt;
  return lamp.wavelength->value;
}

std::string word_of(LightHazard hazard) {
  switch (hazard) {
    case LightHazard::actinic:
      return "actinic";
    case LightHazard::uva:
      return "uva";
    case LightHazard::day:
      break;
  }
  return "day";
}

/// Whether light of wavelength a reaches its daily limit with less than that of b.
bool stricter(Length a, Length b) {
  const std::optional<Dose> of_a = daily_limit(a), of_b = daily_limit(b);
  return of_a && (!of_b || *of_a < *of_b);
}

/// The light of all lamps lit, new ones, and the wavelength by which it is judged: that of the
/// least limit, none where one lamp has no single one.
struct Light {
  Power optical;
  Irradiance window;  ///< of the brightest lamp
  std::optional<Length> wavelength;
};
Light light_of(const Sizing& sizing) {
  Light light;
  bool known = true;
  for (const Curing* curing : {&sizing.pinning, &sizing.curing}) {
    if (!curing->needed || curing->lamp == nullptr || curing->optical <= Power()) continue;
    light.optical += curing->optical;
    const Given<Irradiance>& window = curing->lamp->item->irradiance;
    if (window) light.window = std::max(light.window, window->value);
    const std::optional<Length> own = judged_wavelength(*curing->lamp->item);
    known = known && own.has_value();
    if (own && (!light.wavelength || stricter(*own, *light.wavelength))) light.wavelength = own;
  }
  if (!known) light.wavelength.reset();
  return light;
}

/// Guards nearer than people stand. Light of a print of some size is less than that of a point, and
/// nowhere more than leaves the print.
void add_guards(const Light& light, Dose limit, double share, double worst, Stage& stage) {
  const auto density = [&](double metre, double scattered) {
    const Irradiance e =
        near_irradiance(light.optical * scattered, light.window * scattered, metres(metre));
    return optical_density(e, working_day, limit);
  };
  for (const double metre : near_guards_m) {
    const Irradiance e =
        near_irradiance(light.optical * share, light.window * share, metres(metre));
    stage.guards.push_back({metre, e.si(), density(metre, share), density(metre, worst)});
  }
  const StrayLight& nearest = stage.stray.front();
  stage.guards.push_back({nearest.distance_m, nearest.irradiance_w_per_m2, *stage.guard_density,
                          *stage.guard_density_worst});
}

void add_stray_light(const Job& job, const Light& light, Stage& stage) {
  const Power scattered = light.optical * job.parameters[P::stray_share];
  if (scattered <= Power()) return;
  for (const double metre : stray_distances_m) {
    const Irradiance e = scattered_irradiance(scattered, metres(metre));
    StrayLight stray{metre, e.si(), {}, {}};
    const auto time = light.wavelength ? permitted_time(e, *light.wavelength) : std::nullopt;
    if (time) {
      stray.time_s = time->time.si();
      stray.governs = word_of(time->governs);
    }
    stage.stray.push_back(stray);
  }
  const std::optional<Dose> limit =
      light.wavelength ? daily_limit(*light.wavelength) : std::nullopt;
  if (!limit) return;
  const Length nearest = metres(stray_distances_m.front());
  const Irradiance e = scattered_irradiance(scattered, nearest);
  stage.safe_distance_m = distance_for(e, nearest, working_day, *limit).si();
  stage.guard_density = optical_density(e, working_day, *limit);
  const double worst_share = worst_stray_share(job.parameters);
  const Irradiance worst = scattered_irradiance(light.optical * worst_share, nearest);
  stage.safe_distance_worst_m = distance_for(worst, nearest, working_day, *limit).si();
  stage.guard_density_worst = optical_density(worst, working_day, *limit);
  add_guards(light, *limit, job.parameters[P::stray_share], worst_share, stage);
}

void add_side_effects(const Curing& curing, Stage& stage) {
  if (curing.heat) {
    stage.heat_kw = curing.heat->si() / 1e3;
    stage.cooling_m3_per_h = per_hour(coolant_flow(*curing.heat, room_air, air_heat, cooling_rise));
  }
  if (curing.web) stage.web_degc = curing.web->in_celsius();
  const Given<MassFlow>& ozone = curing.lamp->item->ozone;
  if (ozone) stage.ozone_m3_per_h = per_hour(dilution_air(ozone->value * curing.lit, ozone_limit));
}

Stage lamp_stage(const std::string& kind, const Curing& curing) {
  Stage stage;
  stage.kind = kind;
  if (curing.dose) stage.dose_mj_per_cm2 = curing.dose->si() / joules_per_m2_in_mj_per_cm2;
  if (curing.lamp == nullptr) return stage;
  stage.equipment = curing.lamp->item->name;
  stage.rows = curing.rows;
  stage.units = curing.lamps;
  if (curing.along > Length()) stage.length_m = curing.along.si();
  if (curing.given) stage.dose_given_mj_per_cm2 = curing.given->si() / joules_per_m2_in_mj_per_cm2;
  if (curing.stroke) {
    stage.dose_stroke_mj_per_cm2 = curing.stroke->si() / joules_per_m2_in_mj_per_cm2;
    stage.strokes_over_point = curing.strokes;
    stage.strokes_after = curing.strokes - 1;
    stage.time_after_s = curing.after.si();
    stage.lamps_lit = curing.lit;
    if (curing.drawn) stage.running_kw = curing.drawn->si() / 1e3;
  }
  if (curing.electrical) stage.electrical_kw = curing.electrical->si() / 1e3;
  add_side_effects(curing, stage);
  return stage;
}

/// The coldest the room may be; of an assumed one that of its range.
Temperature coldest_room(const Job& job) {
  const Temperature low = served_low(job.room);
  if (job.room.origin.kind != OriginKind::assumed) return low;
  return std::min(low, Temperature::celsius(parameter(P::room_c).low));
}

void add_dew_point(const Job& job, const Drying& drying, Stage& stage) {
  if (!drying.exhaust || !drying.dew_point) return;
  stage.dew_point_degc = drying.dew_point->in_celsius();
  const Temperature most = drying.dew_point_most.value_or(*drying.dew_point);
  stage.dew_point_most_degc = most.in_celsius();
  const Temperature coldest = coldest_room(job);
  if (most > coldest) stage.condenses_degc = coldest.in_celsius();
}

Stage drying_stage(const Job& job, const Drying& drying) {
  Stage stage;
  stage.kind = "drying";
  stage.water_kg_per_h = per_hour(drying.water);
  stage.heat_kw = drying.heat.si() / 1e3;
  stage.electrical_kw = drying.electrical.si() / 1e3;
  stage.heat_at_least = drying.at_least;
  stage.exhaust_m3_per_h = per_hour(drying.exhaust);
  stage.air_degc = drying.air.in_celsius();
  add_dew_point(job, drying, stage);
  stage.length_m = drying.length.si();
  if (drying.dryer == nullptr) return stage;
  stage.equipment = drying.dryer->item->name;
  stage.units = drying.units;
  const Given<Power>& power = drying.dryer->item->electrical;
  if (power) stage.installed_kw = drying.units * power->value.si() / 1e3;
  stage.installed_length_m = drying.along.si();
  return stage;
}

bool seen_in_print(const SolventRow& row, Region region) {
  const auto printed = [](const std::optional<Sourced>& figure) {
    return !figure || figure->tag == SourceTag::printed;
  };
  const bool us =
      region == Region::eu || (printed(row.us_recommended) && printed(row.us_permissible));
  const bool eu = region == Region::us || (printed(row.eu_indicative) && printed(row.eu_short));
  return us && eu && printed(row.lel) && printed(row.flash) && printed(row.other_flash);
}

SolventUse use_of(const std::string& ink, const BlendPart& part, Region region) {
  SolventUse use;
  use.ink = ink;
  use.solvent = part.name;
  use.share = part.share;
  if (part.row == nullptr) return use;
  const SolventRow& row = *part.row;
  const LowerLimit lel = lower_limit(row);
  use.molar_g = row.molar_g;
  use.lel_percent = lel.value * 100;
  use.lel_estimated = lel.estimated;
  if (const auto limit = exposure_limit(row, region)) use.limit_ppm = *limit / ppm;
  if (const auto limit = short_term_limit(row, region)) use.short_ppm = *limit / ppm;
  use.skin = row.skin;
  if (row.flash) use.flash_degc = row.flash->value;
  if (row.other_flash) use.other_flash_degc = row.other_flash->value;
  use.source = std::string(row.source);
  use.seen = seen_in_print(row, region);
  return use;
}

/// Each ink's solvents once, however many colours print with it.
void add_solvents(const Job& job, const Vapour& vapour, Airing& airing) {
  std::vector<const Ink*> seen;
  for (const ChannelVapour& c : vapour.channels) {
    const Ink* ink = job.channels[c.channel].ink;
    if (ink == nullptr || std::find(seen.begin(), seen.end(), ink) != seen.end()) continue;
    seen.push_back(ink);
    for (const BlendPart& part : c.blend.parts) {
      airing.solvents.push_back(use_of(ink->name, part, region_of_job(job)));
    }
  }
}

Stage vapour_stage(const Job& job, const Vapour& vapour) {
  Stage stage;
  stage.kind = "ventilation";
  stage.vapour_kg_per_h = per_hour(vapour.total);
  Airing airing;
  airing.captured_kg_per_h = per_hour(vapour.captured);
  airing.room_kg_per_h = per_hour(vapour.room);
  airing.captures = vapour.captured > MassFlow();
  airing.voc_kg_per_year = (vapour.yearly_mean * running_time(job)).si();
  airing.voc_peak_kg_per_year = (vapour.total * running_time(job)).si();
  if (vapour.lel) airing.lel_percent = *vapour.lel * 100;
  if (vapour.limit) airing.limit_ppm = *vapour.limit / ppm;
  airing.lel_estimated = vapour.lel_estimated;
  airing.lel_hot = vapour.lel_hot;
  airing.lel_share_percent = vapour.explosive_share * 100;
  airing.exhaust_degc = vapour.exhaust.in_celsius();
  airing.lel_m3_per_h = per_hour(vapour.explosion);
  airing.lel_hot_m3_per_h = per_hour(vapour.explosion_hot);
  airing.health_m3_per_h = per_hour(vapour.health);
  airing.health_least_m3_per_h = per_hour(vapour.health_least);
  airing.health_most_m3_per_h = per_hour(vapour.health_most);
  add_solvents(job, vapour, airing);
  stage.airing = std::move(airing);
  return stage;
}

}  // namespace

double worst_stray_share(const Parameters& parameters) {
  return std::max(parameters[P::stray_share], parameter(P::stray_share).high);
}

std::vector<Stage> stages_of(const Job& job, const Sizing& sizing) {
  std::vector<Stage> stages;
  if (sizing.pinning.needed) stages.push_back(lamp_stage("pinning", sizing.pinning));
  if (sizing.curing.needed) stages.push_back(lamp_stage("uv", sizing.curing));
  // All lamps are lit at the same time: their stray light stands with the last of their stages.
  const auto last = std::find_if(stages.rbegin(), stages.rend(),
                                 [](const Stage& stage) { return !stage.equipment.empty(); });
  if (last != stages.rend()) add_stray_light(job, light_of(sizing), *last);
  if (sizing.drying.needed) stages.push_back(drying_stage(job, sizing.drying));
  if (sizing.vapour.needed) stages.push_back(vapour_stage(job, sizing.vapour));
  return stages;
}

}  // namespace calc
