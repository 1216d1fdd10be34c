#include <algorithm>
#include <functional>

#include "calc/station_vapour.h"
#include "calc/station_web.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis peak{"mass balance", SourceTag::computed, "peak cover, highest speed; all evaporates"};
const Basis gas{"ideal gas at 20 degC and 101.325 kPa", SourceTag::computed, "dilute vapour"};
const Basis mixture{"Le Chatelier; sum of shares of the exposure limits", SourceTag::printed,
                    "vapours that act alike"};
const Basis yearly{"mass balance", SourceTag::computed, "mean cover; nothing is recovered"};
const Basis yearly_peak{"mass balance", SourceTag::computed,
                        "peak cover at the highest speed all the time; nothing is recovered"};
const Basis explosion{"NFPA 86; EN 1539", SourceTag::memory, "steady; all vapour captured"};
const Basis health{"ACGIH Industrial Ventilation, dilution", SourceTag::memory,
                   "steady; the vapour that is not captured"};
const Basis health_end{"ACGIH Industrial Ventilation, dilution", SourceTag::memory,
                       "steady; ends of the share captured and of the mixing that are possible"};

/// "x_1*A_1+x_2*A_2" with a fresh symbol a part.
std::string numbered(const char* symbol, std::size_t i) {
  return std::string(symbol) + "_" + std::to_string(i + 1);
}

std::string at(const TraceWriter& w, const ChannelVapour& c, const char* name) {
  return "station." + w.job.channels[c.channel].name + "." + name;
}

StepInput from_table(const std::string& symbol, double value, const char* unit,
                     const SolventRow& row) {
  return {symbol, value, unit, "constant", std::string(row.cas)};
}

/// Sources of the rows of a blend, and whether every figure stood in print.
Basis sources_of(const Blend& blend) {
  std::string text;
  for (const BlendPart& part : blend.parts) {
    const std::string source(part.row->source);
    if (text.find(source) == std::string::npos) text += (text.empty() ? "" : "; ") + source;
  }
  const bool estimated = blend.lel_estimated;
  return {text, estimated ? SourceTag::memory : SourceTag::printed,
          std::string(solvents_validity())};
}

void molar_mass_step(TraceWriter& w, const ChannelVapour& c, const Ink& ink) {
  if (!c.blend.molar_mass) return;
  const double value = c.blend.molar_mass->si() * 1e3;
  const std::string id = at(w, c, "molar_mass");
  if (ink.molar_mass) {
    w.formula(id, "M", "M_g",
              {from_value("M_g", *ink.molar_mass, ink.molar_mass->low.si() * 1e3, "g/mol",
                          "ink." + ink.name + ".molar_mass")},
              value, "g/mol", gas);
    return;
  }
  std::vector<StepInput> inputs;
  std::string sum;
  for (std::size_t i = 0; i < c.blend.parts.size(); ++i) {
    const BlendPart& part = c.blend.parts[i];
    sum += (i == 0 ? "" : "+") + numbered("x", i) + "/" + numbered("M", i);
    inputs.push_back({numbered("x", i), part.share, "", "given", "ink." + ink.name + ".solvent"});
    inputs.push_back(from_table(numbered("M", i), part.row->molar_g, "g/mol", *part.row));
  }
  w.formula(id, "M", "1/(" + sum + ")", inputs, value, "g/mol", sources_of(c.blend));
}

