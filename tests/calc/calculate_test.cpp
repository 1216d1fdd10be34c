#include "calc/calculate.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "calc/calculate_inputs.h"
#include "calc/station.h"
#include "tests/calc/support/station_case.h"

using namespace calc;

namespace {

Input catalogue_input(const std::string& key, const std::string& raw) {
  Input input;
  input.key = key;
  input.origin.kind = OriginKind::catalogue;
  input.origin.raw = raw;
  return input;
}

/// The catalogue of the station's case with what the search reads of a head, and a second head too
/// slow for anything.
Catalogue catalogue() {
  support::StationCase c;
  Catalogue result = c.catalogue;
  Head& head = result.heads.front();
  head.body_width = exactly(millimetres(85));
  head.body_depth = exactly(millimetres(40));
  head.joins = exactly(false);
  head.throw_least = exactly(millimetres(0.5));
  head.throw_most = exactly(millimetres(4));
  head.viscosity = exactly(millipascal_seconds(10));
  head.viscosity_window = Value<Viscosity>{
      millipascal_seconds(10), millipascal_seconds(8), millipascal_seconds(14), Spread::demand, {}};
  head.tension_window = Value<SurfaceTension>{millinewtons_per_metre(30),
                                              millinewtons_per_metre(22),
                                              millinewtons_per_metre(36),
                                              Spread::demand,
                                              {}};
  head.temperature_most = exactly(Temperature::celsius(55));
  HeadMode& mode = head.modes.front();
  mode.nozzles = exactly(1000);
  mode.drops = exactly(std::vector{picolitres(30)});
  mode.frequency = exactly(std::vector{kilohertz(30)});
  head.inputs = {catalogue_input("head.H-1.price", "1000 EUR"),
                 catalogue_input("head.H-1.full.frequency", "30 kHz")};
  Head slow = head;
  slow.name = "H-2";
  slow.modes.front().frequency = exactly(std::vector{hertz(10)});
  slow.inputs = {catalogue_input("head.H-2.price", "10 EUR"),
                 catalogue_input("head.H-2.full.frequency", "10 Hz"),
                 catalogue_input("head.H-2.maker", "maker B")};
  result.heads.push_back(slow);
  return result;
}

Request request() {
  Request r;
  r.request.id = exactly(std::string("Q-1"));
  r.request.title = exactly(std::string("title"));
  r.request.currency = exactly(std::string("EUR"));
  r.image.width = exactly(millimetres(60));
  r.image.resolution = exactly(ResolutionPair{dpi(360), dpi(360)});
  r.line.speed = exactly(metres_per_second(0.5));
  r.product.description = exactly(std::string("board"));
  r.substrate.material = exactly(std::string("paper"));
  r.substrate.absorbency = exactly(Absorbency::high);
  Ink ink;
  ink.name = "black";
  ink.family = exactly(InkFamily::uv);
  ink.cure_dose = exactly(Dose::from_si(3000));
  ink.price = support::euro(50);
  ink.viscosity =
      exactly(std::vector<ViscosityPoint>{{millipascal_seconds(20), Temperature::celsius(25)},
                                          {millipascal_seconds(9), Temperature::celsius(45)}});
  ink.surface_tension = exactly(millinewtons_per_metre(28));
  r.inks.push_back(ink);
  Colour colour;
  colour.name = "black";
  r.colours.push_back(colour);
  Input width;
  width.key = "image.width";
  width.value = 60;
  width.unit = "mm";
  r.inputs.push_back(width);
  return r;
}

bool has_input(const Specification& spec, const std::string& key) {
  return std::any_of(spec.inputs.begin(), spec.inputs.end(),
                     [&](const Input& i) { return i.key == key; });
}

bool has_note(const Specification& spec, const std::string& code) {
  return std::any_of(spec.safety.begin(), spec.safety.end(),
                     [&](const Notice& n) { return n.code == code; });
}

}  // namespace

TEST_CASE("a request that can be served") {
  const Catalogue c = catalogue();
  const Specification spec = calculate(request(), c, "2026-11-25");
  CHECK(spec.id == "Q-1");
  CHECK(spec.revision == "A");
  CHECK(spec.date == "2026-11-25");
  REQUIRE((spec.verdict == Verdict::feasible || spec.verdict == Verdict::conditional));
  CHECK((spec.verdict == Verdict::conditional) == !spec.conditions.empty());
  REQUIRE(spec.chosen.size() == 1);
  CHECK(spec.chosen.front().head == "H-1");
  CHECK(spec.heads_total == spec.chosen.front().heads_total);
  REQUIRE(spec.station);
  CHECK(spec.station->bom.front().quantity == spec.heads_total);
  CHECK(spec.station->cost.capital == spec.station->bom_total);
  CHECK(spec.station->consumption.front().ml_per_hour > 0);
  CHECK_FALSE(spec.tests.empty());
  CHECK(has_note(spec, "uv_led"));
  CHECK(spec.flexibility.size() == 1);
  REQUIRE(spec.rejected.size() == 1);
  CHECK(spec.rejected.front().head == "H-2");
  CHECK_FALSE(spec.rejected.front().reasons.empty());
}

TEST_CASE("inputs: given, assumed, and the catalogue values that appear") {
  const Catalogue c = catalogue();
  const Specification spec = calculate(request(), c, "2026-11-25");
  CHECK(has_input(spec, "image.width"));
  CHECK(has_input(spec, "assume.uptime"));
  CHECK(has_input(spec, "line.hours_per_day"));
  CHECK(has_input(spec, "head.H-1.price"));
  CHECK(has_input(spec, "head.H-1.full.frequency"));
  CHECK(has_input(spec, "head.H-2.full.frequency"));  // behind its rejection
  CHECK_FALSE(has_input(spec, "head.H-2.price"));
  CHECK_FALSE(has_input(spec, "head.H-2.maker"));
  std::set<std::string> keys;
  for (const Input& input : spec.inputs) keys.insert(input.key);
  CHECK(keys.size() == spec.inputs.size());
  for (const Assumption& a : spec.assumptions) CHECK(has_input(spec, a.field));
}

