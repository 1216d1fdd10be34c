/// Sums and shares that notes on safety and checks tell beside the figures of the station.
#include <algorithm>
#include <array>
#include <optional>
#include <variant>

#include "calc/exposure.h"
#include "calc/named.h"
#include "calc/station_load.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis peak_sum{"sum", SourceTag::computed, "peak cover, highest speed"};
const Basis mean_sum{"sum", SourceTag::computed, "mean cover as assumed or given"};
const Basis yearly{"sum", SourceTag::computed, "running time of a year, to a tenth"};
const Basis on_site{"common practice, no source: the first fill and the use of a month",
                    SourceTag::practice, "to a tenth"};
const Basis bund_rule{"common practice, no source: 110 % of the largest container",
                      SourceTag::practice, "the supplies' own containers"};
const Basis not_captured{"mass balance", SourceTag::computed, "peak cover, highest speed"};
const Basis counting{"count", SourceTag::computed, "whole supplies"};
const Basis counting_lamps{"count", SourceTag::computed, "whole lamps"};
const Basis limit_basis{"ICNIRP 2004; Directive 2006/25/EC Annex I", SourceTag::memory,
                        "unprotected eyes and skin, not photosensitised"};

/// The number that a note on safety tells.
std::optional<double> told(const TraceWriter& w, std::string_view code, std::string_view name) {
  for (const Notice& note : w.spec.safety) {
    if (note.code != code) continue;
    for (const Arg& arg : note.args) {
      const auto* const value = std::get_if<double>(&arg.value);
      if (value != nullptr && arg.name == name) return *value;
    }
  }
  return std::nullopt;
}

struct FamilyNotes {
  InkFamily family;
  const char *name, *mist, *waste;
};
constexpr std::array<FamilyNotes, 4> families{
    {{InkFamily::uv, "uv", "uv_mist", "waste_uv"},
     {InkFamily::aqueous, "aqueous", "aqueous_ink", "waste_aqueous"},
     {InkFamily::solvent, "solvent", "", "waste_solvent"},
     {InkFamily::oil, "oil", "oil_mist", "waste_oil"}}};

using Loads = std::vector<ChannelLoad>;

/// The steps `name` of the channels, of one family when asked: "x_1+x_2".
std::string steps_of(TraceWriter& w, const Loads& loads, std::optional<InkFamily> family,
                     const std::string& symbol, const char* name, std::vector<StepInput>& inputs) {
  std::string sum;
  for (const ChannelLoad& load : loads) {
    const Channel& channel = w.job.channels[load.channel];
    if (family && channel.family != family) continue;
    const std::string one = symbol + "_" + std::to_string(inputs.size() + 1);
    sum += (sum.empty() ? "" : "+") + one;
    inputs.push_back(w.step(one, "station." + channel.name + "." + name));
  }
  return sum;
}

/// What the heads of a family jet at most: process colours no more than they may together.
void mist_peak(TraceWriter& w, const Loads& loads, const FamilyNotes& of, double value) {
  const bool held = process_share(w.job, loads) < 1;
  std::vector<StepInput> inputs, share;
  std::string sum;
  for (const ChannelLoad& load : loads) {
    const Channel& channel = w.job.channels[load.channel];
    if (channel.family != of.family) continue;
    const std::string one = "Q_" + std::to_string(inputs.size() + 1);
    const std::string limited = held ? add_peak_share(w, loads, load, share) : "";
    sum.append(sum.empty() ? "" : "+").append(one).append(limited);
    inputs.push_back(w.step(one, "station." + channel.name + ".peak"));
  }
  if (!share.empty()) inputs.push_back(share.front());
  w.formula(std::string("safety.") + of.name + ".peak", "Q", "60*(" + sum + ")", std::move(inputs),
            value, "mL/h", peak_sum);
}

void of_family(TraceWriter& w, const Loads& loads, const FamilyNotes& of) {
  const std::string at = std::string("safety.") + of.name;
  if (const auto peak = told(w, of.mist, "peak")) mist_peak(w, loads, of, *peak);
  if (const auto used = told(w, of.mist, "ml_per_hour")) {
    std::vector<StepInput> inputs;
    const std::string sum = steps_of(w, loads, of.family, "M", "used", inputs);
    w.formula(at + ".used", "M", sum, std::move(inputs), *used, "mL/h", mean_sum);
  }
  if (const auto waste = told(w, of.waste, "litres_per_year")) {
    std::vector<StepInput> inputs;
    const std::string sum = steps_of(w, loads, of.family, "M", "waste", inputs);
    inputs.push_back(w.step("t_y", "station.hours"));
    w.formula(at + ".waste", "V_w", "round((" + sum + ")*t_y/100)/10", std::move(inputs), *waste,
              "L", yearly);
  }
}

std::optional<double> told_of_storage(const TraceWriter& w, const char* name) {
  const auto value = told(w, "ink_storage", name);
  return value ? value : told(w, "ink_storage_flammable", name);
}

