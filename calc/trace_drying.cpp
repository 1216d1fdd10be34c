#include "calc/named.h"
#include "calc/station_cure.h"
#include "calc/steam.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis balance{"mass and heat balance of the dryer", SourceTag::computed,
                    "peak cover, highest speed"};
const Basis mean_balance{"mass and heat balance of the dryer", SourceTag::computed,
                         "images and the gaps between them, which the dryer holds together"};
const Basis running_balance{"mass and heat balance of the dryer", SourceTag::computed,
                            "mean cover, nominal speed, running time"};
const Basis air_basis{"the lower of the usual temperature and the substrate's limit",
                      SourceTag::computed, "of the air in the dryer and leaving it"};
const Basis unit_basis{"whole numbers of parts that serve every limit stated", SourceTag::computed,
                       "length, width and power the catalogue states"};
const Basis installed_basis{"sum over the units", SourceTag::computed,
                            "as the catalogue rates them"};
const Basis rate_basis{"drying rate per area", SourceTag::practice, "hot air on one face"};
const Basis hyland{"ASHRAE Fundamentals 2017 chapter 1 (Hyland and Wexler)", SourceTag::library,
                   "0 to 200 degC, 101.325 kPa"};
const Basis moist{"ASHRAE Fundamentals 2017 chapter 1", SourceTag::library,
                  "ideal gas, 101.325 kPa"};

std::string saturation_of(const std::string& kelvin) {
  return "exp(-5800.2206/" + kelvin + "+1.3914993-0.048640239*" + kelvin + "+4.1764768e-5*" +
         kelvin + "^2-1.4452093e-8*" + kelvin + "^3+6.5459673*ln(" + kelvin + "))";
}

/// The drying of a job done again.
struct DryTrace {
  TraceWriter& w;
  const Stage& stage;
  Drying drying;
};

/// Water of a channel's ink that evaporates, at peak cover and over the running time.
void water_of(TraceWriter& w, const std::vector<ChannelLoad>& loads, const ChannelLoad& load) {
  const Channel& channel = w.job.channels[load.channel];
  static const Ink none;
  const Ink& ink = channel.ink == nullptr ? none : *channel.ink;
  const Given<double>& share = ink.water_share;
  const bool high = w.job.absorbency == Absorbency::high;
  const double held = peak_share(w.job, loads, load);
  const Density density = ink_density(w.job, channel);
  const double x = share ? share->value : w.job.parameters[P::water_share];
  const P evaporated = high ? P::evaporated_high : P::evaporated_none_low;
  const auto water = [&](VolumeFlow ink_flow) {
    return evaporated_water(ink_flow, density, x, w.job.parameters[evaporated]).si() * 3600;
  };
  const StepInput mass = density_of(w.job, channel);
  const StepInput holds =
      from_value_or("x", share, x, "", "ink." + ink.name + ".water_share", w.job, P::water_share);
  const StepInput leaves = from_parameter(w.job, "y", evaporated);
  const std::string id = "station." + channel.name;
  std::vector<StepInput> inputs{passing(w, load), mass, holds, leaves};
  const std::string limited = add_peak_share(w, loads, load, inputs);
  w.formula(id + ".water", "w", "V" + limited + "*r*x*y*1e-6", std::move(inputs),
            water(load.passing * held), "kg/h", balance);
  w.formula(id + ".water_mean", "w", "M*r*x*y*1e-6",
            {w.step("M", id + ".printed"), mass, holds, leaves}, water(load.printed), "kg/h",
            running_balance);
}

/// The sum of a step of every channel whose ink holds water.
void sum_of_channels(DryTrace& t, const std::vector<ChannelLoad>& loads, const std::string& id,
                     const char* of, double value, const Basis& basis) {
  std::vector<StepInput> inputs;
  std::string list;
  for (const ChannelLoad& load : loads) {
    const Channel& channel = t.w.job.channels[load.channel];
    if (channel.family != InkFamily::aqueous) continue;
    const std::string symbol = "w_" + std::to_string(inputs.size() + 1);
    list += (list.empty() ? "" : ",") + symbol;
    inputs.push_back(t.w.step(symbol, "station." + channel.name + of));
  }
  t.w.formula(id, "w_f", "sum(" + list + ")", inputs, value, "kg/h", basis);
}

