#include "output/format.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <stdexcept>
#include <utility>

namespace output {
namespace {

constexpr std::string_view narrow_space = "\xE2\x80\xAF";  // U+202F
constexpr std::string_view no_break = "\xC2\xA0";          // U+00A0
constexpr std::string_view minus = "\xE2\x88\x92";         // U+2212
constexpr std::size_t grouped_from = 5;                    // four digits read well ungrouped

// NOLINTNEXTLINE(cppcoreguidelines-avoid-non-const-global-variables): owned by DecimalSign alone
thread_local std::string_view decimal_sign = ".";

void require_finite(double value) {
  if (!std::isfinite(value)) throw std::invalid_argument("a number to print is not finite");
}

template <class... Format>
std::string chars(double value, Format... format) {
  std::array<char, 400> buffer{};
  const auto done = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, format...);
  if (done.ec != std::errc{}) throw std::length_error("a number to print is too long");
  return {buffer.data(), done.ptr};
}

/// The digits of a whole number in groups of three.
std::string grouped(std::string_view digits) {
  if (digits.size() < grouped_from) return std::string(digits);
  std::string text;
  for (std::size_t i = 0; i < digits.size(); ++i) {
    if (i > 0 && (digits.size() - i) % 3 == 0) text += narrow_space;
    text += digits[i];
  }
  return text;
}

bool is_zero(std::string_view decimal) {
  return decimal.find_first_not_of("-0.") == std::string_view::npos;
}

/// A plain decimal ("-12345.60") as it is printed.
std::string dressed(std::string_view decimal) {
  const bool negative = decimal.front() == '-' && !is_zero(decimal);
  if (decimal.front() == '-') decimal.remove_prefix(1);
  const std::size_t point = decimal.find('.');
  std::string text = negative ? std::string(minus) : std::string();
  text += grouped(decimal.substr(0, point));
  if (point == std::string_view::npos) return text;
  text += decimal_sign;
  text += decimal.substr(point + 1);
  return text;
}

std::string without_trailing_zeros(std::string decimal) {
  if (decimal.find('.') == std::string::npos) return decimal;
  decimal.erase(decimal.find_last_not_of('0') + 1);
  if (decimal.back() == '.') decimal.pop_back();
  return decimal;
}

std::string superscript(int exponent) {
  constexpr std::array<std::string_view, 10> raised{
      "\xE2\x81\xB0", "\xC2\xB9",     "\xC2\xB2",     "\xC2\xB3",     "\xE2\x81\xB4",
      "\xE2\x81\xB5", "\xE2\x81\xB6", "\xE2\x81\xB7", "\xE2\x81\xB8", "\xE2\x81\xB9"};
  std::string text;
  for (const char digit : std::to_string(exponent)) {
    text += digit == '-' ? "\xE2\x81\xBB" : raised.at(static_cast<std::size_t>(digit - '0'));
  }
  return text;
}

std::string with_exponent(const std::string& mantissa, int exponent) {
  return dressed(without_trailing_zeros(mantissa)) + std::string(no_break) + "\xC3\x97" +
         std::string(no_break) + "10" + superscript(exponent);
}

/// One word of a unit that is written otherwise than it is typed.
std::string_view proper_word(std::string_view word) {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 11> words{{
      {"um", "\xC2\xB5m"},
      {"us", "\xC2\xB5s"},
      {"uL", "\xC2\xB5L"},
      {"ug", "\xC2\xB5g"},
      {"uW", "\xC2\xB5W"},
      {"uPa", "\xC2\xB5Pa"},
      {"degC", "\xC2\xB0\x43"},
      {"degF", "\xC2\xB0\x46"},
      {"deg", "\xC2\xB0"},
      {"ohm", "\xCE\xA9"},
      {"bit_per_s", "bit/s"},
  }};
  for (const auto& [typed, proper] : words) {
    if (word == typed) return proper;
  }
  return word;
}

/// A unit and its United States counterpart: customary = value * factor + offset.
struct Counterpart {
  std::string_view unit, customary;
  double factor, offset;
  constexpr double of(double value) const { return value * factor + offset; }
};

constexpr double inch_mm = 25.4;            // exact: international yard and pound agreement, 1959
constexpr double foot_m = 0.3048;           // exact, same source
constexpr double gallon_l = 3.785411784;    // exact: 231 cubic inches
constexpr double ounce_ml = 29.5735295625;  // exact: a gallon over 128

constexpr std::array<Counterpart, 15> counterparts{{
    {"um", "mil", 1 / inch_mm, 0},
    {"mm", "in", 1 / inch_mm, 0},
    {"m", "ft", 1 / foot_m, 0},
    {"m/min", "ft/min", 1 / foot_m, 0},
    {"m/s", "ft/s", 1 / foot_m, 0},
    {"m2", "ft2", 1 / (foot_m * foot_m), 0},
    {"m2/h", "ft2/h", 1 / (foot_m * foot_m), 0},
    {"L", "gal", 1 / gallon_l, 0},
    {"mL", "fl oz", 1 / ounce_ml, 0},
    {"mL/h", "fl oz/h", 1 / ounce_ml, 0},
    {"mL/min", "fl oz/min", 1 / ounce_ml, 0},
    {"m3/h", "ft3/min", 1 / (60 * foot_m * foot_m * foot_m), 0},
    {"mm/s", "in/s", 1 / inch_mm, 0},
    {"degC", "degF", 1.8, 32},
    {"m2/s", "ft2/s", 1 / (foot_m * foot_m), 0},
}};

/// Lengths of which an inch is far too large a measure are told in thousandths of it.
constexpr Counterpart thousandths{"mm", "mil", 1000 / inch_mm, 0};
constexpr double least_in_inches = 2;  // mm

/// The counterpart for values of about that size; none where there is none of the unit.
const Counterpart* counterpart(std::string_view unit, double size) {
  if (unit == thousandths.unit && std::abs(size) < least_in_inches) return &thousandths;
  const auto* const found = std::find_if(counterparts.begin(), counterparts.end(),
                                         [&](const Counterpart& c) { return c.unit == unit; });
  return found == counterparts.end() ? nullptr : found;
}

bool is_power(char byte) { return byte == '2' || byte == '3'; }

/// A word with its power: "m2" -> "m²".
std::string proper_factor(std::string_view word) {
  const bool is_number = !word.empty() && word.front() >= '0' && word.front() <= '9';
  if (word.size() > 1 && is_power(word.back()) && !is_number) {
    const std::string_view base = word.substr(0, word.size() - 1);
    return std::string(proper_word(base)) + (word.back() == '2' ? "\xC2\xB2" : "\xC2\xB3");
  }
  return std::string(proper_word(word));
}

}  // namespace

