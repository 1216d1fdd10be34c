/// A search whose reasons nobody asks for leaves most stations unpriced; it must choose the same.
/// Catalogues and requests are made by number: every row is [C], the two ways of search compared.
#include <doctest/doctest.h>

#include <algorithm>

#include "calc/bom_prices.h"
#include "calc/selection_parts.h"
#include "support/catalogue_maker.h"

using namespace calc;

namespace {

constexpr const char* date = "2026-11-25";

bool same(const std::vector<Group>& a, const std::vector<Group>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Group& x, const Group& y) {
    return x.head == y.head && x.mode == y.mode && x.heads_total == y.heads_total &&
           x.interleave == y.interleave && x.stack == y.stack && x.film_heads == y.film_heads &&
           x.resolution_along == y.resolution_along && x.speed_limit == y.speed_limit;
  });
}

}  // namespace

TEST_CASE("the winner is the same whether reasons are told or not") {
  int alone = 0, together = 0;
  for (std::uint64_t i = 0; i < 120; ++i) {
    const Request request = made::request(i);
    const Catalogue catalogue = made::catalogue(i, 30);
    const Job job = resolve(request, catalogue, date);
    if (!job.missing.empty()) continue;
    CAPTURE(i);
    const Selection whole = select(job, catalogue);
    Chooser chooser(catalogue, job.currency);
    const Choice quick = chooser.choose(job, nullptr, Chooser::Over::left);
    CHECK(same(quick.groups, whole.chosen));
    CHECK(quick.candidates == whole.candidates);
    if (!whole.chosen.empty()) ++(job.groups.size() > 1 ? together : alone);
  }
  CHECK(alone > 10);
  CHECK(together > 10);
}

TEST_CASE("no station costs less than it is told to cost at least") {
  int priced = 0;
  for (std::uint64_t i = 0; i < 60; ++i) {
    const Request request = made::request(i);
    const Catalogue catalogue = made::catalogue(i, 20);
    const Job job = resolve(request, catalogue, date);
    if (!job.missing.empty()) continue;
    const PriceBook book(catalogue, job.currency);
    Search search = prepare(job, catalogue, book);
    search.reasons = false;
    const Stations stations(search);
    const Field field = try_all(search, !job.single_pass);
    for (const HeadTry& t : field.front()) {
      for (const Candidate& c : t.accepted) {
        const FloorKey floor = floor_of(job, {&c.floor});
        const RankKey key = stations.price({&c}).key;
        CAPTURE(i);
        CHECK(floor.prefers == key.prefers);
        CHECK(floor.unpriced <= key.unpriced);
        CHECK(floor.ownership <= key.ownership);
        CHECK(floor.price_class <= key.price_class);
        ++priced;
      }
    }
  }
  CHECK(priced > 100);
}
