#include "calc/safety.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "calc/codes.h"
#include "calc/laydown.h"
#include "calc/station.h"
#include "tests/calc/support/notes.h"

using namespace calc;
using support::has;
using support::notes_of;
using support::number;
using support::StationCase;
using support::words;

TEST_CASE("an unknown cure dose is said and asked, never passed over") {
  StationCase c;
  c.request.inks.front().cure_dose.reset();
  CHECK(words(notes_of(c), "cure_dose_unknown", "ink") == "black");
  CHECK(has(notes_of(c), "uv_lamp_unknown"));
}

// Classes as printed: n-propanol 22.2 degC IB, CLP 2; furfural 60.0 degC IIIA, CLP 3 (60 counts),
// no category 4 (Regulation (EC) 1272/2008 Annex I Table 2.6.1; NFPA 30).
TEST_CASE("flash point with its classes") {
  StationCase c;
  c.set_family(InkFamily::solvent);
  c.request.inks.front().flash_point = exactly(Temperature::celsius(60));
  std::vector<Notice> notes = notes_of(c);
  CHECK(number(notes, "flash_point", "flash_point") == doctest::Approx(60));
  CHECK(words(notes, "flash_point", "clp") == "3");
  CHECK(words(notes, "flash_point", "nfpa") == "IIIA");
  CHECK(words(notes, "flash_point", "ghs") == "3");
  CHECK(has(notes, "vapour_zone"));  // jetted at 45 degC, 15 K below is enough for a mixture
  CHECK(words(notes, "vapour_zone", "subject").empty());
  c.request.inks.front().flash_point = exactly(Temperature::celsius(70));
  notes = notes_of(c);
  CHECK(words(notes, "flash_point", "ghs") == "4");
  CHECK(words(notes, "flash_point", "clp") == "-");
  CHECK(words(notes, "flash_point", "subject") == "combustible");
  CHECK_FALSE(has(notes, "vapour_zone"));
}

// Table 2.6.1 of Regulation (EC) 1272/2008 divides categories 1 and 2 by the boiling point.
TEST_CASE("the words of a flash point say what is not known and what is not classified") {
  StationCase c;
  const auto said = [&](double celsius) {
    c.request.inks.front().flash_point = exactly(Temperature::celsius(celsius));
    return words(notes_of(c), "flash_point", "subject");
  };
  CHECK(said(22.9) == "boiling_unknown");
  CHECK(has(notes_of(c), "classified_zone"));
  CHECK(number(notes_of(c), "classified_zone", "flash_point") == doctest::Approx(22.9));
  CHECK(said(23).empty());
  CHECK_FALSE(has(notes_of(c), "classified_zone"));
  CHECK(said(61) == "combustible");
  CHECK(said(94) == "unclassified");
}

TEST_CASE("inks of one note share it, at the figure that asks for most care") {
  StationCase c;
  c.request.inks.front().flash_point = exactly(Temperature::celsius(40));
  c.request.inks.push_back(c.request.inks.front());
  c.request.inks.back().name = "blue";
  c.job.channels.push_back(c.job.channels.front());
  c.job.channels[0].ink = c.request.inks.data();
  c.job.channels[1].ink = c.request.inks.data() + 1;
  c.job.channels[1].name = "blue";
  const auto count = [&](const char* code) {
    const std::vector<Notice> notes = notes_of(c);
    return std::count_if(notes.begin(), notes.end(),
                         [&](const Notice& n) { return n.code == code; });
  };
  CHECK(words(notes_of(c), "flash_point", "ink") == "black, blue");
  CHECK(count("flash_point") == 1);
  CHECK(words(notes_of(c), "uncured_ink", "ink") == "black, blue");
  // Regulation (EC) 1272/2008 Annex I Table 2.6.1 and NFPA 30: 40 and 50 degC are one class, 70
  // another.
  c.request.inks.back().flash_point = exactly(Temperature::celsius(50));
  CHECK(count("flash_point") == 1);
  CHECK(number(notes_of(c), "flash_point", "flash_point") == doctest::Approx(40));
  c.request.inks.back().flash_point = exactly(Temperature::celsius(44));
  c.groups.front().channels.emplace_back("blue");
  CHECK(count("vapour_zone") == 1);
  CHECK(words(notes_of(c), "vapour_zone", "ink") == "black, blue");
  CHECK(number(notes_of(c), "vapour_zone", "temperature") == doctest::Approx(45));
  CHECK(words(notes_of(c), "vapour_zone", "subject") == "above");
  c.request.inks.back().flash_point = exactly(Temperature::celsius(70));
  CHECK(count("flash_point") == 2);
}

