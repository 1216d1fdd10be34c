/// What a channel uses, and how long a head lives.
#pragma once

#include <optional>

#include "calc/quantity.h"

namespace calc {

inline constexpr double default_uptime = 0.85;  ///< common practice
inline constexpr double least_maintenance_share = 0.03;
inline constexpr Time calendar_year = Time::from_si(8760.0 * 3600.0);

/// Running time a year [s]: hours a day, days a year, uptime.
Time running_time(Time hours_per_day, double days_per_year, double uptime = default_uptime);

/// Ink of one channel over a period.
struct ChannelUse {
  Volume printed, purged, flushed;
  Volume total() const { return printed + purged + flushed; }
  Volume waste() const { return purged + flushed; }
};

/// Use of a channel: purged = max(3 % of printed, heads purge purges). Purges over the period.
ChannelUse channel_use(Volume printed, int heads, Volume purge, double purges, Volume flush);

/// Life of a head in running time [s]: the lesser of stated hours and drops/(f cover); none where
/// neither is stated. per_nozzle, mean_cover > 0 for the second.
std::optional<Time> head_life(std::optional<Time> running, std::optional<double> drops,
                              Frequency per_nozzle, double mean_cover);

/// Replacements a year [1]: heads running / life. life > 0.
double replacements_per_year(int installed, Time running_per_year, Time life);

/// Share of product length that is printed [1]: image length / pitch, at most 1.
double print_share(Length image_length, Length product_pitch);

}  // namespace calc
