#include "calc/bom.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "calc/codes.h"
#include "calc/station.h"
#include "tests/calc/support/station_case.h"

using namespace calc;
using support::station_of;
using support::StationCase;

namespace {

/// The line of a row, or an empty one (item 0).
BomLine line_with(const Station& station, const std::string& source) {
  for (const BomLine& line : station.bom) {
    if (line.source == source) return line;
  }
  return {};
}
BomLine coded(const Station& station, const std::string& code) {
  for (const BomLine& line : station.bom) {
    if (line.code == code) return line;
  }
  return {};
}
std::vector<std::string> codes_of(const Station& station) {
  std::vector<std::string> list;
  for (const BomLine& line : station.bom) {
    if (!line.code.empty()) list.push_back(line.code);
  }
  return list;
}

}  // namespace

// Worked by hand, independently: 4 heads, 2 a board; peak 0.1 m x 1 m/s x 10 mL/m2 = 60 mL/min over
// 50 mL/min = 2 supplies; 3000 J/m2 over 0.8 x 80 kW/m2 x 20 mm / 1 m/s = 1280 J/m2 = 3 rows, 2
// windows of 60 mm across 100 mm = 6 lamps; 3 joints of 1 h.
TEST_CASE("bill of a small station, worked by hand") {
  const StationCase c;
  const Station s = station_of(c);
  REQUIRE(line_with(s, "head.H-1").item > 0);
  CHECK(line_with(s, "head.H-1").quantity == 4);
  CHECK(line_with(s, "head.H-1").extended_price->minor == 400000);
  CHECK(line_with(s, "head.H-1").part_number == "100-1");
  CHECK(line_with(s, "head.H-1").reference == "PH1..PH4");
  CHECK(line_with(s, "board.B-1").quantity == 2);
  CHECK(line_with(s, "supply.S-1").quantity == 2);
  CHECK(line_with(s, "part.C-1").quantity == 4);
  CHECK(line_with(s, "part.M-1").quantity == 2);
  CHECK(line_with(s, "lamp.L-1").quantity == 6);
  CHECK(coded(s, "alignment_hours").extended_price->minor == 12000);
  CHECK(coded(s, "alignment_hours").unit == "h");
  CHECK(coded(s, "first_fill").quantity == doctest::Approx(5));
  CHECK(coded(s, "first_fill").extended_price->minor == 25000);
  CHECK(coded(s, "spare_head").quantity == 2);
  // 4000 + 400 + 600 + 40 + 40 + 3000 + 120 + 250 + 2000
  CHECK(s.bom_total.minor == 1045000);
  // heater, degasser, filter, flush, cap, wipe, spittoon, strike sensor, encoder, product sensor,
  // controller, commissioning, training
  CHECK(s.bom_unpriced == 13);
  CHECK(s.cost.capital == s.bom_total);
  CHECK(s.lead_time->days == doctest::Approx(56));
  CHECK(s.lead_time->item == "100-1");
}

TEST_CASE("totals are the sum of the lines and items are numbered in order") {
  const StationCase c;
  const Station s = station_of(c);
  Money sum;
  int unpriced = 0;
  for (std::size_t i = 0; i < s.bom.size(); ++i) {
    CHECK(s.bom[i].item == static_cast<int>(i) + 1);
    if (s.bom[i].extended_price) sum = sum + *s.bom[i].extended_price;
    if (!s.bom[i].extended_price) ++unpriced;
  }
  CHECK(sum == s.bom_total);
  CHECK(unpriced == s.bom_unpriced);
}

TEST_CASE("a missing price is on request, never zero") {
  StationCase c;
  c.catalogue.heads.front().price.reset();
  const Station s = station_of(c);
  CHECK_FALSE(line_with(s, "head.H-1").unit_price);
  CHECK_FALSE(line_with(s, "head.H-1").extended_price);
  CHECK(s.bom_unpriced == 15);  // the heads and their spares beside the 13
  CHECK(s.bom_total.minor == 1045000 - 400000 - 200000);
}

TEST_CASE("a price in another currency is on request, with a warning") {
  StationCase c;
  c.catalogue.boards.front().price = exactly(Price{to_money(200), "USD"});
  const Station s = station_of(c);
  CHECK_FALSE(line_with(s, "board.B-1").unit_price);
  CHECK(s.bom_unpriced == 14);
  REQUIRE(std::any_of(s.warnings.begin(), s.warnings.end(), [](const Notice& n) {
    return n.code == "price_currency" && n.field == "board.B-1.price";
  }));
}