TEST_CASE("a note names an ink once, however many channels print it") {
  StationCase c;
  c.job.channels.push_back(c.job.channels.front());
  c.job.channels.back().name = "second black";
  for (Channel& channel : c.job.channels) channel.family.reset();
  CHECK(words(notes_of(c), "ink_family_unknown", "ink") == "black");
}

TEST_CASE("an ink of no stated family and the flushing fluid are asked about") {
  StationCase c;
  CHECK_FALSE(has(notes_of(c), "ink_family_unknown"));
  CHECK(has(notes_of(c), "flush_hazard"));
  CHECK(words(notes_of(c), "flush_hazard", "fluid").empty());
  c.catalogue.parts.push_back(support::part("FS-1", PartKind::flush, Per::channel, 20));
  c.catalogue.parts.back().designation = exactly(std::string("Fluid"));
  CHECK(words(notes_of(c), "flush_hazard", "fluid") == "Fluid");
  c.job.channels.front().family.reset();
  CHECK(words(notes_of(c), "ink_family_unknown", "ink") == "black");
}

TEST_CASE("noise, machinery and waste go by the region") {
  StationCase c;
  const auto said = [&](const char* region) {
    c.request.request.region = exactly(std::string(region));
    const std::vector<Notice> notes = notes_of(c);
    CHECK(words(notes, "noise", "subject") == words(notes, "moving_machinery", "subject"));
    CHECK(words(notes, "noise", "subject") == words(notes, "waste_law", "subject"));
    return words(notes, "noise", "subject");
  };
  CHECK(said("US") == "us");
  CHECK(said("EU") == "eu");
  CHECK(said("Brazil").empty());
  c.request.request.region.reset();
  CHECK(words(notes_of(c), "noise", "subject").empty());
  CHECK(number(notes_of(c), "noise", "action") == 85);  // 29 CFR 1910.95
  CHECK(number(notes_of(c), "noise", "permissible") == 90);
  CHECK(number(notes_of(c), "noise", "lower") == 80);  // 2003/10/EC Art. 3 [P]
  CHECK(number(notes_of(c), "noise", "upper") == 85);
}

TEST_CASE("in the European Union isolation and static charge name no law of elsewhere") {
  StationCase c;
  c.job.absorbency = Absorbency::none;
  CHECK(words(notes_of(c), "lockout", "subject") == "powered");
  CHECK(words(notes_of(c), "static", "subject") == "moving");
  c.request.request.region = exactly(std::string("EU"));
  CHECK(words(notes_of(c), "lockout", "subject") == "powered.eu");
  CHECK(words(notes_of(c), "static", "subject") == "moving.eu");
  c.set_scanning();
  c.set_family(InkFamily::oil);
  CHECK(words(notes_of(c), "lockout", "subject") == "eu");
  CHECK(words(notes_of(c), "static", "subject") == "eu");
}