DecimalSign::DecimalSign(std::string_view sign) : before_(decimal_sign) { decimal_sign = sign; }

DecimalSign::~DecimalSign() { decimal_sign = before_; }

std::string number(double value, int digits) {
  require_finite(value);
  if (digits < 1) throw std::invalid_argument("a number needs at least one digit");
  if (value == 0) return "0";
  const std::string rounded = chars(value, std::chars_format::scientific, digits - 1);
  const std::size_t mark = rounded.find('e');
  int exponent = 0;
  const std::size_t digits_at = mark + (rounded[mark + 1] == '+' ? 2 : 1);
  std::from_chars(rounded.data() + digits_at, rounded.data() + rounded.size(), exponent);
  if (exponent < -4 || exponent >= 9) return with_exponent(rounded.substr(0, mark), exponent);
  if (exponent >= digits - 1) {  // the digits end left of the point: round there
    const double step = std::pow(10.0, exponent - digits + 1);
    return dressed(chars(std::round(value / step) * step, std::chars_format::fixed, 0));
  }
  return dressed(
      without_trailing_zeros(chars(value, std::chars_format::fixed, digits - 1 - exponent)));
}

std::string fixed(double value, int decimals) {
  require_finite(value);
  return dressed(chars(value, std::chars_format::fixed, decimals));
}

std::string money(calc::Money amount) {
  const bool negative = amount.minor < 0;
  // The magnitude as unsigned, since the least int64 has no positive twin.
  const auto minor = static_cast<std::uint64_t>(amount.minor);
  const std::uint64_t size = negative ? 0 - minor : minor;
  const std::string cents = std::to_string(size % 100);
  return (negative ? std::string(minus) : std::string()) + grouped(std::to_string(size / 100)) +
         std::string(decimal_sign) + (cents.size() == 1 ? "0" : "") + cents;
}

std::string whole_money(calc::Money amount) {
  const bool negative = amount.minor < 0;
  const auto minor = static_cast<std::uint64_t>(amount.minor);
  const std::uint64_t size = negative ? 0 - minor : minor;
  const std::uint64_t major = size / 100 + (size % 100 >= 50 ? 1 : 0);
  return (negative && major != 0 ? std::string(minus) : std::string()) +
         grouped(std::to_string(major));
}

