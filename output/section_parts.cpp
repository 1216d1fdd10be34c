/// The bill of materials with totals, and what the station costs to buy and to run.
#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

#include "calc/cost.h"
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_links.h"
#include "output/section_list.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double million = 1e6;

std::string designation(const Context& c, const calc::BomLine& line) {
  if (!line.designation.empty()) return escaped(line.designation);
  return line.code.empty() ? escaped(line.part_number) : c.words("part." + line.code);
}

std::string price(const Context& c, const std::optional<calc::Money>& money_or_none) {
  return money_or_none ? money(*money_or_none) : c.words("on_request");
}

/// The part of the bill a line stands in: the station, its spares, or services.
std::string part_of_bill(const calc::BomLine& line) {
  if (line.kind == "spare_head") return "bill.spares";
  return line.kind == "commissioning" || line.kind == "training" ? "bill.services" : std::string();
}

/// A piece of technical data whose first words, as many as have a text, are put into it.
std::string data_piece(const Context& c, const std::string& piece) {
  for (std::size_t end = piece.size(); end != std::string::npos && end > 0;
       end = piece.rfind(' ', end - 1)) {
    std::string key = "data." + piece.substr(0, end);
    std::replace(key.begin(), key.end(), ' ', '_');
    if (c.has_words(key)) return c.words(key) + escaped(piece.substr(end));
  }
  return escaped(piece);
}

/// What a line serves, as far as the request asks for it.
std::vector<std::string> served(const Context& c, const calc::BomLine& line) {
  std::vector<std::string> keys;
  for (const std::string& key : line.serves) {
    if (!key.starts_with("limits.") || c.input(key) != nullptr) keys.push_back(key);
  }
  return keys;
}

/// The requirements a line serves; of what no single one asks for, all of them.
std::string serves_text(const Context& c, const Links& links, const calc::BomLine& line) {
  const std::vector<std::string> keys = served(c, line);
  return keys.empty() ? link_to("s-requirement", c.words("bill.serves_all"))
                      : links.requirements(keys);
}

/// "row pitch 150 npi; nozzles 640" in words: its pieces begin with a field of the catalogue.
std::string technical_data(const Context& c, const calc::BomLine& line) {
  const std::string text = figures_text(c, line.technical_data);
  if (line.source.empty()) return escaped(text);
  std::string worded;
  for (std::size_t from = 0; from < text.size();) {
    const std::size_t to = std::min(text.find("; ", from), text.size());
    worded += (from > 0 ? "; " : "") + data_piece(c, text.substr(from, to - from));
    from = to + 2;
  }
  return worded;
}

/// "PH1–PH16": the range of designations as it is printed.
std::string reference_text(const std::string& reference) {
  const std::size_t dots = reference.find("..");
  return dots == std::string::npos
             ? reference
             : reference.substr(0, dots) + "\u2013" + reference.substr(dots + 2);
}

/// The quantity, linked to the step that counts it.
std::string quantity(const Context& c, const calc::BomLine& line) {
  const std::string text = number(line.quantity, 4);
  const std::string name = line.source.substr(line.source.find('.') + 1);
  if (line.kind == "spare_head") {
    const std::string id = "station.spares." + line.part_number;
    return c.figure({id + ".count", id + ".needed"}, text);
  }
  if (line.kind == "alignment_hours") return c.figure({"station.alignment"}, text);
  if (line.kind == "first_fill") {  // its data begin with the channel
    const std::string channel = line.technical_data.substr(0, line.technical_data.find(';'));
    return c.figure({"station." + channel + ".first_fill"}, text);
  }
  if (line.kind == "drive_board") return c.figure({"station.boards." + name}, text);
  const std::string counted = "station.count." + name;
  // One a station, as its row of the catalogue says, is not counted.
  return c.has_step(counted) ? c.figure({counted}, text)
                             : c.figure_given(line.source + ".name", text);
}