/// A limit of the blend from those of its solvents: "(x_1/M_1+..)/(x_1/(M_1*L_1)+..)".
void mixed_limit(TraceWriter& w, const ChannelVapour& c, const Ink& ink, const std::string& id,
                 const char* symbol, double value, const char* unit,
                 const std::function<double(const SolventRow&)>& limit_of) {
  std::vector<StepInput> inputs;
  std::string moles, over;
  for (std::size_t i = 0; i < c.blend.parts.size(); ++i) {
    const BlendPart& part = c.blend.parts[i];
    const std::string x = numbered("x", i), m = numbered("M", i), l = numbered("L", i);
    if (i > 0) {
      moles += '+';
      over += '+';
    }
    moles.append(x).append("/").append(m);
    over.append(x).append("/(").append(m).append("*").append(l).append(")");
    inputs.push_back({x, part.share, "", "given", "ink." + ink.name + ".solvent"});
    inputs.push_back(from_table(m, part.row->molar_g, "g/mol", *part.row));
    inputs.push_back(from_table(l, limit_of(*part.row), unit, *part.row));
  }
  w.formula(id, symbol, "(" + moles + ")/(" + over + ")", inputs, value, unit, sources_of(c.blend));
}

void given_limit(TraceWriter& w, const std::string& id, const char* symbol, double value,
                 const char* unit, const std::string& key) {
  w.formula(id, symbol, "L_g", {{"L_g", value, unit, "given", key}}, value, unit, mixture);
}

void lel_step(TraceWriter& w, const ChannelVapour& c, const Ink& ink) {
  if (!c.blend.lel) return;
  const std::string id = at(w, c, "lel");
  if (ink.explosive_limit) {
    given_limit(w, id, "L", *c.blend.lel * 100, "%", "ink." + ink.name + ".explosive_limit");
    return;
  }
  mixed_limit(w, c, ink, id, "L", *c.blend.lel * 100, "%",
              [](const SolventRow& row) { return lower_limit(row).value * 100; });
}

void exposure_step(TraceWriter& w, const ChannelVapour& c, const Ink& ink) {
  if (!c.blend.limit) return;
  const std::string id = at(w, c, "limit");
  if (ink.exposure_limit) {
    given_limit(w, id, "l", *c.blend.limit * 1e6, "ppm", "ink." + ink.name + ".exposure_limit");
    return;
  }
  const Region region = region_of_job(w.job);
  mixed_limit(w, c, ink, id, "l", *c.blend.limit * 1e6, "ppm", [region](const SolventRow& row) {
    return exposure_limit(row, region).value_or(0) * 1e6;
  });
}

StepInput evaporating(const TraceWriter& w, const ChannelVapour& c, const Ink& ink) {
  if (!c.blend.share_known) return from_parameter(w.job, "x", P::solvent_share);
  return from_value("x", *ink.solvent_share, c.blend.evaporates, "",
                    "ink." + ink.name + ".solvent_share");
}

/// Vapour of a channel over the running time.
MassFlow vapour_mean(const Job& job, const ChannelVapour& c, const ChannelFlow& flow) {
  const Density density = ink_density(job, job.channels[c.channel]);
  return flow.ink() * density * c.blend.evaporates + flow.flush * density;
}

void flow_step(TraceWriter& w, const std::vector<ChannelLoad>& loads, const ChannelLoad& load,
               const ChannelFlow& flow, const ChannelVapour& c) {
  const Channel& channel = w.job.channels[c.channel];
  const Ink none;
  const Ink& ink = channel.ink == nullptr ? none : *channel.ink;
  const StepInput share = evaporating(w, c, ink), density = density_of(w.job, channel);
  std::vector<StepInput> inputs{passing(w, load), share, density};
  const std::string limited = add_peak_share(w, loads, load, inputs);
  const bool flushed = w.has(at(w, c, "flush"));
  if (flushed) inputs.push_back(w.step("F", at(w, c, "flush")));
  w.formula(at(w, c, "vapour"), "m",
            flushed ? "(V" + limited + "*x+F)*r*1e-6" : "V" + limited + "*x*r*1e-6",
            std::move(inputs), c.flow.si() * 3600, "kg/h", peak);
  std::vector<StepInput> mean{w.step("M", at(w, c, "printed")), w.step("M_p", at(w, c, "purged")),
                              share, density};
  if (flushed) mean.push_back(w.step("F", at(w, c, "flush")));
  w.formula(at(w, c, "vapour_mean"), "m", flushed ? "((M+M_p)*x+F)*r*1e-6" : "(M+M_p)*x*r*1e-6",
            std::move(mean), vapour_mean(w.job, c, flow).si() * 3600, "kg/h", yearly);
  molar_mass_step(w, c, ink);
  lel_step(w, c, ink);
  exposure_step(w, c, ink);
  if (!c.blend.molar_mass) return;
  w.formula(at(w, c, "vapour_volume"), "V", "m*1000/M*8.314462618*293.15/101325",
            {w.step("m", at(w, c, "vapour")), w.step("M", at(w, c, "molar_mass"))},
            vapour_volume(c.flow, *c.blend.molar_mass).si() * 3600, "m3/h", gas);
}

