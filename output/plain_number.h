/// Numbers as machines and terminals take them: ASCII, decimal point, no grouping.
#pragma once

#include <string>

namespace output {

/// The nearest number of at most 12 significant digits, so that a conversion's last bits do not
/// show (600 dpi is 600). Throws std::logic_error on what is not finite: no such figure may leave
/// the program.
double round_12(double value);

/// The number to `digits` significant digits (1 to 17) without exponent or trailing zeros. Throws
/// std::logic_error on what is not finite.
std::string plain(double value, int digits = 12);

}  // namespace output
