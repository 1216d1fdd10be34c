/// One head in one mode standing in one way: heads across, interleaved, stacked, or on a carriage.
#pragma once

#include <array>
#include <cstddef>
#include <map>
#include <optional>
#include <vector>

#include "calc/gates.h"

namespace calc {

inline constexpr int most_film_heads = 6;       ///< in line for laydown
inline constexpr int most_carriage_heads = 24;  ///< end to end on a carriage, per colour
inline constexpr std::size_t most_levels = 16;

/// A mode of a head, worked out once: its lattice and the dot of every level.
struct ModeFacts {
  const Head* head = nullptr;
  const HeadMode* mode = nullptr;
  Resolution native;    ///< of the head as it stands, tilted or not
  Resolution untilted;  ///< of the head by itself
  double tilt = 0;      ///< [rad]; 0: the rows lie across the motion
  int nozzles = 0;      ///< per colour, at different positions
  Length pitch, swath, overlap, head_pitch;
  Length field;   ///< depth of the rows that cuts the swath of a tilted head
  Length uneven;  ///< by which neighbouring nozzles of a tilted head are off the pitch
  Length wider;   ///< by which the widest gap between them exceeds it
  int colours = 1;
  std::size_t levels = 0;  ///< drop sizes
  std::array<DotEstimate, most_levels> dots{};
  bool is_tilted() const { return tilt < 0 || tilt > 0; }
};

/// The facts of a mode; none where the catalogue lacks what they need, or contradicts itself, which
/// is then a failure `head_data`.
std::optional<ModeFacts> mode_facts(const Search& search, const Head& head, const HeadMode& mode,
                                    Findings& findings);

/// What tells one arrangement from another. Zero in stack, film_heads or carriage_heads: the least
/// that serves.
struct Shape {
  std::size_t head = 0, mode = 0;  ///< indices in the catalogue
  bool scanning = false;
  int interleave = 1;
  int stack = 0;
  int film_heads = 0;
  int carriage_heads = 0;
  Resolution motion_axis;  ///< R_m
  double tilt = 0;         ///< [rad]; 0: not tilted
};

/// The facts of a shape's mode with the head standing as the shape says, from the catalogue of the
/// search. None as for mode_facts(), and with `head_data` where a tilted head has no usable swath.
std::optional<ModeFacts> facts_of(const Search& search, const Shape& shape, Findings& findings);

/// The facts of the same mode with its head tilted; `head_pitch` is zero where no swath is left
/// that all rows reach (arrangement_tilt.cpp).
ModeFacts tilted(const Search& search, const ModeFacts& untilted, double tilt);

/// The tilts of a mode worth trying, in order of the interleave: the angle that meets the demand
/// across exactly and, for heads that fire all nozzles at once, the least at which these print
/// whole lines apart at the resolution along that is asked for. Shapes with interleave and tilt.
/// None on a carriage, over a round product, or where the catalogue does not say that the head may
/// be tilted, where its rows stand and how large its body is.
std::vector<Shape> tilts_of(const Search& search, const ModeFacts& facts, const Shape& first);

/// Fills how the rows of a tilted head follow each other along the motion.
void fill_rows_along(const Search& search, const ModeFacts& facts, Group& group);

/// Resolution along the motion [1/m] from a wanted one on that a head as it stands can print.
Resolution lines_on(const ModeFacts& facts, Resolution wanted);

/// Fills overlap and head_pitch for a swath; head_pitch is zero where the overlap leaves none.
void fill_overlap(const Search& search, ModeFacts& facts);

/// Room of a head's body along the motion as it stands [m]. Precondition: its body is known.
Length depth_along(const ModeFacts& facts);

/// A shape with everything that follows from it.
struct Arrangement {
  Shape shape;
  int across = 1;         ///< heads across, or end to end on a carriage
  int positions = 1;      ///< colour positions
  int rows = 1;           ///< staggered rows
  std::size_t level = 0;  ///< of the solid drop, 0-based
  Resolution nozzle_axis;
  Frequency column, per_nozzle, allowed;
  bool from_binary = false;  ///< the rating is worked out from a binary one
  Speed speed_limit;         ///< of the line
  double margin = 0;         ///< speed limit over the highest speed
  int heads = 0, joints = 0;
  double idle = 0;
  Length footprint;
  DotEstimate dot;
  bool open = false;  ///< solids are asked for and do not close at the likely dot
  Length laydown;     ///< wet film of a solid
  Jetting jetting;
  const DropFlight* flight = nullptr;  ///< of the accepted, kept by the search; see flight_of
  std::optional<Scan> scan;
  std::optional<Round> round;
};

inline constexpr std::size_t no_bound = static_cast<std::size_t>(-1);

/// Works a shape out and appends every gate that fails and every condition (arrangement.cpp):
/// outline() and complete().
Arrangement arrange(const Search& search, const GroupNeed& need, const ModeFacts& facts,
                    const Shape& shape, Findings& findings);

/// Resolution, drop and dot of a shape. Once `bound` gates fail, the rest is left out.
Arrangement outline(const Search& search, const GroupNeed& need, const ModeFacts& facts,
                    const Shape& shape, Findings& findings, std::size_t bound);

/// All that follows from an outline. Once `bound` gates fail, the rest is left out and the
/// arrangement unfinished. Precondition: fewer than `bound` fail in the outline.
void complete(const Search& search, const GroupNeed& need, const ModeFacts& facts, Arrangement& a,
              Findings& findings, std::size_t bound);

/// Drop, dot, film. The solid drop is the smallest that closes at its likely dot; where none does,
/// the smallest that closes at the upper end of a guess, on condition `measure_dot`. Fills level,
/// dot, laydown and the shape's film heads (arrangement_dots.cpp).
void choose_drop(const Search& search, const GroupNeed& need, const ModeFacts& facts,
                 Arrangement& a, Findings& findings);

/// Rating of the highest level used less the reserve [1/s] (arrangement_dots.cpp).
Frequency usable_rating(const Search& search, const ModeFacts& facts, Arrangement& a);

/// Flight of the smallest drop and of the solid one over the throws of an arrangement's head; null
/// where the catalogue gives no speed of the drops (arrangement_flight.cpp). Holds as long as the
/// flights of the search.
const DropFlight* flight_of(const Search& search, const GroupNeed& need, const Arrangement& a);

/// Staggered rows of heads [1] that so many across need; two where the body's width is not known.
int rows_of(const Search& search, const ModeFacts& facts, int across);

/// Depth of an arrangement's rows of heads along the line, `rows` of them staggered [m]; zero where
/// the body's depth is not known.
Length depth_of(const Search& search, const ModeFacts& facts, const Arrangement& a, int rows);

/// How so many rows of heads stand round the body of the job; none where it does not turn, where
/// one row is all there is or where the depth of the heads is not known. Rows of one bank, which
/// join, stay at one station where they fit (arrangement_round.cpp).
std::optional<Round> round_of(const Search& search, const ModeFacts& facts, const Arrangement& a);

/// Moves the places of a group's heads, made for a flat product, round the body.
void stand_round(const Round& round, Group& group);

/// By how much the end of an image all round the body misses its start [m]; none where the image
/// does not go all round, or where the request states no tolerance of the diameter.
std::optional<Length> seam_of(const Job& job);

/// What a body that turns asks of the line: conditions of its stations, of the way it must turn in
/// a cycle, and of the seam of an image all round it.
void round_conditions(const Job& job, const std::vector<Group>& groups,
                      std::vector<Finding>& conditions);

/// The carriage: fills scan, heads end to end, speed (arrangement_scan.cpp). Beside other groups it
/// is reckoned without lamps, which are chosen for all together: no station feeds faster with it.
void scan_with(const Search& search, const GroupNeed& need, const ModeFacts& facts, Arrangement& a,
               Findings& findings);

/// What one group brings to a carriage.
struct Rider {
  Frequency allowed;                        ///< usable by each nozzle
  Resolution motion_axis, nozzle_axis;      ///< delivered
  int steps = 1;                            ///< interlace steps
  int rows = 1;                             ///< J, the most its own nozzles could advance by
  Length advance;                           ///< J rows of the finished lattice
  Length depth;                             ///< of its rows of heads
  const Value<Frequency>* avoid = nullptr;  ///< its head's bad band
  Length along = {};                        ///< its heads end to end with their bodies
};

/// A carriage stays this share below the lower end of a bad band of frequencies.
inline constexpr double below_band = 0.999;

/// Speed of a carriage [m/s] whose riders use at most `share` of what they may: the least of its
/// own limit and every rider's, then below every bad band it would run in. riders not empty.
Speed shared_speed(const Parameters& parameters, const std::vector<Rider>& riders, double share);

/// Advance [m] of a carriage: the greatest at which every rider prints each row equally often, so
/// whole rows of each lattice without a common factor with its steps; that is the least advance of
/// the riders where their lattices agree. None where no advance suits all. riders not empty.
std::optional<Length> shared_advance(const std::vector<Rider>& riders);

/// The least rows of a rider's lattice that are whole rows of all others' too.
struct Period {
  int rows = 0;    ///< 0: not found among as many as were looked at
  int looked = 0;  ///< rows looked at, from 1
  int barren = 0;  ///< up to so many rows, whole as they are, leave rows of some rider out
};

/// shared_advance() of many carriages whose lattices recur: remembers their periods.
class Advances {
 public:
  std::optional<Length> of(const std::vector<Rider>& riders);

