#include "calc/floor.h"

#include <algorithm>
#include <tuple>

#include "calc/bom_prices.h"
#include "calc/consumption.h"
#include "calc/present_value.h"
#include "calc/running.h"
#include "calc/station_sizing.h"

namespace calc {
namespace {

constexpr double litre = 1e3;
constexpr std::int64_t rounding = 4;  ///< minor units

template <class T>
bool none_priced(const std::vector<Priced<T>>& rows) {
  return std::none_of(rows.begin(), rows.end(),
                      [](const Priced<T>& row) { return row.row.price.has_value(); });
}

/// Ones among the bits.
int count_of(unsigned bits) {
  int count = 0;
  for (; bits != 0; bits &= bits - 1) ++count;
  return count;
}

bool prints(const GroupNeed& need, InkFamily family) {
  return std::any_of(need.inks.begin(), need.inks.end(),
                     [&](const InkNeed& ink) { return ink.channel->family == family; });
}

/// The cheapest supply a channel may be given and its first fill, one without a price as free.
Money least_supply(const Search& search, const Channel& channel) {
  std::optional<Money> least;
  Volume fill = litres(1);
  for (const Priced<Supply>& supply : search.book->supplies()) {
    if (!takes(*supply.item, channel)) continue;
    const Money price = supply.row.price.value_or(Money());
    least = least ? std::min(*least, price) : price;
    const Given<Volume>& container = supply.item->container;
    if (container && container->value > Volume()) fill = std::min(fill, container->value);
  }
  Money sum = least.value_or(Money());
  if (channel.ink == nullptr) return sum;
  const auto price = price_in(channel.ink->price, search.job->currency);
  if (price) sum = sum + to_money(fill.si() * litre * price->major());
  return sum;
}

}  // namespace

void fill_sundries(Search& search) {
  const Job& job = *search.job;
  // Beside other groups a station whose lamps fail is still compared by its cost without them.
  const bool alone = search.groups.size() == 1;
  const bool lamps_hold = alone || !job.request->substrate.temperature_limit;
  for (GroupNeed& need : search.groups) {
    std::vector<ChannelLoad> loads;
    for (const std::size_t index : need.group->channels) {
      need.least.supplies = need.least.supplies + least_supply(search, job.channels[index]);
      loads.emplace_back();
      loads.back().channel = index;
    }
    if (lamps_hold) need.least.lamps = least_of_lamps(job, *search.book, loads, false);
    if (alone) need.least.carriage_lamps = least_of_lamps(job, *search.book, loads, true);
  }
}

FloorKey floor_of(const Job& job, const std::vector<const Floor*>& groups) {
  FloorKey key;
  Money capital, yearly, stages;
  unsigned shared = ~0U;
  for (const Floor* floor : groups) {
    key.prefers += floor->prefers;
    // Lines of one part are one line, so those of several groups do not add up.
    key.unpriced = std::max(key.unpriced, floor->unpriced);
    shared &= floor->shared;
    capital = capital + floor->capital;
    yearly = yearly + floor->yearly;
    stages = std::max(stages, floor->stages);
  }
  key.unpriced += count_of(shared);
  Money sum = ownership(capital, yearly, job.discount.value, job.years);
  // Sums are rounded one by one here and together in a bill.
  if (stages.minor > rounding) sum = sum + stages - Money{rounding};
  key.ownership = sum.minor;
  key.price_class = price_class(sum);
  return key;
}

bool operator<(const FloorKey& a, const FloorKey& b) {
  return std::tuple(a.prefers, a.unpriced, a.ownership) <
         std::tuple(b.prefers, b.unpriced, b.ownership);
}

bool beyond(const FloorKey& floor, const RankKey& key) {
  return std::tuple(floor.prefers, floor.unpriced, floor.price_class) >
         std::tuple(key.prefers, key.unpriced, key.price_class);
}

HeadFloor::HeadFloor(const Search& search, const GroupNeed& need, std::size_t head,
                     const Jetting& jetting)
    : search_(search), need_(need), head_(head) {
  base_.prefers = unmet_prefers(search.job->request->service, search.catalogue->heads[head]);
  add_lines(jetting);
}

/// The lines that no arrangement is without.
void HeadFloor::add_lines(const Jetting& jetting) {
  const Job& job = *search_.job;
  const PriceBook& book = *search_.book;
  const UnpricedParts parts =
      unpriced_parts(job, book, head_, need_.group->channels, jetting.temperature);
  base_.unpriced = parts.own;
  base_.shared = parts.shared;
  if (!book.head(head_).row.price) base_.unpriced += 2;  // itself and its spare
  const Priced<Board>* board = book.board_of(head_);
  if (board == nullptr || !board->row.price) ++base_.unpriced;
  if (none_priced(book.supplies())) ++base_.unpriced;
  if (prints(need_, InkFamily::uv) && none_priced(book.lamps())) ++base_.unpriced;
  if (prints(need_, InkFamily::aqueous) && none_priced(book.dryers())) ++base_.unpriced;
}

/// Boards by the share of one that each head takes, for groups may fill one together.
void HeadFloor::add_boards(const Arrangement& a, Floor& floor) const {
  const Priced<Board>* board = search_.book->board_of(head_);
  if (board == nullptr || !board->row.price) return;
  const Given<int>& most = board->item->heads;
  const int heads = most ? std::max(1, most->value) : 1;
  floor.capital = floor.capital + Money{board->row.price->minor * a.heads / heads};
}

/// The heads themselves, and those that wear out where the catalogue says when.
void HeadFloor::add_heads(const Arrangement& a, Floor& floor) const {
  const Job& job = *search_.job;
  const Priced<Head>& head = search_.book->head(head_);
  if (head.row.price) floor.capital = floor.capital + *head.row.price * a.heads;
  add_boards(a, floor);
  if (!head.item->life) return;
  const double yearly = replacements_per_year(a.heads, running_time(job), head.item->life->value);
  floor.yearly =
      floor.yearly + to_money(yearly * job.parameters[P::alignment_h] * job.labour.value);
  if (head.row.price) floor.yearly = floor.yearly + to_money(yearly * head.row.price->major());
}

/// What the ink and the dryer of a channel go by.
ChannelLoad HeadFloor::load_of(std::size_t index, const Arrangement& a,
                               const AreaRates& area) const {
  const Channel& channel = search_.job->channels[index];
  ChannelLoad load;
  load.channel = index;
  load.heads = a.heads / std::max(1, a.positions);
  load.laydown = a.laydown;
  load.printed = area.nominal * a.laydown * (channel.cover_mean.value * search_.job->printed_share);
  // Of several groups the colours of one may shrink what the others lay.
  if (search_.groups.size() == 1) {
    load.passing = area.highest * a.laydown * channel.cover_peak.value;
  }
  return load;
}

void HeadFloor::add_inks(const Arrangement& a, Floor& floor) const {
  const Job& job = *search_.job;
  const AreaRates area = area_rates(job, a.shape.scanning);
  std::vector<ChannelLoad> loads;
  loads.reserve(need_.inks.size());
  for (const std::size_t index : need_.group->channels) {
    loads.push_back(load_of(index, a, area));
    const Channel& channel = job.channels[index];
    const auto price =
        channel.ink == nullptr ? std::nullopt : price_in(channel.ink->price, job.currency);
    if (!price) continue;
    const ChannelFlow flow = channel_flow(job, loads.back(), search_.book->head(head_).item);
    const Volume yearly = flow.ink() * running_time(job);
    floor.yearly = floor.yearly + to_money(yearly.si() * litre * price->major());
  }
  add_stages(a, loads, floor);
}

void HeadFloor::add_stages(const Arrangement& a, const std::vector<ChannelLoad>& loads,
                           Floor& floor) const {
  floor.stages = a.shape.scanning ? need_.least.carriage_lamps : need_.least.lamps;
  if (!prints(need_, InkFamily::aqueous)) return;
  floor.stages = floor.stages + cost_of_dryers(*search_.job, *search_.book, loads);
}

Floor HeadFloor::of(const Arrangement& a) const {
  Floor floor = base_;
  floor.capital = floor.capital + need_.least.supplies;
  add_heads(a, floor);
  add_inks(a, floor);
  return floor;
}

}  // namespace calc
