/// What a station costs at least, told without sizing it: what lies above that of one that passes
/// need not be priced. Internal to selection*.cpp.
#pragma once

#include <vector>

#include "calc/arrangement.h"
#include "calc/ranking.h"
#include "calc/station_load.h"

namespace calc {

/// The part of one group in the least of a station.
struct Floor {
  int prefers = 0;        ///< wishes not met, exactly
  int unpriced = 0;       ///< lines without a price that the group has whatever the others are
  unsigned shared = ~0U;  ///< a bit for each kind of the station it has no priced part for
  Money capital, yearly;
  Money stages;  ///< lamps and dryers over the years, which groups share
};

/// The least of a station of some groups, in the order of the rank's first keys.
struct FloorKey {
  int prefers = 0, unpriced = 0;
  std::int64_t price_class = 0;
  std::int64_t ownership = 0;  ///< minor units
};
FloorKey floor_of(const Job& job, const std::vector<const Floor*>& groups);
/// In the order of the rank's first keys, by the sum itself.
bool operator<(const FloorKey& a, const FloorKey& b);

/// Whether whatever has this floor comes after a station of that key.
bool beyond(const FloorKey& floor, const RankKey& key);

/// Fills what each group of a search costs at least whatever its heads.
void fill_sundries(Search& search);

/// The floors of one head for one group.
class HeadFloor {
 public:
  HeadFloor(const Search& search, const GroupNeed& need, std::size_t head, const Jetting& jetting);
  /// Of an arrangement with everything worked out; heads added to it later only raise it.
  Floor of(const Arrangement& a) const;

 private:
  void add_lines(const Jetting& jetting);
  void add_boards(const Arrangement& a, Floor& floor) const;
  void add_heads(const Arrangement& a, Floor& floor) const;
  void add_inks(const Arrangement& a, Floor& floor) const;
  ChannelLoad load_of(std::size_t index, const Arrangement& a, const AreaRates& area) const;
  void add_stages(const Arrangement& a, const std::vector<ChannelLoad>& loads, Floor& floor) const;

  const Search& search_;
  const GroupNeed& need_;
  std::size_t head_;
  Floor base_;
};

}  // namespace calc
