#include <cmath>
#include <stdexcept>

#include "calc/eye.h"
#include "calc/fluid.h"
#include "calc/ink_state.h"
#include "calc/trace_find.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis definition{"definition of Reynolds, Weber and Ohnesorge numbers", SourceTag::computed,
                       "nozzle diameter, speed at the nozzle, viscosity at rest"};
const Basis ejection{"Lee J.M. et al. 2023 p. 201; Derby 2010", SourceTag::printed,
                     "least speed of a drop that leaves a nozzle, We = 4"};
const Basis impact{"Stow and Hadfield 1981 via Derby 2010", SourceTag::memory,
                   "impact over the nominal throw on a smooth dry surface"};
const Basis capillary{"shear rate at the wall of a capillary, Newtonian", SourceTag::computed,
                      "laminar, steady, mean speed in the nozzle that of the drop"};
const Basis rabinowitsch{"Rabinowitsch 1929", SourceTag::computed, "exact for a power law"};
const Basis carreau{"Carreau 1972", SourceTag::computed, "one law of shear for every temperature"};
const Basis rule{"rule of thumb after van Osch 2008 and Torrisi 2012", SourceTag::memory,
                 "a warning, no limit"};
const Basis stokes{"Stokes 1851; Richardson and Zaki 1954", SourceTag::computed,
                   "Re far below 1; standing ink at jetting temperature"};
const Basis brownian{"Stokes and Einstein, barometric equilibrium", SourceTag::computed,
                     "dilute, room temperature"};

/// One ink's steps, with the ids under its channel.
class Jet {
 public:
  Jet(TraceWriter& writer, const InkInHead& ink, std::string group)
      : w_(writer), ink_(ink), group_(std::move(group)), at_("ink." + ink.channel + ".") {}

  void write() {
    viscosity();
    if (ink_.nozzle) numbers();
    if (ink_.shear_rate) shear();
    particles();
  }

 private:
  StepInput density() const {
    if (!ink_.density_assumed) {
      return {"r", ink_.density.si(), "kg/m3", "given", "ink." + ink_.ink + ".density"};
    }
    return from_parameter(w_.job, "r", P::ink_density);
  }
  StepInput speed() const { return w_.step("v", flight() + ".start"); }
  /// Start of the ids of the largest drop's flight.
  std::string flight() const {
    return group_ + (w_.has(group_ + ".large.start") ? ".large" : ".small");
  }
  StepInput nozzle() const {
    return from_catalogue("d", in_um(*ink_.nozzle), "um", "head." + ink_.head + ".nozzle_diameter");
  }
  StepInput tension() const {
    return {"s", in_mn_per_m(*ink_.tension), "mN/m", "given",
            "ink." + ink_.ink + ".surface_tension"};
  }
  StepInput at_rest() const { return w_.step("e", at_ + "viscosity"); }
  StepInput given(const char* symbol, double value, const char* unit, const char* field) const {
    return {symbol, value, unit, "given", "ink." + ink_.ink + "." + field};
  }

  /// A share that nothing is taken for where it is not given.
  StepInput given_or_none(const char* symbol, const Given<double>& share, const char* field) const {
    if (!share) return constant(symbol, 0, "");
    return given(symbol, share->value, "", field);
  }

  StepInput temperature() {
    const double kelvin = ink_.temperature->in_kelvin();
    for (std::size_t i = 0; i < w_.spec.chosen.size(); ++i) {
      const Group& group = w_.spec.chosen[i];
      const std::string g = "g" + std::to_string(i + 1);
      if (g != group_ || !group.jetting_temperature) continue;
      StepInput known = jetting_temperature(w_, group, g);
      if (std::abs(known.value - kelvin) <= 1e-12 * kelvin) return known;
    }
    return chosen("T", kelvin, "K");
  }

  void viscosity() {
    if (!ink_.viscosity) return;
    const auto model = fit_viscosity(ink_of()->viscosity->value);
    const ViscosityCurve& curve = *curve_at(*model, *ink_.temperature);
    const std::string key = "ink." + ink_.ink + ".viscosity";
    w_.formula(at_ + "viscosity", "e", "1000*exp(a+b/(T-c))",
               {{"a", curve.a, "", "derived", key},
                {"b", curve.b, "K", "derived", key},
                {"c", curve.c, "K", "derived", key},
                temperature()},
               in_mpas(*ink_.viscosity), "mPa.s",
               {"Arrhenius through two points, Vogel-Fulcher-Tammann through three and more",
                SourceTag::computed, "between the lowest and the highest temperature given"});
  }

  void numbers() {
    if (ink_.re) {
      w_.formula(at_ + "re", "Re", "r*v*d/(1000*e)", {density(), speed(), nozzle(), at_rest()},
                 *ink_.re, "", definition);
    }
    if (!ink_.tension) return;
    if (ink_.we) {
      w_.formula(at_ + "we", "We", "r*v^2*d/(1000*s)", {density(), speed(), nozzle(), tension()},
                 *ink_.we, "", definition);
    }
    if (ink_.oh) {
      w_.formula(at_ + "oh", "Oh", "e/sqrt(r*s*d/1000)",
                 {at_rest(), density(), tension(), nozzle()}, *ink_.oh, "", definition);
      w_.formula(at_ + "z", "Z", "1/Oh", {w_.step("Oh", at_ + "oh")}, *ink_.z, "", definition);
    }
    w_.formula(at_ + "least_speed", "v_min", "sqrt(4000*s/(r*d))", {tension(), density(), nozzle()},
               ink_.least_speed->si(), "m/s", ejection);
    if (ink_.splash) splash();
  }

