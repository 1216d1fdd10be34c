/// Heads that stand tilted: which angles are worth trying, and what a mode comes to at one.
#include <algorithm>
#include <cmath>

#include "calc/arrangement.h"
#include "calc/compare.h"
#include "calc/frequency.h"
#include "calc/lattice.h"
#include "calc/tilt.h"

namespace calc {
namespace {

std::vector<double> offsets_of(const HeadMode& mode) {
  return mode.row_offsets && !mode.row_offsets->value.empty() ? mode.row_offsets->value
                                                              : std::vector<double>{0};
}

/// Places of the rows along the motion, one for each offset; empty where the catalogue does not
/// say. A single row stands where it stands.
std::vector<Length> places_of(const HeadMode& mode) {
  const std::size_t rows = offsets_of(mode).size();
  if (mode.row_places && mode.row_places->value.size() == rows) return mode.row_places->value;
  return rows == 1 ? std::vector<Length>{Length{}} : std::vector<Length>{};
}

/// Depth of the rows that the swath loses a part by: of one colour's rows at least, and of the
/// whole field where that is stated.
Length field_of(const ModeFacts& facts) {
  const std::vector<Length> places = places_of(*facts.mode);
  if (places.empty()) return {};
  const auto [first, last] = std::minmax_element(places.begin(), places.end());
  const Given<Length>& field = facts.head->field_depth;
  return field ? std::max(field->value, *last - *first) : *last - *first;
}

bool may_tilt(const Search& search, const ModeFacts& facts, const Shape& first) {
  const Head& head = *facts.head;
  if (!head.tilts || !head.tilts->value || first.scanning) return false;
  if (search.job->radius || search.job->radius_across) return false;
  if (!head.body_width || !head.body_depth || places_of(*facts.mode).empty()) return false;
  return facts.colours == 1 || head.field_depth.has_value();
}

bool fires_at_once(const Head& head) { return !head.nozzle_delay || !head.nozzle_delay->value; }

double unevenness_of(const ModeFacts& facts, double tilt) {
  const HeadMode& mode = *facts.mode;
  return unevenness(mode.row_pitch->value, facts.untilted, offsets_of(mode), places_of(mode), tilt);
}

/// The angle in the sense in which the rows print evenly, the positive one first; none in neither.
std::optional<double> sense_of(const ModeFacts& facts, double tilt) {
  for (const double sense : {tilt, -tilt}) {
    if (at_most(unevenness_of(facts, sense), most_uneven)) return sense;
  }
  return std::nullopt;
}

}  // namespace

std::vector<Shape> tilts_of(const Search& search, const ModeFacts& facts, const Shape& first) {
  std::vector<Shape> found;
  if (!may_tilt(search, facts, first)) return found;
  const Resolution across = nozzle_demand(*search.job, false).required;
  const Resolution along = motion_demand(*search.job, false).required;
  for (int k = 1; k <= most_interleave; ++k) {
    const std::optional<double> exact = tilt_for(facts.native, k, across);
    std::optional<double> whole;
    if (fires_at_once(*facts.head)) whole = tilt_by_lines(facts.native, k, across, along);
    if (exact && whole && at_most(*whole, *exact)) whole.reset();
    for (const std::optional<double>& angle : {exact, whole}) {
      const std::optional<double> tilt = angle ? sense_of(facts, *angle) : std::nullopt;
      if (!tilt) continue;
      found.push_back(first);
      found.back().interleave = k;
      found.back().tilt = *tilt;
    }
  }
  return found;
}

ModeFacts tilted(const Search& search, const ModeFacts& untilted, double tilt) {
  ModeFacts f = untilted;
  f.tilt = tilt;
  f.field = field_of(f);
  f.native = tilted_native(untilted.native, tilt);
  f.pitch = pitch(f.native);
  f.swath = tilted_swath(untilted.swath, f.field, tilt);
  f.uneven = f.pitch * unevenness_of(f, tilt);
  f.wider = f.pitch * widening(f.mode->row_pitch->value, f.untilted, offsets_of(*f.mode),
                               places_of(*f.mode), tilt);
  fill_overlap(search, f);
  return f;
}

std::optional<ModeFacts> facts_of(const Search& search, const Shape& shape, Findings& findings) {
  const Head& head = search.catalogue->heads[shape.head];
  std::optional<ModeFacts> facts = mode_facts(search, head, head.modes[shape.mode], findings);
  if (!facts || !(shape.tilt < 0 || shape.tilt > 0)) return facts;
  *facts = tilted(search, *facts, shape.tilt);
  if (facts->head_pitch > Length{}) return facts;
  findings.failures.push_back(refused("head_data", "overlap"));
  return std::nullopt;
}

Resolution lines_on(const ModeFacts& facts, Resolution wanted) {
  if (!facts.is_tilted() || !fires_at_once(*facts.head)) return wanted;
  return whole_lines(wanted, pitch(facts.untilted), facts.tilt);
}

void fill_rows_along(const Search& search, const ModeFacts& facts, Group& g) {
  if (!facts.is_tilted()) return;
  const HeadMode& mode = *facts.mode;
  const std::vector<double> offsets = offsets_of(mode);
  const double of_row = std::floor(mode.nozzles->value / static_cast<double>(offsets.size()));
  g.slant = (of_row - 1) / mode.row_pitch->value * std::sin(std::abs(facts.tilt));
  g.one_clock = fires_at_once(*facts.head);
  if (offsets.size() < 2) return;
  for (const Length along :
       rows_along(mode.row_pitch->value, offsets, places_of(mode), facts.tilt)) {
    g.row_delays.push_back({along, along * g.resolution_along, along / search.fastest});
  }
}

Length depth_along(const ModeFacts& facts) {
  const Head& head = *facts.head;
  if (!facts.is_tilted()) return head.body_depth->value;
  return tilted_depth(head.body_width->value, head.body_depth->value, facts.tilt);
}

}  // namespace calc
