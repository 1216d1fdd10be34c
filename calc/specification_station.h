/// What the heads need around them, and what it costs; part of the specification.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "calc/money.h"
#include "calc/notice.h"
#include "calc/quantity.h"

namespace calc {

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
  std::string settles_from;          ///< given, computed, unknown
  std::optional<bool> recirculates;  ///< of the head; none: not known
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
/// A guard at a distance from the print: the light that meets it, and the optical density it needs,
/// as assumed and where the substrate scatters the greatest share.
struct Guard {
  double distance_m = 0, irradiance_w_per_m2 = 0, density = 0, density_worst = 0;
};
/// One solvent of an ink with what it is reckoned with, and where that comes from.
struct SolventUse {
  std::string ink, solvent;
  double share = 1;  ///< of the ink's solvents by mass
  std::optional<double> molar_g, lel_percent, limit_ppm, flash_degc, other_flash_degc;
  std::optional<double> short_ppm;  ///< limit over 15 min
  bool skin = false;                ///< goes through the skin too
  bool lel_estimated = false;
  std::string source;
  bool seen = true;  ///< every figure stood in print
};
/// Air of a ventilation stage. Absent air: nothing is captured, or a datum is not known.
struct Airing {
  double captured_kg_per_h = 0, room_kg_per_h = 0;
  double voc_kg_per_year = 0, voc_peak_kg_per_year = 0;  ///< at mean and at peak cover
  std::optional<double> lel_percent, limit_ppm;          ///< of all vapours together
  bool lel_estimated = false, lel_hot = false, captures = false;
  double lel_share_percent = 25, exhaust_degc = 20;
  std::optional<double> lel_m3_per_h, lel_hot_m3_per_h;  ///< as if all vapour were captured
  /// As assumed, and at the ends of what is captured and mixed.
  std::optional<double> health_m3_per_h, health_least_m3_per_h, health_most_m3_per_h;
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
  std::optional<double> strokes_over_point{};  ///< on a carriage: whole, that light the last ink
  std::optional<double> strokes_after{};       ///< on a carriage: after the last that prints
  std::optional<double> time_after_s{};        ///< of these; not in the throughput
  std::optional<int> lamps_lit{};              ///< on a carriage, of `units`
  std::optional<double> running_kw{};    ///< on a carriage: of the lamps lit; electrical_kw all
  std::optional<double> installed_kw{};  ///< of all units, as the catalogue rates them
  bool heat_at_least = false;  ///< heat and power without the substrate's, whose mass is not known
  std::optional<double> installed_length_m{};  ///< of the dryer units in line, at least length_m
  std::optional<double> web_degc{};            ///< hottest web, at the least speed
  std::optional<double> cooling_m3_per_h{};    ///< air that carries the lamps' heat off
  std::optional<double> ozone_m3_per_h{};      ///< air that would dilute the lamps' ozone
  std::optional<double> safe_distance_m{}, guard_density{};  ///< for a working day of stray light
  /// The same where the substrate scatters the greatest share that is thought possible.
  std::optional<double> safe_distance_worst_m{}, guard_density_worst{};
  std::vector<StrayLight> stray{};
  std::vector<Guard> guards{};  ///< rising in distance; the last where guard_density holds
  std::optional<double> exhaust_m3_per_h{}, dew_point_degc{};
  std::optional<double> dew_point_most_degc{};  ///< where the air leaves as moist as it may
  std::optional<double> speed_limit_m_per_s{};  ///< of the line, that the units installed serve
  std::optional<double> air_degc{};             ///< of the air in the dryer and leaving it
  std::optional<double> condenses_degc{};  ///< coldest room, where dew_point_most lies above it
  std::optional<double> vapour_kg_per_h{};
  std::optional<Airing> airing{};
};

/// The highest speed of the line with all that is installed, and what sets it: heads or a stage.
struct StationSpeed {
  Speed speed;
  std::string by;
  bool at_most = false;  ///< a dryer's power is a lower bound, so that it may be less
};

/// Fans of the catalogue that carry air out of the station, or into its room.
struct Fans {
  std::string kind;  ///< exhaust, ventilation
  std::string part;  ///< name in the catalogue
  int units = 0;
  std::optional<double> m3_per_h;  ///< of all of them; none where the row does not say
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
/// One term of the cost of ownership, and how far the whole moves with a fifth of it.
struct CostTerm {
  std::string name;    ///< capital, ink, heads, energy, labour, cleaning
  Money value, swing;  ///< at today's value
};
struct Cost {
  Money capital, running_per_year, ownership;
  std::optional<double> per_m2;  ///< major units
  std::optional<double> per_thousand;
  std::optional<double> images_m2_per_year;  ///< area of the images, which per_m2 stands on
  std::optional<double> parts_per_year;      ///< which per_thousand stands on
  double discount = 0;
  int years = 0;
  Money ink_per_year, heads_per_year, energy_per_year, labour_per_year, cleaning_per_year;
  std::vector<CostTerm> terms;  ///< the five greatest that are not zero, the greatest first
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
  std::vector<Fans> fans;
  std::optional<double> heat_kw;  ///< power of the stages, which ends as heat; none without one
  std::vector<BomLine> bom;
  Money bom_total;
  int bom_unpriced = 0;
  std::vector<std::string> unpriced_items;  ///< designation, else part number, else part code
  bool heads_unpriced = false;              ///< of a head in use
  std::string currency;
  std::optional<LeadTime> lead_time;
  Cost cost;
  std::vector<Spare> spares;
  Length footprint;                         ///< of the whole station along the line
  Length service_access;                    ///< of it, free for service
  std::optional<StationSpeed> speed_limit;  ///< none on a carriage
  std::vector<Notice> warnings;             ///< of the bill and the costs (station_warning_codes)
};

}  // namespace calc
