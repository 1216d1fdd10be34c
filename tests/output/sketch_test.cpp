#include "output/sketch.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "output/markup.h"
#include "output/sketch_list.h"
#include "tests/output/support/hand_made.h"

namespace {

/// The drawing of a figure's markup.
output::Node drawing_of(const std::string& figure) {
  const output::Node root = output::parse_markup("<document>" + figure + "</document>");
  return root.children.at(0).children.at(0);
}

int count(const output::Node& drawing, const std::string& name) {
  int found = 0;
  for (const output::Node& node : drawing.children) found += node.name == name ? 1 : 0;
  return found;
}

/// The numbers "x,y" of a poly's points.
std::vector<double> coordinates(std::string_view points) {
  std::vector<double> list;
  std::string number;
  for (const char c : std::string(points) + " ") {
    if (c == ' ' || c == ',') {
      list.push_back(std::stod(number));
      number.clear();
    } else {
      number += c;
    }
  }
  return list;
}

/// Whether every shape lies on the drawing's paper.
bool stays_inside(const output::Node& drawing) {
  const double width = std::stod(std::string(drawing.get("width")));
  const double height = std::stod(std::string(drawing.get("height")));
  for (const output::Node& node : drawing.children) {
    for (const auto& [name, value] : node.attributes) {
      if (name == "x" || name == "x1" || name == "x2") {
        if (std::stod(value) < 0 || std::stod(value) > width) return false;
      } else if (name == "y" || name == "y1" || name == "y2") {
        if (std::stod(value) < 0 || std::stod(value) > height) return false;
      } else if (name == "points") {
        const std::vector<double> list = coordinates(value);
        for (std::size_t i = 0; i + 1 < list.size(); i += 2) {
          if (list[i] < 0 || list[i] > width || list[i + 1] < 0 || list[i + 1] > height) {
            return false;
          }
        }
      }
    }
  }
  return true;
}

}  // namespace

TEST_CASE("scales run 1, 2, 5 and are the largest that fits") {
  // ISO 5455: 1:1, 1:2, 1:5, 1:10 ... and their inverses; by hand.
  struct Case {
    double real, paper;
    std::string text;
  };
  for (const Case& c : {Case{100, 100, "1:1"}, Case{101, 100, "1:2"}, Case{480, 100, "1:5"},
                        Case{1600, 116, "1:20"}, Case{0.3, 54, "100:1"}, Case{0.25, 54, "200:1"},
                        Case{0.1, 54, "500:1"}}) {
    CAPTURE(c.real);
    const output::Scale scale = output::fitting_scale(c.real, 1e-6, c.paper, 1);
    CHECK(scale.text == c.text);
    CHECK(c.real * scale.factor <= c.paper * (1 + 1e-9));
  }
}

TEST_CASE("the plan draws every head with its nozzle field, to its scale") {
  const output::Templates templates;
  const hand_made::Case made = hand_made::feasible();
  const output::Context context(made.spec, made.request, templates);
  const output::Node drawing = drawing_of(output::sketch_plan(context));
  std::size_t places = 0;
  for (const calc::Group& group : made.spec.chosen) places += group.places.size();
  // A body and a field a head, and the head of the arrow.
  CHECK(count(drawing, "poly") == static_cast<int>(2 * places) + 1);
  CHECK(stays_inside(drawing));
  // Fields of the first two heads are head_pitch / scale apart; 1:5 is the largest that fits here.
  std::vector<double> lefts;
  for (const output::Node& node : drawing.children) {
    if (node.name != "poly" || node.get("fill") != "56B4E9") continue;
    lefts.push_back(coordinates(node.get("points")).at(0));
  }
  REQUIRE(lefts.size() >= 2);
  CHECK(lefts[1] - lefts[0] == doctest::Approx(64.31 / 5).epsilon(1e-3));
}

TEST_CASE("without the body in the catalogue the plan still has every nozzle field") {
  const output::Templates templates;
  hand_made::Case made = hand_made::feasible();
  made.spec.inputs.clear();
  const output::Context context(made.spec, made.request, templates);
  const output::Node drawing = drawing_of(output::sketch_plan(context));
  CHECK(count(drawing, "poly") ==
        static_cast<int>(made.spec.chosen[0].places.size() + made.spec.chosen[1].places.size()) +
            1);
  CHECK(stays_inside(drawing));
}

TEST_CASE("dots are drawn at true relative size") {
  const output::Templates templates;
  const hand_made::Case made = hand_made::feasible();
  const output::Context context(made.spec, made.request, templates);
  const output::Node drawing = drawing_of(output::sketch_dots(context));
  std::vector<const output::Node*> circles;
  for (const output::Node& node : drawing.children) {
    if (node.name == "circle" && node.get("fill") == "none") circles.push_back(&node);
  }
  REQUIRE(circles.size() == 60);  // two lattices of 6 by 5
  const auto value = [&](std::size_t i, const std::string& name) {
    return std::stod(std::string(circles[i]->get(name)));
  };
  const double pitch = value(1, "x") - value(0, "x");
  CHECK(2 * value(0, "radius") / pitch == doctest::Approx(60.1 / (25400.0 / 600)).epsilon(1e-3));
  CHECK(stays_inside(drawing));
}

