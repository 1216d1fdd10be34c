#include "calc/consumption.h"

#include <algorithm>

namespace calc {

Time running_time(Time hours_per_day, double days_per_year, double uptime) {
  return hours_per_day * days_per_year * uptime;
}

ChannelUse channel_use(Volume printed, int heads, Volume purge, double purges, Volume flush) {
  return {printed, std::max(printed * least_maintenance_share, heads * purge * purges), flush};
}

std::optional<Time> head_life(std::optional<Time> running, std::optional<double> drops,
                              Frequency per_nozzle, double mean_cover) {
  if (!drops) return running;
  const Time by_drops = *drops / (per_nozzle * mean_cover);
  return running ? std::min(*running, by_drops) : by_drops;
}

double replacements_per_year(int installed, Time running_per_year, Time life) {
  return installed * (running_per_year / life);
}

double print_share(Length image_length, Length product_pitch) {
  return std::min(1.0, image_length / product_pitch);
}

}  // namespace calc