TEST_CASE("prices in another currency are told of once a currency, with their number") {
  StationCase c;
  c.catalogue.boards.front().price = exactly(Price{to_money(200), "USD"});
  c.catalogue.supplies.front().price = exactly(Price{to_money(200), "USD"});
  c.catalogue.lamps.front().price = exactly(Price{to_money(200), "GBP"});
  std::vector<Notice> told;
  for (const Notice& n : station_of(c).warnings) {
    if (n.code == "price_currency") told.push_back(n);
  }
  REQUIRE(told.size() == 2);
  const auto argument = [](const Notice& n, const std::string& name) {
    const auto found = std::find_if(n.args.begin(), n.args.end(),
                                    [&](const Arg& arg) { return arg.name == name; });
    return found == n.args.end() ? Arg() : *found;
  };
  for (const Notice& n : told) {
    const bool dollars = std::get<std::string>(argument(n, "currency").value) == "USD";
    CHECK(std::get<double>(argument(n, "prices").value) == (dollars ? 2 : 1));
    CHECK((argument(n, "subject").name == "subject") == dollars);
    CHECK(n.where.size() == 1);
  }
}

TEST_CASE("cheapest fitting part wins, priced before unpriced, catalogue order breaks ties") {
  StationCase c;
  auto& parts = c.catalogue.parts;
  parts.push_back(support::part("F-free", PartKind::filter, Per::supply, 0));
  parts.push_back(support::part("F-30", PartKind::filter, Per::supply, 30));
  parts.push_back(support::part("F-20a", PartKind::filter, Per::supply, 20));
  parts.push_back(support::part("F-20b", PartKind::filter, Per::supply, 20));
  CHECK(line_with(station_of(c), "part.F-20a").item > 0);
  parts[4].families = exactly(std::vector{InkFamily::solvent});
  CHECK(line_with(station_of(c), "part.F-20b").item > 0);
  parts[5].fits = exactly(std::vector<std::string>{"other"});
  CHECK(line_with(station_of(c), "part.F-30").item > 0);
  CHECK(line_with(station_of(c), "part.F-30").quantity == 2);
  parts[3].price.reset();
  CHECK(line_with(station_of(c), "part.F-free").item > 0);
}

TEST_CASE("quantity of a part follows what it is counted by") {
  StationCase c;
  const auto count = [&](Per per) {
    c.catalogue.parts.push_back(support::part("X", PartKind::cap, per, 5));
    const double quantity = line_with(station_of(c), "part.X").quantity;
    c.catalogue.parts.pop_back();
    return quantity;
  };
  CHECK(count(Per::station) == 1);
  CHECK(count(Per::head) == 4);
  CHECK(count(Per::row) == 2);
  CHECK(count(Per::channel) == 1);
  CHECK(count(Per::supply) == 2);
}

TEST_CASE("unused colour places are kept full of flush") {
  StationCase c;
  c.catalogue.parts.push_back(support::part("X", PartKind::flush, Per::channel, 5));
  c.groups.front().positions = 1;
  c.catalogue.heads.front().modes.front().colours = exactly(4);
  CHECK(line_with(station_of(c), "part.X").quantity == 4);
}

TEST_CASE("the first fill says its containers") {
  StationCase c;
  CHECK(coded(station_of(c), "first_fill").technical_data == "black; 5 x 1 L");
  c.catalogue.supplies.front().container.reset();
  CHECK(coded(station_of(c), "first_fill").technical_data == "black");
  CHECK(coded(station_of(c), "first_fill").quantity == doctest::Approx(5));  // 4.45 L a shift
}

TEST_CASE("one drive board serves heads of two groups") {
  StationCase c;
  c.groups.push_back(c.groups.front());
  c.groups[0].heads_total = 3;
  c.groups[1].heads_total = 3;
  CHECK(line_with(station_of(c), "board.B-1").quantity == 3);
  CHECK(line_with(station_of(c), "head.H-1").quantity == 6);
}

TEST_CASE("data rate of a board asks for more boards") {
  StationCase c;
  // 100 mm at 360 a inch = 1417.3 nozzles, stacked twice, 5 kHz, 2 bits = 28.35 Mbit/s
  c.catalogue.boards.front().data_rate = exactly(hertz(5e6));
  const Station s = station_of(c);
  CHECK(s.data_rate_bit_per_s == doctest::Approx(100 / 25.4 * 360 * 2 * 5000 * 2));
  CHECK(line_with(s, "board.B-1").quantity == 6);
}

