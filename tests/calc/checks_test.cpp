#include "calc/checks.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "calc/codes.h"
#include "calc/placement.h"
#include "calc/station.h"
#include "tests/calc/support/station_case.h"

using namespace calc;
using support::StationCase;

namespace {

std::vector<Check> checks_of(const StationCase& c) {
  return checks(c.job, c.catalogue, c.groups, size_station(c.job, c.catalogue, c.groups));
}

/// The first check of a code, or an empty one.
Check find(const std::vector<Check>& list, const std::string& code) {
  for (const Check& check : list) {
    if (check.code == code) return check;
  }
  return {};
}

void fill_everything(StationCase& c) {
  c.job.channels.front().film = exactly(micrometres(8));
  c.job.channels.push_back(c.job.channels.front());
  c.job.channels.back().name = "cyan";
  c.groups.front().channels.emplace_back("cyan");
  c.groups.front().dots.push_back(c.groups.front().dots.front());
  c.groups.front().dots.back().channel = "cyan";
  c.groups.front().viscosity = millipascal_seconds(10);
  BarcodeFit fit;
  fit.symbol = "ean13";
  fit.module_printed = micrometres(330);
  c.groups.front().barcodes.push_back(fit);
  c.request.inks.front().surface_tension = exactly(millinewtons_per_metre(28));
  c.request.substrate.surface_energy = exactly(millinewtons_per_metre(30));
  c.request.substrate.temperature_limit = exactly(Temperature::celsius(60));
  c.request.substrate.food_contact = exactly(true);
  c.request.substrate.material = exactly(std::string("film"));
  c.job.radius = millimetres(30);
}

}  // namespace

TEST_CASE("no arrangement, nothing to check") {
  StationCase c;
  CHECK(checks(c.job, c.catalogue, {}, Station()).empty());
}

TEST_CASE("a print that the substrate takes in is rubbed, not cut") {
  StationCase c;
  c.job.absorbency = Absorbency::low;
  CHECK(*find(checks_of(c), "adhesion").acceptance == doctest::Approx(1));
  CHECK(find(checks_of(c), "rub").code.empty());
  c.job.absorbency = Absorbency::high;
  CHECK(find(checks_of(c), "adhesion").code.empty());
  CHECK(*find(checks_of(c), "rub").acceptance == doctest::Approx(10));
}

TEST_CASE("acceptance figures come from the calculation") {
  StationCase c;
  fill_everything(c);
  const std::vector<Check> list = checks_of(c);
  CHECK(*find(list, "compatibility").acceptance == doctest::Approx(45));
  CHECK(find(list, "compatibility").subject == "black / H-1");  // one ink in both channels
  CHECK(*find(list, "viscosity").acceptance == doctest::Approx(10));
  CHECK(*find(list, "drop_watching").acceptance == doctest::Approx(50));
  CHECK(*find(list, "frequency").acceptance == doctest::Approx(5));
  // The dot that closes a solid at 360 per inch, sqrt(2) pitches: the likely one of 90 um does not.
  CHECK(*find(list, "dot_diameter").acceptance == doctest::Approx(99.7798));
  CHECK(find(list, "solids_close").subject == "black, cyan");
  CHECK(*find(list, "film").acceptance == doctest::Approx(8));  // as asked, not the 10 laid
  CHECK(*find(list, "dead_nozzles").acceptance == 1);
  CHECK(find(list, "dead_nozzles").unit == "of 1000 nozzles");
  CHECK(*find(list, "registration").acceptance == doctest::Approx(25400.0 / 360));
  CHECK(*find(list, "stitch").acceptance == doctest::Approx(12700.0 / 360));
  CHECK(*find(list, "wetting").acceptance == doctest::Approx(38));
  CHECK(*find(list, "cure_at_speed").acceptance == doctest::Approx(300));
  CHECK(*find(list, "barcode_module").acceptance == doctest::Approx(330));
  CHECK(*find(list, "web_temperature").acceptance == doctest::Approx(60));
  // 2 mm nominal and the arc of 10 mm on a radius of 30 mm, 0.4196 mm (closed form).
  CHECK(*find(list, "throw_trial").acceptance == doctest::Approx(2.41960798));
  CHECK(*find(list, "ink_consumption").acceptance == doctest::Approx(2 * 556.2));
  CHECK_FALSE(find(list, "migration").acceptance);
}

TEST_CASE("a limit of one axis of one group is not said of both axes of another") {
  StationCase c;
  fill_everything(c);
  Group& one = c.groups.front();
  one.resolution_across = one.resolution_along = dpi(600);
  Group other = one;
  other.name = "other";
  other.resolution_across = dpi(800);
  const std::string name = one.name;
  c.groups.push_back(other);
  std::vector<std::string> stitches;
  for (const Check& check : checks_of(c)) {
    if (check.code == "stitch") stitches.push_back(check.subject + ":" + check.axis);
  }
  const std::vector<std::string> wanted{name + ":both", "other:across", "other:along"};
  CHECK(stitches == wanted);
}

