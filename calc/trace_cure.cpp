#include <cmath>

#include "calc/exposure.h"
#include "calc/eye.h"
#include "calc/named.h"
#include "calc/station_cure.h"
#include "calc/station_stages.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis dose_basis{"radiant exposure = mean irradiance times dwell", SourceTag::computed,
                       "highest speed of the line"};
const Basis carriage_basis{"dose of a stroke times strokes over a point", SourceTag::computed,
                           "last ink of a point, at the end of the swath"};
const Basis stroke_basis{"radiant exposure = mean irradiance times dwell", SourceTag::computed,
                         "speed of the carriage"};
const Basis window_basis{"geometry of swath and window", SourceTag::computed,
                         "windows side by side from where the swath begins"};
const Basis power_basis{"energy balance of the lamps", SourceTag::computed, "new lamps, all lit"};
const Basis lit_basis{"energy balance of the lamps", SourceTag::computed, "those lit at a time"};
const Basis web_basis{
    "energy balance of the web", SourceTag::computed,
    "least speed, new lamps, warm through the thickness, no loss; on a carriage one "
    "stroke"};
const Basis light_basis{"light scattered evenly by a surface", SourceTag::computed,
                        "from five times the lit length on; nearer it is less"};
const Basis limit_basis{"ICNIRP 2004; Directive 2006/25/EC Annex I", SourceTag::memory,
                        "unprotected eyes and skin, not photosensitised"};
const Basis guard_basis{"light scattered evenly by a surface; ICNIRP 2004", SourceTag::computed,
                        "upper bound close to the print; scattered light only"};
const Basis air_basis{"heat balance of the cooling air", SourceTag::practice, "15 K warmer"};
const Basis ozone_basis{"29 CFR 1910.1000: 0.1 ppm, 0.2 mg/m3", SourceTag::printed,
                        "perfect mixing; extract at the lamp"};

/// One stage with the lamp it takes.
struct LampTrace {
  TraceWriter& w;
  const Stage& stage;
  const Lamp& lamp;
  const Scan* scan;
  std::string ref;  ///< "lamp.NAME."

  std::string id(const char* name) const { return "station." + stage.kind + "." + name; }
  /// The step of the dose given, whose name tells pinning from cure.
  std::string dose_id() const {
    return stage.kind == "uv" ? "station.lamp_dose" : id("dose_given");
  }
  int lit() const { return stage.lamps_lit.value_or(*stage.units); }
  int sets() const {
    if (stage.kind != "pinning" || scan != nullptr) return 1;
    const LampWindow window = window_of(w.job, lamp);
    return *stage.rows /
           lamp_rows(Dose::from_si(*stage.dose_mj_per_cm2 * 10), window, w.job.speed->high);
  }
  StepInput shape() const {
    if (lamp.shape) return from_catalogue("k", lamp.shape->value, "", ref + "shape");
    return {"k", window_of(w.job, lamp).shape, "", "assumed", ref + "shape"};
  }
  StepInput irradiance() const {
    return from_catalogue("E", lamp.irradiance->value.si() * 1e-4, "W/cm2", ref + "irradiance");
  }
  StepInput along() const {
    return from_catalogue("w", in_mm(lamp.window_along->value), "mm", ref + "window_along");
  }
  StepInput across(const char* symbol) const {
    return from_catalogue(symbol, in_mm(lamp.window_across->value), "mm", ref + "window_across");
  }
  StepInput fastest() const {
    return from_value("v", *w.job.speed, w.job.speed->high.si(), "m/s", "line.speed");
  }
};

