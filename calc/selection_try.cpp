/// Every arrangement of one head for one group, and what is left when the beaten ones are gone.
#include <algorithm>
#include <utility>

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
  void clear() { any_ = false; }
  void offer(const std::vector<Finding>& failures) {
    if (failures.size() >= bound()) return;
    least_ = failures;
    any_ = true;
  }
  /// As many failures as this, and an attempt is no longer of interest.
  std::size_t bound() const { return any_ ? least_.size() : no_bound; }
  /// None without an attempt.
  std::vector<Finding> failures() const { return any_ ? least_ : std::vector<Finding>(); }

 private:
  std::vector<Finding> least_;
  bool any_ = false;
};

}  // namespace

/// All attempts of one head for one group, one head after the other in the same room.
class Attempts {
 public:
  Attempts(const Search& search, bool scanning) : search_(search), scanning_(scanning) {}

  HeadTry of(const GroupNeed& need, std::size_t head) {
    need_ = &need;
    index_ = head;
    one_is_enough_ = false;
    own_.clear();
    fewest_.clear();
    accepted_.clear();
    unbeaten_.clear();
    return run(search_.catalogue->heads[head]);
  }

 private:
  HeadTry run(const Head& head) {
    HeadTry result;
    check_head(search_, *need_, head, own_);
    if (!search_.reasons && !own_.failures.empty()) return result;
    if (head.modes.empty()) fewest_.offer({refused("head_data", "mode")});
    one_is_enough_ = !own_.failures.empty();
    for (std::size_t m = 0; m < head.modes.size() && !done(); ++m) try_mode(head, m);
    if (own_.failures.empty() && !unbeaten_.empty()) {
      keep(result);
      return result;
    }
    result.failures = own_.failures;
    if (unbeaten_.empty()) {
      const std::vector<Finding> rest = fewest_.failures();
      result.failures.insert(result.failures.end(), rest.begin(), rest.end());
    }
    return result;
  }

  /// Of a head that fails by itself it only matters whether any attempt passes.
  bool done() const { return one_is_enough_ && !unbeaten_.empty(); }

  void try_mode(const Head& head, std::size_t mode) {
    scratch_.clear();
    const std::optional<ModeFacts> facts = mode_facts(search_, head, head.modes[mode], scratch_);
    if (!facts) {
      fewest_.offer(scratch_.failures);
      return;
    }
    take(*facts);
    Shape first;
    first.head = index_;
    first.mode = mode;
    first.scanning = scanning_;
    try_shapes(first);
    for (const Shape& stand : tilts_of(search_, *facts, first)) {
      if (done()) return;
      take(tilted(search_, *facts, stand.tilt));
      if (facts_->head_pitch > Length{}) try_shapes(stand);
    }
  }

  void take(const ModeFacts& facts) { facts_ = std::make_shared<const ModeFacts>(facts); }

  /// All shapes of the facts.
  void try_shapes(const Shape& first) {
    find_shapes(search_, *need_, *facts_, first, shapes_);
    for (const Shape& shape : shapes_.list) {
      try_shape(shape);
      if (done()) return;
    }
  }

  void try_shape(const Shape& shape) {
    scratch_.clear();
    const bool counted = search_.reasons && unbeaten_.empty();
    const std::size_t bound = counted ? fewest_.bound() : 1;
    Arrangement a = outline(search_, *need_, *facts_, shape, scratch_, bound);
    if (scratch_.failures.empty() && only_adds_heads(a)) return;
    if (scratch_.failures.size() < bound) {
      complete(search_, *need_, *facts_, a, scratch_, bound);
    }
    if (!scratch_.failures.empty()) {
      // Of so many heads in line that lay too little, the most heads speak: shapes of the least.
      if (shape.film_heads == 0 || at_least(a.laydown, need_->film)) {
        fewest_.offer(scratch_.failures);
      }
      return;
    }
    accept(a);
  }

  /// Whether a is what was accepted last with more heads in line for laydown, none of them faster.
  bool only_adds_heads(const Arrangement& a) const {
    if (need_->film <= Length{} || unbeaten_.empty()) return false;
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
    accepted_.emplace_back(a, facts_);
  }

  void keep(HeadTry& result) {
    const Jetting jetting = jetting_of(search_, *need_, search_.catalogue->heads[index_]);
    const HeadFloor floor(search_, *need_, index_, jetting);
    result.accepted.reserve(unbeaten_.size());
    for (const Mark& mark : unbeaten_) {
      auto& [a, facts] = accepted_[mark.accepted];
      a.jetting = jetting;
      result.accepted.push_back({a, {}, floor.of(a), need_, need_, std::move(facts)});
    }
  }

  const Search& search_;
  bool scanning_;
  const GroupNeed* need_ = nullptr;
  std::size_t index_ = 0;
  bool one_is_enough_ = false;
  Findings own_;  ///< of the head by itself
  Findings scratch_;
  Fewest fewest_;
  std::shared_ptr<const ModeFacts> facts_;  ///< of the shapes tried now
  Shapes shapes_;
  /// With the facts they rest on; the beaten ones too.
  std::vector<std::pair<Arrangement, std::shared_ptr<const ModeFacts>>> accepted_;
  std::vector<Mark> unbeaten_;
};

void write(const Search& search, const Candidate& candidate) {
  if (candidate.unwritten == nullptr) return;
  const GroupNeed& need = *candidate.unwritten;
  candidate.group = to_group(search, need, *candidate.facts, candidate.arrangement, false);
  candidate.unwritten = nullptr;
}

void fly(const Search& search, const Candidate& candidate) {
  if (candidate.unflown == nullptr) return;
  const GroupNeed& need = *candidate.unflown;
  Arrangement& a = candidate.arrangement;
  a.flight = flight_of(search, need, a);
  add_flight(*search.job, need, a, candidate.group);
  candidate.unflown = nullptr;
}

Tries::Tries(const Search& search, bool scanning)
    : attempts_(std::make_unique<Attempts>(search, scanning)) {}
Tries::Tries(Tries&&) noexcept = default;
Tries& Tries::operator=(Tries&&) noexcept = default;
Tries::~Tries() = default;

HeadTry Tries::of(const GroupNeed& need, std::size_t head) { return attempts_->of(need, head); }

}  // namespace calc
