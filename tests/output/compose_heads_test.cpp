/// How many heads there are, and where the figures of several groups lead.
#include <doctest/doctest.h>

#include <string>

#include "output/compose_text.h"
#include "output/section_list.h"
#include "tests/output/support/hand_made.h"

namespace {

using hand_made::Case;
using hand_made::holds;
using hand_made::templates;

std::string arrangement(const Case& made) {
  return output::arrangement_section({made.spec, made.request, templates()});
}

void add_step(Case& made, const std::string& id) {
  made.spec.trace.push_back(made.spec.trace.front());
  made.spec.trace.back().id = id;
}

}  // namespace

TEST_CASE("the factors of the heads leave out what is one and not asked for") {
  Case made = hand_made::feasible();
  const std::string text = arrangement(made);
  const std::string times = " \u00D7 ";
  CHECK(holds(text, "4 across" + times + "4 for the colour positions = 16 in all"));
  CHECK(holds(
      text, "4 across" + times + "2 stacked for speed" + times + "2 for the wet film = 16 in all"));
  made.spec.inputs.push_back(made.spec.inputs[1]);
  made.spec.inputs.back().key = "colour.black.film";
  CHECK(holds(arrangement(made), "4 for the colour positions" + times + "1 for the wet film = 16"));
}

TEST_CASE("a factor alone is no product") {
  Case made = hand_made::feasible();
  made.spec.chosen.front().positions = 1;
  CHECK(holds(arrangement(made), "process colours: 4 across. Each nozzle"));
}

TEST_CASE("idle nozzles are told without those of overlaps where heads overlap") {
  Case made = hand_made::feasible();
  const std::string overlaps = "those of overlaps left out";
  CHECK(holds(arrangement(made), overlaps));
  for (calc::Group& group : made.spec.chosen) group.heads_across = 1;
  CHECK_FALSE(holds(arrangement(made), overlaps));
}

TEST_CASE("a row of several groups leads to the steps of all whose figure differs") {
  Case made = hand_made::feasible();
  for (const char* const id : {"g1.swath", "g2.swath", "g1.motion", "g2.motion"}) {
    add_step(made, id);
  }
  CHECK(holds(arrangement(made), "key=\"g1.swath\""));
  made.spec.chosen[1].swath = calc::millimetres(70);
  CHECK(holds(arrangement(made), "key=\"g1.swath g2.swath\""));
  const auto front = [&made] { return output::front_page({made.spec, made.request, templates()}); };
  CHECK_FALSE(holds(front(), "g2.motion"));
  made.spec.chosen[1].resolution_along = calc::dpi(747);
  CHECK(holds(front(), "g1.motion g2.motion"));
}

TEST_CASE("the text of dots leads to the steps of what it tells, and to no others") {
  Case made = hand_made::feasible();
  calc::Group& group = made.spec.chosen[1];
  calc::ChannelDots& dots = group.dots.front();
  for (const char* const step : {"dead_nozzle_gap", "straight_pitch", "edge_gain"}) {
    add_step(made, std::string("g2.white.") + step);
  }
  const auto text = [&made] {
    return output::dots_section({made.spec, made.request, templates()});
  };
  group.resolution_across = group.resolution_along;
  dots.edge_gain = dots.dead_nozzle_gap = calc::Length();
  dots.straight_pitch.reset();
  CHECK_FALSE(holds(text(), "g2.white.edge_gain"));
  CHECK_FALSE(holds(text(), "g2.white.dead_nozzle_gap"));
  dots.edge_gain = dots.dead_nozzle_gap = calc::micrometres(20);
  CHECK(holds(text(), "g2.white.edge_gain g2.white.dead_nozzle_gap"));
  dots.straight_pitch = calc::micrometres(30);
  CHECK(holds(text(), "g2.white.dead_nozzle_gap g2.white.straight_pitch"));
}
