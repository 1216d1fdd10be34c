#include "calc/barcode.h"

#include <algorithm>
#include <cmath>

#include "calc/compare.h"

namespace calc {

const BarcodeSymbol* find_barcode_symbol(std::string_view key) {
  const auto symbols = barcode_symbols();
  const auto row = std::find_if(symbols.begin(), symbols.end(),
                                [&](const BarcodeSymbol& symbol) { return symbol.key == key; });
  return row == symbols.end() ? nullptr : &*row;
}

int dots_per_module(Length module, Resolution resolution) {
  return std::max(1, static_cast<int>(floor_tolerant(module * resolution + 0.5)));
}

Length lattice_module(int dots, Resolution resolution) {
  return static_cast<double>(dots) / resolution;
}

LatticeModule fit_module(Length module, Resolution resolution, Length least, Length most) {
  LatticeModule fit;
  fit.dots = dots_per_module(module, resolution);
  fit.module = lattice_module(fit.dots, resolution);
  if (!at_least(fit.module, least)) fit.repair = 1;
  if (!at_most(fit.module, most) && fit.dots > 1) fit.repair = -1;
  fit.dots += fit.repair;
  fit.module = lattice_module(fit.dots, resolution);
  fit.in_range = at_least(fit.module, least) && at_most(fit.module, most);
  return fit;
}

double axis_mismatch(Length module_across, Length module_along) {
  const Length mean = (module_across + module_along) / 2;
  return std::abs((module_across - module_along) / mean);
}

Length symbol_width(double modules, Length module) { return modules * module; }

double gs1_128_modules(int characters) {
  constexpr int start_function_check = 3;
  return (start_function_check + characters) * 11 + 13 + 2 * 10;
}

double itf_modules(int pairs) { return 16 * pairs + 8.5 + 2 * 10; }

double matrix_modules(int size, double quiet) { return size + 2 * quiet; }

}  // namespace calc
