/// What is left between the answer of the design and a requirement, as a share of the requirement.
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string_view>
#include <utility>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/rate_text.h"
#include "output/section_list.h"

namespace output {
namespace {

using Share = std::optional<double>;

/// Of two, the one that leaves less.
Share lesser(Share a, Share b) {
  if (!a || !b) return a ? a : b;
  return std::min(*a, *b);
}

/// How far a figure that shall be reached is exceeded.
Share above(double value, double least) {
  return least > 0 ? Share(value / least - 1) : std::nullopt;
}

/// How far a figure that shall not be exceeded stays below.
Share below(double value, double most) { return most > 0 ? Share(1 - value / most) : std::nullopt; }

/// Of the delivered lattice over one demand, on the axis and in the group where it is least.
Share lattice_margin(const Context& c, std::string_view demand) {
  Share least;
  if (!c.spec.required) return least;
  for (const calc::Demand& d : c.spec.required->demands) {
    if (d.name != demand) continue;
    for (const calc::Group& group : c.spec.chosen) {
      if (d.across) least = lesser(least, above(group.resolution_across.si(), d.across->si()));
      if (d.along) least = lesser(least, above(group.resolution_along.si(), d.along->si()));
    }
  }
  return least;
}

Share resolution_margin(const Context& c) { return lattice_margin(c, "explicit"); }
Share feature_margin(const Context& c) { return lattice_margin(c, "feature"); }
Share text_margin(const Context& c) { return lattice_margin(c, "text"); }
Share viewing_margin(const Context& c) { return lattice_margin(c, "viewing"); }

Share width_margin(const Context& c) {
  const calc::Group& group = c.spec.chosen.front();
  if (group.scan || !c.request.image.width) return {};
  const calc::Length width = group.head_pitch * (group.heads_across - 1) + group.swath;
  return above(width.si(), c.request.image.width->value.si());
}

Share speed_margin(const Context& c) {
  if (!c.request.line.speed || c.spec.chosen.front().scan) return {};
  const calc::Speed held = speed_held(c).value_or(highest_speed(c).speed);
  return above(held.si(), c.request.line.speed->high.si());
}

Share budget_margin(const Context& c, std::string_view name) {
  Share least;
  for (const calc::Budget& budget : c.spec.placement) {
    if (budget.name != name) continue;
    least = lesser(least, below(budget.expanded.si(), budget.limit.si()));
  }
  return least;
}

Share registration_margin(const Context& c) { return budget_margin(c, "colour"); }
Share placement_margin(const Context& c) { return budget_margin(c, "image"); }

Share throughput_margin(const Context& c) {
  const auto over = speed_over_needed(c);
  return over ? Share(*over - 1) : std::nullopt;
}

/// Nothing where an item has no price: the sum is a lower bound then.
Share budget_of_capital(const Context& c) {
  const auto& budget = c.request.limits.budget;
  if (!c.spec.station || !budget) return {};
  const calc::Station& station = *c.spec.station;
  if (station.bom_unpriced > 0 || station.currency != budget->value.currency) return {};
  return below(station.cost.capital.major(), budget->value.amount.major());
}

/// Of the dose given at the speed asked for over that of the ink.
Share dose_margin(const Context& c, const std::string& key) {
  const calc::Input* const asked = c.input(key);
  if (!c.spec.station || asked == nullptr) return {};
  Share least;
  for (const calc::Stage& stage : c.spec.station->stages) {
    if (stage.dose_given_mj_per_cm2) {
      least = lesser(least, above(*stage.dose_given_mj_per_cm2, asked->value));
    }
  }
  return least;
}

Share heads_margin(const Context& c) {
  return below(c.spec.heads_total, c.request.limits.heads->value);
}

Share lead_margin(const Context& c) {
  if (!c.spec.station || !c.spec.station->lead_time) return {};
  return below(c.spec.station->lead_time->days, c.request.limits.lead_time->value.si() / 86400);
}

Share space_margin(const Context& c) {
  if (!c.spec.station) return {};
  return below(c.spec.station->footprint.si(), c.request.limits.space->value.si());
}

Share margin(const Context& c, const std::string& key) {
  if (Context::pattern(key) == "ink.NAME.cure_dose") return dose_margin(c, key);
  using Margin = Share (*)(const Context&);
  constexpr std::array<std::pair<std::string_view, Margin>, 13> margins{{
      {"image.width", width_margin},
      {"image.resolution", resolution_margin},
      {"image.smallest_feature", feature_margin},
      {"image.smallest_text", text_margin},
      {"image.viewing_distance", viewing_margin},
      {"image.registration", registration_margin},
      {"image.placement", placement_margin},
      {"line.speed", speed_margin},
      {"line.throughput", throughput_margin},
      {"limits.budget", budget_of_capital},
      {"limits.heads", heads_margin},
      {"limits.lead_time", lead_margin},
      {"limits.space", space_margin},
  }};
  for (const auto& [name, find] : margins) {
    if (name == key) return find(c);
  }
  return {};
}

}  // namespace

std::string requirement_margin(const Context& c, const std::string& key) {
  constexpr std::string_view dash = "\xE2\x80\x93";
  if (c.spec.chosen.empty()) return std::string(dash);
  const Share share = margin(c, key);
  if (!share) return std::string(dash);
  const double percent = std::round(*share * 100);
  return (percent > 0 ? "+" : "") + with_unit(percent + 0.0, "%", 3);
}

}  // namespace output
