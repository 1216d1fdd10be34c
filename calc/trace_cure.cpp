#include <algorithm>
#include <cmath>
#include <set>

#include "calc/trace_lamp.h"

namespace calc {
namespace {

const Basis dose_basis{"radiant exposure = mean irradiance times dwell", SourceTag::computed,
                       "highest speed of the line"};
const Basis asked_basis{"the largest demand governs", SourceTag::computed,
                        "inks that are cured together"};
const Basis length_basis{"sum over the units", SourceTag::computed, "rows one behind the other"};
const Basis carriage_basis{"dose of a stroke times strokes over a point", SourceTag::computed,
                           "last ink of a point, at the end of the swath"};
const Basis stroke_basis{"radiant exposure = mean irradiance times dwell", SourceTag::computed,
                         "speed of the carriage"};
const Basis window_basis{"geometry of swath and window", SourceTag::computed,
                         "windows side by side from where the swath begins"};
const Basis stroke_count{
    "every row is printed once if the advance and the steps have no common factor",
    SourceTag::computed, "the group of the most interlace steps"};
const Basis place_count{"count", SourceTag::computed,
                        "pinning behind every colour, but the final cure behind the last"};
const Basis lamp_count_basis{"geometry of swath and window", SourceTag::computed,
                             "windows side by side over the width printed"};
const Basis ends_basis{"count", SourceTag::computed, "the same lamps on both ends of the carriage"};
const Basis power_basis{"energy balance of the lamps", SourceTag::computed, "new lamps, all lit"};
const Basis lit_basis{"energy balance of the lamps", SourceTag::computed, "those lit at a time"};
const Basis air_basis{"heat balance of the cooling air", SourceTag::practice, "15 K warmer"};
const Basis ozone_basis{"29 CFR 1910.1000: 0.1 ppm, 0.2 mg/m3", SourceTag::printed,
                        "perfect mixing; extract at the lamp"};

/// "p", the strokes that lay down a point: of the group with the most steps.
StepInput passes_over_point(const LampTrace& t) {
  const std::string id = "station.passes";
  if (!t.w.has(id)) {
    std::vector<StepInput> inputs{from_parameter(t.w.job, "N_q", P::quality_passes)};
    std::string list;
    for (std::size_t i = 0; i < t.w.spec.chosen.size(); ++i) {
      const std::string s = "s_" + std::to_string(i + 1);
      list += (list.empty() ? "" : ",") + s;
      inputs.push_back(steps_input(t.w, t.w.spec.chosen[i], "g" + std::to_string(i + 1), s));
    }
    t.w.formula(id, "p", "N_q*max(" + list + ")", std::move(inputs), t.scan->passes, "",
                stroke_count);
  }
  return t.w.step("p", id);
}

/// Dose of a stroke and the strokes it takes, with the lamps lit for them, and what they give:
/// W/cm2 times mm over m/s is mJ/cm2.
void carriage_dose(const LampTrace& t) {
  t.w.formula(t.id("dose_stroke"), "H_1", "k*E*a*w/v_c",
              {t.shape(), t.irradiance(), from_parameter(t.w.job, "a", P::lamp_ageing), t.along(),
               t.w.step("v_c", "g1.carriage_speed")},
              *t.stage.dose_stroke_mj_per_cm2, "mJ/cm2", stroke_basis);
  const StepInput passes = passes_over_point(t);
  const StepInput advance = t.w.step("A", advance_step(t.w, "g1"));
  t.w.formula(t.id("lit"), "n", "max(1,ceil((p+max(1,ceil(H/H_1))-1)*A/w_f))",
              {passes, dose_asked(t.w, t.stage), t.w.step("H_1", t.id("dose_stroke")), advance,
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

/// The places of pinning on a line: behind every colour position that asks for it, but not behind
/// the last of the station, which the final cure follows.
StepInput sets_of(const LampTrace& t) {
  std::vector<StepInput> inputs;
  std::string list;
  int positions = 0;
  for (std::size_t i = 0; i < t.w.spec.chosen.size(); ++i) {
    if (t.w.spec.chosen[i].pinned_places < 1) continue;
    positions += t.w.spec.chosen[i].positions;
    const std::string p = "p_" + std::to_string(i + 1);
    list += (list.empty() ? "" : "+") + p;
    inputs.push_back(t.w.step(p, "g" + std::to_string(i + 1) + ".positions"));
  }
  const int off = positions - t.sets();
  if (inputs.empty() || off < 0 || off > 1) return chosen("s", t.sets(), "");
  t.w.formula(t.id("sets"), "s", list + (off == 1 ? "-1" : ""), std::move(inputs), t.sets(), "",
              place_count);
  return t.w.step("s", t.id("sets"));
}

void rows(const LampTrace& t) {
  if (t.scan != nullptr) return;
  const bool uv = t.is_cure();
  std::vector<StepInput> inputs{dose_asked(t.w, t.stage),
                                t.fastest(),
                                t.shape(),
                                t.irradiance(),
                                from_parameter(t.w.job, "a", P::lamp_ageing),
                                t.along()};
  if (!uv) inputs.push_back(sets_of(t));
  t.w.formula(t.rows_id(), "rows",
              uv ? "max(1,ceil(H*v/(k*E*a*w)))" : "s*max(1,ceil(H*v/(k*E*a*w)))", inputs,
              *t.stage.rows, "", dose_basis);
  if (!t.stage.length_m) return;
  const std::string field = t.lamp.depth ? "depth" : "window_along";
  t.w.formula(t.id("length"), "l", "rows*d/1000",
              {t.w.step("rows", t.rows_id()),
               from_catalogue("d", in_mm(lamp_depth(t.lamp)), "mm", t.ref + field)},
              *t.stage.length_m, "m", length_basis);
}

/// Lamps of all rows over the width, or on both ends of a carriage.
void count_lamps(const LampTrace& t) {
  if (t.scan != nullptr) {
    t.w.formula(t.id("units"), "n", "2*n_l", {t.w.step("n_l", t.id("lit"))}, *t.stage.units, "",
                ends_basis);
    return;
  }
  t.w.formula(t.id("units"), "n", "rows*ceil(W/l)",
              {t.w.step("rows", t.rows_id()), t.w.step("W", "station.width"), t.across("l")},
              *t.stage.units, "", lamp_count_basis);
}

/// The lamps lit at a time.
StepInput lit_lamps(const LampTrace& t) {
  return t.w.step("n", t.id(t.scan == nullptr ? "units" : "lit"));
}

/// Rows of one place: their product with what a row gives, and the inputs of it.
std::string rows_of_place(const LampTrace& t, std::vector<StepInput>& inputs) {
  inputs.push_back(t.w.step("n", t.rows_id()));
  if (t.is_cure()) return "n";
  inputs.push_back(t.w.step_of_value("s", {t.id("sets")}, t.sets(), ""));
  return "n/s";
}

/// The speed at which the rows of one place still give the dose asked for.
void fastest(const LampTrace& t, const std::string& rows_there, std::vector<StepInput> inputs) {
  if (!t.stage.speed_limit_m_per_s) return;
  inputs.back() = dose_asked(t.w, t.stage);
  t.w.formula(t.id("speed"), "v_max", rows_there + "*k*E*a*w/H", std::move(inputs),
              *t.stage.speed_limit_m_per_s, "m/s", dose_basis);
}

/// What the lamps chosen give: W/cm2 times mm over m/s is mJ/cm2.
void dose(const LampTrace& t) {
  if (!t.stage.dose_given_mj_per_cm2) return;
  if (t.scan != nullptr) return carriage_dose(t);
  std::vector<StepInput> inputs{t.shape(), t.irradiance(),
                                from_parameter(t.w.job, "a", P::lamp_ageing), t.along()};
  const std::string rows_there = rows_of_place(t, inputs);
  inputs.push_back(t.fastest());
  t.w.formula(t.dose_id(), "H_l", rows_there + "*k*E*a*w/v", inputs, *t.stage.dose_given_mj_per_cm2,
              "mJ/cm2", dose_basis);
  fastest(t, rows_there, std::move(inputs));
}

Power optical(const LampTrace& t) { return t.lit() * optical_power(window_of(t.w.job, t.lamp)); }

void power(const LampTrace& t) {
  t.w.formula(t.id("optical"), "P_o", "n*k*E*w*l*1e-5",
              {lit_lamps(t), t.shape(), t.irradiance(), t.along(), t.across("l")},
              optical(t).si() / 1e3, "kW", power_basis);
  if (!t.stage.electrical_kw) return;
  const StepInput each =
      from_catalogue("P", t.lamp.electrical->value.si() / 1e3, "kW", t.ref + "electrical");
  t.w.formula(t.id("electrical"), "P_e", "n*P", {t.w.step("n", t.id("units")), each},
              *t.stage.electrical_kw, "kW", power_basis);
  if (t.stage.running_kw) {
    t.w.formula(t.id("running"), "P_l", "n*P", {lit_lamps(t), each}, *t.stage.running_kw, "kW",
                lit_basis);
  }
  t.w.formula(t.id("heat"), "P_h", "max(0,n*P-P_o)",
              {lit_lamps(t), each, t.w.step("P_o", t.id("optical"))}, *t.stage.heat_kw, "kW",
              power_basis);
  t.w.formula(t.id("cooling"), "Q_c", "P_h*1000/(r*c*dT)*3600",
              {t.w.step("P_h", t.id("heat")), constant("r", 1.2, "kg/m3"),
               constant("c", 1006, "J/(kg K)"), constant("dT", 15, "K")},
              *t.stage.cooling_m3_per_h, "m3/h", air_basis);
}

void ozone(const LampTrace& t) {
  if (!t.stage.ozone_m3_per_h) return;
  t.w.formula(
      t.id("ozone"), "Q_o", "n*m*1000/c",
      {lit_lamps(t), from_catalogue("m", t.lamp.ozone->value.si() * 3600e3, "g/h", t.ref + "ozone"),
       constant("c", 0.2, "mg/m3")},
      *t.stage.ozone_m3_per_h, "m3/h", ozone_basis);
}

/// The greatest dose that an ink asks for.
void dose_step(TraceWriter& w, const Stage& stage) {
  if (!stage.dose_mj_per_cm2) return;
  const bool cure = stage.kind == "uv";
  std::vector<StepInput> inputs;
  std::set<std::string> seen;
  std::string list;
  for (const Channel& channel : w.job.channels) {
    if (channel.family != InkFamily::uv || channel.ink == nullptr) continue;
    const Given<Dose>& dose = cure ? channel.ink->cure_dose : channel.ink->pinning_dose;
    if (!dose || !seen.insert(channel.ink->name).second) continue;
    const std::string symbol = "H_" + std::to_string(seen.size());
    list += (list.empty() ? "" : ",") + symbol;
    inputs.push_back(
        from_value(symbol, *dose, served_high(*dose).si() / 10, "mJ/cm2",
                   "ink." + channel.ink->name + (cure ? ".cure_dose" : ".pinning_dose")));
  }
  w.add("station." + stage.kind + ".dose", StepKind::choice, "H", "max(" + list + ")",
        std::move(inputs), *stage.dose_mj_per_cm2, "mJ/cm2", asked_basis);
}

}  // namespace

StepInput dose_asked(const TraceWriter& w, const Stage& stage) {
  return w.step("H", "station." + stage.kind + ".dose");
}

const Stage* stage_of(const Specification& spec, std::string_view kind) {
  for (const Stage& stage : spec.station->stages) {
    if (stage.kind == kind) return &stage;
  }
  return nullptr;
}

void trace_cure(TraceWriter& w, const std::vector<ChannelLoad>& loads) {
  std::vector<LampTrace> lamps;
  lamps.reserve(2);
  for (const char* kind : {"pinning", "uv"}) {
    const Stage* stage = stage_of(w.spec, kind);
    if (stage != nullptr) dose_step(w, *stage);
    const Lamp* lamp = stage == nullptr ? nullptr : named(w.catalogue.lamps, stage->equipment);
    if (lamp == nullptr || !stage->rows) continue;
    lamps.push_back({w, *stage, *lamp, fastest_scan(w.spec.chosen), "lamp." + lamp->name + "."});
    const LampTrace& t = lamps.back();
    rows(t);
    dose(t);
    count_lamps(t);
    power(t);
    trace_web(t, loads);
    ozone(t);
  }
  if (!lamps.empty()) trace_stray(lamps.back(), lamps.size() > 1 ? &lamps.front() : nullptr);
}

}  // namespace calc
