// Properties of a drop's flight: limits, scaling, order, inverse.
#include "calc/flight.h"

#include <doctest/doctest.h>

#include "calc/dot.h"
#include "tests/property/between.h"

using namespace calc;
using property::between;
using property::near;

namespace {

Length some_drop() { return drop_diameter(picolitres(between(1, 200))); }
Density some_density() { return Density::from_si(between(700, 1500)); }
Speed some_speed() { return metres_per_second(between(3, 15)); }
Air some_air() { return air_at(Temperature::celsius(between(0, 60))); }

/// A way that the drop does not come to rest on.
Length some_way(const FlightLaw& law, Speed start) {
  return stopping_distance(law, start) * between(0.01, 0.9);
}

}  // namespace

TEST_CASE("limits of a flight") {
  CHECK(rc::check("drag to zero gives the throw over the speed", [] {
    const Air air = some_air();
    const Air none{air.viscosity * 1e-6, air.density * 1e-6, air.free_path};
    const FlightLaw law = flight_law(some_drop(), some_density(), none);
    const Speed start = some_speed();
    const Length way = millimetres(between(0.2, 10));
    const std::optional<Landing> landing = land(law, start, way);
    RC_ASSERT(landing.has_value());
    RC_ASSERT(near(landing->time.si(), (way / start).si(), 1e-5));
    RC_ASSERT(near(landing->impact.si(), start.si(), 1e-5));
  }));
  CHECK(rc::check("drag lets no drop arrive sooner or faster than without", [] {
    const FlightLaw law = flight_law(some_drop(), some_density(), some_air());
    const Speed start = some_speed();
    const Length way = some_way(law, start);
    const std::optional<Landing> landing = land(law, start, way);
    RC_ASSERT(landing.has_value());
    RC_ASSERT(landing->impact < start);
    RC_ASSERT(landing->time > way / start);
    RC_ASSERT(landing->time < way / landing->impact);
  }));
}

TEST_CASE("order and scaling of flights") {
  CHECK(rc::check("a longer way takes longer and costs speed", [] {
    const FlightLaw law = flight_law(some_drop(), some_density(), some_air());
    const Speed start = some_speed();
    const Length way = some_way(law, start);
    const std::optional<Landing> far = land(law, start, way);
    const std::optional<Landing> close = land(law, start, way * between(0.1, 0.95));
    RC_ASSERT(far.has_value());
    RC_ASSERT(close.has_value());
    RC_ASSERT(close->time < far->time);
    RC_ASSERT(close->impact > far->impact);
  }));
  CHECK(rc::check("with Stokes' drag alone speeds and ways scale together", [] {
    const FlightLaw law{seconds(between(1e-4, 1e-2)), 0};
    const Speed start = some_speed();
    const double k = between(0.2, 5);
    RC_ASSERT(near((stopping_distance(law, start) / (start * law.tau)), 1));
    const Length way = some_way(law, start);
    const std::optional<Landing> landing = land(law, start, way);
    const std::optional<Landing> scaled = land(law, k * start, k * way);
    RC_ASSERT(landing.has_value());
    RC_ASSERT(scaled.has_value());
    RC_ASSERT(near(scaled->time.si(), landing->time.si(), 1e-9));
    RC_ASSERT(near(scaled->impact.si(), k * landing->impact.si(), 1e-9));
  }));
  CHECK(rc::check("the speed before undoes the speed after", [] {
    const FlightLaw law = flight_law(some_drop(), some_density(), some_air());
    const Speed start = some_speed();
    const Length way = some_way(law, start);
    const std::optional<Speed> end = speed_after(law, start, way);
    RC_ASSERT(end.has_value());
    RC_ASSERT(near(speed_before(law, *end, way).si(), start.si(), 1e-9));
  }));
}
