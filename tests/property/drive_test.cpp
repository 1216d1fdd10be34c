// Properties of electronics, supply and encoder: enough and no more, monotone, additive.
#include <doctest/doctest.h>

#include "calc/encoder.h"
#include "calc/frequency.h"
#include "calc/laydown.h"
#include "calc/supply.h"
#include "tests/property/between.h"

using namespace calc;
using property::between;
using property::near;

namespace {

VolumeFlow ml_per_min(double v) { return VolumeFlow::from_si(v * 1e-6 / 60); }

SupplyLimits some_limits() {
  SupplyLimits limits;
  if (*rc::gen::arbitrary<bool>()) limits.flow = ml_per_min(between(10, 300));
  if (*rc::gen::arbitrary<bool>()) limits.heads = *rc::gen::inRange(1, 12);
  if (*rc::gen::arbitrary<bool>()) limits.pump = ml_per_min(between(50, 2000));
  if (*rc::gen::arbitrary<bool>()) limits.recirculation = ml_per_min(between(0, 200));
  return limits;
}

/// Whether so many supplies hold every limit stated.
bool serve(int count, VolumeFlow peak, int heads, const SupplyLimits& limits) {
  const double slack = 1 + 1e-9;
  const VolumeFlow moved = peak + heads * limits.recirculation.value_or(VolumeFlow());
  return (!limits.flow || peak <= *limits.flow * (count * slack)) &&
         (!limits.heads || heads <= *limits.heads * count) &&
         (!limits.pump || moved <= *limits.pump * (count * slack));
}

}  // namespace

TEST_CASE("supplies") {
  CHECK(rc::check("so many serve and one less does not", [] {
    const SupplyLimits limits = some_limits();
    const VolumeFlow peak = ml_per_min(between(0, 900));
    const int heads = *rc::gen::inRange(1, 60);
    const int count = supplies(peak, heads, limits);
    RC_ASSERT(serve(count, peak, heads, limits));
    if (count > 1) RC_ASSERT(!serve(count - 1, peak, heads, limits));
  }));
  CHECK(rc::check("more ink or more heads never take fewer", [] {
    const SupplyLimits limits = some_limits();
    const VolumeFlow peak = ml_per_min(between(0, 900));
    const int heads = *rc::gen::inRange(1, 60);
    const int count = supplies(peak, heads, limits);
    RC_ASSERT(supplies(peak * between(1, 3), heads, limits) >= count);
    RC_ASSERT(supplies(peak, heads + *rc::gen::inRange(0, 20), limits) >= count);
  }));
}

TEST_CASE("boards and containers are enough and no more") {
  CHECK(rc::check("boards", [] {
    const int heads = *rc::gen::inRange(1, 200);
    const int each = *rc::gen::inRange(1, 9);
    const Frequency rate = hertz(between(1e6, 1e10));
    const Frequency board = hertz(between(1e8, 2e9));
    const int count = drive_boards(heads, each, rate, board);
    RC_ASSERT(count * each >= heads);
    RC_ASSERT(count * board.si() >= rate.si() * (1 - 1e-9));
    const bool fewer =
        (count - 1) * each >= heads && (count - 1) * board.si() >= rate.si() * (1 + 1e-9);
    RC_ASSERT(!fewer);
  }));
  CHECK(rc::check("containers hold the shift", [] {
    const VolumeFlow mean = VolumeFlow::from_si(between(0, 1e-5));
    const Time shift = seconds(between(3600, 28800));
    const Volume size = litres(between(0.5, 20));
    const int count = containers(mean, shift, size);
    RC_ASSERT(count * size.si() >= (mean * shift).si() * (1 - 1e-9));
    if (count > 1) RC_ASSERT((count - 1) * size.si() < (mean * shift).si());
  }));
}

TEST_CASE("data and ink of a channel") {
  CHECK(rc::check("the ink of the nozzles is the ink on the area, however it is stacked", [] {
    const Length width = millimetres(between(20, 2000));
    const Speed speed = metres_per_second(between(0.05, 4));
    const Resolution across = dpi(between(150, 1200));
    const Resolution along = dpi(between(150, 1200));
    const Volume drop = picolitres(between(1, 90));
    const int stack = *rc::gen::inRange(1, 7);
    const int film = *rc::gen::inRange(1, 4);
    const Frequency f = nozzle_frequency(column_frequency(speed, along), stack);
    const double nozzles = width * across * stack * film;
    const VolumeFlow area = printed_flow(width, speed, laydown(drop, across, along, film), 1);
    RC_ASSERT(near(jetted_flow(nozzles, f, drop).si(), area.si()));
  }));
  CHECK(rc::check("data of parts add up to the data of the whole", [] {
    const double a = between(1, 1e5);
    const double b = between(1, 1e5);
    const Frequency f = kilohertz(between(1, 100));
    const int bits = *rc::gen::inRange(1, 5);
    const double sum = data_rate(a, f, bits).si() + data_rate(b, f, bits).si();
    RC_ASSERT(near(data_rate(a + b, f, bits).si(), sum));
  }));
}

TEST_CASE("encoder") {
  CHECK(rc::check("a fraction errs no more than a whole number, that at most by half a count", [] {
    const double wanted = between(0.6, 60);
    const Division whole = whole_division(wanted);
    const Division fraction = nearest_division(wanted, *rc::gen::inRange(1, 100));
    const double error = std::abs(division_error(whole, wanted));
    RC_ASSERT(std::abs(division_error(fraction, wanted)) <= error);
    RC_ASSERT(error * wanted <= 0.5 * (1 + 1e-12));
  }));
  CHECK(rc::check("a ratio of small whole numbers is found exactly", [] {
    const int dots = *rc::gen::inRange(1, 60);
    const int counts = dots * 2 + *rc::gen::inRange(0, 300);
    const double wanted = static_cast<double>(counts) / dots;
    const Division found = nearest_division(wanted, 64);
    RC_ASSERT(near(division_error(found, wanted) + 1, 1));
    RC_ASSERT(found.dots <= dots);
  }));
  CHECK(rc::check("printed resolution and error belong together", [] {
    const Length count = micrometres(between(0.5, 40));
    const Resolution wanted = dpi(between(150, 1200));
    const double per_dot = counts_per_dot(1.0 / wanted, count);
    const Division d = whole_division(per_dot);
    const double stretch = 1 + division_error(d, per_dot);
    RC_ASSERT(near(wanted / divided_resolution(d, count), stretch));
  }));
}
