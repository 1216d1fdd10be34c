#include "calc/arrangement.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <optional>

#include "calc/bom_prices.h"
#include "calc/eye.h"
#include "calc/selection_parts.h"
#include "support/catalogue_maker.h"
#include "support/head_bench.h"

using namespace calc;
using made::given;

namespace {

/// A request, a catalogue of one head, and the search over them, kept together for their pointers.
struct Bench : support::HeadBench {
  /// The one drop a place at the resolution asked for, whatever its gates say.
  Arrangement at_required() {
    prepare_search();
    Findings findings;
    const auto facts = mode_facts(search, head(), mode(), findings);
    REQUIRE(facts);
    Shape shape;
    shape.motion_axis = job.required.along;
    return arrange(search, search.groups.front(), *facts, shape, findings);
  }
  /// The only accepted arrangement's group.
  Group only(bool scanning = false) {
    const HeadTry result = run(scanning);
    REQUIRE(result.accepted.size() >= 1);
    return result.accepted.front().group;
  }
};

void native(HeadMode& m, double npi, int nozzles) {
  m.row_pitch = given(dpi(npi));
  m.row_offsets = given(std::vector<double>{0});
  m.nozzles = given(nozzles);
}

}  // namespace

TEST_CASE("heads across: W 484.3, S 70.5, o 1.5 at 360 per inch is 977 pitches and eight heads") {
  // Closed form on whole pitches; a plain division gives seven. Swath 70.5 mm is 999.2 pitches.
  Bench b;
  native(b.mode(), 360, 999);
  b.head().overlap = given(millimetres(1.5));
  b.request.image.width = given(millimetres(484.3));
  b.request.image.resolution = given(ResolutionPair{dpi(360), dpi(360)});
  b.request.substrate.dot_diameter = given(micrometres(110));
  const Group g = b.only();
  CHECK(g.heads_across == 8);
  CHECK(g.head_pitch / g.pitch == doctest::Approx(977));
  CHECK(in_mm(g.head_pitch) == doctest::Approx(68.93).epsilon(1e-4));
}

TEST_CASE("bodies as wide as their swath stand in two rows, joined heads in one") {
  Bench b;
  native(b.mode(), 360, 999);
  b.head().overlap = given(millimetres(1.5));
  b.head().body_width = given(millimetres(70));
  b.request.image.resolution = given(ResolutionPair{dpi(360), dpi(360)});
  b.request.substrate.dot_diameter = given(micrometres(110));
  const Group staggered = b.only();
  CHECK(staggered.rows_staggered == 2);
  CHECK(staggered.family == Family::staggered);
  b.head().joins = given(true);
  const Group joined = b.only();
  CHECK(joined.rows_staggered == 1);
  CHECK(joined.family == Family::joined);
  CHECK(joined.footprint < staggered.footprint);
}

TEST_CASE("600 per inch and a 53.8 um dot: 600 along does not close, 765 does") {
  Bench b;
  b.mode().drops = given(std::vector<Volume>{picolitres(14)});
  b.mode().frequency = given(std::vector<Frequency>{kilohertz(40)});
  b.request.substrate.dot_diameter = given(micrometres(53.8));
  b.request.substrate.dot_volume = given(picolitres(14));
  const Group g = b.only();
  CHECK(in_dpi(g.resolution_across) == doctest::Approx(600));
  CHECK(in_dpi(g.resolution_along) == doctest::Approx(765).epsilon(1e-3));
  CHECK(g.dots.front().cover_fraction == doctest::Approx(1));
}

TEST_CASE("150 kHz over heads of 50 kHz is three in a row, never four") {
  Bench b;
  b.mode().frequency = given(std::vector<Frequency>(3, kilohertz(50)));
  b.request.line.speed = given(metres_per_second(150e3 * 0.0254 / 600));
  const Group g = b.only();
  CHECK(g.stack == 3);
  CHECK(g.frequency_use == doctest::Approx(1));
  CHECK(g.heads_total == g.heads_across * 3);
}

TEST_CASE("half the native resolution is interleaved twice") {
  Bench b;
  native(b.mode(), 300, 640);
  const Group g = b.only();
  CHECK(g.interleave == 2);
  CHECK(in_dpi(g.resolution_across) == doctest::Approx(600));
  CHECK(g.stack == 1);
}

