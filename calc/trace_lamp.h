/// One stage of lamps in the trace, shared by the files of its parts.
#pragma once

#include <string>
#include <vector>

#include "calc/named.h"
#include "calc/station_cure.h"
#include "calc/trace_stages.h"

namespace calc {

/// "H" [mJ/cm2], the dose of a stage: its step, which trace_cure() writes first.
StepInput dose_asked(const TraceWriter& w, const Stage& stage);

/// One stage with the lamp it takes.
struct LampTrace {
  TraceWriter& w;
  const Stage& stage;
  const Lamp& lamp;
  const Scan* scan;
  std::string ref;  ///< "lamp.NAME."

  std::string id(const char* name) const { return "station." + stage.kind + "." + name; }
  bool is_cure() const { return stage.kind == "uv"; }
  /// The step of the rows on a line, whose name tells pinning from cure.
  std::string rows_id() const { return is_cure() ? "station.lamp_rows" : id("rows"); }
  /// The step of the dose given, whose name tells pinning from cure.
  std::string dose_id() const { return is_cure() ? "station.lamp_dose" : id("dose_given"); }
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

/// What the lamps and the inks warm the web by (trace_web.cpp); after the rows of the lamps.
void trace_web(const LampTrace& t, const std::vector<ChannelLoad>& loads);
/// Light at the first distance, of the lamps of this stage and of the other that is lit with them,
/// and what follows for it from the limit (trace_stray.cpp); after their power.
void trace_stray(const LampTrace& t, const LampTrace* other);

}  // namespace calc
