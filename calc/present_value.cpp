#include "calc/present_value.h"

#include <cmath>

namespace calc {

double annuity_factor(double rate, int years) {
  if (rate == 0) return years;
  // expm1 and log1p keep the digits where the rate is small.
  return -std::expm1(-years * std::log1p(rate)) / rate;
}

double discount_factor(double rate, int year) { return std::pow(1 + rate, -year); }

Money ownership(Money capital, Money yearly, double rate, int years) {
  return to_money(capital.major() + yearly.major() * annuity_factor(rate, years));
}

Money levelised(Money ownership, double rate, int years) {
  return to_money(ownership.major() / annuity_factor(rate, years));
}

double cost_per_square_metre(Money ownership, double rate, int years, double square_metres) {
  return ownership.major() / (annuity_factor(rate, years) * square_metres);
}

}  // namespace calc
