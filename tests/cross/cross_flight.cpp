// Prints flights of drops for flight_test.py: a line "rho d v0 H T" in SI gives impact speed [m/s],
// time [s], or "stopped", and the way on which the drop stops [m]. Numbers have 17 digits, columns
// are parted by tabs.
#include <cstdio>
#include <iostream>
#include <sstream>
#include <string>

#include "calc/flight.h"

namespace {

using namespace calc;

void answer(std::istringstream& line) {
  double rho = 0, d = 0, v0 = 0, way = 0, kelvin = 0;
  line >> rho >> d >> v0 >> way >> kelvin;
  const FlightLaw law =
      flight_law(metres(d), Density::from_si(rho), air_at(Temperature::kelvin(kelvin)));
  const Speed start = metres_per_second(v0);
  const auto landing = land(law, start, metres(way));
  if (landing) {
    std::printf("%.17g\t%.17g", landing->impact.si(), landing->time.si());
  } else {
    std::printf("stopped\tstopped");
  }
  std::printf("\t%.17g\n", stopping_distance(law, start).si());
}

}  // namespace

int main() {
  std::string text;
  while (std::getline(std::cin, text)) {
    std::istringstream line(text);
    answer(line);
  }
  return 0;
}