void water(DryTrace& t, const std::vector<ChannelLoad>& loads) {
  for (const ChannelLoad& load : loads) {
    const Channel& channel = t.w.job.channels[load.channel];
    if (channel.family == InkFamily::aqueous) water_of(t.w, loads, load);
  }
  sum_of_channels(t, loads, "station.drying.wet", ".water", t.drying.wet.si() * 3600, balance);
  sum_of_channels(t, loads, "station.drying.water_mean", ".water_mean",
                  t.drying.water_mean.si() * 3600, running_balance);
  t.w.formula("station.drying.water", "w", "w_f*s",
              {t.w.step("w_f", "station.drying.wet"), printed_share(t.w)}, *t.stage.water_kg_per_h,
              "kg/h", mean_balance);
}

/// "T_a" [degC]: the usual temperature, or the substrate's limit where that is lower.
StepInput air_in(DryTrace& t) {
  const Job& job = t.w.job;
  const Given<Temperature>& limit = job.request->substrate.temperature_limit;
  const std::string id = "station.drying.air";
  if (!t.w.has(id)) {
    std::vector<StepInput> inputs{from_parameter(job, "T_u", P::dryer_air_c)};
    if (limit) {
      inputs.push_back(from_value("T_s", *limit, limit->low.in_celsius(), "degC",
                                  "substrate.temperature_limit"));
    }
    t.w.formula(id, "T_a", limit ? "min(T_u,T_s)" : "T_u", std::move(inputs),
                t.drying.air.in_celsius(), "degC", air_basis);
  }
  return t.w.step("T_a", id);
}

void energy(DryTrace& t) {
  const Job& job = t.w.job;
  const StepInput air = air_in(t);
  const SteamInterval i = steam_interval(t.drying.air);
  const SteamTable& table = steam_table();
  t.w.formula(
      "station.drying.latent", "L", "L_1+(L_2-L_1)*(T_a-t_1)/(t_2-t_1)",
      {air, constant("t_1", i.low.celsius, "degC"), constant("t_2", i.high.celsius, "degC"),
       constant("L_1", i.low.kj_per_kg, "kJ/kg"), constant("L_2", i.high.kj_per_kg, "kJ/kg")},
      latent_heat(t.drying.air).si() / 1e3, "kJ/kg",
      {std::string(table.source), SourceTag::printed, std::string(table.validity)});
  t.w.formula(
      "station.drying.energy", "h", "L+c_w*(T_a-T_r)",
      {t.w.step("L", "station.drying.latent"), constant("c_w", 4.186, "kJ/(kg K)"), air,
       from_value("T_r", job.room, job.room.value.in_celsius(), "degC", "line.air_temperature")},
      evaporation_energy(job.room.value, t.drying.air).si() / 1e3, "kJ/kg", balance);
}

/// Heat for so much water and for the substrate at that speed, and the power it takes.
void heat(DryTrace& t, const std::string& water_step, bool at_highest, const std::string& end,
          double heat_kw, double electrical_kw, const Basis& basis) {
  const Job& job = t.w.job;
  std::string formula = "w*h/3600";
  std::vector<StepInput> inputs{t.w.step("w", water_step), t.w.step("h", "station.drying.energy")};
  const std::optional<WebHeat> web = web_heat(job);
  if (web && job.speed) {
    formula += "+W*v*m*c*max(0,T_a-T_r)*1e-6";
    const Given<Length>& product = job.request->product.width;
    const Length width = web_width(job);
    inputs.push_back(product && width > job.width->value
                         ? from_value("W", *product, in_mm(width), "mm", "product.width")
                         : from_value("W", *job.width, in_mm(width), "mm", "image.width"));
    const Speed speed = at_highest ? job.speed->high : job.speed->value;
    inputs.push_back(from_value("v", *job.speed, speed.si(), "m/s", "line.speed"));
    inputs.push_back({"m", web->mass.si() * 1e3, "g/m2", "given", "substrate.area_mass"});
    inputs.push_back(from_value_or("c", job.request->substrate.heat_capacity, web->heat.si() * 1e-3,
                                   "kJ/(kg K)", "substrate.heat_capacity", job,
                                   P::web_heat_capacity));
    inputs.push_back(air_in(t));
    inputs.push_back(
        from_value("T_r", job.room, job.room.value.in_celsius(), "degC", "line.air_temperature"));
  }
  const std::string id = "station.drying.heat" + end;
  t.w.formula(id, "Q", formula, inputs, heat_kw, "kW", basis);
  t.w.formula("station.drying.electrical" + end, "P_e", "Q/e",
              {t.w.step("Q", id), from_parameter(job, "e", P::dryer_efficiency)}, electrical_kw,
              "kW", basis);
}

