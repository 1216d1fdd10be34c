/// A walk over the candidates of a group that tries only the heads it has to. Internal to
/// selection*.cpp.
#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

#include "calc/selection_parts.h"

namespace calc {

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

/// The same in order of what the candidates come to at least.
template <class Stop, class Visit>
void cheapest_first(const Job& job, Trials& trials, std::size_t group, Stop stop, Visit visit) {
  best_first(
      trials, group, [&](std::size_t h) { return floor_of(job, {&trials.least(group, h).floor}); },
      [&](const Candidate& c) { return floor_of(job, {&c.floor}); }, stop, visit);
}

}  // namespace calc