TEST_CASE("heads and boards the catalogue does not tie together are listed on request") {
  StationCase c;
  c.catalogue.heads.front().board.reset();
  c.catalogue.supplies.front().families = exactly(std::vector{InkFamily::solvent});
  const Station s = station_of(c);
  REQUIRE(coded(s, "drive_board").item > 0);
  CHECK(coded(s, "drive_board").quantity == 4);
  CHECK_FALSE(coded(s, "drive_board").unit_price);
  CHECK(coded(s, "ink_supply").item > 0);
}

TEST_CASE("no supply stands on the bill that does not take the channel's ink family") {
  StationCase c;
  Supply& first = c.catalogue.supplies.front();
  first.families = exactly(std::vector{InkFamily::solvent});
  Supply dear = first;
  dear.name = "S-2";
  dear.price = support::euro(900);
  dear.families = exactly(std::vector{InkFamily::uv});
  c.catalogue.supplies.push_back(dear);
  CHECK(line_with(station_of(c), "supply.S-1").item == 0);  // though the head names it
  CHECK(line_with(station_of(c), "supply.S-2").item > 0);
  // Of two that take the family the one the head names, dearer or not, wherever it stands.
  c.catalogue.supplies.front().families = exactly(std::vector{InkFamily::uv});
  c.catalogue.heads.front().supply = exactly(std::string("S-2"));
  CHECK(line_with(station_of(c), "supply.S-2").item > 0);
  c.catalogue.heads.front().supply = exactly(std::string("S-3"));
  CHECK(line_with(station_of(c), "supply.S-1").item > 0);  // the cheapest
  for (Supply& supply : c.catalogue.supplies) {
    supply.families = exactly(std::vector{InkFamily::oil});
  }
  CHECK(coded(station_of(c), "ink_supply").item > 0);
  CHECK_FALSE(coded(station_of(c), "ink_supply").unit_price);
}

TEST_CASE("a line that has its encoder is not sold one") {
  StationCase c;
  CHECK(coded(station_of(c), "encoder").item > 0);
  c.request.line.encoder = exactly(std::string("measuring wheel"));
  CHECK(coded(station_of(c), "encoder").item == 0);
}

TEST_CASE("a line serves only what the request states, or what stands behind it") {
  StationCase c;
  const auto state = [&](const char* key) {
    Input input;
    input.key = key;
    c.request.inputs.push_back(input);
  };
  CHECK(line_with(station_of(c), "head.H-1").serves.empty());
  state("line.throughput");
  state("substrate.width");
  state("image.smallest_text");
  state("image.viewing_distance");
  state("ink.black.family");
  c.job.required.governed_by = "text";
  using Keys = std::vector<std::string>;
  CHECK(line_with(station_of(c), "head.H-1").serves ==
        Keys{"substrate.width", "image.smallest_text", "line.throughput"});
  CHECK(line_with(station_of(c), "supply.S-1").serves ==
        Keys{"ink.black.family", "line.throughput"});
  state("image.resolution");
  state("line.speed");
  CHECK(line_with(station_of(c), "head.H-1").serves ==
        Keys{"substrate.width", "image.resolution", "line.speed"});
}

TEST_CASE("an ink supply serves the inks it feeds, and commissioning no single demand") {
  StationCase c;
  for (const char* key : {"ink.black.family", "ink.other.family", "line.speed"}) {
    Input input;
    input.key = key;
    c.request.inputs.push_back(input);
  }
  Row first, second;
  Need of_first, of_second;
  first.element = second.element = "supply";
  first.name = "S-1";
  second.name = "S-2";
  Ink other = *c.job.channels.front().ink;
  other.name = "other";
  c.job.channels.push_back(c.job.channels.front());
  c.job.channels.back().ink = &other;
  of_first.code = of_second.code = PartCode::ink_supply;
  of_first.item.row = &first;
  of_second.item.row = &second;
  Need commissioning;
  commissioning.code = PartCode::commissioning;
  const std::vector<BomLine> lines =
      bom_lines(c.job, c.groups, {of_first, of_second, commissioning}, {{0, &first}, {1, &second}});
  using Keys = std::vector<std::string>;
  REQUIRE(lines.size() == 3);
  CHECK(lines[0].serves == Keys{"ink.black.family", "line.speed"});
  CHECK(lines[1].serves == Keys{"ink.other.family", "line.speed"});
  CHECK(lines[2].serves.empty());
}