TEST_CASE("no figure stands in a note that has none") {
  StationCase c;
  c.job.absorbency = Absorbency::none;
  CHECK(number(notes_of(c), "static", "speed") == doctest::Approx(60));
  CHECK(number(notes_of(c), "lockout", "electrical") == doctest::Approx(6));
  c.request.substrate.food_contact.reset();
  c.set_scanning();
  c.job.speed = exactly(metres_per_second(1));
  CHECK(has(notes_of(c), "static"));
  CHECK(number(notes_of(c), "static", "speed") == -1);
  c.set_family(InkFamily::oil);
  CHECK(has(notes_of(c), "lockout"));
  CHECK(number(notes_of(c), "lockout", "electrical") == -1);
}

TEST_CASE("unknown flash point and exposure limit are said, known ones carry their value") {
  StationCase c;
  c.set_family(InkFamily::solvent);
  CHECK(has(notes_of(c), "flash_point_unknown"));
  CHECK(has(notes_of(c), "exposure_limit_unknown"));
  c.request.inks.front().exposure_limit = exactly(200.0);
  CHECK(number(notes_of(c), "exposure_limit", "limit") == doctest::Approx(200));
  CHECK_FALSE(has(notes_of(c), "exposure_limit_unknown"));
  // 60 mL/min at peak and 0.5 mL/h of flush at 1050 kg/m3, all of it counted: the share is unknown.
  CHECK(number(notes_of(c), "solvent_vapour", "vapour") ==
        doctest::Approx((3600 + 0.5) * 1.05e-3).epsilon(1e-3));
  CHECK(has(notes_of(c), "air_unknown"));
  c.set_family(InkFamily::aqueous);
  CHECK_FALSE(has(notes_of(c), "flash_point_unknown"));
  CHECK_FALSE(has(notes_of(c), "solvent_vapour"));
}

TEST_CASE("waste and storage carry the litres of the calculation") {
  StationCase c;
  c.request.inks.front().flash_point = exactly(Temperature::celsius(105));
  // 16.7 mL/h over 4000 h; 5 L first fill and 185.57 L a month; in tenths. They come in containers
  // of 1 L, of which one is what a bund must hold.
  CHECK(number(notes_of(c), "waste_uv", "litres_per_year") == doctest::Approx(66.8));
  CHECK(number(notes_of(c), "ink_storage", "litres") == 190.6);
  CHECK(number(notes_of(c), "ink_storage", "bund") == doctest::Approx(1.1));
  CHECK(number(notes_of(c), "ink_storage", "container") == doctest::Approx(1));
  c.request.inks.front().flash_point = exactly(Temperature::celsius(60));
  CHECK(has(notes_of(c), "ink_storage_flammable"));
  CHECK_FALSE(has(notes_of(c), "ink_storage"));
}

// 100 mm x 1 m/s x 10 um are 3.6 L/h of a solid, at 15 % mean cover 540 mL/h: by hand.
TEST_CASE("ink in the air is told at the peak, not on the mean") {
  StationCase c;
  for (const auto& [family, code] :
       {std::pair(InkFamily::uv, "uv_mist"), std::pair(InkFamily::aqueous, "aqueous_ink"),
        std::pair(InkFamily::oil, "oil_mist")}) {
    c.set_family(family);
    CHECK(number(notes_of(c), code, "peak") == doctest::Approx(3600));
    CHECK(number(notes_of(c), code, "ml_per_hour") == doctest::Approx(556.2 + 0.5).epsilon(1e-3));
  }
  c.job.channels.front().cover_peak = exactly(0.5);
  CHECK(number(notes_of(c), "oil_mist", "peak") == doctest::Approx(1800));
}

TEST_CASE("what is no water in aqueous ink is told of until it is known") {
  StationCase c;
  c.set_family(InkFamily::aqueous);
  CHECK(number(notes_of(c), "aqueous_rest", "share") == doctest::Approx(35));
  c.request.inks.front().water_share = exactly(0.8);
  CHECK(number(notes_of(c), "aqueous_rest", "share") == doctest::Approx(20));
  c.request.inks.front().water_share = exactly(1.0);
  CHECK_FALSE(has(notes_of(c), "aqueous_rest"));
}

