// What has to be settled before anything is ordered, by hand.
#include "calc/safety_conditions.h"

#include <doctest/doctest.h>

#include "tests/calc/support/notes.h"

using namespace calc;
using support::has;
using support::number;
using support::StationCase;
using support::words;

namespace {

std::vector<Notice> conditions_of(const StationCase& c) {
  return safety_conditions(c.job, c.catalogue, c.groups);
}

}  // namespace

// Regulation (EC) No 1272/2008 Annex I Table 2.6.1: flammable to 60 degC; IEC 60079-10-1 as read in
// safety.md 5 [M]: a mixture at its flash point less 15 K may make an atmosphere that explodes.
TEST_CASE("zones are to be classified where an ink may burn or nobody says") {
  StationCase c;
  Ink& ink = c.request.inks.front();
  CHECK_FALSE(has(conditions_of(c), "zone_unclassified"));  // a UV ink nobody knows of
  ink.flash_point = exactly(Temperature::celsius(60));
  CHECK(words(conditions_of(c), "zone_unclassified", "ink") == "black");
  CHECK(words(conditions_of(c), "zone_unclassified", "subject").empty());
  ink.flash_point = exactly(Temperature::celsius(60.5));
  CHECK_FALSE(has(conditions_of(c), "zone_unclassified"));
  c.groups.front().jetting_temperature = Temperature::celsius(46);
  CHECK(has(conditions_of(c), "zone_unclassified"));
  ink.flash_point.reset();
  for (const InkFamily family : {InkFamily::solvent, InkFamily::oil}) {
    c.set_family(family);
    CHECK(words(conditions_of(c), "zone_unclassified", "subject") == "unknown");
  }
  c.groups.clear();
  CHECK(conditions_of(c).empty());
}

TEST_CASE("inks of one state share the condition on zones") {
  StationCase c;
  c.request.inks.front().flash_point = exactly(Temperature::celsius(-9));
  c.request.inks.push_back(c.request.inks.front());
  c.request.inks.back().name = "blue";
  c.job.channels.push_back(c.job.channels.front());
  c.job.channels[0].ink = c.request.inks.data();
  c.job.channels[1].ink = c.request.inks.data() + 1;
  const std::vector<Notice> list = conditions_of(c);
  REQUIRE(list.size() == 1);
  CHECK(words(list, "zone_unclassified", "ink") == "black, blue");
  CHECK(list.front().where.size() == 2);
}

TEST_CASE("drying of solvent ink and the share captured are no more than asked and assumed") {
  StationCase c;
  CHECK_FALSE(has(conditions_of(c), "solvent_drying"));
  c.set_family(InkFamily::solvent);
  CHECK(has(conditions_of(c), "solvent_drying"));
  CHECK_FALSE(has(conditions_of(c), "capture_unproved"));
  c.job.absorbency = Absorbency::none;
  CHECK(words(conditions_of(c), "solvent_drying", "subject") == "none");
  c.request.line.enclosed = exactly(true);
  CHECK(number(conditions_of(c), "capture_unproved", "share") == doctest::Approx(90));
  CHECK(number(conditions_of(c), "capture_unproved", "least") == doctest::Approx(80));
}

TEST_CASE("whether a printed face touches food is asked of a product that does") {
  StationCase c;
  CHECK_FALSE(has(conditions_of(c), "food_face"));
  c.request.substrate.food_contact = exactly(true);
  c.request.request.region = exactly(std::string("EU"));
  CHECK(words(conditions_of(c), "food_face", "subject") == "eu");
}
