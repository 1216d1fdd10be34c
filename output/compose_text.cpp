#include "output/compose_text.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "output/format.h"

namespace output {
namespace {

constexpr std::string_view times = "\xC2\xA0\xC3\x97\xC2\xA0";       // U+00A0 U+00D7 U+00A0
constexpr std::string_view plus_minus = "\xC2\xA0\xC2\xB1\xC2\xA0";  // U+00A0 U+00B1 U+00A0
constexpr double minute = 60;
constexpr double feet = 1 / 0.3048;
constexpr double inches = 1 / 0.0254;
constexpr int as_given_digits = 6;

bool in_us_units(const Context& context) {
  const auto& units = context.request.request.units;
  return units && units->value == calc::UnitSystem::us;
}

/// The value rounded down to so many significant digits, a last bit above a digit kept.
double rounded_down(double value, int digits) {
  if (value <= 0) return value;
  const double step = std::pow(10.0, std::floor(std::log10(value)) - digits + 1);
  return std::floor(value / step * (1 + 1e-12)) * step;
}

std::string with_feet(const Context& context, double per_minute, std::string text, int digits) {
  if (!in_us_units(context)) return text;
  return text + " (" + with_unit(per_minute * feet, "ft/min", digits) + ")";
}

}  // namespace

std::string speed_text(const Context& context, calc::Speed speed) {
  const double per_minute = speed.si() * minute;
  return with_feet(context, per_minute, with_unit(per_minute, "m/min", 4), 4);
}

std::string speed_limit_text(const Context& context, calc::Speed speed) {
  const double per_minute = rounded_down(speed.si() * minute, 3);
  return with_feet(context, per_minute, with_unit(per_minute, "m/min", 3), 3);
}

std::string speed_limit_number(calc::Speed speed) {
  return number(rounded_down(speed.si() * minute, 3), 3);
}

std::string length_text(const Context& context, calc::Length length, int digits) {
  std::string text = with_unit(in_mm(length), "mm", digits);
  if (!in_us_units(context)) return text;
  return text + " (" + with_unit(length.si() * inches, "in", digits) + ")";
}

std::string dpi_text(calc::Resolution resolution) { return number(in_dpi(resolution), 4); }

std::string lattice_text(calc::Resolution across, calc::Resolution along) {
  return dpi_text(across) + std::string(times) + with_unit(in_dpi(along), "dpi", 4);
}

std::string amount(std::string_view currency, calc::Money money) {
  return std::string(currency) + (currency.empty() ? "" : "\xC2\xA0") + output::money(money);
}

std::string rough_amount(std::string_view currency, double major) {
  return std::string(currency) + (currency.empty() ? "" : "\xC2\xA0") + number(major, 3);
}

std::string percent_down(double share) {
  const double percent = std::floor(share * 1000 * (1 + 1e-12)) / 10;
  return percent >= 100 ? number(percent, 4) : fixed(percent, 1);
}

std::string count_text(double count) { return number(count, 9); }

std::string joined(const Context& context, const std::vector<std::string>& pieces) {
  std::string text;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (i > 0 && i + 1 == pieces.size()) {
      text += " " + context.words("and") + " ";
    } else if (i > 0) {
      text += ", ";
    }
    text += pieces[i];
  }
  return text;
}

std::string input_text(const Context& context, const calc::Input& input) {
  if (!input.text.empty()) return input.text;
  const std::string unit = input.unit;
  const bool spread = input.spread != calc::Spread::none && input.low < input.high;
  if (!spread) return with_unit(input.value, unit, as_given_digits);
  if (input.spread == calc::Spread::demand) {
    return number(input.low, as_given_digits) + " " + context.words("to") + " " +
           with_unit(input.high, unit, as_given_digits);
  }
  const double below = input.value - input.low;
  const double above = input.high - input.value;
  if (std::abs(below - above) <= 1e-9 * std::max(std::abs(input.low), std::abs(input.high))) {
    return number(input.value, as_given_digits) + std::string(plus_minus) +
           with_unit(above, unit, as_given_digits);
  }
  return with_unit(input.value, unit, as_given_digits) + " (" + number(input.low, as_given_digits) +
         " " + context.words("to") + " " + number(input.high, as_given_digits) + ")";
}

std::string head_text(const Context& context, const calc::Group& group) {
  return context.words("head_mode", {{"HEAD", group.head}, {"MODE", group.mode}});
}

}  // namespace output
