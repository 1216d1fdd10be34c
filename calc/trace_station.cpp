#include "calc/cost.h"
#include "calc/laydown.h"
#include "calc/present_value.h"
#include "calc/running.h"
#include "calc/trace_stages.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis definition{"definition", SourceTag::computed, "while running"};
const Basis balance{"mass balance", SourceTag::computed, "mean cover as assumed or given"};
const Basis sum_basis{"sum", SourceTag::computed, "priced items only"};
const Basis annuity_basis{"present value of a yearly amount, year end", SourceTag::computed,
                          "real terms, no residual value"};
const Basis swing_basis{"common practice, no source", SourceTag::practice,
                        "one term alone, the others as they are"};
const Basis unit_basis{"annuity of the cost of ownership over what is made in a year",
                       SourceTag::computed, "mean figures of running time"};
const Basis fan_basis{"sum over the units", SourceTag::computed, "as the catalogue rates them"};
const Basis least_basis{"the slowest part sets the speed", SourceTag::computed,
                        "as installed, at the doses and the cover asked for"};
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

/// The nozzles of a channel that print: of a carriage as its own step has them.
StepInput printing(const TraceWriter& w, const ChannelLoad& load, const std::string& g) {
  const Group& group = w.spec.chosen[load.group];
  const bool traced = group.scan && group.film_heads == 1;
  return w.step_or_chosen("N", traced ? g + ".printing" : "", load.active_nozzles, "");
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

void running_hours(TraceWriter& w) {
  w.formula(
      "station.hours", "t_y", "h*d*u",
      {from_value("h", w.job.hours_per_day, w.job.hours_per_day.value.si() / 3600, "h",
                  "line.hours_per_day"),
       from_value("d", w.job.days_per_year, w.job.days_per_year.value, "", "line.days_per_year"),
       from_parameter(w.job, "u", P::uptime)},
      running_time(w.job).si() / 3600, "h", definition);
}

void area(TraceWriter& w) {
  const double value = area_rates(w.job, w.spec.chosen).nominal.si() * 3600;
  if (w.spec.chosen.front().scan) {  // only where speed or throughput is known
    w.formula("station.area", "q", "q_a",
              {from_value("q_a", *w.job.throughput, w.job.throughput->value.si() * 3600, "m2/h",
                          "line.throughput")},
              value, "m2/h", definition);
    return;
  }
  w.formula("station.area", "q", "W_i*v*3.6",
            {from_value("W_i", *w.job.width, in_mm(w.job.width->value), "mm", "image.width"),
             from_value("v", *w.job.speed, w.job.speed->value.si(), "m/s", "line.speed")},
            value, "m2/h", definition);
}

double laydown_of(const Group& group, const std::string& channel) {
  for (const ChannelDots& dots : group.dots) {
    if (dots.channel == channel) return dots.laydown * 1e6;
  }
  return 0;
}

void ink(TraceWriter& w, const ChannelLoad& load, const Consumption& use) {
  const Channel& channel = w.job.channels[load.channel];
  const auto [group, g] = group_of(w.spec, channel.name);
  const std::string id = channel_id(channel.name);
  w.formula(id + ".printed", "M", "q*h*c*s",
            {w.step("q", "station.area"), chosen("h", laydown_of(*group, channel.name), "mL/m2"),
             from_value("c", channel.cover_mean, channel.cover_mean.value, "",
                        "colour." + channel.name + ".cover_mean"),
             printed_share(w.job)},
            use.printed_ml_per_hour, "mL/h", balance);
  w.formula(id + ".used", "M_t", "M+M_w",
            {w.step("M", id + ".printed"), chosen("M_w", use.waste_ml_per_hour, "mL/h")},
            use.ml_per_hour, "mL/h", balance);
  w.formula(id + ".year", "V_y", "M_t*t_y/1000",
            {w.step("M_t", id + ".used"), w.step("t_y", "station.hours")}, use.l_per_year, "L",
            balance);
}

void consumption_steps(TraceWriter& w, const std::vector<ChannelLoad>& loads) {
  running_hours(w);
  area(w);
  for (std::size_t i = 0; i < loads.size(); ++i) ink(w, loads[i], w.spec.station->consumption[i]);
}

void capital(TraceWriter& w) {
  const Station& station = *w.spec.station;
  std::vector<StepInput> inputs;
  std::string list;
  for (const BomLine& line : station.bom) {
    if (!line.extended_price) continue;
    const std::string symbol = "b_" + std::to_string(line.item);
    list += (list.empty() ? "" : ",") + symbol;
    inputs.push_back({symbol, line.extended_price->major(), station.currency,
                      line.source.empty() ? "derived" : "catalogue", line.source});
  }
  if (inputs.empty()) return;
  w.formula("station.capital", "K", "sum(" + list + ")", inputs, station.cost.capital.major(),
            station.currency, sum_basis);
}

void yearly(TraceWriter& w) {
  const Cost& cost = w.spec.station->cost;
  const std::string& currency = w.spec.station->currency;
  w.formula("station.running", "Y", "Y_i+Y_h+Y_e+Y_l+Y_c",
            {chosen("Y_i", cost.ink_per_year.major(), currency),
             chosen("Y_h", cost.heads_per_year.major(), currency),
             chosen("Y_e", cost.energy_per_year.major(), currency),
             chosen("Y_l", cost.labour_per_year.major(), currency),
             chosen("Y_c", cost.cleaning_per_year.major(), currency)},
            cost.running_per_year.major(), currency, sum_basis);
}

Money yearly_cost(const Cost& cost, const std::string& name) {
  if (name == "ink") return cost.ink_per_year;
  if (name == "heads") return cost.heads_per_year;
  if (name == "energy") return cost.energy_per_year;
  return name == "labour" ? cost.labour_per_year : cost.cleaning_per_year;
}

/// What a fifth of each great term moves.
void swing_steps(TraceWriter& w) {
  const Cost& cost = w.spec.station->cost;
  const std::string& currency = w.spec.station->currency;
  for (const CostTerm& term : cost.terms) {
    const std::string id = "station.swing." + term.name;
    const StepInput share = chosen("s", cost_swing, "");
    if (term.name == "capital") {
      w.formula(id, "d", "round(100*s*K)/100", {share, w.step("K", "station.capital")},
                term.swing.major(), currency, swing_basis);
      continue;
    }
    w.formula(id, "d", "round(100*s*Y_k*a)/100",
              {share, chosen("Y_k", yearly_cost(cost, term.name).major(), currency),
               w.step("a", "station.annuity")},
              term.swing.major(), currency, swing_basis);
  }
}

void ownership_steps(TraceWriter& w) {
  const Cost& cost = w.spec.station->cost;
  const StepInput rate = from_value("i", w.job.discount, cost.discount, "", "costs.discount");
  const bool years_given = w.job.request->costs.years.has_value();
  const StepInput years{"n", static_cast<double>(cost.years), "a",
                        years_given ? "given" : "assumed", "costs.years"};
  const bool free_of_interest = cost.discount == 0;
  w.formula("station.annuity", "a", free_of_interest ? "n" : "(1-(1+i)^(-n))/i", {rate, years},
            annuity_factor(cost.discount, cost.years), "a", annuity_basis);
  if (!w.has("station.capital")) return;
  w.formula("station.ownership", "C", "round(100*(K+Y*a))/100",
            {w.step("K", "station.capital"), w.step("Y", "station.running"),
             w.step("a", "station.annuity")},
            cost.ownership.major(), w.spec.station->currency, annuity_basis);
  swing_steps(w);
}

/// Parts a year, and what a thousand of them cost.
void per_thousand(TraceWriter& w) {
  const Cost& cost = w.spec.station->cost;
  if (!cost.per_thousand || !w.has("station.ownership")) return;
  const double hourly = parts_rate(w.job)->si() * 3600;
  const Given<Frequency>& given = w.job.request->line.throughput_parts;
  if (given) {
    w.formula("station.parts", "n", "n_g",
              {from_value("n_g", *given, given->high.si() * 3600, "1/h", "line.throughput")},
              hourly, "1/h", definition);
  } else {
    w.formula("station.parts", "n", "v*3600/p*1000",
              {from_value("v", *w.job.speed, w.job.speed->value.si(), "m/s", "line.speed"),
               from_value("p", w.job.pitch, in_mm(w.job.pitch.value), "mm", "product.pitch")},
              hourly, "1/h", definition);
  }
  w.formula("station.parts_year", "N", "n*t_y",
            {w.step("n", "station.parts"), w.step("t_y", "station.hours")}, *cost.parts_per_year,
            "1/a", definition);
  w.formula("station.per_thousand", "C_t", "1000*C/(a*N)",
            {w.step("C", "station.ownership"), w.step("a", "station.annuity"),
             w.step("N", "station.parts_year")},
            *cost.per_thousand, w.spec.station->currency, unit_basis);
}

/// Area of the images of a year, and what a square metre of it costs.
void per_square_metre(TraceWriter& w) {
  const Cost& cost = w.spec.station->cost;
  if (!cost.per_m2 || !w.has("station.ownership")) return;
  w.formula("station.images_year", "A", "q*t_y*s",
            {w.step("q", "station.area"), w.step("t_y", "station.hours"), printed_share(w.job)},
            *cost.images_m2_per_year, "m2/a", definition);
  w.formula("station.per_m2", "C_m", "C/(a*A)",
            {w.step("C", "station.ownership"), w.step("a", "station.annuity"),
             w.step("A", "station.images_year")},
            *cost.per_m2, w.spec.station->currency + "/m2", unit_basis);
}

/// What the fans chosen move.
void fans(TraceWriter& w) {
  for (const Fans& fan : w.spec.station->fans) {
    if (!fan.m3_per_h) continue;
    w.formula("station.fans." + fan.part, "Q_n", "n*Q",
              {chosen("n", fan.units, ""), from_catalogue("Q", *fan.m3_per_h / fan.units, "m3/h",
                                                          "part." + fan.part + ".air_flow")},
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
  data(w, loads);
  consumption_steps(w, loads);
  trace_cure(w);
  trace_feed(w);
  trace_drying(w, loads);
  highest_speed(w);
  trace_vapour(w, loads);
  heat(w);
  fans(w);
  capital(w);
  yearly(w);
  ownership_steps(w);
  per_square_metre(w);
  per_thousand(w);
}

}  // namespace calc
