/// What the station takes from the building and the line, and who provides what.
#include <algorithm>
#include <array>
#include <optional>
#include <string>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"

namespace output {
namespace {

/// One row: what is needed, for which part of the station, how much. Without an amount the table
/// says that it is unknown.
struct Need {
  std::string_view what;  ///< words of `services.WHAT` and `services.note.WHAT`
  std::string part;       ///< markup
  std::optional<std::string> amount;
  std::string key = {};
};

void add_need(const Context& c, Values& table, const Need& need) {
  Values& row = table.add("ROW");
  const std::string name(need.what);
  row.set("KEY", need.key);
  row.set_markup("WHAT", c.words("services." + name));
  row.set_markup("PART", need.part);
  row.set_markup("AMOUNT", need.amount ? escaped(*need.amount) : c.words("stage_unknown"));
  row.set_markup("NOTE", c.words("services.note." + name));
}

/// A figure of a stage, rounded up: of too little the station would not do. None, no row.
void add_of_stage(const Context& c, Values& table, const calc::Stage& stage, std::string_view what,
                  const std::optional<double>& value, std::string_view unit,
                  std::string_view step) {
  if (!value) return;
  const std::string id = "station." + stage.kind + "." + std::string(step);
  add_need(c, table,
           {what, c.words("stage." + stage.kind), c.bound(*value, unit, Rounding::up),
            c.step_keys({id})});
}

/// Power, or that it is not known where the stage has equipment that takes some.
void add_power(const Context& c, Values& table, const calc::Stage& stage) {
  if (stage.running_kw) {
    add_of_stage(c, table, stage, "connected", stage.electrical_kw, "kW", "electrical");
    add_of_stage(c, table, stage, "running", stage.running_kw, "kW", "running");
  } else if (stage.electrical_kw) {
    add_of_stage(c, table, stage, "power", stage.electrical_kw, "kW", "electrical");
  } else if (!stage.airing) {
    add_need(c, table, {"power", c.words("stage." + stage.kind), {}});
  }
}

void add_air(const Context& c, Values& table, const calc::Stage& stage) {
  add_of_stage(c, table, stage, "cooling", stage.cooling_m3_per_h, "m3/h", "cooling");
  add_of_stage(c, table, stage, "exhaust", stage.exhaust_m3_per_h, "m3/h", "exhaust");
  add_of_stage(c, table, stage, "ozone", stage.ozone_m3_per_h, "m3/h", "ozone");
  if (!stage.airing) return;
  const calc::Airing& airing = *stage.airing;
  const bool captures = airing.captures;
  if (captures && airing.lel_hot) {
    add_of_stage(c, table, stage, "vapour", airing.lel_hot_m3_per_h, "m3/h", "air_lel_hot");
  } else if (captures) {
    add_of_stage(c, table, stage, "vapour", airing.lel_m3_per_h, "m3/h", "air_lel");
  }
  if (captures && !airing.lel_m3_per_h) {
    add_need(c, table, {"vapour", c.words("stage." + stage.kind), {}});
  }
  if (airing.health_most_m3_per_h) {
    add_of_stage(c, table, stage, "fresh_air", airing.health_most_m3_per_h, "m3/h",
                 "air_health_most");
  } else {
    add_need(c, table, {"fresh_air", c.words("stage." + stage.kind), {}});
  }
}

/// Ink that comes and waste that goes in a month, all channels together.
void add_fluids(const Context& c, Values& table, const calc::Station& station) {
  double ink = 0, waste = 0;
  for (const calc::Consumption& use : station.consumption) {
    ink += use.l_per_month;
    if (use.ml_per_hour > 0) waste += use.l_per_month * use.waste_ml_per_hour / use.ml_per_hour;
  }
  const auto month = [&](double litres) {
    return c.plain(rounded(litres, 3, Rounding::up), "L", 3);
  };
  add_need(c, table, {"ink", c.words("services.all_channels"), month(ink)});
  add_need(c, table, {"waste", c.words("services.all_channels"), month(waste)});
}

void add_room(const Context& c, Values& table) {
  for (const char* const name : {"air_temperature", "air_humidity"}) {
    const std::string key = std::string("line.") + name;
    const calc::Input* const input = c.input(key);
    add_need(
        c, table,
        {name, c.words("services.station"),
         input == nullptr ? std::nullopt : std::optional(input_text(c, *input)), c.place_of(key)});
  }
  const bool scans = c.spec.chosen.front().scan.has_value();
  add_need(c, table,
           {scans ? "length_scan" : "length", c.words("services.station"),
            length_text(c, c.spec.station->footprint), c.step_keys({"station.footprint"})});
}

void add_services(const Context& c, Values& table, const calc::Station& station) {
  for (const calc::Stage& stage : station.stages) add_power(c, table, stage);
  add_need(c, table, {"power_heads", c.words("services.electronics"), {}});
  for (const calc::Stage& stage : station.stages) add_air(c, table, stage);
  int supplies = 0;
  for (const calc::ChannelFeed& feed : station.feeds) supplies += feed.supplies;
  add_need(c, table,
           {"pressure",
            c.counted("services.supplies", static_cast<std::size_t>(supplies),
                      {{"COUNT", std::to_string(supplies)}}),
            {}});
  add_fluids(c, table, station);
  add_room(c, table);
}

void add_signal(const Context& c, Values& table, const std::string& name,
                const std::string& figure = {}, const std::string& key = {}) {
  Values& row = table.add("SIGNAL");
  row.set("KEY", key);
  row.set_markup("WHAT", c.words("services." + name));
  row.set_markup("WAY", c.words("services.way." + name));
  row.set_markup("FIGURE", figure.empty() ? c.words("services.to_agree") : escaped(figure));
}

void add_encoder(const Context& c, Values& table, const calc::Station& station) {
  if (c.spec.chosen.front().scan) {
    add_signal(c, table, "encoder_feed");
    const std::string item = carriage_encoder(station);
    if (item.empty()) return add_signal(c, table, "encoder_axis");
    return add_signal(c, table, "encoder_carriage", item);
  }
  if (station.encoder.empty()) return add_signal(c, table, "encoder");
  double rate = 0;
  for (const calc::EncoderFit& fit : station.encoder) rate = std::max(rate, in_khz(fit.rate));
  add_signal(c, table, "encoder", with_unit(rate, "kHz", 4), c.step_keys({"g1.encoder_rate"}));
}

void add_signals(const Context& c, Values& values, const calc::Station& station) {
  constexpr double megabit = 1e-6;
  add_signal(c, values, "data", with_unit(station.data_rate_bit_per_s * megabit, "Mbit/s", 3),
             c.step_keys({"station.data"}));
  add_encoder(c, values, station);
  add_signal(c, values, "start");
  add_signal(c, values, "release");
  const auto any = [&](auto is) {
    return std::any_of(station.stages.begin(), station.stages.end(), is);
  };
  if (any([](const calc::Stage& s) { return !s.airing; })) add_signal(c, values, "stages_off");
  if (any([](const calc::Stage& s) {
        return s.airing || s.exhaust_m3_per_h || s.ozone_m3_per_h;
      })) {
    add_signal(c, values, "air_proven");
  }
}

/// Who provides what, as a proposal.
void add_shares(const Context& c, Values& values) {
  constexpr std::array supplier{"parts", "assembly"};
  constexpr std::array site{"line", "frame", "building", "images", "waste_out", "permits"};
  constexpr std::array both{"whole", "training"};
  const auto add = [&](const char* matter, const char* who) {
    Values& row = values.add("SHARE");
    row.set_markup("MATTER", c.words(std::string("services.matter.") + matter));
    row.set_markup("WHO", c.words(std::string("services.who.") + who));
  };
  for (const char* const matter : supplier) add(matter, "supplier");
  for (const char* const matter : site) add(matter, "site");
  for (const char* const matter : both) add(matter, "agree");
}

}  // namespace

std::string services_section(const Context& c) {
  if (!c.spec.station || c.spec.chosen.empty()) return {};
  Values values;
  add_services(c, values, *c.spec.station);
  add_signals(c, values, *c.spec.station);
  add_shares(c, values);
  return c.expand("services", values);
}

}  // namespace output
