// Prints money over years and spares for money_test.py, a line each: "annuity RATE YEARS",
// "discount RATE YEAR", "at_most K MEAN", "spares MEAN CONFIDENCE" give the figure with 17 digits.
#include <cstdio>
#include <iostream>
#include <sstream>
#include <stdexcept>
#include <string>

#include "calc/present_value.h"
#include "calc/spares.h"

namespace {

double answer(const std::string& kind, std::istringstream& line) {
  double a = 0, b = 0;
  line >> a >> b;
  if (kind == "annuity") return calc::annuity_factor(a, static_cast<int>(b));
  if (kind == "discount") return calc::discount_factor(a, static_cast<int>(b));
  if (kind == "at_most") return calc::poisson_at_most(static_cast<int>(a), b);
  if (kind == "spares") return calc::spares(a, false, b);
  throw std::invalid_argument(kind);
}

}  // namespace

int main() {
  std::string text;
  while (std::getline(std::cin, text)) {
    std::istringstream line(text);
    std::string kind;
    line >> kind;
    std::printf("%.17g\n", answer(kind, line));
  }
  return 0;
}
