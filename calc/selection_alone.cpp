/// The candidates of a group as if it were the whole station: which of them enter combinations.
#include <algorithm>
#include <functional>

#include "calc/best_first.h"

namespace calc {
namespace {

constexpr std::size_t most_ranked = 5;  ///< of a shortlist, by rank

void keep_once(Parts& kept, const Candidate* c) {
  if (std::find(kept.begin(), kept.end(), c) == kept.end()) kept.push_back(c);
}

/// Candidates of one head stand in one list.
bool in_catalogue_before(const Candidate& a, const Candidate& b) {
  const std::size_t first = a.arrangement.shape.head, second = b.arrangement.shape.head;
  return first != second ? first < second : std::less<>()(&a, &b);
}

/// The candidate with the least of a figure, of equals the first in order of the catalogue; the
/// bounds as of best_first().
template <class OfHead, class OfCandidate, class Figure>
const Candidate* least_by(Trials& trials, std::size_t group, OfHead of_head,
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

}  // namespace

const RankKey& Alone::key(const Candidate* c) {
  const auto known = keys_.find(c);
  if (known != keys_.end()) return known->second;
  return keys_.emplace(c, stations_.price({c}).key).first->second;
}

void Alone::insert(const Candidate* c, Parts& few) {
  const auto later = std::find_if(
      few.begin(), few.end(), [&](const Candidate* other) { return before(key(c), key(other)); });
  few.insert(later, c);
  if (few.size() > most_ranked) few.pop_back();
}

Parts Alone::first_few(Trials& trials, std::size_t group) {
  Parts few;
  cheapest_first(
      job_, trials, group,
      [&](const FloorKey& least) {
        return few.size() == most_ranked && beyond(least, key(few.back()));
      },
      [&](const Candidate& c) { insert(&c, few); });
  return few;
}

Parts Alone::shortlist(Trials& trials, std::size_t group) {
  Parts kept = first_few(trials, group);
  if (kept.empty()) return kept;
  const auto heads = [](const Candidate& c) { return c.arrangement.heads; };
  const auto footprint = [](const Candidate& c) { return c.arrangement.footprint; };
  const auto least = [&](std::size_t h) -> const Least& { return trials.least(group, h); };
  keep_once(kept, least_by(
                      trials, group, [&](std::size_t h) { return least(h).heads; }, heads, heads));
  keep_once(kept, least_by(
                      trials, group, [&](std::size_t h) { return least(h).footprint; }, footprint,
                      footprint));
  keep_once(kept, least_by(
                      trials, group,
                      [&](std::size_t h) { return floor_of(job_, {&least(h).floor}).ownership; },
                      [&](const Candidate& c) { return floor_of(job_, {&c.floor}).ownership; },
                      [&](const Candidate& c) { return key(&c).ownership; }));
  return kept;
}

const Candidate* Alone::first(const std::vector<Candidate>& accepted) {
  const Candidate* best = nullptr;
  for (const Candidate& c : accepted) {
    if (best != nullptr && beyond(floor_of(job_, {&c.floor}), key(best))) continue;
    if (best == nullptr || before(key(&c), key(best))) best = &c;
  }
  return best;
}

Parts Alone::firsts(Trials& trials, std::size_t head) {
  Parts parts;
  for (std::size_t g = 0; g < trials.groups(); ++g) {
    if (trials.hopeless(g, head)) return {};
    const Candidate* const best = first(trials.of(g, head).accepted);
    if (best == nullptr) return {};
    parts.push_back(best);
  }
  return parts;
}

}  // namespace calc
