#include "calc/laydown.h"

#include <doctest/doctest.h>

#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;
using support::six_digits;

namespace {

constexpr const char* balance = "[C] mass balance, computed independently";

/// Wet film in um, that is laydown in mL/m2.
double film(double pl, double across, double along) {
  return in_um(laydown(picolitres(pl), dpi(across), dpi(along)));
}

}  // namespace

TEST_CASE("laydown of solids") {
  support::check_all({
      {"10 pL at 600", film(10, 600, 600), 5.58001, six_digits, balance},
      {"7 pL at 600", film(7, 600, 600), 3.90601, six_digits, balance},
      {"14 pL at 600", film(14, 600, 600), 7.81202, six_digits, balance},
      {"30 pL at 360", film(30, 360, 360), 6.02641, six_digits, balance},
      {"42 pL at 360", film(42, 360, 360), 8.43698, six_digits, balance},
      {"3 pL at 1200", film(3, 1200, 1200), 6.69601, six_digits, balance},
      {"7 pL at 1200", film(7, 1200, 1200), 15.6240, six_digits, balance},
      {"80 pL at 200", film(80, 200, 200), 4.96001, six_digits, balance},
      {"12 pL at 600 x 1200", film(12, 600, 1200), 13.3920, six_digits, balance},
      {"two heads in line", in_um(laydown(picolitres(7), dpi(600), dpi(600), 2)), 7.81202,
       six_digits, balance},
      {"four colours at 240 %",
       in_um(process_film(laydown(picolitres(10), dpi(600), dpi(600)), default_process_limit)),
       13.3920, six_digits, balance},
  });
}

TEST_CASE("a printed page of a published example") {
  // 2880 x 1440 dpi, 4 pL, A4 less 3 mm margins = 59 364 mm2; printed 1.6 mL with rounded pitches.
  const Area area = metres(0.059364) * metres(1);
  const auto per_mm = [](double dots) { return Resolution::from_si(dots * 1e3); };
  const Area square_millimetre = millimetres(1) * millimetres(1);
  const double ml =
      printed_volume(area, laydown(picolitres(4), dpi(2880), dpi(1440)), 1).si() * 1e6;
  support::check_all({
      {"exact [mL]", ml, 1.52641, six_digits, "[P] inputs of agawa.pl; [C]"},
      {"as printed [mL]", ml, 1.6, 0.05, "[P] agawa.pl"},
      {"with its rounding [mL]",
       printed_volume(area, laydown(picolitres(4), per_mm(116), per_mm(58)), 1).si() * 1e6, 1.59760,
       six_digits, "[P] agawa.pl rounds to whole dots a millimetre; [C]"},
      {"dots a square millimetre", dot_density(per_mm(116), per_mm(58)) * square_millimetre, 6728,
       identity, "[P] agawa.pl"},
      {"dots", (dot_density(dpi(2880), dpi(1440)) * area), 3.81602e8, six_digits,
       "[P] inputs of agawa.pl; [C]"},
      {"dots as printed", dot_density(dpi(2880), dpi(1440)) * area, 4e8, 0.05, "[P] agawa.pl"},
  });
}

TEST_CASE("flows of ink") {
  // 1000 m2/h at 20 %: a metre wide at 1000 m/h.
  const VolumeFlow printed = printed_flow(metres(1), metres_per_second(1000.0 / 3600),
                                          laydown(picolitres(10), dpi(600), dpi(600)), 0.2);
  support::check_all({
      {"1000 m2/h at 20 % [L/h]", printed.si() * 3.6e6, 1.11600, six_digits, balance},
      {"a nozzle of 10 pL at 20 kHz [mL/h]",
       jetted_flow(1, kilohertz(20), picolitres(10)).si() * 3.6e9, 0.72, identity, balance},
      {"2000 nozzles, two heads a column of 40 kHz, 7 pL [mL/min]",
       jetted_flow(2000, kilohertz(20), picolitres(7)).si() * 6e7, 16.8, identity, balance},
      {"area mass [g/m2]", area_mass(micrometres(5.58), Density::from_si(1060)).si() * 1e3, 5.9148,
       identity, balance},
      {"dry film [um]", in_um(dry_film(micrometres(8), 0.35)), 2.8, identity, balance},
  });
}

TEST_CASE("both ways to a channel's flow agree") {
  const Speed speed = metres_per_second(1.25);
  const double nozzles = metres(0.5) * dpi(360);
  const VolumeFlow by_area =
      printed_flow(metres(0.5), speed, laydown(picolitres(30), dpi(360), dpi(450)), 1);
  const VolumeFlow by_nozzle = jetted_flow(nozzles, speed * dpi(450), picolitres(30));
  CHECK(support::near(by_area / by_nozzle, 1, identity));
}

TEST_CASE("heads in line for a film") {
  CHECK(heads_for_film(micrometres(12), micrometres(6)) == 2);
  CHECK(heads_for_film(micrometres(12.1), micrometres(6)) == 3);
  CHECK(heads_for_film(micrometres(3), micrometres(6)) == 1);
}