TEST_CASE("uneven rows count by their largest gap") {
  Bench b;
  b.mode().row_offsets = given(std::vector<double>{0, 0.25, 0.5, 0.6});
  b.prepare_search();
  Findings findings;
  const auto facts = mode_facts(b.search, b.head(), b.mode(), findings);
  REQUIRE(facts);
  CHECK(in_dpi(facts->native) == doctest::Approx(150 / 0.4));
}

TEST_CASE("a film is reached by a bigger drop first, then by more heads in line") {
  Bench b;
  b.request.colours.front().film = given(micrometres(7));
  const Arrangement bigger = b.at_required();
  CHECK(bigger.level == 2);
  CHECK(bigger.shape.film_heads == 1);
  b.request.colours.front().film = given(micrometres(12));
  const Arrangement more = b.at_required();
  CHECK(more.shape.film_heads == 2);
  CHECK(more.heads == 2 * bigger.heads);
  CHECK(more.per_nozzle == bigger.per_nozzle);
}

TEST_CASE("a film is also reached by a finer motion: 12 um of 15 pL at 600 across is 860 along") {
  // Mass balance, closed form: 12 um / (15 pL x 600 / 25.4 mm) = 860.2 per inch.
  Bench b;
  b.request.colours.front().film = given(micrometres(12));
  const HeadTry found = b.run();
  const auto finer = std::find_if(
      found.accepted.begin(), found.accepted.end(),
      [](const Candidate& c) { return c.group.film_heads == 1 && c.group.interleave == 1; });
  REQUIRE(finer != found.accepted.end());
  CHECK(in_dpi(finer->group.resolution_along) == doctest::Approx(860.213).epsilon(1e-5));
  CHECK(in_um(finer->arrangement.laydown) == doctest::Approx(12));
}

TEST_CASE("every drop size gives the motion at which it closes, likely and at the upper end") {
  // Closed form 1/sqrt(D^2 - p^2): p 42.333 um, drops of 21.216 and 33.678 um. 20 pL at 1.6: 53.884
  // um and 761.9 per inch; 5 pL at 2.4: 50.918 um and 897.7; at 1.6 narrower than the pitch.
  Bench b;
  b.request.substrate.dot_diameter.reset();
  b.request.substrate.dot_volume.reset();
  b.mode().drops = given(std::vector<Volume>{picolitres(5), picolitres(20)});
  b.mode().frequency = given(std::vector<Frequency>{kilohertz(30), kilohertz(30)});
  b.prepare_search();
  Findings findings;
  const auto facts = mode_facts(b.search, b.head(), b.mode(), findings);
  REQUIRE(facts);
  std::vector<double> at_600;
  Shapes shapes;
  find_shapes(b.search, b.search.groups.front(), *facts, {}, shapes);
  for (const Shape& s : shapes.list) {
    if (s.interleave == 1) at_600.push_back(in_dpi(s.motion_axis));
  }
  REQUIRE(at_600.size() == 3);
  CHECK(at_600[0] == doctest::Approx(600));
  CHECK(at_600[1] == doctest::Approx(761.9).epsilon(1e-3));
  CHECK(at_600[2] == doctest::Approx(897.7).epsilon(1e-3));
}

TEST_CASE("a bigger drop is never picked on a guessed spread alone") {
  Bench b;
  b.request.substrate.dot_diameter.reset();
  b.request.substrate.dot_volume.reset();
  b.mode().drops = given(std::vector<Volume>{picolitres(10), picolitres(30)});
  b.mode().frequency = given(std::vector<Frequency>{kilohertz(30), kilohertz(30)});
  const Arrangement guessed = b.at_required();  // 10 pL: 42.8 um, at 2.4: 64.2 um of 59.9
  CHECK(guessed.level == 0);
  CHECK(guessed.open);
  b.request.substrate.spread_factor = given(1.6);
  const Arrangement measured = b.at_required();  // 30 pL: 38.55 x 1.6 = 61.7 um
  CHECK(measured.level == 1);
  CHECK_FALSE(measured.open);
}

