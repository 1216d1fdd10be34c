#include "calc/budget.h"
#include "calc/cylinder.h"
#include "output/json_parts.h"

namespace output {
namespace {

constexpr double degree = 3.14159265358979323846 / 180;

Json landing_json(calc::Length way, const std::optional<calc::Landing>& landing) {
  Json object{{"throw_mm", json_number(in_mm(way))}};
  if (!landing) return object;
  object["impact_speed_m_per_s"] = json_number(landing->impact.si());
  object["flight_time_us"] = json_number(landing->time.si() * 1e6);
  return object;
}

Json level_json(const calc::DropFlight& flight, const calc::LevelFlight& level) {
  return {{"drop_volume_pl", json_number(in_pl(level.drop))},
          {"start_speed_m_per_s", json_number(level.start.si())},
          {"stop_distance_mm", json_number(in_mm(level.stop))},
          {"least", landing_json(flight.throw_least, level.least)},
          {"nominal", landing_json(flight.throw_nominal, level.nominal)},
          {"most", landing_json(flight.throw_most, level.most)}};
}

Json flight_json(const calc::Group& group) {
  const calc::DropFlight& flight = *group.flight;
  Json levels = Json::array();
  for (std::size_t i = 0; i < flight.levels_used; ++i) {
    levels.push_back(level_json(flight, flight.levels.at(i)));
  }
  return {{"group", group.name},
          {"levels", levels},
          {"sagitta_along_mm", json_number(in_mm(flight.sagitta_along))},
          {"sagitta_across_mm", json_number(in_mm(flight.sagitta_across))},
          {"slope_deg", json_number(flight.slope / degree)},
          {"pitch_stretch", json_number(calc::pitch_stretch(flight.slope))},
          {"gap_delay_us", json_number(flight.gap_delay.si() * 1e6)},
          {"thickness_delay_us", json_number(flight.thickness_delay.si() * 1e6)},
          {"speed_delay_us", json_number(flight.speed_delay.si() * 1e6)},
          {"level_delay_us", json_number(flight.level_delay.si() * 1e6)}};
}

Json term_json(const calc::BudgetTerm& term) {
  return {{"name", term.name},
          {"half_width", json_number(term.half_width)},
          {"kind", calc::kind_word(term.kind)},
          {"u_um", json_number(in_um(calc::standard_uncertainty(term)))},
          {"unit", term.unit},
          {"shift_um", json_number(in_um(term.shift))},
          {"worst_um", json_number(in_um(calc::worst_shift(term)))},
          {"field", term.field}};
}

Json budget_json(const calc::Budget& budget) {
  Json object{{"name", budget.name},
              {"axis", budget.motion ? "motion" : "nozzle"},
              {"u_um", json_number(in_um(budget.expanded))},
              {"worst_um", json_number(in_um(budget.worst))},
              {"limit_um", json_number(in_um(budget.limit))},
              {"pass", budget.pass},
              {"terms", json_list(budget.terms, term_json)},
              {"attack_first", budget.terms[calc::largest_term(budget)].name}};
  json_set(object, "group", budget.group);
  return object;
}

}  // namespace

Json placement_json(const calc::Specification& specification, const calc::Group& leading) {
  const calc::DropFlight& flight = *leading.flight;
  Json object{{"throw_nominal_mm", json_number(in_mm(flight.throw_nominal))},
              {"throw_least_mm", json_number(in_mm(flight.throw_least))},
              {"throw_max_mm", json_number(in_mm(flight.throw_most))}};
  if (const auto& landing = flight.levels.front().nominal) {
    object["impact_speed_m_per_s"] = json_number(landing->impact.si());
    object["flight_time_us"] = json_number(landing->time.si() * 1e6);
  }
  object["budgets"] = json_list(specification.placement, budget_json);
  object["flights"] = Json::array();
  for (const calc::Group& group : specification.chosen) {
    if (group.flight) object["flights"].push_back(flight_json(group));
  }
  return object;
}

Json pace_json(const calc::CarriagePace& pace) {
  return {{"speed_m_per_s", json_number(pace.speed.si())},
          {"stroke_time_s", json_number(pace.stroke_time.si())},
          {"budgets", json_list(pace.placement, budget_json)}};
}

}  // namespace output
