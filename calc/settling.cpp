#include "calc/settling.h"

#include "calc/compare.h"
#include "calc/fluid.h"

namespace calc {

Density ink_density(const Job& job, const Ink& ink) {
  return ink.density ? ink.density->value : Density::from_si(job.parameters[P::ink_density]);
}

std::optional<Length> settling_height_of(const Job& job, const Ink& ink) {
  if (!ink.particle_size || !ink.particle_density) return std::nullopt;
  return settling_height(ink.particle_size->high, ink.particle_density->value,
                         ink_density(job, ink), job.room.value);
}

std::optional<bool> settles_by_figures(const Job& job, const Ink& ink) {
  if (!ink.particle_size || !ink.particle_density) return std::nullopt;
  const std::optional<Length> height = settling_height_of(job, ink);
  const Length depth = micrometres(job.parameters[P::channel_depth_um]);
  return height && !at_least(*height, depth);
}

std::optional<bool> settles(const Job& job, const Ink& ink) {
  return ink.settles ? std::optional(ink.settles->value) : settles_by_figures(job, ink);
}

}  // namespace calc
