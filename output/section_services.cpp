/// What the station takes from the building and the line, and who provides what.
#include <algorithm>
#include <array>
#include <cmath>
#include <initializer_list>
#include <optional>
#include <string>
#include <vector>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_links.h"
#include "output/section_list.h"

namespace output {
namespace {

/// One row: what is needed, for which part of the station, how much, and what is installed by the
/// catalogue; all but `what` and `key` markup. Without an amount the table says that it is unknown.
struct Need {
  std::string_view what;  ///< words of `services.WHAT`, and of `services.note.WHAT` without a note
  std::string part;
  std::optional<std::string> amount;
  std::string key = {};
  std::string installed = {};
  std::string note = {};
};

void add_need(const Context& c, Values& table, const Need& need) {
  Values& row = table.add("ROW");
  const std::string name(need.what);
  row.set("KEY", need.key);
  row.set_markup("WHAT", c.words("services." + name));
  row.set_markup("PART", need.part);
  row.set_markup("AMOUNT", need.amount ? *need.amount : c.words("stage_unknown"));
  row.set_markup("INSTALLED", need.installed);
  row.set_markup("NOTE", need.note.empty() ? c.words("services.note." + name) : need.note);
}

/// Rows that nothing is known of, each for the whole station.
void add_unknown(const Context& c, Values& table, std::initializer_list<std::string_view> names) {
  for (const std::string_view name : names) {
    add_need(c, table, {name, c.words("services.station"), {}});
  }
}

/// "20 kW (10 × D-1)", what the catalogue's equipment has together.
std::string installed_text(const Context& c, const std::string& figure, int units,
                           const std::string& name) {
  Values values;
  values.set("VALUE", figure);
  values.set("COUNT", std::to_string(units));
  values.set("NAME", name);
  return c.templates.words(c.language(), "services.installed", values);
}

/// What the fans of that kind move; unknown where the catalogue does not say.
std::string fans_text(const Context& c, const calc::Station& station, std::string_view kind) {
  std::vector<std::string> texts;
  for (const calc::Fans& fans : station.fans) {
    if (fans.kind != kind) continue;
    texts.push_back(fans.m3_per_h ? installed_text(c, c.measure(*fans.m3_per_h, "m3/h", 4),
                                                   fans.units, fans.part)
                                  : c.words("stage_unknown"));
  }
  return texts.empty() ? c.words("stage_unknown") : joined(c, texts);
}

std::string fans_keys(const Context& c, const calc::Station& station, std::string_view kind) {
  std::string keys;
  for (const calc::Fans& fans : station.fans) {
    if (fans.kind != kind) continue;
    const std::string key = c.step_keys({"station.fans." + fans.part});
    keys += (keys.empty() || key.empty() ? "" : " ") + key;
  }
  return keys;
}

std::string both(const std::string& a, const std::string& b) {
  return a + (a.empty() || b.empty() ? "" : " ") + b;
}

/// An air flow of a stage, rounded up: of too little the station would not do. None, no row.
struct Flow {
  std::string_view what;
  std::optional<double> m3_per_h;
  std::string_view step;
  std::string_view fans = {};  ///< kind that moves it
  std::string note = {};
};

void add_flow(const Context& c, Values& table, const calc::Stage& stage, const Flow& flow) {
  if (!flow.m3_per_h) return;
  const calc::Station& station = *c.spec.station;
  const std::string id = "station." + stage.kind + "." + std::string(flow.step);
  Need need{flow.what, c.words("stage." + stage.kind),
            escaped(c.bound(*flow.m3_per_h, "m3/h", Rounding::up)), c.step_keys({id})};
  if (!flow.fans.empty()) {
    need.installed = fans_text(c, station, flow.fans);
    need.key = both(need.key, fans_keys(c, station, flow.fans));
  }
  need.note = flow.note;
  add_need(c, table, need);
}

/// Power, or that it is not known where the stage has equipment that takes some.
void add_power(const Context& c, Values& table, const calc::Stage& stage) {
  if (stage.airing) return;
  Need need{stage.running_kw ? "running" : "power", c.words("stage." + stage.kind), {}};
  if (stage.running_kw) {
    need.amount = c.measure(*stage.running_kw, "kW", 3);
    need.key = c.step_keys(
        {"station." + stage.kind + ".running", "station." + stage.kind + ".electrical"});
  } else if (stage.electrical_kw) {
    need.amount = stage_power_text(c, stage);
    need.key = c.step_keys(
        {"station." + stage.kind + ".electrical", "station." + stage.kind + ".installed_power"});
  }
  const bool lamps = stage.kind != "drying";
  const std::optional<double> installed = lamps ? stage.electrical_kw : stage.installed_kw;
  need.installed = installed && stage.units ? installed_text(c, c.measure(*installed, "kW", 3),
                                                             *stage.units, stage.equipment)
                                            : c.words("stage_unknown");
  add_need(c, table, need);
}

/// How hot the air of a dryer leaves, by how many ducts, and what it is for.
std::string exhaust_note(const Context& c, const calc::Stage& stage) {
  const std::size_t units = static_cast<std::size_t>(std::max(1, stage.units.value_or(1)));
  std::string note = stage.air_degc
                         ? c.counted("services.exhaust_hot", units,
                                     {{"TEMPERATURE", c.measure(*stage.air_degc, "degC", 3)},
                                      {"COUNT", std::to_string(units)}}) +
                               " "
                         : std::string();
  if (cosolvents_unknown(c)) note += c.words("services.exhaust_water") + " ";
  return note + c.words("services.note.exhaust");
}

void add_vapour(const Context& c, Values& table, const calc::Stage& stage) {
  const calc::Airing& airing = *stage.airing;
  if (airing.captures && airing.lel_hot) {
    add_flow(c, table, stage, {"vapour", airing.lel_hot_m3_per_h, "air_lel_hot", "exhaust"});
  } else if (airing.captures) {
    add_flow(c, table, stage, {"vapour", airing.lel_m3_per_h, "air_lel", "exhaust"});
  }
  if (airing.captures && !airing.lel_m3_per_h) {
    add_need(c, table, {"vapour", c.words("stage." + stage.kind), {}});
  }
  add_flow(c, table, stage,
           {"fresh_air", airing.health_most_m3_per_h, "air_health_most", "ventilation"});
  if (!airing.health_most_m3_per_h) {
    add_need(c, table, {"fresh_air", c.words("stage." + stage.kind), {}});
  }
}

/// Air that must come in for what the exhausts carry off, beside what brings it.
void add_supply_air(const Context& c, Values& table, const calc::Station& station) {
  double out = 0;
  bool any = false;
  std::string key = "station.exhaust";
  for (const calc::Stage& stage : station.stages) {
    any |= stage.exhaust_m3_per_h || stage.ozone_m3_per_h || stage.airing;
    const std::string id = "station." + stage.kind + ".";
    if (!c.has_step(key) && stage.exhaust_m3_per_h) key = id + "exhaust";
    if (!c.has_step(key) && stage.airing) {
      key = id + (stage.airing->lel_hot ? "air_lel_hot" : "air_lel");
    }
    out += stage.exhaust_m3_per_h.value_or(0);
    if (stage.airing) {
      out += (stage.airing->lel_hot ? stage.airing->lel_hot_m3_per_h : stage.airing->lel_m3_per_h)
                 .value_or(0);
    }
  }
  if (!any) return;
  Need need{"supply_air", c.words("services.hall"), {}};
  if (out > 0) {
    need.amount = c.words("services.below", {{"VALUE", c.bound(out, "m3/h", Rounding::up)}});
    need.key = c.step_keys({key});
  }
  // Fresh air of the room has a row of its own, with the same fans.
  const bool fresh = std::any_of(station.stages.begin(), station.stages.end(),
                                 [](const calc::Stage& s) { return s.airing.has_value(); });
  if (!fresh) need.installed = fans_text(c, station, "ventilation");
  add_need(c, table, need);
}

void add_air(const Context& c, Values& table, const calc::Station& station) {
  bool cooled = false;
  for (const calc::Stage& stage : station.stages) {
    cooled |= stage.cooling_m3_per_h || stage.kind == "uv" || stage.kind == "pinning";
    add_flow(c, table, stage, {"cooling", stage.cooling_m3_per_h, "cooling"});
    add_flow(c, table, stage,
             {"exhaust", stage.exhaust_m3_per_h, "exhaust", "exhaust", exhaust_note(c, stage)});
    add_flow(c, table, stage, {"ozone", stage.ozone_m3_per_h, "ozone", "exhaust"});
    if (stage.airing) add_vapour(c, table, stage);
  }
  if (!cooled) {
    add_need(c, table, {"no_cooling", c.words("services.station"), c.words("services.none")});
  }
  add_supply_air(c, table, station);
  add_need(c, table, {"mist", c.words("services.heads"), {}});
}

/// Ink that comes and waste that goes in a month, all channels together.
void add_fluids(const Context& c, const Links& links, Values& table, const calc::Station& station) {
  double ink = 0, waste = 0;
  for (const calc::Consumption& use : station.consumption) {
    ink += use.l_per_month;
    if (use.ml_per_hour > 0) waste += use.l_per_month * use.waste_ml_per_hour / use.ml_per_hour;
  }
  const auto month = [&](double litres) { return escaped(c.measure(litres, "L", 3)); };
  add_need(c, table,
           {"ink", c.words("services.all_channels"), month(ink), c.step_keys({"station.month"})});
  add_need(c, table,
           {"waste", c.words("services.all_channels"), month(waste),
            c.step_keys({"station.waste_month"})});
  for (const calc::BomLine& line : station.bom) {
    if (line.kind != "flush" || line.part_number.empty()) continue;
    add_need(
        c, table,
        {"flush", links.catalogue(line.source, escaped(line.part_number)),
         escaped(number(line.quantity, 4)) + "\u00A0" + c.words_or("unit." + line.unit, line.unit),
         c.step_keys({"station.count." + line.source.substr(line.source.find('.') + 1)})});
  }
}

/// What the room must keep; of an assumption its range, to be confirmed.
std::optional<std::string> room_text(const Context& c, const std::string& key) {
  for (const calc::Assumption& a : c.spec.assumptions) {
    if (a.field != key) continue;
    const std::string range = plain_range(c, a.low, a.high, a.unit);
    if (range.empty()) break;
    return c.linked(key, c.words("services.assumed", {{"RANGE", range}}));
  }
  const calc::Input* const input = c.input(key);
  if (input == nullptr) return std::nullopt;
  return escaped(input_text(c, *input));
}

void add_room(const Context& c, Values& table) {
  for (const char* const name : {"air_temperature", "air_humidity"}) {
    const std::string key = std::string("line.") + name;
    Need need{name, c.words("services.station"), room_text(c, key), c.place_of(key)};
    if (!need.amount) need.note = c.words("services.unstated");
    add_need(c, table, need);
  }
  const std::optional<double>& heat = c.spec.station->heat_kw;
  if (!heat) return;
  add_need(c, table,
           {"heat", c.words("services.hall"),
            c.words("services.at_least", {{"VALUE", c.measure(*heat, "kW", 3)}}),
            c.step_keys({"station.heat"})});
}

/// The length up to the next centimetre, and what it is made of.
void add_length(const Context& c, Values& table, const calc::Station& station) {
  calc::Length heads;
  for (const calc::Group& group : c.spec.chosen) heads += group.footprint;
  const calc::Length stages = station.footprint - heads - station.service_access;
  const auto text = [&](calc::Length length) { return length_text(c, length, 4); };
  const bool scans = c.spec.chosen.front().scan.has_value();
  Need need{scans ? "length_scan" : "length", c.words("services.station"),
            escaped(text(station.footprint)), c.step_keys({"station.footprint"})};
  if (scans) return add_need(c, table, need);
  need.note = c.words(in_mm(stages) < 1 ? "services.length_heads" : "services.length_stages",
                      {{"HEADS", text(heads)},
                       {"STAGES", text(stages)},
                       {"SERVICE", text(station.service_access)},
                       {"SUM", text(station.footprint)}});
  add_need(c, table, need);
}

/// At least what the carriage travels over; of a line nothing is known.
void add_width(const Context& c, Values& table) {
  const auto& scan = c.spec.chosen.front().scan;
  if (!scan) return add_unknown(c, table, {"width"});
  const std::string width = c.bound(in_mm(scan->machine_width), "mm", Rounding::up, 4);
  add_need(c, table,
           {"width",
            c.words("services.station"),
            c.words("services.width_scan", {{"WIDTH", width}}),
            c.step_keys({"g1.machine_width"}),
            {},
            c.words("services.note.width_scan")});
}

/// What the frame must hold still for the placement worked out here.
void add_stiffness(const Context& c, Values& table) {
  const calc::Input* const mount = c.input("line.mount_tolerance");
  const calc::Input* const drift = c.input("assume.thermal_drift");
  Need need{"stiffness", c.words("services.frame"), {}};
  if (mount != nullptr && drift != nullptr) {
    const auto held = [&](const calc::Input& input) {
      return c.linked(input.key, escaped(c.measure(input.value, input.unit, 3)));
    };
    Values values;
    values.set_markup("MOUNT", held(*mount));
    values.set_markup("DRIFT", held(*drift));
    need.amount = c.templates.words(c.language(), "services.held", values);
  }
  add_need(c, table, need);
}

void add_services(const Context& c, Values& table, const calc::Station& station) {
  for (const calc::Stage& stage : station.stages) add_power(c, table, stage);
  add_need(c, table, {"power_heads", c.words("services.electronics"), {}});
  add_air(c, table, station);
  int supplies = 0;
  for (const calc::ChannelFeed& feed : station.feeds) supplies += feed.supplies;
  add_need(c, table,
           {"pressure",
            c.counted("services.supplies", static_cast<std::size_t>(supplies),
                      {{"COUNT", std::to_string(supplies)}}),
            {},
            c.step_keys({"station.supplies"})});
  const Links links(c);
  add_fluids(c, links, table, station);
  add_room(c, table);
  add_length(c, table, station);
  add_width(c, table);
  add_unknown(c, table, {"weight", "floor", "cabinets"});
  add_stiffness(c, table);
}

void add_signal(const Context& c, Values& table, const std::string& name,
                const std::string& figure = {}, const std::string& key = {}) {
  Values& row = table.add("SIGNAL");
  row.set("KEY", key);
  row.set_markup("WHAT", c.words("services." + name));
  row.set_markup("WAY", c.words(c.of_motion("services.way." + name)));
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
  add_signal(c, values, "network");
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
  const auto& bom = c.spec.station->bom;
  const bool trains = std::any_of(bom.begin(), bom.end(), [](const calc::BomLine& line) {
    return line.kind == "training" && !line.source.empty();
  });
  const auto add = [&](const char* matter, const char* who) {
    Values& row = values.add("SHARE");
    row.set_markup("MATTER", c.words(std::string("services.matter.") + matter));
    row.set_markup("WHO", c.words(std::string("services.who.") + who));
  };
  for (const char* const matter : supplier) add(matter, "supplier");
  for (const char* const matter : site) add(matter, "site");
  add("whole", "agree");
  add(trains ? "training_listed" : "training", trains ? "supplier" : "agree");
}

}  // namespace

std::string services_section(const Context& c) {
  if (!c.spec.station || c.spec.chosen.empty()) return {};
  Values values;
  values.set_markup("SPEED", c.words(c.of_motion("services.speed")));
  add_services(c, values, *c.spec.station);
  add_signals(c, values, *c.spec.station);
  add_shares(c, values);
  return c.expand("services", values);
}

}  // namespace output