/// Dose of a stroke and the strokes it takes, with the lamps lit for them, and what they give:
/// W/cm2 times mm over m/s is mJ/cm2.
void carriage_dose(const LampTrace& t) {
  t.w.formula(t.id("dose_stroke"), "H_1", "k*E*a*w/v_c",
              {t.shape(), t.irradiance(), from_parameter(t.w.job, "a", P::lamp_ageing), t.along(),
               chosen("v_c", t.scan->carriage_speed.si(), "m/s")},
              *t.stage.dose_stroke_mj_per_cm2, "mJ/cm2", stroke_basis);
  const StepInput passes = chosen("p", t.scan->passes, "");
  const StepInput advance = t.w.step("A", advance_step(t.w, "g1"));
  t.w.formula(t.id("lit"), "n", "max(1,ceil((p+max(1,ceil(H/H_1))-1)*A/w_f))",
              {passes,
               {"H", *t.stage.dose_mj_per_cm2, "mJ/cm2", "given", "ink"},
               t.w.step("H_1", t.id("dose_stroke")),
               advance,
               t.across("w_f")},
              t.lit(), "", window_basis);
  t.w.formula(t.id("strokes"), "n_s", "floor(n*w_f/A)-p+1",
              {t.w.step("n", t.id("lit")), t.across("w_f"), advance, passes},
              *t.stage.strokes_over_point, "", window_basis);
  t.w.formula(t.dose_id(), "H_l", "n_s*H_1",
              {t.w.step("n_s", t.id("strokes")), t.w.step("H_1", t.id("dose_stroke"))},
              *t.stage.dose_given_mj_per_cm2, "mJ/cm2", carriage_basis);
  t.w.formula(t.id("after"), "t_a", "(n_s-1)*t",
              {t.w.step("n_s", t.id("strokes")), t.w.step("t", "g1.stroke_time")},
              *t.stage.time_after_s, "s", carriage_basis);
}

void rows(const LampTrace& t) {
  if (!t.lamp.shape || t.scan != nullptr) return;
  const bool uv = t.stage.kind == "uv";
  std::vector<StepInput> inputs{{"H", *t.stage.dose_mj_per_cm2, "mJ/cm2", "given", "ink"},
                                t.fastest(),
                                t.shape(),
                                t.irradiance(),
                                from_parameter(t.w.job, "a", P::lamp_ageing),
                                t.along()};
  if (!uv) inputs.push_back(chosen("s", t.sets(), ""));
  t.w.formula(uv ? "station.lamp_rows" : t.id("rows"), "rows",
              uv ? "max(1,ceil(H*v/(k*E*a*w)))" : "s*max(1,ceil(H*v/(k*E*a*w)))", inputs,
              *t.stage.rows, "", dose_basis);
}

/// The speed at which the rows of one place still give the dose asked for.
void fastest(const LampTrace& t, std::vector<StepInput> inputs) {
  if (!t.stage.speed_limit_m_per_s) return;
  inputs.back() = {"H", *t.stage.dose_mj_per_cm2, "mJ/cm2", "given", "ink"};
  t.w.formula(t.id("speed"), "v_max", "n*k*E*a*w/H", std::move(inputs),
              *t.stage.speed_limit_m_per_s, "m/s", dose_basis);
}

/// What the lamps chosen give: W/cm2 times mm over m/s is mJ/cm2.
void dose(const LampTrace& t) {
  if (!t.stage.dose_given_mj_per_cm2) return;
  if (t.scan != nullptr) return carriage_dose(t);
  std::vector<StepInput> inputs{t.shape(), t.irradiance(),
                                from_parameter(t.w.job, "a", P::lamp_ageing), t.along()};
  const int rows_of_set = *t.stage.rows / t.sets();
  inputs.push_back(chosen("n", rows_of_set, ""));
  inputs.push_back(t.fastest());
  t.w.formula(t.dose_id(), "H_l", "n*k*E*a*w/v", inputs, *t.stage.dose_given_mj_per_cm2, "mJ/cm2",
              dose_basis);
  fastest(t, std::move(inputs));
}

Power optical(const LampTrace& t) { return t.lit() * optical_power(window_of(t.w.job, t.lamp)); }