TEST_CASE("the module of a bar code is of an axis, of both where they print alike") {
  StationCase c;
  fill_everything(c);
  CHECK(find(checks_of(c), "barcode_module").axis == "along");
  CHECK(find(checks_of(c), "film").axis.empty());
  BarcodeFit across = c.groups.front().barcodes.front();
  across.across = true;
  c.groups.front().barcodes.push_back(across);
  CHECK(find(checks_of(c), "barcode_module").axis == "both");
  c.groups.front().barcodes.back().module_printed = micrometres(300);
  std::vector<std::string> axes;
  for (const Check& check : checks_of(c)) {
    if (check.code == "barcode_module") axes.push_back(check.axis);
  }
  CHECK(axes == std::vector<std::string>{"along", "across"});
}

TEST_CASE("channels that ask the same share a check, others keep theirs") {
  StationCase c;
  fill_everything(c);
  Ink blue = c.request.inks.front();
  blue.name = "blue";
  c.request.inks.push_back(blue);  // moves the inks
  c.job.channels[0].ink = c.request.inks.data();
  c.job.channels[1].ink = c.request.inks.data() + 1;
  std::vector<Check> list = checks_of(c);
  CHECK(find(list, "compatibility").subject == "black, blue / H-1");
  const auto count = [&](const char* code) {
    return std::count_if(list.begin(), list.end(), [&](const Check& k) { return k.code == code; });
  };
  CHECK(count("dot_diameter") == 1);
  c.job.solids = false;
  c.groups.front().dots.back().dot_diameter = micrometres(80);
  list = checks_of(c);
  CHECK(count("dot_diameter") == 2);
  CHECK(count("drop_watching") == 1);
}

// 556.2 mL/h of black at 15 % mean cover, a third of it of cyan at 5 %: by hand.
TEST_CASE("the ink used is weighed once for all channels, whatever each of them takes") {
  StationCase c;
  fill_everything(c);
  c.job.channels.back().cover_mean = exactly(0.05);
  const std::vector<Check> list = checks_of(c);
  CHECK(std::count_if(list.begin(), list.end(),
                      [](const Check& k) { return k.code == "ink_consumption"; }) == 1);
  CHECK(find(list, "ink_consumption").subject == "black, cyan");
  CHECK(*find(list, "ink_consumption").acceptance == doctest::Approx(556.2 * 4 / 3));
}

TEST_CASE("where solids must close, nothing but what closes is accepted, however the dots came") {
  StationCase c;
  for (const double um : {60.0, 90.0, 140.0}) {
    c.groups.front().dots.front().dot_diameter = micrometres(um);
    c.groups.front().dots.front().cover_fraction = um > 99.7798 ? 1 : 0.8;
    CHECK(*find(checks_of(c), "dot_diameter").acceptance == doctest::Approx(99.7798));
    CHECK(*find(checks_of(c), "solids_close").acceptance == 100);
    CHECK(find(checks_of(c), "solid_cover").code.empty());
  }
}

TEST_CASE("solids that need not close: cover as calculated, never above") {
  StationCase c;
  c.job.solids = false;
  CHECK(*find(checks_of(c), "dot_diameter").acceptance == doctest::Approx(90));
  double& cover = c.groups.front().dots.front().cover_fraction;
  cover = 0.93199;
  CHECK(*find(checks_of(c), "solid_cover").acceptance == doctest::Approx(93.1));
  cover = 1;
  CHECK(find(checks_of(c), "solid_cover").code.empty());
  CHECK(*find(checks_of(c), "solids_close").acceptance == 100);
}

TEST_CASE("a joint has the limit of each axis") {
  StationCase c;
  c.groups.front().resolution_along = dpi(720);
  std::vector<Check> stitches;
  for (const Check& check : checks_of(c)) {
    if (check.code == "stitch") stitches.push_back(check);
  }
  REQUIRE(stitches.size() == 2);
  CHECK(stitches.front().axis == "across");
  CHECK(*stitches.front().acceptance == doctest::Approx(12700.0 / 360));
  CHECK(stitches.back().axis == "along");
  CHECK(*stitches.back().acceptance == doctest::Approx(12700.0 / 720));
}

TEST_CASE("a joint seen from close by must be finer than half a pitch") {
  StationCase c;
  // Ten seconds of arc at 0.4 m are 19.4 um, half a pitch at 360 per inch 35.3 um.
  c.request.image.viewing_distance = exactly(metres(0.4));
  CHECK(*find(checks_of(c), "stitch").acceptance == doctest::Approx(19.3925).epsilon(1e-5));
  c.groups.front().joints = 0;
  CHECK(find(checks_of(c), "stitch").code.empty());
  c.groups.front().scan.emplace();  // a carriage joins its strokes, be it of one head
  CHECK(find(checks_of(c), "stitch").code.empty());
  CHECK(*find(checks_of(c), "strokes").acceptance == doctest::Approx(19.3925).epsilon(1e-5));
}

