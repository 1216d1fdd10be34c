/// What each channel asks of the parts around its heads: data, ink, water.
#pragma once

#include <vector>

#include "calc/job.h"

namespace calc {

/// One channel of one group. Indices lead into the job's channels and the groups it was made from.
struct ChannelLoad {
  std::size_t channel = 0;
  std::size_t group = 0;
  int heads = 0;              ///< heads that carry the channel
  Length laydown;             ///< wet film of a solid
  double active_nozzles = 0;  ///< of this channel that print, all its heads together
  Frequency data;             ///< [bit/s]
  VolumeFlow solid;           ///< while printing a solid at the highest speed
  VolumeFlow peak;            ///< while printing at peak cover and the highest speed
  VolumeFlow passing;         ///< onto the passing substrate at peak cover, as a dryer sees it
  VolumeFlow printed;         ///< mean of running time, at mean cover
};

/// Substrate passed per time [m2/s] at the nominal and at the highest speed. Single pass: image
/// width times line speed; scanning: the throughput asked for. Zero where the job lacks it.
struct AreaRates {
  AreaRate nominal, highest;
};
AreaRates area_rates(const Job& job, const std::vector<Group>& groups);
AreaRates area_rates(const Job& job, bool scanning);

/// Width printed [m]: image and margins. Zero where the width is missing.
Length printed_width(const Job& job);

/// Whether the wetting rule asks for a pre-treatment of the substrate: its surface energy below the
/// ink's tension and the margin, or an aqueous ink on a substrate that takes nothing up. Unknown
/// energy or tension asks for nothing. Source: common practice.
bool wants_pretreatment(const Job& job, const Channel& channel);

/// Whether the inks of a group ask for exhaust: solvent or aqueous ones, and whatever has its flash
/// point below that of CLP category 3, 23 degC. Source: Regulation (EC) 1272/2008 Annex I.
bool wants_vapour_exhaust(const Job& job, const Group& group);
/// The same of one channel, by its index.
bool wants_vapour_exhaust(const Job& job, std::size_t channel);

/// Parts per time [1/s]: stated, else speed over pitch; none where neither is known.
std::optional<Frequency> parts_rate(const Job& job);

/// Loads of every channel of every group, in order. Groups must be complete.
std::vector<ChannelLoad> channel_loads(const Job& job, const std::vector<Group>& groups);

/// What the process colours lay together at their peaks, in solids of the one that lays most [1].
struct ProcessFilm {
  double peak = 0;   ///< all of them
  double given = 0;  ///< those whose peak the request states
  double limit = 0;  ///< the most they may lay
};
ProcessFilm process_film(const Job& job, const std::vector<ChannelLoad>& loads);

/// The share [1], at most 1, to which the flows of the process colours shrink where the separation
/// of the images keeps them to their limit.
double process_share(const Job& job, const std::vector<ChannelLoad>& loads);

}  // namespace calc