  /// Diameter of the drop that a solid takes.
  StepInput drop() const {
    for (std::size_t i = 0; i < w_.spec.chosen.size(); ++i) {
      const Group& group = w_.spec.chosen[i];
      const std::string g = "g" + std::to_string(i + 1);
      if (g == group_) return w_.step("D", dots_steps(group, ink_.channel, g) + ".drop_diameter");
    }
    throw std::logic_error("no drop of " + ink_.channel);
  }

  void splash() {
    w_.formula(
        at_ + "splash", "K", "sqrt(r*v^2*D/(1000*s))*(r*v*D/(1000*e))^0.25",
        {density(), w_.step("v", flight() + ".impact_nominal"), drop(), tension(), at_rest()},
        *ink_.splash, "", impact);
  }

  void shear() {
    const double newtonian = nozzle_shear(*ink_.speed, *ink_.nozzle).si();
    w_.formula(at_ + "shear", "g", "8000000*v/d", {speed(), nozzle()}, newtonian, "1/s", capillary);
    if (!ink_.sheared) return;
    const Ink& ink = *ink_of();
    const StepInput n = given("n", ink.shear_index->value, "", "shear_index");
    const StepInput k = given("k", ink.shear_time->value.si(), "s", "shear_time");
    const StepInput c = given_or_none("c", ink.shear_share, "shear_share");
    w_.formula(at_ + "flow_index", "n_l",
               "1+(1-c)*(n-1)*(k*g)^2*(1+(k*g)^2)^((n-3)/2)/(c+(1-c)*(1+(k*g)^2)^((n-1)/2))",
               {c, n, k, w_.step("g", at_ + "shear")}, *ink_.flow_index, "", carreau);
    w_.formula(at_ + "wall_shear", "g_w", "g*(3*n_l+1)/(4*n_l)",
               {w_.step("g", at_ + "shear"), w_.step("n_l", at_ + "flow_index")},
               ink_.shear_rate->si(), "1/s", rabinowitsch);
    w_.formula(at_ + "sheared", "e_s", "e*(c+(1-c)*(1+(k*g_w)^2)^((n-1)/2))",
               {at_rest(), c, n, k, w_.step("g_w", at_ + "wall_shear")}, in_mpas(*ink_.sheared),
               "mPa.s", carreau);
    if (!ink_.z_sheared) return;
    w_.formula(at_ + "z_sheared", "Z_s", "sqrt(r*s*d/1000)/e_s",
               {density(), tension(), nozzle(), w_.step("e_s", at_ + "sheared")}, *ink_.z_sheared,
               "", definition);
  }

  void share_of_nozzle(const char* name, double ratio, const std::optional<Length>& size) {
    if (!size) return;
    w_.formula(at_ + name, "d_p", "d/N", {nozzle(), constant("N", ratio, "")}, in_um(*size), "um",
               rule);
  }

  void particles() {
    share_of_nozzle("particle_most", particle_ratio, ink_.particle_most);
    share_of_nozzle("particle_safe", safe_particle_ratio, ink_.particle_safe);
    if (!ink_.particle) return;
    const StepInput size = given("d_g", in_um(*ink_.particle), "um", "particle_size");
    const Ink& ink = *ink_of();
    if (!ink.particle_density) return;
    const StepInput heavy =
        given("r_p", ink.particle_density->value.si(), "kg/m3", "particle_density");
    if (ink_.settling_height) {
      w_.formula(
          at_ + "settling_height", "h_b", "6*k_B*T/(pi*g_n*d_g^3*abs(r_p-r))*10^24",
          {constant("k_B", boltzmann, "J/K"),
           from_value("T", w_.job.room, w_.job.room.value.in_kelvin(), "K", "line.air_temperature"),
           constant("pi", pi, ""), constant("g_n", standard_gravity.si(), "m/s2"), size, heavy,
           density()},
          in_um(*ink_.settling_height), "um", brownian);
    }
    if (!ink_.settling) return;
    w_.formula(at_ + "settling", "v_s", "0.0864*g_n*d_g^2*(r_p-r)*(1-phi)^m/(18*e)",
               {constant("g_n", standard_gravity.si(), "m/s2"), size, heavy, density(),
                given_or_none("phi", ink.particle_share, "particle_share"),
                constant("m", hindering_exponent, ""), at_rest()},
               ink_.settling->si() * 86400e3, "mm/d", stokes);
  }

  const Ink* ink_of() const {
    for (const Channel& channel : w_.job.channels) {
      if (channel.name == ink_.channel) return channel.ink;
    }
    return nullptr;
  }

  TraceWriter& w_;
  const InkInHead& ink_;
  std::string group_, at_;
};

std::string group_of(const Specification& spec, const std::string& channel) {
  for (std::size_t i = 0; i < spec.chosen.size(); ++i) {
    for (const std::string& name : spec.chosen[i].channels) {
      if (name == channel) return "g" + std::to_string(i + 1);
    }
  }
  return {};
}

}  // namespace

void trace_jets(TraceWriter& w) {
  for (std::size_t i = 0; i < w.spec.inks.size(); ++i) {
    const InkInHead& ink = w.spec.inks[i];
    bool known = ink.ink.empty();
    for (std::size_t k = 0; k < i && !known; ++k) known = same_figures(w.spec.inks[k], ink);
    if (!known) Jet(w, ink, group_of(w.spec, ink.channel)).write();
  }
}

}  // namespace calc