 private:
  std::map<std::vector<double>, Period> periods_;  ///< by the lattices and which is the least
};

/// Puts the groups of a station, one arrangement each in the job's order, on one carriage: one
/// speed, advance, length, stroke and throughput for all (arrangement_scan.cpp). Their rows of
/// heads and, with UV ink, the lamps chosen for that speed and advance make its length; the speed
/// is kept to the share of the rating that counts as high if the line is served so. Zero throughput
/// where no advance suits all. Precondition: all scan.
void ride_together(const Search& search, std::vector<Arrangement>& riders, Advances& advances);

/// Takes the flight of an arrangement over into its group, and what the drops do on impact.
void add_flight(const Job& job, const GroupNeed& need, const Arrangement& a, Group& group);

/// Takes the figures that sharing a carriage changes over into a group.
void refresh(const Arrangement& a, Group& group);

/// The shapes that find_shapes() gives, and room it works in; may be used again.
struct Shapes {
  std::vector<Shape> list;
  std::vector<Resolution> motion_axes;  ///< of the interleave looked at last
};

/// The shapes of a mode worth trying for a group in one way of motion, in order (interleave, R_m);
/// at least one, so that a mode too coarse still says by how much. R_m: the required value, and up
/// to finest_along the least at which each drop size closes solids (likely dot, upper end of a
/// guess) or lays the film asked for. With tilted facts `first` has their interleave; R_m then are
/// those of these on which the head prints, which may be none (arrangement_shapes.cpp).
void find_shapes(const Search& search, const GroupNeed& need, const ModeFacts& facts,
                 const Shape& first, Shapes& found);

/// The demand on one axis and the least that passes.
struct AxisDemand {
  Resolution required, least;
};
AxisDemand nozzle_demand(const Job& job, bool scanning);
AxisDemand motion_demand(const Job& job, bool scanning);
/// Delivered resolution of the nozzle axis [1/m]: of a line whole heads interleaved, of a carriage
/// whole interlace steps.
Resolution nozzle_axis(const Search& search, const ModeFacts& facts, bool scanning, int interleave);

/// How its heads stand.
Family family_of(const Head& head, const Arrangement& a);

/// The arrangement as it stands in the specification; positions of heads only `with_places`, the
/// rest being enough to price it (arrangement_group.cpp).
Group to_group(const Search& search, const GroupNeed& need, const ModeFacts& facts,
               const Arrangement& a, bool with_places);

/// Moves the places of the heads behind the pinning of their group and behind the groups before
/// them, as far along the line as the station's length counts for these; where that is not known,
/// by the gap between rows.
void stand_in_line(const Job& job, std::vector<Group>& groups);

/// The bar code on the lattice of an arrangement, one entry for each axis that carries edges.
std::vector<BarcodeFit> fit_barcode(const Job& job, Resolution across, Resolution along);

}  // namespace calc
