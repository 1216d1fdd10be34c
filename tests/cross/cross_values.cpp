// Prints what the program makes of numbers, for scripts that compute the same with general
// libraries.
//   units                           one line a unit: text, dimension, factor, offset, UDUNITS-2
//   expression viscosity < lines               a line "QUERY T eta T eta ..." in degC and mPa.s:
//   eta at QUERY, or "unknown" jet < lines                     a line "rho eta sigma v d" in SI: Re
//   We Oh Z v_min K settling < lines                a line "d rho_p rho_f T eta" in SI: speed [m/s]
//   and height [m]
// Numbers have 17 digits. Columns are parted by tabs.
#include <cstdio>
#include <iostream>
#include <sstream>
#include <string>
#include <vector>

#include "calc/fluid.h"
#include "calc/viscosity.h"
#include "intake/unit_data.h"

namespace {

using namespace calc;

void print(double value, const char* end) { std::printf("%.17g%s", value, end); }

int units() {
  for (const intake::Unit& unit : intake::physical_units()) {
    std::printf("%s\t%s\t", std::string(unit.text).c_str(), std::string(unit.dimension).c_str());
    print(unit.factor, "\t");
    print(unit.offset, "\t");
    std::printf("%s\n", std::string(unit.udunits).c_str());
  }
  return 0;
}

void viscosity(std::istringstream& line) {
  double query = 0, celsius = 0, mpas = 0;
  std::vector<ViscosityPoint> points;
  line >> query;
  while (line >> celsius >> mpas) {
    points.push_back({millipascal_seconds(mpas), Temperature::celsius(celsius)});
  }
  const auto model = fit_viscosity(points);
  const auto value = model ? viscosity_at(*model, Temperature::celsius(query)) : std::nullopt;
  if (value) {
    print(in_mpas(*value), "\n");
  } else {
    std::printf("unknown\n");
  }
}

void jet(std::istringstream& line) {
  double rho = 0, eta = 0, sigma = 0, v = 0, d = 0;
  line >> rho >> eta >> sigma >> v >> d;
  const Fluid fluid{Density::from_si(rho), Viscosity::from_si(eta), SurfaceTension::from_si(sigma)};
  const Speed speed = metres_per_second(v);
  const Length nozzle = metres(d);
  print(reynolds(fluid, speed, nozzle), "\t");
  print(weber(fluid, speed, nozzle), "\t");
  print(ohnesorge(fluid, nozzle), "\t");
  print(z_number(fluid, nozzle), "\t");
  print(least_ejection_speed(fluid, nozzle).si(), "\t");
  print(splash_number(fluid, speed, nozzle), "\n");
}

void settling(std::istringstream& line) {
  double d = 0, heavy = 0, rho = 0, kelvin = 0, eta = 0;
  line >> d >> heavy >> rho >> kelvin >> eta;
  const Fluid fluid{Density::from_si(rho), Viscosity::from_si(eta), SurfaceTension()};
  print(settling_speed(metres(d), Density::from_si(heavy), fluid).si(), "\t");
  print(settling_height(metres(d), Density::from_si(heavy), fluid.density,
                        Temperature::kelvin(kelvin))
            .value_or(Length())
            .si(),
        "\n");
}

int every_line(void (*answer)(std::istringstream&)) {
  std::string text;
  while (std::getline(std::cin, text)) {
    std::istringstream line(text);
    answer(line);
  }
  return 0;
}

}  // namespace

int main(int count, char** words) {
  const std::string what = count == 2 ? words[1] : "";
  if (what == "units") return units();
  if (what == "viscosity") return every_line(viscosity);
  if (what == "jet") return every_line(jet);
  if (what == "settling") return every_line(settling);
  static_cast<void>(std::fputs("usage: cross_values units|viscosity|jet|settling\n", stderr));
  return 64;
}
