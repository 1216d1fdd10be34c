// Tilted heads in the search: which stand so, what they come to, and what keeps them straight.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "calc/across.h"
#include "calc/arrangement.h"
#include "calc/bom_prices.h"
#include "calc/compare.h"
#include "calc/eye.h"
#include "calc/judge.h"
#include "calc/placement_terms.h"
#include "calc/selection_parts.h"
#include "calc/tilt.h"
#include "support/catalogue_maker.h"
#include "support/head_bench.h"
#include "tests/calc/support/check.h"

using namespace calc;
using made::given;
using support::identity;

namespace {

constexpr const char* triangle = "[C] cosine 600/1000, sine 0.8";

/// One head of 600 per inch that may be tilted, its rows in one line, asked for 1000 x 600: at
/// 53.13 degrees it prints that exactly.
struct Bench : support::HeadBench {
  Bench() {
    head().tilts = given(true);
    head().nozzle_delay = given(true);
    head().field_depth = given(millimetres(5));
    mode().row_places = given(std::vector<Length>(mode().row_offsets->value.size()));
    request.image.resolution = given(ResolutionPair{dpi(1000), dpi(600)});
    request.substrate.dot_diameter = given(micrometres(80));  // the smallest drop closes solids
  }
  /// The accepted arrangements that stand tilted.
  std::vector<Candidate> all_tilted(bool scanning = false) {
    std::vector<Candidate> found = run(scanning).accepted;
    const auto straight = [](const Candidate& c) { return c.group.family != Family::tilted; };
    found.erase(std::remove_if(found.begin(), found.end(), straight), found.end());
    return found;
  }
  Group one_tilted() {
    const std::vector<Candidate> found = all_tilted();
    REQUIRE(found.size() == 1);
    Findings none;
    const auto facts = facts_of(search, found.front().arrangement.shape, none);
    REQUIRE(facts);
    return to_group(search, search.groups.front(), *facts, found.front().arrangement, true);
  }
  bool stays_straight(bool scanning = false) { return all_tilted(scanning).empty(); }
};

/// The worst way [mm] along the motion between nozzles of neighbouring heads that print at one
/// place of the line, each projected by itself.
double apart_by_nozzles(const Group& g) {
  std::vector<HeadPlace> heads = g.places;
  std::sort(heads.begin(), heads.end(),
            [](const HeadPlace& a, const HeadPlace& b) { return a.x < b.x; });
  const double half = in_mm(static_cast<double>(g.nozzles) / g.native) / 2;
  double worst = 0;
  for (std::size_t i = 0; i + 1 < heads.size(); ++i) {
    const double turn = heads[i].rotation_deg * pi / 180;
    for (int step = 0; step * 0.05 <= 2 * half; ++step) {
      const double u = step * 0.05 - half;
      const double v = u - in_mm(heads[i + 1].x - heads[i].x) / std::cos(turn);
      if (v < -half) continue;
      const double way = in_mm(heads[i + 1].y - heads[i].y) + (v - u) * std::sin(turn);
      worst = std::max(worst, std::abs(way));
    }
  }
  return worst;
}

}  // namespace

TEST_CASE("a head of 600 per inch tilted to print 1000") {
  Bench b;
  const Group g = b.one_tilted();
  const double swath = 1280 * 25.4 / 600 * 0.6 - 5 * 0.8;
  const double width = in_mm(b.head().body_width->value);
  const double depth = in_mm(b.head().body_depth->value);
  support::check_all({
      {"tilt [deg]", g.tilt * 180 / pi, 53.13010235415598, identity, triangle},
      {"across", in_dpi(g.resolution_across), 1000, identity, triangle},
      {"along", in_dpi(g.resolution_along), 600, identity, "as asked"},
      {"the head's own", in_dpi(g.native), 600, identity, "as given"},
      {"pitch [um]", in_um(g.pitch), 25.4, identity, triangle},
      {"swath [mm]", in_mm(g.swath), swath, identity, triangle},
      {"footprint [mm]", in_mm(g.footprint) / g.rows_staggered, width * 0.8 + depth * 0.6 + 10,
       identity, triangle},
  });
  CHECK(g.family == Family::tilted);
  CHECK(g.interleave == 1);
  CHECK(g.heads_across == heads_across(b.search.width, g.swath, g.head_pitch));
  CHECK(g.places.size() == static_cast<std::size_t>(g.heads_total));
  for (const HeadPlace& place : g.places) CHECK(place.rotation_deg == doctest::Approx(53.1301));
}

