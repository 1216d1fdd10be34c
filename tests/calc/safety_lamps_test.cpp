// Safety notes of lamps: light, ozone, stray light.
#include <doctest/doctest.h>

#include <cmath>

#include "tests/calc/support/notes.h"

using namespace calc;
using support::has;
using support::notes_of;
using support::number;
using support::StationCase;
using support::words;

TEST_CASE("diode lamps make no ozone, arc lamps do") {
  StationCase c;
  std::vector<Notice> notes = notes_of(c);
  CHECK(has(notes, "uv_led"));
  CHECK_FALSE(has(notes, "ozone"));
  CHECK_FALSE(has(notes, "mercury_waste"));
  CHECK(has(notes, "lamp_interlock"));
  CHECK(has(notes, "uncured_ink"));
  CHECK_FALSE(has(notes, "cure_dose_unknown"));
  c.catalogue.lamps.front().mercury = exactly(true);
  notes = notes_of(c);
  CHECK(has(notes, "uv_arc"));
  CHECK(number(notes, "uv_arc", "lamps") == 6);
  CHECK(number(notes, "ozone", "limit") == doctest::Approx(0.1));  // OSHA PEL
  CHECK(has(notes, "mercury_waste"));
}

// 10 kJ/m2 a day on the eye (2006/25/EC Annex I) over 8 W/cm2 at the window: 0.125 s.
TEST_CASE("photobiological note by the lamp's own irradiance") {
  StationCase c;
  const auto lit = [&](double nm) {
    c.catalogue.lamps.front().wavelength = exactly(Length::from_si(nm * 1e-9));
    return notes_of(c);
  };
  CHECK(number(lit(395), "photobiological", "time") == doctest::Approx(0.125));
  CHECK(number(lit(395), "photobiological", "irradiance") == doctest::Approx(8));
  CHECK(number(lit(395), "photobiological", "group") == 3);
  CHECK(words(lit(395), "photobiological", "subject").empty());
  // Below 315 nm the actinic limit: 30 J/m2 over 8 W/cm2 weighted 0.88 at 280 nm.
  CHECK(words(lit(280), "photobiological", "subject") == "actinic");
  CHECK(number(lit(280), "photobiological", "time") ==
        doctest::Approx(30 / (8e4 * 0.88)).epsilon(1e-6));
  CHECK(words(lit(314), "photobiological", "subject") == "actinic");
  CHECK(words(lit(316), "photobiological", "subject").empty());
  // 405 nm lies outside the table: said and asked, no time is given.
  CHECK(words(lit(405), "photobiological", "subject") == "visible");
  CHECK(number(lit(405), "photobiological", "time") == -1);
  CHECK_FALSE(has(lit(405), "stray_light"));
  c.catalogue.lamps.front().wavelength.reset();
  CHECK(words(notes_of(c), "photobiological", "subject") == "unknown");
  c.catalogue.lamps.front().mercury = exactly(true);
  CHECK(words(lit(365), "photobiological", "subject") == "arc");
}

// Six lamps of 8 W/cm2 over 20 mm x 60 mm scatter 0.3 x 576 W; at 0.5 m that is 220.0 W/m2 and
// 10 kJ/m2 come in 45.45 s. Worked by hand.
TEST_CASE("stray light by the lamps lit") {
  StationCase c;
  c.catalogue.lamps.front().wavelength = exactly(Length::from_si(395e-9));
  const double e = 0.3 * 576 / (3.14159265358979 * 0.25);
  CHECK(number(notes_of(c), "stray_light", "time") == doctest::Approx(1e4 / e));
  CHECK(number(notes_of(c), "stray_light", "safe") ==
        doctest::Approx(0.5 * std::sqrt(e * 28800 / 1e4)));
  CHECK(number(notes_of(c), "stray_light", "density") == doctest::Approx(std::log10(e * 2.88)));
  // Nine tenths scattered, three times the share assumed, is the unfavourable end.
  CHECK(number(notes_of(c), "stray_light", "share") == doctest::Approx(30));
  CHECK(number(notes_of(c), "stray_light", "worst_share") == doctest::Approx(90));
  CHECK(number(notes_of(c), "stray_light", "safe_worst") ==
        doctest::Approx(0.5 * std::sqrt(3 * e * 28800 / 1e4)));
  CHECK(number(notes_of(c), "stray_light", "density_worst") ==
        doctest::Approx(std::log10(3 * e * 2.88)));
  // At 0.1 m a point of 0.9 x 576 W would give 16.5 kW/m2; nine tenths of 8 W/cm2 are more.
  CHECK(number(notes_of(c), "stray_light", "near") == doctest::Approx(0.1));
  CHECK(number(notes_of(c), "stray_light", "density_near") ==
        doctest::Approx(std::log10(3 * e * 25 * 2.88)));
}

TEST_CASE("a UV ink of unknown flash point is stored as a flammable one") {
  StationCase c;
  CHECK(words(notes_of(c), "flash_point_unknown", "subject") == "uv");
  CHECK(words(notes_of(c), "ink_storage_flammable", "subject") == "unknown");
  c.request.inks.front().flash_point = exactly(Temperature::celsius(105));
  CHECK_FALSE(has(notes_of(c), "flash_point_unknown"));
  CHECK_FALSE(has(notes_of(c), "ink_storage_flammable"));
}

TEST_CASE("nitrocellulose under the lamps is named") {
  StationCase c;
  CHECK(words(notes_of(c), "lamp_interlock", "subject").empty());
  CHECK_FALSE(has(notes_of(c), "nitrocellulose"));
  c.request.substrate.material = exactly(std::string("Nitrocellulose lacquer"));
  CHECK(words(notes_of(c), "lamp_interlock", "subject") == "nitrocellulose");
  CHECK(has(notes_of(c), "nitrocellulose"));
}

// Pinning behind three of four positions and the cure take six lamps each.
TEST_CASE("a lamp that serves two stages is told of once, with all its lamps") {
  StationCase c;
  c.catalogue.lamps.front().wavelength = exactly(Length::from_si(395e-9));
  c.groups.front().positions = 4;
  c.request.inks.front().pinning_dose = exactly(Dose::from_si(200));
  const std::vector<Notice> notes = notes_of(c);
  CHECK(number(notes, "uv_led", "lamps") == 12);
  for (const char* code : {"uv_led", "photobiological", "stray_light"}) {
    CAPTURE(code);
    CHECK(std::count_if(notes.begin(), notes.end(),
                        [code](const Notice& note) { return note.code == code; }) == 1);
  }
}

// 0.1 mg/m3 is not the limit: 2 g/h of six lamps at 0.2 mg/m3 are 60000 m3/h.
TEST_CASE("ozone of a lamp that states it") {
  StationCase c;
  c.catalogue.lamps.front().mercury = exactly(true);
  CHECK(words(notes_of(c), "ozone", "subject").empty());
  c.catalogue.lamps.front().ozone = exactly(MassFlow::from_si(2e-3 / 3600));
  CHECK(words(notes_of(c), "ozone", "subject") == "rated");
  CHECK(number(notes_of(c), "ozone", "air") == doctest::Approx(60000));
}
