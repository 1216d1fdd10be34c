#include "calc/drive.h"

#include <doctest/doctest.h>

#include <cmath>

#include "calc/station.h"
#include "tests/calc/support/check.h"
#include "tests/calc/support/station_case.h"

using namespace calc;
using support::given;
using support::identity;
using support::six_digits;
using support::StationCase;

namespace {

constexpr const char* hand = "worked by hand";

VolumeFlow ml_per_min(double v) { return VolumeFlow::from_si(v * 1e-6 / 60); }
double in_ml_per_min(VolumeFlow v) { return v.si() * 6e7; }

}  // namespace

TEST_CASE("boards, feeds and containers of a station worked by hand") {
  // 100 mm at 360 dpi, stack 2: 2834.65 nozzles at 5 kHz and 2 bits; film 10 um at 1 m/s:
  // 0.1 x 1 x 10e-6 m3/s = 60 mL/min, which takes two supplies of 50 mL/min.
  const StationCase c;
  const Station station = size_station(c.job, c.catalogue, c.groups);
  REQUIRE(station.feeds.size() == 1);
  REQUIRE(station.board_uses.size() == 1);
  const ChannelFeed& feed = station.feeds.front();
  support::check_all({
      {"active nozzles", feed.active_nozzles, 2834.65, six_digits, hand},
      {"data [Mbit/s]", feed.data.si() / 1e6, 28.3465, six_digits, hand},
      {"solid [mL/min]", in_ml_per_min(feed.solid), 60, identity, hand},
      {"peak [mL/min]", in_ml_per_min(feed.peak), 60, identity, hand},
      {"cables", station.cables, 4, identity, hand},
  });
  CHECK(feed.supply == "S-1");
  CHECK(feed.supplies == 2);
  CHECK(feed.bound_by == "flow");
  CHECK(feed.containers >= feed.supplies);
  const BoardUse& use = station.board_uses.front();
  CHECK(use.board == "B-1");
  CHECK(use.heads == 4);
  CHECK(use.heads_per_board == 2);
  CHECK(use.boards == 2);
  CHECK(station.boards == 2);
}

TEST_CASE("recirculation counts only in a head that recirculates") {
  StationCase c;
  c.catalogue.supplies.front().pump = given(ml_per_min(100));
  c.catalogue.heads.front().recirculation = given(ml_per_min(60));
  CHECK(size_station(c.job, c.catalogue, c.groups).feeds.front().supplies == 2);
  c.catalogue.heads.front().recirculates = given(true);
  const Station moved = size_station(c.job, c.catalogue, c.groups);
  // 60 + 4 x 60 = 300 mL/min by pumps of 100 mL/min.
  CHECK(moved.feeds.front().supplies == 3);
  CHECK(moved.feeds.front().bound_by == "pump");
  CHECK(support::near(in_ml_per_min(moved.feeds.front().recirculation), 240, identity));
}

TEST_CASE("what binds the number of supplies") {
  SupplyLimits limits;
  CHECK(bound_by(ml_per_min(10), 3, limits) == "one");
  limits.heads = 2;
  CHECK(bound_by(ml_per_min(10), 3, limits) == "heads");
  limits.flow = ml_per_min(2);
  CHECK(bound_by(ml_per_min(10), 3, limits) == "flow");
  limits.pump = ml_per_min(1);
  CHECK(bound_by(ml_per_min(10), 3, limits) == "pump");
}

TEST_CASE("the encoder of a line") {
  StationCase c;
  CHECK_FALSE(encoder_step(c.job).has_value());
  CHECK(size_station(c.job, c.catalogue, c.groups).encoder.empty());
  c.request.line.encoder_step = given(micrometres(5));
  c.job.pitch = exactly(millimetres(300));
  c.groups.front().resolution_along = dpi(600);
  const Station station = size_station(c.job, c.catalogue, c.groups);
  REQUIRE(station.encoder.size() == 1);
  const EncoderFit& fit = station.encoder.front();
  CHECK(fit.whole == 8);
  CHECK(fit.counts == 127);
  CHECK(fit.dots == 15);
  CHECK_FALSE(fit.whole_serves);
  support::check_all({
      {"whole [dpi]", in_dpi(fit.whole_resolution), 635, identity, hand},
      {"over 300 mm", in_mm(*fit.whole_residue), -16.5354, six_digits, hand},
      {"rate [kHz]", in_khz(fit.rate), 200, identity, hand},
      {"rounding [um]", in_um(fit.rounding), 1.44338, six_digits, hand},
  });
  CHECK(std::abs(in_um(*fit.fraction_residue)) < 1e-6);
}

TEST_CASE("an encoder with a wheel, and one that suits") {
  StationCase c;
  c.request.line.encoder_wheel = given(millimetres(200));
  c.request.line.encoder_counts = given(20000);
  CHECK(support::near(in_um(*encoder_step(c.job)), 31.4159265, 1e-8));
  c.request.line.encoder_wheel.reset();
  CHECK_FALSE(encoder_step(c.job).has_value());
  c.request.line.encoder_step = given(1.0 / dpi(3600));
  c.job.pitch = exactly(millimetres(500));
  const Station station = size_station(c.job, c.catalogue, c.groups);
  CHECK(station.encoder.front().whole == 10);
  CHECK(station.encoder.front().whole_serves);
  CHECK(station.encoder.front().dots == 1);
}

TEST_CASE("a carriage has its own encoder") {
  StationCase c;
  c.request.line.encoder_step = given(micrometres(5));
  c.set_scanning();
  CHECK(size_station(c.job, c.catalogue, c.groups).encoder.empty());
}
