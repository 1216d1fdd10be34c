/// Plots: what the eye tells apart over distance, and what the station costs over its years.
#include <algorithm>
#include <cmath>

#include "output/compose_text.h"
#include "output/format.h"
#include "output/plot.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double paper_width = 136;
constexpr double reach = 5;  ///< how many times nearer and farther the plot goes

std::string dpi_label(const Context& c, const std::string& key, double dpi) {
  return c.words(key, {{"VALUE", with_unit(dpi, "dpi", 3)}});
}

/// One cost over the years, at today's value.
struct Share {
  std::string name;
  double amount = 0;
};

/// Capital and each yearly cost at today's value, the greatest first.
std::vector<Share> shares(const Context& c, const calc::Cost& cost) {
  const double running = cost.running_per_year.major();
  const double factor = running > 0 ? (cost.ownership.major() - cost.capital.major()) / running : 0;
  std::vector<Share> list{{c.words("share.capital"), cost.capital.major()}};
  const auto add = [&](const std::string& name, calc::Money yearly) {
    list.push_back({c.words("share." + name), yearly.major() * factor});
  };
  add("ink", cost.ink_per_year);
  add("heads", cost.heads_per_year);
  add("energy", cost.energy_per_year);
  add("labour", cost.labour_per_year);
  add("cleaning", cost.cleaning_per_year);
  std::erase_if(list, [](const Share& share) { return share.amount <= 0; });
  std::stable_sort(list.begin(), list.end(),
                   [](const Share& a, const Share& b) { return a.amount > b.amount; });
  return list;
}

}  // namespace

std::string plot_eye(const Context& c) {
  if (!c.spec.required) return {};
  const auto& demands = c.spec.required->demands;
  const auto demand = std::find_if(demands.begin(), demands.end(), [](const calc::Demand& d) {
    return d.name == "viewing" && d.across;
  });
  const calc::Input* const distance = c.input("image.viewing_distance");
  if (demand == demands.end() || distance == nullptr || distance->unit != "mm") return {};
  // The limit falls with the distance, so that one point of it gives the whole line.
  const double near = distance->low > 0 ? distance->low : distance->value;
  const double limit = in_dpi(*demand->across);
  const double required = in_dpi(c.spec.required->across);
  double highest = std::max(limit * reach, required * 1.25);
  double lowest = limit / reach;
  for (const calc::Group& group : c.spec.chosen) {
    highest = std::max(highest, in_dpi(group.resolution_across) * 1.25);
    lowest = std::min(lowest, in_dpi(group.resolution_across) / 1.25);
  }
  Sketch sketch(paper_width, 66);
  Axis across = length_axis(c, "plot.distance", near / reach, near * reach);
  across.logarithmic = true;
  const Plot plot(sketch, {16, 8, 108, 46}, across,
                  {c.words("plot.resolution"), lowest, highest, true});
  plot.draw_axes();
  plot.curve({{near / reach, limit * reach}, {near * reach, limit / reach}},
             {c.templates.setting("drawing.dimension"), 1.2, ""});
  plot.level(required, {"000000", 0.6, "3 2"}, dpi_label(c, "plot.required", required));
  if (!c.spec.chosen.empty()) {
    const double delivered = in_dpi(c.spec.chosen.front().resolution_across);
    if (std::abs(std::log(delivered / required)) > 0.12) {
      plot.level(delivered, {c.templates.setting("drawing.travel"), 0.8, ""},
                 dpi_label(c, "plot.delivered", delivered));
    }
  }
  plot.mark(near, limit, dpi_label(c, "plot.point", limit), true);
  return sketch.figure(c.words("plot.eye_caption"), "required.viewing", false);
}

std::string plot_costs(const Context& c) {
  if (!c.spec.station) return {};
  const calc::Station& station = *c.spec.station;
  const std::vector<Share> list = shares(c, station.cost);
  if (list.size() < 2) return {};
  constexpr double bar = 5, step = 7.5, left = 44, room = 40, top = 3;
  double sum = 0;
  for (const Share& share : list) sum += share.amount;
  Sketch sketch(paper_width, top + step * static_cast<double>(list.size()) + 1);
  const double full = paper_width - left - room;
  const double most = list.front().amount;
  double y = top;
  for (const Share& share : list) {
    const double width = full * share.amount / most;
    sketch.label({left - 2, y + bar / 2 + 1}, "end", 7.5, share.name);
    sketch.rect({left, y}, width, bar, {c.templates.setting("drawing.outline"), 0.4, ""},
                c.templates.setting("drawing.bar"));
    sketch.label({left + width + 1.6, y + bar / 2 + 1}, "start", 7.5,
                 escaped(rough_amount(station.currency, share.amount) + ", " +
                         with_unit(share.amount / sum * 100, "%", 2)));
    y += step;
  }
  sketch.line({left, top - 1.5}, {left, y - 1}, {c.templates.setting("drawing.outline"), 0.6, ""});
  return sketch.figure(
      c.words("plot.cost_caption", {{"YEARS", std::to_string(station.cost.years)},
                                    {"DISCOUNT", with_unit(station.cost.discount * 100, "%", 3)}}),
      "", false);
}

}  // namespace output