TEST_CASE("dust at a dryer is that of the product") {
  StationCase c;
  c.set_family(InkFamily::aqueous);
  CHECK(words(notes_of(c), "hot_dryer", "subject").empty());
  c.request.substrate.material = exactly(std::string("cork"));
  CHECK(words(notes_of(c), "hot_dryer", "subject") == "dust");
  CHECK(words(notes_of(c), "hot_dryer", "material") == "cork");
}

// 40 CFR 261.21: below 60 degC, but not an aqueous solution with less than 24 % of alcohol. 29 CFR
// 1910.106: 25 gal of class IA in containers, 120 gal of the others.
TEST_CASE("ignitable waste and containers in the United States") {
  StationCase c;
  c.set_family(InkFamily::solvent);
  Ink& ink = c.request.inks.front();
  ink.flash_point = exactly(Temperature::celsius(54));
  CHECK(number(notes_of(c), "waste_ignitable", "flash_point") == doctest::Approx(54));
  CHECK(number(notes_of(c), "ink_storage_flammable", "limit") == 454.2);
  ink.flash_point = exactly(Temperature::celsius(10));
  CHECK(number(notes_of(c), "ink_storage_flammable", "limit") == 94.6);  // IA or IB: ask
  ink.boiling_point = exactly(Temperature::celsius(78));
  CHECK(number(notes_of(c), "ink_storage_flammable", "limit") == 454.2);
  CHECK(words(notes_of(c), "flash_point", "clp") == "2");
  CHECK(words(notes_of(c), "flash_point", "packing") == "II");
  ink.flash_point = exactly(Temperature::celsius(54));
  ink.water_share = exactly(0.77);
  ink.solvent = exactly(std::string("ethanol"));
  ink.solvents = {{"ethanol", 1}};
  ink.solvent_share = exactly(0.10);  // 13 % by volume at 1050 over 790 kg/m3
  CHECK_FALSE(has(notes_of(c), "waste_ignitable"));
  ink.solvent_share = exactly(0.20);
  CHECK(has(notes_of(c), "waste_ignitable"));
  c.request.request.region = exactly(std::string("EU"));
  CHECK_FALSE(has(notes_of(c), "waste_ignitable"));
  CHECK(number(notes_of(c), "ink_storage_flammable", "limit") == -1);
}

TEST_CASE("pre-treatment brings its own hazards") {
  StationCase c;
  CHECK_FALSE(has(notes_of(c), "pretreatment_hazard"));
  c.job.absorbency = Absorbency::none;
  c.request.inks.front().surface_tension = exactly(millinewtons_per_metre(28));
  c.request.substrate.surface_energy = exactly(millinewtons_per_metre(30));
  CHECK(has(notes_of(c), "pretreatment_hazard"));
  c.catalogue.parts.push_back(support::part("CT-1", PartKind::pretreatment, Per::station, 20));
  c.catalogue.parts.back().designation = exactly(std::string("Corona treater"));
  CHECK(words(notes_of(c), "pretreatment_hazard", "part") == "Corona treater");
}

TEST_CASE("each kind of ink has its personal protection, and solvent its wet print") {
  StationCase c;
  for (const auto& [family, name] :
       {std::pair(InkFamily::uv, "uv"), std::pair(InkFamily::aqueous, "aqueous"),
        std::pair(InkFamily::oil, "oil"), std::pair(InkFamily::solvent, "solvent")}) {
    c.set_family(family);
    CHECK(words(notes_of(c), "ppe", "subject") == name);
    CHECK(words(notes_of(c), "ppe", "ink") == "black");
    CHECK(has(notes_of(c), "wet_solvent") == (family == InkFamily::solvent));
  }
  c.job.absorbency = Absorbency::none;
  CHECK(words(notes_of(c), "wet_solvent", "subject") == "none");
  // Without monitoring a quarter of the limit (NFPA 86), with it a half at the most.
  CHECK(number(notes_of(c), "lel_monitoring", "share") == doctest::Approx(25));
  CHECK(number(notes_of(c), "lel_monitoring", "monitored") == doctest::Approx(50));
}