/// At peak cover and the highest speed, and over the running time, which costs.
void heats(DryTrace& t) {
  heat(t, "station.drying.water", true, "", *t.stage.heat_kw, *t.stage.electrical_kw, balance);
  const double mean = t.drying.electrical_mean.si() / 1e3;
  heat(t, "station.drying.water_mean", false, "_mean",
       mean * t.w.job.parameters[P::dryer_efficiency], mean, running_balance);
}

void length(DryTrace& t) {
  const Job& job = t.w.job;
  const Dryer* const dryer = named(t.w.catalogue.dryers, t.stage.equipment);
  StepInput rate = from_parameter(job, "k", P::drying_rate);
  if (dryer != nullptr && dryer->drying_rate) {
    rate = from_catalogue("k", dryer->drying_rate->value.si() * 3600, "kg/(m2 h)",
                          "dryer." + dryer->name + ".drying_rate");
  }
  t.w.formula("station.drying.length", "l", "w_f*1000/(W*k)",
              {t.w.step("w_f", "station.drying.wet"),
               from_value("W", *job.width, in_mm(job.width->value), "mm", "image.width"), rate},
              *t.stage.length_m, "m", rate_basis);
}

/// Dryers that stand side by side over the width printed.
std::string abreast(DryTrace& t, std::vector<StepInput>& inputs) {
  const Dryer& dryer = *t.drying.dryer->item;
  if (!dryer.width) return "";
  inputs.push_back(t.w.step("W", "station.width"));
  inputs.push_back(
      from_catalogue("w_d", in_mm(dryer.width->value), "mm", "dryer." + dryer.name + ".width"));
  return "max(1,ceil(W/w_d))";
}

/// Dryers that are long and strong enough, and the length they take.
void units(DryTrace& t) {
  if (t.drying.dryer == nullptr) return;
  const Dryer& dryer = *t.drying.dryer->item;
  const std::string ref = "dryer." + dryer.name + ".";
  const StepInput needed = t.w.step("l", "station.drying.length");
  const StepInput each = from_catalogue("l_d", dryer.length->value.si(), "m", ref + "length");
  std::vector<StepInput> inputs{needed, each};
  const std::string wide = abreast(t, inputs);
  std::string count = "max(1,ceil(l/l_d))" + (wide.empty() ? "" : "*" + wide);
  if (dryer.electrical && dryer.electrical->value > Power()) {
    count = "max(" + count + ",ceil(P_e/P))";
    inputs.push_back(t.w.step("P_e", "station.drying.electrical"));
    inputs.push_back(
        from_catalogue("P", dryer.electrical->value.si() / 1e3, "kW", ref + "electrical"));
  }
  t.w.formula("station.drying.units", "n", count, std::move(inputs), t.drying.units, "",
              unit_basis);
  std::vector<StepInput> line{needed, t.w.step("n", "station.drying.units"), each};
  const std::string beside = abreast(t, line);
  t.w.formula("station.drying.installed", "l_i",
              beside.empty() ? "max(l,n*l_d)" : "max(l,max(1,ceil(n/" + beside + "))*l_d)",
              std::move(line), t.drying.along.si(), "m", installed_basis);
}

/// What all dryers installed take together.
void installed(DryTrace& t) {
  if (!t.stage.installed_kw || t.drying.dryer == nullptr) return;
  const Dryer& dryer = *t.drying.dryer->item;
  t.w.formula("station.drying.installed_power", "P_n", "n*P",
              {t.w.step("n", "station.drying.units"),
               from_catalogue("P", dryer.electrical->value.si() / 1e3, "kW",
                              "dryer." + dryer.name + ".electrical")},
              *t.stage.installed_kw, "kW", installed_basis);
}

