/// How the drops fly and where the dots land: arrivals, budgets, their terms.
#include <cmath>

#include "calc/carriage_pace.h"
#include "calc/fluid.h"
#include "calc/trace.h"
#include "output/compose_text.h"
#include "output/format.h"
#include "output/section_list.h"
#include "output/sketch_list.h"

namespace output {
namespace {

constexpr double degree = 3.14159265358979323846 / 180;

/// One row of the table of arrivals.
struct Arrival {
  std::string name;  ///< least, nominal, most
  calc::Length way;
  const std::optional<calc::Landing>& landing;
};

void add_arrival(const Context& c, Values& values, const calc::Group& group,
                 const calc::LevelFlight& level, const std::string& at, const Arrival& arrival) {
  Values& row = values.add("FLIGHT");
  row.set("KEY", c.row_keys({at + ".impact_" + arrival.name}));
  const bool first = arrival.name == "least";
  row.set("GROUP", first ? c.group_name(group.name) : std::string());
  const auto once = [&](const char* name, const char* step, const std::string& text) {
    row.set_markup(name, first ? c.figure({at + step}, text) : std::string());
  };
  once("DROP", ".drop", number(in_pl(level.drop), 3));
  once("START", ".start", c.in_column(level.start.si(), "m/s", 3));
  once("STOP", ".stop", c.in_column(in_mm(level.stop), "mm", 3));
  row.set_markup("THROW", c.figure({at.substr(0, at.find('.')) + ".throw_" + arrival.name},
                                   c.in_column(in_mm(arrival.way), "mm", 3)));
  const std::optional<calc::Landing>& landing = arrival.landing;
  row.set_markup("IMPACT", landing ? c.figure({at + ".impact_" + arrival.name},
                                              c.in_column(landing->impact.si(), "m/s", 3))
                                   : c.words("flight.stopped"));
  row.set_markup("TIME", landing ? c.figure({at + ".time_" + arrival.name},
                                            number(landing->time.si() * 1e6, 3))
                                 : std::string("\xE2\x80\x93"));
}

void add_level(const Context& c, Values& values, const calc::Group& group, std::size_t index,
               const std::string& g) {
  const calc::DropFlight& flight = *group.flight;
  const calc::LevelFlight& level = flight.levels.at(index);
  const std::string at = g + (index == 0 ? ".small" : ".large");
  add_arrival(c, values, group, level, at, {"least", flight.throw_least, level.least});
  add_arrival(c, values, group, level, at, {"nominal", flight.throw_nominal, level.nominal});
  add_arrival(c, values, group, level, at, {"most", flight.throw_most, level.most});
}

void add_text(Values& values, const std::string& key, std::string sentence) {
  Values& text = values.add("TEXT");
  text.set("KEY", key);
  text.set_markup("SENTENCE", std::move(sentence));
}

/// What gravity and levels do to the arrivals of a group, and how its body bends away.
void add_flight_text(const Context& c, Values& values, const calc::Group& group,
                     const std::string& g) {
  const calc::DropFlight& flight = *group.flight;
  const std::optional<calc::Landing>& landing = flight.levels.front().nominal;
  if (landing) {
    const double gravity = calc::standard_gravity.si() * landing->time.si();
    add_text(values, c.step_keys({g + ".gravity"}),
             c.words("flight.gravity", {{"GROUP", c.group_name(group.name)},
                                        {"SPEED", c.measure(gravity, "m/s", 2)}}));
  }
  if (flight.sag_spread > calc::Length()) {
    add_text(values, c.step_keys({g + ".sag"}),
             c.words("flight.sag", {{"GROUP", c.group_name(group.name)},
                                    {"SAG", c.measure(in_um(flight.sag_spread), "um")}}));
  }
  if (flight.slope <= 0) return;
  const calc::Length bend = flight.sagitta_along + flight.sagitta_across;
  const double stretch = (1 / std::cos(flight.slope) - 1) * 100;
  add_text(values, c.step_keys({g + ".sagitta_along", g + ".sagitta_across"}),
           c.worded("flight.curved",
                    {{"GROUP", escaped(c.group_name(group.name))},
                     {"SAGITTA", escaped(c.measure(in_mm(bend), "mm"))},
                     {"SLOPE", c.figure({g + ".slope"}, with_unit(flight.slope / degree, "deg"))},
                     {"STRETCH", c.figure({g + ".stretch"}, with_unit(stretch, "%", 2))}}));
}

/// Of a throw given as uncertain: the table is of the nominal one, each end was tried alone.
void add_range_text(const Context& c, Values& values) {
  const calc::Input* const stated = c.input("line.throw_distance");
  if (stated == nullptr || stated->spread != calc::Spread::uncertain) return;
  add_text(values, c.place_of("line.throw_distance"),
           c.words("flight.range", {{"LEAST", c.measure(stated->low, stated->unit, 3)},
                                    {"NOMINAL", c.measure(stated->value, stated->unit, 3)},
                                    {"MOST", c.measure(stated->high, stated->unit, 3)}}));
}

std::string budget_name(const Context& c, const calc::Budget& budget) {
  std::string name = c.words("budget." + std::string(budget.name));
  if (!budget.group.empty() && c.spec.chosen.size() > 1)
    name += ", " + escaped(c.group_name(budget.group));
  return name;
}

std::string axis_name(const Context& c, const calc::Budget& budget) {
  return c.words(c.of_motion(budget.motion ? "budget.motion" : "budget.nozzle"));
}

std::string term_name(const Context& c, const calc::BudgetTerm& term) {
  return c.words("term." + std::string(term.name));
}

/// The limit of a budget: worked out, or as the request has it.
std::string limit_figure(const Context& c, const calc::Budget& budget) {
  const std::string text = number(in_um(budget.limit), 3);
  const std::string step = calc::budget_step(c.spec, budget) + ".limit";
  const std::string of_all = "placement." + std::string(budget.name) + ".limit";
  if (c.has_step(step) || c.has_step(of_all)) return c.figure({step, of_all}, text);
  const bool of_image = budget.name == "image";
  return c.figure_given(of_image ? "image.placement" : "image.registration", text);
}

void add_budget(const Context& c, Values& values, const calc::Budget& budget) {
  Values& row = values.add("BUDGET");
  row.set("KEY", c.row_keys({calc::budget_step(c.spec, budget)}));
  row.set_markup("NAME", budget_name(c, budget));
  row.set_markup("AXIS", axis_name(c, budget));
  const std::string step = calc::budget_step(c.spec, budget);
  row.set_markup("U", c.figure({step}, number(in_um(budget.expanded), 3)));
  row.set_markup("WORST", c.figure({step + ".worst"}, number(in_um(budget.worst), 3)));
  row.set_markup("LIMIT", limit_figure(c, budget));
  row.set_markup("VERDICT", c.words(budget.pass ? "budget.pass" : "budget.fail"));
  row.set_markup("FIRST", term_name(c, budget.terms[calc::largest_term(budget)]));
}

/// The key of the field that a term's half width is stated in, or of the default.
std::string stated_in(const Context& c, const calc::BudgetTerm& term) {
  std::string key(term.field);
  return key == "line.weave" && c.input(key) == nullptr ? "assume.weave" : key;
}

void add_terms(const Context& c, Values& values, const calc::Budget& budget) {
  bool first = true;
  for (const calc::BudgetTerm& term : budget.terms) {
    Values& row = values.add("TERM");
    const std::string step = calc::budget_step(c.spec, budget) + "." + std::string(term.name);
    const std::string of_budget = calc::budget_step(c.spec, budget);
    row.set("KEY", c.row_keys({step}));
    row.set_markup("NAME", first ? budget_name(c, budget) + ", " + axis_name(c, budget) : "");
    row.set_markup("TERM", term_name(c, term));
    row.set_markup("KIND", c.words("kind." + std::string(calc::kind_word(term.kind))));
    const std::string half = c.measure(term.half_width, term.unit, 3);
    row.set_markup("HALF", c.linked(stated_in(c, term), half));
    row.set_markup("SHIFT", c.figure({step, of_budget}, number(in_um(term.shift), 3)));
    row.set("U", number(in_um(calc::standard_uncertainty(term)), 3));
    if (&term != &budget.terms.back()) row.add("GOES_ON");
    first = false;
  }
}

/// The budgets along the stroke at the speed that just serves the line.
void add_pace(const Context& c, Values& values) {
  if (!c.spec.carriage_pace || !c.spec.chosen.front().scan) return;
  const calc::CarriagePace& pace = *c.spec.carriage_pace;
  const calc::PaceGain gain = calc::pace_gain(c.spec.placement, pace);
  Values& table = values.add("PACE");
  table.set("KEY", c.step_keys({"g1.pace"}));
  table.set_markup(
      "SENTENCE",
      c.words("pace",
              {{"SPEED", c.measure(pace.speed.si(), "m/s", 3)},
               {"TIME", with_unit(pace.stroke_time.si(), "s", 3)},
               {"NOW", c.measure(c.spec.chosen.front().scan->carriage_speed.si(), "m/s", 3)},
               {"BEYOND", std::to_string(gain.beyond)},
               {"HELD", std::to_string(gain.held)}}));
  for (std::size_t i = 0; i < pace.placement.size(); ++i) {
    const calc::Budget& budget = pace.placement[i];
    if (!budget.motion) continue;
    Values& row = table.add("BUDGET");
    row.set("KEY", c.step_keys({"pace." + calc::budget_step(c.spec, budget)}));
    row.set_markup("NAME", budget_name(c, budget));
    row.set_markup("NOW", c.figure({calc::budget_step(c.spec, budget)},
                                   number(in_um(c.spec.placement[i].expanded), 3)));
    row.set_markup("U", c.figure({"pace." + calc::budget_step(c.spec, budget)},
                                 number(in_um(budget.expanded), 3)));
    row.set_markup("LIMIT", limit_figure(c, budget));
    row.set_markup("VERDICT", c.words(budget.pass ? "budget.pass" : "budget.fail"));
  }
}

}  // namespace

std::string placement_section(const Context& c) {
  bool flown = false;
  Values values;
  std::string law = c.words("flight.law");
  for (std::size_t i = 0; i < c.spec.chosen.size(); ++i) {
    const calc::Group& group = c.spec.chosen[i];
    if (!group.flight) continue;
    if (!flown) law = c.to_step(group_prefix(i) + ".small.drag", law);
    flown = true;
    for (std::size_t k = 0; k < group.flight->levels_used; ++k) {
      add_level(c, values, group, k, group_prefix(i));
    }
    add_flight_text(c, values, group, group_prefix(i));
  }
  if (!flown) return {};
  values.set_markup("LAW", std::move(law));
  add_range_text(c, values);
  if (!c.spec.placement.empty()) {
    Values& budgets = values.add("BUDGETS");
    const std::string first = calc::budget_step(c.spec, c.spec.placement.front());
    budgets.set_markup("GUIDE", c.to_step(first, c.words("budget.guide")));
    for (const calc::Budget& budget : c.spec.placement) {
      add_budget(c, budgets, budget);
      add_terms(c, budgets, budget);
    }
    budgets.set_markup("DRAWING", sketch_budgets(c));
    add_pace(c, budgets);
  }
  return c.expand("placement", values);
}

}  // namespace output
