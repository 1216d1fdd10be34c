#include "calc/consumption.h"

#include <doctest/doctest.h>

#include "tests/calc/support/check.h"

using namespace calc;
using support::identity;

namespace {

constexpr const char* closed = "definition, computed independently";

}  // namespace

TEST_CASE("use of a channel") {
  const ChannelUse quiet = channel_use(litres(100), 4, litres(0.005), 20, litres(2));
  const ChannelUse purged = channel_use(litres(1), 4, litres(0.005), 20, litres(2));
  support::check_all({
      {"3 % of printed governs [L]", quiet.purged.si() * 1e3, 3, identity, closed},
      {"total [L]", quiet.total().si() * 1e3, 105, identity, closed},
      {"waste [L]", quiet.waste().si() * 1e3, 5, identity, closed},
      {"purges govern [L]", purged.purged.si() * 1e3, 0.4, identity, closed},
  });
}

TEST_CASE("running time, life and replacements") {
  const Time year = running_time(seconds(16 * 3600), 250, default_uptime);
  const auto by_drops = head_life({}, 1e11, kilohertz(20), 0.25);
  const auto lesser = head_life(seconds(1e7), 1e11, kilohertz(20), 0.25);
  REQUIRE(by_drops.has_value());
  REQUIRE(lesser.has_value());
  support::check_all({
      {"hours a year", year.si() / 3600, 3400, identity, closed},
      {"1e11 drops at 20 kHz and a quarter [s]", by_drops->si(), 2e7, identity, closed},
      {"the lesser governs [s]", lesser->si(), 1e7, identity, closed},
      {"replacements", replacements_per_year(12, year, seconds(6800 * 3600.0)), 6, identity,
       closed},
      {"share printed", print_share(millimetres(150), millimetres(200)), 0.75, identity, closed},
      {"images that touch", print_share(millimetres(210), millimetres(200)), 1, 0, closed},
  });
  CHECK_FALSE(head_life({}, {}, kilohertz(20), 0.25).has_value());
  CHECK(head_life(seconds(5), {}, kilohertz(20), 0.25) == seconds(5));
}