/// The key of the price of the ink that a first fill is of; its data name the channel first.
std::string fill_price_key(const Context& c, const calc::BomLine& line) {
  const std::string channel = line.technical_data.substr(0, line.technical_data.find(';'));
  for (const calc::InkInHead& ink : c.spec.inks) {
    if (ink.channel == channel) return "ink." + ink.ink + ".price";
  }
  return {};
}

/// The price of one: that of a row of the catalogue stands there, that of ink and labour in the
/// request.
std::string unit_price(const Context& c, const calc::BomLine& line) {
  if (!line.unit_price) return price(c, line.unit_price);
  const std::string text = money(*line.unit_price);
  if (line.kind == "alignment_hours") return c.figure_given("costs.labour", text);
  const bool fill = line.kind == "first_fill";
  return c.figure_given(fill ? fill_price_key(c, line) : line.source + ".price", text);
}

/// The price of a line, linked to the sum it goes into.
std::string extended_price(const Context& c, const calc::BomLine& line) {
  return c.quiet({"station.capital"}, price(c, line.extended_price));
}

void add_line(const Context& c, const Links& links, Values& values, const calc::BomLine& line,
              const std::string& heading) {
  Values& row = values.add("ROW");
  row.set("ANCHOR", "s-item-" + std::to_string(line.item));
  row.set("ITEM", std::to_string(line.item));
  row.set_markup("DESIGNATION", designation(c, line));
  row.set_markup("PART", links.catalogue(line.source, escaped(line.part_number)));
  row.set_markup("QUANTITY", quantity(c, line));
  row.set_markup("UNIT", c.words_or("unit." + line.unit, pretty_unit(line.unit)));
  row.set_markup("PRICE", unit_price(c, line));
  row.set_markup("EXTENDED", extended_price(c, line));
  row.set("LEAD", line.lead_time_days ? number(*line.lead_time_days, 3) : "");
  if (!line.technical_data.empty()) row.add("DATA").set_markup("TEXT", technical_data(c, line));
  if (!heading.empty()) row.add("PART_OF_BILL").set_markup("TEXT", c.words(heading));
  row.set("REFERENCE", reference_text(line.reference));
  row.set_markup("SERVES", serves_text(c, links, line));
}

void add_lines(const Context& c, const Links& links, Values& values,
               const std::vector<calc::BomLine>& bom) {
  std::string last;
  for (const calc::BomLine& line : bom) {
    const std::string part = part_of_bill(line);
    add_line(c, links, values, line, part == last ? std::string() : part);
    last = part;
  }
}

void add_cost_row(const Context& c, Values& table, const std::string& name,
                  const std::string& value, const std::string& keys = {}) {
  Values& row = table.add("ROW");
  row.set("KEY", keys);
  row.set_markup("NAME", c.words("cost." + name));
  row.set("VALUE", value);
}

/// A cost, unless it is nothing.
void add_money(const Context& c, Values& table, const std::string& name, calc::Money money) {
  if (money.minor == 0) return;
  add_cost_row(c, table, name, whole_money(money), c.step_keys({"station." + name}));
}

void add_unit_costs(const Context& c, Values& table, const calc::Station& station) {
  if (station.cost.per_m2) {
    add_cost_row(c, table, "per_m2", number(*station.cost.per_m2, 3),
                 c.step_keys({"station.per_m2"}));
  }
  if (station.cost.per_thousand) {
    add_cost_row(c, table, "per_thousand", number(*station.cost.per_thousand, 3),
                 c.step_keys({"station.per_thousand"}));
  }
}

