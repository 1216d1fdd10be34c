/// What the resolution along the motion was found by.
#include <cmath>
#include <optional>

#include "calc/named.h"
#include "calc/trace_writer.h"

namespace calc {
namespace {

const Basis asked_rule{"the demand as it stands", SourceTag::computed,
                       "where solids close and the film is laid at it"};
const Basis closing_rule{"plane geometry: dots close solids from the diagonal of the lattice on",
                         SourceTag::computed, "dot larger than the pitch along the nozzle rows"};
const Basis spread_most{"dot = spread factor times drop", SourceTag::practice,
                        "upper end of the class default"};
const Basis filming_rule{"mass balance: 1 mL/m2 is 1 um", SourceTag::computed,
                         "the film asked for, by a solid"};

/// The greatest dot that a guessed spread makes of the drop [um]; none where the spread is known.
/// A bigger drop or a finer lattice is never picked on a guess alone, so that solids may close by
/// it.
std::optional<double> greatest_dot(const TraceWriter& w, const ChannelDots& dots) {
  if (dots.spread_from != "class") return std::nullopt;
  return in_um(dots.drop_diameter) * parameter(spread_parameter(w.job.absorbency)).high;
}

bool is_near(double a, double b) { return std::abs(a - b) <= 1e-13 * std::abs(b); }

/// The least resolution along the motion [dpi] at which a dot closes solids.
double closing(double dot, double pitch_n) {
  return 25400 / std::sqrt((dot - pitch_n) * (dot + pitch_n));
}

/// Whether it is the least resolution at which the dots of the channel close solids.
bool by_closing(TraceWriter& w, const ChannelDots& dots, double value, const std::string& g,
                const std::string& c) {
  const StepInput p = w.step("p", closing_pitch(w, g));
  const std::string formula = "25400/sqrt((D-p)*(D+p))";
  const StepInput dot = w.step("D", c + ".dot");
  if (is_near(closing(dot.value, p.value), value)) {
    w.formula(g + ".motion", "R_m", formula, {dot, p}, value, "dpi", closing_rule);
    return true;
  }
  const std::optional<double> most = greatest_dot(w, dots);
  if (!most || !is_near(closing(*most, p.value), value)) return false;
  const P id = spread_parameter(w.job.absorbency);
  w.formula(c + ".dot_most", "D_m", "b_m*d",
            {from_range(w.job, "b_m", id, parameter(id).high), w.step("d", c + ".drop_diameter")},
            *most, "um", spread_most);
  w.formula(g + ".motion", "R_m", formula, {w.step("D", c + ".dot_most"), p}, value, "dpi",
            closing_rule);
  return true;
}

/// "h" [um], the film asked for.
StepInput film_asked(const TraceWriter& w, const Channel& channel) {
  const Value<Length>& film = *channel.film;
  if (film.origin.kind != OriginKind::assumed) {
    return from_value("h", film, in_um(film.high), "um", "colour." + channel.name + ".film");
  }
  const bool white = channel.kind == ColourKind::white;
  return from_parameter(w.job, "h", white ? P::film_white_um : P::film_varnish_um);
}

/// Whether it is the resolution at which the drops of the channel lay the film asked for.
bool by_filming(TraceWriter& w, const Group& group, const ChannelDots& dots, double value,
                const std::string& g, const std::string& c) {
  const Channel* const channel = named(w.job.channels, dots.channel);
  if (channel == nullptr || !channel->film) return false;
  const StepInput drop = w.step("V", c + ".drop");
  const StepInput across = w.step("R_n", nozzle_axis_step(group, g));
  const StepInput film = film_asked(w, *channel);
  const double lays =
      film.value * 0.0254 * 0.0254 * 1e9 / (drop.value * group.film_heads * across.value);
  if (!is_near(lays, value)) return false;
  w.formula(g + ".motion", "R_m", "h*0.0254^2*1e9/(V*n_f*R_n)",
            {film, drop, chosen("n_f", group.film_heads, ""), across}, value, "dpi", filming_rule);
  return true;
}

}  // namespace

void trace_motion(TraceWriter& w, const Group& group, const std::string& g) {
  const StepInput asked = motion_resolution(w, group, g, "R_q");
  const double value = in_dpi(motion_axis(group));
  if (asked.origin == "step") {
    w.formula(g + ".motion", "R_m", "R_q", {asked}, value, "dpi", asked_rule);
    return;
  }
  for (const ChannelDots& dots : group.dots) {
    const std::string c = dots_steps(group, dots.channel, g);
    if (by_closing(w, dots, value, g, c) || by_filming(w, group, dots, value, g, c)) return;
  }
}

}  // namespace calc
