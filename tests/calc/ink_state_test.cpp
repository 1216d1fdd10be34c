#include "calc/ink_state.h"

#include <doctest/doctest.h>

#include <cmath>

#include "calc/settling.h"
#include "tests/calc/support/catalogue_maker.h"
#include "tests/calc/support/check.h"

using namespace calc;
using made::given;
using support::identity;
using support::six_digits;

namespace {

constexpr const char* closed = "definition, computed independently";

/// A UV-like ink of 1050 kg/m3, 28 mN/m, 10 mPa.s at 45 degC in a nozzle of 20 um at 6 m/s.
struct Made {
  Request request = made::plain_request();
  Catalogue catalogue = made::catalogue_of({made::plain_head("A")});
  Job job;
  Group group;

  Made() {
    Ink& ink = request.inks.front();
    ink.density = given(Density::from_si(1050));
    ink.surface_tension = given(millinewtons_per_metre(28));
    points({{millipascal_seconds(20), Temperature::celsius(25)},
            {millipascal_seconds(10), Temperature::celsius(45)}});
    Head& head = catalogue.heads.front();
    head.nozzle_diameter = given(micrometres(20));
    head.viscosity = given(millipascal_seconds(10));
    group.name = "black";
    group.channels = {"black"};
    group.head = "A";
    group.jetting_temperature = Temperature::celsius(45);
    group.viscosity = millipascal_seconds(10);
    ChannelDots dots;
    dots.channel = "black";
    dots.drop = picolitres(10);
    dots.drop_diameter = micrometres(26.7301);
    group.dots.push_back(dots);
    group.flight.emplace();
    group.flight->levels.front().start = metres_per_second(6);
    group.flight->levels.front().nominal = Landing{metres_per_second(6), seconds(1e-4)};
  }
  void points(std::vector<ViscosityPoint> list) {
    request.inks.front().viscosity = given(std::move(list));
  }
  Ink& ink() { return request.inks.front(); }
  InkInHead state() {
    job = resolve(request, catalogue, "2026-11-20");
    return inks_in_heads(job, catalogue, {group}).at(0);
  }
};

bool holds(const InkInHead& ink, const std::string& name) {
  for (const WindowVerdict& window : ink.windows) {
    if (window.name == name) return window.pass;
  }
  FAIL("no window " << name);
  return false;
}

}  // namespace

TEST_CASE("the numbers of an ink in a head are those of the sheet") {
  Made made;
  const InkInHead ink = made.state();
  REQUIRE(ink.z.has_value());
  support::check_all({
      {"Re", *ink.re, 12.6, identity, closed},
      {"We", *ink.we, 27, identity, closed},
      {"Oh", *ink.oh, 0.412393, six_digits, closed},
      {"Z", *ink.z, 2.424871, six_digits, closed},
      {"least speed", ink.least_speed->si(), 2.309401, six_digits, "Lee J.M. et al. 2023 p. 201"},
      {"K", *ink.splash, 12.1689, six_digits, closed},
      {"shear at the wall", ink.shear_rate->si(), 2.4e6, identity, closed},
      {"particles", in_um(*ink.particle_most), 0.4, identity, "rule of thumb"},
  });
  CHECK(ink.temperature_from == "nominal");
  CHECK(ink.viscosity_from == "arrhenius");
  CHECK_FALSE(ink.sheared.has_value());
  CHECK(holds(ink, "Fromm"));
  CHECK(holds(ink, "Reis and Derby"));
  CHECK_FALSE(holds(ink, "Jang"));
  CHECK_FALSE(holds(ink, "Lee"));
}

TEST_CASE("what is not known stays unknown") {
  Made made;
  made.ink().surface_tension.reset();
  InkInHead ink = made.state();
  CHECK(ink.re.has_value());
  CHECK_FALSE(ink.we.has_value());
  CHECK_FALSE(ink.z.has_value());
  CHECK(ink.windows.empty());
  Made cold;
  cold.group.jetting_temperature = Temperature::celsius(50);
  cold.group.viscosity.reset();
  ink = cold.state();
  CHECK(ink.viscosity_from == "outside");
  CHECK_FALSE(ink.viscosity.has_value());
  CHECK(ink.we.has_value());
  CHECK_FALSE(ink.re.has_value());
  Made none;
  none.ink().viscosity.reset();
  CHECK(none.state().viscosity_from == "unknown");
  Made blind;
  blind.catalogue.heads.front().nozzle_diameter.reset();
  ink = blind.state();
  CHECK_FALSE(ink.oh.has_value());
  CHECK_FALSE(ink.shear_rate.has_value());
  CHECK_FALSE(ink.particle_most.has_value());
  Made light;
  light.ink().density.reset();
  ink = light.state();
  CHECK(ink.density_assumed);
  CHECK(ink.density.si() == 1050);
}

