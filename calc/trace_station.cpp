#include "calc/trace_stages.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis definition{"definition", SourceTag::computed, "while running"};
const Basis sum_basis{"sum", SourceTag::computed, "while running"};
const Basis fan_basis{"sum over the units", SourceTag::computed, "as the catalogue rates them"};
const Basis least_basis{"the slowest part sets the speed", SourceTag::computed,
                        "as installed, at the doses and the cover asked for"};
const Basis width_rule{"count of nozzles that print", SourceTag::computed,
                       "a mean where the width is no whole number of pitches"};

std::string channel_id(const std::string& channel) { return "station." + channel; }

/// The group that prints a channel and its steps' prefix.
std::pair<const Group*, std::string> group_of(const Specification& spec,
                                              const std::string& channel) {
  for (std::size_t i = 0; i < spec.chosen.size(); ++i) {
    for (const std::string& name : spec.chosen[i].channels) {
      if (name == channel) return {&spec.chosen[i], "g" + std::to_string(i + 1)};
    }
  }
  return {nullptr, ""};
}

/// The nozzles of a colour that print: of a carriage by its advance, else by the width printed.
StepInput printing(TraceWriter& w, const ChannelLoad& load, const std::string& g) {
  const Group& group = w.spec.chosen[load.group];
  const bool several = group.film_heads > 1;
  if (group.scan && !several) return w.step("N", g + ".printing");
  const std::string id = g + ".active";
  if (w.has(id)) return w.step("N", id);
  std::vector<StepInput> inputs;
  std::string formula = "N_p";
  if (group.scan) {
    inputs.push_back(w.step("N_p", g + ".printing"));
  } else {
    formula = "W*R_n/25.4*m";
    inputs = {w.step("W", "station.width"), w.step("R_n", nozzle_axis_step(group, g)),
              w.step_of_value("m", {g + ".stack"}, group.stack, "")};
  }
  if (several) {
    formula += "*n_f";
    inputs.push_back(chosen("n_f", group.film_heads, ""));
  }
  w.formula(id, "N", formula, std::move(inputs), load.active_nozzles, "", width_rule);
  return w.step("N", id);
}

void data_rate_of(TraceWriter& w, const ChannelLoad& load, const std::string& name) {
  const auto [group, g] = group_of(w.spec, name);
  w.formula(channel_id(name) + ".data", "B", "N*f*b/1000",
            {printing(w, load, g), w.step("f", g + ".per_nozzle"), w.step("b", g + ".bits")},
            load.data.si() * 1e-6, "Mbit/s", definition);
}

void data(TraceWriter& w, const std::vector<ChannelLoad>& loads) {
  std::vector<StepInput> inputs;
  std::string list;
  for (const ChannelLoad& load : loads) {
    const std::string& name = w.job.channels[load.channel].name;
    data_rate_of(w, load, name);
    const std::string symbol = "B_" + std::to_string(inputs.size() + 1);
    list += (list.empty() ? "" : ",") + symbol;
    inputs.push_back(w.step(symbol, channel_id(name) + ".data"));
  }
  w.formula("station.data", "B", "sum(" + list + ")", inputs,
            w.spec.station->data_rate_bit_per_s * 1e-6, "Mbit/s", definition);
}

/// The least of what heads, lamps and dryers allow.
void highest_speed(TraceWriter& w) {
  if (!w.spec.station->speed_limit) return;
  std::vector<StepInput> inputs;
  std::string list;
  const auto add = [&](const std::string& id) {
    const std::string symbol = "v_" + std::to_string(inputs.size() + 1);
    list += (list.empty() ? "" : ",") + symbol;
    inputs.push_back(w.step(symbol, id));
  };
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    add("g" + std::to_string(i + 1) + ".speed_limit");
  }
  for (const Stage& stage : w.spec.station->stages) {
    if (stage.speed_limit_m_per_s) add("station." + stage.kind + ".speed");
  }
  w.formula("station.speed", "v_max", "min(" + list + ")", inputs,
            w.spec.station->speed_limit->speed.si(), "m/s", least_basis);
}

/// What the fans chosen move.
void fans(TraceWriter& w) {
  for (const Fans& fan : w.spec.station->fans) {
    if (!fan.m3_per_h) continue;
    w.formula(
        "station.fans." + fan.part, "Q_n", "n*Q",
        {{"n", static_cast<double>(fan.units), "", "parts", ""},
         from_catalogue("Q", *fan.m3_per_h / fan.units, "m3/h", "part." + fan.part + ".air_flow")},
        *fan.m3_per_h, "m3/h", fan_basis);
  }
}

/// Power of the stages after the heads, all of which ends as heat.
void heat(TraceWriter& w) {
  std::vector<StepInput> inputs;
  std::string list;
  for (const Stage& stage : w.spec.station->stages) {
    if (!stage.electrical_kw) continue;
    const std::string symbol = "P_" + std::to_string(inputs.size() + 1);
    list += (list.empty() ? "" : ",") + symbol;
    // A dryer of an ink without water has no steps of its own.
    const std::string id =
        "station." + stage.kind + (stage.running_kw ? ".running" : ".electrical");
    inputs.push_back(
        w.step_or_chosen(symbol, id, stage.running_kw.value_or(*stage.electrical_kw), "kW"));
  }
  if (inputs.empty()) return;
  w.formula("station.heat", "Q_h", "sum(" + list + ")", inputs, *w.spec.station->heat_kw, "kW",
            sum_basis);
}

}  // namespace

void trace_station(TraceWriter& w) {
  const std::vector<ChannelLoad> loads = channel_loads(w.job, w.spec.chosen);
  if (loads.empty()) return;
  trace_use(w, loads);
  data(w, loads);
  trace_cure(w, loads);
  trace_drying(w, loads);
  trace_feed(w);
  highest_speed(w);
  trace_vapour(w, loads);
  heat(w);
  fans(w);
  trace_wear(w);
  trace_cost(w);
}

}  // namespace calc
