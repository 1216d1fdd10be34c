/// The specification: every figure and code of one document, the one source of PDF, CSV and JSON.
/// Members mirror the JSON keys of the public interface; absent = std::nullopt or empty.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "calc/budget.h"
#include "calc/catalogue.h"
#include "calc/flight.h"
#include "calc/money.h"
#include "calc/notice.h"
#include "calc/quantity.h"
#include "calc/request.h"
#include "calc/step.h"

namespace calc {

enum class Verdict { feasible, conditional, infeasible, incomplete };
enum class Family { straight, staggered, joined, scanning };

struct Demand {
  std::string name;  ///< explicit, feature, text, bar_code, viewing, assumed
  bool hard = false;
  std::optional<Resolution> across, along;  ///< absent: no demand on that axis
};

struct Required {
  Resolution across, along;
  std::string governed_by;
  std::vector<Demand> demands;
  std::optional<Resolution> substrate_ceiling;  ///< finest the dots on this substrate can show
};

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
  Length advance, machine_width, array_length;
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

/// How the drops of a group fly, and how their times of flight scatter.
struct DropFlight {
  Length throw_least, throw_nominal, throw_most;
  Length sagitta_along, sagitta_across;  ///< of the body under the nozzle field
  double slope = 0;                      ///< steepest the drops land on [rad]
  std::size_t levels_used = 1;           ///< entries of `levels`
  std::array<LevelFlight, 2> levels;     ///< smallest and largest in use
  Length budget_throw;                   ///< the greatest nominal one: what the budgets are of
  Time gap_delay;                        ///< by the throw's variation, of the smallest drop
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
  std::optional<Scan> scan;
  int heads_total = 0;
  int joints = 0;
  double idle_nozzle_share = 0;
  Resolution native, resolution_across, resolution_along;
  Frequency frequency_needed, frequency_per_nozzle, frequency_allowed;
  double frequency_use = 0;  ///< per nozzle over allowed
  Speed speed_limit;
  Length swath, pitch, head_pitch,
      overlap;      ///< of one head; nozzle pitch; from head to head; of swaths
  int nozzles = 0;  ///< per colour and head
  int bits = 1;
  Length footprint;                  ///< of the rows of this group, along the line
  std::optional<DropFlight> flight;  ///< absent where the catalogue gives no speed of the drops
  std::optional<Temperature> jetting_temperature;
  std::optional<Viscosity> viscosity;  ///< at the jetting temperature
  std::vector<ChannelDots> dots;       ///< one per channel
  std::vector<BarcodeFit> barcodes;
  std::vector<HeadPlace> places;
};

/// A published window for the jetting number Z, with its verdict.
struct WindowVerdict {
  std::string name;
  double low = 0;
  std::optional<double> high;  ///< absent where the window is open
  bool pass = false;           ///< at the lowest of the viscosities known
  std::string source, tag, note;
};

/// The ink of one channel in the head that jets it. Absent = not known.
struct InkInHead {
  std::string channel, ink, head;  ///< `ink` is empty where the request has none
  std::string temperature_from;    ///< given, nominal, centre, nearest, unknown
  std::string viscosity_from;      ///< point, arrhenius, vogel, outside, unknown
  std::optional<Temperature> temperature, known_from, known_to;
  std::optional<Viscosity> viscosity;  ///< at rest
  std::optional<Speed> speed;          ///< of the largest drop in use, at the nozzle
  std::optional<Speed> impact;         ///< of the same over the nominal throw; none: it stops
  std::optional<Length> nozzle;
  Density density;
  bool density_assumed = false;
  std::optional<SurfaceTension> tension;
  std::optional<Frequency> shear_rate;  ///< at the nozzle's wall
  std::optional<double> flow_index;     ///< local, there; 1 = Newtonian
  std::optional<Viscosity> sheared;     ///< viscosity there, where the ink's shear law is known
  std::optional<double> re, we, oh, z;  ///< of the jet, with the viscosity at rest
  std::optional<double> re_sheared, oh_sheared, z_sheared;
  std::optional<Speed> least_speed;
  std::optional<double> splash;  ///< on impact
  std::vector<WindowVerdict> windows;
  std::optional<Length> particle, particle_most, particle_safe;
  std::optional<Speed> settling;  ///< of the particles at jetting temperature; negative: they rise
  std::optional<Length> settling_height;  ///< over which heat keeps them afloat
  std::optional<bool> settles;
  std::string settles_from;  ///< given, computed, unknown
  bool recirculates = false;
};

/// Drive boards of one kind.
struct BoardUse {
  std::string board;  ///< name in the catalogue; empty where it has none
  int heads = 0, boards = 0, heads_per_board = 1;
  Frequency data;                       ///< [bit/s] of all of them together
  std::optional<Frequency> board_rate;  ///< [bit/s] that one takes
};

/// Ink and data of one channel at the highest speed.
struct ChannelFeed {
  std::string channel;
  int heads = 0;
  double active_nozzles = 0;
  Frequency data;                         ///< [bit/s]
  VolumeFlow solid, peak, recirculation;  ///< recirculation of all heads of the channel
  std::string supply;                     ///< name in the catalogue; empty where it has none
  int supplies = 1;
  std::string bound_by;  ///< one, flow, heads, pump: what asks for so many
  int containers = 0;    ///< that hold a shift; 0 where the container is not stated
  Volume container, first_fill;
};

/// How the pulses of the line's encoder become dots of one group.
struct EncoderFit {
  std::string group;
  Length step;                ///< of the product a count
  bool step_given = false;    ///< else made of wheel, pulses and decoding
  double counts_per_dot = 0;  ///< wanted
  int whole = 1;              ///< counts a dot, divided whole
  Resolution whole_resolution;
  double whole_error = 0;        ///< printed length over wanted, less 1
  int counts = 1, dots = 1;      ///< best of a fractional division: so many counts for so many dots
  double fraction_error = 0;     ///< printed length over wanted, less 1
  std::optional<Length> repeat;  ///< pitch of the products, else length of the image
  std::optional<Length> whole_residue, fraction_residue;  ///< over the repeat
  Length rounding;                                        ///< rms, of a dot on whole counts
  Frequency rate;                                         ///< counts at the highest speed
  bool whole_serves = false;                              ///< its residue stays within half a dot
};

struct Consumption {
  std::string channel;
  double ml_per_hour = 0, l_per_month = 0, l_per_year = 0;
  double printed_ml_per_hour = 0, waste_ml_per_hour = 0;  ///< printed + waste = the whole
  double flush_ml_per_hour = 0;                           ///< flushing fluid, within the waste
  std::optional<double> ml_per_thousand{};  ///< per thousand parts, when parts are known
};

/// Light scattered by the substrate at a distance, and how long a day it may fall on eyes.
struct StrayLight {
  double distance_m = 0, irradiance_w_per_m2 = 0;
  std::optional<double> time_s;  ///< at most a working day; none where the spectrum is not known
  std::string governs;           ///< actinic, uva, day; empty without a time
};
/// One solvent of an ink with what it is reckoned with, and where that comes from.
struct SolventUse {
  std::string ink, solvent;
  double share = 1;  ///< of the ink's solvents by mass
  std::optional<double> molar_g, lel_percent, limit_ppm, flash_degc, other_flash_degc;
  bool lel_estimated = false;
  std::string source;
  bool seen = true;  ///< every figure stood in print
};
/// Air of a ventilation stage. Absent air: nothing is captured, or a datum is not known.
struct Airing {
  double captured_kg_per_h = 0, room_kg_per_h = 0, voc_kg_per_year = 0;
  std::optional<double> lel_percent, limit_ppm;  ///< of all vapours together
  bool lel_estimated = false, lel_hot = false, captures = false;
  double lel_share_percent = 25, exhaust_degc = 20;
  std::optional<double> lel_m3_per_h, lel_hot_m3_per_h, health_m3_per_h;
  std::vector<SolventUse> solvents;
};

struct Stage {
  std::string kind;       ///< pinning, uv, drying, ventilation
  std::string equipment;  ///< name in the catalogue; empty when it has none
  std::optional<double> dose_mj_per_cm2;
  std::optional<int> rows, units;
  std::optional<double> electrical_kw, water_kg_per_h, heat_kw, length_m;
  std::optional<double> dose_given_mj_per_cm2{};   ///< by the lamps chosen, at the highest speed
  std::optional<double> dose_stroke_mj_per_cm2{};  ///< on a carriage: of one lamp in one stroke
  std::optional<double> strokes_over_point{};  ///< on a carriage: window along the feed / advance
  std::optional<int> lamps_lit{};              ///< on a carriage, of `units`
  std::optional<double> installed_length_m{};  ///< of the dryer units in line, at least length_m
  std::optional<double> web_degc{};            ///< hottest web, at the least speed
  std::optional<double> cooling_m3_per_h{};    ///< air that carries the lamps' heat off
  std::optional<double> ozone_m3_per_h{};      ///< air that would dilute the lamps' ozone
  std::optional<double> safe_distance_m{}, guard_density{};  ///< for a working day of stray light
  std::vector<StrayLight> stray{};
  std::optional<double> exhaust_m3_per_h{}, dew_point_degc{};
  std::optional<double> vapour_kg_per_h{};
  std::optional<Airing> airing{};
};

struct BomLine {
  int item = 0;
  std::string part_number, designation, technical_data;
  double quantity = 0;
  std::string unit;                                 ///< "pc", "L", "h"
  std::optional<Money> unit_price, extended_price;  ///< absent = on request
  std::optional<double> lead_time_days;
  std::string source;  ///< catalogue row "head.H-1", or empty when the catalogue lacks it
  std::vector<std::string> serves;  ///< request keys
  std::string reference;            ///< reference designations "PH1..PH8"
  std::string code;                 ///< key of the designation's words when the catalogue has none
  std::string kind;                 ///< code of the part, whatever the catalogue calls it
};

/// Longest known lead time of the parts.
struct LeadTime {
  double days = 0;
  std::string item;
  int lead_time_unknown = 0;  ///< lines of parts that state none
};
struct Cost {
  Money capital, running_per_year, ownership;
  std::optional<double> per_m2;  ///< major units
  std::optional<double> per_thousand;
  double discount = 0;
  int years = 0;
  Money ink_per_year, heads_per_year, energy_per_year, labour_per_year, cleaning_per_year;
  // What the yearly sums stand without: then they are lower bounds, not zero.
  bool ink_unpriced = false, heads_unpriced = false, power_unknown = false, flush_unpriced = false;
};
struct Spare {
  std::string part_number;
  double mean = 0;
  int quantity = 0;
};

/// What the heads need around them, and what it costs; a function of groups, job and catalogue.
struct Station {
  double data_rate_bit_per_s = 0;
  int boards = 0;
  double cables = 0;
  std::vector<BoardUse> board_uses;
  std::vector<ChannelFeed> feeds;
  std::vector<EncoderFit> encoder;  ///< one a group; empty where the line's encoder is not known
  std::vector<Consumption> consumption;
  std::vector<Stage> stages;
  std::vector<BomLine> bom;
  Money bom_total;
  int bom_unpriced = 0;
  std::vector<std::string> unpriced_items;  ///< designation, else part number, else part code
  bool heads_unpriced = false;              ///< of a head in use
  std::string currency;
  std::optional<LeadTime> lead_time;
  Cost cost;
  std::vector<Spare> spares;
  Length footprint;              ///< of the whole station along the line
  std::vector<Notice> warnings;  ///< of the bill and the costs (station_warning_codes)
};

/// What else the station of one group could do, computed from the catalogue and the arrangement.
struct Flexibility {
  std::string group, head;
  std::optional<Speed> spare_speed;          ///< by which the line could run faster, by frequency
  std::optional<Length> spare_width;         ///< printed by the mounted heads beyond what is asked
  std::vector<std::string> families;         ///< ink families the head takes beside its own
  int free_colours = 0;                      ///< colour places of the mounted heads left over
  std::vector<std::string> interchangeable;  ///< other heads of the same body, board and swath
  double replace_hours = 0;                  ///< of one head, aligned
  std::optional<Money> replace_cost;         ///< with its labour; none where the head is unpriced
  std::optional<Serviceable> serviceable;
  std::optional<WaveformAccess> waveform;
  std::optional<int> driver_sources;
};

struct Alternative {
  std::vector<Group> groups;
  Station station;
  std::vector<std::string> differs;  ///< "head", "family", "stack", ...
};

/// The best station at one line speed; no heads where none is feasible.
struct SpeedStep {
  Speed speed;
  int heads = 0;
  std::vector<std::string> kinds;  ///< head of each group
  Money capital, ownership;        ///< priced items only
  std::vector<std::string> rows;   ///< of the catalogue that it rests on, "head.H-1"
};

struct RejectedHead {
  std::string head;
  std::vector<Reason> reasons;
};

/// Heads of one group in an arrangement that is only named.
struct HeadsOf {
  std::string group, head, mode;
  Family family = Family::straight;
  int heads_total = 0;
};

/// The smallest change of one number of the request after which something fits.
struct NearestMiss {
  std::string field, unit;
  double from = 0, to = 0;  ///< in `unit`; `to` rounded to the side that fits
  double relative = 0;      ///< to over from, less 1
  std::vector<HeadsOf> arrangement;
};

/// passes: the chosen heads as they stand fit. recommended: they are also still the ones chosen.
/// any: some arrangement of the catalogue fits.
enum class EdgeKind { passes, recommended, any };

/// How far one number of the request may move, all else as it is.
struct Edge {
  std::string quantity, unit;  ///< key of the request
  EdgeKind kind = EdgeKind::passes;
  bool up = true;
  double now = 0;               ///< in `unit`, as the next two
  std::optional<double> value;  ///< the last that fits; absent: fits as far as was looked
  std::optional<double> printed;
  std::string beyond;                ///< passes: the gate that fails there
  std::vector<HeadsOf> arrangement;  ///< what is chosen there; empty: nothing fits, or not known
};

struct Assumption {
  std::string field;
  double value = 0;
  std::string text;  ///< when it is no number
  std::string unit;
  std::optional<double> low, high;
  std::string effect;  ///< key of the figure it moves most, "cover_fraction", "capital" ...
  std::string source;  ///< "common practice, no source", or a standard
};

struct Question {
  std::string code;
  std::string field;
  std::optional<double> assumed, low, high;
  std::string unit;
  std::string effect;
  double weight = 0;  ///< how far the answer could move the result; ranks, not printed
};

/// A headline figure of the station (calc/headline.h), and how far it moves while one input alone
/// runs over its range and the chosen arrangement stays.
struct Uncertainty {
  std::string figure, unit;
  double value = 0, low = 0, high = 0;  ///< low, high: over every such input, each by itself
  std::string mover;  ///< key of the input that moves it furthest; empty: none moves it
  std::string mover_unit;
  double mover_low = 0, mover_high = 0;  ///< its range, in mover_unit
};

/// A check before commitment, with its acceptance figure from the calculation.
struct Check {
  std::string code;
  std::optional<double> acceptance;
  std::string unit;
  std::string subject;
};

struct Specification {
  std::string id, revision, date, title, language, catalogue_date;
  Verdict verdict = Verdict::incomplete;
  std::vector<Notice> conditions, warnings;
  std::vector<Input> inputs;  ///< given, derived, assumed and the catalogue values used
  std::optional<Required> required;
  std::vector<Group> chosen;  ///< empty when infeasible or incomplete
  int heads_total = 0;
  std::vector<InkInHead> inks;  ///< one a channel of the chosen groups
  std::optional<Station> station;
  std::vector<Budget> placement;  ///< of dots, joints, colours and image; empty without flights
  std::vector<Flexibility> flexibility;       ///< one a group of the chosen arrangement
  std::optional<double> single_source_share;  ///< of the priced capital
  std::vector<Alternative> alternatives;
  std::vector<SpeedStep> speed_steps;  ///< rising; empty without a line speed, and for a carriage
  std::vector<RejectedHead> rejected;
  std::vector<Assumption> assumptions;
  std::vector<Question> questions;
  std::vector<Uncertainty> uncertainty;  ///< empty where nothing is chosen
  std::vector<Check> tests;
  std::vector<Notice> safety;
  std::vector<Step> trace;
  std::optional<NearestMiss> nearest_miss;    ///< only when infeasible, and one change helps
  std::vector<std::string> musts_in_the_way;  ///< when infeasible: without which it would fit
  std::vector<Edge> edges;                    ///< of the chosen arrangement
};

}  // namespace calc
