#include "tests/output/support/hand_made_parts.h"

#include <utility>

namespace hand_made {

using namespace calc;  // the structs below are all its own

namespace {

BomLine line(int item, std::string designation, double quantity, std::optional<Money> price) {
  BomLine l;
  l.item = item;
  l.part_number = "P-" + std::to_string(item);
  l.designation = std::move(designation);
  l.technical_data = "600 npi, 1535 nozzles";
  l.quantity = quantity;
  l.unit = "pc";
  l.unit_price = price;
  if (price) l.extended_price = *price * static_cast<std::int64_t>(quantity);
  l.lead_time_days = 56;
  l.serves = {"image.width", "line.speed"};
  l.reference = "PH1..PH16";
  return l;
}

Consumption consumption(std::string channel, double used, double printed) {
  Consumption c;
  c.channel = std::move(channel);
  c.ml_per_hour = used;
  c.printed_ml_per_hour = printed;
  c.waste_ml_per_hour = used - printed;
  c.l_per_month = used * 0.17;
  c.l_per_year = used * 2.04;
  return c;
}

Step step(std::string id, std::string symbol, std::string formula, std::vector<StepInput> inputs,
          double value, std::string unit) {
  return {std::move(id),
          StepKind::formula,
          std::move(symbol),
          std::move(formula),
          std::move(inputs),
          value,
          std::move(unit),
          "plane geometry",
          SourceTag::computed,
          "pitches > 0",
          {}};
}

}  // namespace

Station station() {
  Station s;
  s.currency = "EUR";
  s.data_rate_bit_per_s = 1.7e9;
  s.boards = 8;
  s.consumption = {consumption("cyan", 210.5, 190), consumption("white", 903, 850)};
  s.consumption.front().ml_per_thousand = 12.5;
  Stage uv;
  uv.kind = "uv";
  uv.equipment = "L-395";
  uv.dose_mj_per_cm2 = 240;
  uv.dose_given_mj_per_cm2 = 264;
  uv.rows = 2;
  uv.units = 8;
  uv.electrical_kw = 14.2;
  s.stages = {uv};
  s.bom = {line(1, "Printhead Q-64", 32, Money{240000}), line(2, "", 16, std::nullopt)};
  s.bom.back().code = "drive_board";
  s.bom_total = Money{7680000};
  s.bom_unpriced = 1;
  s.lead_time = LeadTime{56, "Printhead Q-64", 0};
  s.cost.capital = Money{7680000};
  s.cost.running_per_year = Money{2150000};
  s.cost.ownership = Money{16264400};
  s.cost.per_m2 = 0.0183;
  s.cost.per_thousand = 4.1;
  s.cost.discount = 0.08;
  s.cost.years = 5;
  s.cost.ink_per_year = Money{1200000};
  s.cost.heads_per_year = Money{500000};
  s.cost.energy_per_year = Money{100000};
  s.cost.labour_per_year = Money{300000};
  s.cost.cleaning_per_year = Money{50000};
  s.spares = {{"P-1", 4.09, 8}};
  s.footprint = millimetres(2100);
  return s;
}

std::vector<Step> trace() {
  return {step("required.feature", "R_feature", "25.4*n/s",
               {{"n", 2, "dots", "assumed", "assume.feature_dots"},
                {"s", 0.2, "mm", "given", "image.smallest_feature"}},
               254, "dpi"),
          step("g1.column", "f_c", "v*R_m/25.4",
               {{"v", 750, "mm/s", "given", "line.speed"},
                {"R_m", 600, "dpi", "choice", ""},
                {"p", 0, "mm", "derived", "product.pitch"},
                {"R_feature", 254, "dpi", "step", "required.feature"}},
               17716.5, "Hz"),
          {"g1.head",
           StepKind::table,
           "S",
           "head.Q-64.swath",
           {{"S", 64.98, "mm", "catalogue", "head.Q-64.field_depth"}},
           64.98,
           "mm",
           "catalogue",
           SourceTag::table,
           "the head named",
           {"data sheet"}}};
}

}  // namespace hand_made
