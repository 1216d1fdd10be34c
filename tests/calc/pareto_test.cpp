#include "calc/pareto.h"

#include <doctest/doctest.h>

#include <vector>

using namespace calc;

namespace {
Merits of(double ownership, int heads, double micrometres, double speed) {
  return {to_money(ownership), heads, millimetres(micrometres / 1000), metres_per_second(speed)};
}
}  // namespace

// By the definition of Pareto: a point is on the front where no other dominates it.
TEST_CASE("a station that another equals in all and betters in one is not on the front") {
  CHECK(pareto_front({of(100, 4, 30, 1), of(100, 4, 30, 0.9)}) == std::vector<char>{1, 0});
  CHECK(pareto_front({of(100, 4, 30, 1), of(101, 4, 30, 1)}) == std::vector<char>{1, 0});
  CHECK(pareto_front({of(100, 5, 30, 1), of(100, 4, 30, 1)}) == std::vector<char>{0, 1});
  CHECK(pareto_front({of(100, 4, 31, 1), of(100, 4, 30, 1)}) == std::vector<char>{0, 1});
}

TEST_CASE("equal stations and those that trade one merit for another are all on the front") {
  CHECK(pareto_front({of(100, 4, 30, 1), of(100, 4, 30, 1)}) == std::vector<char>{1, 1});
  CHECK(pareto_front({of(100, 4, 30, 1), of(90, 5, 30, 1), of(120, 4, 20, 1), of(95, 6, 40, 2)}) ==
        std::vector<char>{1, 1, 1, 1});
  CHECK(pareto_front({of(100, 4, 30, 1)}) == std::vector<char>{1});
  CHECK(pareto_front({}).empty());
}

TEST_CASE(
    "merits are of the whole station: heads added up, the slowest group, the worst register") {
  Group fast, slow;
  fast.heads_total = 3;
  fast.speed_limit = metres_per_second(2);
  slow.heads_total = 2;
  slow.speed_limit = metres_per_second(1);
  Station station;
  station.cost.ownership = to_money(1234);
  Budget dot, colour, other;
  dot.name = "dot";
  dot.expanded = millimetres(9);
  colour.name = other.name = "colour";
  colour.expanded = millimetres(0.05);
  other.expanded = millimetres(0.08);
  const Merits m = merits({fast, slow}, station, {dot, colour, other});
  CHECK(m.heads == 5);
  CHECK(m.speed_limit == metres_per_second(1));
  CHECK(m.registration == millimetres(0.08));
  CHECK(m.ownership == to_money(1234));
  // Without flights nothing is known of the registration: no station is better for it.
  CHECK(merits({fast}, station, {}).registration > millimetres(1e6));
  CHECK(merits({fast}, station, {dot}).registration == Length());
}