TEST_CASE("edges, a dead nozzle and a line: 62 um dots 42.33 um apart") {
  // Closed forms: 62 - 42.333; 2 x 42.333 - 62; sqrt(84.667^2 + 42.333^2).
  Bench b;
  b.mode().drops = given(std::vector<Volume>{picolitres(10)});
  b.mode().frequency = given(std::vector<Frequency>{kilohertz(30)});
  const ChannelDots measured = b.only().dots.front();
  CHECK(in_um(measured.edge_gain) == doctest::Approx(19.667).epsilon(1e-4));
  CHECK(measured.bar_reduction_dots == 0);
  CHECK(in_um(measured.dead_nozzle_gap) == doctest::Approx(22.667).epsilon(1e-4));
  CHECK(in_um(measured.hiding_dot) == doctest::Approx(94.66).epsilon(1e-4));
  CHECK_FALSE(measured.finer_than_dot);
  CHECK_FALSE(measured.scalloped.has_value());
  b.request.substrate.contact_angle = given(pi / 3);
  CHECK(b.only().dots.front().scalloped.has_value());
  b.request.substrate.dot_diameter = given(micrometres(86));
  const ChannelDots wide = b.only().dots.front();
  CHECK(wide.bar_reduction_dots == 1);
  CHECK(wide.finer_than_dot);
}

TEST_CASE("four colours on heads of two colours take two positions") {
  Bench b;
  b.mode().colours = given(2);
  for (const char* name : {"cyan", "magenta", "yellow"}) {
    Colour c;
    c.name = name;
    b.request.colours.push_back(c);
  }
  for (const char* name : {"cyan", "magenta", "yellow"}) {
    b.request.inks.push_back(b.request.inks.front());
    b.request.inks.back().name = name;
  }
  CHECK(b.only().positions == 2);
}

TEST_CASE("a carriage takes the least heads that feed fast enough") {
  Bench b;
  b.request.line.mode = given(Mode::scanning);
  b.request.line.indexing = given(true);
  b.request.line.speed = given(metres_per_second(0.01));
  const Group slow = b.only(true);
  REQUIRE(slow.scan);
  CHECK(slow.family == Family::scanning);
  CHECK(slow.scan->quality_passes == 2);
  CHECK(slow.speed_limit.si() >= 0.01);
  // Least: with one head less the feed would fall short.
  b.request.line.speed = given(metres_per_second(0.05));
  const Group fast = b.only(true);
  CHECK(fast.scan->heads_per_colour > slow.scan->heads_per_colour);
  Shape fewer;
  fewer.scanning = true;
  fewer.carriage_heads = fast.scan->heads_per_colour - 1;
  fewer.motion_axis = fast.resolution_across;
  Findings findings;
  const auto facts = mode_facts(b.search, b.head(), b.mode(), findings);
  REQUIRE(facts);
  arrange(b.search, b.search.groups.front(), *facts, fewer, findings);
  REQUIRE(!findings.failures.empty());
  CHECK(findings.failures.front().code == "frequency");
  CHECK(findings.failures.front().subject == "throughput");
}

TEST_CASE("every head has its place: swaths cover the width, banks stand one behind the other") {
  Bench b;
  const Selection s = [&] {
    b.prepare_search();
    return select(b.job, b.catalogue);
  }();
  REQUIRE(s.chosen.size() == 1);
  const Group& g = s.chosen.front();
  REQUIRE(static_cast<int>(g.places.size()) == g.heads_total);
  const auto [low, high] =
      std::minmax_element(g.places.begin(), g.places.end(),
                          [](const HeadPlace& p, const HeadPlace& q) { return p.x < q.x; });
  CHECK(in_mm(low->x - g.swath / 2) <= 1e-9);
  CHECK(in_mm(high->x + g.swath / 2) >= 200 - 1e-9);
  for (std::size_t i = 1; i < g.places.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      const bool same_row = std::abs(in_mm(g.places[i].y - g.places[j].y)) < 40;
      if (same_row) CHECK(std::abs(in_mm(g.places[i].x - g.places[j].x)) >= 70.5 - 1e-9);
    }
  }
}
