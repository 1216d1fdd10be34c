/// Numbers as people read them.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "calc/money.h"

namespace output {

/// As long as one lives, numbers printed by its thread have its decimal sign in place of the point.
/// The functions below are called in a hundred places that know no style; hence not an argument.
class DecimalSign {
 public:
  explicit DecimalSign(std::string_view sign);
  ~DecimalSign();
  DecimalSign(const DecimalSign&) = delete;
  DecimalSign& operator=(const DecimalSign&) = delete;
  DecimalSign(DecimalSign&&) = delete;
  DecimalSign& operator=(DecimalSign&&) = delete;

 private:
  std::string_view before_;
};

/// A number to at most `digits` significant digits, never with an exponent between 1e-4 and 1e9,
/// groups of three by U+202F from five digits on, true minus U+2212, no trailing zeros after the
/// point.
std::string number(double value, int digits = 3);
/// The same with a fixed count of decimals.
std::string fixed(double value, int decimals);
/// "12 345.00" of an amount; the currency is set by the caller.
std::string money(calc::Money amount);
/// "12 345", rounded: of sums that are no more certain than that.
std::string whole_money(calc::Money amount);
/// Which way a number is rounded to its digits: what must be reached goes up, what is allowed down.
enum class Rounding { nearest, up, down };
/// Number, U+00A0 and the unit written as ISO 80000-1 wants it ("mPa.s" -> "mPa·s", "degC" -> "°C",
/// "um" -> "µm", "m2" -> "m²"); no unit: the number alone; "%" too takes the space.
std::string with_unit(double value, std::string_view unit, int digits = 3);
/// The same in United States customary units with `value` `unit` in parentheses behind, "9 in
/// (229 mm)"; a unit that has no such counterpart, or `us` false: as with_unit.
std::string with_units(double value, std::string_view unit, int digits, bool us);
/// "18 to 32 °C" of a range in the same way, "64.4 to 89.6 °F (18 to 32 °C)"; `to` with its blanks.
std::string range_with_units(double low, double high, std::string_view unit, int digits, bool us,
                             std::string_view to);
/// The counterpart alone, "9 in", rounded that way. Precondition: the unit has one.
std::string in_us_unit(double value, std::string_view unit, int digits,
                       Rounding way = Rounding::nearest);

/// Whether a unit has such a counterpart.
bool has_us_unit(std::string_view unit);
/// The value at so many significant digits, rounded that way; what is a digit but for the last bits
/// of its calculation stays.
double rounded(double value, int digits, Rounding way);
/// As with_units, both numbers rounded that way.
std::string bound_with_units(double value, std::string_view unit, int digits, bool us,
                             Rounding way);
/// At most so many characters, the rest of a longer text replaced by an ellipsis. most > 1.
std::string shortened(std::string_view text, std::size_t most);
/// The unit text alone in that form.
std::string pretty_unit(std::string_view unit);
/// The shortest decimal that reads back as the same double (JSON and CSV).
std::string exact(double value);

}  // namespace output
