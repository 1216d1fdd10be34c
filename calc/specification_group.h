/// A group of channels, the heads that print it, and their dots; part of the specification.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "calc/flight.h"
#include "calc/quantity.h"

namespace calc {

enum class Family { straight, staggered, joined, tilted, scanning };

/// The bar code on the delivered lattice, per axis that carries edges.
struct BarcodeFit {
  std::string symbol;
  bool across = false;  ///< axis: across the line, else along
  int dots = 0;
  Length module_asked, module_printed, module_least, module_most;
  bool pass = false;
};

struct Scan {
  int heads_per_colour = 0, interlace_steps = 0, quality_passes = 0, advance_nozzles = 0;
  double strokes = 0;  ///< whole, for the image length
  int passes = 1;      ///< strokes that lay down a point, of the group with the most: s N_q
  Length advance, machine_width, array_length;
  Length heads_along;  ///< the group's heads of a colour with their bodies, along the feed
  Speed carriage_speed;
  Time stroke_time;
  AreaRate throughput;
};

struct HeadPlace {
  /// Centre of the nozzle field: x along the nozzle axis, y along the motion axis from the front of
  /// the station's first head, each group behind the one before.
  Length x, y;
  double rotation_deg = 0;
  std::string channel;  ///< the channels it prints, joined by "+"
  int position = 0;     ///< colour position, from 0
  int row = 0;          ///< row of a staggered arrangement, from 0
  // Of heads round a body; `y` is then where the plate's middle stands along the line.
  int station = 0;       ///< of the group, from 0
  double angle_deg = 0;  ///< about the body's axis from straight above, rising with y
  Length z{};            ///< of the plate's middle, above the body's axis
};

/// How rows of heads stand round a body that turns under them. The body is handed from station to
/// station; at each it turns under the rows there.
struct Round {
  int stations = 1;
  int per_station = 1;     ///< rows of heads at one station, at most
  int fit = 1;             ///< that would fit round the body
  double pitch_angle = 0;  ///< from row to row about the body's axis [rad]
  Length radius;           ///< of the body
  Length reach;            ///< from the body's axis to the nozzle plates
  Length step;             ///< of the surface from under one row to the next
  Length depth;            ///< of a body along the motion
  Length height;           ///< of a body from its plate up; zero where not known
  Length station_length;   ///< along the line
};

/// A drop size in use, printed at every place of the lattice.
struct LevelDot {
  Volume drop;
  Length drop_diameter, dot_diameter;
  double cover_fraction = 0;
};

/// Dots of one channel on its lattice.
struct ChannelDots {
  std::string channel;
  int levels_used = 2;
  Volume drop;  ///< solid drop
  Length drop_diameter, dot_diameter;
  double cover_fraction = 0;
  double laydown = 0;             ///< of a solid [m], numerically mL/m2 * 1e-6; wet film thickness
  std::string spread_from;        ///< measured_dot, spread_factor, contact_angle, class
  Length edge_gain;               ///< growth of a bar, D - p, the greater of both axes
  int bar_reduction_dots = 0;     ///< whole dots to take off it in the data
  Length dead_nozzle_gap;         ///< white left by one dead nozzle; negative = none
  Length hiding_dot;              ///< least dot that closes it wholly
  bool finer_than_dot = false;    ///< the lattice is finer than its dot can show
  std::optional<bool> scalloped;  ///< whether a line of drops has no straight edges; absent where
                                  ///< the contact angle is not known or the substrate absorbs
  std::optional<Length> straight_pitch;  ///< greatest pitch of a line with straight edges
  std::optional<Length> bead_width;  ///< of a line one dot wide along the motion, where straight
  std::optional<Length> impact_dot;  ///< the solid drop's at its widest on impact, the other bound
  std::vector<LevelDot> levels;      ///< tone steps: every drop size in use, ascending
};

/// Flight of one drop size over the throws of its head.
struct LevelFlight {
  Volume drop;
  Length diameter;
  FlightLaw law;
  Speed start;                                  ///< at the nozzle
  Length stop;                                  ///< way on which it comes to rest
  std::optional<Landing> least, nominal, most;  ///< none where it stops short
};

/// Where a row of nozzles of a tilted head prints along the motion, against its first row.
struct RowDelay {
  Length along;      ///< its first nozzle behind that of the first row; negative: ahead of it
  double lines = 0;  ///< the same in lines
  Time late{};       ///< the same at the highest speed of the line
};

/// How the drops of a group fly, and how their times of flight scatter.
struct DropFlight {
  Length throw_least, throw_nominal, throw_most;
  Length sagitta_along, sagitta_across;  ///< of the body under the nozzle field
  double slope = 0;                      ///< steepest the drops land on [rad]
  std::size_t levels_used = 1;           ///< entries of `levels`
  std::array<LevelFlight, 2> levels;     ///< smallest and largest in use
  Length budget_throw;                   ///< the greatest nominal one: what the budgets are of
  Time gap_delay;                        ///< by the throw's variation, of the smallest drop
  Time thickness_delay;                  ///< by that of the product's thickness, of the same
  Time speed_delay;                      ///< by the spread of speeds, of the smallest drop
  Time level_delay;                      ///< between the smallest and the largest drop
  Length sag_spread;                     ///< between them, of jets that lie level; else zero
  std::optional<double> straightness, speed_spread;  ///< as the catalogue has them
};

/// A group of channels that one kind of head prints, and how those heads stand.
struct Group {
  std::string name;
  std::vector<std::string> channels;
  std::string head, mode;  ///< names in the catalogue
  Family family = Family::straight;
  int heads_across = 1, interleave = 1, stack = 1, positions = 1, rows_staggered = 1;
  int film_heads = 1;  ///< heads in line for laydown; they do not divide the frequency
  double tilt = 0;     ///< of every head about its plate's normal [rad]; 0: not tilted
  std::optional<Scan> scan;
  std::optional<Round> round;  ///< where more than one row of heads prints a body that turns
  int heads_total = 0;
  int joints = 0;
  double idle_nozzle_share = 0;
  Resolution native, resolution_across, resolution_along;  ///< native: of a head not tilted
  Frequency frequency_needed, frequency_per_nozzle, frequency_allowed;
  double frequency_use = 0;  ///< per nozzle over allowed
  Speed speed_limit;
  Length swath, pitch, head_pitch,
      overlap;    ///< of one head; nozzle pitch; from head to head; of swaths; all as it stands
  Length field;   ///< depth of the rows of a tilted head, which cuts its swath; else zero
  Length uneven;  ///< by which two neighbouring nozzles of a tilted head are off its pitch
  Length wider;   ///< by which the widest of those gaps exceeds the pitch
  Length
      slant;  ///< from the first to the last nozzle of one row of a tilted head, along the motion
  bool one_clock = false;            ///< a tilted head whose nozzles all fire at once
  std::vector<RowDelay> row_delays;  ///< one per row of a tilted head, where it has several
  double tilt_tolerance = 0;  ///< by which a tilted head's angle may be off before it shows [rad]
  int nozzles = 0;            ///< per colour and head
  int bits = 1;
  Length footprint;       ///< of the rows of this group, along the line
  int pinned_places = 0;  ///< pinning behind its first so many colour positions; none on a carriage
  Length pinned_each;     ///< length of its lamps at one of them, along the line
  std::optional<DropFlight> flight;  ///< absent where the catalogue gives no speed of the drops
  std::optional<Temperature> jetting_temperature;
  std::optional<Viscosity> viscosity;  ///< at the jetting temperature
  std::vector<ChannelDots> dots;       ///< one per channel
  std::vector<BarcodeFit> barcodes;
  std::vector<HeadPlace> places;
};

/// Length along the line [m] that pinning takes within and behind a group.
inline Length pinned_length(const Group& g) { return g.pinned_places * g.pinned_each; }

}  // namespace calc