TEST_CASE("rows of tilted heads: one where P sin t clears the body's depth") {
  Bench b;
  b.head().overlap = given(Length{});
  b.head().body_width = given(millimetres(90));
  const Length square = b.one_tilted().head_pitch * 0.8;
  b.head().body_depth = given(square - millimetres(0.51));
  CHECK(b.one_tilted().rows_staggered == 1);
  b.head().body_depth = given(square - millimetres(0.49));
  CHECK(b.one_tilted().rows_staggered == 2);
  b.head().joins = given(true);  // what joins straight does not when it is slanted
  CHECK(b.one_tilted().rows_staggered == 2);
}

TEST_CASE("the overlap of tilted heads is the catalogue's as it projects, else 16 nozzles") {
  Bench b;
  b.head().overlap = given(millimetres(2));
  CHECK(in_mm(b.one_tilted().overlap) == doctest::Approx(1.2));
  b.head().overlap.reset();
  b.head().joins = given(true);
  CHECK(in_um(b.one_tilted().overlap) == doctest::Approx(16 * 25.4));
}

TEST_CASE("a head that fires all nozzles at once prints whole lines apart") {
  Bench b;
  b.head().nozzle_delay = given(false);
  b.request.image.width = given(millimetres(28));  // two straight heads or a tilted one
  // p sin t = 42.333 um x 0.8, one line at 750 per inch; by lines of 600 the sine would be 1.
  const Group g = b.one_tilted();
  support::check_all({
      {"along", in_dpi(g.resolution_along), 750, 1e-9, triangle},
      {"lines apart", lines_apart(g.resolution_along, 1.0 / g.native, g.tilt), 1, 1e-9, triangle},
  });
  b.request.image.resolution = given(ResolutionPair{dpi(640), dpi(1000)});
  bool by_lines = false;
  for (const Candidate& c : b.all_tilted()) {
    const double lines = lines_apart(c.group.resolution_along, 1.0 / c.group.native, c.group.tilt);
    CHECK(std::abs(lines - std::round(lines)) < 1e-9);
    // The sine of one line, 600/1000, is a tilt that prints 750 across at the 1000 asked along.
    const bool one_line = at_most(c.group.resolution_along, dpi(1000));
    if (one_line) CHECK(in_dpi(c.group.resolution_across) == doctest::Approx(750));
    by_lines = by_lines || one_line;
  }
  CHECK(by_lines);
}

TEST_CASE("rows that print unevenly at an angle keep the head straight, or turn it the other way") {
  Bench b;
  std::vector<Length>& places = b.mode().row_places->value;
  REQUIRE(places.size() == 4);
  const double row_pitch_um = 25400.0 / 150;
  const double tangent = 0.8 / 0.6;
  places[1] = micrometres(0.099 * row_pitch_um / 4 / tangent);  // 9.9 % of the pitch
  CHECK_FALSE(b.stays_straight());
  places[1] = micrometres(0.101 * row_pitch_um / 4 / tangent);
  CHECK(b.stays_straight());
  // Rows at 0, 1/4, 1/2, 3/4 of a pitch go to 0, 1/2, 0, 1/2 one way and to 0, 0, 0, 0 the other
  // when each stands a quarter further along; two quarters bring 0, 3/4, 1/2, 1/4 either way.
  for (const double quarter : {1.0, 2.0}) {
    for (std::size_t i = 0; i < 4; ++i) {
      places[i] = micrometres(quarter * static_cast<double>(i) * row_pitch_um / 4 / tangent);
    }
    CHECK(b.stays_straight() == (quarter < 2));
  }
}

