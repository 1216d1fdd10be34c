/// What the channels use: area, film, maintenance, and what passes at peak cover.
#include <algorithm>
#include <array>

#include "calc/job_parts.h"
#include "calc/named.h"
#include "calc/running.h"
#include "calc/trace_find.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis definition{"definition", SourceTag::computed, "while running"};
const Basis highest{"definition", SourceTag::computed, "highest speed"};
const Basis balance{"mass balance", SourceTag::computed, "mean cover as assumed or given"};
const Basis upkeep{"mass balance", SourceTag::practice,
                   "a share of what is printed, and no less than the purges of a day"};
const Basis flushing{"mass balance", SourceTag::practice, "one portion a head and purge"};
const Basis peak_balance{"mass balance", SourceTag::computed, "peak cover, highest speed"};
const Basis counting{"count", SourceTag::computed, "whole heads"};
const Basis total{"sum", SourceTag::computed, "all channels"};
const Basis wide{"plane geometry", SourceTag::computed, "image and margins as they stand"};
const Basis separation{"common practice, no source: the separation limits the inks together",
                       SourceTag::practice, "process colours, in solids of the one that lays most"};

std::string of(const TraceWriter& w, const ChannelLoad& load, const char* name) {
  return "station." + w.job.channels[load.channel].name + "." + name;
}

void width(TraceWriter& w) {
  w.formula("station.width", "W", "W_i+2*w_m",
            {from_value("W_i", *w.job.width, in_mm(w.job.width->value), "mm", "image.width"),
             margin_input(w.job, w.job.margin.value)},
            in_mm(printed_width(w.job)), "mm", wide);
}

StepInput hours_a_day(const TraceWriter& w) {
  return from_value("h", w.job.hours_per_day, w.job.hours_per_day.value.si() / 3600, "h",
                    "line.hours_per_day");
}

void running_hours(TraceWriter& w) {
  w.formula(
      "station.hours", "t_y", "h*d*u",
      {hours_a_day(w),
       from_value("d", w.job.days_per_year, w.job.days_per_year.value, "", "line.days_per_year"),
       from_parameter(w.job, "u", P::uptime)},
      running_time(w.job).si() / 3600, "h", definition);
}

/// Substrate passed, at the nominal or the highest speed.
void area(TraceWriter& w, const char* id, const char* symbol, bool at_highest, const Basis& basis) {
  const AreaRates rates = area_rates(w.job, w.spec.chosen);
  const double value = (at_highest ? rates.highest : rates.nominal).si() * 3600;
  if (w.spec.chosen.front().scan) {  // only where speed or throughput is known
    const Value<AreaRate>& rate = *w.job.throughput;
    w.formula(id, symbol, "q_a",
              {from_value("q_a", rate, (at_highest ? rate.high : rate.value).si() * 3600, "m2/h",
                          "line.throughput")},
              value, "m2/h", basis);
    return;
  }
  const Value<Speed>& speed = *w.job.speed;
  w.formula(
      id, symbol, "W_i*v*3.6",
      {from_value("W_i", *w.job.width, in_mm(w.job.width->value), "mm", "image.width"),
       from_value("v", speed, (at_highest ? speed.high : speed.value).si(), "m/s", "line.speed")},
      value, "m2/h", basis);
}

StepInput purge_of(const TraceWriter& w, const Head& head) {
  if (!head.purge) return from_parameter(w.job, "V", P::purge_ml);
  return from_catalogue("V", head.purge->value.si() * 1e6, "mL", "head." + head.name + ".purge");
}

/// Ink that maintenance takes, and flushing fluid. The line runs some time of a day.
void waste(TraceWriter& w, const ChannelLoad& load, const ChannelFlow& flow, const Head& head) {
  const auto rate = [](VolumeFlow f) { return f.si() * 3600e6; };
  const StepInput printed = w.step("M", of(w, load, "printed"));
  const StepInput share = from_parameter(w.job, "k", P::purge_share);
  const StepInput heads = w.step("n", of(w, load, "heads"));
  const StepInput purges = from_parameter(w.job, "z", P::purges_per_day);
  const StepInput day = hours_a_day(w);
  const StepInput uptime = from_parameter(w.job, "u", P::uptime);
  w.formula(of(w, load, "purged"), "M_p", "max(M*k,n*z*V/(h*u))",
            {printed, share, heads, purges, purge_of(w, head), day, uptime}, rate(flow.purged),
            "mL/h", upkeep);
  w.formula(of(w, load, "flush"), "M_f", "n*z*V_f/(h*u)",
            {heads, purges, from_parameter(w.job, "V_f", P::flush_ml), day, uptime},
            rate(flow.flush), "mL/h", flushing);
  w.formula(of(w, load, "waste"), "M_w", "M_p+M_f",
            {w.step("M_p", of(w, load, "purged")), w.step("M_f", of(w, load, "flush"))},
            rate(flow.waste()), "mL/h", balance);
}

