/// The chosen station and its alternatives, figure by figure.
#include <algorithm>
#include <cmath>
#include <functional>

#include "calc/pareto.h"
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_links.h"
#include "output/section_list.h"

namespace output {
namespace {

/// A station with all that is compared.
struct Side {
  const std::vector<calc::Group>* groups;
  const calc::Station* station;
  const std::vector<calc::Flexibility>* flexibility;
  calc::Merits merits;
  bool on_front;
};

std::vector<Side> sides(const calc::Specification& spec) {
  std::vector<Side> all{{&spec.chosen, &*spec.station, &spec.flexibility,
                         calc::merits(spec.chosen, *spec.station, spec.placement),
                         spec.chosen_on_front}};
  for (const calc::Alternative& other : spec.alternatives) {
    all.push_back({&other.groups, &other.station, &other.flexibility,
                   calc::merits(other.groups, other.station, other.placement), other.on_front});
  }
  return all;
}

using Text = std::function<std::string(const Side&)>;

/// Whether a line stands on one page with the next.
enum class Keep { no, yes };

/// The name of a line, and where its figures lead: that of the station chosen to a step, those of
/// the others to their own steps; or each to a row of the catalogue.
struct Line {
  std::string name, step;
  /// The last part of the ids of the others' steps, where it is another than the name.
  std::string other = {};
  std::function<std::string(const Side&)> row = {};
};

/// A figure as a link; station 0 is the one chosen.
std::string linked_side(const Context& c, const Line& of, std::size_t index, const Side& side,
                        const std::string& text) {
  if (text.empty()) return text;
  if (of.row) return as_quiet_link(listed_at(c, of.row(side) + ".name"), text);
  if (index == 0) return c.quiet({of.step}, text);
  const std::string& last = of.other.empty() ? of.name : of.other;
  return c.quiet({"alternative." + std::to_string(index) + "." + last}, text);
}

/// One figure of all stations; left out where no station has it.
void add_line(const Context& c, Values& table, const Line& of, const std::vector<Side>& all,
              const Text& text, Keep keep = Keep::no) {
  std::vector<std::string> texts;
  texts.reserve(all.size());
  for (const Side& side : all) {
    texts.push_back(linked_side(c, of, texts.size(), side, text(side)));
  }
  if (std::all_of(texts.begin(), texts.end(), [](const auto& t) { return t.empty(); })) return;
  Values& line = table.add("LINE");
  line.set_markup("NAME", c.words("side." + of.name));
  if (keep == Keep::yes) line.add("KEEP");
  for (const std::string& t : texts) {
    line.add("VALUE").set_markup("TEXT", t.empty() ? c.words("side.not_known") : t);
  }
}

/// What differs from group to group, each once.
std::string of_groups(const Context& c, const Side& side,
                      const std::function<std::string(const calc::Flexibility&)>& text) {
  std::vector<std::string> texts;
  for (const calc::Flexibility& group : *side.flexibility) {
    std::string one = text(group);
    if (one.empty()) one = c.words("side.not_known");
    if (std::find(texts.begin(), texts.end(), one) == texts.end()) texts.push_back(std::move(one));
  }
  return joined(c, texts);
}

std::string money(const Side& side, calc::Money value) {
  return whole_money(value) + (side.station->bom_unpriced > 0 ? "*" : "");
}

/// The error of registration, and whether it is more than the request allows.
std::string registration_text(const Context& c, const Side& side) {
  const std::string error = c.measure(side.merits.registration.si() * 1e6, "um", 3);
  const auto& asked = c.request.image.registration;
  const bool beyond = asked && side.merits.registration > asked->low;
  return beyond ? c.words("side.beyond", {{"VALUE", error}}) : error;
}

void add_machine(const Context& c, Values& table, const std::vector<Side>& all) {
  add_line(c, table, {"heads", heads_step(c)}, all,
           [](const Side& s) { return std::to_string(s.merits.heads); });
  add_line(c, table, {"boards", boards_step(c)}, all,
           [](const Side& s) { return std::to_string(s.station->boards); });
  add_line(c, table, {"joints", joints_step(c)}, all, [](const Side& s) {
    int joints = 0;
    for (const calc::Group& group : *s.groups) joints += group.joints;
    return std::to_string(joints);
  });
  add_line(c, table, {"frequency", use_step(c), "use"}, all, [](const Side& s) {
    double use = 0;
    for (const calc::Group& group : *s.groups) use = std::max(use, group.frequency_use);
    return with_unit(use * 100, "%", 3);
  });
  const bool registers = std::any_of(all.begin(), all.end(), [](const Side& s) {
    return std::isfinite(s.merits.registration.si()) && s.merits.registration > calc::Length();
  });
  if (registers) {
    add_line(c, table, {"registration", widest_budget_step(c, "colour")}, all, [&c](const Side& s) {
      if (!std::isfinite(s.merits.registration.si())) return std::string();
      return s.merits.registration > calc::Length() ? registration_text(c, s)
                                                    : c.words("side.one_head");
    });
  }
  add_line(c, table, {"speed", speed_step(c), "speed_limit"}, all,
           [&c](const Side& s) { return escaped(speed_limit_text(c, s.merits.speed_limit)); });
  const bool slowed = std::any_of(all.begin(), all.end(), [](const Side& s) {
    return s.station->speed_limit && s.station->speed_limit->by != "heads";
  });
  if (!slowed) return;
  add_line(c, table, {"station_speed", "station.speed", "speed"}, all, [&c](const Side& s) {
    const auto& limit = s.station->speed_limit;
    if (!limit) return std::string();
    const std::string text = speed_limit_text(c, limit->speed);
    return limit->at_most ? c.words("front.at_most", {{"VALUE", text}}) : escaped(text);
  });
}

void add_money(const Context& c, Values& table, const std::vector<Side>& all) {
  add_line(
      c, table, {"capital", "station.capital"}, all,
      [](const Side& s) { return money(s, s.station->cost.capital); }, Keep::yes);
  add_line(
      c, table, {"running", "station.running"}, all,
      [](const Side& s) { return money(s, s.station->cost.running_per_year); }, Keep::yes);
  add_line(c, table, {"ownership", "station.ownership"}, all,
           [](const Side& s) { return money(s, s.station->cost.ownership); });
  const auto slowest = [](const Side& s) { return slowest_row(*s.station); };
  add_line(c, table, {"lead", "", "", slowest}, all, [](const Side& s) {
    return s.station->lead_time ? with_unit(s.station->lead_time->days, "d", 3) : std::string();
  });
}

void add_service(const Context& c, Values& table, const std::vector<Side>& all) {
  add_line(c, table, {"service", ""}, all, [&c](const Side& s) {
    return of_groups(c, s, [&c](const calc::Flexibility& group) {
      return group.serviceable ? c.words(serviceable_key(*group.serviceable)) : std::string();
    });
  });
  add_line(c, table, {"waveform", ""}, all, [&c](const Side& s) {
    return of_groups(c, s, [&c](const calc::Flexibility& group) {
      return group.waveform ? c.words(waveform_key(*group.waveform)) : std::string();
    });
  });
  const auto first_head = [](const Side& s) { return "head." + s.groups->front().head; };
  add_line(c, table, {"drivers", "", "", first_head}, all, [&c](const Side& s) {
    return of_groups(c, s, [](const calc::Flexibility& group) {
      return group.driver_sources ? std::to_string(*group.driver_sources) : std::string();
    });
  });
  add_line(c, table, {"front", ""}, all,
           [&c](const Side& s) { return c.words(s.on_front ? "side.yes" : "side.no"); });
}

}  // namespace

void add_side_by_side(const Context& c, Values& values) {
  const std::vector<Side> all = sides(c.spec);
  Values& table = values.add("SIDE");
  table.set_markup("CAPTION", c.words("side.caption", {{"CURRENCY", c.spec.station->currency}}));
  std::string columns = "l:40";
  for (std::size_t i = 0; i < all.size(); ++i) columns += " l:*";
  table.set("COLUMNS", columns);
  for (std::size_t i = 0; i < all.size(); ++i) {
    table.add("STATION").set_markup(
        "NAME", i == 0 ? c.words("side.chosen")
                       : c.words("side.alternative", {{"NUMBER", std::to_string(i)}}));
  }
  add_machine(c, table, all);
  add_money(c, table, all);
  add_service(c, table, all);
}

}  // namespace output
