// What an answer leaves of its requirement.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>
#include <string>

#include "output/compose_context.h"
#include "output/section_list.h"
#include "output/sketch_list.h"
#include "tests/whole/support/case.h"

namespace {

/// The margin of a requirement of the plain request changed so [%], from the figures.
std::string margin_of(const whole::Case& made, const std::string& key) {
  const output::Context context(made.specification, made.request.request, whole::templates());
  return output::requirement_margin(context, key);
}

std::string percent(double share) {
  const double value = std::round(share * 100);
  const std::string digits = std::to_string(static_cast<int>(std::abs(value)));
  return (value > 0 ? "+" : value < 0 ? "\u2212" : "") + digits + "\u00A0%";
}

const std::string dash = "\u2013";
constexpr double none = std::numeric_limits<double>::infinity();

}  // namespace

TEST_CASE(
    "the margin of a speed is that of the slowest part, head or stage, over the greatest speed "
    "asked") {
  const whole::Case made = whole::case_of("line.speed = 20..25 m/min\n");
  double slowest = none;
  for (const auto& group : made.specification.chosen) {
    slowest = std::min(slowest, group.speed_limit.si() * 60);
  }
  REQUIRE(std::isfinite(slowest));
  REQUIRE(made.specification.station);
  int stages = 0;
  for (const auto& stage : made.specification.station->stages) {
    if (!stage.speed_limit_m_per_s) continue;
    ++stages;
    slowest = std::min(slowest, *stage.speed_limit_m_per_s * 60);
  }
  CHECK(stages > 0);
  CHECK(margin_of(made, "line.speed") == percent(slowest / 25 - 1));
}

TEST_CASE("the margin of a resolution is that of the nearer axis") {
  const whole::Case made = whole::case_of("image.resolution = 600 x 300 dpi\n");
  double least = none;
  for (const auto& group : made.specification.chosen) {
    least = std::min({least, group.resolution_across.si() * 0.0254 / 600 - 1,
                      group.resolution_along.si() * 0.0254 / 300 - 1});
  }
  REQUIRE(std::isfinite(least));
  CHECK(margin_of(made, "image.resolution") == percent(least));
}

TEST_CASE("a registration that is not kept has a negative margin") {
  const whole::Case made = whole::case_of("image.registration = 19 um\n");
  double least = none;
  for (const auto& budget : made.specification.placement) {
    if (budget.name == "colour") {
      least = std::min(least, 1 - budget.expanded.si() / 19e-6);
    }
  }
  REQUIRE(least < 0);
  CHECK(margin_of(made, "image.registration") == percent(least));
}

TEST_CASE("limits leave what is not used of them") {
  const whole::Case made = whole::case_of("limits.heads = 40\nlimits.space = 5 m\n");
  CHECK(margin_of(made, "limits.heads") == percent(1 - made.specification.heads_total / 40.0));
  REQUIRE(made.specification.station);
  CHECK(margin_of(made, "limits.space") ==
        percent(1 - made.specification.station->footprint.si() / 5));
}

TEST_CASE("the margin of a budget is what the capital leaves of it") {
  const whole::Case made = whole::case_of("limits.budget = 900000 EUR\n");
  REQUIRE(made.specification.station);
  const calc::Station& station = *made.specification.station;
  const std::string left = percent(1 - station.cost.capital.major() / 900000);
  CHECK(margin_of(made, "limits.budget") == (station.bom_unpriced > 0 ? dash : left));
}

TEST_CASE("where nothing is chosen or the answer is no figure there is no margin") {
  CHECK(margin_of(whole::case_of("line.speed = 2900 m/min\n"), "line.speed") == dash);
  CHECK(margin_of(whole::case_of("product.width = 250 mm\n"), "product.width") == dash);
}

TEST_CASE("the map of speeds names the chosen head and marks what is asked") {
  std::set<bool> stacked;
  for (const char* const changes : {"", "line.speed = 90 m/min\n"}) {
    const whole::Case made = whole::case_of(changes);
    const output::Context context(made.specification, made.request.request, whole::templates());
    const std::string plot = output::plot_speed(context);
    for (const auto& group : made.specification.chosen) {
      // Other heads may stand between, where as many of them stand in line.
      const std::size_t name = plot.find('>' + group.head);
      REQUIRE(name != std::string::npos);
      const std::string label = plot.substr(name, plot.find('<', name) - name);
      const bool told = label.find(std::to_string(group.stack) + " in line") != std::string::npos;
      CHECK(told == (group.stack > 1));
      stacked.insert(told);
    }
    CHECK(plot.find(">asked<") != std::string::npos);
    CHECK(plot.find("speed, m/min") != std::string::npos);
  }
  CHECK(stacked.size() == 2);
}

TEST_CASE("a carriage has no map of speeds") {
  const whole::Case made = whole::case_of("line.mode = scanning\n");
  const output::Context context(made.specification, made.request.request, whole::templates());
  CHECK(output::plot_speed(context).empty());
}