TEST_CASE("the largest drop in use sets the speeds, at the nozzle and on impact") {
  Made made;
  made.group.flight->levels_used = 2;
  made.group.flight->levels[1].start = metres_per_second(8);
  made.group.flight->levels[1].nominal = Landing{metres_per_second(7), seconds(1e-4)};
  const InkInHead ink = made.state();
  // Re ~ v; K ~ v^1.25 (sheet, section 3: Re 12.6 and K 12.1689 at 6 m/s).
  support::check_all({
      {"Re", *ink.re, 12.6 * 8 / 6, identity, closed},
      {"K", *ink.splash, 12.1689 * std::pow(7.0 / 6, 1.25), six_digits, closed},
  });
  made.group.flight->levels[1].nominal.reset();
  CHECK_FALSE(made.state().splash.has_value());
  made.group.flight.reset();
  CHECK_FALSE(made.state().speed.has_value());
  CHECK_FALSE(made.state().re.has_value());
  CHECK(made.state().oh.has_value());
}

TEST_CASE("where a jetting temperature comes from") {
  Made asked;
  asked.ink().jetting_temperature = given(Temperature::celsius(45));
  CHECK(asked.state().temperature_from == "given");
  Made near_it;
  near_it.catalogue.heads.front().viscosity = given(millipascal_seconds(8));
  CHECK(near_it.state().temperature_from == "nearest");
  Made centre;
  centre.catalogue.heads.front().viscosity.reset();
  centre.catalogue.heads.front().viscosity_window =
      made::between(millipascal_seconds(8), millipascal_seconds(12));
  CHECK(centre.state().temperature_from == "centre");
  Made unknown;
  unknown.group.jetting_temperature.reset();
  CHECK(unknown.state().temperature_from == "unknown");
}

TEST_CASE("a viscosity known at shear decides the windows") {
  Made made;
  made.ink().shear_index = given(0.6);
  made.ink().shear_time = given(seconds(1e-4));
  made.ink().shear_share = given(0.5);
  const InkInHead ink = made.state();
  REQUIRE(ink.z_sheared.has_value());
  CHECK(*ink.sheared < *ink.viscosity);
  CHECK(*ink.sheared > *ink.viscosity * 0.5);
  CHECK(*ink.z_sheared > *ink.z);
  CHECK(*ink.shear_rate > hertz(2.4e6));
  CHECK(*ink.flow_index < 1);
  CHECK(holds(ink, "Lee"));
}

TEST_CASE("three points make the law of Vogel, Fulcher and Tammann") {
  Made made;
  made.points({{millipascal_seconds(20), Temperature::celsius(25)},
               {millipascal_seconds(13), Temperature::celsius(35)},
               {millipascal_seconds(10), Temperature::celsius(45)}});
  CHECK(made.state().viscosity_from == "vogel");
  Made point;
  point.points({{millipascal_seconds(10), Temperature::celsius(45)}});
  CHECK(point.state().viscosity_from == "point");
}

TEST_CASE("whether an ink settles") {
  Made made;
  CHECK_FALSE(made.state().settles.has_value());
  CHECK(made.state().settles_from == "unknown");
  made.ink().particle_size = given(micrometres(0.25));
  made.ink().particle_density = given(Density::from_si(4230));
  InkInHead ink = made.state();
  CHECK(ink.settles == true);
  CHECK(ink.settles_from == "computed");
  // 0.950264 mm/day in water-like 1000 kg/m3; here the ink weighs 1050 (sheet, section 13).
  CHECK(support::near(ink.settling->si() * 86400e3, 0.950264 * 3180 / 3230, six_digits));
  made.ink().particle_share = given(0.1);
  CHECK(support::near(made.state().settling->si() / ink.settling->si(), 0.612672, six_digits));
  made.ink().particle_size = given(micrometres(0.12));
  made.ink().particle_density = given(Density::from_si(1500));
  CHECK(made.state().settles == false);
  made.ink().settles = given(true);
  ink = made.state();
  CHECK(ink.settles == true);
  CHECK(ink.settles_from == "given");
  made.ink().settles.reset();
  made.ink().particle_density = given(Density::from_si(1050));
  CHECK(made.state().settles == false);
  CHECK_FALSE(made.state().settling_height.has_value());
}

TEST_CASE("an ink that settles by its figures asks for a head that recirculates") {
  Made made;
  made.ink().particle_size = given(micrometres(0.25));
  made.ink().particle_density = given(Density::from_si(4230));
  CHECK(settles(resolve(made.request, made.catalogue, "2026-11-20"), made.ink()) == true);
  made.ink().settles = given(false);
  CHECK(settles(resolve(made.request, made.catalogue, "2026-11-20"), made.ink()) == false);
}

TEST_CASE("inks that agree in every figure are one") {
  Made made;
  const InkInHead a = made.state();
  InkInHead b = a;
  b.channel = b.ink = "other";
  CHECK(same_figures(a, b));
  b.splash = *a.splash * 1.01;
  CHECK_FALSE(same_figures(a, b));
}
