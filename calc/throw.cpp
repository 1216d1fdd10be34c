#include "calc/throw.h"

#include <algorithm>

#include "calc/cylinder.h"

namespace calc {
namespace {

/// Widest swath of the head's modes; zero where none tells.
Length widest_swath(const Head& head) {
  Length widest;
  for (const HeadMode& mode : head.modes) {
    if (!mode.nozzles || !mode.row_pitch) continue;
    const std::size_t rows = mode.row_offsets ? mode.row_offsets->value.size() : 1;
    const double of_row = mode.nozzles->value / static_cast<double>(std::max<std::size_t>(rows, 1));
    widest = std::max(widest, of_row / mode.row_pitch->value);
  }
  return widest;
}

Length bend(Length chord, Length radius, Throw& t) {
  t.curved = true;
  t.slope = landing_slope(chord, radius);
  return sagitta(chord, radius).value_or(Length{});
}

void bend_away(const Job& job, const Head& head, Throw& t) {
  if (job.radius && head.field_depth) {
    t.along = bend(head.field_depth->value, *job.radius, t);
  } else if (job.radius) {
    t.curved = t.field_unknown = true;
  }
  if (!job.radius_across) return;
  const Length swath = widest_swath(head);
  const Length chord = job.width ? std::min(swath, served_high(*job.width)) : swath;
  t.across = bend(chord, *job.radius_across, t);
}

}  // namespace

Length nominal_throw(const Job& job, const Head& head) {
  if (job.throw_distance) return job.throw_distance->value;
  if (head.throw_nominal) return head.throw_nominal->value;
  return millimetres(job.parameters[P::throw_mm]);
}

Throw throw_of(const Job& job, const Head& head) {
  Throw t;
  bend_away(job, head, t);
  t.nominal = nominal_throw(job, head);
  const Length low = job.throw_distance ? served_low(*job.throw_distance) : t.nominal;
  const Length high = job.throw_distance ? served_high(*job.throw_distance) : t.nominal;
  const Length flutter = served_high(job.throw_variation);
  t.least = low - job.thickness_variation - flutter;
  t.greatest_nominal = high + t.along + t.across;
  t.most = high + job.thickness_variation + flutter + t.along + t.across;
  return t;
}

}  // namespace calc
