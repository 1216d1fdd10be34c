/// The sizing of a station before it is written out: what the quote and the bill have in common.
#pragma once

#include <vector>

#include "calc/bom.h"
#include "calc/running.h"
#include "calc/station_cure.h"
#include "calc/station_load.h"
#include "calc/station_vapour.h"
#include "calc/supply.h"

namespace calc {

/// Ink supplies of one channel.
struct ChannelSupply {
  const Priced<Supply>* supply = nullptr;  ///< null: the catalogue has none that fits
  int count = 1;
  int containers = 0;  ///< that hold a shift; 0 where the container is not stated
  Volume first_fill;
};

/// Heads and data of one kind of drive board; a null board takes those the catalogue has none for.
struct BoardLoad {
  const Priced<Board>* board = nullptr;
  int heads = 0;
  Frequency data;
  int boards = 0;
};

struct Sizing {
  std::vector<ChannelLoad> loads;
  std::vector<ChannelFlow> flows;       ///< one a load
  std::vector<ChannelSupply> supplies;  ///< one a load
  Curing pinning, curing;
  Drying drying;
  std::vector<BoardLoad> board_loads;
  Vapour vapour;
  int boards = 0;
  Needs needs;
  std::vector<SpareHeads> spares;
  BillTotal bill;
  RunningCost running;
  Money ownership;
};

/// Everything that costs money in a station with these groups.
Sizing size(const Job& job, const PriceBook& book, const std::vector<Group>& groups);
/// The same into one that was used before, whose store is used again: for a search of many.
void size_again(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                Sizing& sizing);

inline constexpr Time longest_shift = seconds(8 * 3600.0);  ///< common practice
/// Time of a shift [s]: a day of operation, at most longest_shift.
Time shift_time(const Job& job);

/// Whether a supply takes the ink family of a channel.
bool takes(const Supply& supply, const Channel& channel);
/// Whether a supply is said to stir its ink.
bool stirs(const Supply& supply);
/// Whether the ink of a channel settles, as stated or by figures.
bool must_be_stirred(const Job& job, const ChannelLoad& load);

/// Length of the station along the line [m]: access, rows of heads, lamps, dryers as installed. Of
/// a carriage the greater of heads and lamps side by side along the feed; what stands one behind
/// the other along the stroke goes into the machine's width.
Length station_footprint(const Job& job, const std::vector<Group>& groups, const Sizing& sizing);

/// Air [m3/s] all exhausts carry off together, as hot as it is: of the dryer, of captured vapour.
VolumeFlow station_exhaust(const Sizing& sizing);

/// The supply of a channel, of those that take its ink family: the one the head names, else the one
/// of the lowest sum, priced before unpriced.
ChannelSupply choose_supply(const Job& job, const PriceBook& book, const ChannelLoad& load,
                            const ChannelFlow& flow, const Head* head);

/// Lines of parts without a price that a station has at least, as far as one of its groups tells.
struct UnpricedParts {
  int own = 0;          ///< lines that a group has whatever the others are
  unsigned shared = 0;  ///< a bit for each kind of the station that it has no priced part for
};
/// Of a group of those channels on one head, by its index in the book, that jets at a temperature.
UnpricedParts unpriced_parts(const Job& job, const PriceBook& book, std::size_t head,
                             const std::vector<std::size_t>& channels,
                             const std::optional<Temperature>& jetting);

/// Adds the parts of the catalogue's kinds: those of each group and those of the station.
void add_parts(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
               Sizing& sizing);
/// What the groups bring to the bill one by one: of those parts the ones that the group with that
/// index, less than their number, needs for itself; without what a station has as a whole.
std::vector<Need> parts_of_group(const Job& job, const PriceBook& book,
                                 const std::vector<Group>& groups, Sizing sizing,
                                 std::size_t group);
/// What pieces of such a part are counted by: as its row says, else as its kind is.
Per counted_by(const Part& part, PartCode code);

}  // namespace calc
