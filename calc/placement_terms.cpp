#include "calc/placement_terms.h"

#include <algorithm>
#include <cmath>

#include "calc/drive.h"
#include "calc/eye.h"

namespace calc {
namespace {

constexpr double straightness_deviations = 3;  // the half angle holds so many
constexpr double speed_deviations = 2;

/// A term by its half width and the shift that makes.
BudgetTerm made(std::string_view name, TermKind kind, const Tolerance& tolerance,
                std::string_view unit, Length shift) {
  BudgetTerm term;
  term.name = name;
  term.kind = kind;
  term.half_width = tolerance.value;
  term.unit = unit;
  term.shift = shift;
  term.field = tolerance.field;
  return term;
}

/// The same for a term that grows with the distance between two rows.
BudgetTerm over(Length distance, BudgetTerm term) {
  term.over = distance;
  return term;
}

}  // namespace

Length nozzle_pitch(const Group& g) {
  return 1.0 / (g.scan ? g.resolution_along : g.resolution_across);
}
Length motion_pitch(const Group& g) {
  return 1.0 / (g.scan ? g.resolution_across : g.resolution_along);
}

int rows_of_colour(const Group& g) {
  return g.rows_staggered * g.interleave * g.stack * g.film_heads;
}
Length row_step(const Group& g) {
  return g.round ? g.round->step : g.footprint / (rows_of_colour(g) * g.positions);
}
Length way_under(const Group& g) {
  return g.round ? g.round->step * (rows_of_colour(g) * g.positions) : g.footprint;
}

Length joint_apart(const Group& g) {
  const Length step = row_step(g);
  const Length banks = step * (rows_of_colour(g) - g.rows_staggered);
  if (g.heads_across < 2) return banks;
  const Length lean = g.head_pitch * std::tan(std::abs(g.tilt));
  if (g.rows_staggered < 2) return banks + lean;
  const Length next = metres(std::abs((step - lean).si()));
  if (g.heads_across <= g.rows_staggered) return banks + next;
  return banks +
         std::max(next, step * (g.rows_staggered - 1) + lean);  // and from last to first row
}

double to_and_fro(const Group& g) { return g.scan ? 2 : 1; }

bool has_joints(const Group& g) {
  return g.scan || g.heads_across * g.interleave * g.stack * g.film_heads > 1;
}

/// The value of a default: likely, or its kind end while nobody has moved it.
double PlacementTerms::of(P id) const {
  const Parameter& row = parameter(id);
  const double value = job_.parameters[id];
  const bool moved = value < row.value || value > row.value;
  if (assumed_ == Assumed::likely || moved) return value;
  return id == P::weave_wavelength_m ? row.high : row.low;  // a long weave parts two rows less
}

/// Speed of the dots over the surface.
Speed PlacementTerms::speed(const Group& g) const {
  return g.scan ? g.scan->carriage_speed : served_high(*job_.speed);
}

/// A term of drops that come `share` of `delay` late.
BudgetTerm PlacementTerms::late(std::string_view name, const Tolerance& by, std::string_view unit,
                                Time delay, double share, const Group& g, double ways) const {
  const Length shift = speed(g) * delay * (share * ways);
  BudgetTerm term = made(name, TermKind::rectangular, by, unit, shift);
  term.at = speed(g);
  term.late = delay;
  term.ways = ways;
  return term;
}

BudgetTerm PlacementTerms::straightness(const Group& g) const {
  const std::optional<double>& given = g.flight->straightness;
  const double mrad = given ? *given * 1e3 : of(P::straightness_mrad);
  BudgetTerm term =
      made("straightness", TermKind::normal, {mrad, parameter(P::straightness_mrad).key}, "mrad",
           g.flight->budget_throw * std::tan(mrad * 1e-3));
  term.coverage = straightness_deviations;
  return term;
}

BudgetTerm PlacementTerms::drop_speed(const Group& g) const {
  const double likely = g.flight->speed_spread.value_or(job_.parameters[P::speed_spread]);
  const double value = g.flight->speed_spread ? likely : of(P::speed_spread);
  BudgetTerm term = late("speed", {value * 100, parameter(P::speed_spread).key}, "%",
                         g.flight->speed_delay, likely > 0 ? value / likely : 0, g);
  term.kind = TermKind::normal;
  term.coverage = speed_deviations;
  return term;
}

BudgetTerm PlacementTerms::gap(const Group& g, double ways) const {
  const double likely = in_mm(served_high(job_.throw_variation));
  const bool stands_in = job_.throw_variation.origin.kind == OriginKind::assumed;
  const double value = stands_in ? of(P::throw_variation_mm) : likely;
  return late("gap", {value, "line.throw_variation"}, "mm", g.flight->gap_delay,
              likely > 0 ? value / likely : 0, g, ways);
}

BudgetTerm PlacementTerms::thickness(const Group& g, double ways) const {
  const double share = assumed_ == Assumed::kind ? 0 : 1;
  return late("thickness", {in_mm(job_.thickness_variation) * share, "product.thickness_variation"},
              "mm", g.flight->thickness_delay, share, g, ways);
}

bool PlacementTerms::is_uneven(const Group& g) { return g.flight->thickness_delay > Time{}; }

BudgetTerm PlacementTerms::count(const Group& g) const {
  const std::optional<Length> step = g.scan ? std::nullopt : encoder_step(job_);
  const double half_um = (step ? in_um(*step) : of(P::encoder_count_um)) / 2;
  const std::string_view key = step ? "line.encoder_step" : parameter(P::encoder_count_um).key;
  return made("count", TermKind::resolution, {half_um, key}, "um", micrometres(half_um));
}

BudgetTerm PlacementTerms::levels(const Group& g) const {
  BudgetTerm term = late("levels", {0, "assume.drop_levels"}, "um", g.flight->level_delay, 0.5, g);
  term.kind = TermKind::systematic;
  term.half_width = in_um(term.shift);
  return term;
}

BudgetTerm PlacementTerms::sag(const Group& g) {
  const Length off = g.flight->sag_spread / 2;
  return made("sag", TermKind::systematic, {in_um(off), "line.jetting"}, "um", off);
}

BudgetTerm PlacementTerms::uneven(const Group& g) {
  return made("tilt", TermKind::systematic, {in_um(g.uneven), "image.resolution"}, "um", g.uneven);
}

BudgetTerm PlacementTerms::mount() const {
  const Given<Length>& given = job_.request->line.mount_tolerance;
  const double um = given ? in_um(served_high(*given)) : of(P::mount_um);
  return made("mount", TermKind::rectangular, {um, parameter(P::mount_um).key}, "um",
              micrometres(um));
}

BudgetTerm PlacementTerms::wheel(Length distance) const {
  const Given<double>& given = job_.request->line.wheel_error;
  const double share = given ? served_high(*given) : of(P::wheel_error);
  return over(distance, made("wheel", TermKind::rectangular,
                             {share * 100, parameter(P::wheel_error).key}, "%", distance * share));
}

BudgetTerm PlacementTerms::thermal(Length distance) const {
  const double kelvin = of(P::thermal_drift_k);
  return over(distance,
              made("thermal", TermKind::rectangular, {kelvin, parameter(P::thermal_drift_k).key},
                   "K", distance * (steel_expansion * kelvin)));
}

BudgetTerm PlacementTerms::weave(Length distance) const {
  const Tolerance a = amplitude();
  const Given<Length>& given = job_.request->line.weave_wavelength;
  const double wave = given ? served_low(*given).si() : of(P::weave_wavelength_m);
  const double turn = std::min(pi * distance.si() / wave, pi / 2);
  return over(distance, made("weave", TermKind::sinusoid, a, "mm",
                             millimetres(2 * a.value * std::sin(turn))));
}

BudgetTerm PlacementTerms::whole_weave() const {
  const Tolerance a = amplitude();
  return made("weave", TermKind::sinusoid, a, "mm", millimetres(a.value));
}

BudgetTerm PlacementTerms::sensor() const {
  const double um = of(P::sensor_repeat_um);
  return made("sensor", TermKind::rectangular, {um, parameter(P::sensor_repeat_um).key}, "um",
              micrometres(um));
}

Length PlacementTerms::sensor_distance() const { return millimetres(of(P::sensor_distance_mm)); }

/// Half width of the weave [mm]; a body that turns under the heads does not wander.
Tolerance PlacementTerms::amplitude() const {
  const Given<Length>& given = job_.request->line.weave;
  if (given) return {in_mm(served_high(*given)), "line.weave"};
  return {job_.radius ? 0 : of(P::weave_mm), "line.weave"};
}

}  // namespace calc
