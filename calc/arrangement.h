/// One head in one mode standing in one way: heads across, interleaved, stacked, or on a carriage.
#pragma once

#include <array>
#include <cstddef>
#include <optional>

#include "calc/gates.h"

namespace calc {

inline constexpr int most_film_heads = 6;       ///< in line for laydown
inline constexpr int most_carriage_heads = 24;  ///< end to end on a carriage, per colour
inline constexpr std::size_t most_levels = 16;

/// A mode of a head, worked out once: its lattice and the dot of every level.
struct ModeFacts {
  const Head* head = nullptr;
  const HeadMode* mode = nullptr;
  Resolution native;
  int nozzles = 0;  ///< per colour, at different positions
  Length pitch, swath, overlap, head_pitch;
  int colours = 1;
  std::size_t levels = 0;  ///< drop sizes
  std::array<DotEstimate, most_levels> dots{};
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
};

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
  Length laydown;  ///< wet film of a solid
  Jetting jetting;
  std::optional<Scan> scan;
};

/// Works a shape out and appends every gate that fails and every condition (arrangement.cpp).
Arrangement arrange(const Search& search, const GroupNeed& need, const ModeFacts& facts,
                    const Shape& shape, Findings& findings);

/// Drop, dot, film: fills level, dot, laydown and the shape's film heads (arrangement_dots.cpp).
void choose_drop(const Search& search, const GroupNeed& need, const ModeFacts& facts,
                 Arrangement& a, Findings& findings);

/// Rating of the highest level used less the reserve [1/s] (arrangement_dots.cpp).
Frequency usable_rating(const Search& search, const ModeFacts& facts, Arrangement& a);

/// The carriage: fills scan, heads end to end, speed (arrangement_scan.cpp).
void scan_with(const Search& search, const ModeFacts& facts, Arrangement& a, Findings& findings);

/// The shapes of a mode worth trying for a group in one way of motion, in order (interleave, R_m);
/// at least one, so that a mode too coarse still says by how much.
std::vector<Shape> shapes_of(const Search& search, const ModeFacts& facts, const Shape& first);

/// The demand on one axis and the least that passes.
struct AxisDemand {
  Resolution required, least;
};
AxisDemand nozzle_demand(const Job& job, bool scanning);
AxisDemand motion_demand(const Job& job, bool scanning);

/// The arrangement as it stands in the specification; positions of heads only `with_places`, the
/// rest being enough to price it (arrangement_group.cpp).
Group to_group(const Search& search, const GroupNeed& need, const ModeFacts& facts,
               const Arrangement& a, bool with_places);

/// The bar code on the lattice of an arrangement, one entry for each axis that carries edges.
std::vector<BarcodeFit> fit_barcode(const Job& job, Resolution across, Resolution along);

}  // namespace calc