TEST_CASE("the sense of the tilt follows the rows") {
  // Three rows a third of a pitch apart in offset and, projected, in place: turned one way they
  // spread to 0, 2/3, 4/3, the other way they fall together.
  Bench b;
  b.mode().row_pitch = given(dpi(200));
  b.mode().row_offsets = given(std::vector<double>{0, 1.0 / 3, 2.0 / 3});
  b.mode().nozzles = given(1281);
  const double third = 25400.0 / 200 / 3 / (0.8 / 0.6);
  for (const double sense : {1.0, -1.0}) {
    b.mode().row_places = given(
        std::vector<Length>{Length{}, micrometres(sense * third), micrometres(sense * 2 * third)});
    const Group g = b.one_tilted();
    CHECK(g.tilt * sense < 0);
    CHECK(std::abs(g.tilt) == doctest::Approx(std::acos(0.6)));
    CHECK(g.uneven < micrometres(1e-6));
    // 42.333 um x 0.8 of the offset less 31.75 um x 0.6 of the place, at 600 lines and 0.5 m/s.
    REQUIRE(g.row_delays.size() == 3);
    support::check_all({
        {"behind the first [um]", in_um(g.row_delays[1].along), -sense * 44.45 / 3, 1e-9, triangle},
        {"in lines", g.row_delays[1].lines, -sense * 0.35, 1e-9, triangle},
        {"late [us]", g.row_delays[1].late.si() * 1e6, -sense * 44.45 / 3 / 0.5, 1e-9, triangle},
        {"third row in lines", g.row_delays[2].lines, -sense * 0.7, 1e-9, triangle},
        {"along one row [um]", in_um(g.slant), 426 * 127 * 0.8, 1e-9, triangle},
    });
    CHECK_FALSE(g.one_clock);
  }
}

TEST_CASE(
    "nozzles that meet at a joint, along the motion: projected one by one, tilts of both senses") {
  int checked = 0;
  for (const double sense : {1.0, -1.0}) {
    for (const double width : {40.0, 60.0, 180.0}) {
      for (const double body : {40.0, 90.0}) {
        Bench b;
        b.mode().row_pitch = given(dpi(200));
        b.mode().row_offsets = given(std::vector<double>{0, 1.0 / 3, 2.0 / 3});
        b.mode().nozzles = given(1281);
        const double third = sense * 25400.0 / 200 / 3 / (0.8 / 0.6);
        b.mode().row_places =
            given(std::vector<Length>{Length{}, micrometres(third), micrometres(2 * third)});
        b.request.image.width = given(millimetres(width));
        b.head().body_width = given(millimetres(90));
        b.head().body_depth = given(millimetres(body));
        const std::vector<Candidate> found = b.all_tilted();
        if (found.empty()) continue;
        Findings none;
        const auto facts = facts_of(b.search, found.front().arrangement.shape, none);
        const Group g =
            to_group(b.search, b.search.groups.front(), *facts, found.front().arrangement, true);
        if (g.heads_across < 2 || g.interleave * g.stack * g.film_heads > 1) continue;
        CAPTURE(g.tilt);
        CAPTURE(g.heads_across);
        CAPTURE(g.rows_staggered);
        CHECK(in_mm(joint_apart(g)) == doctest::Approx(apart_by_nozzles(g)).epsilon(1e-9));
        ++checked;
      }
    }
  }
  CHECK(checked >= 6);
}

