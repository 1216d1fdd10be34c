// The tint of an ink follows its name, and a name that says no colour gets none.
#include "output/drawing_fill.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <string>
#include <vector>

#include "tests/output/support/hand_made.h"

namespace {

const output::Templates& templates() {
  static const output::Templates shared;
  return shared;
}

std::string fill(const std::string& name, std::size_t order = 1) {
  static const hand_made::Case made = hand_made::feasible();
  return output::fill_of(output::Context(made.spec, made.request, templates()), name, order);
}

std::vector<std::string> fills(const std::string& names, std::size_t order = 0) {
  static const hand_made::Case made = hand_made::feasible();
  return output::fills_of(output::Context(made.spec, made.request, templates()), names, order);
}

struct Rgb {
  int red, green, blue;
};
Rgb rgb(const std::string& fill) {
  REQUIRE(fill.size() == 6);
  const auto part = [&](std::size_t at) {
    return static_cast<int>(std::strtol(fill.substr(at, 2).c_str(), nullptr, 16));
  };
  return {part(0), part(2), part(4)};
}
bool is_grey(const std::string& fill) {
  const Rgb c = rgb(fill);
  return c.red == c.green && c.green == c.blue;
}

}  // namespace

TEST_CASE("a common colour has a tint of its own, by the part of the light it is strongest in") {
  for (const char* blue : {"navy", "blue", "Navy", "dark-blue", "navy-blue", "blau"}) {
    CAPTURE(blue);
    const Rgb c = rgb(fill(blue));
    CHECK(c.blue > c.red);
    CHECK(c.blue > c.green);
  }
  for (const char* red : {"red", "maroon", "burgundy", "brown", "pink", "copper", "rot"}) {
    CAPTURE(red);
    const Rgb c = rgb(fill(red));
    CHECK(c.red > c.green);
    CHECK(c.red > c.blue);
  }
  for (const char* green : {"green", "lime", "light_green", "gr\u00FCn"}) {
    CAPTURE(green);
    const Rgb c = rgb(fill(green));
    CHECK(c.green > c.red);
    CHECK(c.green > c.blue);
  }
  CHECK(fill("gray") == fill("grey"));
  CHECK(fill("yellow") == templates().setting("drawing.yellow"));
}

TEST_CASE("a name that says no colour is grey, and the next such name another grey") {
  for (const char* name : {"house", "spot-1", "x", "485"}) {
    CAPTURE(name);
    for (std::size_t order = 0; order < 6; ++order) CHECK(is_grey(fill(name, order)));
    CHECK(fill(name, 0) != fill(name, 1));
  }
}

TEST_CASE("a head of several inks has the colour of each, in the order they are named") {
  CHECK(fills("light-cyan+magenta") ==
        std::vector<std::string>{fill("light-cyan"), fill("magenta")});
  CHECK(fills("white") == std::vector<std::string>{fill("white")});
  // Of inks whose names say no colour no two beside each other have the same grey.
  const std::vector<std::string> first = fills("base+spot", 0), second = fills("top+house", 1);
  CHECK(first.at(0) != first.at(1));
  CHECK(first.at(1) != second.at(0));
}
