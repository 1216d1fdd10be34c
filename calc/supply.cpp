#include "calc/supply.h"

#include <algorithm>

#include "calc/compare.h"

namespace calc {

namespace {

int whole_up(double x) { return static_cast<int>(ceil_tolerant(x)); }

}  // namespace

Frequency data_rate(double active_nozzles, Frequency per_nozzle, int bits) {
  return active_nozzles * per_nozzle * bits;
}

int drive_boards(int heads, int heads_per_board, Frequency rate,
                 std::optional<Frequency> board_rate) {
  const int by_heads = whole_up(static_cast<double>(heads) / heads_per_board);
  return board_rate ? std::max(by_heads, whole_up(rate / *board_rate)) : by_heads;
}

int supplies(VolumeFlow peak, int heads, const SupplyLimits& limits) {
  int count = 1;
  if (limits.flow) count = std::max(count, whole_up(peak / *limits.flow));
  if (limits.heads) count = std::max(count, whole_up(static_cast<double>(heads) / *limits.heads));
  if (limits.pump) {
    const VolumeFlow moved = peak + heads * limits.recirculation.value_or(VolumeFlow{});
    count = std::max(count, whole_up(moved / *limits.pump));
  }
  return count;
}

int containers(VolumeFlow mean, Time shift, Volume container) {
  return std::max(1, whole_up(mean * shift / container));
}

}  // namespace calc