TEST_CASE("columns that stand farther apart than the pitch take lines that close their gap") {
  Bench b;
  b.request.substrate.dot_volume.reset();
  b.request.substrate.dot_diameter = given(micrometres(50));  // 25.4 and 42.333 take 49.37
  CHECK(in_dpi(b.one_tilted().resolution_along) == doctest::Approx(600));
  const double row_pitch_um = 25400.0 / 150;
  b.mode().row_places->value[1] = micrometres(0.099 * row_pitch_um / 4 / (0.8 / 0.6));
  const double widest = 25.4 * 1.099;
  bool finer = false;
  for (const Candidate& c : b.all_tilted()) {
    CHECK(in_um(c.group.wider) == doctest::Approx(widest - 25.4));
    const double lines = 25400 / std::sqrt(2500 - widest * widest);
    finer = finer || std::abs(in_dpi(c.group.resolution_along) / lines - 1) < 1e-9;
    CHECK(in_dpi(c.group.resolution_along) > 600);  // where the gaps stay open
  }
  CHECK(finer);
}

TEST_CASE("idle nozzles of tilted heads are counted, overlap and lost corner with them") {
  Bench b;
  const Group g = b.one_tilted();
  const double printing = std::floor(in_mm(b.search.width) / 0.0254 + 1e-6);
  CHECK(g.idle_nozzle_share ==
        doctest::Approx(1 - printing / (g.heads_across * 1280)).epsilon(identity));
}

TEST_CASE("what keeps a head straight") {
  CHECK_FALSE(Bench().stays_straight());
  const auto kept = [](auto change) {
    Bench b;
    change(b);
    return b.stays_straight();
  };
  CHECK(kept([](Bench& b) { b.head().tilts.reset(); }));
  CHECK(kept([](Bench& b) { b.head().tilts = given(false); }));
  CHECK(kept([](Bench& b) { b.mode().row_places.reset(); }));
  CHECK(kept([](Bench& b) { b.head().body_width.reset(); }));
  CHECK(kept([](Bench& b) { b.head().body_depth.reset(); }));
  CHECK(kept([](Bench& b) {  // where the rows of its colours stand is not known
    b.mode().colours = given(2);
    b.head().field_depth.reset();
  }));
  CHECK(kept([](Bench& b) { b.head().field_depth = given(millimetres(50)); }));  // no swath left
  CHECK(kept([](Bench& b) {                                                      // met without
    b.request.image.resolution = given(ResolutionPair{dpi(600), dpi(600)});
  }));
  CHECK(kept([](Bench& b) {               // 60 degrees would not do
    b.mode().row_pitch = given(dpi(30));  // four heads print 480
  }));
  CHECK(kept([](Bench& b) {
    b.request.product.form = given(Form::cylinder);
    b.request.product.diameter = given(millimetres(300));
  }));
  Bench scanning;
  scanning.request.line.mode = given(Mode::scanning);
  scanning.request.line.indexing = given(true);
  scanning.request.image.length = given(millimetres(500));
  scanning.request.line.speed = given(metres_per_second(0.002));
  CHECK(scanning.stays_straight(true));
}

TEST_CASE("a tilted arrangement judged again keeps its angle") {
  Bench b;
  const std::vector<Group> built{b.one_tilted()};
  const Group& g = built.front();
  Judge judge(b.catalogue, b.job.currency, built, Judge::Heads::built);
  const Judged& same = judge.of(b.job);
  REQUIRE(same.groups.size() == 1);
  CHECK(same.groups.front().tilt >= g.tilt);
  CHECK(same.groups.front().tilt <= g.tilt);
  CHECK(in_mm(same.groups.front().swath) == doctest::Approx(in_mm(g.swath)).epsilon(identity));
  CHECK(same.groups.front().family == Family::tilted);
  Request finer = b.request;
  finer.image.resolution = given(ResolutionPair{dpi(1001), dpi(600)});
  const Job job = resolve(finer, b.catalogue, "2026-11-25");
  const auto& failing = judge.of(job).failing;
  CHECK(std::any_of(failing.begin(), failing.end(),
                    [](const Reason& r) { return r.code == "resolution"; }));
}
