#include "intake/unit.h"

#include <algorithm>
#include <array>
#include <deque>
#include <string>

#include "intake/unit_data.h"

namespace intake {
namespace {

/// What a price may be for. Its factor makes it the price of one litre, hour, kilowatt hour.
struct PriceFor {
  std::string_view dimension;
  std::string_view suffix;
  double factor;
};
constexpr std::array<PriceFor, 7> prices_for = {{
    {"price", "", 1},
    {"price per litre", "/L", 1},
    {"price per litre", "/mL", 1000},
    {"price per litre", "/m3", 1e-3},
    {"price per litre", "/gal", 1 / 3.785411784},
    {"price per hour", "/h", 1},
    {"price per kWh", "/kWh", 1},
}};

struct Table {
  std::deque<std::string> texts;  // a deque, so that the views of its strings stay good
  std::vector<Unit> rows;

  Table() : rows(physical_units().begin(), physical_units().end()) {
    for (const PriceFor& price : prices_for) {
      for (const std::string_view currency : currencies()) {
        texts.push_back(std::string(currency) + std::string(price.suffix));
        rows.push_back({texts.back(), price.dimension, price.factor, 0, {}});
      }
    }
  }
};

}  // namespace

std::span<const Unit> units() {
  static const Table table;
  return table.rows;
}

std::optional<Unit> find_unit(std::string_view dimension, std::string_view text) {
  const auto all = units();
  const auto found = std::find_if(all.begin(), all.end(), [&](const Unit& u) {
    return u.dimension == dimension && u.text == text;
  });
  return found == all.end() ? std::nullopt : std::optional(*found);
}

double to_unit(double si, const Unit& unit) { return (si - unit.offset) / unit.factor; }

double from_unit(double number, const Unit& unit) { return number * unit.factor + unit.offset; }

}  // namespace intake
