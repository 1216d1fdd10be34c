#include "calc/flight.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "calc/dot.h"
#include "tests/calc/support/check.h"

using namespace calc;
using support::check_all;
using support::near;
using support::six_digits;

namespace {

constexpr const char* sheet = "[C] integrated independently with a Runge-Kutta rule";
constexpr const char* terms = "[C] computed independently";
constexpr const char* wolfson = "[P] inputs of Wolfson, Essential University Physics, 3.37; [C]";
constexpr const char* library = "[L] integrate_drag_sphere, unit test of the library fluids";

FlightLaw law_of(double pl, double density = 1050) {
  return flight_law(drop_diameter(picolitres(pl)), Density::from_si(density),
                    air_at(Temperature::celsius(20)));
}

constexpr Speed six = metres_per_second(6);

/// [m/s], 0 where the drop stops short.
double speed_at(const FlightLaw& law, double mm) {
  return speed_after(law, six, millimetres(mm)).value_or(Speed{}).si();
}

double time_us(const FlightLaw& law, double mm, double v = 6) {
  return land(law, metres_per_second(v), millimetres(mm))->time.si() * 1e6;
}

/// The same equation of motion by the classic Runge-Kutta rule: speed and time after a way.
Landing integrated(const FlightLaw& law, Speed start, Length way, int steps) {
  const double h = way.si() / steps;
  const auto slope = [&](double v) { return -(1 + law.c * std::pow(v, 0.687)) / law.tau.si(); };
  double v = start.si();
  double t = 0;
  for (int i = 0; i < steps; ++i) {
    const double k1 = slope(v);
    const double k2 = slope(v + h / 2 * k1);
    const double k3 = slope(v + h / 2 * k2);
    const double k4 = slope(v + h * k3);
    const double middle = v + h / 2 * (k1 + k2) / 2;
    const double next = v + h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
    t += h / 6 * (1 / v + 4 / middle + 1 / next);
    v = next;
  }
  return {metres_per_second(v), seconds(t)};
}

}  // namespace

TEST_CASE("drops of 3 to 80 pL at 6 m/s over 1 to 5 mm") {
  struct Row {
    double pl, tau, v1, v2, v3, v5, time, stop;
  };
  const std::vector<Row> rows{
      {3, 1.02999, 4.517263, 3.135347, 1.858558, 0, 191.743, 4.66594},
      {7, 1.81198, 5.081528, 4.205019, 3.370949, 1.833743, 181.010, 7.81951},
      {10, 2.29838, 5.248005, 4.525202, 3.831766, 2.534289, 178.152, 9.69924},
      {14, 2.87635, 5.376641, 4.774065, 4.192329, 3.091834, 176.029, 11.8720},
      {30, 4.78083, 5.590751, 5.191204, 4.801348, 4.050704, 172.647, 18.6905},
      {42, 5.98304, 5.659468, 5.325889, 4.999249, 4.366752, 171.600, 22.7953},
      {80, 9.19354, 5.759667, 5.523023, 5.290061, 4.835146, 170.105, 33.2340}};
  for (const Row& row : rows) {
    CAPTURE(row.pl);
    const FlightLaw law = law_of(row.pl);
    check_all({
        {"tau [ms]", law.tau.si() * 1e3, row.tau, six_digits, sheet},
        {"v(1 mm)", speed_at(law, 1), row.v1, 1e-6, sheet},
        {"v(2 mm)", speed_at(law, 2), row.v2, 1e-6, sheet},
        {"v(3 mm)", speed_at(law, 3), row.v3, 1e-6, sheet},
        {"v(5 mm)", speed_at(law, 5), row.v5, 1e-6, sheet},
        {"t(1 mm) [us]", time_us(law, 1), row.time, six_digits, sheet},
        {"stop [mm]", in_mm(stopping_distance(law, six)), row.stop, six_digits, sheet},
    });
  }
}

TEST_CASE("the closed form and an integration agree, and the error stated holds") {
  for (const double pl : {1.0, 3.0, 30.0, 80.0}) {
    const FlightLaw law = law_of(pl);
    for (const double v : {3.0, 6.0, 15.0}) {
      CAPTURE(pl);
      CAPTURE(v);
      const Speed start = metres_per_second(v);
      const Length way = stopping_distance(law, start) * 0.6;
      const std::optional<Landing> exact = land(law, start, way);
      REQUIRE(exact);
      const Landing twin = integrated(law, start, way, 4000);
      CHECK(near(exact->impact.si(), twin.impact.si(), 1e-11));
      CHECK(near(exact->time.si(), twin.time.si(), 1e-9));
      const Length again = stopping_distance(law, start) - stopping_distance(law, exact->impact);
      CHECK(near(again.si(), way.si(), 1e-12));
      CHECK(near(speed_before(law, exact->impact, way).si(), v, 1e-12));
    }
  }
}

TEST_CASE("the speed after a way is found wherever on the way the drop is") {
  for (const double pl : {1.0, 80.0, 2000.0}) {
    const FlightLaw law = law_of(pl);
    for (const double v : {0.1, 6.0, 60.0}) {
      const Speed start = metres_per_second(v);
      const Length stop = stopping_distance(law, start);
      for (const double share : {0.0, 1e-6, 0.05, 0.5, 0.9, 0.999, 1 - 1e-9}) {
        CAPTURE(pl);
        CAPTURE(v);
        CAPTURE(share);
        const std::optional<Speed> end = speed_after(law, start, stop * share);
        REQUIRE(end);
        CHECK(*end <= start * (1 + 1e-15));
        const Length left = stopping_distance(law, *end);
        CHECK(std::abs((left - stop * (1 - share)) / stop) < 1e-13);
      }
    }
  }
}

