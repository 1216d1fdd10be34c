/// All that the flight of a group's drops is worked out from, and a store of flights already known.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <unordered_map>

#include "calc/air.h"
#include "calc/arrangement.h"
#include "calc/throw.h"

namespace calc {

/// A drop size with the speed the catalogue states of it.
struct StatedDrop {
  Volume drop;
  Speed speed;
  friend bool operator==(const StatedDrop&, const StatedDrop&) = default;
};

/// Equal inputs fly alike.
struct FlightInputs {
  Throw gap;
  std::optional<double> straightness, speed_spread;  ///< as the catalogue has them
  double spread = 0;                                 ///< of speeds, stated or assumed
  Length flutter;                                    ///< of the throw
  Length uneven;                                     ///< half width of the thickness
  bool sideways = false;                             ///< whether the jets lie level
  bool at_nozzle = false;                            ///< where the speed is stated; else 1 mm on
  Air air;
  Density density;
  std::size_t levels_used = 1;
  std::array<StatedDrop, 2> levels;  ///< smallest and largest in use
  friend bool operator==(const FlightInputs&, const FlightInputs&) = default;
};

/// The inputs of an arrangement; none where the catalogue gives no speed of the drops.
std::optional<FlightInputs> flight_inputs(const Search& search, const GroupNeed& need,
                                          const Arrangement& a);

/// The flight itself.
DropFlight fly(const FlightInputs& inputs);

/// fly() that works out each inputs once. What it gives holds as long as the store does.
class Flights {
 public:
  const DropFlight& of(const FlightInputs& inputs);

 private:
  struct Hash {
    std::size_t operator()(const FlightInputs& inputs) const;
  };
  std::unordered_map<FlightInputs, DropFlight, Hash> known_;
};

}  // namespace calc