void ink(TraceWriter& w, const ChannelLoad& load, const Consumption& use) {
  const Channel& channel = w.job.channels[load.channel];
  const Group& group = w.spec.chosen[load.group];
  const std::string g = "g" + std::to_string(load.group + 1);
  const Head& head = trace_head(w.catalogue, group);
  w.formula(of(w, load, "heads"), "n", "N/c",
            {w.step("N", g + ".heads_total"), w.step("c", g + ".positions")}, load.heads, "",
            counting);
  w.formula(of(w, load, "printed"), "M", "q*h*c*s",
            {w.step("q", "station.area"), film_of(w, load), mean_cover(w.job, channel, "c"),
             printed_share(w)},
            use.printed_ml_per_hour, "mL/h", balance);
  waste(w, load, channel_flow(w.job, load, &head), head);
  w.formula(of(w, load, "used"), "M_t", "M+M_w",
            {w.step("M", of(w, load, "printed")), w.step("M_w", of(w, load, "waste"))},
            use.ml_per_hour, "mL/h", balance);
  w.formula(of(w, load, "year"), "V_y", "M_t*t_y/1000",
            {w.step("M_t", of(w, load, "used")), w.step("t_y", "station.hours")}, use.l_per_year,
            "L", balance);
  w.formula(of(w, load, "month"), "V_m", "V_y/12", {w.step("V_y", of(w, load, "year"))},
            use.l_per_month, "L", definition);
  if (!use.ml_per_thousand) return;
  w.formula(of(w, load, "thousand"), "V_t", "1000*M_t/n",
            {w.step("M_t", of(w, load, "used")), parts_an_hour(w)}, *use.ml_per_thousand, "mL",
            balance);
}

/// A figure of all channels together.
struct Together {
  const char* name;
  const char* symbol;
  double Consumption::*value;
  const char* of;
  const char* unit;
};

/// What all channels use together, and the share of it that is no print.
void together(TraceWriter& w, const std::vector<ChannelLoad>& loads) {
  const std::vector<Consumption>& uses = w.spec.station->consumption;
  constexpr std::array<Together, 5> sums{{
      {"station.printed", "M", &Consumption::printed_ml_per_hour, "printed", "mL/h"},
      {"station.waste", "M_w", &Consumption::waste_ml_per_hour, "waste", "mL/h"},
      {"station.used", "M_t", &Consumption::ml_per_hour, "used", "mL/h"},
      {"station.month", "V_m", &Consumption::l_per_month, "month", "L"},
      {"station.year", "V_y", &Consumption::l_per_year, "year", "L"},
  }};
  for (const Together& sum : sums) {
    std::vector<StepInput> inputs;
    std::string list;
    double value = 0;
    for (std::size_t i = 0; i < loads.size(); ++i) {
      const std::string symbol = std::string(sum.symbol) + "_" + std::to_string(i + 1);
      list += (list.empty() ? "" : ",") + symbol;
      inputs.push_back(w.step(symbol, of(w, loads[i], sum.of)));
      value += uses[i].*sum.value;
    }
    w.formula(sum.name, sum.symbol, "sum(" + list + ")", std::move(inputs), value, sum.unit, total);
  }
  const StepInput waste = w.step("M_w", "station.waste"), all = w.step("M_t", "station.used");
  if (all.value <= 0) return;
  w.formula("station.waste_share", "w", "M_w/M_t", {waste, all}, waste.value / all.value, "",
            definition);
}

StepInput cover_at_peak(const TraceWriter& w, const ChannelLoad& load, const std::string& symbol) {
  return peak_cover(w.job, w.job.channels[load.channel], symbol);
}

/// A cover with the key that says it: of the request, or of the default.
StepInput cover(const Job& job, const Channel& channel, const Value<double>& value, P id,
                const char* field, const std::string& symbol) {
  if (value.origin.kind == OriginKind::assumed) return from_parameter(job, symbol, id);
  return from_value(symbol, value, value.value, "", "colour." + channel.name + field);
}

StepInput limit_of_inks(const Job& job) {
  const Ink* const ink = limiting_ink(job);
  if (ink == nullptr) return from_parameter(job, "L", P::process_limit);
  return from_value("L", *ink->limit, ink->limit->value, "", "ink." + ink->name + ".limit");
}