/// What a thousand parts and a square metre are reckoned on.
void add_basis(const Context& c, Values& table, const calc::Cost& cost) {
  const auto add = [&](const char* key, const std::optional<double>& value, std::string_view unit,
                       const char* step) {
    if (!value) return;
    Values& text = table.add("BASIS");
    text.set("KEY", c.step_keys({step}));
    const std::string figure = *value < million ? with_unit(*value, unit, 3)
                                                : c.words(std::string(key) + ".millions",
                                                          {{"VALUE", number(*value / million, 3)}});
    text.set_markup("TEXT", c.words(key, {{"VALUE", figure}}));
  };
  add("cost_basis.parts", cost.parts_per_year, "", "station.parts_year");
  add("cost_basis.area", cost.images_m2_per_year, "m2", "station.images_year");
}

/// What the capital stands without, and what the yearly sums.
void add_lower_bound(const Context& c, Values& table, const calc::Station& station) {
  const std::vector<std::string> items = unpriced_items(c, station);
  if (!items.empty()) table.add("UNPRICED").set_markup("ITEMS", joined(c, items));
  const calc::Cost& cost = station.cost;
  std::vector<std::string> without;
  if (cost.ink_unpriced) without.push_back(c.words("without.ink"));
  if (cost.heads_unpriced) without.push_back(c.words("without.heads"));
  if (cost.power_unknown) without.push_back(c.words("without.power"));
  if (cost.flush_unpriced) without.push_back(c.words("without.flush"));
  if (!without.empty()) table.add("WITHOUT").set_markup("ITEMS", joined(c, without));
}

/// What the cost of ownership becomes when one of its great terms alone moves.
void add_swings(const Context& c, const Links& links, Values& table, const calc::Cost& cost) {
  if (cost.terms.size() < 2) return;
  Values& swings = table.add("SWINGS");
  swings.set_markup(
      "CAPTION", c.words("swings_caption", {{"SHARE", with_unit(calc::cost_swing * 100, "%", 2)}}));
  constexpr int digits = 4;  // the estimate tells no more
  const auto rough = [](calc::Money money) { return number(money.major(), digits); };
  for (const calc::CostTerm& term : cost.terms) {
    Values& row = swings.add("ROW");
    const bool capital = term.name == "capital";
    row.set("KEY", c.step_keys({(capital ? "station." : "station.value.") + term.name}));
    row.set_markup("NAME", c.words("share." + term.name));
    row.set("VALUE", rough(term.value));
    const std::string swing = "station.swing." + term.name;
    row.set_markup("LOW", links.step({swing}, rough(cost.ownership - term.swing)));
    row.set_markup("HIGH", links.step({swing}, rough(cost.ownership + term.swing)));
  }
}

void add_cost(const Context& c, const Links& links, Values& values, const calc::Station& station) {
  const calc::Cost& cost = station.cost;
  Values& table = values.add("COST");
  table.set("KEY", c.step_keys({"station.annuity", "station.ownership"}));
  table.set_markup(
      "SUMMARY", c.words("cost_summary",
                         {{"YEARS", std::to_string(cost.years)},
                          {"DISCOUNT", with_unit(cost.discount * 100, "%", 3)},
                          {"OWNERSHIP", rough_amount(station.currency, cost.ownership.major())}}));
  table.set_markup("CAPTION", c.words("cost_caption"));
  table.set("CURRENCY", station.currency);
  add_money(c, table, "capital", cost.capital);
  add_money(c, table, "ink_per_year", cost.ink_per_year);
  if (heads_unpriced(station) && cost.heads_per_year.minor == 0) {
    add_cost_row(c, table, "heads_per_year", c.words("on_request"));
  }
  add_money(c, table, "heads_per_year", cost.heads_per_year);
  add_money(c, table, "energy_per_year", cost.energy_per_year);
  add_money(c, table, "labour_per_year", cost.labour_per_year);
  add_money(c, table, "cleaning_per_year", cost.cleaning_per_year);
  add_cost_row(c, table, "running_per_year", whole_money(cost.running_per_year),
               c.step_keys({"station.running"}));
  add_money(c, table, "ownership", cost.ownership);
  add_unit_costs(c, table, station);
  table.set_markup("SHARES", plot_costs(c));
  table.set_markup("STEPS", plot_steps(c));
  add_swings(c, links, table, cost);
  add_basis(c, table, cost);
  add_lower_bound(c, table, station);
}

