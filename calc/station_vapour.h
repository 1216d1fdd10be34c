/// Solvent vapour of a station and the air against it.
#pragma once

#include <optional>
#include <vector>

#include "calc/blend.h"
#include "calc/running.h"
#include "calc/ventilation.h"

namespace calc {

/// The vapour of one channel at peak cover and highest speed, flushing fluid included.
struct ChannelVapour {
  std::size_t channel = 0;
  Blend blend;
  MassFlow flow;
};

/// What is assumed of a default, and the ends of what is possible.
struct Ends {
  double low = 0, likely = 0, high = 0;
};
/// The value in force, and the ends of the default's range, or that value where it lies beyond.
Ends ends_of(const Parameters& parameters, P id);

/// Share of the vapour that is captured [1]: as assumed of an enclosure, nothing where none is
/// stated, which asks for the most air.
Ends captured_share(const Job& job);

/// Absent figures: a datum is not known, or nothing is captured.
struct Vapour {
  bool needed = false;
  std::vector<ChannelVapour> channels;
  MassFlow total, captured, room;  ///< at peak; captured and the rest make the total
  MassFlow yearly_mean;            ///< of all ink and fluid used, over running time
  double explosive_share = 0.25;   ///< of the lower explosive limit allowed in the exhaust
  Temperature exhaust;
  std::optional<VolumeFlow> volume;  ///< of all vapour at the reference temperature
  std::optional<double> lel, limit;  ///< of all vapours together [1]
  bool lel_estimated = false, lel_hot = false;
  std::optional<VolumeFlow> explosion, explosion_hot;  ///< air as if all were captured
  /// Air for what is not captured: as assumed, and at the ends of what is captured and mixed.
  std::optional<VolumeFlow> health_least, health, health_most;
};
Vapour size_vapour(const Job& job, const std::vector<ChannelLoad>& loads,
                   const std::vector<ChannelFlow>& flows);

}  // namespace calc