/// The sum of a step of every channel.
void sum_step(TraceWriter& w, const Vapour& vapour, const char* name, const char* of,
              const char* symbol, double value, const char* unit, const Basis& basis) {
  std::vector<StepInput> inputs;
  std::string list;
  for (const ChannelVapour& c : vapour.channels) {
    const std::string s = numbered(symbol, inputs.size());
    list += (list.empty() ? "" : ",") + s;
    inputs.push_back(w.step(s, at(w, c, of)));
  }
  w.formula(std::string("station.ventilation.") + name, symbol, "sum(" + list + ")", inputs, value,
            unit, basis);
}

/// One limit of all vapours together, by volume.
void together_step(TraceWriter& w, const Vapour& vapour, const char* name, const char* symbol,
                   double value, const char* unit) {
  std::vector<StepInput> inputs{w.step("V", "station.ventilation.volume")};
  std::string over;
  for (std::size_t i = 0; i < vapour.channels.size(); ++i) {
    const ChannelVapour& c = vapour.channels[i];
    over += (i == 0 ? "" : "+") + numbered("V", i) + "/" + numbered("L", i);
    inputs.push_back(w.step(numbered("V", i), at(w, c, "vapour_volume")));
    inputs.push_back(w.step(numbered("L", i), at(w, c, name)));
  }
  w.formula(std::string("station.ventilation.") + name, symbol, "V/(" + over + ")", inputs, value,
            unit, mixture);
}

/// Fresh air at one end of what is captured and how it mixes.
void health_end_step(TraceWriter& w, const char* name, const char* symbol, double captured,
                     double mixing, VolumeFlow value) {
  w.formula(
      std::string("station.ventilation.air_health_") + name, symbol, "K*V*(1-k)*1e6/l",
      {from_range(w.job, "K", P::mixing, mixing), w.step("V", "station.ventilation.volume"),
       captured > 0 ? from_range(w.job, "k", P::captured_share, captured) : constant("k", 0, ""),
       w.step("l", "station.ventilation.limit")},
      value.si() * 3600, "m3/h", health_end);
}

/// What an enclosure captures of the vapour at peak, and what it leaves.
void captured_steps(TraceWriter& w, const Vapour& vapour) {
  if (vapour.captured <= MassFlow()) return;
  const StepInput all = w.step("m", "station.ventilation.vapour");
  const StepInput share = from_parameter(w.job, "k", P::captured_share);
  w.formula("station.ventilation.captured", "m_c", "m*k", {all, share}, vapour.captured.si() * 3600,
            "kg/h", peak);
  w.formula("station.ventilation.room", "m_r", "m*(1-k)", {all, share}, vapour.room.si() * 3600,
            "kg/h", peak);
}