TEST_CASE("assumptions and questions are each there once, questions in falling order") {
  const Catalogue c = catalogue();
  const Specification spec = calculate(request(), c, "2026-11-25");
  std::set<std::string> fields;
  for (const Assumption& a : spec.assumptions) CHECK(fields.insert(a.field).second);
  REQUIRE_FALSE(spec.questions.empty());
  CHECK(std::is_sorted(spec.questions.begin(), spec.questions.end(),
                       [](const Question& a, const Question& b) { return a.weight > b.weight; }));
  std::set<std::string> asked;
  for (const Question& q : spec.questions) CHECK(asked.insert(q.code + " " + q.field).second);
}

TEST_CASE("the flushing fluid assumed is listed, its bottle only where one has a price") {
  Catalogue c = catalogue();
  const auto assumes = [&](const char* field) {
    const Specification spec = calculate(request(), c, "2026-11-25");
    return std::any_of(spec.assumptions.begin(), spec.assumptions.end(),
                       [&](const Assumption& a) { return a.field == field; });
  };
  CHECK(assumes("assume.flush"));
  CHECK_FALSE(assumes("assume.flush_bottle"));
  c.parts.push_back(support::part("FL-1", PartKind::flush, Per::channel, 20));
  CHECK(assumes("assume.flush_bottle"));
  c.parts.back().life = exactly(seconds(3600.0 * 500));
  CHECK_FALSE(assumes("assume.flush_bottle"));
}

TEST_CASE("a warning of the station stands at the field, else at the section it is missing from") {
  Request r = request();
  r.inks.front().where = Origin{OriginKind::given, "q.ini", 12, 1, "[ink.black]"};
  r.inks.front().price.reset();
  r.inks.front().cure_dose.reset();
  const Specification spec = calculate(r, catalogue(), "2026-11-25");
  for (const char* code : {"ink_unpriced", "cure_unsized"}) {
    CAPTURE(code);
    const auto found = std::find_if(spec.warnings.begin(), spec.warnings.end(),
                                    [&](const Notice& n) { return n.code == code; });
    REQUIRE(found != spec.warnings.end());
    REQUIRE(found->where.size() == 1);
    CHECK(found->where.front().line == 12);
  }
}

TEST_CASE("a lattice finer than the dot is told at the demand that asks for it") {
  Request r = request();
  Input asked;
  asked.key = "image.resolution";
  asked.origin = Origin{OriginKind::given, "q.ini", 7, 14, "360 dpi"};
  r.inputs.push_back(asked);
  r.substrate.dot_diameter = exactly(micrometres(200));  // above two pitches of 70.6 um
  const Specification spec = calculate(r, catalogue(), "2026-11-25");
  const auto found = std::find_if(spec.warnings.begin(), spec.warnings.end(),
                                  [](const Notice& n) { return n.code == "finer_than_dot"; });
  REQUIRE(found != spec.warnings.end());
  REQUIRE(found->where.size() == 1);
  CHECK(found->where.front().line == 7);
}

TEST_CASE("an infeasible request still has requirement, reasons, questions and safety") {
  Request r = request();
  r.line.speed = exactly(metres_per_second(200));
  const Specification spec = calculate(r, catalogue(), "2026-11-25");
  CHECK(spec.verdict == Verdict::infeasible);
  CHECK(spec.chosen.empty());
  CHECK_FALSE(spec.station);
  CHECK(spec.tests.empty());
  CHECK(in_dpi(spec.required->across) == doctest::Approx(360));
  CHECK(spec.rejected.size() == 2);
  for (const RejectedHead& head : spec.rejected) CHECK_FALSE(head.reasons.empty());
  CHECK_FALSE(spec.questions.empty());
  CHECK(has_note(spec, "uncured_ink"));
}

TEST_CASE("an incomplete request says what can be said") {
  Request r;
  r.request.id = exactly(std::string("Q-2"));
  r.request.title = exactly(std::string("nearly empty"));
  const Specification spec = calculate(r, catalogue(), "2026-11-25");
  CHECK(spec.verdict == Verdict::incomplete);
  CHECK_FALSE(spec.questions.empty());
  CHECK(has_note(spec, "moving_machinery"));
  CHECK(spec.chosen.empty());
}

TEST_CASE("the same request twice gives the same specification") {
  const Catalogue c = catalogue();
  const Specification a = calculate(request(), c, "2026-11-25");
  const Specification b = calculate(request(), c, "2026-11-25");
  REQUIRE(a.station);
  REQUIRE(b.station);
  CHECK(a.station->cost.ownership == b.station->cost.ownership);
  CHECK(a.trace.size() == b.trace.size());
  CHECK(a.inputs.size() == b.inputs.size());
}

TEST_CASE("the date of issue decides which prices are stale") {
  Catalogue c = catalogue();
  c.heads.front().price_date = exactly(std::string("2026-01-10"));
  const auto stale = [&](const char* date) {
    const Specification spec = calculate(request(), c, date);
    return std::any_of(spec.warnings.begin(), spec.warnings.end(),
                       [](const Notice& n) { return n.code == "price_stale"; });
  };
  CHECK_FALSE(stale("2026-02-01"));
  CHECK(stale("2026-11-25"));
}
