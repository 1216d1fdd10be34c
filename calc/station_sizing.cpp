#include "calc/station_sizing.h"

#include <algorithm>
#include <cmath>

#include "calc/compare.h"
#include "calc/drive.h"
#include "calc/present_value.h"
#include "calc/settling.h"

namespace calc {
namespace {

const Head* head_of(const PriceBook& book, const Group& group) {
  const auto index = book.find_head(group.head);
  return index ? book.head(*index).item : nullptr;
}

void fill(const Job& job, const ChannelFlow& flow, ChannelSupply& choice) {
  const Supply* supply = choice.supply == nullptr ? nullptr : choice.supply->item;
  if (supply != nullptr && supply->container && supply->container->value > Volume()) {
    const Volume container = supply->container->value;
    choice.containers = std::max(choice.count, containers(flow.ink(), shift_time(job), container));
    choice.first_fill = container * choice.containers;
    return;
  }
  const double whole = ceil_tolerant((flow.ink() * shift_time(job)).si() / litres(1).si());
  choice.first_fill = litres(std::max<double>(whole, choice.count));
}

bool named_by(const Head* head, const Supply& supply) {
  return head != nullptr && head->supply && supply.name == head->supply->value;
}

/// Heads and data by drive board; heads whose board is not in the catalogue go to a null one.
std::vector<BoardLoad> board_loads(const PriceBook& book, const std::vector<Group>& groups,
                                   const std::vector<ChannelLoad>& loads) {
  std::vector<BoardLoad> list;
  for (std::size_t g = 0; g < groups.size(); ++g) {
    const auto index = book.find_head(groups[g].head);
    const Priced<Board>* board = index ? book.board_of(*index) : nullptr;
    auto found = std::find_if(list.begin(), list.end(),
                              [&](const BoardLoad& b) { return b.board == board; });
    if (found == list.end()) found = list.insert(list.end(), {board, 0, Frequency(), 0});
    found->heads += groups[g].heads_total;
    for (const ChannelLoad& load : loads) {
      if (load.group == g) found->data += load.data;
    }
  }
  return list;
}

int boards_of(const BoardLoad& load) {
  if (load.board == nullptr) return load.heads;
  const Board& board = *load.board->item;
  const int heads = board.heads ? std::max(1, board.heads->value) : 1;
  std::optional<Frequency> rate;
  if (board.data_rate && board.data_rate->value > Frequency()) rate = board.data_rate->value;
  return drive_boards(load.heads, heads, load.data, rate);
}

void add_heads_and_boards(const PriceBook& book, const std::vector<Group>& groups, Sizing& sizing) {
  for (const Group& group : groups) {
    const auto index = book.find_head(group.head);
    sizing.needs.add(PartCode::printhead, index ? book.head(*index).row : PricedRow(),
                     group.heads_total);
  }
  sizing.board_loads = board_loads(book, groups, sizing.loads);
  for (BoardLoad& load : sizing.board_loads) {
    load.boards = boards_of(load);
    sizing.boards += load.boards;
    sizing.needs.add(PartCode::drive_board, load.board == nullptr ? PricedRow() : load.board->row,
                     load.boards);
  }
}

void add_supplies(const Job& job, Sizing& sizing) {
  for (std::size_t i = 0; i < sizing.loads.size(); ++i) {
    const ChannelSupply& choice = sizing.supplies[i];
    sizing.needs.add(PartCode::ink_supply,
                     choice.supply == nullptr ? PricedRow() : choice.supply->row, choice.count);
    const Ink* ink = job.channels[sizing.loads[i].channel].ink;
    Need need{PartCode::first_fill,         {},
              choice.first_fill.si() * 1e3, NeedUnit::litre,
              sizing.loads[i].channel,      choice.containers};
    if (ink != nullptr) need.item.price = price_in(ink->price, job.currency);
    sizing.needs.add(need);
  }
}

void add_stages(Sizing& sizing) {
  for (const Curing* lamps : {&sizing.pinning, &sizing.curing}) {
    if (!lamps->needed) continue;
    const bool sized = lamps->lamp != nullptr;
    sizing.needs.add(PartCode::uv_lamp, sized ? lamps->lamp->row : PricedRow(),
                     sized ? lamps->lamps : 1);
  }
  const Drying& drying = sizing.drying;
  if (drying.needed) {
    const bool sized = drying.dryer != nullptr;
    sizing.needs.add(PartCode::dryer, sized ? drying.dryer->row : PricedRow(),
                     sized ? drying.units : 1);
  }
}

void add_alignment(const Job& job, const std::vector<Group>& groups, Sizing& sizing) {
  int joints = 0;
  for (const Group& group : groups) joints += group.joints;
  if (joints <= 0) return;
  Need need;
  need.code = PartCode::alignment_hours;
  need.quantity = joints * job.parameters[P::alignment_h];
  need.unit = NeedUnit::hour;
  need.item.price = to_money(job.labour.value);
  sizing.needs.add(need);
}

void add_spares(const PriceBook& book, Sizing& sizing) {
  for (const SpareHeads& spare : sizing.spares) {
    sizing.needs.add(PartCode::spare_head, book.head(spare.head).row, spare.quantity);
  }
}

void size_channels(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                   Sizing& sizing) {
  sizing.loads = channel_loads(job, groups);
  for (const ChannelLoad& load : sizing.loads) {
    const Head* head = head_of(book, groups[load.group]);
    sizing.flows.push_back(channel_flow(job, load, head));
    sizing.supplies.push_back(choose_supply(job, book, load, sizing.flows.back(), head));
  }
}

}  // namespace

bool takes(const Supply& supply, const Channel& channel) {
  if (!supply.families) return true;
  const std::vector<InkFamily>& list = supply.families->value;
  return channel.family && std::find(list.begin(), list.end(), *channel.family) != list.end();
}

bool stirs(const Supply& supply) { return supply.stirs && supply.stirs->value; }

bool must_be_stirred(const Job& job, const ChannelLoad& load) {
  const Ink* const ink = job.channels[load.channel].ink;
  return ink != nullptr && settles(job, *ink).value_or(false);
}

Time shift_time(const Job& job) { return std::min(job.hours_per_day.value, longest_shift); }

ChannelSupply choose_supply(const Job& job, const PriceBook& book, const ChannelLoad& load,
                            const ChannelFlow& flow, const Head* head) {
  ChannelSupply best;
  std::optional<Money> best_sum;
  const bool settling = must_be_stirred(job, load);
  bool best_stirs = false, best_named = false;
  for (const Priced<Supply>& supply : book.supplies()) {
    if (!takes(*supply.item, job.channels[load.channel])) continue;
    const int count = supplies(load.peak, load.heads, supply_limits(*supply.item, head));
    const bool named = named_by(head, *supply.item);
    const bool stirring = settling && stirs(*supply.item);
    std::optional<Money> sum;
    if (supply.row.price) sum = *supply.row.price * count;
    const bool better = stirring != best_stirs ? stirring
                        : named != best_named  ? named
                                               : cheaper(sum, best_sum);
    if (best.supply != nullptr && !better) continue;
    best_sum = sum;
    best_stirs = stirring;
    best_named = named;
    best.supply = &supply;
    best.count = count;
  }
  fill(job, flow, best);
  return best;
}

namespace {

/// The greater of the heads with their bodies and the windows of the lamps, along the feed.
Length carriage_along(const std::vector<Group>& groups, const Sizing& sizing) {
  Length most = std::max(sizing.pinning.feed, sizing.curing.feed);
  for (const Group& group : groups) most = std::max(most, group.scan->heads_along);
  return most;
}

}  // namespace

Length station_footprint(const Job& job, const std::vector<Group>& groups, const Sizing& sizing) {
  Length sum = millimetres(job.parameters[P::service_access_mm]);
  if (fastest_scan(groups) != nullptr) {
    return sum + carriage_along(groups, sizing) + sizing.drying.along;
  }
  for (const Group& group : groups) sum += group.footprint;
  return sum + sizing.pinning.along + sizing.curing.along + sizing.drying.along;
}

Sizing size(const Job& job, const PriceBook& book, const std::vector<Group>& groups) {
  Sizing sizing;
  size_again(job, book, groups, sizing);
  return sizing;
}

void size_again(const Job& job, const PriceBook& book, const std::vector<Group>& groups,
                Sizing& sizing) {
  sizing.flows.clear();
  sizing.supplies.clear();
  sizing.needs.clear();
  sizing.boards = 0;
  size_channels(job, book, groups, sizing);
  sizing.pinning = size_pinning(job, book, groups, sizing.loads);
  sizing.curing = size_curing(job, book, groups, sizing.loads, sizing.pinning);
  sizing.drying = size_drying(job, book, sizing.loads);
  sizing.vapour = size_vapour(job, sizing.loads, sizing.flows);
  sizing.spares = spare_heads(job, book, groups);
  add_heads_and_boards(book, groups, sizing);
  add_supplies(job, sizing);
  add_stages(sizing);
  add_parts(job, book, groups, sizing);
  add_alignment(job, groups, sizing);
  add_spares(book, sizing);
  const std::vector<Need>& needs = sizing.needs.list();
  sizing.bill = total(needs);
  sizing.running = running_cost(
      job, book,
      {groups, sizing.loads, sizing.flows, needs, sizing.pinning, sizing.curing, sizing.drying});
  sizing.ownership =
      ownership(sizing.bill.priced, sizing.running.sum(), job.discount.value, job.years);
}

}  // namespace calc
