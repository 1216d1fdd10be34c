#include "calc/figure_steps.h"

#include <algorithm>
#include <cstddef>
#include <map>

#include "calc/trace.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

std::string group_id(std::size_t index) { return "g" + std::to_string(index + 1); }

/// Start of the ids of the first group of which no other has less of a figure.
template <class Figure>
std::string least_group(const Specification& spec, Figure figure) {
  const std::vector<Group>& all = spec.chosen;
  const auto least = std::min_element(
      all.begin(), all.end(), [&](const auto& a, const auto& b) { return figure(a) < figure(b); });
  return group_id(static_cast<std::size_t>(least - all.begin()));
}

/// The step of the budget that has most of a figure among those of a name, or of any.
template <class Figure>
std::string most_budget(const Specification& spec, std::string_view name, Figure figure) {
  const Budget* most = nullptr;
  for (const Budget& budget : spec.placement) {
    if (!name.empty() && budget.name != name) continue;
    if (most == nullptr || figure(*most) < figure(budget)) most = &budget;
  }
  return most == nullptr ? std::string() : budget_step(spec, *most);
}

}  // namespace

std::string FigureSteps::station_or_group(const std::string& figure,
                                          const std::string& of_group) const {
  return has_("station." + figure) ? "station." + figure : "g1." + of_group;
}

std::string FigureSteps::first_of(std::initializer_list<std::string> ids) const {
  for (const std::string& id : ids) {
    if (has_(id)) return id;
  }
  return {};
}

std::string FigureSteps::heads() const { return station_or_group("heads", "heads_total"); }

std::string FigureSteps::boards() const {
  const auto& uses = spec_.station->board_uses;
  return has_("station.boards") || uses.empty() ? "station.boards"
                                                : "station.boards." + uses.front().board;
}

std::string FigureSteps::joints() const { return station_or_group("joints", "joints"); }

std::string FigureSteps::speed() const {
  return least_group(spec_, [](const Group& g) { return g.speed_limit; }) + ".speed_limit";
}

std::string FigureSteps::frequency() const {
  return least_group(spec_, [](const Group& g) { return -g.frequency_per_nozzle.si(); }) +
         ".per_nozzle";
}

std::string FigureSteps::use() const {
  return least_group(spec_, [](const Group& g) { return -g.frequency_use; }) + ".use";
}

std::string FigureSteps::cover() const {
  std::string step;
  double least = 0;
  for (std::size_t i = 0; i < spec_.chosen.size(); ++i) {
    const Group& group = spec_.chosen[i];
    for (const ChannelDots& dots : group.dots) {
      if (!step.empty() && dots.cover_fraction >= least) continue;
      least = dots.cover_fraction;
      step = dots_steps(group, dots.channel, group_id(i)) + ".cover";
    }
  }
  return step;
}

std::string FigureSteps::widest_budget(std::string_view name) const {
  return most_budget(spec_, name, [](const Budget& b) { return b.expanded; });
}

std::string FigureSteps::tightest_budget() const {
  return most_budget(spec_, {}, [](const Budget& b) { return b.expanded / b.limit; });
}

std::string FigureSteps::headline(const std::string& key) const {
  constexpr std::string_view placement = "placement_";
  if (key.starts_with(placement)) {
    const std::size_t end = key.rfind('_');
    return widest_budget(std::string_view(key).substr(placement.size(), end - placement.size()));
  }
  if (key == "heads_total") return heads();
  if (key == "frequency_per_nozzle_khz") return frequency();
  if (key == "speed_limit_m_per_min") return speed();
  if (key == "cover_fraction") return cover();
  if (key == "running_per_year") return "station.running";
  if (key == "footprint_mm") return "station.footprint";
  if (key == "ink_l_per_year") {
    const auto& inks = spec_.station->consumption;
    const std::string channel = inks.empty() ? std::string() : inks.front().channel;
    return first_of({"station.year", "station." + channel + ".year"});
  }
  if (key == "exhaust_m3_per_h") {
    return first_of({"station.exhaust", "station.drying.exhaust", "station.ventilation.air_lel_hot",
                     "station.ventilation.air_lel"});
  }
  return "station." + key;
}

std::string FigureSteps::gate(const std::string& code, bool up) const {
  if (code == "frequency") return speed();
  if (code == "placement") return tightest_budget();
  if (code == "throw") return up ? "g1.throw_most" : "g1.throw_least";
  if (code == "cover") return cover();
  if (code == "heads") return heads();
  static const std::map<std::string_view, std::string_view> others{
      {"width", "g1.spare_width"},        {"resolution", "g1.across"},
      {"space", "station.footprint"},     {"cure", "station.lamp_dose"},
      {"drying", "station.drying.speed"}, {"viscosity", "g1.viscosity"},
      {"temperature", "g1.temperature"},  {"budget", "station.capital"}};
  const auto found = others.find(code);
  return found == others.end() ? std::string() : std::string(found->second);
}

}  // namespace calc
