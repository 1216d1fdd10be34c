#include "calc/supply.h"

#include <doctest/doctest.h>

#include "calc/frequency.h"
#include "calc/laydown.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;
using support::six_digits;

namespace {

constexpr const char* closed = "[C] definition, computed independently";

VolumeFlow ml_per_min(double v) { return VolumeFlow::from_si(v * 1e-6 / 60); }

}  // namespace

TEST_CASE("data rates") {
  const double nozzles = metres(0.5) * dpi(600);
  const Frequency f = metres_per_second(1) * dpi(600);
  support::check_all({
      {"1000 nozzles, 20 kHz, 2 bits [Mbit/s]", data_rate(1000, kilohertz(20), 2).si() / 1e6, 40,
       identity, closed},
      {"nozzles of half a metre", nozzles, 11811.0, six_digits, closed},
      {"four colours, 2 bits [Gbit/s]", 4 * data_rate(nozzles, f, 2).si() / 1e9, 2.23200,
       six_digits, closed},
      {"the same [MB/s]", 4 * data_rate(nozzles, f, 2).si() / 8e6, 279.001, six_digits, closed},
  });
}

TEST_CASE("drive boards by heads and by rate") {
  const Frequency rate = hertz(400e6);
  CHECK(drive_boards(8, 4, rate, {}) == 2);
  CHECK(drive_boards(9, 4, rate, {}) == 3);
  CHECK(drive_boards(8, 4, rate, hertz(100e6)) == 4);
  CHECK(drive_boards(8, 4, rate, hertz(1e9)) == 2);
}

TEST_CASE("supplies by flow, heads and pump") {
  const VolumeFlow peak = ml_per_min(150);
  SupplyLimits limits;
  CHECK(supplies(peak, 10, limits) == 1);
  limits.flow = ml_per_min(50);
  CHECK(supplies(peak, 10, limits) == 3);
  limits.heads = 2;
  CHECK(supplies(peak, 10, limits) == 5);
  limits.pump = ml_per_min(200);
  CHECK(supplies(peak, 10, limits) == 5);
  limits.recirculation = ml_per_min(125);
  CHECK(supplies(peak, 10, limits) == 7);
  CHECK(supplies(VolumeFlow{}, 1, limits) == 1);
}

TEST_CASE("the nozzles of a channel and the ink on the area are one flow") {
  // Worked case of the method: 2000 nozzles, two heads a column of 40 kHz, 7 pL: 16.8 mL/min.
  const VolumeFlow jetted = jetted_flow(2000, nozzle_frequency(kilohertz(40), 2), picolitres(7));
  support::check_all(
      {{"2000 nozzles, m 2, 40 kHz, 7 pL [mL/min]", jetted.si() * 6e7, 16.8, identity, closed}});
  CHECK(supplies(jetted, 2, {ml_per_min(16.8), {}, {}, {}}) == 1);
  CHECK(supplies(jetted, 2, {ml_per_min(16.7), {}, {}, {}}) == 2);
}

TEST_CASE("containers for a shift") {
  const VolumeFlow mean = VolumeFlow::from_si(1.25e-3 / 3600);
  const Time shift = seconds(8 * 3600);
  CHECK(containers(mean, shift, litres(5)) == 2);
  CHECK(containers(mean, shift, litres(10)) == 1);
  CHECK(containers(mean, shift, litres(20)) == 1);
  CHECK(containers(mean, shift, litres(4.9)) == 3);
}
