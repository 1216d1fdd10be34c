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
    const Choice quick = chooser.choose(job, nullptr, Chooser::Told::winner);
    CHECK(same(quick.groups, whole.chosen));
    CHECK(quick.candidates.empty());
    const Choice fuller = chooser.choose(job, nullptr, Chooser::Told::candidates);
    CHECK(same(fuller.groups, whole.chosen));
    CHECK(fuller.candidates == whole.candidates);
    if (!whole.chosen.empty()) ++(job.groups.size() > 1 ? together : alone);
  }
  CHECK(alone > 10);
  CHECK(together > 10);
}

namespace {

/// A catalogue made by number; every third time its heads may be tilted.
Catalogue catalogue_with_tilts(std::uint64_t number, std::size_t heads) {
  Catalogue c = made::catalogue(number, heads);
  if (number % 3 != 0) return c;
  for (Head& head : c.heads) {
    head.tilts = made::given(true);
    for (HeadMode& mode : head.modes) {
      std::vector<Length> places;
      for (std::size_t i = 0; i < mode.row_offsets->value.size(); ++i) {
        places.push_back(millimetres(0.5 * static_cast<double>(i)));
      }
      mode.row_places = made::given(places);
    }
  }
  return c;
}

/// Runs a check over the quick searches of requests made by number, in each of their ways of
/// motion.
template <class Check>
void over_searches(std::uint64_t requests, std::size_t heads, Check check) {
  for (std::uint64_t i = 0; i < requests; ++i) {
    const Request request = made::request(i);
    const Catalogue catalogue = catalogue_with_tilts(i, heads);
    const Job job = resolve(request, catalogue, date);
    if (!job.missing.empty()) continue;
    CAPTURE(i);
    const PriceBook book(catalogue, job.currency);
    Search search = prepare(job, catalogue, book);
    search.reasons = false;
    fill_sundries(search);
    if (job.single_pass) check(search, false);
    if (job.scanning) check(search, true);
  }
}

}  // namespace

TEST_CASE("no station costs less than it is told to cost at least") {
  int priced = 0, staged = 0;
  over_searches(60, 20, [&](const Search& search, bool scanning) {
    const Stations stations(search);
    const Field field = Trials(search, scanning, nullptr, Trials::When::at_once).all();
    for (const HeadTry& t : field.front()) {
      for (const Candidate& c : t.accepted) {
        const FloorKey floor = floor_of(*search.job, {&c.floor});
        const Option option = stations.make({&c});
        const RankKey& key = option.key;
        CHECK(floor.prefers == key.prefers);
        CHECK(floor.unpriced <= key.unpriced);
        CHECK(floor.ownership <= key.ownership);
        CHECK(floor.price_class <= key.price_class);
        CHECK_FALSE(beyond(floor, key));
        ++priced;
        if (c.floor.stages > Money()) ++staged;
      }
    }
  });
  CHECK(priced > 200);
  CHECK(staged > 50);
}

TEST_CASE("no arrangement of a head lies below the least told of it untried") {
  int compared = 0, tilted = 0, without = 0;
  over_searches(90, 20, [&](const Search& search, bool scanning) {
    Trials trials(search, scanning, nullptr, Trials::When::asked_for);
    for (std::size_t g = 0; g < trials.groups(); ++g) {
      for (const std::size_t h : trials.heads()) {
        CAPTURE(h);
        const std::vector<Candidate> found =
            Tries(search, scanning).of(search.groups[g], h).accepted;
        if (trials.hopeless(g, h)) {
          CHECK(found.empty());
          ++without;
          continue;
        }
        const Least& least = trials.least(g, h);
        for (const Candidate& c : found) {
          CHECK(c.arrangement.heads >= least.heads);
          CHECK(c.arrangement.footprint >= least.footprint);
          CHECK(c.floor.capital >= least.floor.capital);
          CHECK(c.floor.yearly >= least.floor.yearly);
          CHECK(c.floor.stages >= least.floor.stages);
          ++compared;
          if (c.arrangement.shape.tilt < 0 || c.arrangement.shape.tilt > 0) ++tilted;
        }
      }
    }
  });
  CHECK(compared > 500);
  CHECK(tilted > 20);
  CHECK(without > 100);
}
