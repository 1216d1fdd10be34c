#include "calc/uncertainty.h"

#include <algorithm>
#include <utility>

namespace calc {
namespace {

/// A way shorter than this share of a figure is rounding.
constexpr double rounding = 1e-12;

void move(Uncertainty& entry, const InputRange& input) {
  entry.mover = input.field;
  entry.mover_unit = input.unit;
  entry.mover_low = input.low;
  entry.mover_high = input.high;
}

/// The figure at a value of an input, where it goes beyond those before.
void widen(Uncertainty& entry, const InputRange& input, double at,
           const std::optional<double>& figure) {
  if (!figure) return;
  const Uncertainty::End by{input.field, input.unit, at};
  if (*figure < entry.low) {
    entry.low = *figure;
    entry.low_by = by;
  }
  if (*figure > entry.high) {
    entry.high = *figure;
    entry.high_by = by;
  }
}

}  // namespace

Spreads::Spreads(const Headlines& nominal, std::string currency)
    : nominal_(nominal), currency_(std::move(currency)), list_(headlines_count) {
  for (std::size_t i = 0; i < headlines_count; ++i) {
    const auto figure = static_cast<Headline>(i);
    const double value = nominal_.at(i).value_or(0);
    list_[i].figure = headline_key(figure);
    list_[i].unit = headline_unit(figure, currency_);
    list_[i].value = list_[i].low = list_[i].high = value;
  }
}

void Spreads::add(const InputRange& input, const std::vector<End>& ends) {
  for (std::size_t i = 0; i < headlines_count; ++i) {
    Uncertainty& entry = list_[i];
    double low = entry.value, high = entry.value;
    for (const End& end : ends) {
      low = std::min(low, end.figures.at(i).value_or(low));
      high = std::max(high, end.figures.at(i).value_or(high));
    }
    const double way = high - low;
    if (!nominal_.at(i) || !(way > rounding * high)) continue;
    for (const End& end : ends) widen(entry, input, end.at, end.figures.at(i));
    if (!(way > furthest_.at(i))) continue;
    furthest_.at(i) = way;
    move(entry, input);
  }
}

std::vector<Uncertainty> Spreads::take() {
  std::vector<Uncertainty> result;
  for (std::size_t i = 0; i < headlines_count; ++i) {
    if (nominal_.at(i)) result.push_back(std::move(list_[i]));
  }
  return result;
}

}  // namespace calc
