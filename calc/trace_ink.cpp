#include <algorithm>

#include "calc/named.h"
#include "calc/trace_find.h"
#include "calc/trace_writer.h"
#include "calc/viscosity.h"

namespace calc {
namespace {

const Basis curve_basis{
    "Arrhenius through two points, Vogel-Fulcher-Tammann through three and more",
    SourceTag::computed, "between the lowest and the highest temperature given"};

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
  if (!head.viscosity) return;
  const double target = in_mpas(head.viscosity->value);
  const double residual = in_mpas(*group.viscosity) - target;
  if (std::max(residual, -residual) > 1e-9 * target) return;
  std::vector<StepInput> inputs = curve_inputs(curve, key);
  inputs.push_back(from_catalogue("e_0", target, "mPa.s", "head." + group.head + ".viscosity"));
  w.add(g + ".temperature", StepKind::solve, "T", "1000*exp(a+b/(T-c))-e_0", inputs,
        group.jetting_temperature->in_kelvin(), "K", curve_basis);
}

}  // namespace

void trace_ink(TraceWriter& w, const Group& group, const std::string& g) {
  const Ink* ink = ink_of(w.job, group);
  if (ink == nullptr || !ink->viscosity || !group.jetting_temperature || !group.viscosity) return;
  const std::optional<ViscosityModel> model = fit_viscosity(ink->viscosity->value);
  if (!model) return;
  const ViscosityCurve* curve = curve_at(*model, *group.jetting_temperature);
  if (curve == nullptr) return;
  const std::string key = "ink." + ink->name + ".viscosity";
  if (!ink->jetting_temperature) solved_temperature(w, group, *curve, g, key);
  const double kelvin = group.jetting_temperature->in_kelvin();
  std::vector<StepInput> inputs = curve_inputs(*curve, key);
  inputs.push_back(w.step_or_chosen("T", g + ".temperature", kelvin, "K"));
  w.formula(g + ".viscosity", "e", "1000*exp(a+b/(T-c))", inputs,
            in_mpas(curve_viscosity(*curve, *group.jetting_temperature)), "mPa.s", curve_basis);
}

}  // namespace calc