/// What the process colours lay together at their peaks, and the share that is left of it.
void separate(TraceWriter& w, const std::vector<ChannelLoad>& loads) {
  if (w.has("station.process_share")) return;
  std::vector<StepInput> inputs;
  std::string sum, films;
  for (const ChannelLoad& load : loads) {
    if (w.job.channels[load.channel].kind != ColourKind::process) continue;
    const std::string number = std::to_string(inputs.size() / 2 + 1);
    const std::string between = films.empty() ? "" : ",";
    sum.append(between).append("h_").append(number).append("*c_").append(number);
    films.append(between).append("h_").append(number);
    inputs.push_back(film_of(w, load, "h_" + number));
    inputs.push_back(cover_at_peak(w, load, "c_" + number));
  }
  w.formula("station.process_peak", "c_P", "sum(" + sum + ")/max(" + films + ")", std::move(inputs),
            process_film(w.job, loads).peak, "", separation);
  w.formula("station.process_share", "s", "min(1,L/c_P)",
            {limit_of_inks(w.job), w.step("c_P", "station.process_peak")},
            process_share(w.job, loads), "", separation);
}

}  // namespace

StepInput mean_cover(const Job& job, const Channel& channel, const std::string& symbol) {
  const P id = mean_parameter(channel.kind);
  return cover(job, channel, channel.cover_mean, id, ".cover_mean", symbol);
}
StepInput peak_cover(const Job& job, const Channel& channel, const std::string& symbol) {
  return cover(job, channel, channel.cover_peak, P::cover_peak, ".cover_peak", symbol);
}

StepInput film_of(const TraceWriter& w, const ChannelLoad& load, const std::string& symbol) {
  const Group& group = w.spec.chosen[load.group];
  const std::string g = "g" + std::to_string(load.group + 1);
  return w.step(symbol, dots_steps(group, w.job.channels[load.channel].name, g) + ".laydown");
}

StepInput parts_an_hour(TraceWriter& w) {
  const std::string id = "station.parts";
  if (w.has(id)) return w.step("n", id);
  const double hourly = parts_rate(w.job)->si() * 3600;
  const Given<Frequency>& given = w.job.request->line.throughput_parts;
  if (given) {
    w.formula(id, "n", "n_g",
              {from_value("n_g", *given, given->high.si() * 3600, "1/h", "line.throughput")},
              hourly, "1/h", definition);
  } else {
    w.formula(id, "n", "v*3600/p*1000",
              {from_value("v", *w.job.speed, w.job.speed->value.si(), "m/s", "line.speed"),
               from_value("p", w.job.pitch, in_mm(w.job.pitch.value), "mm", "product.pitch")},
              hourly, "1/h", definition);
  }
  return w.step("n", id);
}

StepInput passing(TraceWriter& w, const ChannelLoad& load) {
  const std::string id = of(w, load, "passing");
  if (!w.has("station.area_highest")) area(w, "station.area_highest", "q_h", true, highest);
  if (!w.has(id)) {
    w.formula(
        id, "V", "q_h*h*c_p",
        {w.step("q_h", "station.area_highest"), film_of(w, load), cover_at_peak(w, load, "c_p")},
        load.passing.si() * 3600e6, "mL/h", peak_balance);
  }
  return w.step("V", id);
}

std::string add_peak_share(TraceWriter& w, const std::vector<ChannelLoad>& loads,
                           const ChannelLoad& load, std::vector<StepInput>& inputs) {
  const bool process = w.job.channels[load.channel].kind == ColourKind::process;
  if (!process || process_film(w.job, loads).peak <= 0) return "";
  separate(w, loads);
  inputs.push_back(w.step("s", "station.process_share"));
  return "*s";
}

StepInput density_of(const Job& job, const Channel& channel) {
  if (channel.ink == nullptr || !channel.ink->density) {
    return from_parameter(job, "r", P::ink_density);
  }
  const Value<Density>& given = *channel.ink->density;
  return from_value("r", given, given.value.si(), "kg/m3", "ink." + channel.ink->name + ".density");
}

void trace_use(TraceWriter& w, const std::vector<ChannelLoad>& loads) {
  width(w);
  running_hours(w);
  area(w, "station.area", "q", false, definition);
  for (std::size_t i = 0; i < loads.size(); ++i) ink(w, loads[i], w.spec.station->consumption[i]);
  together(w, loads);
}

}  // namespace calc
