#include "calc/across.h"

#include <algorithm>

#include "calc/compare.h"

namespace calc {

namespace {

int whole_up(double x) { return static_cast<int>(ceil_tolerant(x)); }

}  // namespace

Length print_width(Length image, Length margin) { return image + 2 * margin; }

Length swath(int nozzles, Resolution native) { return static_cast<double>(nozzles) / native; }

Length default_overlap(bool joins, Length nozzle_pitch) {
  return joins ? Length{} : default_overlap_nozzles * nozzle_pitch;
}

Length head_pitch(Length swath, Length overlap, Length nozzle_pitch) {
  return floor_tolerant((swath - overlap) / nozzle_pitch) * nozzle_pitch;
}

int heads_across(Length width, Length swath, Length head_pitch) {
  if (at_most(width, swath)) return 1;
  return 1 + whole_up((width - swath) / head_pitch);
}

Length printed_width(int heads, Length swath, Length head_pitch) {
  return swath + (heads - 1) * head_pitch;
}

int staggered_rows(bool joins, Length body_width, Length gap, Length head_pitch) {
  return joins ? 1 : whole_up((body_width + gap) / head_pitch);
}

int rows_in_group(int heads, int rows) { return std::min(heads, rows); }

double idle_nozzle_share(Length width, int heads, Length swath, Length head_pitch) {
  return 1 - width / (heads * head_pitch + (swath - head_pitch));
}

double idle_counted(Length width, int heads, int nozzles, Length pitch) {
  return 1 - floor_tolerant(width / pitch) / (static_cast<double>(heads) * nozzles);
}

Length head_start(int index, Length width, int heads, Length swath, Length head_pitch) {
  return (width - printed_width(heads, swath, head_pitch)) / 2 + index * head_pitch;
}

Length rows_depth(int rows, Length body_depth, Length gap) { return rows * (body_depth + gap); }

Joints joints(int positions, int across, int interleave, int stack) {
  Joints count;
  count.stitch = positions * stack * interleave * (across - 1);
  count.interleave = positions * stack * (interleave - 1);
  count.stack = positions * (stack - 1);
  count.colour = positions - 1;
  return count;
}

int heads_in_group(int positions, int across, int interleave, int stack) {
  return positions * across * interleave * stack;
}

}  // namespace calc
