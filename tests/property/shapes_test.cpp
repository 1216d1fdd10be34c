// The search looks at few numbers of heads in line for a film. That none it leaves out would have
// been kept is tried here by looking at all of them (method.md, section 3: what another arrangement
// of the same head and mode beats in heads, speed and laydown is dropped).
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <tuple>
#include <vector>

#include "calc/bom_prices.h"
#include "calc/compare.h"
#include "calc/selection_parts.h"
#include "tests/calc/support/catalogue_maker.h"

using namespace calc;

namespace {

constexpr std::size_t heads = 6;

std::uint64_t some_number() { return *rc::gen::inRange<std::uint64_t>(0, 100000); }

Speed pace_of(const Arrangement& a) {
  return a.allowed * static_cast<double>(a.shape.stack) / a.shape.motion_axis;
}

/// Whether a is nowhere worse than b.
bool as_good(const Arrangement& a, const Arrangement& b) {
  return a.heads <= b.heads && a.open <= b.open && at_least(pace_of(a), pace_of(b)) &&
         at_most(a.laydown, b.laydown);
}

/// One mode of a head for the first group of a search, in one way of motion.
struct Tried {
  const Search& search;
  const ModeFacts& facts;
  bool scanning;

  const GroupNeed& need() const { return search.groups.front(); }
  void keep_passing(const Shape& shape, std::vector<Arrangement>& to) const {
    Findings findings;
    const Arrangement a = arrange(search, need(), facts, shape, findings);
    if (findings.failures.empty()) to.push_back(a);
  }
};

/// How many arrangements with a number of heads in line stated pass; every one of them is as good
/// as matched by a shape looked at.
int looked_at_enough(const Tried& tried, std::size_t head, std::size_t mode) {
  Shape first;
  first.head = head;
  first.mode = mode;
  first.scanning = tried.scanning;
  Shapes shapes;
  find_shapes(tried.search, tried.need(), tried.facts, first, shapes);
  std::vector<Arrangement> kept, all;
  for (Shape shape : shapes.list) {
    tried.keep_passing(shape, kept);
    if (shape.film_heads > 0) continue;
    for (shape.film_heads = 1; shape.film_heads <= most_film_heads; ++shape.film_heads) {
      tried.keep_passing(shape, all);
    }
  }
  for (const Arrangement& a : all) {
    RC_ASSERT(
        std::any_of(kept.begin(), kept.end(), [&](const Arrangement& k) { return as_good(k, a); }));
  }
  return static_cast<int>(all.size());
}

/// The same over a catalogue.
int looked_at_enough(const Search& search, bool scanning) {
  int passed = 0;
  for (std::size_t h = 0; h < search.catalogue->heads.size(); ++h) {
    const Head& head = search.catalogue->heads[h];
    for (std::size_t m = 0; m < head.modes.size(); ++m) {
      Findings unused;
      const auto facts = mode_facts(search, head, head.modes[m], unused);
      if (facts) passed += looked_at_enough({search, *facts, scanning}, h, m);
    }
  }
  return passed;
}

}  // namespace

TEST_CASE("no number of heads in line is left out that another does not match or beat") {
  int passed = 0;
  CHECK(rc::check([&] {
    Request request = made::request(some_number());
    const double um = *rc::gen::inRange(10, 400) / 10.0;
    for (Colour& colour : request.colours) colour.film = made::given(micrometres(um));
    const Catalogue catalogue = made::catalogue(some_number(), heads);
    const Job job = resolve(request, catalogue, "2026-11-20");
    RC_PRE(job.missing.empty());
    const PriceBook book(catalogue, job.currency);
    const Search search = prepare(job, catalogue, book);
    for (const bool scanning : {false, true}) {
      if (scanning ? job.scanning : job.single_pass) passed += looked_at_enough(search, scanning);
    }
  }));
  CHECK(passed > 0);
}
