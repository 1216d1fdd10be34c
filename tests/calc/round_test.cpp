// Heads round a body that turns under them: where they stand, what the line must give, what it
// costs. Expected figures: plane geometry, worked out apart from calc, 60 mm body, heads 40 mm deep
// at 1 mm, gap 0.5 mm: 2 atan(20.25 / 31) = 66.307 degrees.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "calc/arrangement.h"
#include "calc/placement.h"
#include "calc/selection.h"
#include "calc/station.h"
#include "support/catalogue_maker.h"

using namespace calc;
using made::given;

namespace {

/// A body of 60 mm under heads four across in two staggered rows.
struct Body {
  Request request = made::plain_request();
  Catalogue catalogue = made::catalogue_of({made::plain_head("A")});
  Job job;

  Body() {
    request.product.form = given(Form::cylinder);
    request.product.diameter = given(millimetres(60));
    request.image.length = given(millimetres(100));
    head().drop_speed = given(metres_per_second(7));
    head().body_height.reset();
  }
  Head& head() { return catalogue.heads.front(); }
  void add_colour(const char* name, ColourKind kind) {
    Colour colour = request.colours.front();
    colour.name = name;
    colour.kind = given(kind);
    colour.ink = given(std::string("black"));
    request.colours.push_back(colour);
  }
  Selection search() {
    job = resolve(request, catalogue, "2026-11-25");
    REQUIRE(job.missing.empty());
    Selection s = select(job, catalogue);
    REQUIRE(!s.chosen.empty());
    return s;
  }
  double ordered(const std::vector<Group>& groups, const std::string& code) const {
    const Station station = size_station(job, catalogue, groups);
    for (const BomLine& line : station.bom) {
      if (line.code == code) return line.quantity;
    }
    return 0;
  }
};

const Notice* condition(const Selection& s, const std::string& code) {
  const auto found = std::find_if(s.conditions.begin(), s.conditions.end(),
                                  [&](const Notice& n) { return n.code == code; });
  return found == s.conditions.end() ? nullptr : &*found;
}

double number(const Notice& notice, const std::string& name) {
  for (const Arg& arg : notice.args) {
    if (arg.name == name) return std::get<double>(arg.value);
  }
  return -1;
}

bool asks_for_diameter(const Job& job) {
  return std::any_of(job.questions.begin(), job.questions.end(), [](const Question& q) {
    return q.code == "q_diameter" && q.field == "product.diameter";
  });
}

}  // namespace

TEST_CASE("two rows of heads stand on both sides of the top of a body, plates a gap apart") {
  Body b;
  const Group g = b.search().chosen.front();
  REQUIRE(g.round);
  CHECK(g.round->stations == 1);
  CHECK(g.round->per_station == 2);
  CHECK(g.round->fit == 3);  // a fourth would jet upward
  CHECK(g.round->pitch_angle == doctest::Approx(1.157279).epsilon(1e-5));
  CHECK(in_mm(g.round->step) == doctest::Approx(34.71837).epsilon(1e-5));
  REQUIRE(g.places.size() == 4);
  for (const HeadPlace& place : g.places) {
    const double side = place.row == 0 ? -1 : 1;
    CHECK(place.station == 0);
    CHECK(place.angle_deg == doctest::Approx(side * 33.15361).epsilon(1e-5));
    CHECK(in_mm(place.z) == doctest::Approx(25.95343).epsilon(1e-5));
    CHECK(in_mm(place.y - g.footprint / 2) == doctest::Approx(side * 16.95345).epsilon(1e-5));
  }
}

TEST_CASE("a station is as long as its heads reach, which their height says") {
  Body b;
  Selection s = b.search();
  CHECK(in_mm(s.chosen.front().footprint) == doctest::Approx(77.39520).epsilon(1e-5));
  REQUIRE(condition(s, "head_data_unknown") != nullptr);
  CHECK(condition(s, "head_data_unknown")->field == "head.A.body_height");
  b.head().body_height = given(millimetres(100));
  s = b.search();
  CHECK(in_mm(s.chosen.front().footprint) == doctest::Approx(186.77230).epsilon(1e-5));
  CHECK(condition(s, "head_data_unknown") == nullptr);
}