void air(TraceWriter& w, const Vapour& vapour) {
  if (vapour.explosion) {
    const bool monitored =
        w.job.request->line.vapour_monitored && w.job.request->line.vapour_monitored->value;
    w.formula("station.ventilation.air_lel", "Q_e", "V*100/(f*L*B)",
              {w.step("V", "station.ventilation.volume"),
               from_parameter(w.job, "f", monitored ? P::lel_share_monitored : P::lel_share),
               w.step("L", "station.ventilation.lel"),
               constant("B", hot_factor(vapour.exhaust, vapour.lel_hot), "")},
              vapour.explosion->si() * 3600, "m3/h", explosion);
    w.formula("station.ventilation.air_lel_hot", "Q_h", "Q_e*(T_x+273.15)/293.15",
              {w.step("Q_e", "station.ventilation.air_lel"),
               from_parameter(w.job, "T_x", P::vapour_exhaust_c)},
              vapour.explosion_hot->si() * 3600, "m3/h", gas);
  }
  if (!vapour.health) return;
  const Ends captured = captured_share(w.job), mixing = ends_of(w.job.parameters, P::mixing);
  w.formula(
      "station.ventilation.air_health", "Q_r", "K*V*(1-k)*1e6/l",
      {from_parameter(w.job, "K", P::mixing), w.step("V", "station.ventilation.volume"),
       captured.likely > 0 ? from_parameter(w.job, "k", P::captured_share) : constant("k", 0, ""),
       w.step("l", "station.ventilation.limit")},
      vapour.health->si() * 3600, "m3/h", health);
  health_end_step(w, "least", "Q_rl", captured.high, mixing.low, *vapour.health_least);
  health_end_step(w, "most", "Q_rm", captured.low, mixing.high, *vapour.health_most);
}

const Head* head_of(const TraceWriter& w, const ChannelLoad& load) {
  const std::string& name = w.spec.chosen[load.group].head;
  const auto& heads = w.catalogue.heads;
  const auto found =
      std::find_if(heads.begin(), heads.end(), [&](const Head& h) { return h.name == name; });
  return found == heads.end() ? nullptr : &*found;
}

std::vector<ChannelFlow> flows_of(const TraceWriter& w, const std::vector<ChannelLoad>& loads) {
  std::vector<ChannelFlow> flows;
  flows.reserve(loads.size());
  for (const ChannelLoad& load : loads) {
    flows.push_back(channel_flow(w.job, load, head_of(w, load)));
  }
  return flows;
}

}  // namespace

void trace_vapour(TraceWriter& w, const std::vector<ChannelLoad>& loads) {
  if (stage_of(w.spec, "ventilation") == nullptr) return;
  const std::vector<ChannelFlow> flows = flows_of(w, loads);
  const Vapour vapour = size_vapour(w.job, loads, flows);
  for (const ChannelVapour& c : vapour.channels) {
    for (std::size_t i = 0; i < loads.size(); ++i) {
      if (loads[i].channel == c.channel) flow_step(w, loads, loads[i], flows[i], c);
    }
  }
  sum_step(w, vapour, "vapour", "vapour", "m", vapour.total.si() * 3600, "kg/h", peak);
  captured_steps(w, vapour);
  sum_step(w, vapour, "vapour_mean", "vapour_mean", "m_h", vapour.yearly_mean.si() * 3600, "kg/h",
           yearly);
  w.formula("station.ventilation.voc", "m_y", "m_h*t_y",
            {w.step("m_h", "station.ventilation.vapour_mean"), w.step("t_y", "station.hours")},
            (vapour.yearly_mean * running_time(w.job)).si(), "kg", yearly);
  w.formula("station.ventilation.voc_peak", "m_p", "m*t_y",
            {w.step("m", "station.ventilation.vapour"), w.step("t_y", "station.hours")},
            (vapour.total * running_time(w.job)).si(), "kg", yearly_peak);
  if (!vapour.volume) return;
  sum_step(w, vapour, "volume", "vapour_volume", "V", vapour.volume->si() * 3600, "m3/h", gas);
  if (vapour.lel) together_step(w, vapour, "lel", "L", *vapour.lel * 100, "%");
  if (vapour.limit) together_step(w, vapour, "limit", "l", *vapour.limit * 1e6, "ppm");
  air(w, vapour);
}

}  // namespace calc
