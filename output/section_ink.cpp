/// Ink per hour, month, year and thousand parts; spare parts.
#include <algorithm>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"

namespace output {
namespace {

struct Sums {
  double printed = 0, waste = 0, total = 0, month = 0, year = 0;
};

/// With the steps of `id`, of all channels together or of `else_of`, the one there is.
void set_figures(const Context& c, Values& row, const Sums& sums, const std::string& id,
                 const std::string& else_of) {
  const auto set = [&](const char* name, const std::string& step, double value, const char* unit) {
    row.set_markup(name, c.figure({id + step, else_of + step}, c.in_column(value, unit, 3)));
  };
  set("PRINTED", ".printed", sums.printed, "mL/h");
  set("WASTE", ".waste", sums.waste, "mL/h");
  set("TOTAL", ".used", sums.total, "mL/h");
  set("MONTH", ".month", sums.month, "L");
  set("YEAR", ".year", sums.year, "L");
}

using Alike = std::vector<const calc::Consumption*>;

Sums sums(const calc::Consumption& use) {
  return {use.printed_ml_per_hour, use.waste_ml_per_hour, use.ml_per_hour, use.l_per_month,
          use.l_per_year};
}

bool same(const calc::Consumption& a, const calc::Consumption& b) {
  return a.printed_ml_per_hour == b.printed_ml_per_hour &&
         a.waste_ml_per_hour == b.waste_ml_per_hour && a.l_per_year == b.l_per_year &&
         a.ml_per_thousand == b.ml_per_thousand;
}

/// Channels with the same figures stand in one row.
std::vector<Alike> alike(const std::vector<calc::Consumption>& list) {
  std::vector<Alike> rows;
  for (const calc::Consumption& use : list) {
    const auto found = std::find_if(rows.begin(), rows.end(),
                                    [&](const Alike& row) { return same(*row.front(), use); });
    if (found != rows.end()) {
      found->push_back(&use);
    } else {
      rows.push_back({&use});
    }
  }
  return rows;
}

std::string channels(const Context& c, const Alike& row) {
  std::vector<std::string> names;
  for (const calc::Consumption* use : row) names.push_back(use->channel);
  return channels_text(c, names);
}

Sums add_use(const Context& c, Values& values, const std::vector<calc::Consumption>& list) {
  Sums all;
  Values& table = values.add("USE");
  for (const Alike& uses : alike(list)) {
    const std::string id = "station." + uses.front()->channel;
    Values& row = table.add("ROW");
    row.set("KEY", c.row_keys({id + ".year", id + ".printed"}));
    row.set_markup("CHANNEL", channels(c, uses));
    set_figures(c, row, sums(*uses.front()), id, id);
  }
  for (const calc::Consumption& use : list) {
    const Sums one = sums(use);
    all.printed += one.printed;
    all.waste += one.waste;
    all.total += one.total;
    all.month += one.month;
    all.year += one.year;
  }
  table.set("KEY", c.row_keys({"station.year", "station.used", "station.month"}));
  set_figures(c, table, all, "station", "station." + list.front().channel);
  return all;
}

void add_parts(const Context& c, Values& values, const std::vector<calc::Consumption>& list) {
  Values* table = nullptr;
  for (const Alike& uses : alike(list)) {
    if (!uses.front()->ml_per_thousand) continue;
    if (table == nullptr) table = &values.add("PARTS");
    Values& row = table->add("ROW");
    row.set("KEY", c.step_keys({"station." + uses.front()->channel + ".thousand"}));
    row.set_markup("CHANNEL", channels(c, uses));
    row.set("VALUE", c.in_column(*uses.front()->ml_per_thousand, "mL", 3));
  }
}

void add_spares(const Context& c, Values& values, const std::vector<calc::Spare>& spares) {
  if (spares.empty()) return;
  Values& table = values.add("SPARES");
  table.set_markup("TEXT", c.counted("spares.rule", spares.size()));
  for (const calc::Spare& spare : spares) {
    Values& row = table.add("ROW");
    row.set("KEY", c.step_keys({"station.spares." + spare.part_number}));
    row.set("PART", spare.part_number);
    const std::string id = "station.spares." + spare.part_number;
    row.set_markup("MEAN", c.figure({id}, number(spare.mean, 3)));
    row.set_markup("QUANTITY",
                   c.figure({id + ".count", id + ".needed"}, std::to_string(spare.quantity)));
  }
}

}  // namespace

std::string ink_section(const Context& c) {
  if (!c.spec.station) return {};
  const calc::Station& station = *c.spec.station;
  if (station.consumption.empty() && station.spares.empty()) return {};
  Values values;
  Sums all;
  if (!station.consumption.empty()) {
    all = add_use(c, values, station.consumption);
    add_parts(c, values, station.consumption);
  }
  values.set("KEY", c.step_keys({"station.month", "station.year", "station.waste_share"}));
  values.set_markup(
      "SUMMARY", c.words("ink_summary",
                         {{"MONTH", c.measure(all.month, "L", 3)},
                          {"YEAR", c.measure(all.year, "L", 3)},
                          {"SHARE", all.total > 0 ? with_unit(all.waste / all.total * 100, "%", 2)
                                                  : with_unit(0, "%")}}));
  add_spares(c, values, station.spares);
  return c.expand("ink", values);
}

}  // namespace output