TEST_CASE("an asked registration is the one checked") {
  StationCase c;
  CHECK(find(checks_of(c), "registration").code.empty());
  c.request.image.registration = exactly(micrometres(50));
  CHECK(*find(checks_of(c), "registration").acceptance == doctest::Approx(50));
  CHECK(find(checks_of(c), "registration").axis.empty());
}

TEST_CASE("the angle of tilted heads is measured to half a pitch, that of straight ones is not") {
  StationCase c;
  fill_everything(c);
  CHECK(find(checks_of(c), "tilt").code.empty());
  c.groups.front().family = Family::tilted;
  CHECK(*find(checks_of(c), "tilt").acceptance == doctest::Approx(12700.0 / 360));
  CHECK(find(checks_of(c), "tilt").subject == "H-1");
  CHECK(find(checks_of(c), "row_delays").code.empty());
  c.groups.front().row_delays.resize(2);
  CHECK(*find(checks_of(c), "row_delays").acceptance == doctest::Approx(12700.0 / 360));
}

TEST_CASE(
    "where columns of tilted heads stand apart farther than their pitch the dot closes that") {
  StationCase c;
  c.job.solids = true;
  c.groups.front().wider = micrometres(5);
  const double pitch = 25400.0 / 360;
  CHECK(*find(checks_of(c), "dot_diameter").acceptance ==
        doctest::Approx(std::hypot(pitch + 5, pitch)));
}

TEST_CASE("the registration checked is the limit the budget is judged by") {
  StationCase c;
  fill_everything(c);
  c.groups.front().resolution_along = dpi(720);
  const Check check = find(checks_of(c), "registration");
  CHECK(check.axis.empty());
  CHECK(*check.acceptance == doctest::Approx(in_um(registration_limit(c.job, c.groups))));
  CHECK(*check.acceptance == doctest::Approx(25400.0 / 360));
}

// Vapours that act alike: the sum of C/limit is at most 1 (safety.md 4.1 [P]), not one limit of
// all.
TEST_CASE("several vapours are measured each by its own limit, and what is captured by its least") {
  StationCase c;
  c.set_family(InkFamily::solvent);
  Ink& ink = c.request.inks.front();
  ink.solvent = exactly(std::string("MEK"));
  ink.solvents = {{"MEK", 1}};
  ink.solvent_share = exactly(0.7);
  CHECK(*find(checks_of(c), "vapour_at_workplace").acceptance == doctest::Approx(200));
  CHECK(find(checks_of(c), "capture").code.empty());
  ink.solvents = {{"MEK", 0.8}, {"cyclohexanone", 0.2}};
  c.request.line.enclosed = exactly(true);
  CHECK(find(checks_of(c), "vapour_at_workplace").code.empty());
  CHECK(*find(checks_of(c), "vapours_at_workplace").acceptance == 1);
  CHECK(find(checks_of(c), "vapours_at_workplace").subject == "MEK, cyclohexanone");
  CHECK(*find(checks_of(c), "capture").acceptance == doctest::Approx(80));
  ink.exposure_limit = exactly(50.0);
  CHECK(*find(checks_of(c), "vapour_at_workplace").acceptance == doctest::Approx(50));
}

TEST_CASE("every check code is produced, in the order of the list") {
  StationCase c;
  fill_everything(c);
  std::vector<Check> seen = checks_of(c);
  const auto codes = check_codes();
  CHECK(std::is_sorted(seen.begin(), seen.end(), [&](const Check& a, const Check& b) {
    return std::find(codes.begin(), codes.end(), a.code) <
           std::find(codes.begin(), codes.end(), b.code);
  }));
  c.job.solids = false;
  c.groups.front().family = Family::tilted;
  c.groups.front().row_delays.resize(2);
  for (const Check& check : checks_of(c)) seen.push_back(check);
  c.groups.front().scan.emplace();
  for (const InkFamily family : {InkFamily::aqueous, InkFamily::solvent, InkFamily::oil}) {
    c.set_family(family);
    for (const Check& check : checks_of(c)) seen.push_back(check);
  }
  c.set_family(InkFamily::solvent);
  c.request.inks.front().solvents = {{"MEK", 0.8}, {"ethanol", 0.2}};
  c.request.line.enclosed = exactly(true);
  c.job.absorbency = Absorbency::high;
  for (const Check& check : checks_of(c)) seen.push_back(check);
  for (const std::string_view code : codes) {
    CAPTURE(code);
    CHECK_FALSE(find(seen, std::string(code)).code.empty());
  }
}
