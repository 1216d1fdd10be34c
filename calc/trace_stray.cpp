/// The light that the lamps scatter into the room, its limit, guards and distances, step by step.
#include <algorithm>
#include <cmath>

#include "calc/exposure.h"
#include "calc/eye.h"
#include "calc/station_stages.h"
#include "calc/trace.h"
#include "calc/trace_lamp.h"

namespace calc {
namespace {

const Basis light_basis{"light scattered evenly by a surface", SourceTag::computed,
                        "from five times the lit length on; nearer it is less"};
const Basis limit_basis{"ICNIRP 2004; Directive 2006/25/EC Annex I", SourceTag::memory,
                        "unprotected eyes and skin, not photosensitised"};
const Basis guard_basis{"light scattered evenly by a surface; ICNIRP 2004", SourceTag::computed,
                        "upper bound close to the print; scattered light only"};

/// The weight and the limit of the light of `judged`, among the steps of `t`.
void weight(const LampTrace& t, const LampTrace& judged) {
  const Length wavelength = judged.lamp.wavelength->value;
  const SpectralInterval i = *spectral_interval(wavelength);
  const SpectralTable& table = spectral_table();
  t.w.formula(t.id("weight"), "S", "S_1*(S_2/S_1)^((l-l_1)/(l_2-l_1))",
              {from_catalogue("l", wavelength.si() * 1e9, "nm", judged.ref + "wavelength"),
               constant("l_1", i.low.nm, "nm"), constant("l_2", i.high.nm, "nm"),
               constant("S_1", i.low.weight, ""), constant("S_2", i.high.weight, "")},
              *spectral_weight(wavelength), "",
              {std::string(table.source), table.tag, std::string(table.validity)});
  const bool uva = wavelength.si() * 1e9 >= 315 * (1 - 1e-9);
  t.w.formula(t.id("limit"), "H_lim", uva ? "min(30/S,10000)" : "30/S",
              {t.w.step("S", t.id("weight"))}, daily_limit(wavelength)->si(), "J/m2", limit_basis);
}

/// Of both the one whose light reaches its daily limit with less.
const LampTrace& stricter(const LampTrace& a, const LampTrace& b) {
  const auto limit = [](const LampTrace& t) {
    return t.lamp.wavelength ? daily_limit(t.lamp.wavelength->value) : std::nullopt;
  };
  const std::optional<Dose> of_a = limit(a), of_b = limit(b);
  return of_b && (!of_a || *of_b < *of_a) ? b : a;
}

/// Guards nearer than the first distance: the light of a point or that of the print, the lesser.
void guards(const LampTrace& t, const LampTrace* other) {
  const double worst = worst_stray_share(t.w.job.parameters);
  for (const Guard& guard : t.stage.guards) {
    if (guard.distance_m >= t.stage.stray.front().distance_m) continue;  // its steps stand already
    const std::string at = "guard_" + std::to_string(std::lround(guard.distance_m * 1e3)) + "mm";
    std::vector<StepInput> inputs{t.w.step("P_o", t.id("optical")), constant("pi", pi, ""),
                                  constant("d", guard.distance_m, "m"),
                                  t.w.step("H_lim", t.id("limit")), t.irradiance()};
    std::string power = "P_o", window = "E";
    if (other != nullptr) {
      inputs.push_back(t.w.step("P_p", other->id("optical")));
      inputs.push_back(from_catalogue("E_p", other->lamp.irradiance->value.si() * 1e-4, "W/cm2",
                                      other->ref + "irradiance"));
      power = "(P_o+P_p)";
      window = "max(E,E_p)";
    }
    std::string exposed = "max(0,log10(r*min(";
    exposed.append(power).append("*1000/(pi*d^2),").append(window);
    exposed.append("*10000)*28800/H_lim))");
    const auto step = [&](const std::string& name, const char* symbol, const StepInput& share,
                          double value) {
      std::vector<StepInput> all{share};
      all.insert(all.end(), inputs.begin(), inputs.end());
      t.w.formula(t.id(name.c_str()), symbol, exposed, all, value, "", guard_basis);
    };
    step(at, "OD_g", from_parameter(t.w.job, "r", P::stray_share), guard.density);
    step(at + "_worst", "OD_gm", from_range(t.w.job, "r", P::stray_share, worst),
         guard.density_worst);
  }
}

/// Light at a distance.
void light(const LampTrace& t, const LampTrace* other, const StrayLight& stray,
           const std::string& name) {
  std::vector<StepInput> inputs{from_parameter(t.w.job, "r", P::stray_share),
                                t.w.step("P_o", t.id("optical")), constant("pi", pi, ""),
                                constant("d", stray.distance_m, "m")};
  if (other != nullptr) inputs.push_back(t.w.step("P_p", other->id("optical")));
  t.w.formula(t.id(name.c_str()), "E_s",
              other == nullptr ? "r*P_o*1000/(pi*d^2)" : "r*(P_o+P_p)*1000/(pi*d^2)",
              std::move(inputs), stray.irradiance_w_per_m2, "W/m2", light_basis);
}

/// How long a day it may fall on eyes and skin.
void permitted(const LampTrace& t, const StrayLight& stray, const std::string& name) {
  t.w.formula(t.id((name + "_time").c_str()), "t", "min(28800,H_lim/E_s)",
              {t.w.step("H_lim", t.id("limit")), t.w.step("E_s", t.id(name.c_str()))},
              *stray.time_s, "s", limit_basis);
}

/// The light at the distances beyond the first.
void farther(const LampTrace& t, const LampTrace* other) {
  for (std::size_t i = 1; i < t.stage.stray.size(); ++i) {
    const StrayLight& stray = t.stage.stray[i];
    const std::string name = stray_name(stray.distance_m);
    light(t, other, stray, name);
    if (stray.time_s && t.w.has(t.id("limit"))) permitted(t, stray, name);
  }
}

/// What follows for it from the limit.
void limits(const LampTrace& t, const LampTrace* other) {
  const StrayLight& nearest = t.stage.stray.front();
  const LampTrace& judged = other == nullptr ? t : stricter(t, *other);
  if (!nearest.time_s || !judged.lamp.wavelength) return;
  weight(t, judged);
  const StepInput e = t.w.step("E_s", t.id("stray"));
  const StepInput limit = t.w.step("H_lim", t.id("limit"));
  permitted(t, nearest, "stray");
  t.w.formula(t.id("safe"), "d_8", "d*sqrt(E_s*28800/H_lim)",
              {constant("d", nearest.distance_m, "m"), e, limit}, *t.stage.safe_distance_m, "m",
              light_basis);
  t.w.formula(t.id("density"), "OD", "max(0,log10(E_s*28800/H_lim))", {e, limit},
              *t.stage.guard_density, "", limit_basis);
  const double worst = worst_stray_share(t.w.job.parameters);
  const StepInput most = from_range(t.w.job, "r_m", P::stray_share, worst);
  const StepInput share = from_parameter(t.w.job, "r", P::stray_share);
  t.w.formula(t.id("safe_worst"), "d_8m", "d_8*sqrt(r_m/r)",
              {t.w.step("d_8", t.id("safe")), most, share}, *t.stage.safe_distance_worst_m, "m",
              light_basis);
  t.w.formula(t.id("density_worst"), "OD_m", "max(0,log10(E_s*r_m/r*28800/H_lim))",
              {e, most, share, limit}, *t.stage.guard_density_worst, "", limit_basis);
  guards(t, other);
}

}  // namespace

std::string stray_name(double metres) {
  return "stray_" + std::to_string(std::lround(metres * 1e3)) + "mm";
}

void trace_stray(const LampTrace& t, const LampTrace* other) {
  if (t.stage.stray.empty()) return;
  light(t, other, t.stage.stray.front(), "stray");
  limits(t, other);
  farther(t, other);
}

}  // namespace calc