TEST_CASE("a departure gives for every throw what the functions of one throw give") {
  const FlightLaw law = law_of(20);
  const Departure departure(law, six);
  CHECK(departure.stop() == stopping_distance(law, six));
  for (const double share : {0.0, 0.1, 0.5, 0.99, 1.01}) {
    CAPTURE(share);
    const Length way = departure.stop() * share;
    const std::optional<Landing> one = land(law, six, way), of_many = departure.land(way);
    REQUIRE(one.has_value() == of_many.has_value());
    CHECK(of_many.has_value() == (share < 1));
    if (!one) continue;
    CHECK(of_many->impact == one->impact);
    CHECK(of_many->impact == speed_after(law, six, way));
    CHECK(of_many->time == slowing_time(law, six, one->impact));
  }
}

TEST_CASE("a throw beyond the stopping distance is never reached") {
  const FlightLaw law = law_of(3);
  const Length stop = stopping_distance(law, six);
  CHECK(land(law, six, stop * (1 - 1e-6)));
  CHECK_FALSE(land(law, six, stop * (1 + 1e-9)));
  CHECK_FALSE(speed_after(law, six, millimetres(5)));
}

TEST_CASE("without drag the flight takes the throw over the speed") {
  const Air air = air_at(Temperature::celsius(20));
  double before = 1;
  for (const double share : {1e-2, 1e-4, 1e-6}) {
    const Air thin{air.viscosity * share, air.density * share, air.free_path};
    const FlightLaw law = flight_law(drop_diameter(picolitres(10)), Density::from_si(1050), thin);
    const double excess = time_us(law, 1) / (1e3 / 6) - 1;
    CHECK(excess > 0);
    CHECK(excess < before);
    before = excess;
  }
  CHECK(before < 1e-6);
}

TEST_CASE("without the second term the drag is Stokes'") {
  const FlightLaw law{seconds(2e-3), 0};
  const double x = 1e-3 / (6 * 2e-3);
  check_all({
      {"speed", speed_after(law, six, millimetres(1))->si(), 6 - 0.5, 1e-12, terms},
      {"stop [mm]", in_mm(stopping_distance(law, six)), 12, 1e-12, terms},
      {"time [us]", time_us(law, 1), -2e3 * std::log(1 - x), 1e-12, terms},
  });
}

TEST_CASE("bigger, faster and heavier drops arrive sooner and more throw costs speed") {
  CHECK(time_us(law_of(14), 1) < time_us(law_of(3), 1));
  CHECK(time_us(law_of(10), 1, 7) < time_us(law_of(10), 1, 6));
  CHECK(time_us(law_of(10, 1200), 1) < time_us(law_of(10, 1000), 1));
  CHECK(speed_at(law_of(10), 2) < speed_at(law_of(10), 1));
}

TEST_CASE("placement shifts at 1 m/s, 6 m/s and 1 mm") {
  const FlightLaw law = law_of(10);
  const FlightLaw free{seconds(100), 0};  // loses two millionths of its speed
  const double slower = time_us(law, 1, 6 * 0.95) - time_us(law, 1, 6);
  const double faster = time_us(law, 1, 6) - time_us(law, 1, 6 * 1.05);
  const double slope = (time_us(free, 1, 6 * 0.999) - time_us(free, 1, 6 * 1.001)) / 2e-3;
  check_all({
      {"gap 0.1 mm", time_us(law, 1.1) - time_us(law, 1), 19.1898, six_digits, terms},
      {"by its derivative", 100 / speed_at(law, 1), 19.0549, six_digits, terms},
      {"speed 5 %, mean of both ways", (slower + faster) / 2, 9.37214, six_digits, terms},
      {"3 against 14 pL at 1.5 m/s", 1.5 * (time_us(law_of(3), 1) - time_us(law_of(14), 1)), 23.6,
       2e-3, "method, worked cases"},
      {"angle 5 mrad", 1000 * std::tan(5e-3), 5.00004, six_digits, terms},
      {"gap 0.1 mm, no drag", time_us(free, 1.1) - time_us(free, 1), 16.6667, six_digits, terms},
      {"speed 5 %, no drag", 0.05 * slope, 8.33333, six_digits, terms},
  });
}

TEST_CASE("gravity: sag of a drop jetted sideways, and what it adds along the throw") {
  check_all({
      {"time [us]", time_us({seconds(100), 0}, 1, 12), 83.3333, six_digits, wolfson},
      {"sag [nm]", sag(seconds(1e-3 / 12)).si() * 1e9 * 9.8 / 9.80665, 34.0, 1e-3, wolfson},
      {"adds at 1 mm [m/s]", 9.80665 * time_us(law_of(10), 1) * 1e-6, 0.0017, 0.05, terms},
  });
  // A sphere of 1 mm, 2200/1.2 kg/m3, 0.1 s, Stokes: with gravity 10.828446489 from 10 m/s and
  // 0.97302748 from rest. What gravity adds is below g t, the bound stated, and near it.
  const FlightLaw law{seconds(2200 * 1e-6 / (18 * 1.78e-5)), 0};
  const double without = 10 * std::exp(-0.1 / law.tau.si());
  const Length way = metres(1.041522867 - 0.04876946);
  check_all(
      {{"drag alone", 10.828446489 - 0.97302748, without, 1e-7, library},
       {"speed after its way", speed_after(law, metres_per_second(10), way)->si(),
        10.828446489 - 0.97302748, 1e-8, library},
       {"time of its way", land(law, metres_per_second(10), way)->time.si(), 0.1, 1e-6, library}});
  CHECK(10.828446489 - without < 9.80665 * 0.1);
  CHECK(10.828446489 - without > 0.99 * 9.80665 * 0.1);
}
