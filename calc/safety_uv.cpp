/// Ultraviolet lamps, ozone, mercury, uncured ink.
#include <algorithm>

#include "calc/exposure.h"
#include "calc/safety_material.h"
#include "calc/safety_parts.h"
#include "calc/station_stages.h"

namespace calc {
namespace {

// OSHA permissible exposure limit, 8 h.
constexpr double ozone_limit_ppm = 0.1;
// Weighting by wavelength ends at 400 nm; below 315 nm no UV-A is left.
constexpr Length weighted_up_to = Length::from_si(400e-9);

/// The lamps of one stage.
struct StageLamps {
  const Lamp* lamp = nullptr;
  const Stage* stage = nullptr;
  double share = 0, worst = 0;  ///< of its light that is scattered, assumed and at most
};

std::vector<StageLamps> lamps_of(const SafetyCase& c) {
  std::vector<StageLamps> list;
  if (c.station == nullptr) return list;
  for (const Stage& stage : c.station->stages) {
    if (stage.kind != "uv" && stage.kind != "pinning") continue;
    for (const Lamp& lamp : c.catalogue.lamps) {
      if (lamp.name != stage.equipment) continue;
      const Parameters& all = c.job.parameters;
      list.push_back({&lamp, &stage, all[P::stray_share], worst_stray_share(all)});
    }
  }
  return list;
}

void arc_notes(const StageLamps& l, const std::string& field, double count,
               std::vector<Notice>& to) {
  Notice ozone{"ozone",
               {number("limit", ozone_limit_ppm, "ppm"), number("lamps", count, "")},
               field + ".ozone",
               {}};
  if (l.stage->ozone_m3_per_h) {
    ozone.args.push_back(words("subject", "rated"));
    ozone.args.push_back(number("air", *l.stage->ozone_m3_per_h, "m3/h"));
  }
  to.push_back(std::move(ozone));
  to.push_back({"mercury_waste", {number("lamps", count, "")}, field + ".mercury", {}});
}

/// At the window without shielding: which daily limit is reached, and when. An arc lamp has many
/// wavelengths, light above 400 nm has no weight: then nothing is said but to ask.
void window_note(const Lamp& lamp, const std::string& field, std::vector<Notice>& to) {
  const Irradiance window = lamp.irradiance->value;
  Notice note{"photobiological",
              {number("irradiance", window.si() / 1e4, "W/cm2")},
              field + ".irradiance",
              {}};
  const bool arc = lamp.mercury && lamp.mercury->value;
  if (arc || !lamp.wavelength) {
    note.args.push_back(words("subject", arc ? "arc" : "unknown"));
    to.push_back(std::move(note));
    return;
  }
  const Length wavelength = lamp.wavelength->value;
  note.args.push_back(number("wavelength", wavelength.si() * 1e9, "nm"));
  const auto time = permitted_time(window, wavelength);
  if (!time) {
    note.args.push_back(words("subject", wavelength > weighted_up_to ? "visible" : "unknown"));
    to.push_back(std::move(note));
    return;
  }
  const bool uva = time->governs == LightHazard::uva;
  const double weight = *spectral_weight(wavelength);
  if (!uva) note.args.push_back(words("subject", "actinic"));
  note.args.push_back(number("dose_limit", (uva ? uva_limit : actinic_limit).si() / 1e3, "kJ/m2"));
  note.args.push_back(number("time", time->time.si(), "s"));
  note.args.push_back(
      number("group", risk_group(window * weight, uva ? window : Irradiance()), ""));
  to.push_back(std::move(note));
}

/// Stray light of the nearest distance looked at, and how far or how dense is enough.
void stray_note(const StageLamps& l, const std::string& field, std::vector<Notice>& to) {
  if (l.stage->stray.empty() || !l.stage->safe_distance_m) return;
  const StrayLight& nearest = l.stage->stray.front();
  const Guard& guard = l.stage->guards.front();
  to.push_back(
      {"stray_light",
       {number("distance", nearest.distance_m, "m"), number("time", *nearest.time_s, "s"),
        number("safe", *l.stage->safe_distance_m, "m"),
        number("density", *l.stage->guard_density, ""), number("share", l.share * 100, "%"),
        number("worst_share", l.worst * 100, "%"),
        number("safe_worst", *l.stage->safe_distance_worst_m, "m"),
        number("density_worst", *l.stage->guard_density_worst, ""),
        number("near", guard.distance_m, "m"), number("density_near", guard.density_worst, "")},
       field + ".wavelength",
       {}});
}

/// Lamps of one row in all stages.
double count_of(const std::vector<StageLamps>& all, const Lamp& lamp) {
  double count = 0;
  for (const StageLamps& l : all) {
    if (l.lamp == &lamp) count += l.stage->units.value_or(0);
  }
  return count;
}

/// What one row of the catalogue brings with it, however many stages it serves.
void lamp_notes(const StageLamps& l, double count, std::vector<Notice>& to) {
  const bool arc = l.lamp->mercury && l.lamp->mercury->value;
  const std::string field = "lamp." + l.lamp->name;
  to.push_back({arc ? "uv_arc" : "uv_led",
                {words("lamp", l.lamp->name), number("lamps", count, "")},
                field,
                {}});
  if (arc) arc_notes(l, field, count, to);
  const bool lit = l.lamp->irradiance && l.lamp->irradiance->value > Irradiance();
  if (lit) window_note(*l.lamp, field, to);
}

void stage_notes(const StageLamps& l, std::vector<Notice>& to) {
  stray_note(l, "lamp." + l.lamp->name, to);
  if (l.stage->web_degc) {
    to.push_back({"hot_web",
                  {number("temperature", *l.stage->web_degc, "degC")},
                  "substrate.temperature_limit",
                  {}});
  }
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
  const std::vector<StageLamps> lamps = lamps_of(c);
  std::vector<const Lamp*> told;
  for (const StageLamps& l : lamps) {
    if (std::find(told.begin(), told.end(), l.lamp) == told.end()) {
      told.push_back(l.lamp);
      lamp_notes(l, count_of(lamps, *l.lamp), to);
    }
    stage_notes(l, to);
  }
  const bool cures = std::any_of(lamps.begin(), lamps.end(),
                                 [](const StageLamps& l) { return l.stage->kind == "uv"; });
  if (!cures) to.push_back({"uv_lamp_unknown", {}, "ink.cure_dose", {}});
  Notice interlock{"lamp_interlock", {}, "line.speed", {}};
  const Given<std::string>& material = c.job.request->substrate.material;
  if (material && names_nitrocellulose(material->value)) {
    interlock.args = {words("subject", "nitrocellulose"), words("material", material->value)};
  }
  to.push_back(std::move(interlock));
  ink_notes(c, to);
}

}  // namespace calc