TEST_CASE("what is unpriced is named, heads above all") {
  StationCase c;
  Station s = station_of(c);
  CHECK_FALSE(s.heads_unpriced);
  CHECK_FALSE(s.cost.heads_unpriced);
  const auto named = [&](const char* name) {
    return std::count(s.unpriced_items.begin(), s.unpriced_items.end(), name);
  };
  CHECK(named("controller") == 1);
  CHECK(named("head of the test") == 0);
  c.catalogue.heads.front().price.reset();
  s = station_of(c);
  CHECK(s.heads_unpriced);
  CHECK(s.cost.heads_unpriced);
  CHECK(s.cost.heads_per_year.minor == 0);
  CHECK(named("head of the test") == 1);  // heads and their spares are one item
}

TEST_CASE("the lead time says how many parts state none") {
  StationCase c;
  // Only the head states one: board, cable, supply, mount, lamp and the 13 without price do not.
  CHECK(station_of(c).lead_time->lead_time_unknown == 18);
  c.catalogue.lamps.front().lead_time = exactly(days(7));
  CHECK(station_of(c).lead_time->lead_time_unknown == 17);
}

TEST_CASE("ink with a flash point below 23 degrees asks for exhaust whatever its family") {
  StationCase c;
  c.set_family(InkFamily::oil);
  CHECK(coded(station_of(c), "exhaust").item == 0);
  c.request.inks.front().flash_point = exactly(Temperature::celsius(22));
  CHECK(coded(station_of(c), "exhaust").item > 0);
  c.request.inks.front().flash_point = exactly(Temperature::celsius(23));
  CHECK(coded(station_of(c), "exhaust").item == 0);
  c.set_family(InkFamily::solvent);
  CHECK(coded(station_of(c), "exhaust").item > 0);
}

TEST_CASE("heater and chiller by jetting temperature") {
  StationCase c;
  const auto has = [&](const char* code) { return coded(station_of(c), code).item > 0; };
  CHECK(has("heater"));
  CHECK_FALSE(has("chiller"));
  c.groups.front().jetting_temperature = Temperature::celsius(25);
  CHECK_FALSE(has("heater"));
  CHECK(has("chiller"));
  c.groups.front().jetting_temperature.reset();
  CHECK_FALSE(has("heater"));
  CHECK_FALSE(has("chiller"));
}

TEST_CASE("pre-treatment where the substrate's energy is below the ink's tension and the margin") {
  StationCase c;
  c.request.inks.front().surface_tension = exactly(millinewtons_per_metre(28));
  c.request.substrate.surface_energy = exactly(millinewtons_per_metre(38));
  CHECK(coded(station_of(c), "pretreatment").item == 0);
  c.request.substrate.surface_energy = exactly(millinewtons_per_metre(37));
  CHECK(coded(station_of(c), "pretreatment").item > 0);
}

TEST_CASE("technical data are the row's own fields as written, of the mode in use") {
  StationCase c;
  Head& head = c.catalogue.heads.front();
  const auto input = [](const char* key, const char* raw) {
    Input i;
    i.key = key;
    i.origin.raw = raw;
    return i;
  };
  head.inputs = {input("head.H-1.lead_time", "8 weeks"), input("head.H-1.half.drops", "9 pL"),
                 input("head.H-1.full.drops", "50 pL"), input("head.H-1.full.nozzles", "1000")};
  CHECK(line_with(station_of(c), "head.H-1").technical_data == "nozzles 1000; drops 50 pL");
}

TEST_CASE("every part code is produced") {
  std::vector<std::string> seen;
  const auto take = [&](const StationCase& c) {
    for (const std::string& code : codes_of(station_of(c))) seen.push_back(code);
  };
  StationCase bare;
  bare.catalogue.parts = {support::part("A-1", PartKind::alignment, Per::station, 5)};
  bare.catalogue.heads.front().designation.reset();
  bare.catalogue.boards.clear();
  bare.catalogue.supplies.clear();
  bare.catalogue.lamps.clear();
  take(bare);
  bare.groups.front().jetting_temperature = Temperature::celsius(25);
  bare.set_family(InkFamily::aqueous);
  bare.job.absorbency = Absorbency::none;
  take(bare);
  bare.set_family(InkFamily::solvent);
  take(bare);
  for (const std::string_view code : part_codes()) {
    CAPTURE(code);
    CHECK(std::find(seen.begin(), seen.end(), code) != seen.end());
  }
}
