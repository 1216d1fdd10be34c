#include <algorithm>
#include <cmath>

#include "calc/named.h"
#include "calc/trace_find.h"
#include "calc/trace_writer.h"
#include "calc/viscosity.h"

namespace calc {
namespace {

const Basis curve_basis{
    "Arrhenius through two points, Vogel-Fulcher-Tammann through three and more",
    SourceTag::computed, "between the lowest and the highest temperature given"};

const Basis heater_rule{"common practice, no source: a heater alone holds it above the room",
                        SourceTag::practice, "room temperature as given or assumed"};

const Basis stated_rule{"definition", SourceTag::computed, "as the ink or the head states it"};

const Ink* ink_of(const Job& job, const Group& group) {
  const Channel* const channel = named(job.channels, group.channels.front());
  return channel == nullptr ? nullptr : channel->ink;
}

std::vector<StepInput> curve_inputs(const ViscosityCurve& curve, const std::string& key) {
  return {{"a", curve.a, "", "derived", key},
          {"b", curve.b, "K", "derived", key},
          {"c", curve.c, "K", "derived", key}};
}

/// The temperature at which the ink has the head's nominal viscosity, where it was found so.
void solved_temperature(TraceWriter& w, const Group& group, const ViscosityCurve& curve,
                        const std::string& g, const std::string& key) {
  const Head& head = trace_head(w.catalogue, group);
  const std::string ref = "head." + group.head + ".viscosity";
  std::vector<StepInput> inputs = curve_inputs(curve, key);
  std::string target = "e_0";
  double sought = 0;
  if (head.viscosity) {
    sought = in_mpas(head.viscosity->value);
    inputs.push_back(from_catalogue("e_0", sought, "mPa.s", ref));
  } else if (head.viscosity_window) {  // its middle
    const Value<Viscosity>& window = *head.viscosity_window;
    sought = (in_mpas(window.low) + in_mpas(window.high)) / 2;
    target = "(e_l+e_m)/2";
    inputs.push_back(from_catalogue("e_l", in_mpas(window.low), "mPa.s", ref + "_window"));
    inputs.push_back(from_catalogue("e_m", in_mpas(window.high), "mPa.s", ref + "_window"));
  }
  if (std::abs(in_mpas(*group.viscosity) - sought) > 1e-9 * sought) return;
  w.add(g + ".temperature", StepKind::solve, "T", "1000*exp(a+b/(T-c))-" + target, inputs,
        group.jetting_temperature->in_kelvin(), "K", curve_basis);
}

bool is_at(const Temperature& a, double kelvin) { return std::abs(a.in_kelvin() - kelvin) < 1e-9; }

/// An ink of the group that says this temperature, or whose viscosity is known from or up to it.
std::optional<StepInput> said_by_ink(const Job& job, const Group& group, double kelvin) {
  for (const std::string& name : group.channels) {
    const Channel* const channel = named(job.channels, name);
    const Ink* const ink = channel == nullptr ? nullptr : channel->ink;
    if (ink == nullptr) continue;
    const std::string key = "ink." + ink->name + ".";
    if (ink->jetting_temperature && is_at(ink->jetting_temperature->value, kelvin)) {
      return from_value("T", *ink->jetting_temperature, kelvin, "K", key + "jetting_temperature");
    }
    if (!ink->viscosity) continue;
    for (const ViscosityPoint& point : ink->viscosity->value) {
      if (is_at(point.temperature, kelvin)) {
        return from_value("T", *ink->viscosity, kelvin, "K", key + "viscosity");
      }
    }
  }
  return std::nullopt;
}

/// A temperature that stands somewhere as it is.
StepInput stated(TraceWriter& w, const std::string& g, StepInput where) {
  where.symbol = "T_s";
  const double kelvin = where.value;
  w.formula(g + ".temperature", "T", "T_s", {std::move(where)}, kelvin, "K", stated_rule);
  return w.step("T", g + ".temperature");
}

}  // namespace

StepInput jetting_temperature(TraceWriter& w, const Group& group, const std::string& g) {
  const double kelvin = group.jetting_temperature->in_kelvin();
  if (w.has(g + ".temperature")) return w.step("T", g + ".temperature");
  if (const auto said = said_by_ink(w.job, group, kelvin)) return stated(w, g, *said);
  const Value<Temperature>& room = w.job.room;
  const Given<Temperature>& most = trace_head(w.catalogue, group).temperature_most;
  if (is_at(least_jetting_temperature(served_high(room)), kelvin)) {
    w.formula(
        g + ".temperature", "T", "T_r+273.15+dT",
        {from_value("T_r", room, served_high(room).in_celsius(), "degC", "line.air_temperature"),
         constant("dT", (least_jetting_temperature(served_high(room)) - served_high(room)).si(),
                  "K")},
        kelvin, "K", heater_rule);
    return w.step("T", g + ".temperature");
  }
  if (most && is_at(most->value, kelvin)) {
    return stated(w, g,
                  from_catalogue("T", kelvin, "K", "head." + group.head + ".temperature_most"));
  }
  return chosen("T", kelvin, "K");
}

void trace_ink(TraceWriter& w, const Group& group, const std::string& g) {
  const Ink* ink = ink_of(w.job, group);
  if (ink == nullptr || !ink->viscosity || !group.jetting_temperature || !group.viscosity) return;
  const std::optional<ViscosityModel> model = fit_viscosity(ink->viscosity->value);
  if (!model) return;
  const ViscosityCurve* curve = curve_at(*model, *group.jetting_temperature);
  if (curve == nullptr) return;
  const std::string key = "ink." + ink->name + ".viscosity";
  if (!ink->jetting_temperature) solved_temperature(w, group, *curve, g, key);
  std::vector<StepInput> inputs = curve_inputs(*curve, key);
  inputs.push_back(jetting_temperature(w, group, g));
  w.formula(g + ".viscosity", "e", "1000*exp(a+b/(T-c))", inputs,
            in_mpas(curve_viscosity(*curve, *group.jetting_temperature)), "mPa.s", curve_basis);
}

}  // namespace calc