void add_lead_time(const Context& c, const Links& links, Values& values,
                   const calc::Station& station) {
  if (!station.lead_time) return values.set_markup("LEAD", "");
  const calc::LeadTime& lead = *station.lead_time;
  const std::string row = slowest_row(station);
  values.set_markup("LEAD", links.catalogue(row, number(lead.days, 3)));
  Values sentence;
  sentence.set("DAYS", with_unit(lead.days, "d", 3));
  sentence.set_markup("ITEM", links.catalogue(row, escaped(lead.item)));
  values.add("LEAD_TIME")
      .set_markup("TEXT", c.templates.words(c.language(), "lead_time_sentence", sentence));
  const auto unknown = static_cast<std::size_t>(std::max(lead.lead_time_unknown, 0));
  if (unknown == 0) return;
  values.add("LEAD_TIME")
      .set_markup("TEXT",
                  c.counted("lead_time_unknown", unknown, {{"COUNT", std::to_string(unknown)}}));
}

}  // namespace

std::vector<std::string> unpriced_items(const Context& c, const calc::Station& station) {
  return unpriced_items(c, std::vector<const calc::Station*>{&station});
}

std::vector<std::string> unpriced_items(const Context& c,
                                        const std::vector<const calc::Station*>& stations) {
  const Links links(c);
  std::vector<std::string> items;
  std::set<std::string, std::less<>> parts, names;  // a part and its spare are one
  for (const calc::Station* const station : stations) {
    for (const calc::BomLine& line : station->bom) {
      if (line.extended_price) continue;
      if (!line.part_number.empty() && !parts.insert(line.part_number).second) continue;
      const std::string name = designation(c, line);
      if (names.insert(name).second) items.push_back(links.catalogue(line.source, name));
    }
  }
  return items;
}

std::string not_contained(const Context& c) {
  const std::vector<calc::Stage>& stages = c.spec.station->stages;
  const bool cooled = std::any_of(stages.begin(), stages.end(), [](const calc::Stage& stage) {
    return stage.cooling_m3_per_h.has_value();
  });
  return c.words(cooled ? "not_contained.cooled" : "not_contained");
}

std::string slowest_row(const calc::Station& station) {
  const auto found =
      std::find_if(station.bom.begin(), station.bom.end(), [&](const calc::BomLine& line) {
        return station.lead_time && line.lead_time_days &&
               !(*line.lead_time_days < station.lead_time->days);
      });
  return found == station.bom.end() ? std::string() : found->source;
}

bool heads_unpriced(const calc::Station& station) {
  if (station.heads_unpriced) return true;
  return std::any_of(station.bom.begin(), station.bom.end(), [](const calc::BomLine& line) {
    return line.code == "printhead" && !line.extended_price;
  });
}

std::string parts_section(const Context& c) {
  if (!c.spec.station || c.spec.station->bom.empty()) return {};
  const calc::Station& station = *c.spec.station;
  const Links links(c);
  Values values;
  values.set_markup("CAPTION", c.words("parts_caption", {{"CURRENCY", station.currency}}));
  add_lines(c, links, values, station.bom);
  const auto unpriced = static_cast<std::size_t>(std::max(station.bom_unpriced, 0));
  values.set_markup("TOTAL_LABEL", c.counted(unpriced == 0 ? "total" : "total_without", unpriced,
                                             {{"COUNT", std::to_string(unpriced)}}));
  values.set_markup("TOTAL", links.step({"station.capital"}, money(station.bom_total)));
  values.set_markup("NOT_CONTAINED", not_contained(c));
  add_lead_time(c, links, values, station);
  add_cost(c, links, values, station);
  return c.expand("parts", values);
}

}  // namespace output
