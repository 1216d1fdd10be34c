/// How far the headline figures move with what is assumed or given as uncertain.
#include <algorithm>
#include <initializer_list>
#include <string_view>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_links.h"
#include "output/section_list.h"

namespace output {
namespace {

constexpr int least_digits = 3, most_digits = 6;

/// Capital, running cost and ownership follow each other, and stand on one page.
bool money_follows(const std::string& figure) {
  return figure == "capital" || figure == "running_per_year";
}

std::string figure_text(const Context& c, const std::string& unit, double value, int digits) {
  constexpr double minute = 60;
  if (unit.empty()) return count_text(value);
  if (unit == "1") return percent_down(value, digits - 2) + "\xC2\xA0%";
  if (unit == "m/min") return speed_limit_text(c, calc::Speed::from_si(value / minute), digits);
  if (unit == c.spec.station->currency) return rough_amount(unit, value, digits);
  // As they stand among the services: air rounded up, lengths in full millimetres.
  if (unit == "m3/h") return c.bound(value, unit, Rounding::up, digits);
  return c.measure(value, unit, unit == "mm" ? std::max(digits, 4) : digits);
}

/// Digits at which the ends of a range differ on paper too; the least where none tell them.
int telling_digits(const Context& c, const calc::Uncertainty& entry) {
  if (entry.mover.empty()) return least_digits;
  for (int digits = least_digits; digits <= most_digits; ++digits) {
    const std::string low = figure_text(c, entry.unit, entry.low, digits);
    if (low != figure_text(c, entry.unit, entry.high, digits)) return digits;
  }
  return least_digits;
}

/// An end of the range as a link to its step; that of the figure itself where it stays on that
/// side.
std::string end_text(const Context& c, const calc::Uncertainty& entry, const std::string& side,
                     double value, int digits) {
  return c.figure({"range." + side + "." + entry.figure, headline_step(c, entry.figure)},
                  figure_text(c, entry.unit, value, digits));
}

/// "; lowest with labour at 20 EUR/h", where another input than the one that moves the figure most
/// brings it to an end.
std::string other_mover(const Context& c, const calc::Uncertainty& entry, const std::string& side,
                        const std::optional<calc::Uncertainty::End>& by) {
  if (!by || by->field == entry.mover) return {};
  return c.worded("moved." + side, {{"FIELD", c.linked(by->field, c.field(by->field))},
                                    {"VALUE", escaped(plain_value(c, by->at, by->at, by->unit))}});
}

std::string mover_text(const Context& c, const calc::Uncertainty& entry) {
  if (entry.mover.empty()) return c.words("unmoved");
  const std::string range = plain_range(c, entry.mover_low, entry.mover_high, entry.mover_unit);
  return c.linked(entry.mover, c.field(entry.mover)) +
         (range.empty() ? "" : ": " + escaped(range)) + other_mover(c, entry, "low", entry.low_by) +
         other_mover(c, entry, "high", entry.high_by);
}

}  // namespace

std::string uncertainty_section(const Context& c) {
  if (c.spec.uncertainty.empty() || !c.spec.station) return {};
  Values values;
  for (const calc::Uncertainty& entry : c.spec.uncertainty) {
    Values& row = values.add("ROW");
    row.set("KEY", c.step_keys({headline_step(c, entry.figure)}));
    if (money_follows(entry.figure)) row.add("KEEP");
    row.set_markup("FIGURE", c.words("figure." + entry.figure));
    const int digits = telling_digits(c, entry);
    row.set("VALUE", figure_text(c, entry.unit, entry.value, digits));
    row.set_markup("LOW", end_text(c, entry, "low", entry.low, digits));
    row.set_markup("HIGH", end_text(c, entry, "high", entry.high, digits));
    row.set_markup("MOVER", mover_text(c, entry));
  }
  return c.expand("uncertainty", values);
}

}  // namespace output
