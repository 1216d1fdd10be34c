#include "tests/calc/support/station_case.h"

#include <algorithm>

namespace support {

using namespace calc;

Given<Price> euro(double major) { return given(Price{to_money(major), "EUR"}); }

Part part(const std::string& name, PartKind kind, Per per, double price) {
  Part p;
  p.element = "part";
  p.name = name;
  p.kind = given(kind);
  p.per = given(per);
  if (price > 0) p.price = euro(price);
  return p;
}

namespace {

Head head() {
  Head h;
  h.element = "head";
  h.name = "H-1";
  h.part_number = given(std::string("100-1"));
  h.designation = given(std::string("head of the test"));
  h.price = euro(1000);
  h.lead_time = given(days(56));
  h.life = given(seconds(6000 * 3600.0));
  h.board = given(std::string("B-1"));
  h.supply = given(std::string("S-1"));
  h.families = given(std::vector{InkFamily::uv, InkFamily::aqueous});
  h.throw_nominal = given(millimetres(2));
  h.field_depth = given(millimetres(10));
  HeadMode mode;
  mode.name = "full";
  mode.colours = given(1);
  mode.nozzles = given(1000);
  mode.row_pitch = given(dpi(180));
  mode.row_offsets = given(std::vector{0.0, 0.5});
  h.modes.push_back(mode);
  return h;
}

Lamp lamp() {
  Lamp l;
  l.element = "lamp";
  l.name = "L-1";
  l.price = euro(500);
  l.irradiance = given(Irradiance::from_si(80000));
  l.shape = given(1.0);
  l.window_along = given(millimetres(20));
  l.window_across = given(millimetres(60));
  l.depth = given(millimetres(50));
  l.electrical = given(Power::from_si(1000));
  l.mercury = given(false);
  return l;
}

Catalogue small_catalogue() {
  Catalogue c;
  c.heads.push_back(head());
  Board board;
  board.element = "board";
  board.name = "B-1";
  board.price = euro(200);
  board.heads = given(2);
  c.boards.push_back(board);
  Supply supply;
  supply.element = "supply";
  supply.name = "S-1";
  supply.price = euro(300);
  supply.flow = given(VolumeFlow::from_si(50e-6 / 60));
  supply.heads = given(4);
  supply.container = given(litres(1));
  c.supplies.push_back(supply);
  c.lamps.push_back(lamp());
  c.parts.push_back(part("C-1", PartKind::cable, Per::head, 10));
  c.parts.push_back(part("M-1", PartKind::mount, Per::row, 20));
  return c;
}

Request small_request() {
  Request r;
  Ink ink;
  ink.name = "black";
  ink.family = given(InkFamily::uv);
  ink.cure_dose = given(Dose::from_si(3000));
  ink.price = euro(50);
  r.inks.push_back(ink);
  return r;
}

Group small_group() {
  Group g;
  g.name = "black";
  g.channels = {"black"};
  g.head = "H-1";
  g.mode = "full";
  g.heads_across = 2;
  g.stack = 2;
  g.heads_total = 4;
  g.joints = 3;
  g.nozzles = 1000;
  g.native = g.resolution_across = g.resolution_along = dpi(360);
  g.frequency_per_nozzle = hertz(5000);
  g.bits = 2;
  g.footprint = millimetres(200);
  g.jetting_temperature = Temperature::celsius(45);
  g.swath = millimetres(70);
  g.head_pitch = millimetres(69);
  g.speed_limit = metres_per_second(1.5);
  ChannelDots dots;
  dots.channel = "black";
  dots.drop = picolitres(50);
  dots.dot_diameter = micrometres(90);
  dots.cover_fraction = 0.97;
  dots.laydown = 10e-6;
  g.dots.push_back(dots);
  return g;
}

}  // namespace

StationCase::StationCase()
    : request(small_request()), catalogue(small_catalogue()), groups{small_group()} {
  job.request = &request;
  job.date = "2026-11-25";
  job.currency = "EUR";
  job.parameters.set(P::uptime, 1);
  job.width = exactly(millimetres(100));
  job.speed = exactly(metres_per_second(1));
  job.hours_per_day = exactly(seconds(16 * 3600.0));
  job.days_per_year = exactly(250.0);
  job.discount = exactly(0.08);
  job.years = 5;
  job.labour = exactly(40.0);
  job.energy = exactly(0.2);
  job.room = exactly(Temperature::celsius(25));
  Channel channel;
  channel.name = "black";
  channel.ink = &request.inks.front();
  channel.family = InkFamily::uv;
  channel.cover_mean = exactly(0.15);
  channel.cover_peak = exactly(1.0);
  job.channels.push_back(channel);
}

void StationCase::set_family(InkFamily family) {
  request.inks.front().family = given(family);
  for (Channel& channel : job.channels) channel.family = family;
}

void StationCase::set_scanning() {
  Group& group = groups.front();
  Scan scan;
  scan.heads_per_colour = group.heads_total;
  scan.advance = millimetres(50);
  scan.quality_passes = 1;
  scan.heads_along = millimetres(100);
  scan.stroke_time = seconds(2);
  scan.carriage_speed = metres_per_second(1);
  scan.machine_width = metres(2);
  scan.throughput = AreaRate::from_si(0.02);
  group.scan = scan;
  group.family = Family::scanning;
  job.speed.reset();
  job.throughput = exactly(scan.throughput);
}

Station station_of(const StationCase& c) { return size_station(c.job, c.catalogue, c.groups); }

bool warned(const Station& station, const std::string& code) {
  return std::any_of(station.warnings.begin(), station.warnings.end(),
                     [&](const Notice& n) { return n.code == code; });
}

}  // namespace support
