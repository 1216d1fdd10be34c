/// The winner of a search whose reasons nobody asks for: most heads are left untried and most
/// stations unpriced, because what they cost at least already comes after one that passes.
#include <algorithm>
#include <functional>
#include <unordered_map>

#include "calc/selection_parts.h"

namespace calc {
namespace {

using Parts = std::vector<const Candidate*>;

/// Looks at the candidates of a group in order of a bound, below which a figure of theirs never
/// lies, and tries a head only when its own bound is next. `of_head` and `of_candidate` give the
/// bounds; the walk ends where `stop` says so of the next.
template <class OfHead, class OfCandidate, class Stop, class Visit>
void best_first(Trials& trials, std::size_t group, OfHead of_head, OfCandidate of_candidate,
                Stop stop, Visit visit) {
  using Bound = decltype(of_head(std::size_t()));
  struct Entry {
    Bound bound;
    std::size_t head;
    const Candidate* candidate;  ///< null: all of the head
  };
  const auto later = [](const Entry& a, const Entry& b) {
    if (a.bound < b.bound || b.bound < a.bound) return b.bound < a.bound;
    return b.head < a.head;
  };
  std::vector<Entry> queue;
  queue.reserve(trials.heads().size());
  for (const std::size_t h : trials.heads()) {
    if (!trials.hopeless(group, h)) queue.push_back({of_head(h), h, nullptr});
  }
  std::make_heap(queue.begin(), queue.end(), later);
  while (!queue.empty()) {
    const Entry next = queue.front();
    if (stop(next.bound)) return;
    std::pop_heap(queue.begin(), queue.end(), later);
    queue.pop_back();
    if (next.candidate != nullptr) {
      visit(*next.candidate);
      continue;
    }
    for (const Candidate& c : trials.of(group, next.head).accepted) {
      queue.push_back({of_candidate(c), next.head, &c});
      std::push_heap(queue.begin(), queue.end(), later);
    }
  }
}

class Contest {
 public:
  Contest(const Search& search, const Stations& stations) : search_(search), stations_(stations) {}

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
    by_floor(
        trials, 0, [&](const FloorKey& least) { return best_ && beyond(least, best_->key); },
        [&](const Candidate& c) { offer({&c}); });
  }

  /// Combinations of several groups, as combine() makes them.
  void combinations(Trials& trials) {
    std::vector<Parts> lists;
    for (std::size_t g = 0; g < trials.groups(); ++g) lists.push_back(shortlist(trials, g));
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
  static std::vector<const Floor*> floors_of(const Parts& parts) {
    std::vector<const Floor*> floors;
    floors.reserve(parts.size());
    for (const Candidate* part : parts) floors.push_back(&part->floor);
    return floors;
  }

  FloorKey floor(const Parts& parts) const { return floor_of(*search_.job, floors_of(parts)); }
  FloorKey floor(const Floor& alone) const { return floor_of(*search_.job, {&alone}); }

  /// The candidates of a group in order of what they come to at least.
  template <class Stop, class Visit>
  void by_floor(Trials& trials, std::size_t group, Stop stop, Visit visit) const {
    best_first(
        trials, group, [&](std::size_t h) { return floor(trials.least(group, h).floor); },
        [&](const Candidate& c) { return floor(c.floor); }, stop, visit);
  }

  /// The rank of a candidate by itself, worked out once.
  const RankKey& own_key(const Candidate* c) {
    const auto known = own_.find(c);
    if (known != own_.end()) return known->second;
    return own_.emplace(c, stations_.price({c}).key).first->second;
  }

  /// The first few of a group by their own rank.
  Parts first_few(Trials& trials, std::size_t group) {
    Parts few;
    by_floor(
        trials, group,
        [&](const FloorKey& least) {
          return few.size() == most_kept - 3 && beyond(least, own_key(few.back()));
        },
        [&](const Candidate& c) { insert(&c, few); });
    return few;
  }

  void insert(const Candidate* c, Parts& few) {
    const auto later = std::find_if(few.begin(), few.end(), [&](const Candidate* other) {
      return before(own_key(c), own_key(other));
    });
    few.insert(later, c);
    if (few.size() > most_kept - 3) few.pop_back();
  }

  /// The candidate with the least of a figure, of equals the first in order of the catalogue; the
  /// bounds as of best_first().
  template <class OfHead, class OfCandidate, class Figure>
  static const Candidate* least_by(Trials& trials, std::size_t group, OfHead of_head,
                                   OfCandidate of_candidate, Figure figure) {
    const Candidate* least = nullptr;
    best_first(
        trials, group, of_head, of_candidate,
        [&](const auto& bound) { return least != nullptr && figure(*least) < bound; },
        [&](const Candidate& c) {
          const bool first = least == nullptr || figure(c) < figure(*least);
          if (first || (!(figure(*least) < figure(c)) && in_catalogue_before(c, *least))) {
            least = &c;
          }
        });
    return least;
  }

  /// Candidates of one head stand in one list.
  static bool in_catalogue_before(const Candidate& a, const Candidate& b) {
    const std::size_t first = a.arrangement.shape.head, second = b.arrangement.shape.head;
    return first != second ? first < second : std::less<>()(&a, &b);
  }

  Parts shortlist(Trials& trials, std::size_t group) {
    Parts kept = first_few(trials, group);
    if (kept.empty()) return kept;
    const auto heads = [](const Candidate& c) { return c.arrangement.heads; };
    keep_once(kept, least_by(
                        trials, group, [&](std::size_t h) { return trials.least(group, h).heads; },
                        heads, heads));
    const auto footprint = [](const Candidate& c) { return c.arrangement.footprint; };
    keep_once(kept,
              least_by(
                  trials, group, [&](std::size_t h) { return trials.least(group, h).footprint; },
                  footprint, footprint));
    keep_once(kept,
              least_by(
                  trials, group,
                  [&](std::size_t h) { return floor(trials.least(group, h).floor).ownership; },
                  [&](const Candidate& c) { return floor(c.floor).ownership; },
                  [&](const Candidate& c) { return own_key(&c).ownership; }));
    return kept;
  }

  /// One head for every group, each time as it ranks first by itself.
  void alike(Trials& trials, std::size_t head) {
    std::vector<const Floor*> floors;
    for (std::size_t g = 0; g < trials.groups(); ++g) {
      if (trials.hopeless(g, head)) return;
      floors.push_back(&trials.least(g, head).floor);
    }
    if (best_ && beyond(floor_of(*search_.job, floors), best_->key)) return;
    Parts parts;
    for (std::size_t g = 0; g < trials.groups(); ++g) {
      const Candidate* first = first_alone(trials.of(g, head).accepted);
      if (first == nullptr) return;
      parts.push_back(first);
    }
    offer(std::move(parts));
  }

  /// Which of a head's ranks first by itself; null for none.
  const Candidate* first_alone(const std::vector<Candidate>& accepted) {
    const Candidate* first = nullptr;
    for (const Candidate& c : accepted) {
      if (first != nullptr && beyond(floor(c.floor), own_key(first))) continue;
      if (first == nullptr || before(own_key(&c), own_key(first))) first = &c;
    }
    return first;
  }

  const Search& search_;
  const Stations& stations_;
  std::optional<Option> best_;
  std::unordered_map<const Candidate*, RankKey> own_;
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
