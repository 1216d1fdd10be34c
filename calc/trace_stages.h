/// The parts of trace_station(), each in its file, and what they share.
#pragma once

#include <string>
#include <vector>

#include "calc/station_load.h"
#include "calc/trace_writer.h"

namespace calc {

/// Width, running hours, area, and what every channel uses (trace_use.cpp); the first of all.
void trace_use(TraceWriter& writer, const std::vector<ChannelLoad>& loads);
/// Share of the printed places that a channel covers, as given or assumed.
StepInput mean_cover(const Job& job, const Channel& channel, const std::string& symbol);
StepInput peak_cover(const Job& job, const Channel& channel, const std::string& symbol);
/// "n" [1/h], parts an hour; writes its step once. Only where parts_rate() has it.
StepInput parts_an_hour(TraceWriter& writer);
/// The wet film of a channel's solid [mL/m2].
StepInput film_of(const TraceWriter& writer, const ChannelLoad& load,
                  const std::string& symbol = "h");
/// "V" [mL/h], what passes a dryer at peak cover and the highest speed; writes its step once.
StepInput passing(TraceWriter& writer, const ChannelLoad& load);
/// Adds "s", the share by which that is held to the limit of process colours, to a product's
/// inputs: "*s"; empty of a channel that is no process colour.
std::string add_peak_share(TraceWriter& writer, const std::vector<ChannelLoad>& loads,
                           const ChannelLoad& load, std::vector<StepInput>& inputs);
/// "r" [kg/m3], density of a channel's ink.
StepInput density_of(const Job& job, const Channel& channel);

/// What it costs, over a year and over the years (trace_cost.cpp); the last of all.
void trace_cost(TraceWriter& writer);
/// Replacements and spares of the heads (trace_wear.cpp); before the costs.
void trace_wear(TraceWriter& writer);

/// Pinning and final cure, their heat and stray light.
void trace_cure(TraceWriter& writer, const std::vector<ChannelLoad>& loads);
/// Length of a carriage's station along the feed; after lamps and dryers.
void trace_feed(TraceWriter& writer);
void trace_drying(TraceWriter& writer, const std::vector<ChannelLoad>& loads);
void trace_vapour(TraceWriter& writer, const std::vector<ChannelLoad>& loads);

/// What is told of the whole station: heads, joints, boards, supplies, ink, air, length
/// (trace_total.cpp); after stages and drive.
void trace_totals(TraceWriter& writer);
/// Quantities of the lines of the bill (trace_count.cpp); after the totals.
void trace_counts(TraceWriter& writer);
/// Room and service of the heads, and what only one maker offers (trace_room.cpp); after the costs.
void trace_room(TraceWriter& writer);
/// What is told of alternatives, of ends of ranges, of edges (trace_again.cpp); the last of all.
void trace_again(TraceWriter& writer);
/// What the reasons against heads tell of them (trace_left_out.cpp), whether or not anything is
/// chosen.
void trace_left_out(TraceWriter& writer);
/// Adds the steps of those ids up, in their order: "sum(n_1,n_2)". Nothing without any.
void sum_up(TraceWriter& writer, const std::string& id, const std::string& symbol,
            const std::vector<std::string>& ids, double value, const std::string& unit,
            const Basis& basis);

/// Share by which a channel's peak flow is held to the limit of process colours.
double peak_share(const Job& job, const std::vector<ChannelLoad>& loads, const ChannelLoad& load);

/// The stage of a kind, or null.
const Stage* stage_of(const Specification& spec, std::string_view kind);

}  // namespace calc
