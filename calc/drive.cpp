#include "calc/drive.h"

#include <algorithm>
#include <cmath>

#include "calc/compare.h"
#include "calc/encoder.h"

namespace calc {
namespace {

/// Flow that recirculates through a head; none where it does not recirculate or states none.
std::optional<VolumeFlow> recirculation_of(const Head* head) {
  const bool moves = head != nullptr && head->recirculates && head->recirculates->value;
  if (!moves || !head->recirculation) return std::nullopt;
  return head->recirculation->value;
}

BoardUse board_use(const BoardLoad& load) {
  BoardUse use;
  use.heads = load.heads;
  use.boards = load.boards;
  use.data = load.data;
  if (load.board == nullptr) return use;
  const Board& board = *load.board->item;
  use.board = board.name;
  if (board.heads) use.heads_per_board = std::max(1, board.heads->value);
  if (board.data_rate) use.board_rate = board.data_rate->value;
  return use;
}

double cables_of(const Sizing& sizing) {
  double sum = 0;
  for (const Need& need : sizing.needs.list()) {
    if (need.code == PartCode::cable) sum += need.quantity;
  }
  return sum;
}

ChannelFeed feed_of(const Job& job, const ChannelLoad& load, const ChannelSupply& choice,
                    const Head* head) {
  ChannelFeed feed;
  feed.channel = job.channels[load.channel].name;
  feed.heads = load.heads;
  feed.active_nozzles = load.active_nozzles;
  feed.data = load.data;
  feed.solid = load.solid;
  feed.peak = load.peak;
  feed.recirculation = load.heads * recirculation_of(head).value_or(VolumeFlow());
  feed.supplies = choice.count;
  feed.bound_by = "one";
  feed.containers = choice.containers;
  feed.first_fill = choice.first_fill;
  if (choice.supply == nullptr) return feed;
  const Supply& supply = *choice.supply->item;
  feed.supply = supply.name;
  feed.bound_by = bound_by(load.peak, load.heads, supply_limits(supply, head));
  if (supply.container) feed.container = supply.container->value;
  return feed;
}

Length repeat_of(const Job& job) {
  return job.pitch.value > Length() ? job.pitch.value : job.length.value;
}

EncoderFit fit(const Job& job, const Group& group, Length step) {
  EncoderFit fit;
  fit.group = group.name;
  fit.step = step;
  fit.step_given = job.request->line.encoder_step.has_value();
  const Length pitch = 1.0 / group.resolution_along;
  fit.counts_per_dot = counts_per_dot(pitch, step);
  const Division whole = whole_division(fit.counts_per_dot);
  const Division fraction = nearest_division(
      fit.counts_per_dot, static_cast<int>(std::lround(job.parameters[P::divider_most])));
  fit.whole = whole.counts;
  fit.whole_resolution = divided_resolution(whole, step);
  fit.whole_error = division_error(whole, fit.counts_per_dot);
  fit.counts = fraction.counts;
  fit.dots = fraction.dots;
  fit.fraction_error = division_error(fraction, fit.counts_per_dot);
  fit.rounding = rounding_rms(step);
  fit.rate = count_rate(job.speed ? job.speed->high : Speed(), step);
  const Length repeat = repeat_of(job);
  if (repeat <= Length()) {
    fit.whole_serves = at_most(std::abs(fit.whole_error), 0.0);
    return fit;
  }
  fit.repeat = repeat;
  fit.whole_residue = repeat * fit.whole_error;
  fit.fraction_residue = repeat * fit.fraction_error;
  fit.whole_serves = at_most(std::abs(fit.whole_residue->si()), 0.5 * pitch.si());
  return fit;
}

}  // namespace

SupplyLimits supply_limits(const Supply& supply, const Head* head) {
  SupplyLimits limits;
  if (supply.flow && supply.flow->value > VolumeFlow()) limits.flow = supply.flow->value;
  if (supply.heads && supply.heads->value > 0) limits.heads = supply.heads->value;
  if (supply.pump && supply.pump->value > VolumeFlow()) limits.pump = supply.pump->value;
  limits.recirculation = recirculation_of(head);
  return limits;
}

std::string bound_by(VolumeFlow peak, int heads, const SupplyLimits& limits) {
  const int all = supplies(peak, heads, limits);
  if (all <= 1) return "one";
  SupplyLimits pump, by_heads;
  pump.pump = limits.pump;
  pump.recirculation = limits.recirculation;
  by_heads.heads = limits.heads;
  if (limits.pump && supplies(peak, heads, pump) == all) return "pump";
  if (limits.heads && supplies(peak, heads, by_heads) == all) return "heads";
  return "flow";
}

std::optional<Length> encoder_step(const Job& job) {
  const Line& line = job.request->line;
  if (line.encoder_step) return line.encoder_step->value;
  if (!line.encoder_wheel || !line.encoder_counts) return std::nullopt;
  return count_length(line.encoder_wheel->value, line.encoder_counts->value);
}

void describe_drive(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                    const Sizing& sizing, Station& station) {
  for (const BoardLoad& load : sizing.board_loads) station.board_uses.push_back(board_use(load));
  station.cables = cables_of(sizing);
  for (std::size_t i = 0; i < sizing.loads.size(); ++i) {
    const ChannelLoad& load = sizing.loads[i];
    const auto index = book.find_head(groups[load.group].head);
    station.feeds.push_back(
        feed_of(job, load, sizing.supplies[i], index ? book.head(*index).item : nullptr));
  }
  const std::optional<Length> step = encoder_step(job);
  for (const Group& group : groups) {
    if (step && !group.scan) station.encoder.push_back(fit(job, group, *step));
  }
}

}  // namespace calc
