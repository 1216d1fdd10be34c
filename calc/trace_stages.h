/// The parts of trace_station() for the stages after the heads, each in its file.
#pragma once

#include <vector>

#include "calc/station_load.h"
#include "calc/trace_writer.h"

namespace calc {

void trace_cure(TraceWriter& writer);  ///< pinning and final cure, their heat and stray light
void trace_feed(TraceWriter& writer);  ///< length of a carriage's station along the feed
void trace_drying(TraceWriter& writer, const std::vector<ChannelLoad>& loads);
void trace_vapour(TraceWriter& writer, const std::vector<ChannelLoad>& loads);

/// Share by which a channel's peak flow is held to the limit of process colours.
double peak_share(const Job& job, const std::vector<ChannelLoad>& loads, const ChannelLoad& load);

/// The stage of a kind, or null.
const Stage* stage_of(const Specification& spec, std::string_view kind);

}  // namespace calc
