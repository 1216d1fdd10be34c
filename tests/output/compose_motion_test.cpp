/// What a document says of a carriage, of its strokes and its feed.
#include <doctest/doctest.h>

#include <string>

#include "calc/lattice.h"
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"
#include "output/sketch_list.h"
#include "tests/output/support/hand_made.h"

namespace {

using hand_made::Case;
using hand_made::context;
using hand_made::holds;

std::string grown(const calc::Group& group, calc::Resolution pitch) {
  const calc::Length gain = calc::edge_gain(1.0 / pitch, group.dots.front().dot_diameter);
  return "+" + output::number(in_um(gain), 3);
}

}  // namespace

// The pitch along the stroke is that of the columns, so it is the width of lines along the feed
// that it sets.
TEST_CASE("lines along the feed grow by the dot less the pitch along the stroke") {
  Case made = hand_made::scanning();
  calc::Group& group = made.spec.chosen.front();
  group.resolution_across = calc::dpi(747);
  group.dots.front().straight_pitch = calc::micrometres(30);
  const std::string text = output::dots_section(context(made));
  CHECK(holds(text, "along the feed changes by " + grown(group, group.resolution_across)));
  CHECK(holds(text, "along the stroke by " + grown(group, group.resolution_along)));
  CHECK(holds(text, "single dots along the stroke"));
  CHECK_FALSE(holds(text, "along the motion"));
  CHECK(holds(output::sketch_dots(context(made)), "pitch along the stroke"));
  group.scan.reset();
  CHECK(holds(output::dots_section(context(made)), "along the motion changes by"));
}

TEST_CASE("joints of strokes are measured along the stroke and along the feed") {
  Case made = hand_made::scanning();
  const auto text = [&](const char* axis) {
    calc::Check check;
    check.code = "strokes";
    check.axis = axis;
    made.spec.tests = {check};
    return output::checks_section(context(made));
  };
  CHECK(holds(text("across"), "between heads, along the stroke."));
  CHECK(holds(text("along"), "between heads, along the feed."));
  CHECK(holds(text("both"), "between heads, along the stroke and along the feed."));
}

TEST_CASE("budgets and conditions of a carriage are along its stroke and its feed") {
  Case made = hand_made::scanning();
  const auto said = [&](const char* axis) {
    const calc::Notice part{"placement",
                            {{"subject", std::string("colour"), ""},
                             {"axis", std::string(axis), ""},
                             {"value", 117.0, "um"},
                             {"limit", 42.3, "um"}},
                            "",
                            {}};
    return context(made).notice("condition", part);
  };
  CHECK(holds(said("motion"), "along the stroke"));
  CHECK(holds(said("nozzle"), "along the feed"));
  made.spec.chosen.front().scan.reset();
  CHECK(holds(said("motion"), "along the motion"));
}

TEST_CASE("data and ink of a carriage are at its speed, of a line at the speed asked") {
  Case line = hand_made::feasible(), carriage = hand_made::scanning();
  for (Case* const made : {&line, &carriage}) {
    made->spec.station->feeds.emplace_back();
    made->spec.station->feeds.back().bound_by = "one";
  }
  CHECK(holds(output::drive_section(context(line)), "per channel at the highest speed asked"));
  const std::string text = output::drive_section(context(carriage));
  CHECK(holds(text, "per channel at the carriage speed as it runs"));
  CHECK_FALSE(holds(text, "highest speed asked"));
  const calc::Notice mist{
      "uv_mist", {{"peak", 1780.0, "mL/h"}, {"ml_per_hour", 205.0, "mL/h"}}, "", {}};
  CHECK(holds(context(carriage).notice("safety", mist), "the carriage speed as it runs"));
  CHECK(holds(context(line).notice("safety", mist), "the highest speed asked"));
}

TEST_CASE("a carriage needs its travel at least, rounded up wherever it is told") {
  Case made = hand_made::scanning();
  made.spec.chosen.front().scan->machine_width = calc::millimetres(2214.26);
  const output::Context c = context(made);
  const calc::Notice pinch{
      "carriage_pinch", {{"speed", 0.838, "m/s"}, {"width", 2214.26, "mm"}}, "", {}};
  const std::string width = "2215\u00A0mm";
  CHECK(holds(c.notice("safety", pinch), width));
  CHECK(holds(output::frequency_section(c), width));
  CHECK(holds(output::services_section(c), width + " or more"));
  CHECK(holds(output::requirement_answer(c, "image.width"), width));
  const Case line = hand_made::feasible();
  CHECK_FALSE(holds(output::services_section(context(line)), "Travel of the carriage"));
}