TEST_CASE("the law on food is that of the region") {
  StationCase c;
  c.request.substrate.food_contact = exactly(true);
  CHECK(words(notes_of(c), "food_contact", "subject").empty());
  c.request.request.region = exactly(std::string("US"));
  CHECK(words(notes_of(c), "food_contact", "subject") == "us");
  c.request.substrate.food_contact.reset();
  CHECK(words(notes_of(c), "food_unknown", "subject") == "us");
}

TEST_CASE("a request without a station still has its notes") {
  StationCase c;
  c.groups.clear();
  const std::vector<Notice> notes = safety_notes(c.job, c.catalogue, c.groups, nullptr);
  CHECK(has(notes, "uncured_ink"));
  CHECK(has(notes, "uv_lamp_unknown"));
  CHECK(has(notes, "moving_machinery"));
  CHECK_FALSE(has(notes, "lockout"));
  CHECK_FALSE(has(notes, "head_strike"));
}

TEST_CASE("motion: nips on a line, pinch points on a carriage") {
  StationCase c;
  CHECK(number(notes_of(c), "in_running_nip", "speed") == doctest::Approx(60));
  CHECK(number(notes_of(c), "head_strike", "gap") == doctest::Approx(2));
  c.job.thickness_variation = millimetres(0.5);
  CHECK(number(notes_of(c), "head_strike", "gap") == doctest::Approx(1.5));
  c.request.substrate.food_contact.reset();
  c.set_scanning();
  CHECK_FALSE(has(notes_of(c), "in_running_nip"));
  CHECK(number(notes_of(c), "carriage_pinch", "width") == doctest::Approx(2000));
}

TEST_CASE("every safety code is produced, in the order of the list") {
  std::vector<Notice> seen;
  const auto take = [&](const StationCase& c) {
    for (const Notice& note : notes_of(c)) seen.push_back(note);
  };
  StationCase c;
  c.job.absorbency = Absorbency::none;
  c.request.substrate.food_contact = exactly(true);
  c.request.substrate.area_mass = exactly(AreaMass::from_si(0.2));
  c.catalogue.lamps.front().wavelength = exactly(Length::from_si(395e-9));
  take(c);
  const auto codes = safety_codes();
  CHECK(std::is_sorted(seen.begin(), seen.end(), [&](const Notice& a, const Notice& b) {
    return std::find(codes.begin(), codes.end(), a.code) <
           std::find(codes.begin(), codes.end(), b.code);
  }));
  c.catalogue.lamps.front().mercury = exactly(true);
  take(c);
  c.catalogue.lamps.clear();
  c.request.inks.front().cure_dose.reset();
  take(c);
  for (const InkFamily family : {InkFamily::aqueous, InkFamily::oil, InkFamily::solvent}) {
    c.set_family(family);
    take(c);
  }
  c.request.inks.front().flash_point = exactly(Temperature::celsius(20));
  c.request.inks.front().exposure_limit = exactly(50.0);
  take(c);
  c.request.inks.front().solvent = exactly(std::string("DEGDEE"));
  c.request.inks.front().solvents = {{"DEGDEE", 1}};
  c.request.inks.front().flash_point.reset();
  c.request.line.enclosed = exactly(true);
  take(c);
  c.request.substrate.food_contact.reset();
  c.set_scanning();
  take(c);
  c.job.channels.front().family.reset();
  take(c);
  c.job.absorbency = Absorbency::low;
  c.request.substrate.material = exactly(std::string("wood lacquered with nitrocellulose"));
  c.request.inks.front().surface_tension = exactly(millinewtons_per_metre(28));
  c.request.substrate.surface_energy = exactly(millinewtons_per_metre(30));
  take(c);
  for (const std::string_view code : codes) {
    CAPTURE(code);
    CHECK(has(seen, std::string(code)));
  }
}
