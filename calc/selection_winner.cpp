/// The winner of a search whose reasons nobody asks for: most stations are left unpriced because
/// what they cost at least already comes after one that passes.
#include <algorithm>
#include <tuple>
#include <unordered_map>

#include "calc/selection_parts.h"

namespace calc {
namespace {

using Parts = std::vector<const Candidate*>;

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
  void single(const Field& field) {
    for (const Floored& one : by_floor(all_accepted(field.front()))) offer({one.candidate});
  }

  /// Combinations of several groups, as combine() makes them.
  void combinations(const Field& field) {
    std::vector<Parts> lists;
    for (const auto& tries : field) lists.push_back(shortlist(all_accepted(tries)));
    for (Parts& parts : product(lists)) offer(std::move(parts));
    for (std::size_t head = 0; head < field.front().size(); ++head) alike(field, head);
  }

  /// All that differ in one group from a station.
  void substitutes(const Field& field, const Parts& base) {
    const bool scanning = base.front()->arrangement.shape.scanning;
    for (std::size_t g = 0; g < field.size(); ++g) {
      for (const HeadTry& t : field[g]) {
        for (const Candidate& c : t.accepted) {
          if (c.arrangement.shape.scanning != scanning || &c == base[g]) continue;
          Parts other = base;
          other[g] = &c;
          offer(std::move(other));
        }
      }
    }
  }

 private:
  struct Floored {
    FloorKey floor;
    const Candidate* candidate;
  };

  FloorKey floor(const Parts& parts) const {
    std::vector<const Floor*> floors;
    floors.reserve(parts.size());
    for (const Candidate* part : parts) floors.push_back(&part->floor);
    return floor_of(*search_.job, floors);
  }

  /// In order of what they come to at least, the first of equals first.
  std::vector<Floored> by_floor(const Parts& candidates) const {
    std::vector<Floored> list;
    list.reserve(candidates.size());
    for (const Candidate* c : candidates) list.push_back({floor({c}), c});
    std::stable_sort(list.begin(), list.end(), [](const Floored& a, const Floored& b) {
      return std::tuple(a.floor.prefers, a.floor.unpriced, a.floor.ownership) <
             std::tuple(b.floor.prefers, b.floor.unpriced, b.floor.ownership);
    });
    return list;
  }

  /// The rank of a candidate by itself, worked out once.
  const RankKey& own_key(const Candidate* c) {
    const auto known = own_.find(c);
    if (known != own_.end()) return known->second;
    return own_.emplace(c, stations_.price({c}).key).first->second;
  }

  /// The first few of a group by their own rank.
  Parts first_few(const std::vector<Floored>& list, std::size_t count) {
    Parts few;
    for (const Floored& one : list) {
      const bool full = few.size() == count;
      if (full && beyond(one.floor, own_key(few.back()))) break;
      const auto later = std::find_if(few.begin(), few.end(), [&](const Candidate* c) {
        return before(own_key(one.candidate), own_key(c));
      });
      if (full && later == few.end()) continue;
      few.insert(later, one.candidate);
      if (few.size() > count) few.pop_back();
    }
    return few;
  }

  /// The cheapest by itself, the first of equals.
  const Candidate* cheapest(const std::vector<Floored>& list, const Parts& all) {
    std::int64_t least = own_key(all.front()).ownership;
    for (const Floored& one : list) {
      if (one.floor.ownership > least) continue;
      least = std::min(least, own_key(one.candidate).ownership);
    }
    return *std::find_if(all.begin(), all.end(), [&](const Candidate* c) {
      return floor({c}).ownership <= least && own_key(c).ownership == least;
    });
  }

  Parts shortlist(const Parts& all) {
    if (all.empty()) return {};
    const std::vector<Floored> list = by_floor(all);
    Parts kept = first_few(list, most_kept - 3);
    const auto by = [&](auto figure) {
      return *std::min_element(all.begin(), all.end(), [&](const Candidate* a, const Candidate* b) {
        return figure(a->arrangement) < figure(b->arrangement);
      });
    };
    keep_once(kept, by([](const Arrangement& a) { return a.heads; }));
    keep_once(kept, by([](const Arrangement& a) { return a.footprint; }));
    keep_once(kept, cheapest(list, all));
    return kept;
  }

  /// One head for every group, each time as it ranks first by itself.
  void alike(const Field& field, std::size_t head) {
    std::vector<Floor> least;
    for (const auto& tries : field) {
      const std::vector<Candidate>& accepted = tries[head].accepted;
      if (accepted.empty()) return;
      least.push_back(accepted.front().floor);
      for (const Candidate& c : accepted) {
        least.back().capital = std::min(least.back().capital, c.floor.capital);
        least.back().yearly = std::min(least.back().yearly, c.floor.yearly);
      }
    }
    std::vector<const Floor*> floors;
    floors.reserve(least.size());
    for (const Floor& f : least) floors.push_back(&f);
    if (best_ && beyond(floor_of(*search_.job, floors), best_->key)) return;
    Parts parts;
    parts.reserve(field.size());
    for (const auto& tries : field) {
      const std::vector<Candidate>& accepted = tries[head].accepted;
      parts.push_back(&*std::min_element(accepted.begin(), accepted.end(),
                                         [&](const Candidate& a, const Candidate& b) {
                                           return before(own_key(&a), own_key(&b));
                                         }));
    }
    offer(std::move(parts));
  }

  const Search& search_;
  const Stations& stations_;
  std::optional<Option> best_;
  std::unordered_map<const Candidate*, RankKey> own_;
};

}  // namespace

std::optional<Option> winner_of(const Search& search, const Stations& stations,
                                const std::vector<Field>& fields) {
  Contest contest(search, stations);
  const bool single = search.groups.size() == 1;
  for (const Field& field : fields) single ? contest.single(field) : contest.combinations(field);
  if (single || !contest.best()) return contest.best();
  const Parts base = contest.best()->parts;
  for (const Field& field : fields) contest.substitutes(field, base);
  return contest.best();
}

}  // namespace calc