void power(const LampTrace& t) {
  t.w.formula(t.id("optical"), "P_o", "n*k*E*w*l*1e-5",
              {chosen("n", t.lit(), ""), t.shape(), t.irradiance(), t.along(), t.across("l")},
              optical(t).si() / 1e3, "kW", power_basis);
  if (!t.stage.electrical_kw) return;
  const StepInput each =
      from_catalogue("P", t.lamp.electrical->value.si() / 1e3, "kW", t.ref + "electrical");
  t.w.formula(t.id("electrical"), "P_e", "n*P", {chosen("n", *t.stage.units, ""), each},
              *t.stage.electrical_kw, "kW", power_basis);
  if (t.stage.running_kw) {
    t.w.formula(t.id("running"), "P_l", "n*P", {chosen("n", t.lit(), ""), each},
                *t.stage.running_kw, "kW", lit_basis);
  }
  t.w.formula(t.id("heat"), "P_h", "max(0,n*P-P_o)",
              {chosen("n", t.lit(), ""), each, t.w.step("P_o", t.id("optical"))}, *t.stage.heat_kw,
              "kW", power_basis);
  t.w.formula(t.id("cooling"), "Q_c", "P_h*1000/(r*c*dT)*3600",
              {t.w.step("P_h", t.id("heat")), constant("r", 1.2, "kg/m3"),
               constant("c", 1006, "J/(kg K)"), constant("dT", 15, "K")},
              *t.stage.cooling_m3_per_h, "m3/h", air_basis);
}

StepInput heat_capacity(const TraceWriter& w) {
  const Given<SpecificHeat>& given = w.job.request->substrate.heat_capacity;
  if (!given) return from_parameter(w.job, "c", P::web_heat_capacity);
  return from_value("c", *given, given->low.si() * 1e-3, "kJ/(kg K)", "substrate.heat_capacity");
}

/// What pinning warms the web before the final cure [K].
TemperatureDifference before(const LampTrace& t, const WebHeat& web) {
  const Stage* pinning = stage_of(t.w.spec, "pinning");
  if (pinning == nullptr || !pinning->dose_mj_per_cm2) return {};
  int sets = 1;
  if (const Lamp* lamp = named(t.w.catalogue.lamps, pinning->equipment)) {
    sets = LampTrace{t.w, *pinning, *lamp, t.scan, ""}.sets();
  }
  return lamp_rise(t.w.job, web, Dose::from_si(*pinning->dose_mj_per_cm2 * 10) * sets, false,
                   Dose());
}

void web(const LampTrace& t) {
  if (!t.stage.web_degc) return;
  const Job& job = t.w.job;
  const Given<AreaMass>& mass = job.request->substrate.area_mass;
  const bool arc = t.lamp.mercury && t.lamp.mercury->value;
  const std::vector<ChannelLoad> loads = channel_loads(job, t.w.spec.chosen);
  const double strokes = t.scan == nullptr ? 1 : prints_over_point(*t.scan);
  const Dose reaction = cure_reaction(job, loads) / strokes;
  const int rows = t.scan == nullptr ? *t.stage.rows : 1;
  t.w.formula(t.id("web"), "T_w", "T_r+d+(f*a*10*H+q)/(m*c)",
              {from_value("T_r", job.room, served_high(job.room).in_celsius(), "degC",
                          "line.air_temperature"),
               chosen("d", before(t, *web_heat(job)).si(), "K"),
               arc ? from_parameter(job, "f", P::arc_radiation) : constant("f", 1, ""),
               from_parameter(job, "a", P::light_absorbed),
               chosen("H", rows * heating_dose(job, t.lamp, t.scan).si() / 10, "mJ/cm2"),
               chosen("q", reaction.si(), "J/m2"),
               from_value("m", *mass, mass->low.si() * 1e3, "g/m2", "substrate.area_mass"),
               heat_capacity(t.w)},
              *t.stage.web_degc, "degC", web_basis);
}

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
    step(at + "_worst", "OD_gm", constant("r", worst, ""), guard.density_worst);
  }
}

