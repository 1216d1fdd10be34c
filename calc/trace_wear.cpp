/// How long heads last, how many are replaced in a year and fail before a spare comes.
#include <algorithm>
#include <optional>

#include "calc/consumption.h"
#include "calc/named.h"
#include "calc/running.h"
#include "calc/trace_find.h"
#include "calc/trace_stages.h"

namespace calc {
namespace {

const Basis life_rule{"the lesser of the lives stated", SourceTag::computed,
                      "the channel of the greatest mean cover"};
const Basis mean_count{"mean count: heads running over their life", SourceTag::computed,
                       "failures independent of each other"};

std::string group_id(std::size_t index) { return "g" + std::to_string(index + 1); }

/// The channel of the group whose nozzles fire most.
const Channel& busiest(const Job& job, const Group& group) {
  const Channel* most = nullptr;
  for (const std::string& name : group.channels) {
    const Channel* const channel = named(job.channels, name);
    if (channel == nullptr) continue;
    if (most == nullptr || most->cover_mean.value < channel->cover_mean.value) most = channel;
  }
  return *most;
}

/// The step of a life that counts the drops.
void life_of(TraceWriter& w, const Group& group, const Head& head, const std::string& g) {
  const Channel& channel = busiest(w.job, group);
  const bool counts =
      head.life_drops && channel.cover_mean.value > 0 && group.frequency_per_nozzle > Frequency();
  if (!counts) return;
  const std::string ref = "head." + head.name + ".";
  std::vector<StepInput> inputs{from_catalogue("D", head.life_drops->value, "", ref + "life_drops"),
                                w.step("f", g + ".per_nozzle"), mean_cover(w.job, channel, "c")};
  if (head.life) {
    inputs.push_back(from_catalogue("t", head.life->value.si() / 3600, "h", ref + "life"));
  }
  w.formula(g + ".head_life", "t_l", head.life ? "min(t,D/(3600000*f*c))" : "D/(3600000*f*c)",
            std::move(inputs), life_of_heads(w.job, group, &head).si() / 3600, "h", life_rule);
}

StepInput life_input(const TraceWriter& w, const Head& head, const std::string& g,
                     const std::string& symbol) {
  if (w.has(g + ".head_life")) return w.step(symbol, g + ".head_life");
  if (!head.life) return from_parameter(w.job, symbol, P::head_life_h);
  return from_catalogue(symbol, head.life->value.si() / 3600, "h", "head." + head.name + ".life");
}

void replaced(TraceWriter& w, const Group& group, const Head& head, const std::string& g) {
  w.formula(g + ".replaced", "n_r", "n*t_y/t_l",
            {w.step("n", g + ".heads_total"), w.step("t_y", "station.hours"),
             life_input(w, head, g, "t_l")},
            replacements_per_year(group.heads_total, running_time(w.job),
                                  life_of_heads(w.job, group, &head)),
            "1/a", mean_count);
}

/// Mean failures in the lead time of one kind of head, over all groups that have it.
void spares(TraceWriter& w, const Head& head, const Spare& spare) {
  if (!head.lead_time) return;
  const double days = head.lead_time->value.si() / 86400;
  std::vector<StepInput> inputs{from_catalogue("l", days, "d", "head." + head.name + ".lead_time"),
                                w.step("t_y", "station.hours")};
  std::string sum;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    if (w.spec.chosen[i].head != head.name) continue;
    const std::string g = group_id(i), n = "n_" + std::to_string(i + 1),
                      t = "t_" + std::to_string(i + 1);
    sum.append(sum.empty() ? "" : "+").append(n).append("/").append(t);
    inputs.push_back(w.step(n, g + ".heads_total"));
    inputs.push_back(life_input(w, head, g, t));
  }
  w.formula("station.spares." + spare.part_number, "m", "24*l*t_y/8760*(" + sum + ")",
            std::move(inputs), spare.mean, "", mean_count);
}

}  // namespace

void trace_wear(TraceWriter& w) {
  std::vector<const Head*> heads;
  for (std::size_t i = 0; i < w.spec.chosen.size(); ++i) {
    const Group& group = w.spec.chosen[i];
    const Head& head = trace_head(w.catalogue, group);
    life_of(w, group, head, group_id(i));
    replaced(w, group, head, group_id(i));
    if (std::find(heads.begin(), heads.end(), &head) == heads.end()) heads.push_back(&head);
  }
  // One spare a kind of head, in the same order.
  const std::vector<Spare>& list = w.spec.station->spares;
  for (std::size_t i = 0; i < std::min(heads.size(), list.size()); ++i) {
    if (!w.has("station.spares." + list[i].part_number)) spares(w, *heads[i], list[i]);
  }
}

}  // namespace calc