std::string with_unit(double value, std::string_view unit, int digits) {
  std::string text = number(value, digits);
  if (unit.empty() || unit == "1") return text;
  if (unit == "deg") return text + pretty_unit(unit);  // ISO 80000-1: no space before ° ′ ″
  if (unit.starts_with("1/") && unit != "1/1000") return text + pretty_unit(unit.substr(1));
  return text + std::string(no_break) + pretty_unit(unit);
}

std::string with_units(double value, std::string_view unit, int digits, bool us) {
  const Counterpart* const other = us ? counterpart(unit, value) : nullptr;
  const std::string metric = with_unit(value, unit, digits);
  return other == nullptr
             ? metric
             : with_unit(other->of(value), other->customary, digits) + " (" + metric + ")";
}

double rounded(double value, int digits, Rounding way) {
  if (way == Rounding::nearest || value == 0) return value;
  constexpr double last_bits = 1e-12;
  const int exponent = static_cast<int>(std::floor(std::log10(std::abs(value)))) - digits + 1;
  const double step = std::pow(10.0, std::abs(exponent));
  const double scaled = exponent < 0 ? value * step : value / step;
  const double slack = std::abs(scaled) * last_bits;
  const double whole = way == Rounding::up ? std::ceil(scaled - slack) : std::floor(scaled + slack);
  return exponent < 0 ? whole / step : whole * step;
}

std::string bound_with_units(double value, std::string_view unit, int digits, bool us,
                             Rounding way) {
  const Counterpart* const other = us ? counterpart(unit, value) : nullptr;
  const std::string metric = with_unit(rounded(value, digits, way), unit, digits);
  return other == nullptr
             ? metric
             : with_unit(rounded(other->of(value), digits, way), other->customary, digits) + " (" +
                   metric + ")";
}

std::string range_with_units(double low, double high, std::string_view unit, int digits, bool us,
                             std::string_view to) {
  const Counterpart* const other = us ? counterpart(unit, high) : nullptr;
  const std::string metric = number(low, digits) + std::string(to) + with_unit(high, unit, digits);
  return other == nullptr
             ? metric
             : number(other->of(low), digits) + std::string(to) +
                   with_unit(other->of(high), other->customary, digits) + " (" + metric + ")";
}

std::string in_us_unit(double value, std::string_view unit, int digits, Rounding way) {
  const Counterpart* const other = counterpart(unit, value);
  if (other == nullptr) throw std::invalid_argument("no counterpart of " + std::string(unit));
  return with_unit(rounded(other->of(value), digits, way), other->customary, digits);
}

bool has_us_unit(std::string_view unit) { return counterpart(unit, least_in_inches) != nullptr; }

std::string shortened(std::string_view text, std::size_t most) {
  constexpr std::string_view ellipsis = "\xE2\x80\xA6";
  std::size_t count = 0;
  std::size_t cut = text.size();
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool starts = (static_cast<unsigned char>(text[i]) & 0xC0U) != 0x80U;
    if (starts && count++ == most - 1) cut = i;
  }
  if (count <= most) return std::string(text);
  return std::string(text.substr(0, cut)) + std::string(ellipsis);
}

namespace {

/// Where the factor of a unit that begins at `start` ends; the point of an exponent is within it.
std::size_t factor_end(std::string_view unit, std::size_t start) {
  const auto digit = [&](std::size_t at) {
    return at < unit.size() && unit[at] >= '0' && unit[at] <= '9';
  };
  std::size_t end = unit.find_first_of("./ ", start);
  while (end < unit.size() && unit[end] == '.' && end > 0 && digit(end - 1) && digit(end + 1)) {
    end = unit.find_first_of("./ ", end + 1);
  }
  return std::min(end, unit.size());
}

}  // namespace

std::string pretty_unit(std::string_view unit) {
  if (unit == "1/1000") return "\xE2\x80\xB0";
  std::string text;
  std::size_t start = 0;
  while (start <= unit.size()) {
    const std::size_t end = factor_end(unit, start);
    text += proper_factor(unit.substr(start, end - start));
    if (end == unit.size()) break;
    text += unit[end] == '.'   ? std::string("\xC2\xB7")
            : unit[end] == ' ' ? std::string(no_break)
                               : std::string(1, unit[end]);
    start = end + 1;
  }
  return text;
}

std::string exact(double value) {
  require_finite(value);
  return chars(value);
}

}  // namespace output
