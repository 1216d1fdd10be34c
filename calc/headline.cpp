#include "calc/headline.h"

#include <algorithm>

#include "calc/placement.h"
#include "calc/running.h"
#include "calc/station_sizing.h"

namespace calc {
namespace {

struct Row {
  std::string_view key, unit;
};

constexpr std::string_view money = "money";
constexpr std::array<Row, headlines_count> table{{{"heads_total", ""},
                                                  {"frequency_per_nozzle_khz", "kHz"},
                                                  {"speed_limit_m_per_min", "m/min"},
                                                  {"cover_fraction", "1"},
                                                  {"placement_dot_um", "um"},
                                                  {"placement_joint_um", "um"},
                                                  {"placement_colour_um", "um"},
                                                  {"placement_image_um", "um"},
                                                  {"ink_l_per_year", "L"},
                                                  {"footprint_mm", "mm"},
                                                  {"exhaust_m3_per_h", "m3/h"},
                                                  {"capital", money},
                                                  {"running_per_year", money},
                                                  {"ownership", money}}};

class Writer {
 public:
  void set(Headline figure, double value) { figures_.at(static_cast<std::size_t>(figure)) = value; }
  void set(Headline figure, Money value) {
    if (value > Money{}) set(figure, value.major());
  }
  /// The greater of it and what stands there.
  void raise(Headline figure, double value) {
    std::optional<double>& now = figures_.at(static_cast<std::size_t>(figure));
    now = std::max(now.value_or(value), value);
  }
  void lower(Headline figure, double value) {
    std::optional<double>& now = figures_.at(static_cast<std::size_t>(figure));
    now = std::min(now.value_or(value), value);
  }
  const Headlines& figures() const { return figures_; }

 private:
  Headlines figures_;
};

void add_groups(const std::vector<Group>& groups, Writer& w) {
  constexpr double minute = 60;
  int heads = 0;
  for (const Group& g : groups) {
    heads += g.heads_total;
    w.raise(Headline::frequency, in_khz(g.frequency_per_nozzle));
    w.lower(Headline::speed, g.speed_limit.si() * minute);
    for (const ChannelDots& dots : g.dots) w.lower(Headline::cover, dots.cover_fraction);
  }
  w.set(Headline::heads, heads);
}

Headline headline_of(std::string_view budget) {
  return budget == "dot"      ? Headline::dot
         : budget == "joint"  ? Headline::joint
         : budget == "colour" ? Headline::colour
                              : Headline::image;
}

void add_placement(const Job& job, const std::vector<Group>& groups, Writer& w) {
  for (const Budget& b : placement_budgets(job, groups, Assumed::likely)) {
    w.raise(headline_of(b.name), in_um(b.expanded));
  }
}

void add_station(const Job& job, const std::vector<Group>& groups, const Sizing& sizing,
                 Writer& w) {
  constexpr double litre = 1e-3;
  VolumeFlow ink;
  for (const ChannelFlow& flow : sizing.flows) ink += flow.total();
  w.set(Headline::ink, (ink * running_time(job)).si() / litre);
  w.set(Headline::footprint, in_mm(station_footprint(job, groups, sizing)));
  const double exhaust = station_exhaust(sizing).si() * 3600;
  if (exhaust > 0) w.set(Headline::exhaust, exhaust);
  w.set(Headline::capital, sizing.bill.priced);
  w.set(Headline::running, sizing.running.sum());
  w.set(Headline::ownership, sizing.ownership);
}

}  // namespace

std::string_view headline_key(Headline figure) {
  return table.at(static_cast<std::size_t>(figure)).key;
}

std::string headline_unit(Headline figure, const std::string& currency) {
  const std::string_view unit = table.at(static_cast<std::size_t>(figure)).unit;
  return unit == money ? currency : std::string(unit);
}

Headlines headlines(const Job& job, const std::vector<Group>& groups, const Sizing& sizing) {
  Writer w;
  if (groups.empty()) return w.figures();
  add_groups(groups, w);
  add_placement(job, groups, w);
  add_station(job, groups, sizing, w);
  return w.figures();
}

}  // namespace calc
