/// Drops and dots of the channels, their tones, and what they do to lines and solids.
#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "calc/dot.h"
#include "calc/eye.h"
#include "calc/fluid.h"
#include "calc/lattice.h"
#include "calc/laydown.h"
#include "calc/trace_find.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis geometry{"plane geometry", SourceTag::computed, "pitches > 0"};
const Basis whole_dots{"whole dots nearest to the growth", SourceTag::computed,
                       "no less than none"};
const Basis sphere{"volume of a sphere", SourceTag::computed, "free drop"};
const Basis cap{"spherical cap: van Dam and Le Clerc 2004, Derby 2010", SourceTag::memory,
                "no absorption, contact angle 10 to 180 degrees"};
const Basis spread{"dot = spread factor times drop", SourceTag::computed,
                   "measured factor, or a class default from common practice"};
const Basis measured{"measured dot scaled with the cube root of the drop", SourceTag::computed,
                     "same ink and substrate"};
const Basis bead_rule{"mass balance of a bead: Smith et al. 2006, Stringer and Derby 2010",
                      SourceTag::computed, "stable line, no absorption"};
const Basis weber_rule{"definition", SourceTag::computed, "speed of impact, drop diameter"};
const Basis impact_rule{"widest spread on impact: Son, Kim, Yang, Ahn 2008", SourceTag::printed,
                        "water drops of 46 um, We 0.05 to 2; beyond that an extrapolation"};
const Basis ceiling_rule{"sampling theorem (Shannon 1949): two samples a period",
                         SourceTag::computed, "smallest dot of the heads chosen"};
const Basis mass{"mass balance: 1 mL/m2 is 1 um", SourceTag::computed, "solid"};
const Basis catalogue_row{"catalogue, as its provenance says", SourceTag::table,
                          "the mode of the head named"};

void measured_dot(TraceWriter& w, const ChannelDots& dots, const std::string& c) {
  const Substrate& substrate = w.job.request->substrate;
  std::vector<StepInput> inputs{from_value("D_0", *substrate.dot_diameter,
                                           in_um(substrate.dot_diameter->value), "um",
                                           "substrate.dot_diameter")};
  std::string formula = "D_0";
  if (substrate.dot_volume) {
    formula = "D_0*(V/V_0)^(1/3)";
    inputs.push_back(w.step("V", c + ".drop"));
    inputs.push_back(from_value("V_0", *substrate.dot_volume, in_pl(substrate.dot_volume->value),
                                "pL", "substrate.dot_volume"));
  }
  w.formula(c + ".dot", "D", formula, inputs, in_um(dots.dot_diameter), "um", measured);
}

void cap_factor(TraceWriter& w, const std::string& c) {
  constexpr double degree = pi / 180;
  const Value<double>& angle = *w.job.contact_angle;
  const double used = std::max(angle.value, least_cap_angle);
  w.formula(c + ".spread", "b", "(8/(tan(t*pi/360)*(3+tan(t*pi/360)^2)))^(1/3)",
            {from_value("t", angle, used / degree, "deg", "substrate.contact_angle"),
             constant("pi", pi, "")},
            capped_cap_spread(angle.value), "", cap);
}

StepInput spread_input(TraceWriter& w, const ChannelDots& dots, const std::string& c) {
  const Substrate& substrate = w.job.request->substrate;
  if (dots.spread_from == "spread_factor") {
    return from_value("b", *substrate.spread_factor, substrate.spread_factor->value, "",
                      "substrate.spread_factor");
  }
  if (dots.spread_from == "contact_angle") {
    cap_factor(w, c);
    return w.step("b", c + ".spread");
  }
  return from_parameter(w.job, "b", spread_parameter(w.job.absorbency));
}

void dot(TraceWriter& w, const ChannelDots& dots, const std::string& c) {
  w.formula(c + ".drop_diameter", "d", "(6000*V/pi)^(1/3)",
            {w.step("V", c + ".drop"), constant("pi", pi, "")}, in_um(drop_diameter(dots.drop)),
            "um", sphere);
  if (dots.spread_from == "measured_dot") return measured_dot(w, dots, c);
  const StepInput factor = spread_input(w, dots, c);
  w.formula(c + ".dot", "D", "b*d", {factor, w.step("d", c + ".drop_diameter")},
            in_um(dots.dot_diameter), "um", spread);
}

/// Area of the disc beyond the edge of its cell, on one side of one axis [um2].
double beyond(double dot, double pitch) {
  const double share = std::min(1.0, pitch / dot);
  const double root = std::sqrt(std::max(0.0, dot * dot / 4 - pitch * pitch / 4));
  return dot * dot / 4 * std::acos(share) - pitch / 2 * root;
}

