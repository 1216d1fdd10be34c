/// Ink per hour, month, year and thousand parts; spare parts.
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"

namespace output {
namespace {

struct Sums {
  double printed = 0, waste = 0, total = 0, month = 0, year = 0;
};

void set_figures(Values& row, const Sums& sums) {
  row.set("PRINTED", number(sums.printed, 3));
  row.set("WASTE", number(sums.waste, 3));
  row.set("TOTAL", number(sums.total, 3));
  row.set("MONTH", number(sums.month, 3));
  row.set("YEAR", number(sums.year, 3));
}

Sums add_use(const Context& c, Values& values, const std::vector<calc::Consumption>& list) {
  Sums all;
  Values& table = values.add("USE");
  for (const calc::Consumption& use : list) {
    const std::string id = "station." + use.channel;
    Values& row = table.add("ROW");
    row.set("KEY", c.step_keys({id + ".printed", id + ".used", id + ".year"}));
    row.set("CHANNEL", use.channel);
    set_figures(row, {use.printed_ml_per_hour, use.waste_ml_per_hour, use.ml_per_hour,
                      use.l_per_month, use.l_per_year});
    all.printed += use.printed_ml_per_hour;
    all.waste += use.waste_ml_per_hour;
    all.total += use.ml_per_hour;
    all.month += use.l_per_month;
    all.year += use.l_per_year;
  }
  set_figures(table, all);
  return all;
}

void add_parts(Values& values, const std::vector<calc::Consumption>& list) {
  Values* table = nullptr;
  for (const calc::Consumption& use : list) {
    if (!use.ml_per_thousand) continue;
    if (table == nullptr) table = &values.add("PARTS");
    Values& row = table->add("ROW");
    row.set("CHANNEL", use.channel);
    row.set("VALUE", number(*use.ml_per_thousand, 3));
  }
}

void add_spares(const Context& c, Values& values, const std::vector<calc::Spare>& spares) {
  if (spares.empty()) return;
  Values& table = values.add("SPARES");
  for (const calc::Spare& spare : spares) {
    Values& row = table.add("ROW");
    row.set("KEY", c.step_keys({"station.spares." + spare.part_number}));
    row.set("PART", spare.part_number);
    row.set("MEAN", number(spare.mean, 3));
    row.set("QUANTITY", std::to_string(spare.quantity));
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
    add_parts(values, station.consumption);
  }
  values.set_markup(
      "SUMMARY", c.words("ink_summary",
                         {{"MONTH", with_unit(all.month, "L", 3)},
                          {"YEAR", with_unit(all.year, "L", 3)},
                          {"SHARE", all.total > 0 ? with_unit(all.waste / all.total * 100, "%", 2)
                                                  : with_unit(0, "%")}}));
  add_spares(c, values, station.spares);
  return c.expand("ink", values);
}

}  // namespace output
