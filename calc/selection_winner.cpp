/// The winner of a search whose reasons nobody asks for: most heads are left untried and most
/// stations unpriced, because what they cost at least already comes after one that passes.
#include "calc/best_first.h"

namespace calc {
namespace {

class Contest {
 public:
  Contest(const Search& search, const Stations& stations)
      : search_(search), stations_(stations), alone_(*search.job, stations) {}

  const std::optional<Option>& best() const { return best_; }

  /// Takes a station as the best so far if it passes and comes before that.
  void offer(Parts parts) {
    if (best_ && beyond(floor(parts), best_->key)) return;
    Option option = stations_.price(std::move(parts));
    if (best_ && !before(option.key, best_->key)) return;
    if (stations_.passes(option)) best_ = std::move(option);
  }

  /// All candidates of a single group.
  void single(Trials& trials) {
    cheapest_first(
        *search_.job, trials, 0,
        [&](const FloorKey& least) { return best_ && beyond(least, best_->key); },
        [&](const Candidate& c) { offer({&c}); });
  }

  /// Combinations of several groups, as combine() makes them.
  void combinations(Trials& trials) {
    std::vector<Parts> lists;
    for (std::size_t g = 0; g < trials.groups(); ++g) lists.push_back(alone_.shortlist(trials, g));
    for (Parts& parts : product(lists)) offer(std::move(parts));
    for (const std::size_t head : trials.heads()) alike(trials, head);
  }

  /// All that differ in one group from a station.
  void substitutes(Trials& trials, const Parts& base) {
    if (base.front()->arrangement.shape.scanning != trials.scanning()) return;
    for (std::size_t g = 0; g < trials.groups(); ++g) {
      std::vector<const Floor*> floors = floors_of(base);
      for (const std::size_t head : trials.heads()) {
        if (trials.hopeless(g, head)) continue;
        floors[g] = &trials.least(g, head).floor;
        if (best_ && beyond(floor_of(*search_.job, floors), best_->key)) continue;
        for (const Candidate& c : trials.of(g, head).accepted) {
          if (&c == base[g]) continue;
          Parts other = base;
          other[g] = &c;
          offer(std::move(other));
        }
      }
    }
  }

 private:
  FloorKey floor(const Parts& parts) const { return floor_of(*search_.job, floors_of(parts)); }

  /// One head for every group, each time as it ranks first by itself.
  void alike(Trials& trials, std::size_t head) {
    std::vector<const Floor*> floors;
    for (std::size_t g = 0; g < trials.groups(); ++g) {
      if (trials.hopeless(g, head)) return;
      floors.push_back(&trials.least(g, head).floor);
    }
    if (best_ && beyond(floor_of(*search_.job, floors), best_->key)) return;
    Parts parts = alone_.firsts(trials, head);
    if (!parts.empty()) offer(std::move(parts));
  }

  const Search& search_;
  const Stations& stations_;
  std::optional<Option> best_;
  Alone alone_;
};

}  // namespace

std::optional<Option> winner_of(const Search& search, const Stations& stations,
                                std::vector<Trials>& ways) {
  Contest contest(search, stations);
  const bool single = search.groups.size() == 1;
  for (Trials& way : ways) single ? contest.single(way) : contest.combinations(way);
  if (single || !contest.best()) return contest.best();
  const Parts base = contest.best()->parts;
  for (Trials& way : ways) contest.substitutes(way, base);
  return contest.best();
}

}  // namespace calc