void beyond_step(TraceWriter& w, const std::string& axis, Length dot, Length pitch_along,
                 const std::string& pitch_step, const std::string& c) {
  w.formula(c + ".beyond_" + axis, "A_" + axis,
            "D^2/4*acos(min(1,p/D))-p/2*sqrt(max(0,D^2/4-p^2/4))",
            {w.step("D", c + ".dot"), w.step("p", pitch_step)},
            beyond(in_um(dot), in_um(pitch_along)), "um2", geometry);
}

void cover(TraceWriter& w, const Group& group, const ChannelDots& dots, const std::string& g,
           const std::string& c) {
  const Length p_n = pitch(nozzle_axis(group)) + group.wider;
  const Length p_m = pitch(motion_axis(group));
  if (closes(dots.dot_diameter, p_n, p_m)) {
    w.formula(c + ".cover", "F", "min(1,D/p_d)",
              {w.step("D", c + ".dot"), w.step("p_d", g + ".diagonal")}, dots.cover_fraction, "",
              {"plane geometry", SourceTag::computed, "dot not below the diagonal: solids close"});
    return;
  }
  beyond_step(w, "n", dots.dot_diameter, p_n, closing_pitch(w, g), c);
  beyond_step(w, "m", dots.dot_diameter, p_m, g + ".pitch_m", c);
  w.formula(c + ".cover", "F", "(pi*D^2/4-2*A_n-2*A_m)/(p_n*p_m)",
            {constant("pi", pi, ""), w.step("D", c + ".dot"), w.step("A_n", c + ".beyond_n"),
             w.step("A_m", c + ".beyond_m"), w.step("p_n", closing_pitch(w, g)),
             w.step("p_m", g + ".pitch_m")},
            dots.cover_fraction, "", geometry);
}

/// A line of drops on a surface that takes in nothing.
void bead(TraceWriter& w, const ChannelDots& dots, const std::string& g, const std::string& c) {
  if (!dots.straight_pitch || !w.has(c + ".drop_diameter")) return;
  constexpr double degree = pi / 180;
  const Value<double>& angle = *w.job.contact_angle;
  const StepInput t =
      from_value("t", angle, angle.value / degree, "deg", "substrate.contact_angle");
  const StepInput circle = constant("pi", pi, "");
  const StepInput d = w.step("d", c + ".drop_diameter");
  w.formula(c + ".bead_shape", "f", "t*pi/180/sin(t*pi/180)^2-cos(t*pi/180)/sin(t*pi/180)",
            {t, circle}, bead_shape(angle.value), "", bead_rule);
  w.formula(c + ".cap", "b", "(8/(tan(t*pi/360)*(3+tan(t*pi/360)^2)))^(1/3)", {t, circle},
            cap_spread(angle.value), "", cap);
  const StepInput f = w.step("f", c + ".bead_shape");
  w.formula(c + ".straight_pitch", "p_s", "2*pi*d/(3*b^2*f)",
            {circle, d, w.step("b", c + ".cap"), f}, in_um(*dots.straight_pitch), "um", bead_rule);
  if (!dots.bead_width) return;
  w.formula(c + ".bead_width", "w", "d*sqrt(2*pi*d/(3*p_m*f))",
            {circle, d, w.step("p_m", g + ".pitch_m"), f}, in_um(*dots.bead_width), "um",
            bead_rule);
}

/// The dot at its widest on impact, the other bound of a drop that pins.
void impact(TraceWriter& w, const Group& group, const ChannelDots& dots, const std::string& g,
            const std::string& c) {
  if (!dots.impact_dot || !w.has(c + ".drop_diameter")) return;
  constexpr double degree = pi / 180;
  const Ink* ink = nullptr;
  for (const Channel& channel : w.job.channels) {
    if (channel.name == dots.channel) ink = channel.ink;
  }
  if (ink == nullptr) return;
  const Value<double>& angle = *w.job.contact_angle;
  const DropFlight& flight = *group.flight;
  const Speed speed = flight.levels.at(flight.levels_used - 1).nominal->impact;
  const std::string key = "ink." + ink->name + ".";
  const Fluid fluid{ink->density->value, {}, ink->surface_tension->value};
  const StepInput d = w.step("d", c + ".drop_diameter");
  w.formula(c + ".impact_we", "We", "rho*v^2*d/(1000*s)",
            {from_value("rho", *ink->density, ink->density->value.si(), "kg/m3", key + "density"),
             w.step_of_value("v", {g + ".large.impact_nominal", g + ".small.impact_nominal"},
                             speed.si(), "m/s"),
             d,
             from_value("s", *ink->surface_tension, in_mn_per_m(ink->surface_tension->value),
                        "mN/m", key + "surface_tension")},
            weber(fluid, speed, dots.drop_diameter), "", weber_rule);
  w.formula(c + ".impact_dot", "D_i", "d*exp(0.151)*(We/(2/(1+cos(t*pi/180))-cos(t*pi/180)))^0.09",
            {d, w.step("We", c + ".impact_we"),
             from_value("t", angle, angle.value / degree, "deg", "substrate.contact_angle"),
             constant("pi", pi, "")},
            in_um(*dots.impact_dot), "um", impact_rule);
}

