/// Electronics and ink supply sized from frequency and laydown.
#pragma once

#include <optional>

#include "calc/quantity.h"

namespace calc {

/// Data rate [bit/s]: nozzles f bits. Source: definition.
Frequency data_rate(double active_nozzles, Frequency per_nozzle, int bits);

/// Drive boards [1]: the greater of ceil(heads / heads a board) and, where the board's rate is
/// known, ceil(rate / rate a board). heads_per_board >= 1, board_rate > 0.
int drive_boards(int heads, int heads_per_board, Frequency rate,
                 std::optional<Frequency> board_rate);

/// Limits of one supply; absent = not stated, does not bind.
struct SupplyLimits {
  std::optional<VolumeFlow> flow;  ///< ink delivered
  std::optional<int> heads;
  std::optional<VolumeFlow> recirculation;  ///< per head
  std::optional<VolumeFlow> pump;           ///< ink and recirculation together
};

/// Supplies [1] of a channel: max(1, ceil(peak/flow), ceil(heads/heads a supply),
/// ceil((peak + heads recirculation)/pump)).
int supplies(VolumeFlow peak, int heads, const SupplyLimits& limits);

/// Containers [1] that hold a shift at mean flow: ceil(mean shift / container), at least 1.
int containers(VolumeFlow mean, Time shift, Volume container);

}  // namespace calc
