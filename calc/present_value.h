/// Money over years: year end, real terms, no residual value.
#pragma once

#include "calc/money.h"

namespace calc {

inline constexpr double default_discount = 0.08;
inline constexpr int default_years = 5;

/// Present value of 1 a year for n years [1]: (1 - (1+i)^-n)/i, n where i = 0. i > -1, years >= 0.
double annuity_factor(double rate, int years);

/// Present value of one amount at the end of a year [1]: (1+i)^-t.
double discount_factor(double rate, int year);

/// Ownership [money]: capital and yearly amounts discounted, rounded to a minor unit at the end.
Money ownership(Money capital, Money yearly, double rate, int years);

/// Level amount a year [money] of the same present value: ownership / annuity factor. years >= 1.
Money levelised(Money ownership, double rate, int years);

/// Cost per area [money per m2 in major units]: ownership / (annuity factor area a year). area > 0.
double cost_per_square_metre(Money ownership, double rate, int years, double square_metres);

}  // namespace calc