TEST_CASE("the joint is drawn only where heads stand side by side") {
  const output::Templates templates;
  const hand_made::Case made = hand_made::feasible();
  const output::Node joint =
      drawing_of(output::sketch_joint(output::Context(made.spec, made.request, templates)));
  CHECK(count(joint, "poly") == 2);
  CHECK(stays_inside(joint));
  const hand_made::Case alone = hand_made::scanning();
  CHECK(output::sketch_joint(output::Context(alone.spec, alone.request, templates)).empty());
}

TEST_CASE("the labels behind the sizes of a joint stand one below the other") {
  const output::Templates templates;
  hand_made::Case made = hand_made::feasible();
  for (const calc::UnitSystem units : {calc::UnitSystem::si, calc::UnitSystem::us}) {
    made.request.request.units = calc::exactly(units);
    const output::Node joint =
        drawing_of(output::sketch_joint(output::Context(made.spec, made.request, templates)));
    std::vector<double> heights;
    for (const output::Node& node : joint.children) {
      if (node.name != "label" || node.get("anchor") != "start") continue;
      heights.push_back(std::stod(std::string(node.get("y"))));
    }
    std::sort(heights.begin(), heights.end());
    REQUIRE(!heights.empty());  // that of the overlap stands there in either
    for (std::size_t i = 1; i < heights.size(); ++i) {
      CHECK(heights[i] - heights[i - 1] > 2.5);  // mm, a line of 7 pt
    }
  }
}

TEST_CASE("the strip shows one box for the signal, each group and each stage") {
  const output::Templates templates;
  const hand_made::Case made = hand_made::feasible();
  const output::Node strip =
      drawing_of(output::sketch_station(output::Context(made.spec, made.request, templates)));
  // Four boxes; eight rows of the process heads, two of the white ones, the head of the arrow.
  CHECK(count(strip, "rect") == 4);
  CHECK(count(strip, "poly") == 8 + 2 + 1);
  CHECK(stays_inside(strip));
}

namespace {

int filled(const output::Node& drawing, std::string_view fill) {
  int found = 0;
  for (const output::Node& node : drawing.children) found += node.get("fill") == fill ? 1 : 0;
  return found;
}

}  // namespace

TEST_CASE("heads are drawn in the colours of the inks they carry, those of several in bands") {
  const output::Templates templates;
  hand_made::Case made = hand_made::feasible();
  const std::string& magenta = templates.setting("drawing.magenta");
  const std::string& yellow = templates.setting("drawing.yellow");
  const auto drawn = [&](const std::string& fill) {
    const output::Context context(made.spec, made.request, templates);
    std::vector<int> counts;
    for (const std::string& figure : {output::sketch_station(context), output::sketch_plan(context),
                                      output::sketch_line(context)}) {
      counts.push_back(filled(drawing_of(figure), fill));
    }
    return counts;
  };
  int of_magenta = 0;
  for (const calc::HeadPlace& place : made.spec.chosen[0].places) {
    of_magenta += place.channel == "magenta" ? 1 : 0;
  }
  REQUIRE(of_magenta > 0);
  // Two of the eight rows, every head of the plan, one band of the line.
  CHECK(drawn(magenta) == std::vector<int>{2, of_magenta, 1});
  CHECK(drawn(yellow) == std::vector<int>{2, of_magenta, 1});
  for (calc::HeadPlace& place : made.spec.chosen[0].places) {
    place.channel = place.position < 2 ? "cyan+magenta" : "yellow+black";
  }
  CHECK(drawn(magenta) == std::vector<int>{4, 2 * of_magenta, 2});
  CHECK(drawn(yellow) == std::vector<int>{4, 2 * of_magenta, 2});
}

TEST_CASE("heads are drawn where the calculation has them, those of later groups too") {
  const output::Templates templates;
  const hand_made::Case made = hand_made::feasible();
  const output::Node drawing =
      drawing_of(output::sketch_plan(output::Context(made.spec, made.request, templates)));
  // Body and field of every head in order, each four corners from the upper left one.
  std::vector<double> tops;
  for (const output::Node& node : drawing.children) {
    if (node.name == "poly") tops.push_back(coordinates(node.get("points")).at(1));
  }
  const std::vector<calc::HeadPlace>& first = made.spec.chosen[0].places;
  const std::vector<calc::HeadPlace>& second = made.spec.chosen[1].places;
  const double drawn = tops.at(2 * first.size()) - tops.at(0);
  const double real = in_mm(second.front().y - first.front().y);
  CHECK(real == doctest::Approx(340));
  CHECK(drawn == doctest::Approx(real / 5).epsilon(1e-3));  // 1:5, as above
}