/// The drop sizes in use beside that of solids, each printed at every place of the lattice.
void tones(TraceWriter& w, const Group& group, const ChannelDots& dots, const std::string& g) {
  if (dots.levels.size() < 2) return;
  for (std::size_t i = 0; i < dots.levels.size(); ++i) {
    const LevelDot& level = dots.levels[i];
    if (level.drop == dots.drop) continue;
    ChannelDots tone = dots;
    tone.drop = level.drop;
    tone.dot_diameter = level.dot_diameter;
    tone.cover_fraction = level.cover_fraction;
    const std::string at = g + "." + dots.channel + ".tone" + std::to_string(i + 1);
    drop_step(w, group, at, level.drop);
    dot(w, tone, at);
    cover(w, group, tone, g, at);
  }
}

/// What the dot does to edges and to a dead nozzle.
/// By how much a line grows across each axis, and the dots to take off it in the data: of one axis
/// where the lattice is square.
void edges_of_axes(TraceWriter& w, const std::string& c, const StepInput& dot,
                   const std::vector<StepInput>& pitches) {
  const bool square = std::abs(pitches.front().value / pitches.back().value - 1) < 1e-6;
  for (const StepInput& p : pitches) {
    const std::string axis = p.symbol.substr(1);  // "_n", "_m"
    std::string gain = c + ".edge_gain", off_step = c + ".bar_reduction";
    gain += axis;
    off_step += axis;
    if (!square) {
      w.formula(gain, "g" + axis, "D-" + p.symbol, {dot, p}, dot.value - p.value, "um", geometry);
    }
    const int off = bar_reduction_dots(micrometres(p.value), micrometres(dot.value));
    w.formula(off_step, "n" + axis, "max(0,round((D-" + p.symbol + ")/" + p.symbol + "))", {dot, p},
              off, "", whole_dots);
    if (square) return;
  }
}

/// The dot that would close solids on the lattice needed, beside heads interleaved for a smaller
/// one.
void needed_diagonal(TraceWriter& w, const std::string& g) {
  const std::string id = "required.diagonal";
  const bool both = w.has("required.across") && w.has("required.along");
  if (!both || w.has(id) || !w.has(g + ".interleave")) return;
  const StepInput across = w.step("R_n", "required.across"),
                  along = w.step("R_m", "required.along");
  w.formula(id, "D_r", "sqrt((25400/R_n)^2+(25400/R_m)^2)", {across, along},
            in_um(closing_dot(1.0 / dpi(across.value), 1.0 / dpi(along.value))), "um", geometry);
}

void effects(TraceWriter& w, const ChannelDots& dots, const std::string& g, const std::string& c) {
  const StepInput dot = w.step("D", c + ".dot");
  const StepInput p_n = w.step("p_n", g + ".pitch_n");
  const StepInput p_m = w.step("p_m", g + ".pitch_m");
  w.formula(c + ".edge_gain", "g", "D-min(p_n,p_m)", {dot, p_n, p_m},
            dot.value - std::min(p_n.value, p_m.value), "um", geometry);
  edges_of_axes(w, c, dot, {p_n, p_m});
  needed_diagonal(w, g);
  w.formula(c + ".dead_nozzle_gap", "g_d", "2*p_n-D", {dot, p_n}, 2 * p_n.value - dot.value, "um",
            geometry);
  w.formula(c + ".hiding_dot", "D_h", "sqrt((2*p_n)^2+p_m^2)", {p_n, p_m}, in_um(dots.hiding_dot),
            "um", geometry);
}

