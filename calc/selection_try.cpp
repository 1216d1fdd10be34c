/// Every arrangement of one head for one group, and what is left when the beaten ones are gone.
#include <algorithm>

#include "calc/compare.h"
#include "calc/selection_parts.h"

namespace calc {
namespace {

/// The greatest speed of a head over the substrate [m/s], of the line or the carriage, whatever
/// speed is run.
Speed pace_of(const Arrangement& a) {
  return a.allowed * static_cast<double>(std::max(1, a.shape.stack)) / a.shape.motion_axis;
}

/// What tells whether an arrangement is one already accepted, or beaten by one.
struct Mark {
  std::size_t mode, level;
  int interleave, film_heads, heads;
  bool open;
  Resolution motion_axis;
  double tilt;
  Length laydown;
  Speed pace;
  std::size_t accepted;  ///< which of the accepted it is of
};

Mark mark_of(const Arrangement& a, std::size_t accepted) {
  const Shape& s = a.shape;
  return {s.mode,        a.level, s.interleave, s.film_heads, a.heads, a.open,
          s.motion_axis, s.tilt,  a.laydown,    pace_of(a),   accepted};
}

/// Whether two shapes of one mode came out as the same arrangement.
bool same(const Mark& a, const Mark& b) {
  return a.mode == b.mode && a.interleave == b.interleave && a.film_heads == b.film_heads &&
         a.level == b.level && a.motion_axis == b.motion_axis && at_most(a.tilt, b.tilt) &&
         at_most(b.tilt, a.tilt);
}

/// Whether a is nowhere worse than b and somewhere better, in heads, speed, ink and closed solids.
bool beats(const Mark& a, const Mark& b) {
  if (a.mode != b.mode || a.heads > b.heads || a.open > b.open) return false;
  if (!at_least(a.pace, b.pace) || !at_most(a.laydown, b.laydown)) return false;
  return a.heads < b.heads || a.open < b.open || !at_most(a.pace, b.pace) ||
         !at_least(a.laydown, b.laydown);
}

/// Keeps the failures of the attempt that fails the fewest gates, the first of equals.
class Fewest {
 public:
  void offer(const std::vector<Finding>& failures) {
    if (failures.size() >= bound()) return;
    least_ = failures;
    any_ = true;
  }
  /// As many failures as this, and an attempt is no longer of interest.
  std::size_t bound() const { return any_ ? least_.size() : no_bound; }
  const std::vector<Finding>& failures() const { return least_; }

 private:
  std::vector<Finding> least_;
  bool any_ = false;
};

/// All attempts of one head for one group.
class Attempts {
 public:
  Attempts(const Search& search, const GroupNeed& need, std::size_t head, bool scanning)
      : search_(search), need_(need), index_(head), scanning_(scanning) {}

  HeadTry run() {
    const Head& head = search_.catalogue->heads[index_];
    HeadTry result;
    Findings own;
    check_head(search_, need_, head, own);
    if (!search_.reasons && !own.failures.empty()) return result;
    if (head.modes.empty()) fewest_.offer({refused("head_data", "mode")});
    one_is_enough_ = !own.failures.empty();
    for (std::size_t m = 0; m < head.modes.size() && !done(); ++m) try_mode(head, m);
    if (own.failures.empty() && !unbeaten_.empty()) {
      keep(result);
      return result;
    }
    result.failures = std::move(own.failures);
    if (unbeaten_.empty()) {
      const std::vector<Finding>& rest = fewest_.failures();
      result.failures.insert(result.failures.end(), rest.begin(), rest.end());
    }
    return result;
  }

 private:
  /// Of a head that fails by itself it only matters whether any attempt passes.
  bool done() const { return one_is_enough_ && !unbeaten_.empty(); }

  void try_mode(const Head& head, std::size_t mode) {
    scratch_.clear();
    const std::optional<ModeFacts> facts = mode_facts(search_, head, head.modes[mode], scratch_);
    if (!facts) {
      fewest_.offer(scratch_.failures);
      return;
    }
    facts_ = *facts;
    Shape first;
    first.head = index_;
    first.mode = mode;
    first.scanning = scanning_;
    try_shapes(first);
    for (const Shape& stand : tilts_of(search_, *facts, first)) {
      if (done()) return;
      facts_ = tilted(search_, *facts, stand.tilt);
      if (facts_.head_pitch > Length{}) try_shapes(stand);
    }
  }

