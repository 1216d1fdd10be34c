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

}  // namespace

FloorKey floor_of(const Job& job, const std::vector<const Floor*>& groups) {
  FloorKey key;
  Money capital, yearly;
  unsigned shared = ~0U;
  for (const Floor* floor : groups) {
    key.prefers += floor->prefers;
    // Lines of one part are one line, so those of several groups do not add up.
    key.unpriced = std::max(key.unpriced, floor->unpriced);
    shared &= floor->shared;
    capital = capital + floor->capital;
    yearly = yearly + floor->yearly;
  }
  key.unpriced += count_of(shared);
  const Money sum = ownership(capital, yearly, job.discount.value, job.years);
  key.ownership = sum.minor;
  key.price_class = price_class(sum);
  return key;
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
  const auto prints = [&](InkFamily family) {
    return std::any_of(need_.inks.begin(), need_.inks.end(),
                       [&](const InkNeed& ink) { return ink.channel->family == family; });
  };
  if (prints(InkFamily::uv) && none_priced(book.lamps())) ++base_.unpriced;
  if (prints(InkFamily::aqueous) && none_priced(book.dryers())) ++base_.unpriced;
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

void HeadFloor::add_ink(const Arrangement& a, Floor& floor) const {
  const Job& job = *search_.job;
  const AreaRates area = area_rates(job, a.shape.scanning);
  for (const InkNeed& ink : need_.inks) {
    const Channel& channel = *ink.channel;
    const auto price =
        channel.ink == nullptr ? std::nullopt : price_in(channel.ink->price, job.currency);
    if (!price) continue;
    ChannelLoad load;
    load.heads = a.heads / std::max(1, a.positions);
    load.printed = area.nominal * a.laydown * (channel.cover_mean.value * job.printed_share);
    const ChannelFlow flow = channel_flow(job, load, search_.book->head(head_).item);
    const Volume yearly = flow.ink() * running_time(job);
    floor.yearly = floor.yearly + to_money(yearly.si() * litre * price->major());
  }
}

Floor HeadFloor::of(const Arrangement& a) const {
  Floor floor = base_;
  add_heads(a, floor);
  add_ink(a, floor);
  return floor;
}

}  // namespace calc