TEST_CASE("rows that join stay at one station, and what does not fit gets another") {
  Body b;
  b.add_colour("cyan", ColourKind::process);
  const Selection s = b.search();
  const Group& g = s.chosen.front();
  REQUIRE(g.round);
  CHECK(g.round->stations == 2);  // three rows fit, but colours are two rows each
  CHECK(g.round->per_station == 2);
  for (const HeadPlace& place : g.places) CHECK(place.station == place.position);
  CHECK(in_mm(g.footprint) == doctest::Approx(2 * 77.39520).epsilon(1e-5));
  CHECK(b.ordered(s.chosen, "product_sensor") == 2);
  CHECK(b.ordered(s.chosen, "encoder") == 2);
  REQUIRE(condition(s, "several_stations") != nullptr);
  CHECK(number(*condition(s, "several_stations"), "value") == 2);
  // A thicker body takes more: 160 mm, 28.07 degrees, all four rows at one station.
  b.request.product.diameter = given(millimetres(160));
  CHECK(b.search().chosen.front().round->stations == 1);
}

TEST_CASE("groups with heads of their own have stations of their own") {
  Body b;
  b.request.image.width = given(millimetres(50));
  CHECK_FALSE(b.search().chosen.front().round);  // one row on top
  b.add_colour("white", ColourKind::white);
  const Selection s = b.search();
  REQUIRE(s.chosen.size() == 2);
  for (const Group& g : s.chosen) {
    REQUIRE(g.round);
    CHECK(g.round->stations == 1);
    // Not shorter than the body, 60 mm, and the gap of 10 mm.
    CHECK(in_mm(g.footprint) == doctest::Approx(70));
    CHECK(g.places.front().angle_deg == 0);
  }
  CHECK(b.ordered(s.chosen, "product_sensor") == 2);
}

TEST_CASE("rows lie apart by the way of the surface, not of the line") {
  Body b;
  b.search();
  const std::vector<Group> groups = b.search().chosen;
  const std::vector<Budget> budgets = placement_budgets(b.job, groups, Assumed::likely);
  const auto joint = std::find_if(budgets.begin(), budgets.end(), [](const Budget& budget) {
    return budget.name == "joint" && budget.motion;
  });
  REQUIRE(joint != budgets.end());
  const auto wheel = std::find_if(joint->terms.begin(), joint->terms.end(),
                                  [](const BudgetTerm& t) { return t.name == "wheel"; });
  REQUIRE(wheel != joint->terms.end());
  CHECK(in_mm(wheel->over) == doctest::Approx(34.71837).epsilon(1e-5));
}

TEST_CASE("the body must turn by the image and the way from row to row") {
  Body b;
  b.request.product.pitch = given(millimetres(130));
  const Selection s = b.search();
  REQUIRE(condition(s, "turn_travel") != nullptr);
  CHECK(number(*condition(s, "turn_travel"), "value") == doctest::Approx(134.71837).epsilon(1e-5));
  CHECK(number(*condition(s, "turn_travel"), "limit") == doctest::Approx(130));
  b.request.product.pitch = given(millimetres(135));
  CHECK(condition(b.search(), "turn_travel") == nullptr);
  // After one turn every row has seen the whole body: an image all round asks for no more.
  b.request.image.length.reset();
  b.request.product.pitch.reset();
  CHECK(condition(b.search(), "turn_travel") == nullptr);
}

TEST_CASE("the seam of an image all round is pi times the deviation of the diameter") {
  Body b;
  CHECK(condition(b.search(), "seam_unknown") == nullptr);  // the image ends before it meets itself
  b.request.image.length.reset();
  Selection s = b.search();
  REQUIRE(condition(s, "seam_unknown") != nullptr);
  CHECK(asks_for_diameter(b.job));
  Value<Length> diameter = *given(millimetres(60));
  diameter.low = millimetres(59.9);
  diameter.high = millimetres(60.1);
  diameter.spread = Spread::uncertain;
  b.request.product.diameter = diameter;
  s = b.search();
  CHECK(condition(s, "seam_unknown") == nullptr);
  CHECK_FALSE(asks_for_diameter(b.job));
  REQUIRE(condition(s, "seam") != nullptr);
  const double line = 25.4 / in_dpi(s.chosen.front().resolution_along);
  CHECK(number(*condition(s, "seam"), "value") == doctest::Approx(0.314159265));
  CHECK(number(*condition(s, "seam"), "limit") == doctest::Approx(line));
  diameter.low = diameter.high = diameter.value;
  b.request.product.diameter = diameter;
  CHECK(condition(b.search(), "seam") == nullptr);
}