  /// All shapes of the facts.
  void try_shapes(const Shape& first) {
    for (const Shape& shape : shapes_of(search_, need_, facts_, first)) {
      try_shape(shape);
      if (done()) return;
    }
  }

  void try_shape(const Shape& shape) {
    scratch_.clear();
    const bool counted = search_.reasons && unbeaten_.empty();
    const std::size_t bound = counted ? fewest_.bound() : 1;
    Arrangement a = outline(search_, need_, facts_, shape, scratch_, bound);
    if (scratch_.failures.empty() && only_adds_heads(a)) return;
    if (scratch_.failures.size() < bound) {
      complete(search_, need_, facts_, a, scratch_, bound);
    }
    if (!scratch_.failures.empty()) {
      // Of so many heads in line that lay too little, the most heads speak: shapes of the least.
      if (shape.film_heads == 0 || at_least(a.laydown, need_.film)) {
        fewest_.offer(scratch_.failures);
      }
      return;
    }
    accept(a);
  }

  /// Whether a is what was accepted last with more heads in line for laydown, none of them faster.
  bool only_adds_heads(const Arrangement& a) const {
    if (need_.film <= Length{} || unbeaten_.empty()) return false;
    const Mark& last = unbeaten_.back();
    const Shape& s = a.shape;
    return last.mode == s.mode && last.level == a.level && last.interleave == s.interleave &&
           last.motion_axis == s.motion_axis && !(last.tilt < s.tilt) && !(s.tilt < last.tilt) &&
           last.film_heads <= s.film_heads;
  }

  /// What is beaten need not be kept to beat others: what beats it does that too.
  void accept(const Arrangement& a) {
    const Mark mark = mark_of(a, accepted_.size());
    for (const Mark& m : unbeaten_) {
      if (same(m, mark) || beats(m, mark)) return;
    }
    const auto beaten = [&](const Mark& m) { return beats(mark, m); };
    unbeaten_.erase(std::remove_if(unbeaten_.begin(), unbeaten_.end(), beaten), unbeaten_.end());
    unbeaten_.push_back(mark);
    accepted_.push_back(a);
  }

  void keep(HeadTry& result) {
    const Jetting jetting = jetting_of(search_, need_, search_.catalogue->heads[index_]);
    const HeadFloor floor(search_, need_, index_, jetting);
    result.accepted.reserve(unbeaten_.size());
    for (const Mark& mark : unbeaten_) {
      Arrangement& a = accepted_[mark.accepted];
      a.jetting = jetting;
      result.accepted.push_back({a, {}, floor.of(a), &need_, &need_});
    }
  }

  const Search& search_;
  const GroupNeed& need_;
  std::size_t index_;
  bool scanning_;
  bool one_is_enough_ = false;
  Findings scratch_;
  Fewest fewest_;
  ModeFacts facts_;                    ///< of the shapes tried now
  std::vector<Arrangement> accepted_;  ///< the beaten ones too
  std::vector<Mark> unbeaten_;
};

}  // namespace

void write(const Search& search, const Candidate& candidate) {
  if (candidate.unwritten == nullptr) return;
  const GroupNeed& need = *candidate.unwritten;
  const Arrangement& a = candidate.arrangement;
  Findings unused;  // it was accepted
  const auto facts = facts_of(search, a.shape, unused);
  candidate.group = to_group(search, need, *facts, a, false);
  candidate.unwritten = nullptr;
}

void fly(const Search& search, const Candidate& candidate) {
  if (candidate.unflown == nullptr) return;
  const GroupNeed& need = *candidate.unflown;
  Arrangement& a = candidate.arrangement;
  Findings unused;  // it was accepted
  const auto facts = facts_of(search, a.shape, unused);
  a.flight = flight_of(search, need, *facts, a.level);
  add_flight(*search.job, need, a, candidate.group);
  candidate.unflown = nullptr;
}

HeadTry try_head(const Search& search, const GroupNeed& need, std::size_t head, bool scanning) {
  return Attempts(search, need, head, scanning).run();
}

}  // namespace calc