void channel(TraceWriter& w, const Group& group, const ChannelDots& dots, const std::string& g) {
  const std::string c = g + "." + dots.channel;
  cover(w, group, dots, g, c);
  tones(w, group, dots, g);
  effects(w, dots, g, c);
  bead(w, dots, g, c);
  const bool several = group.film_heads > 1;
  std::vector<StepInput> inputs{w.step("V", c + ".drop"), w.step("R_n", nozzle_axis_step(group, g)),
                                motion_resolution(w, group, g)};
  if (several) inputs.push_back(chosen("n_f", group.film_heads, ""));
  w.formula(c + ".laydown", "h",
            several ? "V*n_f*R_n*R_m*1e-9/0.0254^2" : "V*R_n*R_m*1e-9/0.0254^2", std::move(inputs),
            in_um(laydown(dots.drop, nozzle_axis(group), motion_axis(group), group.film_heads)),
            "mL/m2", mass);
}

bool same_dots(const ChannelDots& a, const ChannelDots& b) {
  return a.drop == b.drop && a.dot_diameter == b.dot_diameter && a.levels_used == b.levels_used;
}

/// The channels of a group whose dots are no other's before them.
std::vector<const ChannelDots*> different_dots(const Group& group, const std::string& g) {
  std::vector<const ChannelDots*> list;
  for (const ChannelDots& dots : group.dots) {
    if (dots_steps(group, dots.channel, g) == g + "." + dots.channel) list.push_back(&dots);
  }
  return list;
}

}  // namespace

P spread_parameter(Absorbency absorbency) {
  if (absorbency == Absorbency::none) return P::spread_none;
  return absorbency == Absorbency::low ? P::spread_low : P::spread_high;
}

std::string dots_steps(const Group& group, const std::string& channel, const std::string& g) {
  const auto own = std::find_if(group.dots.begin(), group.dots.end(),
                                [&](const ChannelDots& dots) { return dots.channel == channel; });
  if (own == group.dots.end()) throw std::logic_error("no dots of " + channel);
  const auto first = std::find_if(group.dots.begin(), group.dots.end(),
                                  [&](const ChannelDots& dots) { return same_dots(dots, *own); });
  return g + "." + first->channel;
}

void drop_step(TraceWriter& w, const Group& group, const std::string& at, Volume drop) {
  const std::string ref = "head." + group.head + ".mode." + group.mode + ".drops";
  const std::vector<Volume>& drops = trace_mode(w.catalogue, group).drops->value;
  const auto found = std::find(drops.begin(), drops.end(), drop) - drops.begin();
  // Levels count the empty dot.
  const double levels = static_cast<double>(found) + 2;
  const bool smallest = at.ends_with(".small");
  std::vector<StepInput> inputs{smallest ? constant("levels", levels, "")
                                         : chosen("levels", levels, "")};
  for (const Volume volume : drops) {
    inputs.push_back(
        from_catalogue("V_" + std::to_string(inputs.size() + 1), in_pl(volume), "pL", ref));
  }
  w.add(at + ".drop", StepKind::table, "V", ref, inputs, in_pl(drop), "pL", catalogue_row);
}

void trace_ceiling(TraceWriter& w) {
  if (!w.spec.required || !w.spec.required->substrate_ceiling || w.spec.chosen.empty()) return;
  const double value = in_dpi(*w.spec.required->substrate_ceiling);
  std::vector<std::string> dots;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const std::string g = "g" + std::to_string(i + 1);
    for (const ChannelDots* of : different_dots(w.spec.chosen[i], g)) {
      const std::string c = g + "." + of->channel;
      dots.push_back(c + ".dot");
      for (std::size_t k = 1; k <= of->levels.size(); ++k) {
        dots.push_back(c + ".tone" + std::to_string(k) + ".dot");
      }
    }
  }
  w.formula("required.ceiling", "R_c", "50800/D", {w.step_of_value("D", dots, 50800 / value, "um")},
            value, "dpi", ceiling_rule);
}

void trace_impact(TraceWriter& w, const Group& group, const std::string& g) {
  for (const ChannelDots* dots : different_dots(group, g)) {
    impact(w, group, *dots, g, g + "." + dots->channel);
  }
}

void trace_drops(TraceWriter& w, const Group& group, const std::string& g) {
  for (const ChannelDots* dots : different_dots(group, g)) {
    const std::string c = g + "." + dots->channel;
    drop_step(w, group, c, dots->drop);
    dot(w, *dots, c);
  }
}

void trace_dots(TraceWriter& w, const Group& group, const std::string& g) {
  for (const ChannelDots* dots : different_dots(group, g)) channel(w, group, *dots, g);
}

}  // namespace calc
