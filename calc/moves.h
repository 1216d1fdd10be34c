/// The numbers of a request that may be moved to see where the answer changes: what would have to
/// give way when nothing fits, and how much room there is when something does.
#pragma once

#include <string>
#include <vector>

#include "calc/request.h"

namespace calc {

/// In the order in which ties between them are broken.
enum class Lever {
  speed,
  throughput_parts,
  throughput_area,
  width,
  resolution,
  feature,
  text,
  budget,
  space,
  heads,
  lead_time,
  throw_distance,
  viscosity
};

/// Which way makes it easier to serve.
enum class Ease { less, more, either };

/// One number that the request gives.
struct Movable {
  Lever lever = Lever::speed;
  std::size_t ink = 0;      ///< index of the ink of a viscosity
  std::string field, unit;  ///< key, and the unit it is listed in
  double now = 0;           ///< in `unit`, the end that is hardest to serve
  Ease ease = Ease::less;
  bool whole = false;  ///< a count
};

/// Those a request gives, in the order of the levers.
std::vector<Movable> movables(const Request& request);

/// Sets the field in `to` to so many times what it is in `from`, with both its ends; of a viscosity
/// all points, of a resolution both axes. `to` is a copy of `from`. Counts are rounded down, money
/// to the minor unit.
void move(const Movable& what, double factor, const Request& from, Request& to);

}  // namespace calc
