/// The order in which stations are preferred: total, and made of each station by itself, so that
/// taking a loser away changes nothing: unmet wishes, unpriced lines, price class, then groups open
/// at the likely dot, so that of like prices the one that prints closed solids without a lucky
/// substrate comes first, joints, margin, heads, ownership, order.
#pragma once

#include <cstdint>
#include <string>
#include <tuple>
#include <vector>

#include "calc/money.h"
#include "calc/notice.h"

namespace calc {

/// Where an arrangement stands in the catalogue and among its own head's: the last keys.
struct RankOrder {
  std::size_t head = 0, mode = 0;
  int scanning = 0, interleave = 1, stack = 1;
  double motion_axis = 0;  ///< [1/m]
  double tilt = 0;         ///< [rad]
  friend bool operator<(const RankOrder& a, const RankOrder& b) { return a.tie() < b.tie(); }

 private:
  std::tuple<std::size_t, std::size_t, int, int, int, double, double> tie() const {
    return {head, mode, scanning, interleave, stack, motion_axis, tilt};
  }
};

struct RankKey {
  int prefers = 0;               ///< wishes not met
  int unpriced = 0;              ///< lines of the bill without a price
  std::int64_t price_class = 0;  ///< floor(ln(ownership in minor units)/ln 1.05)
  int open = 0;  ///< groups whose solids close only at the upper end of a guessed dot
  int joints = 0;
  std::int64_t margin = 0;  ///< speed margin in millionths, larger first
  int heads = 0;
  std::int64_t ownership = 0;    ///< minor units
  std::vector<RankOrder> order;  ///< one per group
};

/// Class of an amount of money: 5 % apart is one price. Zero and less are one class of their own.
std::int64_t price_class(Money ownership);

/// Speed margin as the rank counts it.
std::int64_t rank_margin(double margin);

/// Whether a comes before b.
bool before(const RankKey& a, const RankKey& b);

/// By which criterion, and by how much, a loser comes after the winner: reason `lost` with the
/// criterion as its subject. Precondition: before(winner, loser).
Reason lost_reason(const RankKey& loser, const RankKey& winner, const std::string& group,
                   const std::string& currency);

}  // namespace calc
