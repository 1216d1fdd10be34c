/// What a station uses up in a year: ink, heads, wear, energy, labour.
#pragma once

#include <optional>
#include <vector>

#include "calc/bom.h"
#include "calc/station_cure.h"

namespace calc {

/// Running time of a year [s].
Time running_time(const Job& job);

/// Rate of use of one channel over running time.
struct ChannelFlow {
  VolumeFlow printed;
  VolumeFlow purged;  ///< at least the maintenance share of what is printed
  VolumeFlow flush;   ///< flushing fluid, which is no ink
  VolumeFlow waste() const { return purged + flush; }
  VolumeFlow ink() const { return printed + purged; }
  VolumeFlow total() const { return ink() + flush; }
};
ChannelFlow channel_flow(const Job& job, const ChannelLoad& load, const Head* head);

/// The use of a channel as the document states it. `parts` per time, when known.
Consumption consumption(const Job& job, const ChannelLoad& load, const ChannelFlow& flow,
                        std::optional<Frequency> parts);

/// Running time a head of a group lasts [s]: stated hours or drops, the lesser; else the assumed
/// life. The channel with the greatest mean cover decides.
Time life_of_heads(const Job& job, const Group& group, const Head* head);

/// Spare heads of one part number.
struct SpareHeads {
  std::size_t head = 0;  ///< index in the price book
  double mean = 0;       ///< expected failures in the lead time; zero where that is unknown
  int quantity = 0;
};
/// Spares of every kind of head in the groups, in order of appearance. Source: Poisson count.
std::vector<SpareHeads> spare_heads(const Job& job, const PriceBook& book,
                                    const std::vector<Group>& groups);

/// Money used up a year. Unpriced items are left out and told by the flags: never zero silently.
struct RunningCost {
  Money ink, heads, energy, labour, cleaning;
  bool ink_unpriced = false, power_unknown = false, heads_unpriced = false, flush_unpriced = false;
  Money sum() const { return ink + heads + energy + labour + cleaning; }
};

/// What running cost is reckoned from.
struct RunningInputs {
  const std::vector<Group>& groups;
  const std::vector<ChannelLoad>& loads;
  const std::vector<ChannelFlow>& flows;
  const std::vector<Need>& needs;
  const Curing& pinning;
  const Curing& curing;
  const Drying& drying;
};
RunningCost running_cost(const Job& job, const PriceBook& book, const RunningInputs& in);

}  // namespace calc