/// Light at the first distance, of the lamps of this stage and of the other that is lit with them,
/// and what follows for it from the limit.
void stray(const LampTrace& t, const LampTrace* other) {
  if (t.stage.stray.empty()) return;
  const StrayLight& nearest = t.stage.stray.front();
  std::vector<StepInput> inputs{from_parameter(t.w.job, "r", P::stray_share),
                                t.w.step("P_o", t.id("optical")), constant("pi", pi, ""),
                                constant("d", nearest.distance_m, "m")};
  if (other != nullptr) inputs.push_back(t.w.step("P_p", other->id("optical")));
  t.w.formula(t.id("stray"), "E_s",
              other == nullptr ? "r*P_o*1000/(pi*d^2)" : "r*(P_o+P_p)*1000/(pi*d^2)", inputs,
              nearest.irradiance_w_per_m2, "W/m2", light_basis);
  const LampTrace& judged = other == nullptr ? t : stricter(t, *other);
  if (!nearest.time_s || !judged.lamp.wavelength) return;
  weight(t, judged);
  const StepInput e = t.w.step("E_s", t.id("stray"));
  const StepInput limit = t.w.step("H_lim", t.id("limit"));
  t.w.formula(t.id("stray_time"), "t", "min(28800,H_lim/E_s)", {limit, e}, *nearest.time_s, "s",
              limit_basis);
  t.w.formula(t.id("safe"), "d_8", "d*sqrt(E_s*28800/H_lim)",
              {constant("d", nearest.distance_m, "m"), e, limit}, *t.stage.safe_distance_m, "m",
              light_basis);
  t.w.formula(t.id("density"), "OD", "max(0,log10(E_s*28800/H_lim))", {e, limit},
              *t.stage.guard_density, "", limit_basis);
  const double worst = worst_stray_share(t.w.job.parameters);
  const StepInput most = constant("r_m", worst, "");
  const StepInput share = from_parameter(t.w.job, "r", P::stray_share);
  t.w.formula(t.id("safe_worst"), "d_8m", "d_8*sqrt(r_m/r)",
              {t.w.step("d_8", t.id("safe")), most, share}, *t.stage.safe_distance_worst_m, "m",
              light_basis);
  t.w.formula(t.id("density_worst"), "OD_m", "max(0,log10(E_s*r_m/r*28800/H_lim))",
              {e, most, share, limit}, *t.stage.guard_density_worst, "", limit_basis);
  guards(t, other);
}

void ozone(const LampTrace& t) {
  if (!t.stage.ozone_m3_per_h) return;
  t.w.formula(t.id("ozone"), "Q_o", "n*m*1000/c",
              {chosen("n", t.lit(), ""),
               from_catalogue("m", t.lamp.ozone->value.si() * 3600e3, "g/h", t.ref + "ozone"),
               constant("c", 0.2, "mg/m3")},
              *t.stage.ozone_m3_per_h, "m3/h", ozone_basis);
}

}  // namespace

const Stage* stage_of(const Specification& spec, std::string_view kind) {
  for (const Stage& stage : spec.station->stages) {
    if (stage.kind == kind) return &stage;
  }
  return nullptr;
}

void trace_cure(TraceWriter& w) {
  std::vector<LampTrace> lamps;
  lamps.reserve(2);
  for (const char* kind : {"pinning", "uv"}) {
    const Stage* stage = stage_of(w.spec, kind);
    const Lamp* lamp = stage == nullptr ? nullptr : named(w.catalogue.lamps, stage->equipment);
    if (lamp == nullptr || !stage->rows) continue;
    lamps.push_back({w, *stage, *lamp, fastest_scan(w.spec.chosen), "lamp." + lamp->name + "."});
    const LampTrace& t = lamps.back();
    rows(t);
    dose(t);
    power(t);
    web(t);
    ozone(t);
  }
  if (!lamps.empty()) stray(lamps.back(), lamps.size() > 1 ? &lamps.front() : nullptr);
}

}  // namespace calc