/// Ink on site, and the bund under its largest container.
void storage(TraceWriter& w, const Loads& loads) {
  const auto litres = told_of_storage(w, "litres");
  if (!litres) return;
  std::vector<StepInput> inputs;
  const std::string year = steps_of(w, loads, std::nullopt, "V", "year", inputs);
  std::string fills;
  for (const BomLine& line : w.spec.station->bom) {
    if (line.code != "first_fill") continue;
    const std::string one = "F_" + std::to_string(inputs.size() + 1);
    fills += one + "+";
    inputs.push_back({one, line.quantity, "L", "parts", ""});
  }
  w.formula("safety.store", "V_s", "round(10*(" + fills + "(" + year + ")/12))/10",
            std::move(inputs), *litres, "L", on_site);
  w.formula("safety.bund", "V_b", "1.1*C",
            {{"C", *told_of_storage(w, "container"), "L", "parts", ""}},
            *told_of_storage(w, "bund"), "L", bund_rule);
}

/// Vapour that the enclosure does not capture.
void vapour_left(TraceWriter& w) {
  const auto left = told(w, "air_health", "vapour");
  if (!left || !told(w, "air_health", "share")) return;
  w.formula(
      "safety.vapour_left", "m_r", "m*(1-k)",
      {w.step("m", "station.ventilation.vapour"), from_parameter(w.job, "k", P::captured_share)},
      *left, "kg/h", not_captured);
}

/// The ink supplies of the bill.
void supplies(TraceWriter& w, const Loads& loads) {
  const auto count = told(w, "compressed_air", "supplies");
  if (!count || loads.size() < 2) return;
  std::vector<StepInput> inputs;
  std::string sum;
  for (const BomLine& line : w.spec.station->bom) {
    if (!line.source.starts_with("supply.") && line.code != "ink_supply") continue;
    const std::string one = "n_" + std::to_string(inputs.size() + 1);
    sum += (sum.empty() ? "" : "+") + one;
    inputs.push_back({one, line.quantity, "", "parts", ""});
  }
  if (inputs.empty()) return;
  w.formula("safety.supplies", "n_s", sum, std::move(inputs), *count, "", counting);
}

/// The lamps of a row of the catalogue that more than one stage takes.
void lamps(TraceWriter& w) {
  for (const Notice& note : w.spec.safety) {
    if (note.code != "uv_led" && note.code != "uv_arc") continue;
    const auto& name = std::get<std::string>(note.args.front().value);
    std::vector<StepInput> inputs;
    for (const Stage& stage : w.spec.station->stages) {
      const std::string id = "station." + stage.kind + ".units";
      if (stage.equipment != name || !w.has(id)) continue;
      inputs.push_back(w.step("n_" + std::to_string(inputs.size() + 1), id));
    }
    if (inputs.size() < 2) continue;
    w.formula("safety." + name + ".lamps", "n", "n_1+n_2", std::move(inputs),
              std::get<double>(note.args.back().value), "", counting_lamps);
  }
}

/// The dose that a light may give a person in a day: that of the steps of the lamps where it is
/// the same.
StepInput day_limit(const TraceWriter& w, double dose) {
  return w.step_of_value("H_lim", {"station.uv.limit", "station.pinning.limit"}, dose, "J/m2");
}

/// Until the light at a lamp's window reaches the limit of a day.
void windows(TraceWriter& w) {
  for (const Notice& note : w.spec.safety) {
    if (note.code != "photobiological") continue;
    const auto time = std::find_if(note.args.begin(), note.args.end(),
                                   [](const Arg& arg) { return arg.name == "time"; });
    if (time == note.args.end()) continue;
    const std::string name = note.field.substr(5, note.field.rfind('.') - 5);  // "lamp.NAME.x"
    const Lamp& lamp = *named(w.catalogue.lamps, name);
    w.formula("safety." + name + ".time", "t", "min(28800,H_lim/(10000*E))",
              {day_limit(w, daily_limit(lamp.wavelength->value)->si()),
               from_catalogue("E", lamp.irradiance->value.si() * 1e-4, "W/cm2",
                              "lamp." + name + ".irradiance")},
              std::get<double>(time->value), "s", limit_basis);
  }
}

const Check* check_of(const TraceWriter& w, std::string_view code) {
  const auto found =
      std::find_if(w.spec.tests.begin(), w.spec.tests.end(),
                   [&](const Check& check) { return check.code == code && check.acceptance; });
  return found == w.spec.tests.end() ? nullptr : &*found;
}

void of_checks(TraceWriter& w, const Loads& loads) {
  if (const Check* const leakage = check_of(w, "uv_leakage")) {
    w.formula("check.leakage", "E_l", "H_lim/28800", {day_limit(w, *leakage->acceptance * 28800)},
              *leakage->acceptance, "W/m2", limit_basis);
  }
  if (const Check* const ink = check_of(w, "ink_consumption")) {
    std::vector<StepInput> inputs;
    const std::string printed = steps_of(w, loads, std::nullopt, "M", "printed", inputs);
    const std::string purged = steps_of(w, loads, std::nullopt, "M", "purged", inputs);
    w.formula("check.ink", "M", printed + "+" + purged, std::move(inputs), *ink->acceptance, "mL/h",
              mean_sum);
  }
}

}  // namespace

void trace_told(TraceWriter& w) {
  const Loads loads = channel_loads(w.job, w.spec.chosen);
  if (loads.empty()) return;
  for (const FamilyNotes& family : families) of_family(w, loads, family);
  storage(w, loads);
  vapour_left(w);
  supplies(w, loads);
  lamps(w);
  windows(w);
  of_checks(w, loads);
}

}  // namespace calc