/// The speed up to which the dryers installed are long and strong enough.
void fastest(DryTrace& t) {
  const Drying& d = t.drying;
  if (!t.stage.speed_limit_m_per_s || d.dryer == nullptr) return;
  const Job& job = t.w.job;
  std::string spare = "l_i/l";
  std::vector<StepInput> inputs{
      from_value("v", *job.speed, job.speed->high.si(), "m/s", "line.speed"),
      t.w.step("l_i", "station.drying.installed"), t.w.step("l", "station.drying.length")};
  if (const Given<Power>& power = d.dryer->item->electrical; power && d.electrical > Power()) {
    spare += ",n*P/P_e";
    inputs.push_back(t.w.step("n", "station.drying.units"));
    inputs.push_back(from_catalogue("P", power->value.si() / 1e3, "kW",
                                    "dryer." + d.dryer->item->name + ".electrical"));
    inputs.push_back(t.w.step("P_e", "station.drying.electrical"));
  }
  t.w.formula("station.drying.speed", "v_max", "v*min(" + spare + ")", std::move(inputs),
              *t.stage.speed_limit_m_per_s, "m/s", balance);
}

void room_air(DryTrace& t) {
  const Job& job = t.w.job;
  const Given<double>& given = job.request->line.air_humidity;
  const double high = given ? given->high : 0;
  const StepInput share =
      from_value_or("f", given, high, "", "line.air_humidity", job, P::room_humidity);
  const StepInput room = from_value("T_r", job.room, served_high(job.room).in_celsius(), "degC",
                                    "line.air_temperature");
  t.w.formula("station.drying.saturation", "p", saturation_of("(T_r+273.15)"), {room},
              saturation_pressure(served_high(job.room))->si(), "Pa", hyland);
  t.w.formula("station.drying.humidity_in", "x_i", "0.621945*f*p/(101325-f*p)",
              {share, t.w.step("p", "station.drying.saturation")}, *t.drying.humidity_in, "kg/kg",
              moist);
}

/// Temperature at which air so moist is saturated.
void dew_point_of(DryTrace& t, const StepInput& leaving, const std::string& end, double celsius) {
  const std::string pressure = "station.drying.vapour_pressure" + end;
  t.w.formula(pressure, "p_o", "101325*x_o/(0.621945+x_o)", {leaving},
              vapour_pressure(leaving.value).si(), "Pa", moist);
  t.w.add("station.drying.dew_point" + end, StepKind::solve, "t_d",
          saturation_of("(t_d+273.15)") + "-p_o", {t.w.step("p_o", pressure)}, celsius, "degC",
          hyland);
}

void exhaust(DryTrace& t) {
  if (!t.stage.exhaust_m3_per_h) return;
  room_air(t);
  const StepInput leaving = from_parameter(t.w.job, "x_o", P::exhaust_humidity);
  t.w.formula("station.drying.dry_air", "m_a", "w/(x_o-x_i)",
              {t.w.step("w", "station.drying.water"), leaving,
               t.w.step("x_i", "station.drying.humidity_in")},
              t.drying.dry_air.si() * 3600, "kg/h", balance);
  t.w.formula("station.drying.exhaust", "Q_x", "m_a*0.287042*(T_a+273.15)*(1+1.607858*x_o)/101.325",
              {t.w.step("m_a", "station.drying.dry_air"), air_in(t), leaving},
              *t.stage.exhaust_m3_per_h, "m3/h", moist);
  if (!t.stage.dew_point_degc) return;
  dew_point_of(t, leaving, "", *t.stage.dew_point_degc);
  const double high = parameter(P::exhaust_humidity).high;
  if (leaving.value >= high) return;
  dew_point_of(t, from_range(t.w.job, "x_o", P::exhaust_humidity, high), "_most",
               *t.stage.dew_point_most_degc);
}

}  // namespace

double peak_share(const Job& job, const std::vector<ChannelLoad>& loads, const ChannelLoad& load) {
  const bool process = job.channels[load.channel].kind == ColourKind::process;
  return process ? process_share(job, loads) : 1;
}

void trace_drying(TraceWriter& w, const std::vector<ChannelLoad>& loads) {
  const Stage* stage = stage_of(w.spec, "drying");
  if (stage == nullptr || !w.job.width || *stage->length_m <= 0) return;
  const PriceBook book(w.catalogue, w.job.currency);
  DryTrace t{w, *stage, size_drying(w.job, book, loads)};
  water(t, loads);
  energy(t);
  heats(t);
  length(t);
  units(t);
  installed(t);
  fastest(t);
  exhaust(t);
}

}  // namespace calc
