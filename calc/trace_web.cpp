/// The hottest web under the lamps, step by step.
#include <algorithm>
#include <optional>

#include "calc/cure.h"
#include "calc/trace_lamp.h"

namespace calc {
namespace {

const Basis stroke_basis{"radiant exposure = mean irradiance times dwell", SourceTag::computed,
                         "speed of the carriage"};
const Basis heating_basis{"radiant exposure = mean irradiance times dwell", SourceTag::computed,
                          "least speed of the line, new lamps"};
const Basis reaction_basis{"heat of reaction of the film", SourceTag::practice,
                           "peak cover, cured through"};
const Basis warm_basis{"energy balance of the web", SourceTag::computed,
                       "the dose asked for, warm through the thickness, no loss"};
const Basis web_basis{
    "energy balance of the web", SourceTag::computed,
    "least speed, new lamps, warm through the thickness, no loss; on a carriage one "
    "stroke"};

StepInput heat_capacity(const TraceWriter& w) {
  const Given<SpecificHeat>& given = w.job.request->substrate.heat_capacity;
  if (!given) return from_parameter(w.job, "c", P::web_heat_capacity);
  return from_value("c", *given, given->low.si() * 1e-3, "kJ/(kg K)", "substrate.heat_capacity");
}

/// Places of pinning before the final cure.
int pinning_sets(const LampTrace& t, const Stage& pinning) {
  const Lamp* const lamp = named(t.w.catalogue.lamps, pinning.equipment);
  return lamp == nullptr ? 1 : LampTrace{t.w, pinning, *lamp, t.scan, ""}.sets();
}

/// Light of new lamps on the web in one pass at the least speed.
void heating(const LampTrace& t) {
  std::vector<StepInput> inputs{t.shape(), t.irradiance(), t.along()};
  const Dose one = heating_dose(t.w.job, t.lamp, t.scan);
  if (t.scan != nullptr) {
    inputs.push_back(t.w.step("v", "g1.carriage_speed"));
    t.w.formula(t.id("heating"), "H_w", "k*E*w/v", std::move(inputs), one.si() / 10, "mJ/cm2",
                stroke_basis);
    return;
  }
  inputs.push_back(t.w.step("n", t.rows_id()));
  inputs.push_back(
      from_value("v", *t.w.job.speed, served_low(*t.w.job.speed).si(), "m/s", "line.speed"));
  t.w.formula(t.id("heating"), "H_w", "n*k*E*w/v", std::move(inputs), *t.stage.rows * one.si() / 10,
              "mJ/cm2", heating_basis);
}

/// Heat that the inks give off as they cure; of a carriage in one of the strokes over a point.
void reaction(const LampTrace& t, const std::vector<ChannelLoad>& loads) {
  std::vector<StepInput> inputs{from_parameter(t.w.job, "e", P::cure_heat)};
  std::string sum;
  for (const ChannelLoad& load : loads) {
    const Channel& channel = t.w.job.channels[load.channel];
    if (channel.family != InkFamily::uv) continue;
    const std::string n = "_" + std::to_string(inputs.size());
    std::vector<StepInput> film{film_of(t.w, load, "h" + n), peak_cover(t.w.job, channel, "c" + n),
                                density_of(t.w.job, channel)};
    film.back().symbol = "r" + n;
    std::vector<StepInput> share;
    const std::string limited = add_peak_share(t.w, loads, load, share);
    sum.append(sum.empty() ? "" : ",").append("h" + n).append("*c" + n).append(limited);
    sum.append("*r" + n);
    inputs.insert(inputs.end(), film.begin(), film.end());
    const bool known = std::any_of(inputs.begin(), inputs.end(),
                                   [](const StepInput& input) { return input.symbol == "s"; });
    if (!known) inputs.insert(inputs.end(), share.begin(), share.end());
  }
  const double strokes = t.scan == nullptr ? 1 : prints_over_point(*t.scan);
  std::string formula = "e*sum(" + sum + ")*1e-3";
  if (t.scan != nullptr) {
    formula += "/p";
    inputs.push_back(t.w.step_of_value("p", {"station.passes"}, strokes, ""));
  }
  t.w.formula(t.id("reaction"), "q", formula, std::move(inputs),
              (cure_reaction(t.w.job, loads) / strokes).si(), "J/m2", reaction_basis);
}

/// "d" [K], what pinning has warmed the web by; none without pinning.
std::optional<StepInput> warmed(const LampTrace& t, const StepInput& mass) {
  const Stage* const pinning = stage_of(t.w.spec, "pinning");
  if (pinning == nullptr || !pinning->dose_mj_per_cm2) return std::nullopt;
  const int sets = pinning_sets(t, *pinning);
  const Dose dose = Dose::from_si(*pinning->dose_mj_per_cm2 * 10) * sets;
  const TemperatureDifference rise = lamp_rise(t.w.job, *web_heat(t.w.job), dose, false, Dose());
  std::vector<StepInput> inputs{from_parameter(t.w.job, "a", P::light_absorbed),
                                dose_asked(t.w, *pinning), mass, heat_capacity(t.w)};
  const bool several = sets > 1;
  if (several) inputs.push_back(t.w.step_of_value("s", {"station.pinning.sets"}, sets, ""));
  t.w.formula("station.pinning.rise", "d", several ? "s*a*10*H/(m*c)" : "a*10*H/(m*c)",
              std::move(inputs), rise.si(), "K", warm_basis);
  return t.w.step("d", "station.pinning.rise");
}

}  // namespace

void trace_web(const LampTrace& t, const std::vector<ChannelLoad>& loads) {
  if (!t.stage.web_degc) return;
  const Job& job = t.w.job;
  const Given<AreaMass>& given = job.request->substrate.area_mass;
  const StepInput mass =
      from_value("m", *given, given->low.si() * 1e3, "g/m2", "substrate.area_mass");
  const bool arc = t.lamp.mercury && t.lamp.mercury->value;
  heating(t);
  reaction(t, loads);
  const std::optional<StepInput> rise = warmed(t, mass);
  std::vector<StepInput> inputs;
  if (rise) inputs.push_back(*rise);
  const std::vector<StepInput> rest{
      from_value("T_r", job.room, served_high(job.room).in_celsius(), "degC",
                 "line.air_temperature"),
      arc ? from_parameter(job, "f", P::arc_radiation) : constant("f", 1, ""),
      from_parameter(job, "a", P::light_absorbed),
      t.w.step("H", t.id("heating")),
      t.w.step("q", t.id("reaction")),
      mass,
      heat_capacity(t.w)};
  inputs.insert(inputs.end(), rest.begin(), rest.end());
  t.w.formula(t.id("web"), "T_w", rise ? "T_r+d+(f*a*10*H+q)/(m*c)" : "T_r+(f*a*10*H+q)/(m*c)",
              std::move(inputs), *t.stage.web_degc, "degC", web_basis);
}

}  // namespace calc
