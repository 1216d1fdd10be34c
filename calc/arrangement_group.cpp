/// An arrangement in the words of the specification, with the place of every head.
#include <algorithm>

#include "calc/across.h"
#include "calc/arrangement.h"
#include "calc/compare.h"
#include "calc/eye.h"
#include "calc/fluid.h"
#include "calc/frequency.h"
#include "calc/lattice.h"
#include "calc/placement.h"
#include "calc/scan.h"
#include "calc/tilt.h"

namespace calc {
namespace {

std::string_view spread_word(DotRule rule) {
  switch (rule) {
    case DotRule::measured:
    case DotRule::measured_scaled:
      return "measured_dot";
    case DotRule::factor:
      return "spread_factor";
    case DotRule::angle:
    case DotRule::angle_capped:
      return "contact_angle";
    case DotRule::class_default:
      break;
  }
  return "class";
}

/// What the dot does to edges, to a dead nozzle and to a line.
void fill_effects(Length pn, Length pm, ChannelDots& d) {
  const Length finer = std::min(pn, pm);
  d.edge_gain = edge_gain(finer, d.dot_diameter);
  d.bar_reduction_dots = bar_reduction_dots(finer, d.dot_diameter);
  d.dead_nozzle_gap = dead_nozzle_gap(pn, d.dot_diameter);
  d.hiding_dot = dead_nozzle_hiding_dot(pn, pm);
  d.finer_than_dot = finer_than_dot(d.dot_diameter, pn, pm);
}

/// What a drop does on a surface that takes in nothing, by its contact angle.
void fill_bead(const Job& job, const Arrangement& a, ChannelDots& d) {
  if (!job.contact_angle || job.absorbency != Absorbency::none) return;
  const double angle = job.contact_angle->value;
  const Length pm = pitch(a.shape.motion_axis);
  d.straight_pitch = scalloping_spacing(d.drop_diameter, angle);
  d.scalloped = !at_most(pm, *d.straight_pitch);
  if (!*d.scalloped) d.bead_width = bead_width(d.drop_diameter, pm, angle);
}

/// How far the drop spreads on impact on such a surface.
void fill_impact(const Job& job, const InkNeed& ink, const DropFlight& flight, ChannelDots& d) {
  if (!job.contact_angle || job.absorbency != Absorbency::none) return;
  const Ink* given = ink.channel->ink;
  if (given == nullptr || !given->surface_tension || !given->density) return;
  const LevelFlight& solid = flight.levels.at(flight.levels_used - 1);
  if (!solid.nominal) return;
  const Fluid fluid{given->density->value, {}, given->surface_tension->value};
  const double we = weber(fluid, solid.nominal->impact, d.drop_diameter);
  d.impact_dot = d.drop_diameter * impact_spread(we, job.contact_angle->value);
}

void fill_levels(const ModeFacts& f, const Arrangement& a, ChannelDots& d) {
  for (std::size_t i = 0; i <= a.level; ++i) {
    const Volume drop = f.mode->drops->value[i];
    const Length dot = f.dots.at(i).diameter;
    d.levels.push_back(
        {drop, drop_diameter(drop), dot,
         covered_fraction(dot, pitch(a.nozzle_axis) + f.wider, pitch(a.shape.motion_axis))});
  }
}

ChannelDots dots_of(const Job& job, const ModeFacts& f, const Arrangement& a, const InkNeed& ink) {
  ChannelDots d;
  d.channel = ink.channel->name;
  d.levels_used = levels_used(a.level);
  d.drop = f.mode->drops->value[a.level];
  d.drop_diameter = drop_diameter(d.drop);
  d.dot_diameter = a.dot.diameter;
  d.cover_fraction =
      covered_fraction(a.dot.diameter, pitch(a.nozzle_axis) + f.wider, pitch(a.shape.motion_axis));
  d.laydown = a.laydown.si();
  d.spread_from = spread_word(a.dot.rule);
  fill_effects(pitch(a.nozzle_axis), pitch(a.shape.motion_axis), d);
  fill_bead(job, a, d);
  return d;
}

/// Names of the channels a colour position prints, joined by "+".
std::string position_channels(const Search& s, const GroupNeed& need, const ModeFacts& f,
                              int position) {
  const auto first = static_cast<std::size_t>(position) * static_cast<std::size_t>(f.colours);
  const std::size_t last =
      std::min(first + static_cast<std::size_t>(f.colours), need.group->channels.size());
  std::string names;
  for (std::size_t i = first; i < last; ++i) {
    if (!names.empty()) names += '+';
    names += s.job->channels[need.group->channels[i]].name;
  }
  return names;
}

/// One bank: the heads side by side that stand at one place of the line.
struct Bank {
  int position, interleave, first_row;
  std::string channel;
};

void place_bank(const Search& s, const ModeFacts& f, const Arrangement& a, const Bank& bank,
                std::vector<HeadPlace>& places) {
  const Length depth = f.head->body_depth ? depth_along(f) : Length{};
  const Length row_step = depth + millimetres(s.job->parameters[P::row_gap_mm]);
  const Length shift = f.pitch * (static_cast<double>(bank.interleave) / a.shape.interleave);
  const Length width = a.shape.scanning ? printed_width(a.across, f.swath, f.head_pitch) : s.width;
  for (int i = 0; i < a.across; ++i) {
    HeadPlace place;
    // The row whose nozzles meet the next head's closer along the motion comes first.
    place.row = f.tilt < 0 ? a.rows - 1 - i % a.rows : i % a.rows;
    place.rotation_deg = f.tilt * 180 / pi;
    place.position = bank.position;
    place.channel = bank.channel;
    place.x = head_start(i, width, a.across, f.swath, f.head_pitch) + f.swath / 2 + shift;
    const int slot = bank.first_row + place.row;
    place.y = row_step * static_cast<double>(slot) + depth / 2;
    if (a.round) place.station = slot;  // until stand_round() deals the rows out
    places.push_back(std::move(place));
  }
}

std::vector<HeadPlace> places_of(const Search& s, const GroupNeed& need, const ModeFacts& f,
                                 const Arrangement& a) {
  std::vector<HeadPlace> places;
  places.reserve(static_cast<std::size_t>(a.heads));
  int row = 0;
  for (int position = 0; position < a.positions; ++position) {
    const std::string channel = position_channels(s, need, f, position);
    for (int line = 0; line < a.shape.stack * a.shape.film_heads; ++line) {
      for (int k = 0; k < a.shape.interleave; ++k) {
        place_bank(s, f, a, {position, k, row, channel}, places);
        row += a.rows;
      }
    }
  }
  return places;
}

void fill_lattice(const ModeFacts& f, const Arrangement& a, Group& g) {
  const bool scanning = a.shape.scanning;
  g.native = f.untilted;
  g.tilt = f.tilt;
  g.field = f.field;
  g.uneven = f.uneven;
  g.wider = f.wider;
  g.resolution_across = scanning ? a.shape.motion_axis : a.nozzle_axis;
  g.resolution_along = scanning ? a.nozzle_axis : a.shape.motion_axis;
  g.swath = f.swath;
  g.pitch = f.pitch;
  g.head_pitch = f.head_pitch;
  g.overlap = f.overlap;
  g.nozzles = f.nozzles;
  g.bits = bits_per_dot(levels_used(a.level));
}

/// The row that an angle's error turns is the whole of a plate's nozzles.
void fill_tolerance(const Job& job, Group& g) {
  if (g.family != Family::tilted) return;
  const Length row = static_cast<double>(g.nozzles) / g.native;
  g.tilt_tolerance = tilt_tolerance(row, g.tilt, joint_limit(job, 1.0 / g.resolution_across));
}

void fill_counts(const Arrangement& a, Group& g) {
  g.heads_across = a.across;
  g.interleave = a.shape.interleave;
  g.stack = a.shape.stack;
  g.film_heads = a.shape.film_heads;
  g.positions = a.positions;
  g.rows_staggered = a.rows;
  g.round = a.round;
  g.heads_total = a.heads;
  g.joints = a.joints;
  g.idle_nozzle_share = a.idle;
  g.footprint = a.footprint;
}

/// The nozzles beyond a shared carriage's advance rest.
void fill_scan(const Arrangement& a, Group& g) {
  g.scan = a.scan;
  if (!a.scan) return;
  const int printing =
      printing_nozzles(a.scan->advance, g.resolution_along, a.scan->quality_passes);
  g.idle_nozzle_share = 1 - printing / (static_cast<double>(g.nozzles) * a.scan->heads_per_colour);
}

void fill_rates(const Arrangement& a, Group& g) {
  g.frequency_needed = a.column;
  g.frequency_per_nozzle = a.per_nozzle;
  g.frequency_allowed = a.allowed;
  g.frequency_use = frequency_use(a.per_nozzle, a.allowed);
  g.speed_limit = a.speed_limit;
  g.jetting_temperature = a.jetting.temperature;
  g.viscosity = a.jetting.viscosity;
}

}  // namespace

void refresh(const Arrangement& a, Group& group) {
  fill_scan(a, group);
  fill_rates(a, group);
}

void add_flight(const Job& job, const GroupNeed& need, const Arrangement& a, Group& group) {
  if (a.flight == nullptr) return;
  group.flight = *a.flight;
  for (std::size_t i = 0; i < need.inks.size(); ++i) {
    fill_impact(job, need.inks[i], *a.flight, group.dots[i]);
  }
}

Family family_of(const Head& head, const Arrangement& a) {
  if (a.shape.scanning) return Family::scanning;
  if (a.shape.tilt < 0 || a.shape.tilt > 0) return Family::tilted;
  if (a.across == 1) return Family::straight;
  if (head.joins && head.joins->value) return Family::joined;
  return a.rows > 1 ? Family::staggered : Family::straight;
}

Group to_group(const Search& search, const GroupNeed& need, const ModeFacts& facts,
               const Arrangement& a, bool with_places) {
  Group g;
  g.name = need.group->name;
  g.head = facts.head->name;
  g.mode = facts.mode->name;
  g.family = family_of(*facts.head, a);
  fill_lattice(facts, a, g);
  fill_counts(a, g);
  fill_scan(a, g);
  fill_rates(a, g);
  fill_tolerance(*search.job, g);
  for (const InkNeed& ink : need.inks) {
    g.channels.push_back(ink.channel->name);
    g.dots.push_back(dots_of(*search.job, facts, a, ink));
  }
  add_flight(*search.job, need, a, g);
  if (with_places) {
    fill_rows_along(search, facts, g);
    for (ChannelDots& d : g.dots) fill_levels(facts, a, d);
    g.barcodes = fit_barcode(*search.job, g.resolution_across, g.resolution_along);
    g.places = places_of(search, need, facts, a);
    if (a.round) stand_round(*a.round, g);
  }
  return g;
}

void stand_in_line(const Job& job, std::vector<Group>& groups) {
  const Length gap = millimetres(job.parameters[P::row_gap_mm]);
  Length start;
  for (Group& group : groups) {
    Length next = start + group.footprint + pinned_length(group);
    for (HeadPlace& place : group.places) {
      place.y += start + std::min(place.position, group.pinned_places) * group.pinned_each;
      next = std::max(next, place.y + gap);
    }
    start = next;
  }
}

std::vector<BarcodeFit> fit_barcode(const Job& job, Resolution across, Resolution along) {
  std::vector<BarcodeFit> fits;
  if (!job.module || job.symbol == nullptr) return fits;
  for (const bool is_across : {true, false}) {
    if (!(is_across ? job.edges_across : job.edges_along)) continue;
    const LatticeModule m = fit_module(job.module->value, is_across ? across : along,
                                       job.symbol->least, job.symbol->most);
    fits.push_back({std::string(job.symbol->key), is_across, m.dots, job.module->value, m.module,
                    job.symbol->least, job.symbol->most, m.in_range});
  }
  return fits;
}

}  // namespace calc
